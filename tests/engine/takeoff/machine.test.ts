import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../server/engine/takeoff/figure';
import type { PlanView } from '../../../server/engine/view';
import { endsIn, viewOf } from './case-plan';
import { line, type Plain, plainPlan, split, working } from './plain-plan';

/** Figures of the machine as a whole: what its refrigerant asks of it, and what a conversion does to it. */

const psi = 6894.757293168;
const pound = 0.45359237;
const day = 86_400;

const of = (plain: Partial<Plain> = {}): PlanView =>
  viewOf(
    plainPlan({
      circuit: split(
        line('liquid-line kept', 'tube 3/8 in ACR', 'length 50 ft'),
        line('suction-line kept', 'tube 7/8 in ACR', 'length 50 ft'),
      ),
      ...plain,
    }),
  );

const named = (view: PlanView, name: string): readonly Figure[] =>
  view.takeOff.machine.filter((each) => each.name === name);

const subjectsOf = (view: PlanView, name: string): readonly string[] => named(view, name).map((each) => each.subject);

function one(view: PlanView, name: string, subject?: string): Figure {
  const found = named(view, name).filter((each) => subject === undefined || each.subject === subject);
  if (found.length !== 1) throw new Error(`${found.length} times ${name}`);
  return found[0]!;
}

const off = (found: number, expected: number): number => Math.abs(found / expected - 1);
const gauge = (figure: Figure): number => (endsIn(figure, 1)[0] - 101325) / psi;

describe('pressures of the two sides', () => {
  const cooledBy = (coil: string) =>
    ['compressor kept', coil, 'expansion-valve kept', 'evaporator kept'].join('\n    ');

  // Handbook 7.2, psig: bubble pressures at 80, 104 and 122 degF.
  it.each([
    ['R-22', 144, 208, 267],
    ['R-134a', 87, 133, 176],
    ['R-410A', 237, 337, 431],
    ['R-32', 241, 345, 441],
    ['R-404A', 175, 251, 320],
    ['R-448A', 181, 258, 330],
    ['R-454B', 225, 321, 409],
    ['R-290', 129, 184, 234],
  ])('%s: %d low, %d cooled by water, %d by air', (refrigerant, low, water, air) => {
    const design = (coil: string, side: string) =>
      gauge(one(of({ refrigerant, oil: 'POE', circuit: cooledBy(coil) }), 'design-pressure', side));
    expect(Math.abs(design('condenser kept', 'low side') - low)).toBeLessThan(0.75);
    expect(Math.abs(design('condenser kept', 'high side') - air)).toBeLessThan(0.75);
    expect(Math.abs(design('microchannel-coil kept', 'high side') - air)).toBeLessThan(0.75);
    expect(Math.abs(design('coaxial-coil kept', 'high side') - water)).toBeLessThan(0.75);
    expect(Math.abs(design('plate-exchanger kept', 'high side') - water)).toBeLessThan(0.75);
  });

  it('asks 15 psig at the least, of a low-pressure machine', () => {
    // ASHRAE 15 9.2.1 (handbook 7.2): not less than 15 psig; R-123 boils at 82 degF under one atmosphere.
    const view = of({ refrigerant: 'R-123', circuit: cooledBy('condenser kept') });
    expect(gauge(one(view, 'design-pressure', 'low side'))).toBeCloseTo(15, 6);
  });

  it('counts the floor by the gauge of the site, at 7,000 ft too', () => {
    // ICAO standard atmosphere: 11.34 psia at 7,000 ft, so 26.34 psia.
    const text = plainPlan({ refrigerant: 'R-123', circuit: cooledBy('condenser kept') });
    const view = viewOf(text.replace('altitude 0 ft', 'altitude 7000 ft'));
    expect(endsIn(one(view, 'design-pressure', 'low side'), psi)[0]).toBeCloseTo(26.34, 2);
  });

  it('tests each side at its design pressure', () => {
    // Handbook 7.1: not less than the design pressure.
    const view = of({ system: 'design-pressure low 150 psig, high 300 psig' });
    expect(gauge(one(view, 'test-pressure', 'high side'))).toBeCloseTo(300, 6);
    expect(gauge(one(view, 'test-pressure', 'low side'))).toBeCloseTo(150, 6);
    expect(named(of(), 'test-pressure')).toEqual([]);
  });

  it.each([
    ['receiver kept', 250, 250, 150],
    ['receiver kept', 350, 300, 150],
    ['receiver removed', 250, 300, 150],
  ])('%s with a relief at %d psig: the high side at %d, the low side at %d', (receiver, relief, high, low) => {
    // Handbook 7.1: the lower of the design pressure and the relief setting of that side.
    const view = of({
      system: 'design-pressure low 150 psig, high 300 psig',
      circuit: [
        'compressor kept',
        'condenser kept',
        line(receiver, 'rated 400 psig', `relief ${relief} psig`),
        'expansion-valve kept',
        'evaporator kept',
      ].join('\n    '),
    });
    expect(gauge(one(view, 'test-pressure', 'high side'))).toBeCloseTo(high, 6);
    expect(gauge(one(view, 'test-pressure', 'low side'))).toBeCloseTo(low, 6);
  });

  it('of two reliefs on one side the lower one counts, and none of the other side', () => {
    // Handbook 7.1, as above.
    const view = of({
      system: 'design-pressure low 150 psig, high 300 psig',
      circuit: [
        'compressor kept',
        'condenser kept',
        line('first: receiver kept', 'rated 400 psig', 'relief 290 psig'),
        line('second: receiver kept', 'rated 400 psig', 'relief 270 psig'),
        'expansion-valve kept',
        'evaporator kept',
        line('accumulator kept', 'rated 400 psig', 'relief 140 psig'),
      ].join('\n    '),
    });
    expect(gauge(one(view, 'test-pressure', 'high side'))).toBeCloseTo(270, 6);
    expect(gauge(one(view, 'test-pressure', 'low side'))).toBeCloseTo(140, 6);
  });
});

