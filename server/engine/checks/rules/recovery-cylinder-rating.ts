import type { Plan } from '../../plan/plan';
import type { Declaration } from '../../plan/scope';
import { highPressureOnly } from '../../reference/recovery-cylinders';
import { cylinderServicePressure } from '../../takeoff/figures/cylinder-service-pressure';
import { named } from '../../takeoff/given';
import { defineCheck } from '../define';
import { bringing } from '../example-stock';
import { cylinderFor, figureOf, isPast, spotOf, statementOf } from '../stock';
import { gauge, underLaw } from '../support';
import { bringInstead, replaces, shopHas } from '../ways-out';

/** A cylinder that is not rated for the pressure of what goes in. */
export const recoveryCylinderRating = defineCheck({
  name: 'recovery-cylinder-rating',
  severity: 'error',
  title: 'A recovery cylinder is rated below the refrigerant',
  acceptable: false,
  reads: 'figure',
  ground: 'law',
  meaning:
    'At 131 °F the refrigerant stands at more than five quarters of the service pressure stamped on the cylinder.',
  why: 'In a hot van its relief opens, or it bursts.',
  source: '49 CFR 173.301a(d); saturation from the property tables',
  wrong: {
    base: 'ductless',
    plan: bringing('recovery 1 x rc-260 empty # <- here', 'refrigerant R-32 10 lb'),
    file: 'recovery-cylinder rc-260 {\n  water-capacity 26.2 lb\n  tare 24 lb\n  service-pressure 260 psig\n  retest-by 2029-06\n}',
  },
  right: { base: 'ductless', plan: bringing('recovery 1 x rc-30 empty', 'refrigerant R-32 10 lb') },
  plan(whole) {
    const { plan } = whole;
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type !== 'recovers') continue;
        const item = cylinderFor(plan, event.into);
        const rated = item && figureOf(plan, item.declaration, 'service-pressure', 'pressure')?.low;
        if (!item || !rated) continue;
        for (const { refrigerant } of event.held) {
          if (refrigerant === null) continue;
          const needed = cylinderServicePressure.figure(
            item.name,
            { refrigerant: named(refrigerant) },
            { atmosphere: plan.site.atmosphere },
          ).quantity?.low;
          const never = highPressureOnly.includes(refrigerant);
          if (!never && (needed === undefined || needed <= rated * 1.005)) continue;
          whole.reportAt(item.bound, spotOf(item), {
            message: (say) =>
              `${item.label ?? item.name} is rated ${gauge(plan, rated)}, and ${refrigerant}, which ${say.step(entry.cause)} puts in, asks for ${needed === undefined ? 'a high-pressure cylinder' : gauge(plan, needed)}: bring one that is${underLaw(plan, 'cylinder')}.`,
            root: item,
            fixes: never
              ? []
              : bringInstead(
                  item,
                  shopHas(plan, 'recovery-cylinder', (each) => bears(plan, each, needed) && replaces(plan, item, each)),
                ),
            related: [{ cause: entry.cause, message: 'goes in here' }],
          });
        }
      }
    }
  },
});

/** Whether a cylinder is stamped for a pressure and its test is good on the day. */
const bears = (plan: Plan, cylinder: Declaration, needed: number | undefined): boolean =>
  needed !== undefined &&
  (figureOf(plan, cylinder, 'service-pressure', 'pressure')?.low ?? 0) >= needed &&
  !isPast(statementOf(cylinder, 'retest-by')?.values['month'] as string | undefined, plan.day);
