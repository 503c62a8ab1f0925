import type { Plan } from '../plan/plan';
import { walkAgain, walkBack } from './back';
import { samePlant } from './same';
import type { Entry } from './walk';

/** A way that leads to an earlier step, by the places of its entries, and how often it may be gone. */
export interface Route {
  readonly from: number;
  readonly to: number;
  readonly times: number;
  /** The crew comes back from a test that failed, and lets down what that put in; a further round begins as the last one ended. */
  readonly failed: boolean;
}

/** What follows once such a way has been gone. */
export interface Rehearsal {
  /** The plan's steps with the way put in, each as it is worked then; null where the way mends and nothing behind it changes. */
  readonly entries: readonly Entry[] | null;
  /** Which of them are worked from another state than the plan comes to them with, by the place that each has in the plan. */
  readonly fresh: ReadonlyMap<Entry, number>;
}

/**
 * Goes a way and on to the end of the plan. Where the plant does not stand afterwards as it stood at first, the way is
 * gone once more, and the ways of later steps are gone from there, too, each once.
 */
export function rehearse(plan: Plan, entries: readonly Entry[], route: Route, others: readonly Route[]): Rehearsal {
  const first = entries[route.from]!;
  const path: Entry[] = [];
  const fresh = new Map<Entry, number>();
  let at = first;

  const go = ({ from, to, failed }: Route): void => {
    const again = failed ? walkBack(plan, entries, to, from, at) : walkAgain(plan, entries, to, from, at.after);
    again.forEach((entry, k) => void fresh.set(entry, to + k));
    path.push(...again);
    at = again.at(-1)!;
  };

  go(route);
  // The plant stands as if it had not been gone.
  if (samePlant(at.after, first.after)) return { entries: null, fresh };
  if (route.times > 1) go(route);
  for (let next = route.from + 1; next < entries.length; next++) {
    if (samePlant(at.after, entries[next]!.before)) {
      for (; next < entries.length; next++) path.push(entries[next]!);
      break;
    }
    const [entry] = walkAgain(plan, entries, next, next, at.after);
    at = entry!;
    fresh.set(at, next);
    path.push(at);
    for (const other of others) if (other.from === next) go(other);
  }
  return { entries: [...entries.slice(0, route.from + 1), ...path], fresh };
}
