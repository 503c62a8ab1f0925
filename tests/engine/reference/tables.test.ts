import { describe, expect, it } from 'vitest';
import { refrigerantNamed } from '../../../server/engine/properties';
import { firstChargeRange } from '../../../server/engine/reference/first-charge';
import firstCharge from '../../../server/engine/reference/first-charge.json';
import { firstChargeTable } from '../../../server/engine/reference/first-charge.schema';
import { inForce, lawDateNamed } from '../../../server/engine/reference/law-dates';
import lawDates from '../../../server/engine/reference/law-dates.json';
import { lawDatesTable } from '../../../server/engine/reference/law-dates.schema';
import { factsOf, flammability, oilFit, refrigerantFacts } from '../../../server/engine/reference/refrigerant-facts';
import refrigerants from '../../../server/engine/reference/refrigerant-facts.json';
import { refrigerantFactsTable } from '../../../server/engine/reference/refrigerant-facts.schema';
import superheat from '../../../server/engine/reference/superheat-targets.json';
import { superheatTable } from '../../../server/engine/reference/superheat-targets.schema';
import { acrTable, enTable } from '../../../server/engine/reference/tubes.schema';
import acr from '../../../server/engine/reference/tubes-acr.json';
import en from '../../../server/engine/reference/tubes-en.json';

describe('tables keep their shape', () => {
  it.each([
    ['tubes of B280', acrTable, acr],
    ['tubes of EN 12735-1', enTable, en],
    ['facts of refrigerants', refrigerantFactsTable, refrigerants],
    ['superheat targets', superheatTable, superheat],
    ['first charges', firstChargeTable, firstCharge],
    ['dates of the law', lawDatesTable, lawDates],
  ] as const)('%s', (_, schema, table) => {
    expect(schema.safeParse(table).error).toBeUndefined();
  });

  it('names no refrigerant twice, and every composition adds up', () => {
    expect(new Set(refrigerantFacts.map((one) => one.name)).size).toBe(refrigerantFacts.length);
    for (const { name, composition } of refrigerantFacts)
      if (composition !== null)
        expect([name, composition.reduce((sum, part) => sum + part.share, 0)]).toEqual([name, expect.closeTo(1, 6)]);
  });

  it('agrees with the property tables on what a blend is made of', () => {
    // Two sources: nominal compositions of ASHRAE 34 as handed down, and the predefined mixtures of CoolProp 8.0.0.
    for (const { name, composition } of refrigerantFacts) {
      const tabled = refrigerantNamed(name);
      if (composition === null || tabled === undefined) continue;
      for (const part of composition) {
        const there = tabled.composition.find((one) => one.name === part.refrigerant);
        expect([name, part.refrigerant, there?.mass]).toEqual([name, part.refrigerant, expect.closeTo(part.share, 3)]);
      }
    }
  });

  it('keeps a row of superheat targets as wide as its head', () => {
    for (const row of superheat.rows) expect(row.superheat).toHaveLength(superheat.wetBulb.length);
  });
});

describe('superheat targets beside the formula of the trade', () => {
  it('stays near (3 wet bulb - 80 - outdoors)/2, and rises with the wet bulb and falls with the heat outdoors', () => {
    // Handbook 9.2: mean difference 1.2 °F, worst 6.5 °F.
    const off: number[] = [];
    superheat.rows.forEach((row, down) => {
      row.superheat.forEach((cell, across) => {
        if (cell === null) return;
        off.push(Math.abs(cell - (3 * superheat.wetBulb[across]! - 80 - row.outdoors) / 2));
        expect(cell).toBeGreaterThan(row.superheat[across - 1] ?? Number.NEGATIVE_INFINITY);
        expect(cell).toBeLessThan(superheat.rows[down - 1]?.superheat[across] ?? Number.POSITIVE_INFINITY);
      });
    });
    expect(Math.max(...off)).toBeCloseTo(6.5, 9);
    expect(off.reduce((sum, one) => sum + one, 0) / off.length).toBeCloseTo(1.2, 1);
  });
});

