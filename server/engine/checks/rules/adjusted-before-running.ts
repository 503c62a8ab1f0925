import { steadyTime } from '../../reference/charging';
import { beginsToRun, timeOf } from '../course';
import { defineCheck } from '../define';
import { amount, edits } from '../support';

/** Charge or superheat trimmed on a machine that stands still or has just started. */
export const adjustedBeforeRunning = defineCheck({
  name: 'adjusted-before-running',
  severity: 'warning',
  title: 'The charge or a valve is adjusted before the system runs steadily',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: [
    'refrigerant-not-stated',
    'compressor-without-refrigerant',
    'power-not-restored',
    'conversion-not-carried-through',
  ],
  meaning:
    'The step trims the charge or the superheat while the system does not run, or less than 15 minutes after its start and with no waiting time stated.',
  why: 'Readings of a machine that settles lead to too much or too little refrigerant, and the next crew trims it back.',
  source: `${steadyTime.source} (handbook 9.2)`,
  wrong: { base: 'split', instead: [['adjust charge after 15 min', 'adjust charge # <- here']] },
  right: { base: 'split' },
  plan(whole) {
    let steady = 0;
    let settled = 0;
    for (const entry of whole.entries) {
      if (beginsToRun(entry)) steady = settled = 0;
      const waited = Math.max(timeOf(entry, 'after'), entry.slot.step.word.word === 'run' ? timeOf(entry, 'time') : 0);
      steady += waited;
      settled += waited;
      for (const event of entry.events) {
        if (event.type !== 'adjusts' || event.to === 'weight') continue;
        const running = entry.before.running;
        // A wait that is stated counts from the last change; where none is, the readings in between are the wait.
        const since = timeOf(entry, 'after') > 0 ? settled : steady;
        settled = 0;
        if (running && (since >= steadyTime.quantity.low * 0.99 || entry.slot.step.values['per'] !== undefined))
          continue;
        whole.report(entry, {
          message: running
            ? `The ${event.what} is adjusted after ${since > 0 ? amount(whole.plan, 'time', since) : 'no stated time'} of steady running: wait 15 minutes after the start and after each change (${steadyTime.source}).`
            : `The ${event.what} is adjusted while the system stands still: start it first.`,
          slot: entry.slot.step.spans['after'] ? 'after' : 'what',
          fixes: running
            ? [
                {
                  title: 'Wait 15 min',
                  edits: (mend) =>
                    edits(
                      entry.slot.step.spans['after']
                        ? mend.replace(entry.slot.step, 'after', 'after 15 min')
                        : mend.append(entry.slot.step, ' after 15 min'),
                    ),
                },
              ]
            : [],
        });
      }
    }
  },
});
