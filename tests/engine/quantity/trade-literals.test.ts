import { describe, expect, it } from 'vitest';
import { isProblem, readLiteral } from '../../../server/engine/quantity/index';

/** Literals as a lead writes them: each is read, or answered with a whole literal that can stand in its place. */

describe('what a lead writes and means', () => {
  // text | unit | figure in that unit
  const read: readonly (readonly [string, string, number])[] = [
    ['1/2 in', 'in', 0.5],
    ['1-1/8 in', 'in', 1.125],
    ['5 ft 6 in', 'ft', 5.5],
    ['5ft 6in', 'ft', 5.5],
    ['5 ft 6-1/2 in', 'ft', 5 + 6.5 / 12],
    ['2lb 3oz', 'lb', 2.1875],
    ['1/2 lb', 'lb', 0.5],
    ['29.9 inHg', 'inHg', 29.9],
    ['500 microns', 'micron', 500],
    ['0.5 torr', 'torr', 0.5],
    ['0.66 mbar', 'mbar', 0.66],
    ['10 scfh', 'scfh', 10],
    ['1 m3/h', 'm3/h', 1],
    ['80 °F', 'degF', 80],
    ['27 °C', 'degC', 27],
    ['10 deltaF', 'Δ°F', 10],
    ['500 cm3', 'cm3', 500],
    ['100 psi', 'psi', 100],
    ['7 bar', 'bar', 7],
    ['24h', 'h', 24],
    ['1 week', 'weeks', 1],
    ['15%', '%', 15],
    ['0.6 oz/ft', 'oz/ft', 0.6],
    ['20 N-m', 'N·m', 20],
    ['1500 fpm', 'ft/min', 1500],
    ['75 lb/ft3', 'lb/ft3', 75],
    ['22mm', 'mm', 22],
    ['−15 °F', 'degF', -15],
    ['2 inH2O', 'inH2O', 2],
    ['8 gpm', 'gal/min', 8],
  ];
  it.each(read)('%s is read', (text, unit, figure) => {
    const literal = readLiteral(text);
    if (isProblem(literal)) throw new Error(literal.message);
    expect(literal.unit.name).toBe(unit);
    expect(literal.low).toBeCloseTo(figure, 12);
  });
});

