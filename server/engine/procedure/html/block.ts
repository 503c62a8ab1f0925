import type { BarBlock, Block, Cell, HoldBlock, StepBlock, TableBlock } from '../block';
import type { Reading, StepLine } from '../document';
import { plainText, type Sentence, spans } from '../sentence';
import { drawingHtml } from './drawing';
import { escaped } from './escape';

const box = '<span class="box" role="img" aria-label="box to tick"></span>';
const rule = '<span class="rule"></span>';
const triangle =
  '<svg viewBox="0 0 14 13" role="img" aria-label="Caution"><path d="M7 1 L13.2 12.2 L0.8 12.2 Z" fill="none" stroke="currentColor" stroke-width="1.4" stroke-linejoin="round"/><path d="M7 4.6 V8.4 M7 9.6 V11" stroke="currentColor" stroke-width="1.5"/></svg>';

export function sentenceHtml(runs: Sentence): string {
  return spans(runs)
    .map((span) => {
      const text = escaped(span.text);
      if (span.style === 'strong') return `<b>${text}</b>`;
      const classes = [span.style === 'small' ? 'small' : '', span.solid && span.text.length < 40 ? 'solid' : ''];
      const kept = classes.filter((one) => one !== '').join(' ');
      return kept === '' ? text : `<span class="${kept}">${text}</span>`;
    })
    .join('');
}

const anchors = (anchor: string, line: number | null): string =>
  ` id="${escaped(anchor)}"${line === null ? '' : ` data-line="${line}"`}`;

function cellHtml(cell: Cell, align: 'left' | 'right'): string {
  if (cell.kind === 'box') return `<td class="tick">${box}</td>`;
  if (cell.kind === 'write') return `<td class="write small">${escaped(cell.unit)}</td>`;
  return `<td${align === 'right' ? ' class="right"' : ''}>${sentenceHtml(cell.text)}</td>`;
}

function tableHtml(table: TableBlock): string {
  const head = table.columns.some((column) => column.title !== '')
    ? `<thead><tr>${table.columns
        .map((column) => `<th${column.align === 'right' ? ' class="right"' : ''}>${escaped(column.title)}</th>`)
        .join('')}</tr></thead>`
    : '';
  const shares = table.columns.reduce((sum, column) => sum + column.share, 0);
  const widths = table.columns
    .map((column) =>
      column.share === 0 ? '<col class="tick">' : `<col style="width:${((96 * column.share) / shares).toFixed(1)}%">`,
    )
    .join('');
  const rows = table.rows
    .map((row) => `<tr>${row.map((cell, n) => cellHtml(cell, table.columns[n]?.align ?? 'left')).join('')}</tr>`)
    .join('\n');
  return `<table class="list"><colgroup>${widths}</colgroup>${head}<tbody>\n${rows}\n</tbody></table>`;
}

/** A limit longer than this finds no room beside two blanks; it stands below them. */
const besideTwo = 16;
const tight = (reading: Reading): boolean => reading.entries.length > 1 && plainText(reading.limit).length > besideTwo;

/** `below` puts the limits of a group under its blanks, so that all of its rows read alike. */
function readingHtml(reading: Reading, below: boolean): string {
  const blanks = reading.entries
    .map((entry) => `${entry.lead === '' ? '' : `${escaped(entry.lead)} `}${rule}${escaped(entry.unit)}`)
    .join(' ');
  const time = reading.time ? 'time <span class="rule short"></span>' : '';
  const what = reading.label.length > 30 ? '<td class="long">' : '<td>';
  const limit = sentenceHtml(reading.limit);
  const middle = below
    ? `<td class="wide">${blanks}<div class="below">${limit}</div></td>`
    : `<td>${blanks}</td><td class="limit">${limit}</td>`;
  return `<tr>${what}${escaped(reading.label)}</td>${middle}<td>${time}</td></tr>`;
}

