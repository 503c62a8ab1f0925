import PDFDocument from 'pdfkit';
import type { Paper, Procedure } from '../../engine/procedure/document';
import { outline } from '../../engine/procedure/outline';
import { paginate } from './flow';
import type { SheetFonts } from './fonts';
import { pageFrame } from './page';
import { margin, paperSizes } from './paper';
import { makePen } from './pen';
import { sheetSlabs } from './slabs';

/** Space between the head, the steps and the foot. */
const clear = 8;

/**
 * The plan's own date as the file's, so that the same plan always gives the same file; the PDF's format knows no file
 * without a date, so a plan without one gets the first day that the format can hold.
 */
function dateOf(procedure: Procedure): Date {
  const date = new Date(`${procedure.head.date ?? ''}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? new Date(0) : date;
}

function finished(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('end', () => resolve(Buffer.concat(chunks)));
    document.on('error', reject);
    document.end();
  });
}

/** The sheet as a PDF file: black on white, both fonts embedded, head and foot on each page. */
export async function printPdf(procedure: Procedure, paper: Paper, fonts: SheetFonts): Promise<Uint8Array> {
  const size = paperSizes[paper];
  const { job, shop, plan, revision } = procedure.head;
  const document = new PDFDocument({
    autoFirstPage: false,
    size: [...size],
    margin: 0,
    lang: 'en',
    // No default font: the library would read its metrics from disk, and open it for nothing.
    font: null as unknown as string,
    info: {
      Title: `${job}: ${plan}, revision ${revision}`,
      Author: shop,
      Creator: 'jobplan',
      Producer: 'jobplan',
      CreationDate: dateOf(procedure),
    },
  });
  document.registerFont('regular', fonts.regular as Buffer);
  document.registerFont('bold', fonts.bold as Buffer);
  const pen = makePen(document);
  const width = size[0] - 2 * margin;
  const frame = pageFrame(pen, procedure, width);
  const room = size[1] - 2 * margin - frame.headHeight - frame.footHeight - 2 * clear;
  const pages = paginate(sheetSlabs(pen, outline(procedure), width, room), room);
  for (const [n, page] of pages.entries()) {
    document.addPage();
    frame.drawHead(margin, margin, n + 1, pages.length);
    for (const { slab, y } of page) slab.draw(margin, margin + frame.headHeight + clear + y);
    frame.drawFoot(margin, size[1] - margin - frame.footHeight);
  }
  return finished(document);
}
