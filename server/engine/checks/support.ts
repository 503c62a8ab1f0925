import type { Edit } from '../finding';
import { lawOf } from '../plan/law';
import { ownSystem } from '../plan/own-system';
import type { Plan } from '../plan/plan';
import type { Name } from '../plan/term';
import { exactly, type Kind, type Quantity, type ShowOptions, show, unitNamed } from '../quantity';
import { citations, type LawMatter } from '../reference/jurisdictions';

/** What many checks say alike. */

/** A quantity in the units that the plan is written in; `as` names the unit where it is one of these. */
export function shown(
  plan: Plan,
  quantity: Quantity,
  options: Omit<ShowOptions, 'system' | 'atmosphere'> = {},
): string {
  const system = ownSystem(plan.head);
  const { as, ...others } = options;
  const unit = as === undefined ? undefined : unitNamed(as);
  const fits = unit && (unit.system === system || unit.system === 'both');
  return show(quantity, { ...others, system, atmosphere: plan.site.atmosphere, ...(fits && { as: unit.name }) });
}

/** A figure of SI units in the plan's own: "6 lb" or "2.72 kg". */
export const amount = (plan: Plan, kind: Kind, value: number, as?: string): string =>
  shown(plan, exactly(kind, value), as === undefined ? {} : { as });

/** A pressure (Pa absolute) as the gauge reads it at the site: "412 psig". */
export const gauge = (plan: Plan, pressure: number): string =>
  shown(plan, exactly('pressure', pressure), { level: 'gauge' });

/** A round figure of the trade as each system writes it. */
export const inOwn = (plan: Plan, inchPound: string, si: string): string =>
  ownSystem(plan.head) === 'si' ? si : inchPound;

/** A level of vacuum (Pa absolute): "500 micron", or "66.7 Pa absolute". */
export const vacuum = (plan: Plan, pressure: number): string =>
  ownSystem(plan.head) === 'si'
    ? shown(plan, exactly('pressure', pressure), { level: 'absolute' })
    : shown(plan, exactly('pressure', pressure), { as: 'micron' });

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
