import { sentence } from '../../sentence';
import { acidIn, flammable } from '../hazards';
import { type Caution, fireNear, when } from './caution';

/** Gas that goes back into a cylinder. */
export const recovering: readonly Caution[] = [
  (here) => {
    const event = here.events('recovers')[0];
    return event?.held.some((held) => held.refrigerant !== null)
      ? sentence('Liquid freezes skin: goggles and gloves. Cylinder on the scale, for this one gas, never overfilled.')
      : null;
  },
  (here) => {
    const burning = here
      .events('recovers')
      .flatMap((event) => event.held)
      .find((held) => flammable(held.refrigerant));
    return burning ? fireNear(here, burning.refrigerant!) : null;
  },
  (here) =>
    when(
      here.events('recovers').some((event) => event.spaces.some((space) => acidIn(here, space.parts))),
      'Gas and oil of a burnt machine are acid: rubber gloves, face shield, air moving.',
    ),
];
