import { factsOf, highGlide } from '../../../reference/refrigerant-facts';
import { sentence } from '../../sentence';
import { flammable } from '../hazards';
import type { Here } from '../here';
import { type Caution, fireNear, when } from './caution';

const unitCharge = (here: Here, index: number): string | null => {
  const part = here.plan.graph.parts[index]!;
  return (part.unit !== null ? here.plan.graph.parts[part.unit]! : part).properties.holds?.refrigerant ?? null;
};

/** Refrigerant that goes in. */
export const charging: readonly Caution[] = [
  (here) => {
    const event = here.events('charges')[0];
    if (!event || event.purpose === 'adjust') return null;
    const facts = factsOf(event.refrigerant);
    return sentence(
      'Liquid freezes skin: goggles and gloves. Read the cylinder’s label before the valve is opened.',
      (facts?.glide ?? 0) >= highGlide
        ? ` ${event.refrigerant} is a blend with glide: out of the cylinder as liquid.`
        : '',
    );
  },
  (here) => {
    const gas =
      here.events('charges').find((event) => event.purpose === 'charge')?.refrigerant ??
      here.events('lets-in').flatMap((event) => event.parts.flatMap((index) => unitCharge(here, index) ?? []))[0] ??
      null;
    return gas !== null && flammable(gas) ? fireNear(here, gas) : null;
  },
  (here) =>
    when(
      here.events('charges').some((event) => event.purpose === 'adjust'),
      'The machine runs: hot discharge line, turning fans. A little at a time, then wait.',
    ),
];
