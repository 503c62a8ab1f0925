import type { Plan } from '../plan/plan';
import type { Name } from '../plan/term';
import type { Counted } from './draws';
import { factOf } from './stock-data';
import { runSupply, type SupplyDraw, type SupplyRun } from './supply-run';

/**
 * Refrigerant to weigh in, with what the cylinder on the scale holds before and after each charge, net: the tare on the
 * collar comes on top. Without a stated stock there is no cylinder to count from, and the run holds the need alone.
 */
export function runRefrigerants(plan: Plan, draws: readonly Counted[]): readonly SupplyRun[] {
  const byName = new Map<string, SupplyDraw[]>();
  for (const { entry, draw } of draws) {
    if (draw.of !== 'refrigerant') continue;
    byName.set(draw.refrigerant, [...(byName.get(draw.refrigerant) ?? []), { entry, amount: draw.mass.high }]);
  }
  return [...byName].map(([name, own]) => {
    const stock = (plan.bring ?? []).flatMap((item) => {
      const held = item.word === 'refrigerant' && (item.bound.values['refrigerant'] as Name | undefined)?.text === name;
      const mass = held ? factOf(item.bound, 'mass', plan)?.quantity?.low : undefined;
      return mass === undefined ? [] : [{ name: `${name} cylinder`, start: mass }];
    });
    // With nothing stated one cylinder that holds the need stands for those that the shop sends.
    const need = own.reduce((sum, each) => sum + each.amount, 0);
    const stated = plan.bring !== null;
    const spare = stated ? null : { name: `${name} cylinder`, start: need };
    return runSupply({ what: name, kind: 'mass', stock, spare, stated, price: null }, own);
  });
}
