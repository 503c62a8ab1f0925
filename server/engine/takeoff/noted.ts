import type { Figure } from './figure';

/** A figure with further notes. A spread would read its workings; here they stay unmade until somebody wants them. */
export function noted(figure: Figure, notes: readonly string[]): Figure {
  const own = { value: [...figure.notes, ...notes], enumerable: true };
  return Object.create(Object.prototype, { ...Object.getOwnPropertyDescriptors(figure), notes: own }) as Figure;
}