describe('facts of refrigerants', () => {
  // Classes of ASHRAE 34 as everybody prints them; handbook 3.3 and 3.4.
  it.each([
    ['R-22', 'A1', true],
    ['R-410A', 'A1', false],
    ['R-32', 'A2L', false],
    ['R-454B', 'A2L', false],
    ['R-290', 'A3', false],
    ['R-717', 'B2L', false],
    ['R-409A', 'A1', true],
  ])('%s is %s', (name, safetyClass, ozoneDepleting) => {
    expect(factsOf(name)).toMatchObject({ safetyClass, ozoneDepleting });
  });

  // Exchange values of 42 U.S.C. 7675(c)(1), and of (e)(1)(D) for what holds chlorine: the fourth report's, by statute.
  const exchange = new Map([
    ['R-11', 4750],
    ['R-12', 10900],
    ['R-113', 6130],
    ['R-114', 10000],
    ['R-115', 7370],
    ['R-22', 1810],
    ['R-123', 77],
    ['R-124', 609],
    ['R-142b', 2310],
    ['R-32', 675],
    ['R-125', 3500],
    ['R-134a', 1430],
    ['R-143a', 4470],
    ['R-152a', 124],
    ['R-23', 14800],
    ['R-227ea', 3220],
    ['R-236fa', 9810],
    ['R-245fa', 1030],
    ['R-365mfc', 794],
  ]);

  it('counts warming as the statute of the US does, blends by mass', () => {
    const compared = refrigerantFacts.flatMap(({ name, composition, warming }) => {
      const parts = composition ?? [{ refrigerant: name, share: 1 }];
      // The statute says nothing of hydrocarbons and olefins: below 10; of R-116 neither, which counts by thousands.
      const silent = parts.filter(({ refrigerant }) => !exchange.has(refrigerant));
      if (silent.length === parts.length || silent.some(({ refrigerant }) => refrigerant === 'R-116')) return [];
      const sum = parts.reduce((all, part) => all + part.share * (exchange.get(part.refrigerant) ?? 0), 0);
      expect(Math.abs(warming.fourth - sum), `${name}: ${warming.fourth}, by the statute ${sum}`).toBeLessThan(
        silent.length > 0 ? 10 : 1,
      );
      return [name];
    });
    expect(compared.length).toBeGreaterThan(40);
  });

  it('knows a name in any usual spelling and no other', () => {
    expect(factsOf('r454b')?.name).toBe('R-454B');
    expect(factsOf('R 1234ze(E)')?.name).toBe('R-1234ze(E)');
    expect(factsOf('R-9999')).toBeUndefined();
  });

  it('orders the classes by how they burn', () => {
    expect((['A1', 'A2L', 'A2', 'A3'] as const).map(flammability)).toEqual([0, 1, 2, 3]);
  });

  // Handbook 4.1: mineral oil does not come back with HFC; POE does with HFC and HCFC.
  it.each([
    ['R-22', 'mineral', 'suits'],
    ['R-448A', 'mineral', 'does-not-suit'],
    ['R-448A', 'POE', 'suits'],
    ['R-422D', 'mineral', 'with-care'],
    ['R-9999', 'POE', 'not-known'],
  ] as const)('%s with %s: %s', (name, oil, fit) => {
    expect(oilFit(name, oil)).toBe(fit);
  });
});

describe('first charges and dates', () => {
  it('gives the printed range of a pair, else none', () => {
    // Trade and UN conversion guides, from memory (handbook 9.3).
    expect(firstChargeRange('R-22', 'R-448A')).toEqual({ low: 0.85, high: 0.95 });
    expect(firstChargeRange('R-448A', 'R-22')).toBeUndefined();
  });

  it('holds a rule from its day on', () => {
    // 91 FR 31284, effective 2026-07-27 (handbook 3.1): the limits that it raised hold from that day too.
    expect(inForce('technology-transition-amendment', '2026-07-26')).toBe(false);
    expect(inForce('technology-transition-amendment', '2026-07-27')).toBe(true);
    expect(inForce('cold-storage-limit', '2026-07-26')).toBe(false);
    expect(inForce('remote-condensing-limit', '2026-07-27')).toBe(true);
    expect(inForce('no-such-rule', '2099-01-01')).toBe(false);
    expect(lawDateNamed('no-such-rule')).toBeUndefined();
  });
});
