import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { disagreements } from '../../../server/command/docs/disagreements';
import { figuresReference } from '../../../server/command/docs/figures';
import { engineValue, type PropertyCheck, propertyErrors } from '../../../server/command/docs/property-errors';
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

test('the worst error is the worst of all values, and within what is allowed', () => {
  const errors = propertyErrors(values);
  expect(errors.reduce((sum, each) => sum + each.values, 0)).toBe(values.length);
  for (const each of errors) expect([each.property, each.worst <= each.allowed]).toEqual([each.property, true]);
  const pressures = values.filter((each) => each.quantity === 'pBubble');
  const worst = Math.max(...pressures.map((each) => Math.abs(engineValue(each)! / each.value - 1)));
  expect(errors.find((each) => each.property === 'bubble pressure')!.worst).toBeCloseTo(worst, 12);
});
