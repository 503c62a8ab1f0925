import type { Plan } from '../plan/plan';

/**
 * What hangs on a plan's head alone, found once a head: an edit of a step leaves the head as it is. `find` must look at
 * nothing else of the plan.
 */
export function perHead<T>(find: (plan: Plan) => T): (plan: Plan) => T {
  const known = new WeakMap<Plan['head'], { readonly found: T }>();
  return (plan) => {
    let kept = known.get(plan.head);
    if (!kept) known.set(plan.head, (kept = { found: find(plan) }));
    return kept.found;
  };
}
