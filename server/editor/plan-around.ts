import type { Bound } from '../engine/plan/bind';
import type { PlanView, Snapshot } from './engine';
import type { Look } from './look';

/** The plan that a place stands in; undefined outside of plans. Steps of a standard belong to no plan. */
export function planAround(asked: {
  readonly snapshot: Snapshot;
  readonly path: string;
  readonly look: Look;
}): PlanView | undefined {
  const top = asked.look.chain[0]?.bound;
  return top?.word?.word === 'plan' ? planOf(asked.snapshot, asked.path, top) : undefined;
}

/** The plan that a statement of a file declares. */
export const planOf = (snapshot: Snapshot, path: string, top: Bound): PlanView | undefined =>
  snapshot.plans(path).find(({ plan }) => plan.declaration.bound === top);

const jobs = new WeakMap<Snapshot, Map<string, readonly PlanView[]>>();

/** All plans of the workspace folder that follow a standard of a file; found once a snapshot. */
export function jobsOf(snapshot: Snapshot, path: string, standard: Bound): readonly PlanView[] {
  let known = jobs.get(snapshot);
  if (!known) jobs.set(snapshot, (known = new Map()));
  const name = (standard.values['name'] as { text: string } | undefined)?.text ?? '';
  const key = `${path}\n${name}`;
  let found = known.get(key);
  if (!found) {
    found = snapshot.paths.flatMap((each) =>
      mayFollow(snapshot, each, name)
        ? snapshot.plans(each).filter(({ plan }) => plan.standard?.bound === standard)
        : [],
    );
    known.set(key, found);
  }
  return found;
}

/** A look at a file's own words, so that no plan is put together that does not follow the standard. */
const mayFollow = (snapshot: Snapshot, path: string, name: string): boolean =>
  snapshot
    .bound(path)
    ?.statements.some(
      (top) =>
        top.word?.word === 'plan' &&
        top.block.some(
          (each) =>
            each.word?.word === 'follows' && (each.values['standard'] as { text: string } | undefined)?.text === name,
        ),
    ) ?? false;
