import { describe, expect, test } from 'vitest';
import { foundIn, type Swap } from './edited';

/** Edits of sound plans by one or a few lines: what is told of each above information, and what is let be. */
const told = (plan: string, swaps: readonly Swap[]): readonly string[] =>
  foundIn(`${plan}.jobplan`, swaps).map(({ name }) => name);

const remote = 'walk-in-remote-condenser';
const change = '    change-oil compressor to POE 60 fl-oz, leaving 30 %\n';
const oil: Swap = ['oil POE 250 fl-oz', 'oil POE 900 fl-oz'];
const rounds = (before: string): Swap => ['    rounds: repeat', `${before}    rounds: repeat`];

describe('an edit of a sound plan', () => {
  test.each<[what: string, plan: string, swaps: readonly Swap[], names: readonly string[]]>([
    // Shut a section off on both sides, then recover it (handbook 13.5).
    [
      'the stop valve shut after the recovery',
      'coil-behind-stop-valves',
      [
        ['    close vapour-stop\n', ''],
        ['    recover indoors to 0 inHg\n', '    recover indoors to 0 inHg\n    close vapour-stop\n'],
      ],
      ['recovery-beyond-section'],
    ],
    [
      'the valves of a suction drier shut after its recovery',
      'reach-in-burnout',
      [
        ['      close valves of suction-drier\n', ''],
        [
          '      recover suction-drier to 0 inHg into clean\n',
          '      recover suction-drier to 0 inHg into clean\n      close valves of suction-drier\n',
        ],
      ],
      ['recovery-beyond-section'],
    ],
    // At least 24 h running between changes (handbook 4.3, trade habit).
    [
      'an oil round written out, with a day of running after it',
      'fixed-orifice-conversion',
      [rounds(`${change}    run compressor for 24 h\n`), oil],
      [],
    ],
    [
      'an oil round written out, with no running after it',
      'fixed-orifice-conversion',
      [rounds(change), oil],
      ['oil-round-not-run'],
    ],
    [
      'an oil round written out, with an hour of running after it',
      'fixed-orifice-conversion',
      [rounds(`${change}    run compressor for 1 h\n`), oil],
      ['oil-round-not-run'],
    ],
    [
      'oil doubled',
      'compressor-between-valves',
      [['POE 120 fl-oz\n    energise', 'POE 240 fl-oz\n    energise']],
      ['oil-amount-unlikely'],
    ],
    [
      'oil ten times',
      'compressor-between-valves',
      [['POE 120 fl-oz\n    energise', 'POE 1200 fl-oz\n    energise']],
      ['oil-amount-unlikely'],
    ],
    // California Title 24 RA3.2 (handbook 9.2): 3 to 26 °F with an expansion valve; 15 minutes of steady running.
    ['superheat of 60', remote, [['superheat 8..10', 'superheat 60..70']], ['target-unlikely']],
    ['superheat of 60 by the sheet', remote, [['superheat 8..10 Δ°F', 'superheat 60..70 Δ°F per "valve sheet"']], []],
    [
      'subcooling read after half a minute',
      'drier-changed',
      [['subcooling after 20 min', 'subcooling after 30 s']],
      ['read-too-soon'],
    ],
    // The highest town lies at about 16,700 ft (from memory).
    ['a site above every town', remote, [['altitude 800 ft', 'altitude 20000 ft']], ['impossible']],
    // A pump-down needs a shut liquid side (handbook 13.5), whatever the plan calls it.
    [
      'started to gather the charge, and stopped with the valve still shut',
      remote,
      [['    pump-down system into receiver to 0 psig\n', '    stop system\n    start system\n']],
      [],
    ],
    [
      'started on a shut liquid valve that is opened later',
      remote,
      [
        ['open king-valve, back-valve', 'open back-valve'],
        ['    leak-check box\n', '    open king-valve\n    leak-check box\n'],
      ],
      ['started-against-shut-valve'],
    ],
    [
      'the alarm of an emptied box restored the next day',
      remote,
      [
        [
          '    restore box-alarm\n    record quantities, readings\n',
          '    record quantities, readings\n    visit "Box cold again" within 1 day {\n      restore box-alarm\n    }\n',
        ],
      ],
      [],
    ],
    [
      'the alarm of a full box restored the next day',
      remote,
      [
        ['    move-product cooler\n', ''],
        [
          '    restore box-alarm\n    record quantities, readings\n',
          '    record quantities, readings\n    visit "Box cold again" within 1 day {\n      restore box-alarm\n    }\n',
        ],
      ],
      ['left-unattended'],
    ],
    [
      'the solenoid returned before the only evacuation',
      remote,
      [
        ['    return solenoid to control\n', ''],
        ['    last: evacuate', '    return solenoid to control\n    last: evacuate'],
      ],
      ['section-not-evacuated'],
    ],
    [
      'the solenoid returned between two evacuations to one level',
      remote,
      [
        ['    return solenoid to control\n', ''],
        ['    last: evacuate', '    evacuate box to 500 micron\n    return solenoid to control\n    last: evacuate'],
        [' {\n      if-fails back to last, at most 3 times\n    }', ''],
      ],
      [],
    ],
    // ASHRAE 15 section 9.13: what is brazed again is tested again at the design pressure (handbook 7.1).
    [
      'the second test, of new brazed joints, at a tenth',
      'heat-pump-mild-burnout',
      [['450 psig for 1 h', '45 psig for 1 h']],
      ['test-below-design'],
    ],
    // Test, then pump (handbook 13.1): the first of two tests is not the proof.
    [
      'the higher of two tests behind the first evacuation',
      'indoor-coil-nitrogen-swept',
      [
        ['      pressure-test system to 300 psig for 12 h\n', ''],
        ['to 5000 micron\n', 'to 5000 micron\n      pressure-test system to 300 psig for 12 h\n'],
      ],
      ['not-pressure-tested'],
    ],
    // Weigh in, start, tune (handbook 13.2).
    [
      'a weighed charge after the start that nobody looks at',
      'old-lines-swabbed-and-blown',
      [
        ['    charge system with R-32 1 oz as liquid\n', ''],
        ['    check leak-sensor\n', '    charge system with R-32 1 oz as liquid\n    check leak-sensor\n'],
      ],
      ['charged-after-start'],
    ],
    // Fifteen minutes of steady running (California Title 24 RA3.2, handbook 9.2) count from when the case is switched in.
    [
      'a case adjusted ten minutes after it is switched in again',
      'one-case-rack-runs-on',
      [['after 20 min', 'after 10 min']],
      ['adjusted-before-running'],
    ],
    // What was weighed out at the second opening is weighed in again (handbook 9.1).
    [
      'half the charge at the first of two fillings',
      'heat-pump-mild-burnout',
      [['R-410A 8 lb as liquid', 'R-410A 4 lb as liquid']],
      ['charge-does-not-fit'],
    ],
    // A drier has no length (common knowledge of the trade, no source).
    [
      'a line stated as a drier',
      'upper-suction-piece-renewed',
      [['lower: suction-line kept', 'lower: filter-drier kept']],
      ['not-of-this-part'],
    ],
    // A refrigerant that the system does not run on is of no use on the roof (common practice, no source).
    [
      'another refrigerant in the van',
      'rubbed-liquid-line-pumped-down',
      [['refrigerant R-404A 5 lb', 'refrigerant R-134a 5 lb']],
      ['other-refrigerant'],
    ],
    // The charge is weighed in once (handbook 9.1).
    [
      'one weighed charge written twice',
      'old-lines-swabbed-and-blown',
      [
        [
          '    charge system with R-32 1 oz as liquid\n',
          '    charge system with R-32 1 oz as liquid\n    charge system with R-32 1 oz as liquid\n',
        ],
      ],
      ['charged-twice'],
    ],
    [
      'the weighed charge of one room written twice',
      'vrf-branch-leak',
      [
        [
          '    charge system with R-410A 2 lb 3 oz as liquid {',
          '    charge system with R-410A 2 lb 3 oz as liquid\n    charge system with R-410A 2 lb 3 oz as liquid {',
        ],
      ],
      ['charged-twice'],
    ],
    // Open what was shut before the start (handbook 13.5): a pump-down on a later day is no reason to leave it.
    [
      'the king valve shut before a start, with a pump-down days later',
      'burnout-cores-three-visits',
      [['      restore power\n', '      close king-valve\n      restore power\n']],
      ['started-against-shut-valve'],
    ],
  ])('%s', (_what, plan, swaps, names) => {
    expect(told(plan, swaps)).toEqual(names);
  });
});
