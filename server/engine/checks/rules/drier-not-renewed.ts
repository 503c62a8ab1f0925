import type { Graph, Part } from '../../circuit/graph';
import type { Plant } from '../../circuit/state';
import type { Selector } from '../../plan/selection';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut, type Whole } from '../define';
import { heldBy, isDrier, spaceAt, touched } from '../plant';
import { edits } from '../support';
import { provesPart, writeStanding } from '../ways-out';

/** An old drier left in a circuit that stood open, or that another refrigerant or oil comes into. */
export const drierNotRenewed = defineCheck({
  name: 'drier-not-renewed',
  severity: 'warning',
  title: 'The filter-drier is not renewed after the circuit was opened or converted',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['joint-left-open'],
  meaning:
    'The part of the circuit that the drier stands in was open to the air, and the old drier (or its old cores) is in at the end: it was left in, or taken out and put back. Or nothing was opened there, and another refrigerant or oil went in on the old drier.',
  why: 'An old drier is full of water and acid; in a fresh oil of the POE kind it gives them back. Its core was chosen for the old refrigerant and oil, and holds dirt that a new one washes free.',
  source:
    'a new liquid drier after every opening, fitted last: public service manuals (handbook 4.4); in a conversion: trade guides (handbook 13.3)',
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
      // One that is stated new or gone, and is not, is told as that.
      if (drier.standing !== 'kept' && drier.standing !== 'reused') continue;
      const opening = whole.entries.find(
        (entry) => entry.after.parts[drier.index]!.opened !== null && entry.before.parts[drier.index]!.opened === null,
      );
      if (!opening) {
        const fresh = converted(whole, drier);
        if (fresh)
          whole.reportPart(drier.index, {
            message: (say) =>
              `${drier.name} is stated ${drier.standing}, and ${fresh.what} goes in on it at ${say.step(fresh.entry.cause)}: its core holds the water and dirt of ${fresh.old}; renew it before.`,
            fixes: fitNew(whole, drier),
            related: [{ cause: fresh.entry.cause, message: `${fresh.what} goes in here` }],
          });
        continue;
      }
      whole.reportPart(drier.index, {
        message: (say) =>
          state.setBy
            ? `${drier.name} is stated ${drier.standing}: ${say.step(state.setBy)} puts the old one back, which stood open to the air. State it new, and fit it last, before the test.`
            : `${drier.name} stood open to the air since ${say.step(opening.cause)} and is not renewed: fit a new one last, before the test.`,
        fixes: state.setBy ? renew(whole, drier) : fitNew(whole, drier),
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

/** The step that puts another refrigerant, or another oil, in on a drier that stays. */
function converted(
  whole: Whole,
  drier: Part,
): { readonly entry: Entry; readonly what: string; readonly old: string } | null {
  const { refrigerant, oil } = whole.plan.system;
  const gas = whole.entries.find((entry) =>
    entry.events.some(
      (event) =>
        event.type === 'charges' &&
        event.refrigerant === refrigerant.after &&
        event.spaces.some((space) => space.parts.includes(drier.index)),
    ),
  );
  if (gas && refrigerant.before !== null && refrigerant.before !== refrigerant.after)
    return { entry: gas, what: refrigerant.after ?? 'the new refrigerant', old: refrigerant.before };
  const filled = whole.entries.find((entry) =>
    entry.events.some(
      (event) => event.type === 'changes-oil' && whole.plan.graph.parts[event.part]!.circuit === drier.circuit,
    ),
  );
  if (filled && oil.before !== null && oil.after !== null && oil.before !== oil.after)
    return { entry: filled, what: `${oil.after} oil`, old: `${oil.before} oil` };
  return null;
}

/** The old one that is put back is stated new, and the step that connects it fits it. */
function renew(whole: Whole, drier: Part): readonly WayOut[] {
  const step = [...whole.entries]
    .reverse()
    .find((entry) => entry.events.some((event) => event.type === 'joins' && event.part === drier.index))?.slot.step;
  const word = step?.bound.item.word;
  if (step?.word.word === 'install') return writeStanding(whole.plan, drier, 'new');
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

/** One that nobody touches is stated new, and fitted before the first test: the old one comes off in the same step. */
function fitNew(whole: Whole, drier: Part): readonly WayOut[] {
  const proves = whole.entries.find((entry) => provesPart(entry, drier.index) && mayBeCut(entry.before, drier.index));
  if (!proves) return [];
  const brazed = (drier.properties.joint ?? 'brazed') === 'brazed';
  const gas = brazed ? ' with nitrogen at 5 cfh' : '';
  return [
    {
      title: `State ${drier.name} new, and fit it before the test`,
      edits: (mend) => {
        const fitted = edits(mend.insertBefore(proves.slot.step, `install ${drier.name}${gas}`));
        return fitted.length > 0
          ? [...writeStanding(whole.plan, drier, 'new').flatMap((way) => way.edits(mend)), ...fitted]
          : [];
      },
    },
  ];
}

/** Whether a part can be cut out as the plant stands: locked out, and open already or proved at zero. */
function mayBeCut(plant: Plant, part: number): boolean {
  const space = spaceAt(plant, part);
  if (plant.power !== 'locked-out' || !space || heldBy(plant, space).gas === 'vacuum') return false;
  return space.openings.length > 0 || plant.parts[part]!.opened !== null || plant.parts[part]!.provedZero !== null;
}
