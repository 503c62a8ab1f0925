import { spacesOf } from '../../circuit/spaces';
import { exactly } from '../../quantity';
import { minute } from '../../reference/table-units';
import type { Entry } from '../../walk/walk';
import { defineCheck, type Say, type Whole } from '../define';
import { isDrier } from '../plant';
import { shown } from '../support';
import { moveDown, provesPart } from '../ways-out';

/** Even the quickest crew should not take longer than this from fitting the drier to closing the circuit. */
const most = 30 * minute;
/** Who fits the drier last has at most two parts to braze in after it (common practice, no source). */
const brazedMost = 2;

/** A new drier that stands open to the air while other work goes on. */
export const drierOpenLong = defineCheck({
  name: 'drier-open-long',
  severity: 'warning',
  title: 'The new drier stands open too long, or is not fitted last',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  yieldsTo: ['drier-before-flush', 'joint-left-open', 'left-unattended'],
  meaning:
    'Between fitting the drier (or its cores) and closing the last joint of its part of the circuit lies more than half an hour of work by the usual least times, or more than two parts are brazed in after it; or the circuit is opened again behind it before it is tested.',
  why: 'Its desiccant fills with the water of the air and has none left for the machine, and takes the dirt of the joints that are cut and brazed after it.',
  source: 'fit it last, open under about 15 minutes: common practice (handbook 13.1)',
  wrong: {
    base: 'split',
    instead: [
      ['    install filter-drier with nitrogen at 5 cfh\n', ''],
      [
        'place new equipment',
        'place new equipment\n    install filter-drier with nitrogen at 5 cfh # <- here\n    bench-flush evaporator\n    clean strainers',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (event.type !== 'mounts') continue;
        for (const index of event.parts) {
          const part = whole.plan.graph.parts[index]!;
          if (!isDrier(part)) continue;
          const again = openedAgain(whole.entries, at, index);
          const closed = closingAfter(whole.entries, again ? whole.entries.indexOf(again) : at, index);
          if (closed <= at) continue;
          const between = whole.entries.slice(at + 1, closed + 1);
          const time = between.reduce((sum, each) => sum + leastTime(whole, each), 0);
          const brazed = between.reduce((sum, each) => sum + brazedIn(each, index), 0);
          if (time <= most && brazed <= brazedMost && !again) continue;
          const last = whole.entries[closed]!;
          const why = (say: Say): string =>
            time > most
              ? `at least ${shown(whole.plan, exactly('time', time))} of work lie between, and a drier should stand open for about 15 minutes (common practice)`
              : again
                ? `${say.step(again.cause)} opens it again, to the water of the air and to dirt`
                : `${brazed} parts are brazed in after it, and their dirt and the water of the air go into the drier`;
          whole.report(entry, {
            message: (say) =>
              `${part.name} is fitted here and its part of the circuit is closed only at ${say.step(last.cause)}: ${why(say)}; fit it last.`,
            slot: 'what',
            root: entry.slot.step,
            fixes: event.parts.every((part) => isDrier(whole.plan.graph.parts[part]!))
              ? [
                  moveDown(
                    'Fit it last, before the test',
                    entry,
                    'before',
                    (next, all) => all.indexOf(next) > all.indexOf(last) && provesPart(next, index),
                  ),
                ]
              : [],
            concerns: [index],
            related: [
              ...(again ? [{ cause: again.cause, message: 'it is opened again here' }] : []),
              { cause: last.cause, message: 'it is closed here' },
              ...joinedBy(last).map((each) => ({ part: each, message: 'this is open until then' })),
            ],
          });
        }
      }
    });
  },
});

/** The first step behind the fitting of a drier, and before anything proves it, that opens its part of the circuit again. */
function openedAgain(entries: readonly Entry[], at: number, drier: number): Entry | undefined {
  for (const entry of entries.slice(at + 1)) {
    if (provesPart(entry, drier) || entry.after.parts[drier]!.mounted === 'none') return undefined;
    // A second drier is cut in with the first.
    if (fitsDrier(entry)) continue;
    const opens = entry.events.some(
      (event) => event.type === 'opens' && event.space.openings.length === 0 && event.space.parts.includes(drier),
    );
    if (opens) return entry;
  }
  return undefined;
}

const fitsDrier = ({ before, events }: Entry): boolean =>
  events.some((event) => event.type === 'mounts' && event.parts.some((part) => isDrier(before.graph.parts[part]!)));

/** How many parts beside driers a step brazes into the circuit that a drier stands in. */
function brazedIn({ before, events }: Entry, drier: number): number {
  const { parts } = before.graph;
  return events.filter(
    (event) =>
      event.type === 'joins' &&
      event.torch &&
      !isDrier(parts[event.part]!) &&
      parts[event.part]!.circuit === parts[drier]!.circuit,
  ).length;
}

/** The parts at whose ends an entry makes the joint up. */
const joinedBy = ({ before, events }: Entry): readonly number[] => [
  ...new Set(
    events.flatMap((event) =>
      event.type === 'joins'
        ? event.ends.flatMap((end) =>
            (before.graph.joints[before.graph.ends[end]!.joint]?.ends ?? [end]).map(
              (each) => before.graph.ends[each]!.part,
            ),
          )
        : [],
    ),
  ),
];

/** The first entry from one on after which the space of a part is closed; the one itself where it never is. */
function closingAfter(entries: readonly Entry[], at: number, part: number): number {
  for (let k = at; k < entries.length; k++)
    if (spacesOf(entries[k]!.after, part).every((space) => space.openings.length === 0)) return k;
  return at;
}

/** The least time that an entry takes, s. */
function leastTime(whole: Whole, entry: Entry): number {
  const time = whole.view.takeOff.time.steps.get(entry);
  return time ? time.work.low + time.wait.low : 0;
}
