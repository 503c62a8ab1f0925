import { contentsOfCell } from '../circuit/settle';
import { cellOf, endPasses } from '../circuit/spaces';
import type { Plan } from '../plan/plan';
import type { Entry } from '../walk/walk';
import type { Report } from './define';
import { endName, heldBy, refrigerantShows, spaceAt, touched, underPressure } from './plant';
import { chargeInAll } from './plant-facts';
import { gauge } from './support';

/**
 * What only a second time can bring, told from how the same step went the first time; `done` where the crew has done it
 * before on this way, and does not merely come to it later. The gravest is told.
 */
export function brokenAgain(plan: Plan, first: Entry, again: Entry, done: boolean): Report | null {
  return (
    remadeUnderPressure(plan, again) ?? (done ? chargedAgain(plan, first, again) : null) ?? notUnderVacuum(first, again)
  );
}

/** A joint that is made already is taken in hand again while pressure stands behind it. */
function remadeUnderPressure(plan: Plan, { before, events, cause }: Entry): Report | null {
  const { graph } = before;
  for (const event of events) {
    if (event.type !== 'joins') continue;
    for (const end of event.ends) {
      if (!before.ends[end]!.attached) continue;
      for (const each of graph.joints[graph.ends[end]!.joint]?.ends ?? [end]) {
        const { part } = graph.ends[each]!;
        if (before.parts[part]!.mounted === 'none' || !endPasses(before, graph.ends[each]!)) continue;
        const held = contentsOfCell(before, cellOf(each));
        if (!underPressure(before, held) || held.since === cause) continue;
        return {
          message: (say) =>
            `${endName(graph, end)} is remade while ${say.part(part)} still holds ${held.gas === 'refrigerant' ? (held.refrigerant ?? held.gas) : held.gas} at up to ${gauge(plan, held.high)}.`,
          concerns: [part],
          related: held.since ? [{ cause: held.since, message: 'it holds this since here' }] : [],
        };
      }
    }
  }
  return null;
}

/** The whole charge is weighed in on top of what went in the first time; portions of it may be added one by one. */
function chargedAgain(plan: Plan, first: Entry, { before, events, slot }: Entry): Report | null {
  if (!first.events.some((event) => event.type === 'charges')) return null;
  const most = chargeInAll(plan);
  for (const event of events) {
    if (event.type !== 'charges' || event.purpose !== 'charge') continue;
    const portion = event.mass !== null && (most === null || 2 * event.mass.low <= most * 1.1);
    const held = event.held.find((each) => refrigerantShows(before, each));
    if (!held || portion) continue;
    return {
      message: (say) =>
        `${slot.step.text.replace(/^\S+:\s*/, '')} weighs the charge in a second time, on top of what is in since ${say.step(held.since)}: recover that first, or go back to the trimming of the charge instead.`,
      concerns: event.spaces.flatMap((space) => space.parts),
      related: held.since ? [{ cause: held.since, message: 'refrigerant is in since here' }] : [],
    };
  }
  return null;
}

/** A decay test of what nobody pulled down again. */
function notUnderVacuum(first: Entry, { before, events }: Entry): Report | null {
  const under = (entry: Pick<Entry, 'events'>): readonly number[] =>
    entry.events.flatMap((event) => (event.type === 'stands' ? event.spaces.flatMap((space) => space.parts) : []));
  if (!events.some((event) => event.type === 'stands')) return null;
  const now = new Set(under({ events }));
  const left = [...new Set(under(first))].filter((part) => !now.has(part) && touched(before.graph, part));
  const [part] = left;
  const space = part === undefined ? undefined : spaceAt(before, part);
  if (!space) return null;
  const held = heldBy(before, space);
  if (held.gas === 'vacuum' && space.openings.length === 0) return null;
  return {
    message: (say) =>
      `${say.parts(left)} ${left.length > 1 ? 'stand' : 'stands'} in ${held.gas} by then, and nothing pulls ${left.length > 1 ? 'them' : 'it'} down again: go back to the evacuation.`,
    concerns: left,
    related: held.since ? [{ cause: held.since, message: `the ${held.gas} came in here` }] : [],
  };
}
