import { chargedAsLiquidFrom, factsOf } from '../../reference/refrigerant-facts';
import { defineCheck } from '../define';
import { amount, edits } from '../support';

/** A blend drawn off as vapour. */
export const chargedAsVapour = defineCheck({
  name: 'charged-as-vapour',
  severity: 'error',
  title: 'A blend is charged as vapour',
  acceptable: false,
  reads: 'figure',
  ground: 'practice',
  meaning: 'A step takes a blend with glide out of its cylinder as vapour.',
  why: 'The light part boils off first: what is in the machine, and what stays in the cylinder, is no longer that refrigerant.',
  source: 'common practice; glide from the reference table (handbook 3.4)',
  wrong: { base: 'rack', instead: [['R-448A 50 lb as liquid', 'R-448A 50 lb as vapour # <- here']] },
  right: { base: 'rack' },
  step(here) {
    for (const event of here.events('charges')) {
      const glide = factsOf(event.refrigerant)?.glide ?? 0;
      if (event.phase !== 'vapour' || glide < chargedAsLiquidFrom) continue;
      here.report({
        message: `${event.refrigerant} is a blend with ${amount(here.plan, 'temperature-difference', glide)} of glide: charge it as liquid, or its composition shifts.`,
        slot: 'phase',
        fixes: [{ title: 'Charge as liquid', edits: (mend) => edits(mend.replace(here.step, 'phase', 'as liquid')) }],
      });
    }
  },
});
