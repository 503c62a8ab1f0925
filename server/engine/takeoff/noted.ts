import type { Figure } from './figure';
import { canSpeak } from './in-system';

/** A figure with further notes. A spread would read its workings; here they stay unmade until somebody wants them. */
export function noted(figure: Figure, notes: readonly string[]): Figure {
  const own = { value: [...figure.notes, ...notes], enumerable: true };
  const more = Object.create(Object.prototype, { ...Object.getOwnPropertyDescriptors(figure), notes: own }) as Figure;
  return canSpeak(more, figure);
}