/** Lines of a step; readings that follow one another share a table, so that their blanks stand in one column. */
function linesHtml(lines: readonly StepLine[]): string {
  const parts: string[] = [];
  for (let n = 0; n < lines.length; n++) {
    const line = lines[n]!;
    if (line.kind === 'text') {
      const label = line.label === '' ? '' : `<b>${escaped(line.label)}:</b>`;
      parts.push(`<div class="detail">${label}${sentenceHtml(line.value)}</div>`);
    } else if (line.kind === 'checks') {
      const label = line.label === '' ? '' : `<b>${escaped(line.label)}:</b>`;
      const items = line.items.map((item) => `<span>${escaped(item)}${box}</span>`).join('');
      parts.push(`<div class="detail checks">${label}${items}</div>`);
    } else {
      const group: Reading[] = [];
      for (; n < lines.length && lines[n]!.kind === 'reading'; n++) group.push(lines[n] as Reading);
      n -= 1;
      const below = group.some(tight);
      const rows = group.map((reading) => readingHtml(reading, below));
      parts.push(`<table class="readings"><tbody>${rows.join('')}</tbody></table>`);
    }
  }
  return parts.join('\n');
}

function stepHtml(step: StepBlock): string {
  const aim = step.aim.length === 0 ? '' : `<span class="aim">${sentenceHtml(step.aim)}</span>`;
  const cautions = step.cautions
    .map((caution) => `<div class="caution">${triangle}<span>${sentenceHtml(caution)}</span></div>`)
    .join('\n');
  const fails =
    step.fails === null
      ? ''
      : `<div class="detail fails"><b>Fails:</b><a href="#${escaped(step.fails.anchor)}">${sentenceHtml(step.fails.text)}</a></div>`;
  return `<section class="step" data-step="${escaped(step.number)}"${anchors(step.anchor, step.line)}>
<span>${box}</span><span class="number">${escaped(step.number)}</span><div>
<div class="line"><span>${sentenceHtml(step.text)}</span>${aim}</div>
${cautions}${linesHtml(step.lines)}${fails}</div></section>`;
}

function holdHtml(hold: HoldBlock): string {
  return `<section class="hold" data-step="${escaped(hold.number)}"${anchors(hold.anchor, hold.line)}>
<div class="line">HOLD ${escaped(hold.number)}: ${sentenceHtml(hold.see)}</div>
<div class="signs">Seen by ${escaped(hold.by)} <span class="rule"></span> date <span class="rule date"></span> time <span class="rule date"></span></div></section>`;
}

function barHtml(bar: BarBlock): string {
  const date = bar.role === 'visit' ? '<span>date <span class="rule"></span></span>' : '';
  return `<div class="bar ${bar.role}"${anchors(bar.anchor, bar.line)}><span>${sentenceHtml(bar.text)}</span>${date}</div>`;
}

function bodyOf(block: Block): string {
  switch (block.kind) {
    case 'heading': {
      const tag = block.level === 1 ? 'h1' : 'h2';
      const page = block.newPage ? ' class="new-page"' : '';
      return `<${tag}${page}${anchors(block.anchor, block.line)}>${escaped(block.text)}</${tag}>`;
    }
    case 'paragraph': {
      const classes = [block.small ? 'small' : '', block.indent > 0 ? 'indent' : ''].filter((one) => one !== '');
      return `<p${classes.length === 0 ? '' : ` class="${classes.join(' ')}"`}>${sentenceHtml(block.text)}</p>`;
    }
    case 'table':
      return tableHtml(block);
    case 'drawing':
      return drawingHtml(block.drawing);
    case 'step':
      return stepHtml(block);
    case 'hold':
      return holdHtml(block);
    case 'bar':
      return barHtml(block);
    case 'ruled':
      return '<div class="ruled"></div>'.repeat(block.count);
    case 'signatures':
      return block.roles
        .map(
          (role) =>
            `<div class="signs">${escaped(role)} <span class="rule"></span> date <span class="rule date"></span></div>`,
        )
        .join('\n');
  }
}

/** One block as HTML; blocks inside rounds stand behind as many bars as the rounds are deep. */
export function blockHtml(block: Block): string {
  const depth = 'depth' in block ? block.depth : 0;
  return '<div class="depth">'.repeat(depth) + bodyOf(block) + '</div>'.repeat(depth);
}
