import type { Paint, Style } from '../host';
import type { Range } from '../shapes/range';
import type { Reported } from './report';

const colours: Readonly<Record<Reported['severity'], Style>> = { error: 'red', warning: 'yellow', information: 'cyan' };

const spot = (file: string, { start }: Range): string => `${file}:${start.line + 1}:${start.character + 1}`;

/** A finding for people: where, what, the line with the place marked under it, what else has to do with it, the ways out. */
export function findingText(finding: Reported, paint: Paint): string {
  const { file, range, severity, name, message, line } = finding;
  const marked = underline(line, range);
  const gutter = String(range.start.line + 1).length;
  const bar = (label: string, text: string): string => paint('dim', `  ${label.padStart(gutter)} | `) + text;
  return [
    `${paint('bold', spot(file, range))} ${paint(colours[severity], severity)} ${name}`,
    `  ${message}`,
    bar(String(range.start.line + 1), line),
    bar('', paint(colours[severity], marked)),
    ...finding.related.map((related) => `  ${spot(related.file, related.range)} ${related.message}`),
    ...finding.fixes.map((fix) => `  ${paint('dim', fix.safe ? 'fix:' : 'perhaps:')} ${fix.title}`),
    '',
  ].join('\n');
}

/** Carets under the place; tabs stay tabs, so that they stand under what they mean. */
function underline(line: string, { start, end }: Range): string {
  const last = end.line === start.line ? end.character : line.length;
  const before = line.slice(0, start.character).replace(/[^\t]/gu, ' ');
  return before + '^'.repeat(Math.max(1, [...line.slice(start.character, last)].length));
}

/** "2 errors and 1 warning in 3 files." */
export function summary(findings: readonly Reported[], files: number): string {
  const counted = (['error', 'warning', 'information'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    if (count === 0) return [];
    return [severity === 'information' ? `${count} for information` : `${count} ${severity}${count === 1 ? '' : 's'}`];
  });
  const where = `${files} ${files === 1 ? 'file' : 'files'}`;
  if (counted.length === 0) return `No findings in ${where}.`;
  const last = counted.pop()!;
  return `${counted.length === 0 ? last : `${counted.join(', ')} and ${last}`} in ${where}.`;
}
