import type { Bound } from '../../engine/plan/bind';
import type { Amount } from '../../engine/plan/term';
import {
  isProblem,
  type Kind,
  type Literal,
  readLiteral,
  show,
  standardAtmosphere,
  toQuantity,
} from '../../engine/quantity';
import type { Asked } from '../asking';
import { planAround } from '../plan-around';

/** A quantity as the author wrote it, and in the units of the other system; undefined where there is nothing to add. */
export function quantityPage(asked: Asked, bound: Bound, within: number): string | undefined {
  const amount = amountAt(bound.values, within);
  const token = bound.item.terms.find((each) => each.at <= within && within < each.at + each.text.length);
  const literal = amount?.literal ?? (token && readLiteral(token.text));
  if (literal === undefined || isProblem(literal)) return undefined;
  const kind = amount?.kind ?? literal.unit.kinds[0];
  const twin = kind && inOtherUnits(literal, kind, planAround(asked)?.plan.site.atmosphere);
  return twin === undefined ? undefined : `**${literal.text.trim()}** is ${twin}`;
}

/** Kinds that read alike in both systems. */
const alike: ReadonlySet<Kind> = new Set(['time', 'share', 'acid-number', 'viscosity', 'count']);

/** The same in the units of the other system; undefined where both read alike. */
export function inOtherUnits(literal: Literal, kind: Kind, atmosphere = standardAtmosphere): string | undefined {
  const quantity = alike.has(kind) ? undefined : toQuantity(literal, kind, atmosphere);
  if (quantity === undefined || isProblem(quantity)) return undefined;
  return show(quantity, { system: literal.unit.system === 'si' ? 'inch-pound' : 'si', atmosphere });
}

/** The amount that covers an offset of its statement, wherever in the values it is. */
export function amountAt(value: unknown, within: number): Amount | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if ('literal' in value && 'from' in value) {
    const amount = value as Amount;
    return amount.from <= within && within < amount.to ? amount : undefined;
  }
  if ('refers' in value || 'noun' in value) return undefined;
  for (const each of Object.values(value)) {
    const found = amountAt(each, within);
    if (found) return found;
  }
  return undefined;
}
