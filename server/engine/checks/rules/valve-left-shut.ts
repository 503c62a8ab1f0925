import type { Plant } from '../../circuit/state';
import type { Step } from '../../plan/step';
import type { Entry } from '../../walk/walk';
import { beginsToRun, lastBeforeLeaving } from '../course';
import { defineCheck } from '../define';
import { liquidSections } from '../left-behind';
import { standsNow, touched } from '../plant';
import { edits } from '../support';

/** A valve that a step shut, or held open, and that stays so. */
export const valveLeftShut = defineCheck({
  name: 'valve-left-shut',
  severity: 'warning',
  title: 'A valve is left shut, or held open by hand',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['compressor-without-refrigerant'],
  meaning:
    'A valve that a step closed is still shut when the plan ends, or a magnet or stem still holds one open. Where liquid is shut in by it with no room to grow, the finding is an error.',
  why: 'A compressor pumps against a shut valve and bursts or burns; a valve held open floods the compressor at the first stop.',
  source: 'common practice: every valve that is closed has its opening (handbook 13.5)',
  wrong: {
    base: 'rack',
    instead: [
      ['return sol-1, sol-2, epr-1 to control', 'return sol-1, epr-1 to control'],
      ['open sol-1, sol-2 by magnet\n    evacuate', 'open sol-1, sol-2 by magnet # <- here\n    evacuate'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    const { start } = whole.view.walk;
    const { graph } = whole.plan;
    // Valves that one step shut are one mistake, mended by one edit.
    const liquid = liquidSections(last.after).flatMap(({ space }) => space.parts);
    const ways = new Map<string, string[]>();
    for (const part of graph.parts) {
      if (!touched(graph, part.index) || !standsNow(last.after, part.index)) continue;
      const [was, is] = [start.parts[part.index]!, last.after.parts[part.index]!];
      const shut = is.position === 'shut' && was.position !== 'shut' && part.kind.shuts !== 'driven';
      const ends = part.ends.filter(
        (end) => last.after.ends[end]!.valve === 'shut' && start.ends[end]!.valve !== 'shut',
      );
      const held = is.heldBy;
      if (!shut && ends.length === 0 && !held) continue;
      // A valve that closes off what is gone for good is meant to stay shut.
      const neighbours = part.ends.flatMap((end) => graph.joints[graph.ends[end]!.joint]?.ends ?? []);
      if (neighbours.some((end) => !standsNow(last.after, graph.ends[end]!.part))) continue;
      const entry = [...whole.entries].reverse().find((each) => {
        const [before, after] = [each.before.parts[part.index]!, each.after.parts[part.index]!];
        if (held) return before.heldBy !== held && after.heldBy === held;
        if (shut) return before.position !== 'shut' && after.position === 'shut';
        return ends.some((end) => each.before.ends[end]!.valve !== 'shut' && each.after.ends[end]!.valve === 'shut');
      });
      if (!entry) continue;
      const way = held
        ? `return ${part.name} to control`
        : ends.length > 0 && !shut
          ? `open valves of ${part.name}`
          : `open ${part.name}`;
      const root = `${entry.slot.step.text} ${held ?? 'shut'}`;
      const own = ways.get(root);
      if (own) own.push(way);
      else ways.set(root, [way]);
      const all = ways.get(root)!;
      const runs = held ? undefined : firstRun(whole.entries, entry);
      whole.report(entry, {
        message: held
          ? `${part.name} is held open by ${held} here and never returned to control.`
          : `${part.name} is shut here and never opened again${liquid.includes(part.index) ? ', and liquid that is shut in by it has no room to grow' : ''}.`,
        slot: 'what',
        root,
        concerns: [part.index],
        related: runs ? [{ cause: runs.cause, message: `it runs from here with ${part.name} shut` }] : [],
        // Liquid with no room to grow bursts what it is shut in.
        ...(liquid.includes(part.index) && { severity: 'error' as const }),
        fixes: [
          {
            title: 'Put it back before anybody goes',
            edits: (mend) => {
              const leaving = lastBeforeLeaving(whole.entries, entry);
              const start = held
                ? undefined
                : (withOthers(whole.entries, entry) ?? lastStart(whole.entries, entry, leaving));
              return edits(start ? mend.insertBefore(start, ...all) : mend.insertAfter(leaving, ...all));
            },
          },
        ],
      });
    }
  },
});

/** The first step behind another one that sets the machine, or a part of it, going. */
const firstRun = (entries: readonly Entry[], from: Entry): Entry | undefined =>
  entries.slice(entries.indexOf(from) + 1).find(beginsToRun);

/** The step that opens again what was shut together with a valve: there the author meant to open them all. */
function withOthers(entries: readonly Entry[], by: Entry): Step | undefined {
  const shut = by.after.parts.flatMap(({ position }, part) =>
    position === 'shut' && by.before.parts[part]!.position !== 'shut' ? [part] : [],
  );
  return entries
    .slice(entries.indexOf(by) + 1)
    .find(({ before, after }) =>
      shut.some((part) => before.parts[part]!.position === 'shut' && after.parts[part]!.position === 'open'),
    )?.slot.step;
}

/**
 * The last step between two others that sets the machine going, or gives it the power with which it may start by itself: a shut
 * valve is opened before it.
 */
function lastStart(entries: readonly Entry[], from: Entry, to: Step): Step | undefined {
  const last = entries.findIndex((entry) => entry.slot.step === to);
  const between = entries.slice(entries.indexOf(from) + 1, last + 1).reverse();
  const start = between.find((entry) => !entry.before.running && entry.after.running);
  if (!start) return undefined;
  const power = between.slice(between.indexOf(start)).find((entry) => !hasPower(entry.before) && hasPower(entry.after));
  return (power ?? start).slot.step;
}

const hasPower = ({ power, lockedOut }: Plant): boolean => power === 'on' && lockedOut.size === 0;
