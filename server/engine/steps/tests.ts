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

/**
 * The spaces that a test reaches: closed ones count, open ones are told apart; a new unit shut behind its valves is left
 * alone. Where a step names nothing but such a unit's parts, gas or pump would go on its charge: `charged`.
 */
export function closedOnly(
  act: Act,
  selectors: readonly Selector[] | undefined,
): { spaces: readonly Space[]; open: readonly Space[]; charged: readonly Space[] } {
  const meant = act.spaces(selectors);
  const wanted = meant.filter((space) => !ownChargeIn(act.draft.now(), space));
  const isNamed = selectors?.every(({ noun, standing }) => noun !== 'system' && standing !== 'open') ?? false;
  return {
    spaces: wanted.filter((space) => space.openings.length === 0),
    open: wanted.filter((space) => space.openings.length > 0),
    charged: wanted.length === 0 && isNamed ? meant : [],
  };
}
