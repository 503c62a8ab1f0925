import { isLine } from '../../circuit/kinds';
import type { Cause } from '../../circuit/state';
import { defineCheck, type RelatedTo, type Whole } from '../define';
import { endName } from '../plant';
import { edits } from '../support';

/** A flare that was opened and is made up again. */
export const oldFlareReused = defineCheck({
  name: 'old-flare-reused',
  severity: 'warning',
  title: 'An old flare is used again',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A flare joint of a line that stays was undone by an earlier step and is made up here, and no step in between cuts the old flare off and makes a new one.',
  why: 'The copper is hard and thinned where the nut pressed it: it cracks or weeps under the pressures of today’s refrigerants.',
  source: 'common practice; makers’ sheets and the standards for flammable refrigerants ask it (handbook 10.3)',
  wrong: {
    base: 'ductless',
    instead: [
      ['  flare each kept line at both ends\n', ''],
      [
        'connect each kept line at both ends with torque-wrench',
        'connect each kept line at both ends with torque-wrench # <- here',
      ],
    ],
  },
  right: { base: 'ductless' },
  plan(whole) {
    const opened = new Set<number>();
    for (const entry of whole.entries) {
      for (const event of entry.events)
        if (event.type === 'opens') for (const end of flaredAt(whole, event.ends)) opened.add(end);
      const made = entry.events.flatMap((event) => (event.type === 'joins' ? event.ends : []));
      const old = flaredAt(whole, made).filter((end) => opened.has(end) && !isNew(entry.before.marks, end));
      for (const end of old) opened.delete(end);
      const [first] = old;
      if (first === undefined) continue;
      const lines = [...new Set(old.map((end) => whole.plan.graph.ends[end]!.part))];
      const line = `flare ${lines.map((each) => whole.plan.graph.parts[each]!.name).join(', ')} at both ends`;
      whole.report(entry, {
        message: (say) =>
          `${endName(whole.plan.graph, first).replace(/^the/, 'The')} is made up with its old flare${old.length > 1 ? `, and ${old.length - 1} more` : ''}: cut it off and make a new one on ${say.parts(lines)} first.`,
        slot: 'what',
        root: entry.slot.step,
        concerns: lines,
        related: flaredElsewhere(entry.before.marks, old),
        fixes: [{ title: `First: ${line}`, edits: (mend) => edits(mend.insertBefore(entry.slot.step, line)) }],
      });
    }
  },
});

/** Steps that flare a joint which is made at that moment: this one too early, or another one in its place. */
function flaredElsewhere(marks: ReadonlyMap<string, Cause>, old: readonly number[]): readonly RelatedTo[] {
  const found = new Map<Cause, RelatedTo>();
  for (const [key, cause] of marks) {
    if (!key.startsWith(madeEnd)) continue;
    const early = old.includes(Number(key.slice(madeEnd.length)));
    const message = early
      ? 'a flare is made here, while the joint is still made up'
      : 'a flare is made here at a joint that is made up: perhaps this end was meant';
    if (early || !found.has(cause)) found.set(cause, { cause, message });
  }
  return [...found.values()];
}
const madeEnd = 'flare made end ';

/** Whether a flare step has dealt with the end since the beginning. */
const isNew = (marks: ReadonlyMap<string, unknown>, end: number): boolean => marks.has(`flare end ${end}`);

/** The ends of lines with flares that stay, in the joints of some ends. */
function flaredAt(whole: Whole, ends: readonly number[]): readonly number[] {
  const { graph } = whole.plan;
  const all = new Set(ends.flatMap((end) => graph.joints[graph.ends[end]!.joint]?.ends ?? [end]));
  return [...all].filter((end) => {
    const part = graph.parts[graph.ends[end]!.part]!;
    // A valve, a drier or a piston has a seat that is machined: only tube is flared.
    return (
      isLine(part.kind) && part.properties.joint === 'flare' && (part.standing === 'kept' || part.standing === 'reused')
    );
  });
}