describe('what a lead writes and a plan does not take', () => {
  // text | what is offered. Factors: a ton is 12,000 Btu/h by definition, MBH and kBtu/h a thousand, an atmosphere 14.696 psi.
  const offered: readonly (readonly [string, string])[] = [
    ['1 1/8 in', '1-1/8 in'],
    ['7/8"', '7/8 in'],
    ["5'", '5 ft'],
    ['5\' 6"', '5 ft 6 in'],
    ['5\'-6"', '5 ft 6 in'],
    ['3/8 inch', '3/8 in'],
    ['3/8 in.', '3/8 in'],
    ['½ in', '1/2 in'],
    ['1½ in', '1-1/2 in'],
    ['7⁄8 in', '7/8 in'],
    ['48 feet', '48 ft'],
    ['48 ft.', '48 ft'],
    ['2 lbs 3 oz', '2 lb 3 oz'],
    ['7 lb. 4 oz.', '7 lb 4 oz'],
    ['10 lbs.', '10 lb'],
    ['100 #', '100 lb'],
    ['3 KG', '3 kg'],
    ['29.9 in Hg', '29.9 inHg'],
    ['29.9 "Hg', '29.9 inHg'],
    ['28 in. Hg vac', '28 inHg'],
    ['500 µm', '500 micron'],
    ['500 mTorr', '500 micron'],
    ['25 mmHg', '25 torr'],
    ['25 mmHg abs', '25 torr'],
    ['760 mm Hg', '760 torr'],
    ['0.66 mbara', '0.66 mbar'],
    ['10 SCFH', '10 scfh'],
    ['5 CFH', '5 cfh'],
    ['6 CFM', '6 cfm'],
    ['60 l/min', '60 L/min'],
    ['60 LPM', '60 L/min'],
    ['1 m^3/h', '1 m3/h'],
    ['1 ft^3', '1 ft3'],
    ['1 cu. ft.', '1 ft3'],
    ['1 CF', '1 ft3'],
    ['500 cc', '500 cm3'],
    ['80F', '80 degF'],
    ['80 deg F', '80 degF'],
    ['10 F°', '10 degF'],
    ['27C', '27 degC'],
    ['10 dF', '10 Δ°F'],
    ['10 °F difference', '10 Δ°F'],
    ['3 tons', '36000 Btu/h'],
    ['3 TR', '36000 Btu/h'],
    ['3 RT', '36000 Btu/h'],
    ['36 kBtu/h', '36000 Btu/h'],
    ['36 MBH', '36000 Btu/h'],
    ['36000 BTU/hr', '36000 Btu/h'],
    ['36000 BTUH', '36000 Btu/h'],
    ['36,000 Btu/h', '36000 Btu/h'],
    ['10 kw', '10 kW'],
    ['5 HP', '5 hp'],
    ['1 liter', '1 L'],
    ['1 l', '1 L'],
    ['500 ml', '500 mL'],
    ['1 US gal', '1 gal'],
    ['16 fl oz', '16 fl-oz'],
    ['16 fl. oz.', '16 fl-oz'],
    ['100 PSI', '100 psi'],
    ['100 PSIG', '100 psig'],
    ['100 psi(g)', '100 psig'],
    ['10 psid', '10 psi'],
    ['7 bar g', '7 bar gauge'],
    ['7 bar(g)', '7 bar gauge'],
    ['7 barg', '7 bar gauge'],
    ['7 bara', '7 bar absolute'],
    ['700 kPag', '700 kPa gauge'],
    ['0.7 MPag', '0.7 MPa gauge'],
    ['1 atm', '14.696 psia'],
    ['30 seconds', '30 s'],
    ['90 minutes', '90 min'],
    ['2 hrs', '2 h'],
    ['2 wk', '2 weeks'],
    ['15 percent', '15 %'],
    ['0.6 oz per ft', '0.6 oz/ft'],
    ['15 ft lbs', '15 ft-lb'],
    ['15 lbf-ft', '15 ft-lb'],
    ['20 Nm', '20 N·m'],
    ['1.25 kg/l', '1.25 kg/L'],
    ['1.25 g/cc', '1.25 g/cm3'],
    ['75 pcf', '75 lb/ft3'],
    ['0.05 mg KOH/g', '0.05 mgKOH/g'],
    ['2 in. w.c.', '2 inH2O'],
    ['1e3 micron', '1000 micron'],
    ['1.5E-3 bar absolute', '0.0015 bar absolute'],
    ['30 - 90 s', '30..90 s'],
    ['30 to 90 s', '30..90 s'],
    ['30 … 90 s', '30..90 s'],
    ['~50 ft', '50 ft'],
    ['<500 micron', '500 micron'],
    ['+5 psig', '5 psig'],
  ];
  it.each(offered)('%s: %s', (text, meant) => {
    const found = readLiteral(text);
    if (!isProblem(found)) throw new Error(`${text} was read as ${found.low} ${found.unit.name}`);
    expect(found.suggestions[0]).toBe(meant);
    for (const each of found.suggestions) expect(isProblem(readLiteral(each)), each).toBe(false);
  });

  // Nothing is offered where a guess would be another quantity: a frequency is no weight, Rankine no Fahrenheit, grains no grams.
  it.each(['60 Hz', '540 °R', '100 gr', '12 V', '1 stone', '0.05 TAN', '2 x 3 in', '50 ft approx'])(
    '%s: nothing',
    (text) => {
      const found = readLiteral(text);
      expect(isProblem(found) && found.suggestions).toEqual([]);
    },
  );
});