describe('the smallest room', () => {
  // Handbook 3.4, concentration limits in lb for a thousand cubic feet; R-32: 4.8 (WE-38).
  it.each([
    ['R-32', 4.8],
    ['R-410A', 26],
    ['R-454B', 3.1],
    ['R-407C', 18],
    ['R-404A', 31],
  ])('%s: %d lb for a thousand cubic feet', (refrigerant, limit) => {
    const view = of({ refrigerant, oil: 'POE', site: 'smallest-room 1500 ft3', system: 'charge 8 lb' });
    expect(off(endsIn(one(view, 'room-charge-limit'), pound)[0], 1.5 * limit)).toBeLessThan(0.005);
    // 8 lb in 1,500 ft3 are 5.333 (WE-38).
    expect(off(endsIn(one(view, 'room-concentration'), pound / (1000 * 0.3048 ** 3))[0], 5.333)).toBeLessThan(0.001);
  });

  it('without a room the limit lacks it, and nothing is said of a concentration', () => {
    const view = of({ refrigerant: 'R-32', oil: 'POE', system: 'charge 8 lb' });
    const limit = one(view, 'room-charge-limit');
    expect(limit.quantity).toBeNull();
    expect(limit.missing.join()).toContain('smallest-room');
    expect(named(view, 'room-concentration')).toEqual([]);
  });

  // Handbook 11, kg: caps m1, m2 and m3 of the appliance standard.
  it.each([
    ['R-32', 1.84, 15.96, 79.8],
    ['R-454B', 1.78, 15.4, 77.0],
    ['R-290', 0.152, 0.99, 4.94],
  ])('%s has three caps', (refrigerant, ...expected) => {
    const view = of({ refrigerant, oil: 'POE' });
    const caps = named(view, 'flammable-charge-cap');
    expect(caps.map((each) => each.subject)).toEqual(['m1', 'm2', 'm3'].map((cap) => `${refrigerant}, ${cap}`));
    for (const [at, figure] of caps.entries()) expect(off(endsIn(figure, 1)[0], expected[at]!)).toBeLessThan(0.005);
  });

  it.each(['R-22', 'R-410A', 'R-134a'])('%s, which does not burn, has none', (refrigerant) => {
    expect(named(of({ refrigerant, oil: 'POE' }), 'flammable-charge-cap')).toEqual([]);
  });
});

