// How long one look-up of a property takes, warm, and how long the tables take to load: `node bench/properties.mjs`.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const folder = await mkdtemp(join(tmpdir(), 'properties-'));
const outfile = join(folder, 'properties.mjs');
const source = new URL('../server/engine/properties/index.ts', import.meta.url).pathname;
await build({ entryPoints: [source], bundle: true, format: 'esm', outfile, logLevel: 'error' });
const before = performance.now();
const properties = await import(pathToFileURL(outfile).href);
console.log(`loading the tables: ${(performance.now() - before).toFixed(1)} ms`);
await rm(folder, { recursive: true });

const refrigerant = properties.refrigerantNamed('R-448A');
const runs = 300_000;
const lookUps = {
  'pressure from temperature': (share) => properties.bubblePressure(refrigerant, 240 + 90 * share),
  'temperature from pressure': (share) => properties.dewTemperature(refrigerant, 1e5 + 2e6 * share),
  'superheated vapour': (share) => properties.superheatedVapour(refrigerant, 8e5, 295 + 30 * share).density,
  'nitrogen density': (share) => properties.nitrogen.density(1e5 + 2e7 * share, 294),
};
for (const [name, lookUp] of Object.entries(lookUps)) {
  let sum = 0;
  for (let run = 0; run < runs; run++) sum += lookUp(run / runs);
  const start = performance.now();
  for (let run = 0; run < runs; run++) sum += lookUp(run / runs);
  const nanoseconds = ((performance.now() - start) / runs) * 1e6;
  console.log(`${name}: ${nanoseconds.toFixed(0)} ns${Number.isFinite(sum) ? '' : ' (outside the table)'}`);
}
