import { day } from '../../reference/table-units';
import { relation } from '../relation';

/** A day counted since 1970 by the calendar. */
const dayOf = (number: number): string => new Date(number * 86_400_000).toISOString().slice(0, 10);

/** Days of a date since 1970, by the calendar; null where the text is no day. */
const dayNumber = (text: string): number | null => {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!found) return null;
  const [year, month, date] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const number = Date.UTC(year, month - 1, date) / 86_400_000;
  // 2027-02-30 would slide into March.
  return dayOf(number) === text ? number : null;
};

/** Time that is left until a follow-up is due, s; below zero where it is overdue. */
export const followUpDays = relation({
  name: 'follow-up-days',
  title: 'Days to the follow-up',
  group: 17,
  inputs: {
    start: { kind: 'date', title: 'day of the start', from: '`date` of the plan, `done` of the record' },
    within: { kind: 'time', title: 'time allowed', from: '`within` of the `visit`', valid: [0, 4e8] },
    today: { kind: 'date', title: 'day that it is counted from', from: '`date` of the plan, `done` of the record' },
  },
  output: 'time',
  formula: 't = start + time allowed - today, by the calendar',
  validity: 'days of the same time zone',
  sources: ['Gregorian calendar'],
  confidence: 'computed',
  assumptions: ['a follow-up is due at the end of its day'],
  examples: [
    {
      inputs: { start: '2027-02-09', within: '14 days', today: '2027-02-13' },
      expect: '10 days',
      tolerance: 1e-9,
      source: 'by the calendar',
    },
    {
      inputs: { start: '2028-02-28', within: '3 days', today: '2028-03-01' },
      expect: '1 days',
      tolerance: 1e-9,
      source: 'by the calendar: 2028 has a 29 February',
    },
    {
      inputs: { start: '2027-05-18', within: '30 days', today: '2027-05-18' },
      expect: '30 days',
      tolerance: 1e-9,
      source: '40 CFR 82.157(d), 84.106(d): a leak is repaired within 30 days (handbook 2.2)',
    },
  ],
  compute: ({ start, within, today }, { say }) => {
    const [from, on] = [dayNumber(start), dayNumber(today)];
    if (from === null || on === null) return { refused: `${from === null ? start : today} is no day of the calendar.` };
    const value = within - (on - from) * day;
    return {
      value,
      notes: [
        `Due on ${dayOf(from + Math.floor(within / day))}.`,
        ...(value < 0 ? [`Overdue since ${say('time', -value, 'days')}.`] : []),
      ],
      workings: () => [
        `${start} + ${say('time', within)}, counted on ${today} (${on - from} days later): ${say('time', value)}`,
      ],
    };
  },
});
