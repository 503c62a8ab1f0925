/** The sentences with which the grammar speaks of what it could not read. */
import type { SyntaxFault } from './tree';

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
