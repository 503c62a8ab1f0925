import type { Plan } from '../plan/plan';
import type { Event } from '../steps/events';
import type { Entry } from '../walk/walk';
import type { Here, Report } from './define';

const noEvents: readonly never[] = [];

/** What a check of single steps sees of a walked entry, in the plan's way or in one that leads back. */
export function hereOf(plan: Plan, entry: Entry, report: (report: Report) => void): Here {
  const { events } = entry;
  return {
    plan,
    entry,
    step: entry.slot.step,
    before: entry.before,
    after: entry.after,
    events: <T extends Event['type']>(type: T) => {
      if (!events.some((event) => event.type === type)) return noEvents;
      return events.filter((event): event is Extract<Event, { type: T }> => event.type === type);
    },
    per: (entry.slot.step.values['per'] as string | undefined) ?? null,
    report,
  };
}
