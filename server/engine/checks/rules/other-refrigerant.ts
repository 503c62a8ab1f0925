import type { Plan } from '../../plan/plan';
import type { Step } from '../../plan/step';
import type { Name } from '../../plan/term';
import { refrigerantNamed } from '../../properties';
import { factsOf } from '../../reference/refrigerant-facts';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut, type Whole } from '../define';
import { systemSpot } from '../plant-facts';
import { spotOf, unusedRefrigerants } from '../stock';
import { bringInstead, writeAt } from '../ways-out';

/** The slot in which these verbs name the refrigerant that goes in or that a control is set for. */
const slots = new Map([
  ['charge', 'with'],
  ['adjust', 'with'],
  ['reset', 'for'],
]);

/** The name of a refrigerant, alone or with its mass. */
const nameIn = (value: unknown): unknown => (value as { readonly a?: Name } | undefined)?.a ?? value;

/** A step that names another refrigerant than the one the system is to run on. */
export const otherRefrigerant = defineCheck({
  name: 'other-refrigerant',
  severity: 'error',
  title: 'A step names another refrigerant than the system runs on',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The charge is weighed in or trimmed with, or a control is set for, a refrigerant that is not the one that the system is to run on after the work. Or one is brought that nothing in the plan runs on, before or after (a warning).',
  why: 'A mixture has no table: pressures and superheat tell nothing, the oil may not come back, and the whole charge is waste. A control set for the old gas trips or never stops.',
  source: 'one refrigerant in one circuit, controls set for it (handbook 7.2, 9.3, 13.3)',
  wrong: {
    base: 'rack',
    instead: [['charge system with R-448A 50 lb', 'charge system with R-404A 50 lb # <- here']],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan } = whole;
    const { after } = plan.system.refrigerant;
    if (after === null) return;
    const wrong = whole.entries.flatMap((entry) => {
      const slot = slotOf(entry.slot.step);
      const name = slot === null ? null : wrongIn(plan, entry, slot, after);
      return slot !== null && name !== null ? [{ entry, slot, name }] : [];
    });
    const [bound, span] = systemSpot(plan, 'refrigerant');
    const others = new Set(wrong.map(({ name }) => name));
    const [first] = wrong;
    if (
      first &&
      others.size === 1 &&
      isHeadWrong(whole, first.name, new Set(wrong.map(({ entry }) => entry.slot.step)))
    ) {
      whole.reportAt(bound, bound.spans['after'] ?? span, {
        message: (say) =>
          `The system is to run on ${after} after the work, and ${say.step(first.entry.cause)}${wrong.length > 1 ? ' and whatever else names a refrigerant' : ''} says ${first.name}: one of the two is wrong.`,
        related: wrong.map(({ entry, name }) => ({ cause: entry.cause, message: `${name} is named here` })),
        fixes: inHead(plan, first.name),
      });
      return;
    }
    for (const { entry, slot, name } of wrong)
      whole.report(entry, {
        message: `${name} is named here, and the system runs on ${after} after the work: ${slot === 'for' ? 'set the control for that' : 'only that goes in'}.`,
        slot,
        root: name,
        concerns: [],
        related: [{ bound, span, message: 'what the system runs on' }],
        fixes: writeAt(entry.slot.step, nameIn(entry.slot.step.values[slot]), after),
      });
    for (const item of unusedRefrigerants(plan))
      whole.reportAt(item.bound, item.bound.spans['refrigerant'] ?? spotOf(item), {
        message: `${item.name} is brought, and nothing here runs on it: the system takes ${after}.`,
        severity: 'warning',
        root: item.name,
        concerns: [],
        related: [{ bound, span, message: 'what the system runs on' }],
        fixes: bringInstead(item, after),
      });
  },
});

/** The slot in which a step names a refrigerant; null where it names none, or cites a sheet for it. */
function slotOf(step: Step): string | null {
  const slot = slots.get(step.word.word);
  return slot !== undefined && step.spans[slot] && step.values['per'] === undefined ? slot : null;
}

/** The refrigerant that a step names, where it is not the one that the system is to run on. */
function wrongIn(plan: Plan, { slot: { step }, events }: Entry, slot: string, after: string): string | null {
  const charged = events.find((event) => event.type === 'charges');
  const named = charged?.refrigerant ?? (step.values[slot] as Name | undefined)?.text;
  if (named === undefined || named === '' || named === after) return null;
  // What comes with a new unit has a check of its own.
  if (plan.graph.parts.some((part) => part.properties.holds?.refrigerant === named)) return null;
  const tables = refrigerantNamed(named);
  // A word that is no refrigerant has its finding as a name.
  if (!tables && !factsOf(named)) return null;
  return tables && tables === refrigerantNamed(after) ? null : named;
}

/**
 * Whether the head is what does not fit: every step that names a refrigerant names one other, and several do; or the only
 * one names what ran before, and the job changes nothing.
 */
function isHeadWrong({ plan, entries }: Whole, name: string, wrong: ReadonlySet<Step>): boolean {
  const naming = new Set(entries.map(({ slot }) => slot.step).filter((step) => slotOf(step) !== null));
  if (naming.size > wrong.size) return false;
  return wrong.size > 1 || (name === plan.system.refrigerant.before && !isChange(plan));
}

const isChange = ({ kinds }: Plan): boolean => kinds.includes('conversion') || kinds.includes('changeout');

/** The head says what the steps say. */
function inHead(plan: Plan, name: string): readonly WayOut[] {
  const [bound] = systemSpot(plan, 'refrigerant');
  const { before: from, after: to } = bound.spans;
  const { before } = plan.system.refrigerant;
  if (!from) return [];
  const text = before !== null && before !== name && isChange(plan) ? `${before} -> ${name}` : name;
  return [
    {
      title: `State "${text}"`,
      edits: (mend) => [mend.change(bound, { from: from.from, to: to?.to ?? from.to }, text)],
    },
  ];
}
