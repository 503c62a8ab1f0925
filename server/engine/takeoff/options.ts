import { ownSystem } from '../plan/own-system';
import type { Head } from '../plan/plan';
import type { FigureOptions } from './relation';

/** How the figures of a plan speak: in the units that it is written in, by the gauge of its site. */
export const optionsOf = (plan: Head & { readonly head?: Head }): Required<FigureOptions> => ({
  atmosphere: plan.site.atmosphere,
  system: ownSystem(plan.head ?? plan),
});
