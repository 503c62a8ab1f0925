import type { Plant } from '../../circuit/state';
import type { Entry } from '../../walk/walk';
import { has, visitOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { readyCompressors } from '../plant';
import { roundTrip, shutInWay } from '../round-trip';
import { edits } from '../support';

/** A machine that runs while its gas cannot come round. */
export const startedAgainstShutValve = defineCheck({
  name: 'started-against-shut-valve',
  severity: 'error',
  title: 'A compressor starts against a shut valve',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['compressor-without-refrigerant', 'joint-left-open', 'valve-left-shut', 'power-not-restored'],
  meaning:
    'The system starts, or runs again with the power, and no way from the compressor’s outlet round to its inlet is open: valves that hands shut stand in each. A start for a pump-down is fine, also where the plan only stops again with the valves still shut and then recovers or opens what is behind them; a coil or a receiver must lie before the shut valve. Where a coil or a receiver lies before the shut valve, the finding is a warning; so it is where the machine starts with a branch still shut off, which is opened to it only while it runs.',
  why: 'Against a shut discharge valve a compressor bursts or burns within seconds; behind a shut liquid or suction valve it pulls a vacuum, foams its oil away and trips.',
  source: 'common practice: valves open before the start (handbook 13.1)',
  wrong: {
    base: 'rack',
    instead: [
      ['    open valve-s, valve-d\n', ''],
      ['start system', 'start system # <- here\n    open valve-s, valve-d'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      const start = entry.events.find((event) => event.type === 'starts');
      if (!start && (entry.before.running || !entry.after.running)) return;
      const gathers = pumpsDown(whole, at);
      const plant = entry.after;
      for (const { index } of readyCompressors(plant)) {
        if (start && start.parts.length > 0 && !start.parts.includes(index)) continue;
        const shut = shutInWay(plant, index);
        if (shut.length === 0) continue;
        const room = roundTrip(plant, index).passed.some((part) => {
          const { group, kind } = whole.plan.graph.parts[part]!.kind;
          return group === 'coil' || kind === 'receiver';
        });
        // What a pump-down gathers needs a coil or a receiver before the shut valve.
        if (gathers && room) return;
        whole.report(entry, {
          message: (say) =>
            `${say.part(index)} starts while ${say.parts(shut)} ${shut.length > 1 ? 'stand' : 'stands'} shut, and its gas has no other way round: open ${shut.length > 1 ? 'them' : 'it'} first.`,
          slot: 'what',
          severity: room ? 'warning' : 'error',
          root: shut.join(),
          concerns: [index, ...shut],
          related: shut.flatMap((part) => {
            const by = shutBy(whole, entry, part);
            return by ? [{ cause: by.cause, message: `${whole.plan.graph.parts[part]!.name} was shut here` }] : [];
          }),
          fixes: [
            {
              title: 'Open before this step',
              edits: (mend) =>
                edits(
                  mend.insertBefore(
                    entry.slot.step,
                    `open ${shut.map((part) => whole.plan.graph.parts[part]!.name).join(', ')}`,
                  ),
                ),
            },
          ],
        });
        return;
      }
      if (!gathers) branchShut(whole, at);
    });
  },
});

/** What the plan shut off by hand, and opens only when the machine runs. */
function branchShut(whole: Whole, at: number): void {
  const { entries } = whole;
  const entry = entries[at]!;
  const isShut = (plant: Plant, part: number): boolean => plant.parts[part]!.position === 'shut';
  const shut = whole.plan.graph.parts.flatMap(({ kind, index }) =>
    kind.shuts === 'hand' && isShut(entry.after, index) && !isShut(whole.view.walk.start, index) ? [index] : [],
  );
  // What runs on through the work draws a branch empty before it is shut off.
  if (shut.length === 0 || entry.before.running) return;
  // A machine that is stopped again before the valves open has run for something else.
  for (const later of entries.slice(at + 1)) {
    if (!later.before.running) return;
    const opened = shut.filter((part) => !isShut(later.after, part));
    if (opened.length === 0) continue;
    const by = shutBy(whole, entry, opened[0]!);
    whole.report(entry, {
      message: (say) =>
        `${say.parts(opened)} still ${opened.length > 1 ? 'stand' : 'stands'} shut when the machine starts, and ${say.step(later.cause)} opens ${opened.length > 1 ? 'them' : 'it'} while it runs: open before the start.`,
      slot: 'what',
      severity: 'warning',
      root: opened.join(),
      concerns: opened,
      related: [
        { cause: later.cause, message: 'opened only here' },
        ...(by ? [{ cause: by.cause, message: 'shut here' }] : []),
      ],
    });
    return;
  }
}

/**
 * Whether the machine is run to draw the charge in: a pump-down before anything is opened or started again, or a run that
 * ends with the same valves shut, before what is behind them is recovered or opened.
 */
function pumpsDown(whole: Whole, at: number): boolean {
  const { entries } = whole;
  for (let k = at + 1; k < entries.length; k++) {
    const entry = entries[k]!;
    if (entry.after.marks.get('pump-down') === entry.cause) return true;
    // Whoever trims it, or goes home with it running, has started it to run.
    if (has(entry, 'starts') || has(entry, 'adjusts') || visitOf(entry) !== visitOf(entries[at]!)) return false;
    if (entry.after.running) continue;
    const shut = entries[at]!.after.parts.flatMap((part, index) => (part.position === 'shut' ? [index] : []));
    return (
      shut.some((index) => entry.after.parts[index]!.position === 'shut') &&
      entries.slice(k).some((each) => has(each, 'recovers') || has(each, 'opens'))
    );
  }
  return false;
}

/** The last step that shut a part's valve before an entry. */
const shutBy = (whole: Whole, before: Entry, part: number): Entry | undefined =>
  whole.entries
    .slice(0, whole.entries.indexOf(before))
    .reverse()
    .find(
      (entry) =>
        (entry.before.parts[part]!.position !== 'shut' && entry.after.parts[part]!.position === 'shut') ||
        whole.plan.graph.parts[part]!.ends.some(
          (end) => entry.before.ends[end]!.valve !== 'shut' && entry.after.ends[end]!.valve === 'shut',
        ),
    );
