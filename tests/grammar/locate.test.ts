import { describe, expect, test } from 'vitest';
import { blockStart, type Item, itemAt, locate, print, textOf, walk } from '../../grammar/index';
import { grammar, samples } from './samples';

/** The words of the items around an offset, then the token there. */
function around(text: string, offset: number): string {
  const { path, token } = itemAt(grammar.parse(text), offset);
  const words = path.map(({ item }) => (item.kind === 'statement' ? (item.word?.text ?? '?') : item.kind));
  return [...words, token === undefined ? '-' : JSON.stringify(token.text)].join(' ');
}

describe('places', () => {
  test.each(samples)('each item of %s is where its text is', (_, text) => {
    const marked = `\ufeff${text}`;
    const tree = grammar.parse(marked);
    const items: Item[] = [];
    walk(tree, (item, at, depth) => {
      expect(marked.startsWith(textOf(item), at)).toBe(true);
      expect(depth).toBeLessThan(8);
      items.push(item);
      return true;
    });
    expect(items.length).toBeGreaterThan(10);
    const places = locate(tree, new Set(items));
    expect(places.size).toBe(items.length);
    walk(tree, (item, at) => {
      expect(places.get(item)).toBe(at);
      return true;
    });
    expect(print(tree)).toBe(marked);
  });

  test.each(samples)('each character of %s is in the token that is found there', (_, text) => {
    const tree = grammar.parse(text);
    for (let offset = 0; offset < text.length; offset++) {
      const { path, token } = itemAt(tree, offset);
      const { item, at } = path[path.length - 1]!;
      const inClose = item.kind === 'statement' && item.block?.close.includes(token!);
      const start = at + token!.at + (inClose ? blockStart(item) : 0);
      expect(offset >= start && offset < start + token!.text.length && text.startsWith(token!.text, start)).toBe(true);
    }
  });

  test('what is within an item can be left out of a walk', () => {
    const seen: string[] = [];
    walk(grammar.parse('a {\n  b\n}\nc\n'), (item) => {
      if (item.kind === 'statement') seen.push(item.word!.text);
      return false;
    });
    expect(seen).toEqual(['a', 'c']);
  });

  test('an item that is not in the tree is not found', () => {
    const [stranger] = grammar.parse('a\n').items;
    expect(locate(grammar.parse('a\n'), new Set([stranger!])).size).toBe(0);
  });

  const text = 'a {\n  b 7 lb { c } # d\n}\ne';
  test.each<[offset: number, found: string]>([
    [0, 'a "a"'],
    [2, 'a "{"'],
    [3, 'a blank "\\n"'],
    [6, 'a b "b"'],
    [9, 'a b "7 lb"'],
    [15, 'a b c "c"'],
    [16, 'a b " "'],
    [17, 'a b "}"'],
    [19, 'a b "# d"'],
    [23, 'a "}"'],
    [25, 'e "e"'],
    [26, 'e -'],
  ])('at offset %i', (offset, found) => {
    expect(around(text, offset)).toBe(found);
  });

  test.each<[text: string, found: string]>([
    ['', '-'],
    ['a\n', '-'],
    ['a {\n  b\n', 'a -'],
    ['a {\n  ', 'a blank -'],
    ['a { }', 'a -'],
  ])('at the end of %j', (whole, found) => {
    expect(around(whole, whole.length)).toBe(found);
  });
});
