import { membersOf } from '../../walk/targets';
import type { Entry } from '../../walk/walk';
import { has, visitOf } from '../course';
import { defineCheck } from '../define';
import { changesRefrigerant } from '../plant-facts';
import { moveDown } from '../ways-out';

/** What tells the charge, by the mark that it leaves: the label of the system or of a circuit, and the record. */
const isPaper = (mark: string): boolean => /^label (?!cylinder)/.test(mark) || mark === 'record quantities';

/** A label or a record of the charge that is written before the charge is right. */
export const writtenDownEarly = defineCheck({
  name: 'written-down-early',
  severity: 'warning',
  title: 'The charge is labelled or recorded before it is right',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['compressor-without-refrigerant'],
  meaning:
    'The label is put on, or the quantities are written down, and a later step of the same visit still weighs refrigerant in or trims the charge (for a record: or recovers), with nothing written after that; in any visit, where nothing at all was weighed before.',
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
    const { entries, plan } = whole;
    const short = plan.kinds.includes('conversion') && changesRefrigerant(plan);
    const last = entries.at(-1);
    for (const [paper, cause] of last?.after.marks ?? []) {
      if (!isPaper(paper)) continue;
      const at = entries.findIndex((entry) => entry.cause === cause);
      const entry = entries[at];
      if (!entry) continue;
      const of = new Set(membersOf(plan.graph, paper.replace(/^label /, '')) ?? []);
      const weighs = (each: Entry): boolean =>
        each.events.some(
          (event) =>
            (event.type === 'charges' &&
              (of.size === 0 || event.spaces.some((space) => space.parts.some((part) => of.has(part))))) ||
            (event.type === 'recovers' && paper === 'record quantities'),
        );
      // A trim on another day, after a label that told what was weighed in, is that day's to write down; the first charge of a
      // conversion is short on purpose and tells nothing yet.
      const told = entries.slice(0, at).some((each) => weighs(each) && (!short || has(each, 'adjusts')));
      const later = entries.slice(at + 1).find((each) => weighs(each) && (!told || visitOf(each) === visitOf(entry)));
      if (!later) continue;
      whole.report(entry, {
        message: (say) =>
          `${paper === 'record quantities' ? 'The quantities are written down' : 'The label is put on'} here, and ${say.step(later.cause)} still weighs refrigerant: write it when the charge is right.`,
        slot: 'what',
        root: later.cause,
        related: [{ cause: later.cause, message: 'refrigerant is weighed here' }],
        fixes: [moveDown('Write it after the last change', entry, 'after', (each) => each.cause === later.cause)],
      });
    }
  },
});
