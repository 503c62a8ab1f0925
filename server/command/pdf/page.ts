import type { Procedure } from '../../engine/procedure/document';
import {
  draftBar,
  headDate,
  headHash,
  headPlan,
  headStandard,
  markMeaning,
  orderOfAuthority,
  pageOf,
  printAgain,
} from '../../engine/procedure/wording';
import { ruleLine } from './marks';
import { leading, noteSize } from './paper';
import type { Pen, SetText, Type } from './pen';

const note = { size: noteSize, bold: false };
const noteBold = { size: noteSize, bold: true };
const jobType = { size: 12, bold: true };
const barHeight = 19;

/** Head and foot of each page, measured once: only the page's number differs. */
export interface PageFrame {
  readonly headHeight: number;
  readonly footHeight: number;
  readonly drawHead: (x: number, y: number, page: number, pages: number) => void;
  readonly drawFoot: (x: number, y: number) => void;
}

export function pageFrame(pen: Pen, procedure: Procedure, width: number): PageFrame {
  const { head, draft } = procedure;
  const bar = draft === null ? 0 : barHeight + 4;
  const rightWidth = width * 0.4;
  const leftWidth = width - rightWidth - 12;
  // Two lines and a half of a name at most: the head must leave the page to the work.
  const job = pen.set(pen.fitted(head.job, leftWidth * 2.5, jobType), leftWidth, jobType);
  const shop = pen.set(pen.fitted(head.shop, leftWidth, note), leftWidth, note);
  const oneLine = (text: string, type: Type) => pen.set(pen.fitted(text, rightWidth, type), rightWidth, type);
  const right: readonly SetText[] = [
    oneLine(headPlan(head), noteBold),
    oneLine(headStandard(head), note),
    oneLine(`${headDate(head)} · ${headHash(head)}`, note),
  ];
  const rightHeight = right.reduce((sum, one) => sum + one.height, 0) + leading(noteSize);
  const headHeight = bar + Math.max(job.height + shop.height, rightHeight) + 6;
  const foot = [
    pen.set(`${procedure.units} ${markMeaning}`, width, note),
    pen.set(printAgain, width, note),
    pen.set(orderOfAuthority, width, note),
  ];
  const footHeight = foot.reduce((sum, one) => sum + one.height, 0) + 5;
  return {
    headHeight,
    footHeight,
    drawHead: (x, y, page, pages) => {
      if (draft !== null) {
        pen.path(
          [
            [x, y],
            [x + width, y],
            [x + width, y + barHeight],
            [x, y + barHeight],
          ],
          { closed: true, fill: 'black' },
        );
        pen.label(draftBar(draft), x + width / 2, y + 13.8, jobType, 'middle', 'white');
      }
      pen.put(job, x, y + bar);
      pen.put(shop, x, y + bar + job.height);
      let at = y + bar;
      for (const one of right) {
        pen.put(one, x + width - rightWidth, at, 'right');
        at += one.height;
      }
      pen.label(pageOf(page, pages), x + width, at + noteSize * 0.95, noteBold, 'end');
      ruleLine(pen, x, y + headHeight - 1, width, 1.5);
    },
    drawFoot: (x, y) => {
      ruleLine(pen, x, y + 2, width, 0.8);
      let at = y + 4;
      for (const one of foot) {
        pen.put(one, x, at);
        at += one.height;
      }
    },
  };
}
