import type { Plan } from '../plan/plan';
import type { Name } from '../plan/term';
import type { Counted } from './draws';
import { factOf, priceOf } from './stock-data';
import { runSupply, type SupplyDraw, type SupplyRun } from './supply-run';

/** Oil filled in against oil brought, at the most rounds, by volume. */
export function runOils(plan: Plan, draws: readonly Counted[]): readonly SupplyRun[] {
  const byName = new Map<string, SupplyDraw[]>();
  for (const { entry, draw, planned } of draws) {
    if (draw.of !== 'oil') continue;
    const own = byName.get(draw.oil) ?? [];
    for (let k = 0; k < planned; k++) own.push({ entry, amount: draw.volume.high });
    byName.set(draw.oil, own);
  }
  return [...byName].map(([name, own]) => {
    const stock = (plan.bring ?? []).flatMap((item) => {
      const held = item.word === 'oil' && (item.bound.values['oil'] as Name | undefined)?.text === name;
      const volume = held ? factOf(item.bound, 'volume', plan)?.quantity?.low : undefined;
      return volume === undefined ? [] : [{ name: `${name} oil`, start: volume }];
    });
    const need = own.reduce((sum, each) => sum + each.amount, 0);
    const stated = plan.bring !== null;
    const spare = stated ? null : { name: `${name} oil`, start: need };
    return runSupply(
      { what: name, kind: 'volume', stock, spare, stated, price: priceOf(plan.scope.find('oil', name)) },
      own,
    );
  });
}
