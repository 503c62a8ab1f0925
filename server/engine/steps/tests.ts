import type { Space } from '../circuit/spaces';
import type { Selector } from '../plan/selection';
import type { Amount, Name } from '../plan/term';
import { ownChargeIn } from './gas';
import type { Act } from './verb';

/** A level that is stated, or stands as a parameter of the plan (`test-pressure`). Pa absolute. */
export function levelOf(act: Act, value: Amount | Name | undefined): number | null {
  if (!value) return null;
  if ('literal' in value) return act.quantity(value)?.low ?? null;
  return value.text === 'test-pressure' ? (act.plan.parameters.testPressure?.quantity.low ?? null) : null;
}

/** The spaces that a test reaches: closed ones count, open ones are told apart; a new unit shut behind its valves is left alone. */
export function closedOnly(
  act: Act,
  selectors: readonly Selector[] | undefined,
): { spaces: readonly Space[]; open: readonly Space[] } {
  const wanted = act.spaces(selectors).filter((space) => !ownChargeIn(act.draft.now(), space));
  return {
    spaces: wanted.filter((space) => space.openings.length === 0),
    open: wanted.filter((space) => space.openings.length > 0),
  };
}
