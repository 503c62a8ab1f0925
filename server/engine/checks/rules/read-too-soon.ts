import { steadyTime } from '../../reference/charging';
import { beginsToRun, timeOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { isOrAre } from '../is-are';
import { listed } from '../listed';
import { amount, edits } from '../support';

/** Readings that mean something only of a machine that has settled; amps and pressures at the start are looked at on purpose. */
const ofSettled = new Set(['superheat', 'subcooling', 'temperature-split']);

/** Superheat, subcooling or the split over a coil read so soon after the start that they still move. */
export const readTooSoon = defineCheck({
  name: 'read-too-soon',
  severity: 'warning',
  title: 'A reading of a settled machine is taken too soon after the start',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['read-while-standing'],
  meaning:
    'Superheat, subcooling or the temperature split is read after a stated time that, with all that is done since the start, is less than 15 minutes of running. A reading without a time is taken when the machine is steady.',
  why: 'A machine that settles shows every superheat there is; the record then holds a figure that means nothing, and somebody trims the charge to it.',
  source: `${steadyTime.source} (handbook 9.2)`,
  wrong: {
    base: 'rack',
    instead: [['    adjust superheat', '    read superheat after 30 s # <- here\n    adjust superheat']],
  },
  right: { base: 'rack', instead: [['    adjust superheat', '    read superheat after 20 min\n    adjust superheat']] },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      const wait = timeOf(entry, 'after');
      if (wait === 0 || !entry.before.running || typeof entry.slot.step.values['per'] === 'string') return;
      const read = entry.events.flatMap((event) =>
        event.type === 'reads' ? event.of.filter((each) => ofSettled.has(each)) : [],
      );
      if (read.length === 0) return;
      const ran = wait + ranSince(whole, at);
      if (ran >= steadyTime.quantity.low * 0.99) return;
      whole.report(entry, {
        message: `After ${amount(whole.plan, 'time', wait)} the machine still settles, and ${listed(read)} ${isOrAre(read.length)} no figure yet: read after 15 minutes of steady running (${steadyTime.source}).`,
        slot: 'after',
        fixes: [
          {
            title: 'Read after 15 min',
            edits: (mend) => edits(mend.replace(entry.slot.step, 'after', 'after 15 min')),
          },
        ],
      });
    });
  },
});

/** How long the machine has run when a step begins, s: stated waits, and what the steps in between take at the least. */
function ranSince(whole: Whole, at: number): number {
  let time = 0;
  for (let k = at - 1; k >= 0; k--) {
    const entry = whole.entries[k]!;
    // A machine that ran before the job began is steady.
    if (beginsToRun(entry) || !entry.before.running) return time;
    const taken = whole.view.takeOff.time.steps.get(entry);
    time += Math.max(timeOf(entry, 'after'), (taken?.work.low ?? 0) + (taken?.wait.low ?? 0));
  }
  return Number.POSITIVE_INFINITY;
}
