import type { Edit } from '../finding';
import { lawOf } from '../plan/law';
import { ownPressure, ownSystem } from '../plan/own-system';
import type { Plan } from '../plan/plan';
import type { Name } from '../plan/term';
import { exactly, type Kind, type Quantity, type ShowOptions, show, unitNamed } from '../quantity';
import { citations, citedForNatural, type LawMatter } from '../reference/jurisdictions';
import { isNotFluorinated } from '../reference/venting-exempt';

/** What many checks say alike. */

/** A quantity in the units that the plan is written in; `as` names the unit where it is one of these. */
export function shown(
  plan: Plan,
  quantity: Quantity,
  options: Omit<ShowOptions, 'system' | 'atmosphere'> = {},
): string {
  const isPressure = quantity.kind === 'pressure' || quantity.kind === 'pressure-difference';
  const system = isPressure ? pressureSystem(plan) : ownSystem(plan.head);
  const { as: asked, ...others } = options;
  const as = asked ?? (isPressure ? pressureUnit(plan, quantity, options.level) : undefined);
  const unit = as === undefined ? undefined : unitNamed(as);
  const fits = unit && (unit.system === system || unit.system === 'both');
  return show(quantity, { ...others, system, atmosphere: plan.site.atmosphere, ...(fits && { as: unit.name }) });
}

const pressureSystem = (plan: Plan): 'inch-pound' | 'si' => (ownPressure(plan.head) === 'psi' ? 'inch-pound' : 'si');

/** The unit of a plan that is written in bar or MPa; what is left out of it is shown as in any plan of its system. */
function pressureUnit(plan: Plan, { kind, high }: Quantity, level: ShowOptions['level']): string | undefined {
  const own = ownPressure(plan.head);
  const over = high - plan.site.atmosphere;
  if (own === 'MPa' && kind === 'pressure' && level !== 'vacuum' && level !== 'absolute')
    return over >= 1e6 ? 'MPa gauge' : undefined;
  if (own !== 'bar') return undefined;
  // A tenth of a bar and less is read in millibar, as vacuum gauges are.
  if (high < 1e4) return 'mbar';
  if (kind === 'pressure-difference') return 'bar';
  return level === 'gauge' || (level === undefined && over >= -plan.site.atmosphere * 1e-6)
    ? 'bar gauge'
    : 'bar absolute';
}

/** A figure of SI units in the plan's own: "6 lb" or "2.72 kg". */
export const amount = (plan: Plan, kind: Kind, value: number, as?: string): string =>
  shown(plan, exactly(kind, value), as === undefined ? {} : { as });

/** A pressure (Pa absolute) as the gauge reads it at the site: "412 psig". */
export const gauge = (plan: Plan, pressure: number): string =>
  shown(plan, exactly('pressure', pressure), { level: 'gauge' });

/** A round figure of the trade as each system writes it; a pressure in the plan's own unit of pressure. */
export function inOwn(plan: Plan, inchPound: string, si: string): string {
  if (!/\b(psi[ga]?|inHg|micron)\b/.test(inchPound)) return ownSystem(plan.head) === 'si' ? si : inchPound;
  const own = ownPressure(plan.head);
  if (own !== 'bar') return own === 'psi' ? inchPound : si;
  return si
    .replace(/\b0 kPa vacuum/, '0 bar gauge')
    .replace(
      /([\d.]+)( to ([\d.]+))? (k?Pa)( gauge| absolute)?(?! vacuum)\b/,
      (_, from, __, to, unit, reference = '') => {
        const [by, name] = unit === 'kPa' ? [100, `bar${reference}`] : [100, 'mbar'];
        const figures = [from, to].flatMap((each) =>
          each === undefined ? [] : [Number((Number(each) / by).toPrecision(3))],
        );
        return `${figures.join(' to ')} ${name}`;
      },
    );
}

/** A level of vacuum (Pa absolute): "500 micron", or "66.7 Pa absolute". */
export const vacuum = (plan: Plan, pressure: number): string =>
  pressureSystem(plan) === 'si'
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
export const underLaw = (plan: Plan, matter: LawMatter, refrigerant: string | null = null): string => {
  const law = lawOf(plan);
  const cited = (law === 'EU' && isNotFluorinated(refrigerant) && citedForNatural[matter]) || citations[law][matter];
  return ` (${cited}); ${authority}`;
};
