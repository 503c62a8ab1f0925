import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { schemaFiles, shapes } from '../../server/command/shapes/published';
import { relations } from '../../server/engine/takeoff/figures';
import { json, Shop } from './shop';

const published = join(import.meta.dirname, '../../docs/schemas');

test('the published schemas are those of the shapes; `node scripts/schemas.mjs` writes them', () => {
  const made = schemaFiles();
  expect(readdirSync(published).sort()).toEqual([...made.keys()].sort());
  for (const [name, text] of made) expect(readFileSync(join(published, name), 'utf8'), name).toBe(text);
});

describe('every output has its shape', () => {
  const shop = Shop.withSamples();
  // Errors, related places and fixes too.
  shop.write('spoilt.jobplan', shop.read('changeout-split.jobplan').replaceAll('suction-line', 'suction-lien'));
  const plans = ['changeout-split.jobplan', 'ductless-three-zone.jobplan', 'rack-conversion.jobplan', 'spoilt.jobplan'];
  const rows: readonly (readonly [keyof typeof shapes, ...string[]])[] = [
    ['check', 'check'],
    ...plans.map((plan) => ['takeoff', 'takeoff', plan] as const),
    ...plans.map((plan) => ['state', 'state', plan] as const),
    ['relations', 'figure'],
    ['figure', 'figure', 'line-volume', 'bore=1 in', 'length=10..20 ft'],
    ['figure', 'figure', 'dew-temperature', 'refrigerant=R-410A', 'pressure=118 psig'],
    ['properties', 'properties', 'R-410A', '--at', '40 degF', '118 psig', '900 degF'],
    ['format', 'format', '--check'],
    ['explain', 'explain', 'purge'],
    ['explain', 'explain', 'open-under-pressure'],
  ];
  test.each(rows.map(([shape, ...words]) => ({ shape, words })))('$shape: $words', async ({ shape, words }) => {
    const ended = await shop.type(...words, '--format', 'json');
    expect(shapes[shape].safeParse(json(ended)).error).toBeUndefined();
  });
  test('of every relation, whatever is missing', async () => {
    for (const { name } of relations) {
      const ended = await shop.type('figure', name, '--format', 'json');
      expect(shapes.figure.safeParse(json(ended)).error, name).toBeUndefined();
    }
  });
});
