import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { burnoutCleanUp } from '../bases';
import { defineCheck } from '../define';
import { isDrier, touched } from '../plant';

/** A drier for the clean-up of a burnout with a core that takes up water and little acid. */
export const coreNotForAcid = defineCheck({
  name: 'core-not-for-acid',
  severity: 'warning',
  title: 'A core that is not for acid in the clean-up of a burnout',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The job is a burnout, and a drier or its cores that come in fresh are stated for moisture, or as the standard kind.',
  why: 'What a burnt winding leaves is acid: a core that is made for water takes little of it, and the rest goes through the new compressor again and again. For a mild burnout (clean oil, no acid) accept the finding with that reason.',
  source: 'an acid core after a burnout: common practice, no source (what the clean-up is for: handbook 4.5, 13.4)',
  wrong: {
    base: 'rack',
    instead: [
      ['kind conversion', 'kind conversion, burnout\n  accept suction-drier-left-in because "Out on the next visit"'],
      [
        '    section low-side',
        '    suction-drier: filter-drier added {\n      core moisture # <- here\n    }\n    section low-side',
      ],
      ...burnoutCleanUp,
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan, entries } = whole;
    if (!plan.kinds.includes('burnout')) return;
    for (const part of plan.graph.parts) {
      const { core } = part.properties;
      if (!isDrier(part) || !touched(plan.graph, part.index) || core === undefined || core === 'acid') continue;
      const fitted = entries.find(({ after }) => after.parts[part.index]!.renewed !== null);
      const stated = child(plan.partStatements[part.index]?.block ?? [], 'core');
      if (!fitted || !stated) continue;
      const span = stated.spans['kind'] ?? wordSpan(stated);
      whole.reportAt(stated, span, {
        message: `The job is a burnout, and ${part.name} comes in with a ${core} core: fit one for acid.`,
        related: [{ cause: fitted.cause, message: 'it is fitted here' }],
        fixes: [{ title: 'State an acid core', edits: (mend) => [mend.change(stated, span, 'acid')] }],
      });
    }
  },
});
