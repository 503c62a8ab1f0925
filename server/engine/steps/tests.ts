import type { Space } from '../circuit/spaces';
import type { Selector } from '../plan/selection';
import type { Amount, Name } from '../plan/term';
import type { Event } from './events';
import { ownChargeIn } from './gas';
import { nameList } from './valves';
import type { Act } from './verb';

type NoEffect = Extract<Event, { type: 'no-effect' }>;

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

/** Why a pump or a test meets nothing. What is off the circuit when it is named was to be in place: nothing is proved. */
export function nothingLeft(act: Act, selectors: readonly Selector[] | undefined, why: string): NoEffect {
  const parts = act.parts(selectors);
  const isOff = parts.length > 0 && parts.every((index) => act.draft.part(index).mounted === 'none');
  if (!isOff) return { type: 'no-effect', why };
  return { type: 'no-effect', why: `${nameList(act, parts)} not in place`, grave: true, parts };
}