describe('a conversion', () => {
  interface Cycle {
    /** Heat that a pound takes up, Btu/lb. */
    readonly effect: number;
    /** Of the suction vapour and of the liquid at 95 degF, lb/ft3. */
    readonly vapour: number;
    readonly liquid: number;
    /** psia at 40 degF dew and 105 degF bubble. */
    readonly low: number;
    readonly high: number;
  }
  // CoolProp 8.0.0, asked directly at 40 and 105 degF with 10 °F of superheat and subcooling.
  const r22: Cycle = { effect: 72.1275, vapour: 1.47658, liquid: 71.7962, low: 83.2553, high: 225.4564 };
  const r134a: Cycle = { effect: 67.6003, vapour: 1.01976, liquid: 72.8848, low: 49.7414, high: 149.6535 };
  const r407c: Cycle = { effect: 70.7949, vapour: 1.38346, liquid: 68.1804, low: 77.8512, high: 257.1351 };
  const jet = ({ effect, liquid, low, high }: Cycle): number => 1 / effect / Math.sqrt(liquid * (high - low));

  it.each([
    ['R-22 -> R-134a', r22, r134a],
    ['R-22 -> R-407C', r22, r407c],
    ['R-134a -> R-22', r134a, r22],
  ])('%s: flow, suction volume, valve and pressure ratio, new over old', (refrigerant, before, after) => {
    const view = of({ kind: 'conversion', refrigerant, oil: 'POE' });
    const ratio = (name: string) => endsIn(one(view, name), 1)[0];
    expect(off(ratio('mass-flow-ratio'), before.effect / after.effect)).toBeLessThan(0.003);
    const volume = (before.effect * before.vapour) / (after.effect * after.vapour);
    expect(off(ratio('suction-volume-ratio'), volume)).toBeLessThan(0.003);
    expect(off(ratio('valve-size-change'), jet(after) / jet(before))).toBeLessThan(0.003);
    const pressures = after.high / after.low / (before.high / before.low);
    expect(off(ratio('pressure-ratio-change'), pressures)).toBeLessThan(0.003);
    expect(one(view, 'mass-flow-ratio').subject).toBe(refrigerant.replace(' -> ', ' to '));
  });

  it('tells how hot the discharge was and will be', () => {
    // CoolProp 8.0.0, asked directly: degF behind compressions of 75 and 60 %.
    const view = of({ kind: 'conversion', refrigerant: 'R-22 -> R-134a', oil: 'POE' });
    expect(subjectsOf(view, 'discharge-temperature')).toEqual(['R-22', 'R-134a']);
    for (const [gas, cool, hot] of [
      ['R-22', 161.11, 178.97],
      ['R-134a', 134.5, 147.85],
    ] as const) {
      const ends = endsIn(one(view, 'discharge-temperature', gas), 1 / 1.8);
      expect(Math.abs(ends[0] - 459.67 - cool)).toBeLessThan(1);
      expect(Math.abs(ends[1] - 459.67 - hot)).toBeLessThan(1);
    }
  });

  it.each([
    ['a changeout', 'changeout', 'R-22 -> R-407C'],
    ['one refrigerant', 'conversion', 'R-22'],
  ])('of %s nothing is compared', (_, kind, refrigerant) => {
    const found = of({ kind, refrigerant, oil: 'POE' }).takeOff.machine.map((each) => each.name);
    expect(found).toContain('design-pressure');
    for (const name of ['mass-flow-ratio', 'pressure-ratio-change', 'discharge-temperature'])
      expect(found).not.toContain(name);
  });

  it('lacks the temperatures where the plan does not state them', () => {
    const view = of({ kind: 'conversion', refrigerant: 'R-22 -> R-407C', oil: 'POE', system: 'superheat 10 Δ°F' });
    for (const name of ['mass-flow-ratio', 'suction-volume-ratio', 'valve-size-change', 'pressure-ratio-change']) {
      const figure = one(view, name);
      expect(figure.quantity).toBeNull();
      expect(figure.missing.join()).toContain('evaporating');
      expect(figure.missing.join()).toContain('condensing');
    }
  });
});

