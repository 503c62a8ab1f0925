import type { Entry } from '../../walk/walk';
import { marksLeft, visitOf } from '../course';
import { defineCheck, type WayOut, type Whole } from '../define';
import { listed } from '../listed';
import { edits } from '../support';
import { insertAfter } from '../ways-out';

/** A torch at a valve that heat spoils, with nothing round it. */
export const heatGuardMissing = defineCheck({
  name: 'heat-guard-missing',
  severity: 'warning',
  title: 'A torch comes to a valve that has no heat guard on',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['torch-hazard', 'open-under-pressure', 'brazing-without-nitrogen'],
  meaning:
    'A reversing valve is brazed in and no step has wrapped it; or the plan wraps a part, no torch comes to it while the guard is on, and one comes before or after; or the guard is never taken off again. Other parts that the plan never wraps are left to the crew.',
  why: 'The slide of a reversing valve is plastic and warps before the braze flows, an expansion valve loses the charge of its head, and the valve leaks through for good.',
  source: 'common practice: wet rags, and nothing overheated on the way of the torch (handbook 11, braze)',
  wrong: {
    base: 'split',
    instead: [
      [
        'install filter-drier with nitrogen at 5 cfh\n',
        'wrap expansion-valve\n    unwrap expansion-valve\n    install filter-drier with nitrogen at 5 cfh # <- here\n',
      ],
    ],
  },
  right: {
    base: 'split',
    instead: [
      [
        'install filter-drier with nitrogen at 5 cfh\n',
        'wrap expansion-valve\n    install filter-drier with nitrogen at 5 cfh\n    unwrap expansion-valve\n',
      ],
    ],
  },
  plan(whole) {
    const { graph } = whole.plan;
    const { guards, bare } = torchesOf(whole);
    for (const { entry, part, isOwn } of bare) {
      const { name, kind } = graph.parts[part]!;
      // A guard that met a torch is where the author wants it; the other joints of that part are his to judge.
      const own = guards.filter((guard) => guard.name === name && visitOf(guard.entry) === visitOf(entry));
      if (own.some(({ used }) => used)) continue;
      const [guard] = own;
      if (!guard && !(isOwn && kind.kind === 'reversing-valve')) continue;
      whole.report(entry, {
        message: (say) =>
          `A torch comes to ${name} with no heat guard on it${guard ? `, and that of ${say.step(guard.entry.cause)} meets no torch` : ': heat warps its slide'}: wrap it first, and unwrap it when it is cold.`,
        slot: 'what',
        root: part,
        concerns: [part],
        ...(guard && { related: [{ cause: guard.entry.cause, message: 'it is wrapped here' }] }),
        fixes: [wrapIt(entry, name)],
      });
    }
    for (const entry of new Set(guards.map((guard) => guard.entry)))
      leftOn(
        whole,
        entry,
        guards.flatMap((guard) => (guard.entry === entry ? [guard.name] : [])),
      );
  },
});

/** Wet cloth that stays round a part: it rusts the steel under the insulation, and under a running fan it goes into it. */
function leftOn(whole: Whole, entry: Entry, names: readonly string[]): void {
  const later = whole.entries.slice(whole.entries.indexOf(entry) + 1);
  const left = names.filter((name) => !later.some((each) => marksLeft(each).includes(`unwrap ${name}`)));
  if (left.length === 0) return;
  const torch = [...later]
    .reverse()
    .find(({ events }) => events.some((event) => event.type === 'joins' && event.torch));
  const way = `unwrap ${left.join(', ')}`;
  whole.report(entry, {
    message: `The heat guard round ${listed(left)} is never taken off: unwrap it when the last joint there is cold.`,
    slot: 'what',
    root: entry.slot.step,
    fixes: [insertAfter(`Afterwards: ${way}`, (torch ?? entry).slot.step, way)],
  });
}

/** Something round a part, from the step that puts it on. */
interface Guard {
  readonly name: string;
  readonly entry: Entry;
  /** Whether a torch came to the part while it was on. */
  used: boolean;
}

interface Bare {
  readonly entry: Entry;
  readonly part: number;
  /** Whether the part itself is brazed in, not what stands beside it. */
  readonly isOwn: boolean;
}

/** The guards of a plan, and the parts that a torch comes to without one. */
function torchesOf({ entries, plan: { graph } }: Whole): {
  readonly guards: readonly Guard[];
  readonly bare: readonly Bare[];
} {
  const guards: Guard[] = [];
  const bare: Bare[] = [];
  const on = new Map<string, Guard>();
  for (const entry of entries) {
    for (const [name, puts] of marksOf(entry)) {
      const guard = { name, entry, used: false };
      if (puts) guards.push(guard);
      if (puts) on.set(name, guard);
      else on.delete(name);
    }
    for (const event of entry.events) {
      if (event.type !== 'joins' || !event.torch) continue;
      const ends = event.ends.flatMap((end) => graph.joints[graph.ends[end]!.joint]?.ends ?? [end]);
      for (const part of new Set(ends.map((end) => graph.ends[end]!.part))) {
        const guard = on.get(graph.parts[part]!.name);
        if (guard) guard.used = true;
        else bare.push({ entry, part, isOwn: part === event.part });
      }
    }
  }
  return { guards, bare };
}

/** What a step wraps (true) or unwraps, by name. */
const marksOf = (entry: Entry): readonly (readonly [name: string, puts: boolean])[] =>
  marksLeft(entry).flatMap((mark) => {
    const [word, name] = mark.split(' ', 2);
    return name !== undefined && (word === 'wrap' || word === 'unwrap') ? [[name, word === 'wrap'] as const] : [];
  });

const wrapIt = ({ slot: { step } }: Entry, name: string): WayOut => ({
  title: `Wrap ${name} for this step`,
  edits: (mend) => edits(mend.insertBefore(step, `wrap ${name}`), mend.insertAfter(step, `unwrap ${name}`)),
});
