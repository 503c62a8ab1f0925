import { children } from '../plan/bind';
import type { Step } from '../plan/step';
import type { Name } from '../plan/terms';
import { type Entry, roundsOf } from '../walk/walk';

/** How often an entry of the walk is worked: least to most. In a repeat the two entries of a step share its rounds. */
export interface Times {
  readonly least: number;
  readonly most: number;
}

/**
 * The rounds that an entry stands for: the first round stands for one, the last for all others; each repeat outside of
 * the innermost multiplies both.
 */
export function timesOf(entry: Entry): Times {
  const repeats = entry.slot.within.filter((step) => step.word.word === 'repeat');
  const inner = repeats.at(-1);
  let least = 1;
  let most = 1;
  for (const repeat of repeats) {
    const rounds = roundsOf(repeat);
    if (repeat !== inner) {
      least *= rounds.least;
      most *= rounds.most;
    } else if (rounds.least > 1) {
      least *= entry.slot.round === 1 ? 1 : rounds.least - 1;
      most *= entry.slot.round === 1 ? 1 : rounds.most - 1;
    } else most *= rounds.most;
  }
  return { least, most };
}

/** Where a step sends the crew back to if it fails. */
export interface WayBack {
  /** Index of the entry that fails, and of the first entry that is worked again. */
  readonly from: number;
  readonly to: number;
  readonly times: number;
  readonly step: Step;
}

/** The ways back of a walk. A label may stand on a block: then its first step is meant. */
export function waysBack(entries: readonly Entry[]): readonly WayBack[] {
  return entries.flatMap((entry, from): WayBack[] => {
    const { step } = entry.slot;
    return children(step.bound.block, 'if-fails').flatMap((bound): WayBack[] => {
      const label = (bound.values['label'] as Name | undefined)?.text;
      const to = entries.findIndex(
        (each) => each.slot.step.label === label || each.slot.within.some((outer) => outer.label === label),
      );
      const times = (bound.values['most'] as number | undefined) ?? 1;
      return label === undefined || to < 0 || to > from ? [] : [{ from, to, times, step }];
    });
  });
}
