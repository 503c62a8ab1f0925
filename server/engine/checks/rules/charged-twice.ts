import { conversionMost } from '../../reference/charging';
import type { Entry } from '../../walk/walk';
import { defineCheck, type Whole } from '../define';
import { chargeInAll } from '../plant-facts';
import { amount } from '../support';

/** The same charge weighed in again. */
export const chargedTwice = defineCheck({
  name: 'charged-twice',
  severity: 'warning',
  title: 'The charge is weighed in twice',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'Two steps weigh in the charge or the line allowance, with no recovery between them, and together they are more than the machine takes.',
  why: 'An overcharge raises head pressure and sends liquid to the compressor.',
  source: 'common practice',
  wrong: { base: 'split', instead: [['  charge system\n', '  charge system\n    charge system # <- here\n']] },
  right: { base: 'split' },
  plan(whole) {
    let before: Entry | null = null;
    let mass = 0;
    for (const entry of whole.entries) {
      if (entry.events.some((event) => event.type === 'recovers')) {
        before = null;
        mass = 0;
      }
      for (const event of entry.events) {
        if (event.type !== 'charges' || event.purpose !== 'charge') continue;
        const most = chargeInAll(whole.plan);
        mass += event.mass?.low ?? 0;
        const weighed =
          event.mass === null ||
          (most !== null &&
            mass > most * (whole.plan.kinds.includes('conversion') ? conversionMost.quantity.high : 1.1));
        if (
          before &&
          entry.slot.step !== before.slot.step &&
          (weighed || isRepeated(whole, before, entry)) &&
          sameSpaces(before, entry)
        ) {
          const first = before;
          whole.report(entry, {
            concerns: event.spaces.flatMap(({ parts }) => parts),
            message: (say) =>
              `${say.step(first.cause)} has weighed the charge in already${event.mass && most !== null ? `, and with ${amount(whole.plan, 'mass', mass)} there is more than the ${amount(whole.plan, 'mass', most)} of the plan` : ''}: leave one of the two out.`,
            related: [{ cause: first.cause, message: 'weighed in here' }],
            fixes: [
              {
                title: 'Take this step out',
                edits: (mend) => [mend.remove(entry.slot.step)].flatMap((each) => each ?? []),
              },
            ],
          });
        }
        before ??= entry;
      }
    }
  },
});

/** Whether a step says what one before it has said, with no start in between: two portions of one size add up to the charge. */
function isRepeated({ entries, plan }: Whole, before: Entry, entry: Entry): boolean {
  const all = chargeInAll(plan);
  const mass = massOf(entry);
  if (mass === null || mass !== massOf(before)) return false;
  if (entries.slice(entries.indexOf(before), entries.indexOf(entry)).some((each) => each.after.running)) return false;
  return all === null || Math.abs(mass * 2 - all) > all * 0.1;
}

const massOf = (entry: Entry): number | null =>
  entry.events.flatMap((event) => (event.type === 'charges' ? [event.mass?.low ?? null] : []))[0] ?? null;

const sameSpaces = (a: Entry, b: Entry): boolean => {
  const parts = (entry: Entry) =>
    new Set(
      entry.events.flatMap((event) => (event.type === 'charges' ? event.spaces.flatMap((space) => space.parts) : [])),
    );
  const first = parts(a);
  return [...parts(b)].some((part) => first.has(part));
};
