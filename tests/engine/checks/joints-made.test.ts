import { expect, it } from 'vitest';
import { foundIn } from './edited';

// All joints are made before the test, each as it is stated (handbook 6.3, 13.1).
it.each([
  // Set in place of a tube that was joined past it, and never brazed in.
  [
    'heat-pump-mild-burnout.jobplan',
    'install suction-drier with nitrogen at 6 cfh',
    'place suction-drier',
    'joint-left-open',
  ],
  ['isobutane-cabinet.jobplan', 'install process-tube with nitrogen at 3 cfh', 'place process-tube', 'joint-left-open'],
  // A flare at one end makes no flare of the other.
  [
    'burnout-cores-three-visits.jobplan',
    'connect liquid-line at both ends with nitrogen at 5 cfh',
    'connect liquid-line at both ends with torque-wrench',
    'joint-made-otherwise',
  ],
] as const)('%s: %s', (plan, from, by, name) => {
  expect(foundIn(plan, [[from, by]]).map((finding) => finding.name)).toEqual([name]);
});

it('names the step that flares a joint which stays made, where an old flare is used again', () => {
  const meant = 'flare main-liquid, vapour-1, vapour-2 at far end';
  const found = foundIn('branch-box-renewed.jobplan', [[meant, 'flare liquid-1, vapour-1, vapour-2 at far end']]);
  expect(found.map(({ name, related }) => [name, related.map(({ message }) => message)])).toEqual([
    ['old-flare-reused', ['a flare is made here at a joint that is made up: perhaps this end was meant']],
  ]);
});
