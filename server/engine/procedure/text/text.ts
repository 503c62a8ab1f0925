import type { Block } from '../block';
import type { Procedure } from '../document';
import { keepsNext, outline } from '../outline';
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
} from '../wording';
import { apart, broken, clean, columns, hung, inColumns } from './compose';
import { bars, barText, holdText, stepText } from './step';
import { tableText } from './table';

/** Lines that stay together; `keep` ties them to the group that follows. */
interface Group {
  readonly lines: readonly string[];
  readonly keep: boolean;
  readonly newPage: boolean;
}

/** The last guard: whatever a plan holds, no line runs out of the page. */
const within = (lines: readonly string[]): readonly string[] =>
  lines.flatMap((line) => (inColumns(line, 'plain') > columns ? broken(line, columns) : [line]));

const group = (lines: readonly string[], keep = false, newPage = false): Group => ({
  lines: within(lines),
  keep,
  newPage,
});

function groupsOf(block: Block): readonly Group[] {
  switch (block.kind) {
    case 'heading': {
      const text = clean(block.level === 1 ? block.text.toUpperCase() : block.text);
      const lead = bars(block.depth);
      const room = columns - lead.length;
      const under = (block.level === 1 ? '=' : '-').repeat(Math.min(room, [...text].length));
      return [group(['', ...[...broken(text, room), under].map((line) => lead + line)], true, block.newPage)];
    }
    case 'paragraph':
      return [group(hung(' '.repeat(2 * block.indent), block.text, columns), block.keep)];
    case 'table': {
      const { head, rows } = tableText(block);
      return [
        ...(head.length === 0 ? [] : [group(head, true)]),
        ...rows.map((row, n) => group(row, keepsNext(n, rows.length))),
      ];
    }
    case 'drawing':
      return block.drawing.listing.map((line) => {
        const indent = /^ */.exec(line)![0];
        return group(
          hung(`${indent}   `, line.trimStart(), columns).map((text, n) =>
            n === 0 ? indent + text.trimStart() : text,
          ),
        );
      });
    case 'step':
      return [group(['', ...stepText(block)])];
    case 'hold':
      return [group(['', ...holdText(block)])];
    case 'bar':
      return [
        group(block.role === 'repeat-end' ? barText(block) : ['', ...barText(block)], block.role !== 'repeat-end'),
      ];
    case 'ruled':
      return Array.from({ length: block.count }, () => group(['', '_'.repeat(columns)]));
    case 'signatures':
      return block.roles.map((role) =>
        group(['', `${role.padEnd(24)} ______________________________________   date ____________`]),
      );
  }
}

/** A name for the head: cut where it would take more than its line. */
const short = (text: string): string => {
  const signs = [...clean(text)];
  return signs.length <= columns ? signs.join('') : `${signs.slice(0, columns - 3).join('')}...`;
};

function headLines({ head, draft }: Procedure, page: string): readonly string[] {
  const bar =
    draft === null
      ? []
      : [` ${draftBar(draft)} `].map((text) =>
          text.padStart(Math.floor((columns + text.length) / 2), '#').padEnd(columns, '#'),
        );
  return within([
    ...bar,
    ...apart(short(head.job), short(headPlan(head)), columns),
    ...apart(short(head.shop), short(headStandard(head)), columns),
    ...apart(page, short(`${headDate(head)}   ${headHash(head)}`), columns),
    '='.repeat(columns),
  ]);
}

const footLines = (procedure: Procedure): readonly string[] => [
  '-'.repeat(columns),
  ...broken(`${procedure.units} ${markMeaning}`, columns),
  ...broken(printAgain, columns),
  ...broken(orderOfAuthority, columns),
];

/** Groups that are tied together by `keep`, from `start` on. */
function tied(groups: readonly Group[], start: number): readonly Group[] {
  let end = start;
  while (end < groups.length - 1 && groups[end]!.keep) end += 1;
  return groups.slice(start, end + 1);
}

/** Puts groups on pages of `room` lines; a group longer than a page is the only one that is parted. */
function paged(groups: readonly Group[], room: number): string[][] {
  const pages: string[][] = [[]];
  for (let n = 0; n < groups.length; ) {
    const together = tied(groups, n);
    const lines = together.flatMap((one) => one.lines);
    let page = pages.at(-1)!;
    if (page.length > 0 && (together[0]!.newPage || page.length + lines.length > room)) {
      page = [];
      pages.push(page);
    }
    // No blank line at the head of a page.
    for (const line of page.length === 0 && lines[0] === '' ? lines.slice(1) : lines) {
      if (page.length >= room) {
        page = [];
        pages.push(page);
      }
      page.push(line);
    }
    n += together.length;
  }
  return pages;
}

/**
 * The sheet as plain text of 100 columns, in pages of `linesPerPage` lines with head and foot and a form feed between
 * them; null prints one page without end.
 */
export function printText(procedure: Procedure, linesPerPage: number | null = 60): string {
  const blocks = outline(procedure);
  const groups = blocks.flatMap((block, n) => {
    // What closes the rounds is never alone at the head of a page.
    const next = blocks[n + 1];
    const closes = next?.kind === 'bar' && next.role === 'repeat-end';
    return groupsOf(block).map((one) => (closes ? { ...one, keep: true } : one));
  });
  const foot = footLines(procedure);
  const fixed = headLines(procedure, '').length + foot.length;
  const room = linesPerPage === null ? Number.POSITIVE_INFINITY : Math.max(10, linesPerPage - fixed);
  const pages = paged(groups, room);
  return pages
    .map((page, n) => {
      const fill = linesPerPage === null ? [] : Array.from({ length: Math.max(0, room - page.length) }, () => '');
      return [...headLines(procedure, pageOf(n + 1, pages.length)), ...page, ...fill, ...foot].join('\n');
    })
    .join('\n\f')
    .concat('\n');
}
