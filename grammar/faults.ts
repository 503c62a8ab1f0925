/** The sentences with which the grammar speaks of what it could not read. */
import type { Item, SyntaxFault } from './tree';

const messages: Record<SyntaxFault['name'], string> = {
  'unclosed-brace': 'This block is never closed: a } is missing.',
  'unclosed-quote': 'This text in quotes is never closed: a " is missing before the end of the line.',
  'stray-brace': 'This } closes nothing: there is no open block that it could belong to.',
  'unreadable-text': 'These characters have no meaning here.',
  'text-after-block': 'Nothing but a comment may follow the } of a block: begin a new line.',
  'missing-word': 'A line begins with a word, or with a label, a colon and a word.',
  'too-deep': 'Blocks are nested too deeply here: what stands in this one is not read.',
  'too-large': 'This text is too large to be read as a plan.',
};

export function fault(name: SyntaxFault['name'], from: number, to: number): SyntaxFault {
  return { name, message: messages[name], from, to };
}

/** Faults that come of the braces, in which lines far apart may have a part. */
const structural: ReadonlySet<SyntaxFault['name']> = new Set([
  'unclosed-brace',
  'stray-brace',
  'too-deep',
  'too-large',
]);

/** Whether every brace in the item has its partner in it. */
export function isSettled(item: Item): boolean {
  if (item.faults.some(({ name }) => structural.has(name))) return false;
  return item.kind !== 'statement' || item.block === null || item.block.items.every(isSettled);
}
