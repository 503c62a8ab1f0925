import { overshootMost } from '../../reference/pressure-test';
import { defineCheck } from '../define';
import { saturationDesign, statedDesign } from '../plant-facts';
import { authority, gauge } from '../support';
import { writeAt, writtenGauge } from '../ways-out';

/** Codes let a gas test go to 1.1 to 1.3 times the design pressure (ASME B31.5, from memory). */
const most = 1.3;

/** A test at a pressure that nothing of this machine was designed for. */
export const testFarAboveDesign = defineCheck({
  name: 'test-far-above-design',
  severity: 'warning',
  title: 'The pressure test is far above the design pressure',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  yieldsTo: ['pressure-above-rating', 'design-pressure-unlikely'],
  meaning:
    'The test goes over 1.3 times the highest design pressure of the machine: as the plan states it, or, where it states none and no rating, as the refrigerant reaches it.',
  why: 'No code asks it, the stored energy grows with it, and a part whose rating nobody stated may burst.',
  source: `ASME B31.5: a gas test at 110 to 130 % of design (from memory); ${overshootMost.source} (handbook 7.1)`,
  wrong: {
    base: 'split',
    instead: [
      ['pressure-test each open part to 450 psig', 'pressure-test each open part to 800 psig # <- here'],
      ['rated 500 psig\n      leak-sensor', 'rated 900 psig\n      leak-sensor'],
      ['tube 7/8 in ACR', 'tube 3/8 in ACR'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { plan } = here;
    if (here.per !== null || plan.system.rated) return;
    for (const event of here.events('pressurises')) {
      if (event.purpose !== 'test' || event.spaces.length === 0) continue;
      const sides = (['high', 'low'] as const).map((side) => statedDesign(plan, side) ?? saturationDesign(plan, side));
      const design = Math.max(...sides.map((each) => each ?? Number.NEGATIVE_INFINITY));
      const { atmosphere } = plan.site;
      if (!Number.isFinite(design) || event.level - atmosphere <= (design - atmosphere) * most * 1.02) continue;
      const bound = (plan.system.designHigh ?? plan.system.designLow)?.bound;
      here.report({
        message: `${gauge(plan, event.level)} is more than ${most} times the highest design pressure here, ${gauge(plan, design)} (${overshootMost.source}): test at the design pressure, or cite the sheet that asks for more; ${authority}.`,
        slot: 'level',
        root: here.step,
        concerns: event.spaces.flatMap((space) => space.parts),
        related: bound ? [{ bound, message: 'the design pressure' }] : [],
        fixes: writeAt(here.step, here.step.values['level'], writtenGauge(plan, design)),
      });
    }
  },
});
