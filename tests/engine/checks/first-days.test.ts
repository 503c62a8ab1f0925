import { describe, expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

// What is looked at in the first days of running: handbook 4.5 (after a burnout), 4.1 and 13.3 (after a conversion).
const told = (plan: string, ...swaps: Swap[]): readonly string[] =>
  foundIn(plan, swaps).map(({ name, message }) => `${name}: ${message}`);

const cores = 'burnout-cores-three-visits.jobplan';
const mild = 'heat-pump-mild-burnout.jobplan';

describe('each set of cores in a suction drier is looked at before it comes out', () => {
  it('the first set', () => {
    expect(told(cores, ['      read pressure-drop of suction-drier, at most 4 psi\n      acid', '      acid'])).toEqual(
      [expect.stringMatching(/^follow-up-missing: The cores of suction-drier come out here, and nobody has read/)],
    );
  });

  it('the last set', () => {
    expect(told(cores, ['      read pressure-drop of suction-drier, at most 2 psi\n', ''])).toEqual([
      expect.stringMatching(/^follow-up-missing: The cores of suction-drier come out here/),
    ]);
  });

  it('the drop of another drier is not that of this one', () => {
    expect(told(cores, ['drop of suction-drier, at most 2 psi', 'drop of liquid-drier, at most 2 psi'])).toEqual([
      expect.stringMatching(/^follow-up-missing: The cores of suction-drier come out here/),
    ]);
  });

  it('a reading in the first hour does not say what two weeks bring', () => {
    expect(told(mild, ['      read pressure-drop of suction-drier, at most 3 psi\n', ''])).toEqual([
      expect.stringMatching(/^follow-up-missing: The cores of suction-drier come out here/),
    ]);
  });
});

it.each([
  [cores, 'at most 4 psi, after 1 h'],
  [mild, 'at most 3 psi, after 1 h'],
])('whoever means to leave a suction drier in for weeks looks at it in the first hours: %s', (plan, limit) => {
  expect(told(plan, [`      read pressure-drop of suction-drier, ${limit}\n`, ''])).toEqual([
    expect.stringMatching(/^follow-up-missing: suction-drier stays in for more than a week after this start/),
  ]);
});

describe('strainers after a conversion', () => {
  it('are looked at where the new oil loosens what the old one left; the drop of a drier does not show it', () => {
    expect(told('double-riser-flushed.jobplan', ['      clean strainers\n', ''])).toEqual([
      expect.stringMatching(/^follow-up-missing: After this start no step asks for a look at strainers and oil/),
    ]);
  });

  it('or else at both the oil and the drier', () => {
    const looks = '      read pressure-drop of filter-drier, at most 3 psi\n      clean strainers\n';
    const [drop] = looks.split('      clean');
    expect(told('fixed-orifice-conversion.jobplan', [looks, ''])).toEqual([
      expect.stringMatching(/^follow-up-missing: After this start no step asks for a look at strainers and oil/),
    ]);
    expect(told('fixed-orifice-conversion.jobplan', [looks, drop!])).toEqual([]);
  });

  it.each(['medium-pressure-conversion.jobplan', 'mineral-oil-stays.jobplan', 'trailer-unit-converted.jobplan'])(
    'are not passed over by a crew that comes back to the drier: %s',
    (plan) => {
      expect(told(plan, ['      clean strainers\n', ''])).toEqual([
        expect.stringMatching(/^follow-up-missing: After this start step \d+ \(read pressure-drop.* no step looks at/),
      ]);
    },
  );
});

it('an oil that the new refrigerant carries only in part is looked at', () => {
  const visit =
    '    visit "Oil level and strainers" within 2 days {\n      read oil-level\n      clean strainers\n      read pressure-drop of filter-drier, at most 3 psi\n    }\n';
  expect(told('mineral-oil-stays.jobplan', [visit, ''])).toEqual([
    expect.stringMatching(/^follow-up-missing: .* a look at the oil level, which mineral with R-422D asks for/),
  ]);
});

describe('a label for the next crew', () => {
  it.each(['freezer-new-condensing-unit.jobplan', 'ductless-valve-outdoors.jobplan'])(
    'is asked for, too, where the new refrigerant comes in a unit of its own: %s',
    (plan) => {
      expect(told(plan, [`\n${plan.startsWith('freezer') ? '  ' : ''}    label system`, ''])).toEqual([
        expect.stringMatching(/^label-missing: R-\S+ takes the place of R-4\S+ and no step labels the system/),
      ]);
    },
  );

  it('is not the one on a recovery cylinder', () => {
    expect(told('medium-pressure-conversion.jobplan', ['label system', 'label cylinder'])).toEqual([
      expect.stringMatching(/^label-missing: R-513A takes the place of R-134a/),
    ]);
  });
});
