import { exactly } from '../../../quantity';
import { sentence } from '../../sentence';
import { acidIn, names } from '../hazards';
import type { Here } from '../here';
import { type Caution, when } from './caution';

/** The parts that the step names. */
const partsOf = (here: Here): readonly number[] => {
  const what = here.value<readonly { noun: string }[]>('what') ?? [];
  return what.flatMap((selector) =>
    selector.noun === 'system'
      ? here.plan.graph.parts.map((part) => part.index)
      : (here.plan.graph.named.get(selector.noun) ?? []),
  );
};

/** What stands behind a joint that is loosened, and what is heavy. */
export const opening: readonly Caution[] = [
  (here) => {
    const high = here
      .events('opens')
      .find((event) => event.held.high > here.before.atmosphere * 1.05 && event.held.gas !== 'air');
    return high
      ? sentence(
          `Under pressure: ${high.held.gas === 'refrigerant' ? high.held.refrigerant : high.held.gas} at up to `,
          here.ruler.computed(exactly('pressure', high.held.high)),
          '. Nothing is loosened before it is down.',
        )
      : null;
  },
  (here) =>
    when(
      here.events('opens').some((event) => event.held.gas !== 'air' && event.held.high < here.before.atmosphere * 0.97),
      'It stands below the air’s pressure: let dry nitrogen in first, or it draws damp air and dirt in.',
    ),
  (here) => {
    // Oil keeps refrigerant dissolved; on the first opening it is still in the lines.
    const traces = here.events('opens').filter((event) => event.held.refrigerant !== null);
    return when(
      traces.length > 0,
      'The oil still gives refrigerant off: air moving. No torch on these joints; flame makes acid gas of it and lights the oil.',
    );
  },
  (here) =>
    when(
      [
        ...here.events('opens').flatMap((event) => event.space.parts),
        ...(['acid-test', 'drain', 'change-oil', 'sample'].includes(here.step.word.word) ? partsOf(here) : []),
      ].some((index) => acidIn(here, [index])),
      'Acid oil burns skin and eyes: rubber gloves, face shield; wash off at once.',
    ),
  (here) => {
    const heavy = [...here.events('mounts'), ...here.events('unmounts')]
      .flatMap((event) => event.parts)
      .filter((index) => ['compressor', 'condenser'].includes(here.plan.graph.parts[index]!.kind.kind));
    return when(heavy.length > 0, `Heavy: ${names(here, heavy)}. Hoist or two people; ends capped on the way.`);
  },
];
