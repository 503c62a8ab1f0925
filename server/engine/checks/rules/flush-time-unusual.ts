import { exactly } from '../../quantity';
import { shotTime } from '../../reference/flush-practice';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut, type Whole } from '../define';
import { shown } from '../support';
import { writeAt, written } from '../ways-out';

/** A flush that is too short to wet the line, or too long for one shot. */
export const flushTimeUnusual = defineCheck({
  name: 'flush-time-unusual',
  severity: 'warning',
  title: 'A flush time out of the usual range',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'A flush states a time outside the usual 30 to 90 s for one line, or shorter than its solvent takes to come out of the container.',
  why: 'A shorter shot does not wet the whole wall; a longer one is solvent poured after solvent that should be purged first.',
  source: shotTime.source,
  wrong: {
    base: 'split',
    instead: [['flush each kept line into container', 'flush each kept line for 10 s into container # <- here']],
  },
  right: {
    base: 'split',
    instead: [['flush each kept line into container', 'flush each kept line for 75 s into container']],
  },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      if (typeof entry.slot.step.values['per'] === 'string') return;
      for (const event of entry.events) {
        if (event.type !== 'flows' || event.medium !== 'solvent' || !event.time) continue;
        const { low, high } = shotTime.quantity;
        const line = whole.plan.graph.parts[event.line]?.name ?? '';
        if (event.time.low < low || event.time.high > high) {
          whole.report(entry, {
            message: `${shown(whole.plan, event.time)} is outside the usual ${shown(whole.plan, shotTime.quantity)} for one shot (${shotTime.source}): ${event.time.low < low ? 'the wall is not wetted' : 'split it into shots with a purge between'}, or cite the sheet that asks for it.`,
            slot: 'time',
            root: entry.slot.step,
            fixes: inOneShot(whole, entry, at),
          });
          continue;
        }
        const needed = (whole.view.takeOff.steps[at] ?? []).find(
          (figure) => figure.name === 'flush-time' && figure.subject === line,
        )?.quantity;
        if (needed && event.time.high < needed.low * 0.9)
          whole.report(entry, {
            message: `${line} needs ${shown(whole.plan, needed)} for its solvent at the rate that the container gives, and the step allows ${shown(whole.plan, event.time)}: give it more time, or take two shots.`,
            slot: 'time',
            root: entry.slot.step,
            fixes: inOneShot(whole, entry, at),
          });
      }
    });
  },
});

/** A usual time in which the solvent of every line of the step comes out; none where that takes more than one shot. */
function inOneShot(whole: Whole, entry: Entry, at: number): readonly WayOut[] {
  const { low, high } = shotTime.quantity;
  const needed = (whole.view.takeOff.steps[at] ?? []).flatMap((figure) =>
    figure.name === 'flush-time' && figure.quantity ? [figure.quantity.low] : [],
  );
  const time = Math.ceil(Math.max(low, ...needed) / 5) * 5;
  if (time > high) return [];
  const { step } = entry.slot;
  return writeAt(step, step.values['time'], written(whole.plan, exactly('time', time)));
}
