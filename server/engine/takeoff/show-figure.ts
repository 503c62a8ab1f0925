import { type ShowOptions, show } from '../quantity';
import type { Figure } from './figure';
import { relationNamed } from './figures';

/**
 * A figure as people read it, in the unit that its relation names; the line of the plan that is missing where there is
 * none. With the SI system the unit is the usual one of the kind.
 */
export const showFigure = (figure: Figure, options: ShowOptions = {}): string => {
  if (figure.quantity === null) return figure.missing.length > 0 ? `needs ${figure.missing.join(', ')}` : 'no figure';
  const relation = relationNamed(figure.name);
  const unit = options.system === 'si' ? undefined : relation?.outputUnit;
  return show(figure.quantity, {
    ...(unit !== undefined && { as: unit }),
    ...(relation?.outputDigits !== undefined && { digits: relation.outputDigits }),
    ...options,
  });
};
