import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ownPressure } from '../../../server/engine/plan/own-system';
import { Workspace } from '../../../server/engine/workspace';

const folder = new URL('../../fixtures/good/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const metric = read('cold-room-metric.jobplan');

/** The same plan with its gauges in bar: 100 kPa are a bar. */
const inBar = metric
  .replace(/([\d.]+) MPa gauge/g, (_, figure) => `${Number((Number(figure) * 10).toPrecision(6))} bar gauge`)
  .replace(/([\d.]+) kPa gauge/g, (_, figure) => `${Number((Number(figure) / 100).toPrecision(6))} bar gauge`);

function said(text: string): { readonly unit: string; readonly said: readonly string[] } {
  const workspace = new Workspace();
  workspace.setFile('materials.jobplan', read('materials.jobplan'));
  workspace.setFile('a.jobplan', text);
  const snapshot = workspace.snapshot();
  return {
    unit: ownPressure(snapshot.plans('a.jobplan')[0]!.plan.head),
    said: snapshot
      .findings('a.jobplan')
      .filter(({ severity }) => severity !== 'information')
      .flatMap(({ message, fixes }) => [message, ...fixes.flatMap((fix) => fix.edits.map((edit) => edit.text))]),
  };
}

// Whoever reads a figure in kPa on a gauge that is marked in bar errs by a factor; the finding speaks as the plan does.
describe('a plan that is written in bar', () => {
  it('is sound, and bar is its unit', () => {
    expect(said(inBar)).toEqual({ unit: 'bar', said: [] });
  });

  it.each([
    ['a last pull that is not deep', /to 40 Pa absolute/, 'to 200 Pa absolute', /2 mbar .* usual 0\.667 mbar/],
    ['a test below design', /(pressure-test system to )[\d.]+ bar gauge/g, '$12 bar gauge', /\bbar gauge\b/],
    ['a slip in the plate', /high [\d.]+ bar gauge/, 'high 2 bar gauge', /for 2 bar gauge.*\bbar gauge\b/],
    ['no level for the vacuum', / to 40 Pa absolute/, ' to 40 bar gauge', /40 bar gauge is no vacuum.*0\.65 mbar/],
  ] as const)('%s', (_what, from, by, message) => {
    const text = inBar.replace(from, by);
    expect(text).not.toBe(inBar);
    const found = said(text).said.join('\n');
    expect(found).toMatch(message);
    // What stands in brackets is a source, which keeps its own units.
    expect(found.replace(/\([^()]*\)/g, '')).not.toMatch(/kPa|psi|inHg|micron/);
  });

  it('goes by its gauges where its lengths are in inches', () => {
    const lengths = inBar.replace(/([\d.]+) m\n/g, (_, figure) => `${Math.round(Number(figure) * 3.28)} ft\n`);
    expect(lengths).not.toBe(inBar);
    expect(said(lengths).unit).toBe('bar');
  });
});

it('a plan in MPa and one in kPa keep theirs', () => {
  expect(said(metric).unit).toMatch(/^[kM]Pa$/);
  const low = metric.replace(/high [\d.]+ [kM]Pa gauge/, 'high 0.2 MPa gauge');
  expect(said(low).said.join('\n')).toMatch(/[kM]Pa gauge/);
});
