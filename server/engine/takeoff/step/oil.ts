import { child } from '../../plan/bind';
import type { Plan } from '../../plan/plan';
import type { Amount, Name } from '../../plan/terms';
import { exactly } from '../../quantity';
import { oilLeft, oilRounds } from '../figures';
import { type Given, input } from '../given';
import { factOf } from '../stock-data';
import { type Context, quantityOf } from './context';

/** Oil that goes in, and as much used oil that comes out where it is changed. */
export function oiled({ plan, entry, options, figures, draws }: Context): void {
  const { step, round } = entry.slot;
  const changes = step.word.word === 'change-oil';
  if (!changes && step.word.word !== 'add-oil') return;
  const to = step.values[changes ? 'to' : 'with'] as { readonly a: Name; readonly b?: Amount } | undefined;
  const volume = quantityOf(plan, to?.b);
  if (to && volume) {
    draws.push({ of: 'oil', oil: to.a.text, volume });
    if (changes) draws.push({ of: 'used-oil', oil: plan.system.oil.before ?? 'old', volume });
  }
  if (!changes) return;
  const leaving = step.values['leaving'] as Amount | undefined;
  const share = quantityOf(plan, leaving);
  const leftByDrain = share && leaving ? input(share, 'plan', leaving.literal.text) : undefined;
  const subject = plan.system.oil.before ?? 'old oil';
  figures.push(
    oilLeft.figure(subject, { leftByDrain, rounds: input(exactly('count', round ?? 1), 'plan') }, options),
    oilRounds.figure(subject, { leftByDrain, target: accepted(plan) }, options),
  );
}

/** What the house rules accept of old oil. */
function accepted(plan: Plan): Given | undefined {
  for (const rules of plan.rules) {
    const bound = child(rules.bound.block, 'oil');
    if (!bound || (bound.values['oil'] as Name | undefined)?.text !== plan.system.oil.before) continue;
    const found = factOf(bound, 'most', plan);
    if (found) return found;
  }
  return undefined;
}
