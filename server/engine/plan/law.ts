import { type Law, lawDefault } from '../reference/jurisdictions';
import { child } from './bind';
import type { Plan } from './plan';

/** What the site states as its law; null where it states none. */
const statedLaw = (plan: Plan): Law | null => {
  const site = child(plan.declaration.bound.block, 'site');
  return (child(site?.block ?? [], 'law')?.values['whose'] as Law | undefined) ?? null;
};

/** Whose law the site is under; the default where it states none. */
export const lawOf = (plan: Plan): Law => statedLaw(plan) ?? lawDefault;

/** To stand behind a citation, in its brackets: ", law of the US since the site states none"; nothing where it states one. */
export const lawTaken = (plan: Plan): string =>
  statedLaw(plan) === null ? `, law of the ${lawDefault} since the site states none` : '';

export const isLawStated = (plan: Plan): boolean => statedLaw(plan) !== null;
