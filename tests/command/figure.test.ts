import { describe, expect, test } from 'vitest';
import type { FigureReport, RelationsReport } from '../../server/command/shapes/figure';
import { relations } from '../../server/engine/takeoff/figures';
import { json, Shop } from './shop';

const shop = new Shop();
const figure = (...words: readonly string[]) => shop.type('figure', ...words);
const line = ['line-volume', 'bore=0.785 in', 'length=50 ft'] as const;

describe('the list', () => {
  test('names every relation with its inputs', async () => {
    const { out, status } = await figure();
    for (const { name, title } of relations)
      expect(out).toMatch(new RegExp(`^${name} .*${title.replace(/[()[\]/?.*+]/g, '\\$&')}`, 'm'));
    expect(status).toBe(0);
  });
  test('as JSON', async () => {
    const report = json(await figure('--format', 'json')) as RelationsReport;
    expect(report.relations.map(({ name }) => name)).toEqual(relations.map(({ name }) => name));
    expect(report.relations.find(({ name }) => name === 'line-volume')!.inputs).toEqual([
      { name: 'bore', title: 'bore', kind: 'length', needed: true, several: false },
      { name: 'length', title: 'length', kind: 'length', needed: true, several: false },
    ]);
  });
});

describe('one relation', () => {
  test('with its workings and its source', async () => {
    const { out, status } = await figure(...line);
    // 4.759 L. Source: handbook section 12, WE-30.
    expect(out).toContain('= 4.759 L');
    expect(out).toContain('Source: ');
    expect(status).toBe(0);
  });
  test('as JSON in SI, full precision', async () => {
    const report = json(await figure(...line, '--format', 'json')) as FigureReport;
    expect(report).toMatchObject({ name: 'line-volume', unit: 'm3', shown: '1.26 gal', missing: [] });
    expect(report.value).toBeCloseTo((Math.PI / 4) * (0.785 * 0.0254) ** 2 * 50 * 0.3048, 12);
    expect(report.inputs['bore']).toEqual({ value: expect.closeTo(0.785 * 0.0254, 12), unit: 'm', from: 'plan' });
  });
  test('a range in gives a range out', async () => {
    const report = json(
      await figure('line-volume', 'bore=0.785 in', 'length=50..60 ft', '--format', 'json'),
    ) as FigureReport;
    expect(report.value).toBeUndefined();
    expect(report.high! / report.low!).toBeCloseTo(60 / 50, 9);
  });
  test('a default is said to be taken', async () => {
    const report = json(await figure('flush-time', '--format', 'json')) as FigureReport;
    expect(report.missing.length).toBeGreaterThan(0);
    const fill = json(
      await figure('safe-fill', 'refrigerant=R-454C', 'waterCapacity=26.2 lb', '--format', 'json'),
    ) as FigureReport;
    expect(fill.notes).toEqual([
      expect.stringContaining('The fill at 77 °F is not stated; 80 % is taken'),
      expect.stringContaining('R-454C: pressures by the tables are good to about 2.5 %'),
    ]);
  });
  test('in SI', async () => {
    expect((await figure(...line, '--units', 'si')).out).toContain('4.76 L');
  });
  test('gauge readings count from the air of the site', async () => {
    const at = async (...words: readonly string[]) =>
      (
        json(
          await figure('dew-temperature', 'refrigerant=R-410A', 'pressure=118 psig', '--format', 'json', ...words),
        ) as FigureReport
      ).value!;
    expect(await at('--altitude', '5000 ft')).toBeLessThan(await at());
  });
});

test.each([
  [['line-volum'], 'There is no relation "line-volum"; perhaps "line-volume" is meant.'],
  [['line-volume', 'bore'], '"bore" is no key=value'],
  [['line-volume', 'bor=1 in'], 'takes no "bor"; perhaps "bore" is meant'],
  [['line-volume', '__proto__=1 in'], 'takes no "__proto__"'],
  [['line-volume', 'bore=1'], '`1` has no unit'],
  [['line-volume', 'bore=1 psig'], '`1 psig` is a pressure level; a length belongs here'],
  [['line-volume', 'bore=1 in', 'bore=2 in'], '"bore" is given twice'],
  [[...line, '--altitude', '10 psig'], '--altitude: '],
])('wrong usage: %j', async (words, message) => {
  const ended = await figure(...words);
  expect(ended).toMatchObject({ status: 2, out: '' });
  expect(ended.said).toContain(message);
});

test('what is missing is named, and the figure says so', async () => {
  const ended = await figure('line-volume', 'bore=1 in', '--format', 'json');
  expect(ended).toMatchObject({ status: 2, said: 'jobplan: line-volume needs length=… (length; length).\n' });
  expect(json(ended)).toMatchObject({ missing: ['`length` of the line'] });
});

test('a relation that does not hold there says why', async () => {
  const ended = await figure('line-volume', 'bore=10 m', 'length=1 m');
  expect(ended.status).toBe(2);
  expect(ended.said).toContain('bore');
});
