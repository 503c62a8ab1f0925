import type { TextChange } from '../../../server/engine/workspace';
import type { Random } from './random';

/** Words and pieces that people type, paste and leave half done. */
const pieces = [
  ...['', ' ', '\n', '  ', '{', '}', '"', '#', ',', ':', '->', '..', '-', '°', 'Δ', '\u{1F600}', '\ufeff', '\u0000'],
  ...['each kept line', 'each open part', 'system', 'at both ends', 'at most 0', 'at least 7', 'into container', 'x'],
  ...['450 psig', '450 psi', '0 inHg', '31 inHg', '500 micron', '15 s', '0 s', '-4 ft', '7 lb 4 oz', '999999999 ft'],
  ...['R-22', 'R-454B', 'R-999', 'POE', 'kept', 'new', 'removed', 'added', 'because "x"', 'per "sheet"', '2027-13-45'],
  ...['\n    release nitrogen\n', '\n    evacuate system to 500 micron\n', '\n    lock-out power\n', '\n  }\n', ' {\n'],
  ...[
    '\n    repeat until clear, at most 3 {\n      flush each kept line into container\n    }\n',
    '\n    open system\n',
  ],
  ...[
    '\n    accept wet-with-solvent because "x"\n',
    '\n  skip label because "x"\n',
    '\n  revision 9\n',
    '\nuse "x.jobplan"\n',
  ],
  ...[
    '\n    recover system to 10 inHg\n',
    '\n    charge system\n',
    '\n    install filter-drier\n',
    '\n    drain suction-line\n',
  ],
];

/** One change that somebody might make to a text, or that a slip of the hand makes. */
export function randomChange(text: string, random: Random): TextChange {
  const at = random.below(text.length + 1);
  const line = lineAround(text, at);
  const other = lineAround(text, random.below(text.length + 1));
  switch (random.below(12)) {
    case 0: // a few characters gone
      return { from: at, to: Math.min(text.length, at + 1 + random.below(4)), text: '' };
    case 1: // a piece typed
      return { from: at, to: at, text: random.of(pieces) };
    case 2: // a line gone
      return { ...line, text: '' };
    case 3: // a line copied from elsewhere
      return { from: line.from, to: line.from, text: text.slice(other.from, other.to) };
    case 4: // a line put in another's place
      return { ...line, text: text.slice(other.from, other.to) };
    case 5: // a word changed for another word of the text
      return { ...wordAround(text, at), text: text.slice(...span(wordAround(text, other.from + random.below(40)))) };
    case 6: // a word changed for a piece
      return { ...wordAround(text, at), text: random.of(pieces) };
    case 7: {
      // another figure
      const figure = figureBehind(text, at);
      return { ...figure, text: random.of(['0', '1', '2', '3', '7', '15', '60', '400', '1000', '0.5', '1/2']) };
    }
    case 8: // a line made a comment
      return { from: line.from, to: line.from, text: '# ' };
    case 9: // an empty line, or a blank, between
      return { from: line.from, to: line.from, text: random.of(['\n', ' ', '# x\n', '\r\n']) };
    case 10: // two lines changed in their order
      return {
        from: line.from,
        to: lineAround(text, line.to).to,
        text: text.slice(...span(lineAround(text, line.to))) + text.slice(line.from, line.to),
      };
    default: // a stretch gone
      return { from: at, to: Math.min(text.length, at + random.below(120)), text: '' };
  }
}

/** The change that takes a change back. */
export function inverse(text: string, { from, to, text: put }: TextChange): TextChange {
  return { from, to: from + put.length, text: text.slice(from, to) };
}

export const applied = (text: string, { from, to, text: put }: TextChange): string =>
  text.slice(0, from) + put + text.slice(to);

interface Span {
  readonly from: number;
  readonly to: number;
}
const span = ({ from, to }: Span): [number, number] => [from, to];

function lineAround(text: string, at: number): Span {
  const from = text.lastIndexOf('\n', at - 1) + 1;
  const end = text.indexOf('\n', at);
  return { from, to: Math.max(from, end < 0 ? text.length : end + 1) };
}

function wordAround(text: string, at: number): Span {
  let from = Math.min(at, text.length);
  let to = from;
  while (from > 0 && /[\w-]/.test(text[from - 1]!)) from--;
  while (to < text.length && /[\w-]/.test(text[to]!)) to++;
  return { from, to };
}

function figureBehind(text: string, at: number): Span {
  const found = /\d+/.exec(text.slice(at));
  return found ? { from: at + found.index, to: at + found.index + found[0].length } : { from: at, to: at };
}
