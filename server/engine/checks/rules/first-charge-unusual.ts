import type { Amount } from '../../plan/term';
import { exactly } from '../../quantity';
import { firstChargeRange, firstChargeSource } from '../../reference/first-charge';
import { defineCheck } from '../define';
import { changesRefrigerant } from '../plant-facts';
import { amount } from '../support';
import { writeAt, written } from '../ways-out';

/** Beyond the printed range by this much: the guides differ by about five points (from memory). */
const between = 0.05;

/** Blends whose guide is not printed here: no conversion in place starts outside of this (handbook 13.3: 75 to 90 %, common practice). */
const anyRange = { low: 0.7, high: 1.05 };

/** The first charge of a conversion against what the guides start with. */
export const firstChargeUnusual = defineCheck({
  name: 'first-charge-unusual',
  severity: 'warning',
  title: 'The first charge of a conversion is out of its range',
  acceptable: true,
  reads: 'figure',
  ground: 'memory',
  meaning: 'The step weighs in a share of the old charge that lies outside what the guides start this conversion with.',
  why: 'Too little shows as low capacity that nobody finds; too much has to come out again, and liquid may reach the compressor.',
  source: firstChargeSource,
  wrong: { base: 'rack', instead: [['R-448A 50 lb as liquid', 'R-448A 40 lb as liquid # <- here']] },
  right: { base: 'rack' },
  step(here) {
    const { refrigerant, recoverCharge } = here.plan.system;
    if (
      here.per !== null ||
      !recoverCharge ||
      recoverCharge.quantity.low <= 0 ||
      refrigerant.before === null ||
      !changesRefrigerant(here.plan)
    )
      return;
    const inPlace = here.plan.kinds.includes('conversion') && !here.plan.kinds.includes('changeout');
    for (const event of here.events('charges')) {
      if (event.purpose !== 'charge' || !event.mass) continue;
      const range = firstChargeRange(refrigerant.before, event.refrigerant) ?? (inPlace ? anyRange : undefined);
      if (!range || event.held.some((held) => held.gas === 'refrigerant')) continue;
      const old = recoverCharge.quantity;
      const share = { low: event.mass.low / old.high, high: event.mass.high / old.low };
      if (share.high >= range.low - between && share.low <= range.high + between) continue;
      here.report({
        concerns: event.spaces.flatMap(({ parts }) => parts),
        message: `${amount(here.plan, 'mass', event.mass.low)} are ${Math.round(share.low * 100)} % of the old charge, and ${event.refrigerant} starts with ${Math.round(range.low * 100)} to ${Math.round(range.high * 100)} % of ${refrigerant.before}: ${amount(here.plan, 'mass', old.low * range.low)} to ${amount(here.plan, 'mass', old.high * range.high)} (${firstChargeSource}).`,
        slot: 'with',
        fixes: writeAt(
          here.step,
          (here.step.values['with'] as { readonly b?: Amount } | undefined)?.b,
          written(here.plan, exactly('mass', share.low > range.high ? old.low * range.high : old.high * range.low)),
        ),
      });
    }
  },
});
