import type { Paper, Procedure } from '../engine/procedure/document';
import { bundledFonts } from './pdf/fonts';
import { printPdf } from './pdf/pdf';

/**
 * The sheet as a PDF in the fonts that come with the program. This is a bundle of its own: fonts and library are four
 * times as large as all the rest, which must not wait for them.
 */
export const printedPdf = (procedure: Procedure, paper: Paper): Promise<Uint8Array> =>
  printPdf(procedure, paper, bundledFonts);
