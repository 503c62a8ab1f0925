import { purgePressureMost } from '../../reference/nitrogen-practice';
import { standardAtmosphere } from '../../reference/table-units';
import { finalPurgePressure } from '../../steps/flow';
import { defineCheck } from '../define';
import { edits, gauge } from '../support';

const most = purgePressureMost.quantity.high - standardAtmosphere;

/** More pressure behind an open line than a purge may have. */
export const purgePressureHigh = defineCheck({
  name: 'purge-pressure-high',
  severity: 'warning',
  title: 'A purge, blow-out or flush above the usual pressure',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  yieldsTo: ['pressure-above-rating'],
  meaning: 'Nitrogen is let through an open line at more than 200 psig, and no sheet is cited for it.',
  why: 'The free end whips, the catch container is thrown, and what comes out blinds; the line is no cleaner for it.',
  source: `${purgePressureMost.source} (handbook 5.2)`,
  wrong: {
    base: 'split',
    instead: [
      [
        'purge each kept line at 100 psig for 60 s into container',
        'purge each kept line at 400 psig for 60 s into container # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    if (here.per !== null) return;
    const flow = here
      .events('flows')
      .find((each) => each.level !== null && each.level - here.plan.site.atmosphere > most * 1.01);
    if (!flow || flow.level === null) return;
    const usual = gauge(here.plan, finalPurgePressure + here.plan.site.atmosphere);
    here.report({
      message: (say) =>
        `${gauge(here.plan, flow.level!)} is let through ${say.part(flow.line)} to an open end; a purge has at most ${gauge(here.plan, most + here.plan.site.atmosphere)} (${purgePressureMost.source}): lower it, or cite the sheet that asks for it.`,
      slot: 'level',
      root: here.step,
      concerns: [flow.line],
      fixes: [{ title: `At ${usual}`, edits: (mend) => edits(mend.replace(here.step, 'level', `at ${usual}`)) }],
    });
  },
});
