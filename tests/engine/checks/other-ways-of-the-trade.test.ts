import { describe, expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

/** What a sound plan may say in another way than the samples do, and what beside it is still told. */
const names = (plan: string, ...swaps: readonly Swap[]): readonly string[] =>
  foundIn(`${plan}.jobplan`, swaps).map(({ name }) => name);

// Liquid carbon dioxide turns to dry ice below 5.18 bar absolute: vapour first (handbook 8.1, 13.6).
describe('a vacuum broken with vapour of carbon dioxide', () => {
  const broken = (to: string): Swap => [
    'charge case-piping with R-744 as vapour {\n      note "To 100 psig with vapour from the tank before any liquid"\n    }',
    `break-vacuum case-piping with ${to}`,
  ];
  it('may stand as high as a test', () => {
    expect(names('carbon-dioxide-case', broken('refrigerant to 145 psig'))).toEqual([]);
  });
  it('is no leave for nitrogen', () => {
    expect(names('carbon-dioxide-case', broken('nitrogen to 145 psig'))).toContain('vacuum-broken-too-high');
  });
});

// 40 CFR 82.154(a)(1): isobutane is exempt in the uses for which it is listed (handbook 2.2, from memory).
describe('the isobutane of a sealed cabinet', () => {
  const instead = (step: string): Swap => [
    'recover system to 4 inHg {\n      caution "Isobutane burns: outdoors, no sparks, detector on all the time"\n    }',
    step,
  ];
  // What stays in is drawn out before a torch comes.
  const swept: Swap = [
    'break-vacuum system with nitrogen to 0 psig\n',
    'evacuate system to 5000 micron\n    break-vacuum system with nitrogen to 0 psig\n',
  ];
  it('may be let off outdoors', () => {
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), swept)).toEqual([]);
  });
  it('is led outdoors', () => {
    expect(names('isobutane-cabinet', instead('release system to 0 psig'), swept)).toEqual(['refrigerant-vented']);
  });
  it('is let off where nothing lights it', () => {
    const unlooked: Swap = ['    check ignition-sources within 10 ft\n', ''];
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), swept, unlooked)).toContain(
      'ignition-sources-unchecked',
    );
  });
  it('of a machine that is none, it is recovered', () => {
    const large: Swap = ['small-appliance runs', 'equipment cold-storage'];
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), swept, large)).toContain(
      'refrigerant-vented',
    );
  });
  it('is drawn out before a torch comes', () => {
    const dry: Swap = ['    blow-out condenser at 60 psig for 30 s outdoors\n', ''];
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), dry)).toEqual(['torch-hazard']);
  });
});

// Water is shut off and drained before refrigerant boils off in an exchanger (handbook 13.6, freezing); pumps of the building
// have power of their own: common practice, no source.
describe('the water side of an exchanger', () => {
  const plan = 'plate-exchanger-renewed';
  const before = '    recover system to 0 inHg\n';
  it.each(['drain plates at bottom', 'drain plates at water-side', 'drain plates'])('%s', (step) => {
    expect(
      names(
        plan,
        [before, `    close water-valves\n    ${step}\n${before}`],
        ['    check water-flow\n', '    open water-valves\n'],
      ),
    ).toEqual([]);
  });
  it('is no leave to drain refrigerant', () => {
    expect(names(plan, [before, `    drain condenser at bottom\n${before}`])).toContain('open-under-pressure');
  });
  it.each(['prove-airflow plates', 'prove-airflow water'])('%s without power on the machine', (step) => {
    expect(names(plan, ['    check water-flow\n', `    ${step}\n`])).toEqual([]);
  });
  it('is no leave for fans', () => {
    expect(names(plan, ['    check water-flow\n', '    prove-airflow system\n'])).toContain('airflow-not-proved');
  });
});

// What stands in a recovery cylinder is told on it (49 CFR 172.301, from memory); a shop calls it by its name.
describe('a recovery cylinder', () => {
  const label = (what: string): Swap => ['    break-vacuum system', `    label ${what}\n    break-vacuum system`];
  it('is labelled by its name', () => {
    expect(names('double-riser-flushed', label('old-gas'))).toEqual([]);
  });
  it('has no other name', () => {
    expect(names('double-riser-flushed', label('odd-gas'))).toContain('unknown-name');
  });
});

// A motor valve stays where it was last driven, and its maker sends it shut (design of the language; makers' sheets, from memory).
describe('a motor valve that is changed', () => {
  const changed: Swap = [
    '    cut-out drier-6, eev-6\n    place eev-6\n    wrap eev-6\n    connect eev-6 at both ends with nitrogen at 5 cfh\n',
    '    cut-out drier-6\n    wrap eev-6\n    change eev-6 with nitrogen at 5 cfh\n',
  ];
  it('is opened for the test', () => {
    expect(names('carbon-dioxide-case', changed)).toEqual([]);
  });
  it('is found shut where nobody opens it', () => {
    const shut: Swap = [
      '    unwrap eev-6\n    open eev-6 by service-tool\n    pressure-test',
      '    unwrap eev-6\n    pressure-test',
    ];
    expect(names('carbon-dioxide-case', changed, shut)).toContain('section-not-evacuated');
  });
});
