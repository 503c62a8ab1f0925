import { describe, expect, it } from 'vitest';
import { foundIn, type Swap, textOf } from './edited';

const found = (plan: string, ...instead: readonly Swap[]): readonly string[] =>
  foundIn(`${plan}.jobplan`, instead, 'every').map(({ name }) => name);

describe('a flush both ways in one round (handbook 5.1: forward and reverse; 13.4: both directions, then the purge)', () => {
  const lines = 'suction-line, discharge-line';
  const forward = `      flush ${lines} into container outdoors\n`;
  const back = forward.replace('flush', 'back-flush');
  const purge = `      purge ${lines} at 50 psig for 15 s into container outdoors\n`;
  const purgeBack = purge.replace(lines, `${lines} from far end`);
  it.each([
    ['forward, back, purge', forward + back + purge, []],
    ['a purge behind each, each its own way', forward + purge + back + purgeBack, []],
    ['back first', back + forward + purgeBack, []],
    ['purged both ways', forward + purge + purgeBack, []],
    ['the same way twice with no purge', forward + forward + purge, ['flush-not-purged']],
    ['forward, back and forward with no purge', forward + back + forward + purge, ['flush-not-purged']],
  ] as const)('%s', (_what, round, expected) => {
    const solvent = ['solvent 1 x slip', 'solvent 5 x slip'] as const;
    expect([...new Set(found('reach-in-burnout', solvent, [forward + purge, round]))]).toEqual(expected);
  });
});

describe('the cause of a burnout (common practice, handbook 4.5: find and fix it before start)', () => {
  it.each([
    ['check contactor', []],
    ['change contactor', []],
    ['check capacitor, overload', []],
    ['renew motor-starter', []],
    ['change start-relay', []],
    ['check door-gaskets', ['burnout-cause']],
    ['bypass overload', ['not-put-back', 'burnout-cause']],
  ] as const)('%s', (step, expected) => {
    const hold = 'hold "Cause found: relay and condenser fan renewed" by lead';
    expect(found('reach-in-burnout', [hold, step])).toEqual(expected);
  });
});

// R-448A at 80 °F, bubble: 181 psig; R-22: 144 psig; R-404A: 176 psig (tables of saturation; ASHRAE 15 9.2.1 asks for 80 °F).
describe('a blend over the plate of the low side', () => {
  const cite = ' per "unit maker\'s retrofit sheet, page 2"';
  const plate = (psig: number): readonly (readonly [string, string])[] => [
    ['low 150 psig', `low ${psig} psig`],
    ['rated 150 psig', `rated ${psig} psig`],
    ['to 150 psig', `to ${psig} psig`],
  ];
  it.each([
    ['the maker cited', [], []],
    ['nobody cited', [[cite, '']], ['over-design-pressure']],
    ['nobody cited, a little over', [[cite, ''], ...plate(170)], ['standing-pressure-over-plate']],
    [
      'nobody cited, the old gas as high',
      [[cite, ''], ['R-448A', 'R-449A'], ['R-22 ->', 'R-448A ->'], ...plate(170)],
      [],
    ],
    [
      'nobody cited, a plate that the old gas never had',
      [[cite, ''], ['R-448A', 'R-449A'], ['R-22 ->', 'R-448A ->'], ...plate(100)],
      ['over-design-pressure', 'design-pressure-unlikely'],
    ],
    ['far over whatever is cited', plate(135), ['over-design-pressure']],
    [
      'the high side far over whatever is cited',
      [
        ['high 400 psig', 'high 250 psig'],
        ['rated 400', 'rated 250'],
        ['relief 400', 'relief 250'],
      ],
      ['over-design-pressure'],
    ],
  ] as const)('%s', (_what, instead, expected) => {
    expect(found('old-plate-drop-in', ...instead)).toEqual(expected);
  });
});

describe('machines on wheels (handbook 13.6: section 609, 29 inHg for 15 to 30 min; an engine drives the compressor)', () => {
  const hold = '    decay-test system for 10 min, rise at most 1 inHg\n';
  it.each([
    ['a vehicle', [], []],
    ['recovered to the atmosphere by share', [['recover system to 4 inHg', 'recover system to 0 inHg']], []],
    ['a vacuum that falls short', [['recover system to 4 inHg', 'recover system to 2 inHg']], ['recovery-too-shallow']],
    ['a certificate for stationary plant', [['section-609', 'universal']], ['certificate-does-not-cover']],
    ['a vacuum that no manual asks', [['to 29 inHg', 'to 20 inHg']], ['evacuation-not-deep']],
    ['nothing proves it tight', [[hold, '']], ['not-pressure-tested', 'decay-test-missing']],
    [
      'the same machine in a building',
      [['    equipment vehicle\n', '']],
      ['certificate-does-not-cover', 'recovery-too-shallow', 'not-pressure-tested', 'evacuation-not-deep'],
    ],
  ] as const)('%s', (_what, instead, expected) => {
    expect([...new Set(found('car-seized-compressor', ...instead))].sort()).toEqual([...expected].sort());
  });

  it('a unit of a trailer has no heater that anybody could switch on', () => {
    const accepted = /start system in cooling \{[^}]*\}/.exec(textOf('trailer-unit-converted.jobplan'))![0];
    const bare = [accepted, 'start system in cooling'] as const;
    expect(found('trailer-unit-converted', bare)).toEqual(['heater-too-short']);
    expect(found('trailer-unit-converted', bare, ['built 2015', 'built 2015\n    equipment transport'])).toEqual([]);
  });
});

describe('a motor valve under control (semantics: it comes shut and stays where it was last driven; at rest it is parked shut)', () => {
  it.each([
    ['vrf-branch-leak', '    open eev-3 by service-tool\n', 'the machine stands'],
    [
      'carbon-dioxide-case',
      '    open eev-6 by service-tool\n    recover',
      'the machine runs on, its case is locked out',
    ],
  ])('%s', (plan, open) => {
    expect(found(plan)).toEqual([]);
    expect(found(plan, [open, open.includes('recover') ? '    recover' : ''])).toContain('section-not-recovered');
  });
});
