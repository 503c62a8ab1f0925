import { flammable, heldBefore } from '../hazards';
import { type Caution, fireNear, when } from './caution';

/** Pumping down. */
export const pumping: readonly Caution[] = [
  (here) => {
    const spaces = here.events('evacuates').flatMap((event) => event.spaces);
    const machine = spaces.some((space) =>
      space.parts.some((index) => here.plan.graph.parts[index]!.kind.kind === 'compressor'),
    );
    return when(machine, 'The compressor stays off: its windings burn out under vacuum. Pump exhaust outdoors.');
  },
  (here) => {
    const held = here.events('evacuates').flatMap((event) => event.spaces.flatMap((space) => heldBefore(here, space)));
    const burning = held.find((each) => flammable(each.refrigerant));
    return burning ? fireNear(here, burning.refrigerant!) : null;
  },
];
