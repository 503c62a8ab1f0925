import { contentsOfCell } from '../../circuit/settle';
import type { Amount } from '../../plan/term';
import { exactly } from '../../quantity';
import { decayRules, waterAtFreezing } from '../../reference/evacuation';
import { defineCheck } from '../define';
import { roundedLimit } from '../rounding';
import { edits, inOwn, shown, vacuum } from '../support';

const rule = decayRules.find((each) => each.name === 'residential')!;

/** A decay test that a wet or leaking circuit passes. */
export const decayLimitHigh = defineCheck({
  name: 'decay-limit-high',
  severity: 'warning',
  title: 'The decay test allows too much',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The level that the evacuation reached, and the rise that is still allowed, come to more than the loosest of the usual rules. A sheet that is cited stands in place of those rules; but no sheet helps where the level may rise to that of water at its freezing point, since liquid water passes then.',
  why: 'Water that still stands in the oil holds the level there: the test passes, and the acid comes in a year.',
  source: `${rule.source}; whatever is cited: ${waterAtFreezing.source}`,
  wrong: {
    base: 'split',
    instead: [['rise at most 300 micron', 'rise at most 900 micron # <- here']],
  },
  right: { base: 'split' },
  step(here) {
    for (const event of here.events('stands')) {
      const start = Math.max(
        0,
        ...event.spaces.flatMap((space) => space.cells.map((cell) => contentsOfCell(here.before, cell).low)),
      );
      // With nothing under vacuum there is no level to rise from; what is open has its own finding.
      if (event.rise === null || start === 0) continue;
      const end = start + event.rise;
      const wet = waterAtFreezing.quantity.low;
      // A level that is too high by itself is the evacuation's finding.
      // Both figures may be rounded in the unit of the plan: 70 Pa and 70 Pa for twice 500 micron.
      const rise = here.step.values['rise'] as Amount | undefined;
      const rounded = (limit: number): number => roundedLimit(limit, rise, here.plan.site.atmosphere, 'most');
      const from = Math.max(rule.from * 1.01, rounded(rule.from) * 1.001);
      const to = Math.max(rule.to * 1.01, (rounded(rule.from) + rounded(rule.to - rule.from)) * 1.001);
      const isOverRule = here.per === null && start <= from && end > to;
      const isWet = start < wet && end > wet;
      if (!isOverRule && !isWet) continue;
      const said = `From ${vacuum(here.plan, start)} this lets the vacuum rise to ${vacuum(here.plan, end)}`;
      const frozen = shown(here.plan, exactly('temperature', 273.15));
      here.report({
        message: isWet
          ? `${said}, and water at ${frozen} boils under ${vacuum(here.plan, wet)} (${waterAtFreezing.source}): a machine with water standing in it passes; allow less${here.per === null ? '' : ', or read the figure in the sheet again'}.`
          : `${said}, and the usual limit is ${vacuum(here.plan, rule.to)} (${rule.source}): allow less, or cite the sheet.`,
        slot: 'rise',
        fixes: [
          {
            title: `Allow ${inOwn(here.plan, '300 micron', '40 Pa')}`,
            edits: (mend) =>
              edits(mend.replace(here.step, 'rise', `rise at most ${inOwn(here.plan, '300 micron', '40 Pa')}`)),
          },
        ],
      });
    }
  },
});
