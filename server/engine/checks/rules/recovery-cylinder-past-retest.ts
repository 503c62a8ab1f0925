import type { BringItem } from '../../plan/plan';
import type { Declaration } from '../../plan/scope';
import { retestYears } from '../../reference/recovery-cylinders';
import { defineCheck, type Whole } from '../define';
import { bringing } from '../example-stock';
import { brought, isPast, spotOf, statementOf } from '../stock';
import { underLaw } from '../support';
import { bringInstead, replaces, shopHas } from '../ways-out';

/** A recovery cylinder whose pressure test has run out. */
export const recoveryCylinderPastRetest = defineCheck({
  name: 'recovery-cylinder-past-retest',
  severity: 'error',
  title: 'A recovery cylinder is past its retest date',
  acceptable: false,
  reads: 'figure',
  ground: 'law',
  meaning: 'On the date of the plan the pressure test stamped on the collar has run out.',
  why: 'It may not be filled, and nobody knows whether its wall still bears what it is stamped for.',
  source: retestYears.source,
  wrong: {
    base: 'split',
    plan: bringing('recovery 1 x rc-old empty # <- here'),
    file: 'recovery-cylinder rc-old {\n  water-capacity 26.2 lb\n  tare 24 lb\n  service-pressure 400 psig\n  retest-by 2026-11\n}',
  },
  right: { base: 'split', plan: bringing('recovery 1 x rc-30 empty') },
  plan(whole) {
    for (const item of brought(whole.plan, 'recovery')) {
      const retest = statementOf(item.declaration, 'retest-by');
      const month = retest?.values['month'] as string | undefined;
      if (!retest || !isPast(month, whole.plan.day)) continue;
      whole.reportAt(item.bound, spotOf(item), {
        message: `${item.name} was to be retested by ${month}, and the work is on ${whole.plan.day}: bring one whose test is good${underLaw(whole.plan, 'cylinder')}.`,
        fixes: bringInstead(
          item,
          shopHas(whole.plan, 'recovery-cylinder', (each) => isGood(whole, item, each)),
        ),
        related: item.declaration ? [{ bound: retest, file: item.declaration.file, message: 'its collar' }] : [],
      });
    }
  },
});

/** Whether a cylinder is good on the day, holds as much and bears as much as another. */
const isGood = ({ plan }: Whole, item: BringItem, other: Declaration): boolean => {
  const month = statementOf(other, 'retest-by')?.values['month'] as string | undefined;
  return month !== undefined && !isPast(month, plan.day) && replaces(plan, item, other);
};
