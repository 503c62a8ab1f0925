import type { Graph, Part } from '../../circuit/graph';
import type { Selector } from '../../plan/selection';
import { defineCheck, type WayOut, type Whole } from '../define';
import { isDrier, touched } from '../plant';
import { writeStanding } from '../ways-out';

/** An old drier left in a circuit that stood open. */
export const drierNotRenewed = defineCheck({
  name: 'drier-not-renewed',
  severity: 'warning',
  title: 'The filter-drier is not renewed after the circuit was opened',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['joint-left-open'],
  meaning:
    'The part of the circuit that the drier stands in was open to the air, and the old drier (or its old cores) is in at the end: it was left in, or taken out and put back.',
  why: 'An old drier is full of water and acid; in a fresh oil of the POE kind it gives them back.',
  source: 'a new liquid drier after every opening, fitted last: public service manuals (handbook 4.4)',
  wrong: {
    base: 'split',
    instead: [
      ['    filter-drier new', '    filter-drier kept # <- here'],
      ['    cut-out filter-drier\n', ''],
      ['install filter-drier with nitrogen', 'connect filter-drier at both ends with nitrogen'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    const { graph } = whole.plan;
    const driers = graph.parts.filter((part) => isDrier(part) && touched(graph, part.index));
    for (const drier of driers) {
      // A suction drier of a burnout has a rule of its own; the liquid drier is what must be new.
      if (inSuction(graph, drier) && driers.length > 1) continue;
      const state = last.after.parts[drier.index]!;
      if (state.mounted === 'none' || state.renewed !== null) continue;
      const opening = whole.entries.find(
        (entry) => entry.after.parts[drier.index]!.opened !== null && entry.before.parts[drier.index]!.opened === null,
      );
      if (!opening) continue;
      whole.reportPart(drier.index, {
        message: (say) =>
          state.setBy
            ? `${drier.name} is stated ${drier.standing}: ${say.step(state.setBy)} puts the old one back, which stood open to the air. State it new, and fit it last, before the test.`
            : `${drier.name} stood open to the air since ${say.step(opening.cause)} and is not renewed: fit a new one last, before the test.`,
        fixes: renew(whole, drier),
        related: [
          { cause: opening.cause, message: 'the circuit was opened here' },
          ...(state.setBy ? [{ cause: state.setBy, message: 'the old one is put back here' }] : []),
        ],
      });
    }
  },
});

/** Whether no coil stands behind a drier on the way back to the compressor. */
const inSuction = (graph: Graph, drier: Part): boolean =>
  !drier.highSide &&
  !graph.parts.some((part) => part.circuit === drier.circuit && part.index > drier.index && part.kind.group === 'coil');

/** The old one that is put back is stated new, and the step that connects it fits it. */
function renew(whole: Whole, drier: Part): readonly WayOut[] {
  const step = [...whole.entries]
    .reverse()
    .find((entry) => entry.events.some((event) => event.type === 'joins' && event.part === drier.index))?.slot.step;
  const word = step?.bound.item.word;
  const only = (step?.values['what'] as readonly Selector[] | undefined)?.every((each) => each.noun === drier.name);
  if (!step || !word || step.word.word !== 'connect' || !only) return [];
  const ends = step.spans['ends'];
  return [
    {
      title: `State ${drier.name} new, and install it`,
      edits: (mend) => {
        const fitted = [
          ...mend.write(step, word.at, word.at + word.text.length, 'install'),
          // The gap before "at both ends" goes with it.
          ...(ends ? mend.write(step, ends.from - 1, ends.to, '') : []),
        ];
        return fitted.length > 0
          ? [...writeStanding(whole.plan, drier, 'new').flatMap((way) => way.edits(mend)), ...fitted]
          : [];
      },
    },
  ];
}
