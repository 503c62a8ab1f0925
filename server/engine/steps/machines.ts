import type { Selector } from '../plan/selection';
import type { Act } from './verb';

/** The machines that a start or a run names; none where it means the whole system. */
export const machines = (act: Act, what: readonly Selector[] | undefined): readonly number[] =>
  act.targets(what).flatMap((target) => (target.selector.noun === 'system' ? [] : target.parts));
