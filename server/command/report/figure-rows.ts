import type { ShowOptions } from '../../engine/quantity';
import type { Figure } from '../../engine/takeoff/figure';
import { relationNamed } from '../../engine/takeoff/figures';
import { showFigure } from '../../engine/takeoff/show-figure';
import { table } from './table';

/** Rows of three columns, indented under their heading. */
export const textRows = (cells: readonly (readonly string[])[]): readonly string[] =>
  cells.length === 0 ? [] : table([['', '', ''], ...cells], '    ').slice(1);

/** Figures in a row each: what, of what, how much; where there is none, why. */
export const figureRows = (figures: readonly Figure[], options: ShowOptions): readonly string[] =>
  textRows(
    figures.map((figure) => [
      relationNamed(figure.name)?.title ?? figure.name,
      figure.subject,
      figure.quantity === null && figure.missing.length === 0
        ? (figure.notes.at(-1) ?? showFigure(figure, options))
        : showFigure(figure, options),
    ]),
  );
