import { Draft, settle } from '../circuit/settle';
import type { Contents, Plant } from '../circuit/state';
import type { Plan } from '../plan/plan';
import { type Entry, take } from './walk';

/**
 * The way that the crew goes a second time after a step failed: from the step that it is sent back to, up to the one that
 * failed. The first entry begins with what the failed step left, once that is let down. Causes are those of the first
 * time, so that whoever tells of it can name the steps. `failed` is the last entry as it was worked.
 */
export function walkBack(
  plan: Plan,
  entries: readonly Entry[],
  to: number,
  from: number,
  failed: Entry,
): readonly Entry[] {
  return walkAgain(plan, entries, to, from, letDown(entries, to, from, failed));
}

/** Entries of a walk gone through again, from another state. */
export function walkAgain(
  plan: Plan,
  entries: readonly Entry[],
  to: number,
  from: number,
  before: Plant,
): readonly Entry[] {
  const again: Entry[] = [];
  let plant = before;
  for (let at = to; at <= from; at++) {
    const first = entries[at]!;
    const entry = take(plan, first.slot, plant, first.cause);
    again.push(entry);
    plant = entry.after;
  }
  return again;
}

/**
 * The plant as the crew comes back with it: nitrogen of the failed test released, its vacuum broken with nitrogen to the
 * atmosphere, and what was proven on the way unproven again.
 */
function letDown(entries: readonly Entry[], to: number, from: number, failed: Entry): Plant {
  const draft = new Draft(failed.after, failed.cause);
  const unproven = new Set(entries.slice(to, from + 1).map((entry) => entry.cause));
  failed.after.parts.forEach((part, index) => {
    const tested = part.tested !== null && unproven.has(part.tested.by);
    const evacuated = part.evacuated !== null && unproven.has(part.evacuated.by);
    const decayTested = part.decayTested !== null && unproven.has(part.decayTested.by);
    if (tested || evacuated || decayTested)
      draft.setPart(index, {
        ...(tested && { tested: null }),
        ...(evacuated && { evacuated: null }),
        ...(decayTested && { decayTested: null }),
      });
  });
  const nitrogen: Contents = {
    gas: 'nitrogen',
    refrigerant: null,
    low: failed.after.atmosphere,
    high: failed.after.atmosphere,
    liquid: false,
    since: failed.cause,
  };
  for (const event of failed.events) {
    const test = event.type === 'pressurises' && event.purpose === 'test';
    if (!test && event.type !== 'evacuates' && event.type !== 'stands') continue;
    for (const space of event.spaces) if (space.openings.length === 0) draft.fill(space.cells, nitrogen);
  }
  return settle(draft).plant;
}
