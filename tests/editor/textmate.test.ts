import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { textMateFile, textMateGrammar } from '../../server/editor/highlight/textmate';
import { unitWords } from '../../server/engine/quantity';
import { vocabulary } from '../../server/engine/vocabulary';

test('syntaxes/jobplan.tmLanguage.json is what the vocabulary gives: "npm run textmate" writes it', () => {
  const file = readFileSync(new URL('../../syntaxes/jobplan.tmLanguage.json', import.meta.url), 'utf8');
  expect(file).toBe(textMateFile(vocabulary, unitWords));
});

const { repository } = textMateGrammar(vocabulary, unitWords);
const matched = (rule: string, line: string): string | undefined => {
  // Editors read the patterns with an engine that knows the same Unicode classes.
  const found = new RegExp(repository[rule]?.match ?? '(?!)', 'u').exec(line);
  return found?.[3] ?? found?.[0].trim();
};

test.each([
  ['verb', '    final-purge: purge each kept line', 'purge'],
  ['verb', '  decay-test each open part', 'decay-test'],
  ['verb', '  liquid-line kept {', undefined],
  ['part', '  suction: suction-line kept {', 'suction-line'],
  ['word', 'plan tansy-row-14 "A"', 'plan'],
  ['word', '  cloth { signed lead 12:10 }', 'signed'],
  ['label', 'rounds: repeat until clear', 'rounds:'],
  ['quantity', '  charge 7 lb 4 oz', '7 lb'],
  ['quantity', '  tube 1-1/8 in ACR', '1-1/8 in'],
  ['quantity', '  for 30..90 s', '30..90 s'],
  ['quantity', '  R-454B', undefined],
  ['date', '  date 2027-05-18', '2027-05-18'],
  ['clause', '  rise at most 300 micron', 'rise at most'],
  ['comment', '  at most 5 # five', '# five'],
  ['string', '  note "an open text', '"an open text'],
])('%s in %j', (rule, line, expected) => {
  expect(matched(rule, line)).toBe(expected);
});
