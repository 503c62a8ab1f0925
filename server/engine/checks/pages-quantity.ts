import { faultPage } from './fault-page';
import type { Page } from './page';

const test = 'pressure-test each open part to 450 psig for 30 min';
const tested = (to: string): (readonly [string, string])[] => [
  [test, `pressure-test each open part to ${to} for 30 min # <- here`],
];
const guess = 'The reader would have to guess, and so would whoever turns the regulator.';

/** Faults of numbers and units. */
export const quantityPages: readonly Page[] = [
  faultPage('no-unit', 'A number without its unit', 'Every number of a plan carries its unit.', guess, tested('450')),
  faultPage(
    'unknown-unit',
    'A unit that is not known',
    'The unit is misspelt, or is none of those that plans use.',
    guess,
    tested('450 psug'),
  ),
  faultPage(
    'mixed-units',
    'Units that do not go together',
    'A number in two parts has units of different kinds, or in the wrong order.',
    guess,
    [['recover-charge 7 lb', 'recover-charge 7 lb 4 ft # <- here']],
  ),
  faultPage(
    'backward-range',
    'A range from more to less',
    'The first figure of a range is the smaller one.',
    'One of the two figures is most likely a slip.',
    [['at 50 psig for 15 s into container', 'at 50 psig for 90..30 s into container # <- here']],
  ),
  faultPage('not-a-number', 'Not a number', 'What stands there cannot be read as a number.', guess, [
    ['tube 7/8 in ACR', 'tube 7/0 in ACR # <- here'],
  ]),
  faultPage(
    'wrong-kind',
    'A quantity of another kind',
    'A pressure, a time, a mass is expected, and the unit is of something else; a temperature is no difference of temperatures.',
    'The figure cannot be used, and a reading of 10 °F is not a superheat of 10 Δ°F.',
    [['subcooling 10 Δ°F', 'subcooling 10 °F # <- here']],
  ),
  faultPage(
    'ambiguous-reference',
    'Gauge or absolute is not said',
    'A bare psi, kPa or bar can mean above the atmosphere or above nothing; a level says which.',
    'The difference is a whole atmosphere: enough to leave a joint unproven, or to burst a coil.',
    tested('450 psi'),
  ),
  faultPage(
    'impossible',
    'A value that cannot be',
    'Colder than absolute zero, a vacuum deeper than perfect, a day that is not in the calendar, a wall thicker than its tube.',
    'It is a slip, and every figure that rests on it would be wrong.',
    [['outdoors 80 degF', 'outdoors -500 degF # <- here']],
  ),
  faultPage(
    'unknown-tube',
    'A tube that no table has',
    'The standard that is named has no tube of this outside diameter.',
    'Bore and wall are not known: neither the rating nor solvent and times can be worked out.',
    [['tube 7/8 in ACR', 'tube 13/16 in ACR # <- here']],
  ),
];
