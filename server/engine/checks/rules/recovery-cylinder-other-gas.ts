import type { Cause } from '../../circuit/state';
import type { BringItem } from '../../plan/plan';
import type { Name } from '../../plan/term';
import { defineCheck } from '../define';
import { bringing } from '../example-stock';
import { cylinderFor } from '../stock';
import { underLaw } from '../support';
import { bringEmpty, bringMore } from '../ways-out';

/** Two refrigerants in one recovery cylinder. */
export const recoveryCylinderOtherGas = defineCheck({
  name: 'recovery-cylinder-other-gas',
  severity: 'error',
  title: 'A recovery cylinder gets another refrigerant',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'A step recovers a refrigerant into a cylinder that holds another one, or that an earlier step put another one into.',
  why: 'A mixture cannot be reclaimed and must be destroyed, and its pressure may be above what the cylinder is filled for.',
  source: '40 CFR 82.154 and 82.164; AHRI Guideline K (handbook 2.3)',
  wrong: {
    base: 'split',
    plan: bringing('recovery 1 x rc-30 holding R-410A 4 lb', 'recovery-machine rm-2'),
    instead: [['recover system to 0 inHg', 'recover system to 0 inHg # <- here']],
  },
  right: { base: 'split', plan: bringing('recovery 1 x rc-30 holding R-22 4 lb', 'recovery-machine rm-2') },
  plan(whole) {
    const { plan } = whole;
    const inside = new Map<BringItem, Map<string, Cause | null>>();
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type !== 'recovers') continue;
        const item = cylinderFor(plan, event.into);
        if (!item) continue;
        let gases = inside.get(item);
        if (!gases) {
          const holding = item.bound.values['holding'] as Name | undefined;
          inside.set(item, (gases = new Map(holding ? [[holding.text, null]] : [])));
        }
        for (const { refrigerant } of event.held) {
          if (refrigerant === null || gases.has(refrigerant)) continue;
          const [other] = gases;
          gases.set(refrigerant, entry.cause);
          // Several cylinders of a kind are kept apart by gas; with a label there is one of them.
          if (!other || gases.size <= item.number) continue;
          whole.report(entry, {
            message: `This recovers ${refrigerant} into ${item.label ?? item.name}, which holds ${other[0]}: bring another cylinder for it${underLaw(plan, 'mixing', refrigerant)}.`,
            slot: 'into',
            root: item,
            fixes: other[1] === null ? bringEmpty(item) : bringMore(item, gases.size),
            related:
              other[1] === null
                ? [{ bound: item.bound, message: `comes with ${other[0]} in it` }]
                : [{ cause: other[1], message: `${other[0]} goes in here` }],
          });
        }
      }
    }
  },
});
