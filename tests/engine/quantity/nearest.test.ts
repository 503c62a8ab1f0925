import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from '../../../server/engine/quantity/index';

describe('the nearest word', () => {
  const words = ['flush', 'purge', 'evacuate', 'suction-line', 'liquid-line', 'R-410A', 'R-407C', 'by', 'to', 'add'];
  const cases: readonly [string, string | undefined][] = [
    ['flsh', 'flush'],
    ['fulsh', 'flush'],
    ['purg', 'purge'],
    ['evacaute', 'evacuate'],
    ['suctoin-line', 'suction-line'],
    ['suction_line', 'suction-line'],
    ['R-410a', 'R-410A'],
    ['R410A', 'R-410A'],
    ['FLUSH', 'flush'],
    ['flush', 'flush'],
    ['braze', undefined],
    ['xyz', undefined],
    ['', undefined],
  ];
  it.each(cases)('of %s is %s', (word, expected) => {
    expect(nearest(word, words)).toBe(expected);
  });

  it('is found among very long words without delay', () => {
    expect(nearest('x'.repeat(100000), ['y'.repeat(100000)])).toBeUndefined();
  });

  it('counts insertions, deletions, replacements and swaps of neighbours as one slip', () => {
    // kitten/sitting is the textbook case of Levenshtein's distance.
    expect(editDistance('kitten', 'sitting')).toBe(3);
    expect(editDistance('abcd', 'abdc')).toBe(1);
    expect(editDistance('', 'abc')).toBe(3);
  });
});
