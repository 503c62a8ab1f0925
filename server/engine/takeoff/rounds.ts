import { type Bound, children } from '../plan/bind';
import type { Step } from '../plan/step';
import type { Name } from '../plan/term';
import { type Entry, roundsOf, slotsOf } from '../walk/walk';

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

/** Where a step, or a block of steps, sends the crew back to if it fails. */
export interface WayBack {
  /** Index of the entry that fails (of a block its last), and of the first entry that is worked again. */
  readonly from: number;
  readonly to: number;
  readonly times: number;
  readonly failed: true;
  /** The step or block that bears the `if-fails`, and the `if-fails` itself. */
  readonly step: Step;
  readonly bound: Bound;
  readonly label: Name;
}

/**
 * The ways back of a walk. A label may stand on a block: then its first step is meant. Of several rounds of a labelled
 * step, the last one before the failure is meant: inside a repeat the crew goes back within the round.
 */
export function waysBack(entries: readonly Entry[]): readonly WayBack[] {
  return entries.flatMap((_, from): WayBack[] =>
    endingAt(entries, from).flatMap((step) =>
      children(step.bound.block, 'if-fails').flatMap((bound): WayBack[] => {
        const label = bound.values['label'] as Name | undefined;
        if (!label) return [];
        const to = startBefore(entries, from, label.text);
        const times = (bound.values['most'] as number | undefined) ?? 1;
        return to < 0 ? [] : [{ from, to, times, failed: true, step, bound, label }];
      }),
    ),
  );
}

/** The step of an entry and the blocks that end with it, from the inside. */
function endingAt(entries: readonly Entry[], at: number): readonly Step[] {
  const { step, within } = entries[at]!.slot;
  if (within.length === 0) return [step];
  const next = entries[at + 1]?.slot;
  const ended = within.filter((block, depth) => {
    if (next?.within[depth] !== block) return true;
    // The block goes on, or it is begun again in the next round of a repeat around it.
    return within.slice(0, depth).some((outer) => outer.word.word === 'repeat') && next.step === firstIn(block);
  });
  return [step, ...ended.reverse()];
}

const firstIn = (block: Step): Step | undefined => {
  let step: Step | undefined = block;
  while (step?.word.block === 'steps') step = step.children[0];
  return step;
};

/** The entry at which a labelled step or block was last begun, up to an entry; -1 where there is none. */
function startBefore(entries: readonly Entry[], from: number, label: string): number {
  for (let at = from; at >= 0; at--) {
    const { step, within, round } = entries[at]!.slot;
    if (step.label === label) return at;
    const depth = within.findIndex((outer) => outer.label === label);
    if (depth < 0 || firstIn(within[depth]!) !== step) continue;
    // A labelled block that holds the repeat begins with its first round.
    const inside = within.slice(depth).some((outer) => outer.word.word === 'repeat');
    if (!inside || round === null || round === 1) return at;
  }
  return -1;
}

/** A repeat that may go on after the rounds that the walk holds. */
export interface FurtherRound {
  /** Index of the last entry of the last walked round, and of its first. */
  readonly from: number;
  readonly to: number;
  /** How many rounds may still follow. */
  readonly times: number;
  readonly failed: false;
  readonly repeat: Step;
}

/** The rounds that a crew may still have to go through after those that the walk holds. */
export function furtherRounds(entries: readonly Entry[]): readonly FurtherRound[] {
  return entries.flatMap((_, from) =>
    endingAt(entries, from).flatMap((repeat): FurtherRound[] => {
      if (repeat.word.word !== 'repeat') return [];
      const { least, most } = roundsOf(repeat);
      const walked = Math.min(2, Math.max(1, Math.floor(least)));
      const times = Math.floor(most) - walked;
      const to = from + 1 - slotsOf(repeat.children).length;
      return times > 0 ? [{ from, to, times, failed: false, repeat }] : [];
    }),
  );
}
