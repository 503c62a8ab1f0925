import type { Plan } from '../plan/plan';
import { eachStep } from '../plan/step';
import type { Amount } from '../plan/term';
import { isProblem, toQuantity } from '../quantity';
import { type Given, input } from './given';

/** A visit after the work with the time that it is due in. */
export interface Visit {
  readonly title: string;
  readonly within: Given;
}

/** The visits of a plan that state how soon they are due. */
export const visitsOf = (plan: Plan): readonly Visit[] =>
  [...eachStep(plan.steps)].flatMap((step): readonly Visit[] => {
    const amount = step.word.word === 'visit' ? (step.values['within'] as Amount | undefined) : undefined;
    if (!amount?.literal) return [];
    const within = toQuantity(amount.literal, amount.kind, plan.site.atmosphere);
    if (isProblem(within)) return [];
    const title = String(step.values['title'] ?? step.label ?? 'visit');
    return [{ title, within: input(within, 'plan', amount.literal.text) }];
  });