describe('old oil in the lines against the fill of the compressor', () => {
  const filled = (oil: string, compressor: string, suction = 'suction-line kept') =>
    of({
      oil,
      refrigerant: 'R-22 -> R-407C',
      system: working,
      circuit: split(
        line('liquid-line kept', 'tube 3/8 in ACR', 'length 50 ft'),
        line(suction, 'tube 7/8 in ACR', 'length 50 ft'),
      ).replace('compressor kept', compressor),
    });

  it.each([
    ['both lines stay', 'suction-line kept', 95.5 + 37.8],
    ['the suction line is new', 'suction-line new', 37.8],
  ])('32 fl-oz, %s', (_, suction, film) => {
    // Handbook 4.3: 0.1 mm are 95 mL on 50 ft of 7/8 and 38 mL on 3/8; 32 fl-oz are 946 mL. f = old / (old + new).
    const ends = endsIn(
      one(filled('mineral -> POE', 'compressor new { oil 32 fl-oz POE }', suction), 'old-oil-share'),
      1,
    );
    expect(off(ends[1], film / (film + 946.35))).toBeLessThan(0.01);
    expect(off(ends[0], film / 2 / (film / 2 + 946.35))).toBeLessThan(0.01);
  });

  it.each([
    ['the oil stays', 'mineral', 'compressor kept { oil 32 fl-oz mineral }'],
    ['no fill is stated', 'mineral -> POE', 'compressor kept'],
  ])('there is none where %s', (_, oil, compressor) => {
    expect(named(filled(oil, compressor), 'old-oil-share')).toEqual([]);
  });
});

describe('visits after the work', () => {
  const visit = (title: string, within: string): string =>
    `visit "${title}" within ${within} {\n      leak-check system\n    }`;

  it('are due in the time that each states, counted from the day of the plan', () => {
    // 40 CFR 82.157: repaired within 30 days (handbook 2.2, from memory); a suction drier is out within about 3 days
    // (handbook 5). By the calendar 18 May 2027 and 30 days are 17 June, and 3 days 21 May.
    const view = of({ steps: `${visit('Suction cores out', '3 days')}\n    ${visit('Leak repaired', '30 days')}` });
    expect(subjectsOf(view, 'follow-up-days')).toEqual(['Suction cores out', 'Leak repaired']);
    for (const [title, days, due] of [
      ['Suction cores out', 3, '2027-05-21'],
      ['Leak repaired', 30, '2027-06-17'],
    ] as const) {
      const figure = one(view, 'follow-up-days', title);
      expect(endsIn(figure, day)).toEqual([days, days]);
      expect(figure.notes).toContain(`Due on ${due}.`);
    }
  });

  it('lack the day where the plan has none', () => {
    const text = plainPlan({ circuit: split('', ''), steps: visit('Leak repaired', '30 days') });
    const figure = one(viewOf(text.replace('  date 2027-05-18\n', '')), 'follow-up-days');
    expect(figure.quantity).toBeNull();
    expect(figure.missing.join()).toContain('`date` of the plan');
  });

  it('are none where no step asks for one', () => {
    expect(named(of(), 'follow-up-days')).toEqual([]);
  });
});
