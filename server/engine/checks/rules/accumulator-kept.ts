import { burnoutCleanUp } from '../bases';
import { defineCheck } from '../define';
import { touched } from '../plant';

/** The accumulator of a burnt machine kept. */
export const accumulatorKept = defineCheck({
  name: 'accumulator-kept',
  severity: 'warning',
  title: 'The accumulator is kept after a burnout',
  acceptable: true,
  noFix:
    'Another accumulator must be brought and fitted while the circuit is open, and where that falls among the steps is for the author.',
  reads: 'state',
  ground: 'practice',
  meaning: 'The job is a burnout, and the suction accumulator of the burnt machine stays in.',
  why: 'It holds litres of acid oil that no flush reaches, and its oil hole plugs with soot.',
  source: 'common practice: never re-use the accumulator (handbook 4.5, 5.1)',
  wrong: {
    base: 'rack',
    instead: [
      ['kind conversion', 'kind conversion, burnout\n  accept suction-drier-left-in because "Out on the next visit"'],
      [
        '    section low-side',
        '    accumulator kept # <- here\n    suction-drier: filter-drier added\n    section low-side',
      ],
      ...burnoutCleanUp,
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last || !whole.plan.kinds.includes('burnout')) return;
    for (const part of whole.plan.graph.parts) {
      if (part.kind.kind !== 'accumulator' || !touched(whole.plan.graph, part.index)) continue;
      if (part.standing !== 'kept' && part.standing !== 'reused') continue;
      if (last.after.parts[part.index]!.mounted === 'none' || last.after.parts[part.index]!.renewed) continue;
      whole.reportPart(part.index, {
        message: `${part.name} held the burnt machine's oil and stays in: it is an acid reservoir, renew it.`,
      });
    }
  },
});
