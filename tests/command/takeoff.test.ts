import { describe, expect, test } from 'vitest';
import type { FigureReport } from '../../server/command/shapes/figure';
import type { TakeoffReport } from '../../server/command/shapes/takeoff';
import { json, Shop } from './shop';

const shop = Shop.withSamples();
const split = 'changeout-split.jobplan';
const report = async (...words: readonly string[]): Promise<TakeoffReport> =>
  json(await shop.type('takeoff', split, '--format', 'json', ...words)) as TakeoffReport;

const named = (figures: readonly FigureReport[], name: string): FigureReport =>
  figures.find((figure) => figure.name === name)!;

describe('as JSON', () => {
  test('names the plan and its revision', async () => {
    expect(await report()).toMatchObject({ version: 1, plan: 'tansy-row-14', revision: 2 });
  });

  test('steps are in the order of the work, each with the line that it is written on', async () => {
    const { steps } = await report();
    const standard = shop.read('standard-line-set-reuse.jobplan').split('\n');
    const final = steps.filter(({ step }) => step === 'final-purge');
    expect(final.map(({ subject }) => subject)).toEqual(expect.arrayContaining(['liquid-line', 'suction-line']));
    for (const { line } of final) expect(standard[line]).toContain('final-purge:');
  });

  test('a repeat gives a range, and a figure carries its inputs, formula and sources', async () => {
    const solvent = named((await report()).totals, 'spent-solvent-volume');
    expect(solvent.low).toBeLessThan(solvent.high!);
    expect(solvent.unit).toBe('m3');
    expect(solvent.formula).not.toBe('');
    expect(solvent.sources.length).toBeGreaterThan(0);
  });

  test('the figures are the same in every system of units, what people read is not', async () => {
    const [inches, metric] = [await report(), await report('--units', 'si')];
    const bare = (each: TakeoffReport) => each.totals.map(({ shown: _, ...rest }) => rest);
    expect(bare(metric)).toEqual(bare(inches));
    expect(named(inches.totals, 'spent-solvent-volume').shown).toContain('fl-oz');
    expect(named(metric.totals, 'spent-solvent-volume').shown).toMatch(/ m?L$/);
  });
});

test('the text has the steps with figures, and the totals', async () => {
  const { out, status } = await shop.type('takeoff', split);
  expect(out.split('\n')[0]).toContain('revision 2');
  expect(out).toMatch(/^\d+ {2}final-purge: purge each kept line .*\n {4}/m);
  expect(out).toMatch(/^In all\n {4}Solvent [^\n]*shop-flush +\d/m);
  expect(status).toBe(0);
});

test('the stock is told container by container, with where it falls short and what goes home', async () => {
  const scarce = Shop.withSamples();
  scarce.write(split, scarce.read(split).replace('solvent 2 x', 'solvent 1 x'));
  const ended = json(await scarce.type('takeoff', split, '--format', 'json')) as TakeoffReport;
  // By the plan's own line: one container of 12 lb, 5.443 kg, which the most rounds use up.
  expect(ended.containers.find(({ of }) => of === 'solvent')).toMatchObject({
    container: 'shop-flush',
    unit: 'kg',
    start: expect.closeTo(5.443, 3),
    end: expect.closeTo(0, 9),
  });
  expect(ended.shortfalls).toMatchObject([{ of: 'solvent', what: 'shop-flush', unit: 'kg' }]);
  expect(ended.waste.map(({ container }) => container)).toEqual([
    'vented metal can for spent solvent',
    'the old compressor, capped',
    'rc-30',
  ]);
  expect(new Set(ended.defaults).size).toBe(ended.defaults.length);
  const { out } = await scarce.type('takeoff', split);
  for (const part of ['Container by container', 'Falls short', 'To take away', 'Taken where the plan is silent'])
    expect(out).toContain(`\n${part}`);
});

test('what lacks is said with the line that would give it', async () => {
  const lacking = Shop.withSamples();
  lacking.write(split, lacking.read(split).replace(/^ *length .*\n/gm, ''));
  const ended = await lacking.type('takeoff', split, '--format', 'json');
  expect(
    (json(ended) as TakeoffReport).steps.flatMap(({ figures }) => figures.flatMap(({ missing }) => missing)).join(),
  ).toContain('`length`');
});

test('a plan with an error is taken off, with a word about it and status 1', async () => {
  const spoilt = Shop.withSamples();
  spoilt.write(split, spoilt.read(split).replace('  site {', '  sight {'));
  const ended = await spoilt.type('takeoff', split);
  expect(ended.status).toBe(1);
  expect(ended.out).toContain('In all');
  expect(ended.said).toContain('jobplan check changeout-split.jobplan');
});
