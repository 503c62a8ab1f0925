import { describe, expect, it } from 'vitest';
import {
  atmosphereAt,
  between,
  exactly,
  isProblem,
  type Kind,
  readLiteral,
  type ShowOptions,
  show,
  toQuantity,
} from '../../../server/engine/quantity/index';

function quantityOf(text: string, kind: Kind, atmosphere = 101325) {
  const literal = readLiteral(text);
  const quantity = isProblem(literal) ? literal : toQuantity(literal, kind, atmosphere);
  if (isProblem(quantity)) throw new Error(quantity.message);
  return quantity;
}

describe('a quantity for the eye', () => {
  const shown: readonly [string, Kind, ShowOptions, string][] = [
    ['450 psig', 'pressure', {}, '450 psig'],
    ['450 psig', 'pressure', { system: 'both' }, '450 psig (3,100 kPa gauge)'],
    ['3000 psig', 'pressure', { system: 'both' }, '3,000 psig (20.7 MPa gauge)'],
    ['690 kPa gauge', 'pressure', { system: 'both', as: 'kPa gauge' }, '690 kPa gauge (100 psig)'],
    ['500 micron', 'pressure', { system: 'both' }, '500 micron (66.7 Pa absolute)'],
    ['66.7 Pa absolute', 'pressure', { system: 'both', as: 'Pa absolute' }, '66.7 Pa absolute (500 micron)'],
    ['10 inHg', 'pressure', { system: 'both' }, '10 inHg (33.9 kPa vacuum)'],
    ['10 inHg', 'pressure', { level: 'gauge' }, '-4.9 psig'],
    ['10 inHg', 'pressure', { level: 'absolute' }, '9.78 psia'],
    ['10..15 inHg', 'pressure', {}, '10..15 inHg'],
    ['0 inHg', 'pressure', {}, '0 psig'],
    ['7 lb 4 oz', 'mass', { system: 'both' }, '7 lb 4 oz (3.29 kg)'],
    ['7.99 lb', 'mass', {}, '8 lb'],
    ['8 oz', 'mass', {}, '8 oz'],
    ['7 lb..7 lb 4 oz', 'mass', {}, '7 lb..7 lb 4 oz'],
    ['60.3 lb', 'mass', {}, '60.3 lb'],
    ['7 lb 4 oz', 'mass', { as: 'lb' }, '7.25 lb'],
    ['7/8 in', 'length', { fraction: true }, '7/8 in'],
    ['1-1/8 in', 'length', { fraction: true }, '1-1/8 in'],
    ['0.032 in', 'length', { fraction: true }, '0.032 in'],
    ['2 in', 'length', { fraction: true }, '2 in'],
    ['7/8 in', 'length', {}, '0.875 in'],
    ['12 in', 'length', {}, '1 ft'],
    ['62 ft 6 in', 'length', {}, '62.5 ft'],
    ['12.5..14 scf', 'volume', { as: 'scf' }, '12.5..14 scf'],
    ['16 fl-oz/min', 'volume-flow', { as: 'fl-oz/min' }, '16 fl-oz/min'],
    ['36000 Btu/h', 'power', { system: 'both' }, '36,000 Btu/h (10.6 kW)'],
    ['36000 Btu/h', 'power', { grouped: false }, '36000 Btu/h'],
    ['30 s', 'time', { system: 'both' }, '30 s'],
    ['1 day', 'time', { as: 'days' }, '1 day'],
    ['3 days', 'time', {}, '3 days'],
    ['15 %', 'share', { system: 'both' }, '15 %'],
    ['50 ppm', 'share', {}, '50 ppm'],
    ['81 degF', 'temperature', { system: 'both' }, '81 degF (27.2 degC)'],
    ['8 Δ°F', 'temperature-difference', { system: 'both' }, '8 Δ°F (4.4 Δ°C)'],
    ['-15 degF', 'temperature', { system: 'si' }, '-26.1 degC'],
    // Absolute zero is -459.67 degF by definition (SI brochure, from memory): never rounded to a figure below it.
    ['0 K', 'temperature', {}, '-459.6 degF'],
    ['0 K', 'temperature', { system: 'si' }, '-273 degC'],
    ['300 micron', 'pressure-difference', { as: 'micron' }, '300 micron'],
    ['2 psi', 'pressure-difference', { system: 'both' }, '2 psi (13.8 kPa)'],
    ['2200 ft3', 'volume', { system: 'both' }, '2,200 ft3 (62.3 m3)'],
    ['1234.567 psig', 'pressure', { digits: 6 }, '1,234.57 psig'],
  ];
  it.each(shown)('%s (%s) %j', (text, kind, options, expected) => {
    expect(show(quantityOf(text, kind), options)).toBe(expected);
  });

  it('reads gauges by the atmosphere of the site', () => {
    const atmosphere = atmosphereAt(1524);
    expect(show(quantityOf('100 psig', 'pressure', atmosphere), { atmosphere })).toBe('100 psig');
    expect(show(exactly('pressure', atmosphere), { atmosphere })).toBe('0 psig');
    // The same pressure at sea level is a vacuum of 29.92 - 24.90 inHg.
    expect(show(exactly('pressure', atmosphere))).toBe('5 inHg');
  });

  it('shows counts without a unit', () => {
    expect(show(between('count', 2, 4))).toBe('2..4');
    expect(show(exactly('count', 1234))).toBe('1,234');
  });

  it('has a word for a figure that is none', () => {
    expect(show(exactly('length', Number.NaN))).toContain('unknown');
    expect(show(exactly('length', Number.POSITIVE_INFINITY))).toContain('unknown');
  });
});
