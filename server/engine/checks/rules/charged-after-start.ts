import type { Cause } from '../../circuit/state';
import type { Step } from '../../plan/step';
import type { Entry } from '../../walk/walk';
import { has } from '../course';
import { defineCheck } from '../define';
import { refrigerantShows } from '../plant';
import { moveBefore } from '../ways-out';

/** The charge, or what the lines take of it, weighed into a machine that is running and trimmed. */
export const chargedAfterStart = defineCheck({
  name: 'charged-after-start',
  severity: 'warning',
  title: 'The charge is weighed in after the start',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: [
    'work-without-lock-out',
    'charged-twice',
    'compressor-without-refrigerant',
    'charge-into-gas',
    'joint-left-open',
    'carbon-dioxide-freezes',
  ],
  meaning:
    'The step weighs in what the plate and the lines ask for while the system runs already. A stated portion added while it runs is fine, as long as the charge was not trimmed and the label not written before, and the machine is looked at again after it.',
  why: 'The machine has run short of refrigerant until then, and what was trimmed and written down before is wrong again.',
  source: 'common practice (handbook 13.2: weigh in, start, tune, label)',
  wrong: {
    base: 'split',
    instead: [
      ['  charge system\n', ''],
      ['label system', 'charge system # <- here\n    label system'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    let trimmed: { readonly cause: Cause; readonly what: string } | null = null;
    let started: Cause | null = null;
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type === 'recovers') trimmed = null;
        if (event.type === 'starts') started = entry.cause;
        if (event.type === 'adjusts' && event.what === 'charge') trimmed = { cause: entry.cause, what: 'trimmed' };
        if (event.type !== 'charges' || event.purpose !== 'charge' || !entry.before.running) continue;
        const held = event.held.some((each) => refrigerantShows(entry.before, each));
        const stated = event.mass !== null && trimmed === null;
        if (!held || (stated && lookedAtAfter(whole.entries, entry))) continue;
        const after = trimmed ?? { cause: started, what: 'running' };
        whole.report(entry, {
          message: (say) =>
            `The charge is weighed in when the system is ${after.what} already, since ${say.step(after.cause)}: weigh it in before the start.`,
          slot: 'what',
          root: 'after start',
          concerns: event.spaces.flatMap((space) => space.parts),
          fixes: [moveBefore('Weigh it in before the start', entry.slot.step, beforeStart(whole.entries, entry))],
          related: after.cause ? [{ cause: after.cause, message: `it is ${after.what} since here` }] : [],
        });
      }
      const labelled = entry.after.marks.get('label system');
      if (trimmed === null && labelled === entry.cause) trimmed = { cause: entry.cause, what: 'labelled' };
    }
  },
});

/** Whether anybody looks at the machine again after a portion: who adds and looks is trimming. */
const lookedAtAfter = (entries: readonly Entry[], charge: Entry): boolean =>
  entries
    .slice(entries.indexOf(charge) + 1)
    .some((entry) => has(entry, 'adjusts') || (has(entry, 'reads') && entry.slot.step.word.word !== 'record'));

/** The step that a charge belongs before: the last start, or the one that brings the power back for it. */
function beforeStart(entries: readonly Entry[], charge: Entry): Step {
  const earlier = entries.slice(0, entries.indexOf(charge));
  const last = (is: (entry: Entry) => boolean, before: number): number =>
    before - 1 - earlier.slice(0, before).reverse().findIndex(is);
  const start = last((entry) => has(entry, 'starts'), earlier.length);
  const power = last((entry) => entry.before.power !== 'on' && entry.after.power === 'on', start);
  const opens = earlier.slice(power + 1, start).some((entry) => has(entry, 'lets-in') || has(entry, 'evacuates'));
  return (earlier[power < start && !opens ? power : start] ?? charge).slot.step;
}
