import { type Bound, child } from '../plan/bind';
import { stated } from '../plan/gather';
import type { Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import type { Given } from './given';
import { input } from './given';

/** A figure of a declaration as an input of a relation: what the shop's own sheet or collar says. */
export function fact(
  declaration: Declaration | null | undefined,
  word: string,
  slot: string,
  plan: Plan,
): Given | undefined {
  const bound = declaration && child(declaration.bound.block, word);
  return bound ? factOf(bound, slot, plan) : undefined;
}

export function factOf(bound: Bound, slot: string, plan: Plan): Given | undefined {
  const found = stated(bound, slot, plan.site.atmosphere);
  return found ? input(found.quantity, 'plan', found.amount.literal.text) : undefined;
}

/** A year or day of a declaration, as text. */
export const dateOf = (declaration: Declaration | null | undefined, word: string, slot: string): string | undefined =>
  declaration ? (child(declaration.bound.block, word)?.values[slot] as string | undefined) : undefined;

/** What the job takes along of a kind: from `bring`, else the only one that the shop stocks. */
export function brought(plan: Plan, word: string): readonly Brought[] {
  return (plan.bring ?? []).flatMap((item) =>
    item.word === word && item.declaration
      ? [{ label: item.label, declaration: item.declaration, number: item.number, bound: item.bound }]
      : [],
  );
}

/** One line of `bring` whose material the shop has declared. */
export interface Brought {
  readonly label: string | null;
  readonly declaration: Declaration;
  readonly number: number;
  readonly bound: Bound;
}

/** What each piece of a line of `bring` is called: "n2-250", "n2-250 no. 2", "burnt". */
export const pieces = (item: Brought): readonly string[] =>
  Array.from({ length: item.number }, (_, k) =>
    item.number > 1 ? `${item.label ?? item.declaration.name} no. ${k + 1}` : (item.label ?? item.declaration.name),
  );

/** The shop's price, as it is written there; null where none is stated. */
export const priceOf = (declaration: Declaration | null | undefined): string | null =>
  (declaration && (child(declaration.bound.block, 'price')?.values['amount'] as string | undefined)) ?? null;

/** The size that the shop would load where the job does not say: the largest that it stocks. */
export function usual(plan: Plan, kind: string, size: (declaration: Declaration) => number): Declaration | null {
  return plan.scope
    .of(kind)
    .reduce<Declaration | null>((best, each) => (best === null || size(each) > size(best) ? each : best), null);
}

/** The volume that a house rule or the trade lets a recovery cylinder be filled to, as a share. */
export function houseFill(plan: Plan): Given | undefined {
  for (const rules of plan.rules) {
    const bound = child(rules.bound.block, 'recovery-cylinder');
    const fill = bound && factOf(bound, 'fill', plan);
    if (fill) return fill;
  }
  return undefined;
}
