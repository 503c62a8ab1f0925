import type { Graph } from './graph';
import { drawLegend } from './legend';
import { circuitInWords } from './listing';
import { drawLoop } from './loop';
import type { Drawing } from './shape';

/** 180 mm in points: the text width of A4 with 15 mm margins, which Letter has too. */
export const drawingWidth = 510;

/** Draws a circuit as a loop over the given width in points, with its legend below. */
export function drawCircuit(graph: Graph, width: number = drawingWidth): Drawing {
  const loop = drawLoop(graph.series, width);
  const legend = drawLegend(graph, loop.height + 6, loop.width);
  return {
    width: loop.width,
    height: loop.height + 6 + legend.height,
    shapes: [...loop.shapes, ...legend.shapes],
    listing: circuitInWords(graph),
  };
}
