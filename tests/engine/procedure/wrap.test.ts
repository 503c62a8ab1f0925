import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amount,
  computed,
  name,
  type Sentence,
  sentence,
  spans,
  strong,
} from '../../../server/engine/procedure/sentence';
import { wrap } from '../../../server/engine/procedure/wrap';

const lines = (runs: Sentence, width: number) =>
  wrap(spans(runs), width, (text) => text.length).map((line) => line.pieces.map((piece) => piece.text).join(''));

describe('wrapping', () => {
  test.each<[string, Sentence, number, string[]]>([
    ['breaks between words', sentence('one two three'), 7, ['one two', 'three']],
    ['keeps a figure with its unit', sentence('go to ', amount('450 psig'), ' now'), 10, ['go to', '450 psig', 'now']],
    ['keeps a name whole', sentence('at ', name('liquid-line a')), 14, ['at', 'liquid-line a']],
    ['keeps a comma at its figure', sentence('x ', amount('5 min'), ', then'), 7, ['x', '5 min,', 'then']],
    ['marks computed figures', sentence(computed('2 psi', '14 kPa')), 30, ['2 psi* (14 kPa)']],
    ['joins styles without a blank', sentence('a', strong('b'), 'c'), 5, ['abc']],
    ['cuts what is wider than the line', sentence('abcdefgh ij'), 3, ['abc', 'def', 'gh', 'ij']],
    ['cuts a long figure at its blank', sentence(amount('58.6..137 fl-oz')), 14, ['58.6..137', 'fl-oz']],
    [
      'cuts a long range behind its dots',
      sentence(amount('23 lb 14 oz..23 lb 15 oz')),
      14,
      ['23 lb 14 oz..', '23 lb 15 oz'],
    ],
    ['gives one empty line for nothing', sentence(), 5, ['']],
  ])('%s', (_name, runs, width, expected) => {
    expect(lines(runs, width)).toEqual(expected);
  });

  test('loses no sign and passes no width, whatever the text', () => {
    const given = fc.array(fc.oneof(fc.string({ maxLength: 30 }), fc.constant(' '), fc.constant('word, word')), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(given, fc.integer({ min: 2, max: 25 }), (texts, width) => {
        const runs = sentence(
          ...texts.map((text, n) => (n % 3 === 2 ? name(text) : n % 2 === 1 ? strong(text) : text)),
        );
        const all = lines(runs, width);
        const bare = (text: string) => text.replace(/\s+/gu, '');
        expect(bare(all.join(''))).toBe(bare(texts.join('')));
        for (const line of all) expect([...line].length).toBeLessThanOrEqual(width);
      }),
      { numRuns: 400 },
    );
  });
});
