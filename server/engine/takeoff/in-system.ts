import type { Figure } from './figure';

type Maker = (system: 'inch-pound' | 'si') => Figure;

/** Not a member of the figure, which is handed between threads as plain data. */
const makers = new WeakMap<Figure, Maker>();

/** Remembers how a figure is put into the words of the other system. */
export function canSpeak(figure: Figure, maker: Maker | Figure): Figure {
  const own = typeof maker === 'function' ? maker : makers.get(maker);
  if (own) makers.set(figure, own);
  return figure;
}

/** Inputs and workings of a figure in the units of a system; as they stand where the figure came from another thread. */
export const inSystem = (figure: Figure, system: 'inch-pound' | 'si'): Pick<Figure, 'inputs' | 'workings'> =>
  makers.get(figure)?.(system) ?? figure;
