import { describe, expect, test } from 'vitest';
import { createGrammar, type Item, print, type Statement, type Tree, textOf } from '../../grammar/index';
import { faultsOf, grammar, samples } from './samples';

/** `label: word term term { inner; inner }`, one line a statement; blanks are left out. */
function outline(items: readonly Item[]): string {
  return items
    .filter(({ kind }) => kind !== 'blank')
    .map((item) => {
      if (item.kind !== 'statement') return `stray ${textOf(item).trim()}`;
      const label = item.label === null ? '' : `${item.label.text}: `;
      const words = [item.word?.text ?? '?', ...item.terms.map(({ text }) => text)].join(' ');
      return label + words + (item.block === null ? '' : ` { ${outline(item.block.items)} }`);
    })
    .join('; ');
}

const kinds = (line: string) =>
  (grammar.parse(line).items[0] as Statement).terms.map(({ kind, text }) => `${kind} ${text}`);

describe('tokens', () => {
  test.each<[line: string, terms: string[]]>([
    [
      'w suction-line R-454B n2-250 A2L type-II',
      ['word suction-line', 'word R-454B', 'word n2-250', 'word A2L', 'word type-II'],
    ],
    ['w Öl-wächter Δ', ['word Öl-wächter', 'word Δ']],
    ['w R-22->R-448A -> POE', ['word R-22', 'arrow ->', 'word R-448A', 'arrow ->', 'word POE']],
    [
      'w 4 0.5 1/2 1-1/8 -15 30..90 0.5..1.5',
      ['number 4', 'number 0.5', 'number 1/2', 'number 1-1/8', 'number -15', 'number 30..90', 'number 0.5..1.5'],
    ],
    ['w 7 lb 4 oz', ['quantity 7 lb 4 oz']],
    ['w 62 ft 6 in of line', ['quantity 62 ft 6 in', 'word of', 'word line']],
    ['w 7 lb, 4 oz', ['quantity 7 lb', 'comma ,', 'quantity 4 oz']],
    ['w 1-1/8 in ACR', ['quantity 1-1/8 in', 'word ACR']],
    ['w 30..90 s', ['quantity 30..90 s']],
    ['w 8 Δ°F, 81 °F, 75%', ['quantity 8 Δ°F', 'comma ,', 'quantity 81 °F', 'comma ,', 'quantity 75%']],
    ['w -15 degF dew', ['quantity -15 degF', 'word dew']],
    ['w 690 kPa gauge 690 kPa', ['quantity 690 kPa gauge 690 kPa']],
    ['w 690 kPa gauged', ['quantity 690 kPa', 'word gauged']],
    ['w 16 fl-oz/min 0.05 mgKOH/g', ['quantity 16 fl-oz/min 0.05 mgKOH/g']],
    ['w 12 N·m', ['quantity 12 N·m']],
    ['w 2 x shop-flush', ['number 2', 'word x', 'word shop-flush']],
    [
      'w 3 times 5 install 5 in-line',
      ['number 3', 'word times', 'number 5', 'word install', 'number 5', 'word in-line'],
    ],
    ['w 30s->40s', ['quantity 30s', 'arrow ->', 'quantity 40s']],
    ['w 7\u00a0lb', ['quantity 7\u00a0lb']],
    ['w 2027-05-18 2029-06 08:05', ['date 2027-05-18', 'date 2029-06', 'time 08:05']],
    ['w 100 psig 08:05', ['quantity 100 psig', 'time 08:05']],
    ['w "maker\'s sheet, page {14}" # "no', ['string "maker\'s sheet, page {14}"']],
    ['w a, b:c', ['word a', 'comma ,', 'word b', 'colon :', 'word c']],
    ['w ;;; a', ['error ;;;', 'word a']],
  ])('%s', (line, terms) => {
    expect(kinds(line)).toEqual(terms);
  });

  test('without units every number is a bare one', () => {
    const { terms } = createGrammar([]).parse('w 7 lb').items[0] as Statement;
    expect(terms.map(({ kind }) => kind)).toEqual(['number', 'word']);
  });

  test('a unit is taken literally, whatever characters it has', () => {
    const { terms } = createGrammar(['a.b', '(x)', 'm^3']).parse('w 1 a.b, 2 axb, 3 (x), 4 m^3').items[0] as Statement;
    expect(terms.map(({ kind }) => kind).filter((kind) => kind !== 'comma')).toEqual([
      ...['quantity', 'number', 'word', 'quantity', 'quantity'],
    ]);
  });
});

