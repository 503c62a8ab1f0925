import { type Bound, child } from '../plan/bind';
import { stated, wordSpan } from '../plan/gather';
import type { BringItem, Plan } from '../plan/plan';
import type { Span } from '../plan/read-terms';
import type { Declaration } from '../plan/scope';
import type { Name } from '../plan/term';
import { refrigerantNamed } from '../properties';
import type { Quantity } from '../quantity';

/** What the plan brings along, and what the shop's files say of it. */

export const brought = (plan: Plan, word: string): readonly BringItem[] =>
  plan.bring?.filter((each) => each.word === word) ?? [];

/** Refrigerants that are brought and that nothing in the plan runs on, before or after; of several circuits nobody can say. */
export function unusedRefrigerants(plan: Plan): readonly BringItem[] {
  const { before, after } = plan.system.refrigerant;
  if (after === null || plan.graph.circuits.length > 1) return [];
  const held = plan.graph.parts.flatMap((part) => part.properties.holds?.refrigerant ?? []);
  const used = [before, after, ...held].map((name) => name && refrigerantNamed(name));
  return brought(plan, 'refrigerant').filter((item) => {
    const tables = refrigerantNamed(item.name);
    return tables !== null && tables !== undefined && !used.includes(tables);
  });
}

/** Where the name of what is brought stands. */
export const spotOf = (item: BringItem): Span => item.bound.spans['what'] ?? wordSpan(item.bound);

/** A figure of a declaration: `figureOf(plan, cylinder, 'tare', 'mass')`. */
export const figureOf = (plan: Plan, declaration: Declaration | null, word: string, slot: string): Quantity | null =>
  stated(child(declaration?.bound.block ?? [], word), slot, plan.site.atmosphere)?.quantity ?? null;

/** A list of names or words of a declaration; null where it states none. */
export function listOf(declaration: Declaration | null, word: string, slot: string): readonly string[] | null {
  const value = child(declaration?.bound.block ?? [], word)?.values[slot] as readonly (Name | string)[] | undefined;
  return value ? value.map((each) => (typeof each === 'string' ? each : each.text)) : null;
}

/** The statement of a declaration, to be shown as the related place. */
export const statementOf = (declaration: Declaration | null, word: string): Bound | undefined =>
  child(declaration?.bound.block ?? [], word);

/** The cylinder that a step recovers into: the one that it names, or the only kind that is brought. */
export function cylinderFor(plan: Plan, into: string | null): BringItem | null {
  const all = brought(plan, 'recovery');
  if (into !== null) return all.find((each) => each.label === into) ?? all.find((each) => each.name === into) ?? null;
  return all.length === 1 ? all[0]! : null;
}

/** A limit of the house rules that the plan is under. */
export function houseLimit(
  plan: Plan,
  word: string,
  slot: string,
): { readonly quantity: Quantity; readonly bound: Bound; readonly file: string } | null {
  for (const rules of plan.rules) {
    const bound = child(rules.bound.block, word);
    const quantity = stated(bound, slot, plan.site.atmosphere)?.quantity;
    if (bound && quantity) return { quantity, bound, file: rules.file };
  }
  return null;
}

/** A day or month of a declaration has passed on the plan's date: `2027-05` lasts to the end of May. */
export const isPast = (until: string | undefined, date: string | null): boolean =>
  until !== undefined && date !== null && date.slice(0, until.length) > until;
