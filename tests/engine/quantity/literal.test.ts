import { describe, expect, it } from 'vitest';
import { isProblem, type LiteralProblem, readLiteral, showLiteral } from '../../../server/engine/quantity/index';

const read = (text: string) => {
  const literal = readLiteral(text);
  if (isProblem(literal)) throw new Error(`${text}: ${literal.message}`);
  return literal;
};

const fault = (text: string): LiteralProblem => {
  const literal = readLiteral(text);
  if (!isProblem(literal)) throw new Error(`${text} was read as ${literal.low} ${literal.unit.name}`);
  return literal;
};

describe('a literal', () => {
  // text | unit | low | high | decimals | compound
  const good: readonly [string, string, number, number, number, boolean][] = [
    ['7/8 in', 'in', 0.875, 0.875, 3, false],
    ['1-1/8 in', 'in', 1.125, 1.125, 3, false],
    ['7 lb 4 oz', 'lb', 7.25, 7.25, 0, true],
    ['4 lb 0 oz', 'lb', 4, 4, 0, true],
    ['62 ft 6 in', 'ft', 62.5, 62.5, 0, true],
    ['5 ft 3-1/2 in', 'ft', 5 + 3.5 / 12, 5 + 3.5 / 12, 1, true],
    ['30..90 s', 's', 30, 90, 0, false],
    ['7 lb 4 oz..8 lb', 'lb', 7.25, 8, 0, true],
    ['90 s..2 min', 'min', 1.5, 2, 0, false],
    ['-15 degF', 'degF', -15, -15, 0, false],
    ['−15 °F', 'degF', -15, -15, 0, false],
    ['-20..-10 degC', 'degC', -20, -10, 0, false],
    ['0.032 in', 'in', 0.032, 0.032, 3, false],
    ['.5 in', 'in', 0.5, 0.5, 1, false],
    ['8 Δ°F', 'Δ°F', 8, 8, 0, false],
    ['8 ∆ºF', 'Δ°F', 8, 8, 0, false],
    ['8 deltaF', 'Δ°F', 8, 8, 0, false],
    ['100 psig', 'psig', 100, 100, 0, false],
    ['690 kPa gauge', 'kPa gauge', 690, 690, 0, false],
    ['66.7 Pa absolute', 'Pa absolute', 66.7, 66.7, 1, false],
    ['16 fl-oz/min', 'fl-oz/min', 16, 16, 0, false],
    ['15 %', '%', 15, 15, 0, false],
    ['15%', '%', 15, 15, 0, false],
    ['0.05 mgKOH/g', 'mgKOH/g', 0.05, 0.05, 2, false],
    ['2200 ft3', 'ft3', 2200, 2200, 0, false],
    ['41 N·m', 'N·m', 41, 41, 0, false],
    ['1 day', 'days', 1, 1, 0, false],
  ];
  it.each(good)('%s is read', (text, unit, low, high, decimals, compound) => {
    const literal = read(text);
    expect([literal.unit.name, literal.decimals, literal.compound]).toEqual([unit, decimals, compound]);
    expect(literal.low).toBeCloseTo(low, 12);
    expect(literal.high).toBeCloseTo(high, 12);
    expect(showLiteral(literal)).toBe(text);
  });

  const bad: readonly [string, LiteralProblem['problem'], readonly string[]][] = [
    ['450', 'no-unit', []],
    ['30..90', 'no-unit', []],
    ['100 pisg', 'unknown-unit', ['100 psig']],
    ['3 PSIG', 'unknown-unit', ['3 psig']],
    ['5 lbs', 'unknown-unit', ['5 lb']],
    ['7/8"', 'unknown-unit', ['7/8 in']],
    ["6'", 'unknown-unit', ['6 ft']],
    ['80 F', 'unknown-unit', ['80 degF']],
    ['3 ton', 'unknown-unit', ['36000 Btu/h']],
    ['3 barg', 'unknown-unit', ['3 bar gauge']],
    ['3 constructor', 'unknown-unit', []],
    ['3 furlongsworth', 'unknown-unit', []],
    ['7 ft 3 psi', 'mixed-units', []],
    ['7 oz 3 lb', 'mixed-units', []],
    ['7 lb 20 oz', 'mixed-units', []],
    ['7.5 lb 2 oz', 'mixed-units', []],
    ['3 m 2 in', 'mixed-units', []],
    ['3 ft..9 lb', 'mixed-units', []],
    ['50 degF..60 degC', 'mixed-units', []],
    ['90..30 s', 'backward-range', ['30..90 s']],
    ['8 lb..7 lb 4 oz', 'backward-range', []],
    ['1,500 micron', 'not-a-number', ['1500 micron']],
    ['0,5 L', 'not-a-number', ['0.5 L']],
    ['1 1/8 in', 'not-a-number', ['1-1/8 in']],
    ['30-90 s', 'not-a-number', ['30..90 s']],
    ['30 – 90 s', 'not-a-number', ['30..90 s']],
    ['1/0 in', 'not-a-number', []],
    ['', 'not-a-number', []],
    ['many in', 'not-a-number', []],
    ['1..2..3 s', 'not-a-number', []],
    [`${'9'.repeat(400)} in`, 'not-a-number', []],
  ];
  it.each(bad)('%s is a problem', (text, problem, suggestions) => {
    const found = fault(text);
    expect(found.problem).toBe(problem);
    expect(found.suggestions).toEqual(suggestions);
    for (const suggestion of found.suggestions) read(suggestion);
  });
});
