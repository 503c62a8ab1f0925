import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format, type Item, print, type TextEdit, walk } from '../../grammar/index';
import { grammar, samples } from './samples';

function applied(text: string, edits: readonly TextEdit[]): string {
  let result = '';
  let done = 0;
  for (const { from, to, text: put } of edits) {
    expect(from).toBeGreaterThanOrEqual(done);
    result += text.slice(done, from) + put;
    done = to;
  }
  return result + text.slice(done);
}

const laidOut = (text: string) => applied(text, format(grammar.parse(text)));

/** Tokens and comments, without what lies between them. */
function kept(text: string): string[] {
  const found: string[] = [];
  const add = (tokens: Item['head']) => {
    for (const token of tokens) {
      if (token.kind !== 'space' && token.kind !== 'newline') found.push(`${token.kind} ${token.text}`);
    }
  };
  const visit = (item: Item) => {
    add(item.head);
    if (item.kind !== 'statement') return;
    if (item.block !== null) {
      item.block.items.forEach(visit);
      add(item.block.close);
    }
    add(item.tail);
  };
  grammar.parse(text).items.forEach(visit);
  return found;
}

describe('the layout', () => {
  test.each<[what: string, before: string, after: string]>([
    ['indents by two for each block', 'a {\nb {\n    c\n\t}\n}\n', 'a {\n  b {\n    c\n  }\n}\n'],
    ['leaves one space between terms', 'a   b\tc\u00a0"d  e"\n', 'a b c "d  e"\n'],
    ['takes away blanks before comma and colon', 'a :b c , d,e\n', 'a: b c, d, e\n'],
    ['sets blanks around an arrow and before a brace', 'a b->c{\n}\n', 'a b -> c {\n}\n'],
    ['leaves a quantity as it was written', 'a 7  lb 4oz, 15%\n', 'a 7  lb 4oz, 15%\n'],
    ['keeps one empty line of several', 'a\n\n \n\t\nb\n', 'a\n\nb\n'],
    ['keeps no empty line at the ends of a block', 'a {\n\n  b\n\n  c\n\n}\n', 'a {\n  b\n\n  c\n}\n'],
    ['keeps no empty line at the ends of the file', '\n\na\n\n\n', 'a\n'],
    ['empties a file of blanks', ' \n\t\n', ''],
    ['ends the file with a newline', 'a', 'a\n'],
    ['ends a last comment with a newline', '  # a', '# a\n'],
    ['takes away blanks at the end of a line', 'a  \nb {  \n}  \n', 'a\nb {\n}\n'],
    ['leaves a one-line block on its line', 'a{b c   12:10}\n', 'a { b c 12:10 }\n'],
    ['leaves nested one-line blocks on their line', 'a{b{c}}\n', 'a { b { c } }\n'],
    ['leaves an empty block empty', 'a {}\nb { }\n', 'a {}\nb {}\n'],
    ['breaks off what stands behind the brace of a longer block', 'a { b\nc }\n', 'a {\n  b\n  c\n}\n'],
    [
      'keeps a comment behind what it speaks of',
      'a     # one\nb {# two\nc\n}  # three\n',
      'a     # one\nb { # two\n  c\n}  # three\n',
    ],
    [
      'indents a comment that has its own line',
      'a {\n# one\n      # two\n}\n# three\n',
      'a {\n  # one\n  # two\n}\n# three\n',
    ],
    ['keeps an empty line before a comment', 'a {\n# one\n\n# two\nb\n}\n', 'a {\n  # one\n\n  # two\n  b\n}\n'],
    ['keeps the line ends of the file', 'a {\r\nb }\r\n', 'a {\r\n  b\r\n}\r\n'],
    ['keeps a lone carriage return as a line end', 'a\r\r\rb', 'a\r\rb\r'],
    ['keeps the byte-order mark', '\ufeff  a\n', '\ufeffa\n'],
    ['leaves a statement with a fault alone', 'a {\nb  "c\n   d   e\n}\n', 'a {\nb  "c\n  d e\n}\n'],
    [
      'leaves a declaration with an unclosed block alone',
      'a   b\nc {\n   d {\n  e   f\n}\n',
      'a b\nc {\n   d {\n  e   f\n}\n',
    ],
    ['leaves text behind a block on its line', 'a  { }  b\n   c\n', 'a  { }  b\nc\n'],
  ])('%s', (_, before, after) => {
    expect(laidOut(before)).toBe(after);
    expect(laidOut(after)).toBe(after);
    expect(kept(after)).toEqual(kept(before));
  });

  test.each(samples)('changes nothing in the sample %s', (_, text) => {
    expect(format(grammar.parse(text))).toEqual([]);
  });

  test.each(samples)('finds the sample %s again when its blanks were spoilt', (_, text) => {
    const spoilt = text
      .replace(/^ +/gm, (blanks) => '\t'.repeat(blanks.length / 2))
      .replace(/([a-z]) (?=[a-z])/g, '$1  ');
    const quotesAsWritten = (line: string) => line.replace(/"[^"]*"|#.*/g, '…').replace(/ +…/g, ' …');
    expect(quotesAsWritten(laidOut(spoilt))).toBe(quotesAsWritten(text));
  });

  test('edits only what differs', () => {
    expect(format(grammar.parse('a\n b\nc\n'))).toEqual([{ from: 1, to: 3, text: '\n' }]);
  });

  const line = fc.tuple(
    fc.constantFrom('', ' ', '  ', '   ', '    ', '\t', '\u00a0 '),
    fc.constantFrom(
      ...[
        '',
        '',
        'a',
        'a  b ,c',
        'l :w',
        'p {',
        'p{',
        '{',
        '}',
        '} ',
        '} x',
        '}# n',
        '# n',
        'w # n',
        'p { q }',
        'p { q',
      ],
      ...[
        '"u',
        '°',
        '5',
        '12:10',
        '2027-05-18x',
        '7 lb4 oz',
        '08:05:30',
        'a->b',
        'p{}',
        'q }',
        '3x',
        '5in-',
        '{}{',
        '->',
      ],
    ),
    fc.constantFrom('\n', '\n', '\n', '\r\n', '\r', ''),
  );

  test('keeps all tokens, comes to rest at once, and changes no reading, for random lines', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 14 }), (lines) => {
        const text = lines.flat().join('');
        const once = laidOut(text);
        expect(kept(once)).toEqual(kept(text));
        expect(laidOut(once)).toBe(once);
        expect(outline(once)).toEqual(outline(text));
      }),
      { numRuns: 3000 },
    );
  }, 120_000);
});

/** The statements with their depths and faults: what the text means, whatever its blanks. */
function outline(text: string): string[] {
  const lines: string[] = [];
  const tree = grammar.parse(text);
  expect(print(tree)).toBe(text);
  walk(tree, (item, _, depth) => {
    if (item.kind !== 'blank') {
      const words = item.head.filter(({ kind }) => kind !== 'space' && kind !== 'newline' && kind !== 'comment');
      lines.push([depth, ...words.map((token) => token.text), ...item.faults.map(({ name }) => name)].join(' '));
    }
    return true;
  });
  return lines;
}
