import { firstStart, marksLeft, visitOf } from '../course';
import { defineCheck } from '../define';
import { moveBefore } from '../ways-out';

/**
 * What has to be seen before a machine turns. Reads the words of a check: no state of the plant shows rotation or water. Air is
 * proved with the machine running, and has a check of its own.
 */
const beforeTurning = /^check .*(rotation|phase|water|pump|oil-level)/;

/** Rotation or water looked at when the machine already runs. */
export const checkedAfterStart = defineCheck({
  name: 'checked-after-start',
  severity: 'warning',
  title: 'Rotation or water is checked only after the start',
  acceptable: true,
  reads: 'words',
  ground: 'practice',
  meaning: 'A check of the rotation, the phases, the water or the oil level stands after the start that it is for.',
  why: 'A scroll that turns backwards ruins its bearings in minutes, and a condenser or a barrel without water trips or freezes at once.',
  source: 'start-up: rotation, heater, airflow before it runs (handbook 13.1, common practice)',
  wrong: { base: 'split', instead: [['start system\n', 'start system\n    check rotation # <- here\n']] },
  right: { base: 'split', instead: [['start system\n', 'check rotation\n    start system\n']] },
  plan(whole) {
    const at = firstStart(whole.entries);
    const start = whole.entries[at];
    if (!start) return;
    const seen = new Set(start.before.marks.keys());
    const visit = visitOf(start);
    for (const entry of whole.entries.slice(at + 1)) {
      if (entry.slot.step.word.word !== 'check' || !entry.before.running || visitOf(entry) !== visit) continue;
      const mark = marksLeft(entry).find((name) => beforeTurning.test(name));
      // Looked at before the start and once more when it runs is as careful as can be.
      if (mark === undefined || seen.has(mark)) continue;
      whole.report(entry, {
        message: (say) =>
          `${say.step(start.cause)} has started the machine before this is looked at: check it before the start.`,
        slot: 'what',
        root: mark,
        fixes: [moveBefore('Check it before the start', entry.slot.step, start.slot.step)],
        related: [{ cause: start.cause, message: 'the machine starts here' }],
      });
    }
  },
});