describe('statements', () => {
  test.each<[text: string, read: string]>([
    [
      'rounds: repeat until clear, at least 2 {\n  flush line\n}\n',
      'rounds: repeat until clear , at least 2 { flush line }',
    ],
    [
      'survey { done 08:05 by lead }\ncloth { signed lead 12:10 }',
      'survey { done 08:05 by lead }; cloth { signed lead 12:10 }',
    ],
    ['a { b { c } d\n}', 'a { b { c }; d }'],
    ['a {} # note\nb', 'a {  }; b'],
    ['a { # note\n  b\n  # last\n}', 'a { b }'],
    ['a\r\nb\rc\nd', 'a; b; c; d'],
    ['a: b: c', 'a: b : c'],
    ['a :b', 'a: b'],
    ['a:', 'a: ?'],
    [': a', '? : a'],
    ['  ', ''],
    ['', ''],
  ])('%j', (text, read) => {
    expect(outline(grammar.parse(text).items)).toBe(read);
  });
});

describe('faults', () => {
  test.each<[text: string, faults: string[]]>([
    ['a "b c\nd', ['unclosed-quote@2']],
    ['a "', ['unclosed-quote@2']],
    ['a ° b', ['unreadable-text@2']],
    ['a \u0000', ['unreadable-text@2']],
    ['5 lb\n', ['missing-word@0']],
    ['a:\n', ['missing-word@1']],
    ['{ a }\n', ['missing-word@0']],
    ['a {\n  b\n', ['unclosed-brace@2']],
    ['a\n  }\nb', ['stray-brace@4']],
    ['a }} }\nb', ['stray-brace@2']],
    ['a { b } c\n', ['text-after-block@8']],
    ['a {} # c\n', []],
    ['a {}}\n', ['stray-brace@4']],
  ])('%j', (text, faults) => {
    expect(faultsOf(grammar.parse(text))).toEqual(faults);
  });
});

describe('braces', () => {
  test.each<[what: string, text: string, read: string, faults: string[]]>([
    [
      'a block left open in the middle keeps what follows in its own blocks',
      'plan {\n  steps {\n    phase {\n      a\n    phase {\n      b\n    }\n  }\n  c\n}\nd\n',
      'plan { steps { phase { a }; phase { b } }; c }; d',
      ['unclosed-brace@27'],
    ],
    [
      'a block that was only just opened holds nothing yet',
      'plan {\n  steps {\n    new {\n    phase {\n      b\n    }\n  }\n}\n',
      'plan { steps { new {  }; phase { b } } }',
      ['unclosed-brace@25'],
    ],
    [
      'a declaration that was only just opened leaves the next one alone',
      'new {\nplan {\n  a\n}\n',
      'new {  }; plan { a }',
      ['unclosed-brace@4'],
    ],
    [
      'two blocks left open',
      'a {\n  b {\n    c\n  d {\n    e\n}\nf',
      'a { b { c }; d { e } }; f',
      ['unclosed-brace@8', 'unclosed-brace@20'],
    ],
    ['a file that ends early', 'a {\n  b {\n    c', 'a { b { c } }', ['unclosed-brace@2', 'unclosed-brace@8']],
    [
      'a brace too many',
      'a {\n  b {\n    c\n    }\n    d\n  }\n}\ne',
      'a { b { c; stray }; d } }; e',
      ['stray-brace@20'],
    ],
    ['no indentation', 'a {\nb {\nc\n}\nd {\n}\n}\ne', 'a { b { c }; d {  } }; e', []],
    ['no indentation and a block left open', 'a {\nb {\nc\n}\nd\n', 'a { b { c }; d }', ['unclosed-brace@2']],
    [
      'careless indentation, all braces there',
      'a {\n    b {\n  c\n  }\n d {\n   }\n}\ne',
      'a { b { c }; d {  } }; e',
      [],
    ],
    ['a part pasted further out', 'a {\n  b {\n    c\nd {\n  e\n}\n    f\n  }\n}\n', 'a { b { c; d { e }; f } }', []],
    ['braces behind text', 'a {\n  b {\n    c }\n  d }\ne', 'a { b { c }; d }; e', []],
    ['tabs', 'a {\n\tb {\n\t\tc\n\td\n}\n', 'a { b { c }; d }', ['unclosed-brace@7']],
  ])('%s', (_, text, read, faults) => {
    const tree = grammar.parse(text);
    expect(outline(tree.items)).toBe(read);
    expect(faultsOf(tree)).toEqual(faults);
    expect(print(tree)).toBe(text);
  });

  test('a block left open in a sample costs no other statement its place', () => {
    const text = samples.find(([name]) => name === 'rack-conversion.jobplan')![1];
    const opened = text.replace(
      '        core acid\n        valves open\n      }\n',
      '        core acid\n        valves open\n',
    );
    const broken = text.replace('      core acid\n      valves open\n    }\n', '      core acid\n      valves open\n');
    expect(opened).toBe(text);
    expect(broken).not.toBe(text);
    expect(outline(grammar.parse(broken).items)).toBe(outline(grammar.parse(text).items));
    expect(faultsOf(grammar.parse(broken))).toEqual([
      `unclosed-brace@${broken.indexOf('liquid-drier: filter-drier new {') + 31}`,
    ]);
  });
});

