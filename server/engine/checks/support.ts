import type { Edit } from '../finding';
import { lawOf } from '../plan/law';
import type { Plan } from '../plan/plan';
import type { Name } from '../plan/term';
import { exactly, type Kind, type Quantity, show } from '../quantity';
import { citations, type LawMatter } from '../reference/jurisdictions';

/** What many checks say alike. */

/** A pressure (Pa absolute) as the gauge reads it at the site: "412 psig". */
export const gauge = (plan: Plan, pressure: number): string =>
  show(exactly('pressure', pressure), { level: 'gauge', atmosphere: plan.site.atmosphere });

/** A level of vacuum (Pa absolute): "500 micron". */
export const vacuum = (pressure: number): string => show(exactly('pressure', pressure), { as: 'micron' });

export const amount = (kind: Kind, value: number, as?: string): string =>
  show(exactly(kind, value), as === undefined ? {} : { as });
export const shown = (quantity: Quantity): string => show(quantity);

/** An edit as a way out wants it: none where it cannot be made. */
export const edits = (...all: readonly (Edit | null)[]): readonly Edit[] => all.flatMap((each) => (each ? [each] : []));

/** Every name among a statement's values, however deep, with its slot. */
export function* namesIn(values: Readonly<Record<string, unknown>>): Generator<readonly [slot: string, name: Name]> {
  for (const [slot, value] of Object.entries(values)) for (const name of namesOf(value)) yield [slot, name];
}

function* namesOf(value: unknown): Generator<Name> {
  if (typeof value !== 'object' || value === null) return;
  if (Array.isArray(value)) for (const each of value) yield* namesOf(each);
  else if ('refers' in value) yield value as Name;
  else if ('a' in value) {
    yield* namesOf(value.a);
    if ('b' in value) yield* namesOf(value.b);
  }
}

/** Law differs from place to place; every finding that rests on it says so. */
export const authority = 'local code and the authority come first';

/** What a finding rests on under the law of the site, to stand at the end of its sentence: " (40 CFR 82.154); local code …". */
export const underLaw = (plan: Plan, matter: LawMatter): string => ` (${citations[lawOf(plan)][matter]}); ${authority}`;
