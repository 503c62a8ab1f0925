import type { Cause } from '../../circuit/state';
import type { Step } from '../../plan/step';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { repeatAround } from '../plant';
import { said, writeAt } from '../ways-out';

/** A line that is purged with the others in every round, and that no solvent ever reaches. */
export const lineNotFlushed = defineCheck({
  name: 'line-not-flushed',
  severity: 'warning',
  title: 'A line is purged in the rounds and never flushed',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['never-flush', 'line-not-disconnected'],
  meaning:
    'Rounds that flush lines also purge another line, and no step of the plan lets solvent into that one: it was forgotten in the flush, or is too much in the purge.',
  why: 'Nitrogen alone moves no oil film: the old oil stays in that line and comes to the new compressor.',
  source: 'each line by itself, solvent then nitrogen: common practice (handbook 5.2)',
  wrong: {
    base: 'split',
    instead: [['flush each kept line into container', 'flush suction-line into container # <- here']],
  },
  right: { base: 'split' },
  plan(whole) {
    const { entries, plan } = whole;
    const flushed = new Set(entries.flatMap((entry) => linesOf(entry, 'solvent')));
    if (flushed.size === 0) return;
    const purged = new Map<Step, { readonly line: number; readonly by: Cause }[]>();
    for (const entry of entries) {
      const round = repeatAround(entry);
      if (!round) continue;
      for (const line of linesOf(entry, 'nitrogen')) {
        if (flushed.has(line)) continue;
        const known = purged.get(round);
        if (known) known.push({ line, by: entry.cause });
        else purged.set(round, [{ line, by: entry.cause }]);
      }
    }
    for (const entry of purged.size > 0 ? entries : []) {
      const round = repeatAround(entry);
      if (!round || linesOf(entry, 'solvent').length === 0) continue;
      const forgotten = purged.get(round) ?? [];
      const [first] = forgotten;
      if (!first) continue;
      const lines = [...new Set(forgotten.map(({ line }) => line))];
      const names = lines.map((line) => plan.graph.parts[line]!.name);
      whole.report(entry, {
        message: (say) =>
          `${say.parts(lines)} ${isOrAre(lines.length)} purged in these rounds and never flushed: flush ${lines.length > 1 ? 'them' : 'it'} too, or leave ${lines.length > 1 ? 'them' : 'it'} out of the purge.`,
        slot: 'what',
        root: round,
        concerns: lines,
        related: [{ cause: first.by, message: 'it is purged here' }],
        fixes: writeAt(
          entry.slot.step,
          entry.slot.step.spans['what'],
          [said(entry.slot.step, 'what'), ...names].join(', '),
          'Flush it too',
        ),
      });
      return;
    }
  },
});

const linesOf = (entry: Entry, medium: 'solvent' | 'nitrogen'): readonly number[] =>
  entry.events.flatMap((event) => (event.type === 'flows' && event.medium === medium ? [event.line] : []));