describe('a text is given back to the last character', () => {
  const variants: [string, (text: string) => string][] = [
    ['as it is', (text) => text],
    ['with CRLF', (text) => text.replaceAll('\n', '\r\n')],
    ['with CR', (text) => text.replaceAll('\n', '\r')],
    ['with a byte-order mark', (text) => `\ufeff${text}`],
    ['without its last newline', (text) => text.trimEnd()],
  ];
  const all = samples.flatMap(([name, text]) => variants.map(([how, vary]) => [name, how, vary(text)] as const));

  test.each(all)('%s, %s', (_name, _how, text) => {
    const tree = grammar.parse(text);
    expect(print(tree) === text).toBe(true);
    expect(tree.length).toBe(text.length);
    expect(faultsOf(tree)).toEqual([]);
  });

  test.each(samples)('%s cut behind each of its tokens', (_, text) => {
    const ends = new Set<number>();
    const note = (items: readonly Item[], start: number) => {
      let at = start;
      for (const item of items) {
        for (const token of item.head) ends.add(at + token.at + token.text.length);
        if (item.kind === 'statement' && item.block !== null) {
          const block = at + item.head.reduce((sum, token) => sum + token.text.length, 0);
          note(item.block.items, block);
          for (const token of item.block.close) ends.add(block + token.at + token.text.length);
          for (const token of item.tail) ends.add(at + token.at + token.text.length);
        }
        at += item.length;
      }
    };
    note(grammar.parse(text).items, 0);
    expect(ends.size).toBeGreaterThan(50);
    for (const end of ends) {
      const prefix = text.slice(0, end);
      expect(print(grammar.parse(prefix)) === prefix).toBe(true);
    }
  });

  test.each(['\ufeff', '\ufeff\ufeff', '\u0000{\u0000}', '\ud83d', '\u2028a\u0085', '\r\r\n\n', '}{', '{{{}', '"\r"'])(
    '%j',
    (text) => {
      expect(print(grammar.parse(text))).toBe(text);
    },
  );
});

describe('limits', () => {
  const deepestIn = (tree: Tree): number => {
    const depth = (items: readonly Item[]): number =>
      Math.max(0, ...items.map((item) => (item.kind === 'statement' && item.block ? 1 + depth(item.block.items) : 0)));
    return depth(tree.items);
  };

  test.each<[what: string, text: string]>([
    ['10,000 nested blocks', 'a {\n'.repeat(10_000) + '}\n'.repeat(10_000)],
    ['10,000 nested blocks on one line', 'a { '.repeat(10_000) + '}'.repeat(10_000)],
    ['10,000 blocks never closed', 'a { '.repeat(10_000)],
    [
      '2,000 indented blocks',
      Array.from({ length: 2_000 }, (_, depth) => `${' '.repeat(Math.min(depth, 250))}a {\n`).join(''),
    ],
  ])('%s end in one fault', (_, text) => {
    const tree = grammar.parse(text);
    expect(print(tree) === text).toBe(true);
    expect(deepestIn(tree)).toBe(200);
    expect(faultsOf(tree).filter((fault) => fault.startsWith('too-deep'))).toHaveLength(1);
    expect(print(grammar.edit(tree, 3, 3, 'b'))).toBe(`${text.slice(0, 3)}b${text.slice(3)}`);
  });

  test('a text of 5 MB is not read, and says so', () => {
    const text = 'a b c\n'.repeat(900_000);
    const tree = grammar.parse(text);
    expect(tree.items.map(({ kind }) => kind)).toEqual(['stray']);
    expect(faultsOf(tree)).toEqual(['too-large@0']);
    expect(print(tree) === text).toBe(true);
    expect(outline(grammar.edit(tree, 3, text.length, '').items)).toBe('a b');
  });
});
