import type { Space } from '../circuit/spaces';
import type { Plan } from '../plan/plan';
import type { Entry } from '../walk/walk';
import { has } from './course';
import type { Whole } from './define';
import { amount } from './support';

/** What has stayed in a machine of which only a part is opened, against what is weighed in. */

/** What a recovery of less than half of the parts takes out at the most, share of the charge: the rest stands where it stood; common practice, no source. */
const sectionMost = { pumpedDown: 0.15, asItStood: 0.5 };

/** Whether a recovery leaves in place what a pump-down before it has put away, however many parts it empties. */
export function keepsGathered({ plan, entries }: Whole): (entry: Entry, spaces: readonly Space[]) => boolean {
  const at = entries.findIndex((entry) => has(entry, 'pumps-down'));
  const gathers = (part: number): boolean => /^(condenser|receiver)$/.test(plan.graph.parts[part]!.kind.kind);
  return (entry, spaces) =>
    at >= 0 && entries.indexOf(entry) > at && !spaces.some((space) => space.parts.some(gathers));
}

/** What is weighed in while most of the machine has kept its charge: what came out of a section, and the line allowance. */
export function overKept({ plan, entries, report }: Whole, charges: readonly Entry[], all: number, same: number): void {
  const { recoverCharge, charge } = plan.system;
  const [begin] = entries;
  if (charges.length === 0 || !begin || !charge) return;
  const kept = begin.before.parts.some((part) => part.contents.some(({ gas }) => gas === 'refrigerant'));
  const until = entries.indexOf(charges[0]!);
  const before = entries.slice(0, until);
  const share = !before.some((entry) => has(entry, 'recovers') || has(entry, 'vents'))
    ? 0
    : before.some((entry) => has(entry, 'pumps-down'))
      ? sectionMost.pumpedDown
      : sectionMost.asItStood;
  const inside = kept ? (recoverCharge ?? charge).quantity.low * (1 - share) : 0;
  const room = Math.max(0, all - inside) + all * (kept ? 0.05 : same);
  let mass = 0;
  for (const entry of charges) {
    for (const event of entry.events)
      if (event.type === 'charges' && event.purpose === 'charge') mass += event.mass?.low ?? 0;
    if (mass <= room) continue;
    report(entry, {
      concerns: everyPart(plan),
      message: `${amount(plan, 'mass', mass)} are weighed in here, the machine takes ${amount(plan, 'mass', all)} in all${kept ? `, and about ${amount(plan, 'mass', inside)} have stayed in it` : ''}: weigh in what came out and what new line asks, or mend the figure.`,
      slot: 'with',
      related: [{ bound: charge.bound, span: charge.span, message: 'the charge' }],
    });
    return;
  }
}

/** The charge concerns the whole machine, and none of the materials beside it. */
export const everyPart = (plan: Plan): readonly number[] => plan.graph.parts.map(({ index }) => index);
