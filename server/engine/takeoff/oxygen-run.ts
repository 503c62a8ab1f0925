import type { Plan } from '../plan/plan';
import { between, exactly } from '../quantity';
import { oxygenInAir, oxygenLeast } from '../reference/nitrogen-practice';
import type { Entry } from '../walk/walk';
import type { Release, StepTakeOff } from './draws';
import type { Figure } from './figure';
import { oxygenLeft } from './figures';
import { input } from './given';
import { optionsOf } from './options';
import { timesOf } from './rounds';
import type { TimeRun } from './time-run';

const ofEntry = new WeakMap<
  Entry,
  {
    readonly head: Plan['head'];
    readonly releases: readonly Release[];
    /** The share of oxygen that the step began with; null where it is that of fresh air. */
    readonly before: number | null;
    readonly figure: Figure;
  }
>();

export interface OxygenRun {
  /** What is left after each step that lets gas go in the work space, all steps before it counted. */
  readonly after: ReadonlyMap<Entry, Figure>;
  /** The first step after which the accepted level may be passed; null where it never is. */
  readonly below: Entry | null;
}

/**
 * Oxygen in the work space, step after step, at the most rounds. Without ventilation what was let go stays; with it, the
 * room gets its air back in the time of the steps between, counted at their shortest.
 */
export function runOxygen(
  plan: Plan,
  entries: readonly Entry[],
  taken: readonly StepTakeOff[],
  time: () => TimeRun,
): OxygenRun {
  const after = new Map<Entry, Figure>();
  const room = plan.site.workSpace;
  let below: Entry | null = null;
  if (!room?.volume || room.open) return { after, below };
  const options = optionsOf(plan);
  const fresh = oxygenInAir.quantity.low;
  const air = room.ventilation?.quantity.low ?? 0;
  let low = fresh;
  let earlier = false;
  entries.forEach((entry, at) => {
    const releases = taken[at]!.releases;
    const { most } = timesOf(entry);
    const figure = releases.length > 0 ? leftAfter(entry, releases, most) : null;
    if (figure?.quantity) {
      low = figure.quantity.low;
      earlier = true;
      after.set(entry, figure);
      if (low < oxygenLeast.quantity.low) below ??= entry;
    }
    if (air > 0 && earlier) {
      const passed = time().steps.get(entry);
      const seconds = (passed?.work.low ?? 0) + (passed?.wait.low ?? 0);
      low = fresh - (fresh - low) * Math.exp((-air * seconds) / room.volume!.quantity.high);
    }
  });
  return { after, below };

  /** What a step leaves, as it was found before where neither the step nor what was left until then has changed. */
  function leftAfter(entry: Entry, releases: readonly Release[], most: number): Figure {
    const before = earlier ? low : null;
    const known = ofEntry.get(entry);
    if (known?.head === plan.head && known.releases === releases && known.before === before) return known.figure;
    const figure = left(releases, most);
    ofEntry.set(entry, { head: plan.head, releases, before, figure });
    return figure;
  }

  /** What a step leaves: all that it lets go, over all its rounds, in the time that it takes for it where that is known. */
  function left(releases: readonly Release[], most: number): Figure {
    const volumes = releases.map((release) => release.volume);
    const times = releases.flatMap((release) => (release.time ? [release.time.low] : []));
    const known = times.length === releases.length;
    return oxygenLeft.figure(
      room!.where,
      {
        room: input(room!.volume!.quantity, 'plan', room!.volume!.amount.literal.text),
        released: input(
          between(
            'volume',
            most * volumes.reduce((sum, each) => sum + each.low, 0),
            most * volumes.reduce((sum, each) => sum + each.high, 0),
          ),
          'computed',
        ),
        ventilation: room!.ventilation
          ? input(room!.ventilation.quantity, 'plan', room!.ventilation.amount.literal.text)
          : undefined,
        time: known ? input(exactly('time', most * times.reduce((sum, each) => sum + each, 0)), 'plan') : undefined,
        before: earlier ? input(exactly('share', low), 'computed') : undefined,
      },
      options,
    );
  }
}
