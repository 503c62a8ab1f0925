import { burnoutCleanUp } from '../bases';
import { defineCheck } from '../define';
import { isDrier, isInLiquid, touched } from '../plant';

/** A clean-up drier that stays in the suction line. */
export const suctionDrierLeftIn = defineCheck({
  name: 'suction-drier-left-in',
  severity: 'warning',
  title: 'The suction drier of a burnout is left in for good',
  acceptable: true,
  noFix:
    'Taking it out opens the circuit once more: the visit that does it pumps down, takes the cores out, tests and evacuates.',
  reads: 'state',
  ground: 'published',
  meaning:
    'The job is a burnout; a drier was put into the suction line for the clean-up, and at the end it is still in with its cores.',
  why: 'Loaded with acid and soot it chokes the suction gas: lost capacity, and a compressor that runs hot.',
  source: 'out within about 3 days when clean: public training page (handbook 4.5)',
  wrong: {
    base: 'rack',
    instead: [
      ['kind conversion', 'kind conversion, burnout'],
      ['    section low-side', '    suction-drier: filter-drier added # <- here\n    section low-side'],
      ...burnoutCleanUp,
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last || !whole.plan.kinds.includes('burnout')) return;
    const { graph } = whole.plan;
    for (const part of graph.parts) {
      if (!isDrier(part) || part.highSide || isInLiquid(graph, part) || !touched(graph, part.index)) continue;
      if (part.standing !== 'new' && part.standing !== 'added') continue;
      const state = last.after.parts[part.index]!;
      if (state.mounted !== 'new' || state.cores === 'out') continue;
      whole.reportPart(part.index, {
        message: `${part.name} is still in with its cores when the plan ends: take them out, or the drier off, once the acid tests are clean.`,
      });
    }
  },
});
