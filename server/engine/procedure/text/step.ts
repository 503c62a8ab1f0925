import type { BarBlock, HoldBlock, StepBlock } from '../block';
import type { Reading, StepLine } from '../document';
import { plainText, type Sentence } from '../sentence';
import { apart, broken, clean, columns, hung, inColumns, padded } from './compose';

/** Depth of the text of a step: behind "[ ] 21  ". */
const stepIndent = 9;
const blank = '________';

/** What is indented under the step's sentence, inside rounds behind their bar. */
export const bars = (depth: number): string => '| '.repeat(depth);

function blanks(reading: Reading): string {
  return reading.entries.map((entry) => `${entry.lead === '' ? '' : `${entry.lead} `}${blank} ${entry.unit}`).join(' ');
}

/** Readings that follow one another in aligned columns: what, blanks with units, limit, time. */
function readingLines(readings: readonly Reading[], width: number): string[] {
  const longest = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => inColumns(text, 'plain')));
  const labelWidth = Math.min(28, longest(readings.map((one) => one.label)));
  const blankWidth = longest(readings.map(blanks));
  return readings.flatMap((one) => {
    const label = broken(one.label, labelWidth);
    const time = one.time ? '  time _____' : '';
    const lead = `${padded(label[0] ?? '', labelWidth)}  ${padded(blanks(one), blankWidth)}  `;
    const limit = broken(one.limit, Math.max(20, width - inColumns(lead, 'plain') - time.length));
    const rows = Math.max(label.length, limit.length);
    return Array.from({ length: rows }, (_, n) => {
      if (n > 0) return clean(`${padded(label[n] ?? '', labelWidth)}  ${' '.repeat(blankWidth)}  ${limit[n] ?? ''}`);
      return apart(lead + (limit[0] ?? ''), time.trim(), width).join(' ');
    });
  });
}

/** Boxes behind their label; a label or an item too long for that stands on lines of its own. */
function checksLines(label: string, items: readonly string[], width: number): readonly string[] {
  const long = inColumns(label, 'plain') > width / 2;
  const lines: string[] = long ? [...broken(`${label}:`, width)] : [];
  const lead = label === '' ? '' : long ? '  ' : `${label}: `;
  const indent = ' '.repeat(inColumns(lead, 'plain'));
  let line = '';
  const finish = () => {
    if (line !== '') lines.push(clean((lines.length === 0 ? lead : indent) + line));
    line = '';
  };
  for (const item of items) {
    const box = `${item} [ ]`;
    const room = width - indent.length;
    if (line !== '' && inColumns(line, 'plain') + 3 + inColumns(box, 'plain') > room) finish();
    if (inColumns(box, 'plain') > room) {
      for (const part of broken(box, room)) {
        line = part;
        finish();
      }
    } else line += (line === '' ? '' : '   ') + box;
  }
  finish();
  return lines;
}

function detailLines(lines: readonly StepLine[], width: number): string[] {
  const out: string[] = [];
  for (let n = 0; n < lines.length; n++) {
    const line = lines[n]!;
    if (line.kind === 'text') {
      const lead = line.label === '' ? [] : [{ kind: 'words' as const, text: `${line.label}: ` }];
      out.push(...broken([...lead, ...line.value], width));
    } else if (line.kind === 'checks') out.push(...checksLines(line.label, line.items, width));
    else {
      const readings: Reading[] = [];
      for (let m = n; m < lines.length && lines[m]!.kind === 'reading'; m++) readings.push(lines[m] as Reading);
      out.push(...readingLines(readings, width));
      n += readings.length - 1;
    }
  }
  return out;
}

/** A step as one group of lines, never parted by a page's end. */
export function stepText(step: StepBlock): readonly string[] {
  const bar = bars(step.depth);
  const width = columns - stepIndent - bar.length;
  const lead = padded(`${bar} [ ] ${step.number} `, stepIndent + bar.length);
  const under = bar + ' '.repeat(stepIndent);
  const aim = plainText(step.aim);
  const text = broken(step.text, width);
  const first =
    text.length === 1
      ? apart(text[0]!, aim, width)
      : [...text, ...(aim === '' ? [] : broken(step.aim, width).map((line) => padded(line, width, 'right')))];
  const fails: Sentence | null = step.fails === null ? null : step.fails.text;
  const rest = [
    ...step.cautions.flatMap((caution) => hung('/!\\ ', caution, width)),
    ...detailLines(step.lines, width),
    ...(fails === null ? [] : broken([{ kind: 'words', text: 'Fails: ' }, ...fails], width)),
  ];
  return [
    ...first.map((line, n) => clean((n === 0 ? lead : under) + line)),
    ...rest.map((line) => clean(under + line)),
  ];
}

/** A hold as a frame over the whole width. */
export function holdText(hold: HoldBlock): readonly string[] {
  const bar = bars(hold.depth);
  const width = columns - bar.length;
  const edge = `${bar}+${'='.repeat(width - 2)}+`;
  const inside = (text: string) => `${bar}| ${padded(text, width - 4)} |`;
  const see = hung(`HOLD ${hold.number}: `, hold.see, width - 4);
  const by = broken(`Seen by ${hold.by}:`, 30);
  const sign = `${by[0] ?? ''} ______________________   date ____________   time ________`;
  return [edge, ...see.map(inside), ...by.slice(1).map(inside), inside(''), inside(sign), edge];
}

export function barText(bar: BarBlock): readonly string[] {
  const lead = bars(bar.depth);
  const width = columns - lead.length;
  if (bar.role === 'repeat-end') return [clean(`${lead}+-- ${plainText(bar.text)}`)];
  if (bar.role === 'repeat') return hung(`${lead}+== `, bar.text, columns);
  const rule = '='.repeat(width);
  return [rule, ...apart(broken(bar.text, width - 24).join('\n'), 'date ____________', width), rule].flatMap((line) =>
    line.split('\n').map((one) => lead + one),
  );
}
