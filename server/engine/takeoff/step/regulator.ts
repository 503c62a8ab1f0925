import { exactly, type Quantity } from '../../quantity';
import { lowestRating, regulatorWindow, reliefSetting } from '../figures';
import { computed, type Given, input } from '../given';
import { limitsOf } from '../ratings';
import { brought, fact } from '../stock-data';
import { type Context, pressure } from './context';

/**
 * Where the relief behind the regulator is set for the highest pressure of a test, a purge or a flush, by the weakest part
 * that the gas reaches as the valves stand. With a regulator on the job it is that one's window, else the trade's.
 */
export function regulator({ plan, entry, options, figures }: Context): void {
  let level: number | null = null;
  let isTest = false;
  const reached = new Set<number>();
  for (const event of entry.events) {
    const asked =
      (event.type === 'pressurises' && event.purpose === 'test') || event.type === 'flows' ? event.level : null;
    if (asked === null) continue;
    level = Math.max(level ?? 0, asked);
    isTest ||= event.type === 'pressurises';
    if (event.type === 'flows') for (const index of event.reached) reached.add(index);
    if (event.type === 'pressurises')
      for (const space of event.spaces) for (const index of space.parts) reached.add(index);
  }
  if (level === null || reached.size === 0) return;
  const limits = limitsOf(plan, entry.before, [...reached]);
  // A purge of bare tube of which nobody states a rating needs no window; a test does, and says what is missing.
  if (limits.length === 0 && !isTest) return;
  const lowest = lowestRating.figure(
    'what the gas reaches',
    {
      ratings: limits.map(({ part, limit, why }) =>
        input(exactly('pressure', limit), 'plan', undefined, `${plan.graph.parts[part]!.name}: ${why}`),
      ),
    },
    options,
  );
  const [item] = brought(plan, 'regulator');
  const range = fact(item?.declaration, 'relief', 'range', plan)?.quantity;
  const outlet = fact(item?.declaration, 'outlet', 'pressure', plan);
  const asked = { test: pressure(level), weakest: computed(lowest) };
  figures.push(
    item && range && outlet
      ? regulatorWindow.figure(
          item.declaration.name,
          { ...asked, outlet, lowestRelief: end(range, 'low'), highestRelief: end(range, 'high') },
          options,
        )
      : reliefSetting.figure('regulator', asked, options),
    lowest,
  );
}

const end = (range: Quantity, which: 'low' | 'high'): Given => input(exactly('pressure', range[which]), 'plan');
