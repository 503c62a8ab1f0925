import type { Reported } from './report';

const levels: Readonly<Record<Reported['severity'], string>> = {
  error: 'error',
  warning: 'warning',
  information: 'notice',
};

/** Signs that would end a message, or a property of it, are written as their codes. */
const inMessage = (text: string): string => text.replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A');
const inProperty = (text: string): string => inMessage(text).replace(/:/g, '%3A').replace(/,/g, '%2C');

/** One line that systems for continuous integration show at its place in the file. Lines and columns count from one. */
export function annotation({ severity, file, range: { start, end }, name, message, related }: Reported): string {
  const properties = [
    `file=${inProperty(file)}`,
    `line=${start.line + 1}`,
    `endLine=${end.line + 1}`,
    // Columns mean something only within one line.
    ...(start.line === end.line ? [`col=${start.character + 1}`, `endColumn=${end.character + 1}`] : []),
    `title=${inProperty(name)}`,
  ];
  const also = related.map((each) => `\n${each.file}:${each.range.start.line + 1} ${each.message}`).join('');
  return `::${levels[severity]} ${properties.join(',')}::${inMessage(message + also)}\n`;
}
