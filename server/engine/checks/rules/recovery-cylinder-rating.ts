import { highPressureOnly } from '../../reference/recovery-cylinders';
import { cylinderServicePressure } from '../../takeoff/figures/cylinder-service-pressure';
import { named } from '../../takeoff/given';
import { defineCheck } from '../define';
import { bringing } from '../example-stock';
import { cylinderFor, figureOf, spotOf } from '../stock';
import { gauge, underLaw } from '../support';

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
  source: '49 CFR 173.301a(c) (from memory); saturation from the property tables',
  wrong: {
    base: 'ductless',
    plan: bringing('recovery 1 x rc-260 empty # <- here'),
    file: 'recovery-cylinder rc-260 {\n  water-capacity 26.2 lb\n  tare 24 lb\n  service-pressure 260 psig\n  retest-by 2029-06\n}',
  },
  right: { base: 'ductless', plan: bringing('recovery 1 x rc-30 empty') },
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
            related: [{ cause: entry.cause, message: 'goes in here' }],
          });
        }
      }
    }
  },
});
