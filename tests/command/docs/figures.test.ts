import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { disagreements } from '../../../server/command/docs/disagreements';
import { figuresReference, isOutside } from '../../../server/command/docs/figures';
import { citedIn, handbookSources } from '../../../server/command/docs/handbook-sources';
import { engineValue, type PropertyCheck, propertyErrors } from '../../../server/command/docs/property-errors';
import { lawDates } from '../../../server/engine/reference/law-dates';
import { refrigerantFacts } from '../../../server/engine/reference/refrigerant-facts';
import { relations } from '../../../server/engine/takeoff/figures';
import checks from '../../fixtures/properties/checks.json';

const page = new URL('../../../docs/figures.md', import.meta.url);
const values = checks.values as unknown as readonly PropertyCheck[];

test('docs/figures.md is what the relations give: "npm run docs" writes it', () => {
  const written = existsSync(page) ? readFileSync(page, 'utf8') : '';
  expect(written).toBe(figuresReference(relations, propertyErrors(values), disagreements));
});

test('every relation has its entry with formula, sources and all outside checks', () => {
  const text = figuresReference(relations, [], []);
  for (const { name, title, formula, sources, examples } of relations) {
    expect(text).toContain(`### ${title}\n`);
    expect(text).toContain(`\`${name}\`: `);
    expect(text).toContain(formula);
    for (const source of sources) expect(text).toContain(source);
    for (const { source } of examples) expect(text).toContain(`(${source})`);
  }
});

test('every document behind the handbook is cited in full, and every number stands in the list', () => {
  const text = figuresReference(relations, [], []);
  const numbers = handbookSources.map(({ number }) => number);
  expect(new Set(numbers).size).toBe(numbers.length);
  for (const { document } of handbookSources) expect(text).toContain(`| ${document} |`);
  for (const { examples } of relations)
    for (const { source } of examples) for (const number of citedIn(source)) expect(numbers).toContain(number);
  // Worked example 6 is table 3c of the copper tube handbook, 5 the guideline and the regulation together (handbook section 12).
  expect(citedIn('handbook WE-06: type M')).toEqual([7]);
  expect(citedIn('handbook section 12, WE-05')).toEqual([21, 23]);
  expect(citedIn('handbook 8.3')).toEqual([74, 76]);
  expect(citedIn('by hand')).toEqual([]);
});

test('each refrigerant says how sure class, limit and warming are, and each rule that it was not verified', () => {
  const text = figuresReference(relations, [], []);
  for (const { name } of refrigerantFacts)
    expect(text).toMatch(new RegExp(`^\\| ${name.replace(/[()]/g, '\\$&')} \\|`, 'm'));
  // The class of R-32 is from memory (the code edition seen prints A2), its limit of 4.8 lb/Mcf from table 1103.1 (handbook 3.3).
  expect(text).toMatch(/\| R-32 \| A2L \(from memory\) \| 4\.8 \(published\) \| 675 \/ 677 \(from memory\) \|/);
  for (const { name, verified } of lawDates)
    expect(text).toMatch(new RegExp(`\\| \`${name}\` \\|.*${verified ? 'verified' : 'not verified'} \\|`));
  for (const { citation } of lawDates) expect(text).toContain(citation);
});

test('a relation that is more than a sum has a check against something outside the project', () => {
  const byHand = relations.filter((one) => !one.examples.some(({ source }) => isOutside(source)));
  // Sums over steps, counts of containers rounded up, settings between two stated pressures, and time.
  expect(byHand.map(({ name }) => name)).toEqual([
    'recovery-in-all',
    'solvent-in-job',
    'flush-shots',
    'solvent-containers',
    'spent-solvent-mass',
    'cylinders-to-bring',
    'lowest-rating',
    'regulator-window',
    'relief-setting',
    'refrigerant-in-all',
    'line-allowance-in-all',
    'total-charge',
    'old-oil-share',
    'oil-in-all',
    'used-oil',
    'working-time',
    'waiting-time',
    'critical-path',
    'going-back',
    'crew-time',
  ]);
});

test('the worst error is the worst of all values, and within what is allowed', () => {
  const errors = propertyErrors(values);
  expect(errors.reduce((sum, each) => sum + each.values, 0)).toBe(values.length);
  for (const each of errors) expect([each.property, each.worst <= each.allowed]).toEqual([each.property, true]);
  const pressures = values.filter((each) => each.quantity === 'pBubble');
  const worst = Math.max(...pressures.map((each) => Math.abs(engineValue(each)! / each.value - 1)));
  expect(errors.find((each) => each.property === 'bubble pressure')!.worst).toBeCloseTo(worst, 12);
});
