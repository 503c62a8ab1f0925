import { has } from '../course';
import { defineCheck } from '../define';
import { edits } from '../support';

/** A machine that was opened, filled, and never seen running. */
export const notStarted = defineCheck({
  name: 'not-started',
  severity: 'warning',
  title: 'The system is never started after the work',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['power-not-restored', 'joint-left-open', 'compressor-without-refrigerant'],
  meaning:
    'The circuit was opened and refrigerant is in it again, and the plan ends without a start: nobody has seen the machine run. Or it is stopped after its start, and the plan ends with it standing.',
  why: 'A valve left shut, a wrong rotation or a short charge shows in the first minutes; after that the customer finds it.',
  source: 'common practice (handbook 13.1: start, read, adjust)',
  wrong: {
    base: 'split',
    instead: [
      ['start system\n', ''],
      ['adjust charge after 15 min\n', ''],
      ['restore power', 'restore power # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { entries } = whole;
    const opened = entries.reduce((last, entry, at) => (has(entry, 'opens') ? at : last), -1);
    const later = entries.slice(opened + 1);
    const last = later.at(-1);
    if (opened < 0 || !last) return;
    if (later.some((entry) => entry.after.running)) {
      const stop = later.filter((entry) => entry.before.running && !entry.after.running).at(-1);
      if (!last.after.running && last.after.power === 'on' && stop)
        whole.report(stop, {
          message: 'The system is stopped here and the plan ends with it standing.',
          slot: 'what',
          root: 'stop',
          concerns: whole.plan.graph.parts.map((part) => part.index),
        });
      return;
    }
    const power = later
      .reverse()
      .find((entry) => entry.events.some((event) => event.type === 'powers' && event.to === 'on'));
    if (!power) return;
    // Rotation and water are looked at when the power is back, before the start.
    let ready = power;
    for (const entry of whole.entries.slice(whole.entries.indexOf(power) + 1)) {
      if (entry.slot.step.word.word !== 'check') break;
      ready = entry;
    }
    whole.report(power, {
      message: 'The power comes back here, and no step starts the system: nobody sees it run after the work.',
      slot: 'what',
      root: 'start',
      concerns: whole.plan.graph.parts.map((part) => part.index),
      fixes: [
        { title: 'Start after this step', edits: (mend) => edits(mend.insertAfter(ready.slot.step, 'start system')) },
      ],
    });
  },
});
