import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import gases from '../../../server/engine/properties/data/gases.json';
import { gasConstant, leftOut, refrigerantLines } from '../../../server/engine/properties/data/refrigerants';
import { refrigerantNamed, refrigerantNames, whyLeftOut } from '../../../server/engine/properties/index';

const series = z.array(z.number()).min(2);
const surface = z.array(z.array(z.number())).min(2);
const domain = z.tuple([z.number(), z.number()]).refine(([low, high]) => low < high);
const positive = z.number().positive();

const sat = z.strictObject({
  T: domain,
  lnpB: series,
  lnpD: series.optional(),
  rhoL: series,
  lnrhoV: series,
  hL: series,
  hV: series,
  lnmuL: series,
  lnmuV: series,
});

const fluid = z
  .strictObject({
    kind: z.enum(['pure', 'blend']),
    model: z.enum(['equation of state', 'mixture', 'mixture, estimated pairs']),
    composition: z.array(z.strictObject({ r: z.string(), w: positive, x: positive })).min(1),
    estimatedPairs: z.array(z.string()),
    M: positive,
    critical: z.strictObject({ T: positive, p: positive, rho: positive, approximate: z.boolean().optional() }),
    boiling: z.strictObject({ bubble: positive, dew: positive, glide: z.number() }).nullable(),
    viscosity: z.enum(['reference', 'pseudo-pure', 'estimated', 'coarse']),
    sat,
    vap: z.strictObject({ Ts: domain, dT: domain, Z: surface, h: surface }),
    error: z.record(z.string(), z.unknown()),
  })
  .refine((one) => (one.kind === 'pure') === (one.sat.lnpD === undefined), 'only blends have a dew line of their own')
  .refine((one) => one.estimatedPairs.length > 0 === (one.model === 'mixture, estimated pairs'));

const refrigerantLine = z.record(z.string().regex(/^R-/), fluid);
const lines = refrigerantLines.trim().split('\n');

const gas = z.object({ M: positive, T: domain, p: domain, Z: surface, h: surface, s1: surface, mu: surface });
const closed = z.array(z.number());
const gasFile = z.object({
  R: z.number(),
  fluids: z.object({
    Nitrogen: gas,
    Air: gas,
    Water: z.object({
      psatLiquid: z.object({ Tc: positive, pc: positive, a: closed.length(6), e: closed.length(6) }),
      psatIce: z.object({ Tt: positive, pt: positive, a: closed.length(3), e: closed.length(3) }),
    }),
  }),
});

describe('the data files', () => {
  it('have the form that the code trusts', () => {
    for (const line of lines)
      expect(refrigerantLine.safeParse(JSON.parse(`{${line}}`)).error?.issues ?? []).toEqual([]);
    expect(lines).toHaveLength(178);
    for (const name of Object.keys(leftOut)) expect(refrigerantNames).not.toContain(name);
    expect(gasFile.safeParse(gases).error?.issues ?? []).toEqual([]);
    expect(gases.R).toBe(gasConstant);
  });

  it('hold 51 pure refrigerants and 127 blends', () => {
    const kinds = refrigerantNames.map((name) => refrigerantNamed(name)!.kind);
    expect(kinds.filter((kind) => kind === 'pure')).toHaveLength(51);
    expect(kinds.filter((kind) => kind === 'blend')).toHaveLength(127);
  });

  it('have compositions that sum to one, by mass and by amount, of known components', () => {
    for (const name of refrigerantNames) {
      const { composition } = refrigerantNamed(name)!;
      const total = (of: 'mass' | 'mole') => composition.reduce((sum, part) => sum + part[of], 0);
      expect(total('mass'), name).toBeCloseTo(1, 5);
      expect(total('mole'), name).toBeCloseTo(1, 5);
      for (const part of composition) expect(refrigerantNamed(part.name)?.kind, `${part.name} in ${name}`).toBe('pure');
    }
  });
});

describe('a refrigerant by name', () => {
  it('is the same object each time', () => {
    expect(refrigerantNamed('R-454B')).toBe(refrigerantNamed('R-454B'));
  });

  it.each(['R-9999', 'r-22', '', 'constructor', '__proto__', 'toString'])('%s is none', (name) => {
    expect(refrigerantNamed(name)).toBeUndefined();
    expect(whyLeftOut(name)).toBeUndefined();
  });

  it('says why a known one has no table', () => {
    expect(refrigerantNamed('R-403B')).toBeUndefined();
    expect(whyLeftOut('R-403B')).toContain('propane');
  });
});
