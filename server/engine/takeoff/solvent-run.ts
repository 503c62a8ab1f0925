import type { Plan } from '../plan/plan';
import type { Counted } from './draws';
import { brought, fact, pieces, priceOf } from './stock-data';
import { runSupply, type SupplyDraw, type SupplyRun } from './supply-run';

/**
 * Draws solvent container by container, at the most rounds, by weight: a container is stated by its net weight, and the
 * scale shows what is left in it. A solvent without a stated density or container cannot be followed; it has no run.
 */
export function runSolvents(plan: Plan, draws: readonly Counted[]): readonly SupplyRun[] {
  const bySolvent = new Map<string, SupplyDraw[]>();
  for (const { entry, draw, planned } of draws) {
    if (draw.of !== 'solvent') continue;
    const density = fact(plan.scope.find('solvent', draw.solvent), 'density', 'density', plan)?.quantity?.high;
    if (density === undefined) continue;
    const own = bySolvent.get(draw.solvent) ?? [];
    for (let k = 0; k < planned; k++) own.push({ entry, amount: draw.volume.high * density });
    bySolvent.set(draw.solvent, own);
  }
  return [...bySolvent].flatMap(([name, own]): SupplyRun[] => {
    const declared = plan.scope.find('solvent', name);
    const content = fact(declared, 'container', 'mass', plan)?.quantity?.low;
    if (content === undefined) return [];
    const stock = brought(plan, 'solvent')
      .filter((item) => item.declaration.name === name)
      .flatMap((item) => pieces(item).map((piece) => ({ name: piece, start: content })));
    const stated = plan.bring !== null;
    const spare = stated ? null : { name, start: content };
    return [runSupply({ what: name, kind: 'mass', stock, spare, stated, price: priceOf(declared) }, own)];
  });
}
