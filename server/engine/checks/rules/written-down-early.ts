import { has, visitOf } from '../course';
import { defineCheck } from '../define';
import { moveDown } from '../ways-out';

/** What tells the charge, by the mark that it leaves. */
const papers = ['label system', 'record quantities'] as const;

/** A label or a record of the charge that is written before the charge is right. */
export const writtenDownEarly = defineCheck({
  name: 'written-down-early',
  severity: 'warning',
  title: 'The charge is labelled or recorded before it is right',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The label is put on, or the quantities are written down, and a later step of the same visit still weighs refrigerant in or trims the charge, with nothing written after that.',
  why: 'The plate and the record then tell a charge that is not in the machine: the next who works on it charges by them, and the law asks for the right ones.',
  source: 'common practice (handbook 13.1: tune, then label and record)',
  wrong: {
    base: 'split',
    instead: [
      ['label system\n', ''],
      ['adjust charge after 15 min', 'label system # <- here\n    adjust charge after 15 min'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { entries } = whole;
    const last = entries.at(-1);
    for (const paper of papers) {
      const cause = last?.after.marks.get(paper);
      const at = entries.findIndex((entry) => entry.cause === cause);
      const entry = entries[at];
      if (!cause || !entry) continue;
      const later = entries.slice(at + 1).find((each) => has(each, 'charges') && visitOf(each) === visitOf(entry));
      if (!later) continue;
      whole.report(entry, {
        message: (say) =>
          `${paper === 'label system' ? 'The label is put on' : 'The quantities are written down'} here, and ${say.step(later.cause)} still changes the charge: write it when the charge is right.`,
        slot: 'what',
        root: later.cause,
        related: [{ cause: later.cause, message: 'the charge changes here' }],
        fixes: [moveDown('Write it after the last change', entry, 'after', (each) => each.cause === later.cause)],
      });
    }
  },
});
