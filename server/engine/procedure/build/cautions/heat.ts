import { sentence } from '../../sentence';
import { classOf, shutInFlammable } from '../hazards';
import { type Caution, when } from './caution';

/** A torch. 29 CFR 1910.252: fire watch for at least half an hour. */
export const heating: readonly Caution[] = [
  (here) =>
    when(
      here.events('joins').some((event) => event.torch),
      'Hot work: what burns is out of the way or shielded, extinguisher at hand, fire watch for 30 min after. Nitrogen flows before the flame and until the joint is cool.',
    ),
  (here) => {
    if (!here.events('joins').some((event) => event.torch)) return null;
    const [shut] = shutInFlammable(here);
    return shut
      ? sentence(
          `${shut.refrigerant} (${classOf(shut.refrigerant)}) stands shut in ${shut.part}: its valves stay closed, the detector is on before the torch is lit.`,
        )
      : null;
  },
];
