import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atmosphereAt,
  exactly,
  fromSI,
  isProblem,
  readLiteral,
  show,
  standardAtmosphere,
  toQuantity,
  toSI,
  units,
} from '../../../server/engine/quantity/index';

const anyUnit = fc.constantFrom(...units);
/** Figures as people write them: up to four decimals, never under zero. */
const figure = fc.integer({ min: 0, max: 5_000_0000 }).map((parts) => parts / 10000);
const altitude = fc.double({ min: -400, max: 4000, noNaN: true });

describe('reading, converting and showing', () => {
  it('loses nothing on the way to SI and back', () => {
    fc.assert(
      fc.property(anyUnit, figure, altitude, (unit, value, height) => {
        const atmosphere = atmosphereAt(height);
        for (const kind of unit.kinds) {
          const back = fromSI(toSI(value, unit, kind, atmosphere), unit, kind, atmosphere);
          // A small reading beside the whole atmosphere, or beside 460 degF, keeps fewer of its digits.
          const scale = kind === 'pressure' ? atmosphere / unit.factor : kind === 'temperature' ? 460 : 0;
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-14 * (Math.abs(value) + scale) * 8);
        }
      }),
    );
  });

  it('shows in its own unit what was written, to the digits asked', () => {
    fc.assert(
      fc.property(anyUnit, figure, (unit, value) => {
        const kind = unit.kinds[0]!;
        const literal = readLiteral(`${value} ${unit.name}`);
        if (isProblem(literal)) throw new Error(literal.message);
        const quantity = toQuantity(literal, kind, standardAtmosphere);
        // Only a vacuum deeper than perfect is refused here.
        if (isProblem(quantity)) {
          expect([quantity.problem, unit.reference]).toEqual(['impossible', 'vacuum']);
          return;
        }
        if (quantity.low === 0 && unit.reference === 'vacuum') return;
        const again = readLiteral(show(quantity, { as: unit.name, digits: 12, grouped: false }));
        if (isProblem(again)) throw new Error(again.message);
        const beside = kind === 'pressure' ? standardAtmosphere / unit.factor : kind === 'temperature' ? 460 : 0;
        expect(Math.abs(again.low - value)).toBeLessThanOrEqual(1e-11 * value + 1e-13 * beside);
      }),
    );
  });

  it('shows every quantity so that it can be read back as the same kind, to the digits shown', () => {
    const kinds = units.flatMap((unit) => unit.kinds.map((kind) => ({ unit, kind })));
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        figure,
        fc.constantFrom('inch-pound', 'si'),
        ({ unit, kind }, value, system) => {
          const size = toSI(value, unit, kind, standardAtmosphere);
          if (size < 0) return;
          const text = show(exactly(kind, size), { system, grouped: false });
          const literal = readLiteral(text);
          if (isProblem(literal)) throw new Error(`${text}: ${literal.message}`);
          const again = toQuantity(literal, kind, standardAtmosphere);
          if (isProblem(again)) throw new Error(`${text}: ${again.message}`);
          const zero = toSI(0, literal.unit, kind, standardAtmosphere);
          const step = toSI(1, literal.unit, kind, standardAtmosphere);
          const beside = Math.abs(size - zero);
          // Three significant digits, or a tenth of the unit where gauges end there, or an ounce on a scale.
          expect(Math.abs(again.low - size)).toBeLessThanOrEqual(0.0051 * beside + Math.abs(step - zero) * 0.051);
        },
      ),
    );
  });

  it('keeps the order of readings in one unit', () => {
    fc.assert(
      fc.property(anyUnit, figure, figure, altitude, (unit, one, other, height) => {
        for (const kind of unit.kinds) {
          const [a, b] = [toSI(one, unit, kind, atmosphereAt(height)), toSI(other, unit, kind, atmosphereAt(height))];
          const turned = kind === 'pressure' && unit.reference === 'vacuum';
          if (one < other) expect(turned ? b <= a : a <= b).toBe(true);
        }
      }),
    );
  });

  it('takes a gauge reading as the less, the higher the site', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 600, noNaN: true }), altitude, altitude, (reading, one, other) => {
        const literal = readLiteral(`${reading.toFixed(3)} psig`);
        if (isProblem(literal)) throw new Error(literal.message);
        const at = (height: number) => {
          const quantity = toQuantity(literal, 'pressure', atmosphereAt(height));
          if (isProblem(quantity)) throw new Error(quantity.message);
          return quantity.low;
        };
        if (one < other) expect(at(one)).toBeGreaterThanOrEqual(at(other));
        expect(at(one) - at(other)).toBeCloseTo(atmosphereAt(one) - atmosphereAt(other), 6);
      }),
    );
  });

  it('never throws, whatever the text', () => {
    const pieces = fc.array(
      fc.constantFrom(
        '7',
        '1/8',
        '-',
        '..',
        '.',
        ' ',
        'lb',
        'oz',
        'psig',
        'kPa',
        'gauge',
        '%',
        'Δ°F',
        '(',
        '[',
        '\\',
        '$&',
        '0',
        'é',
        '/',
        ',',
      ),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          pieces.map((parts) => parts.join('')),
        ),
        (text) => {
          const literal = readLiteral(text);
          if (isProblem(literal)) {
            expect(literal.message.length).toBeGreaterThan(0);
            return;
          }
          expect(literal.low).toBeLessThanOrEqual(literal.high);
          for (const unit of units) for (const kind of unit.kinds) toQuantity(literal, kind, standardAtmosphere);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
