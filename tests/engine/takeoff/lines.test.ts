import { describe, expect, it } from 'vitest';
import { endsIn, viewOf } from './case-plan';
import { heatPump, line, lineFigure, ofLine, plainPlan, split, working } from './plain-plan';

/**
 * What each line is, and whether it suits the new refrigerant. The expectations are tables of the handbook, or values
 * that were asked of CoolProp 8.0.0 directly, and from there the closed form that stands beside them.
 */

const psi = 6894.757293168;
const feetAMinute = 0.3048 / 60;
const poundAMinute = 0.45359237 / 60;
const poundACubicFoot = 16.01846337;
const degree = 1 / 1.8;

/** Bore areas in square inches (ASTM B280, handbook 1.1). */
const area = { '3/8': 0.076, '5/8': 0.242, '7/8': 0.484, '1-1/8': 0.825 } as const;

/** Velocity in ft/min by continuity: lb/min through lb/ft3 and square inches (handbook 10.2). */
const velocity = (flow: number, density: number, bore: number): number => flow / density / (bore / 144);

const liquidLine = line('liquid-line kept', 'tube 3/8 in ACR', 'length 50 ft');

const suctionOf = (tube: string, ...more: readonly string[]): string =>
  line('suction-line kept', `tube ${tube} in ACR`, 'length 100 ft', ...more);

const cooling = (suction: string, capacity = '36000 Btu/h') =>
  viewOf(plainPlan({ circuit: split(liquidLine, suction), system: `capacity ${capacity}\n    ${working}` }));

const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
const off = (found: number, expected: number): number => Math.abs(found / expected - 1);

describe('a suction line', () => {
  // Handbook WE-26: R-22, 3 tons, 40 and 105 degF, 10 °F of superheat and of subcooling: 8.32 lb/min at 1.477 lb/ft3.
  it.each([
    ['7/8', 1676],
    ['1-1/8', 983],
    // The thinner of the two walls that coils of 3/4 come with, 0.035 in.
    ['3/4', 2233],
  ] as const)('%s: %d ft/min', (tube, expected) => {
    const view = cooling(suctionOf(tube));
    expect(off(endsIn(lineFigure(view, 'liquid-line', 'mass-flow'), poundAMinute)[0], 8.32)).toBeLessThan(0.01);
    expect(off(endsIn(lineFigure(view, 'suction-line', 'suction-density'), poundACubicFoot)[0], 1.477)).toBeLessThan(
      0.003,
    );
    expect(off(endsIn(lineFigure(view, 'suction-line', 'line-velocity'), feetAMinute)[0], expected)).toBeLessThan(0.01);
  });

  it('7/8: 100 ft lose 2.85 psi, which are 1.99 °F', () => {
    // Handbook WE-28, at a viscosity of 0.0121 cP.
    const view = cooling(suctionOf('7/8'));
    expect(off(endsIn(lineFigure(view, 'suction-line', 'pressure-drop'), psi)[0], 2.85)).toBeLessThan(0.02);
    expect(off(endsIn(lineFigure(view, 'suction-line', 'saturation-loss'), degree)[0], 1.99)).toBeLessThan(0.02);
    expect(ofLine(view, 'suction-line', 'equivalent-line-length')).toEqual([]);
  });

  // Handbook 10.2, ft of tube for an elbow, standard and long-radius: 7/8 2.0 and 1.4, 1-1/8 2.6 and 1.7.
  it.each([
    ['7/8', '6 long-radius', 6 * 1.4],
    ['7/8', '6 standard', 6 * 2],
    ['1-1/8', '4 long-radius', 4 * 1.7],
    ['1-1/8', '4 standard', 4 * 2.6],
  ])('%s with elbows %s is longer by them, and its drop with it', (tube, elbows, feet) => {
    const [plain, bent] = [cooling(suctionOf(tube)), cooling(suctionOf(tube, `elbows ${elbows}`))];
    expect(endsIn(lineFigure(bent, 'suction-line', 'equivalent-line-length'), 0.3048)[0]).toBeCloseTo(100 + feet, 6);
    const drop = (of: typeof plain) => endsIn(lineFigure(of, 'suction-line', 'pressure-drop'), psi)[0];
    expect(drop(bent) / drop(plain)).toBeCloseTo(1 + feet / 100, 6);
    const speed = (of: typeof plain) => endsIn(lineFigure(of, 'suction-line', 'line-velocity'), feetAMinute)[0];
    expect(speed(bent)).toBeCloseTo(speed(plain), 9);
  });

  it('the capacity of the line itself comes before that of the system', () => {
    // Continuity: half the load is half the flow, and half of 1676 ft/min.
    const view = cooling(suctionOf('7/8', 'capacity 18000 Btu/h'));
    expect(off(endsIn(lineFigure(view, 'suction-line', 'mass-flow'), poundAMinute)[0], 4.16)).toBeLessThan(0.01);
    expect(off(endsIn(lineFigure(view, 'suction-line', 'line-velocity'), feetAMinute)[0], 838)).toBeLessThan(0.01);
    expect(lineFigure(view, 'suction-line', 'mass-flow').subject).toBe('suction-line');
    expect(off(endsIn(lineFigure(view, 'liquid-line', 'mass-flow'), poundAMinute)[0], 8.32)).toBeLessThan(0.01);
  });

  it.each([
    ['no capacity', working, 'capacity'],
    ['no evaporating temperature', 'capacity 36000 Btu/h\n    condensing 105 degF', 'evaporating'],
    ['no condensing temperature', 'capacity 36000 Btu/h\n    evaporating 40 degF', 'condensing'],
  ])('with %s the flow stands alone, with what it lacks', (_, system, lacking) => {
    const view = viewOf(plainPlan({ circuit: split(liquidLine, suctionOf('7/8', 'rise 20 ft')), system }));
    const figures = view.takeOff.lines.flatMap((each) => each.figures);
    const flows = figures.filter((each) => each.name === 'mass-flow');
    // It is the same flow in both lines: told once.
    expect(flows.map((each) => each.quantity)).toEqual([null]);
    expect(flows[0]!.missing.join()).toContain(lacking);
    const built = new Set(['line-volume', 'tube-working-pressure', 'mass-flow']);
    expect(figures.filter((each) => !built.has(each.name)).map((each) => each.name)).toEqual([]);
  });

  it('in one of two branches it has no share of the load until the plan states one', () => {
    const branch = (name: string, ...more: readonly string[]): string =>
      `branch ${name} {
        ${name}-valve: expansion-valve kept
        ${name}-coil: evaporator kept
        ${line(`${name}-line: suction-line kept`, 'tube 7/8 in ACR', 'length 100 ft', ...more)}
      }`;
    const view = viewOf(
      plainPlan({
        circuit: `compressor kept
    condenser kept
    ${liquidLine}
    parallel {
      ${branch('den', 'capacity 18000 Btu/h')}
      ${branch('loft')}
    }`,
      }),
    );
    // Continuity: half of 1676 ft/min (handbook WE-26).
    expect(off(endsIn(lineFigure(view, 'den-line', 'line-velocity'), feetAMinute)[0], 838)).toBeLessThan(0.01);
    expect(ofLine(view, 'loft-line', 'line-velocity')).toEqual([]);
  });
});

describe('a suction riser', () => {
  /** Flooding number by the closed form of handbook 10.1, in SI, at an oil density in kg/m3. */
  const flooding = (feet: number, density: number, boreInches: number, oil: number): number =>
    (feet * feetAMinute * Math.sqrt(density * poundACubicFoot)) /
    Math.sqrt(9.80665 * boreInches * 0.0254 * (oil - density * poundACubicFoot));

  const riser = (least: number, tube = '7/8', rise = 'rise 20 ft') =>
    cooling(suctionOf(tube, rise), `36000 Btu/h, least ${least} Btu/h`);

  it.each([
    ['7/8', 0.785, 0.484],
    ['1-1/8', 1.025, 0.825],
  ] as const)('%s: the number at the least load, between both densities of oil', (tube, bore, square) => {
    const [low, high] = endsIn(lineFigure(riser(12_000, tube), 'suction-line', 'riser-flooding-number'), 1);
    // A third of 8.32 lb/min (handbook WE-26); oils from 880 to 990 kg/m3, from memory.
    const speed = velocity(8.32 / 3, 1.477, square);
    expect(off(low, flooding(speed, 1.477, bore, 990))).toBeLessThan(0.01);
    expect(off(high, flooding(speed, 1.477, bore, 880))).toBeLessThan(0.01);
  });

  // Handbook 10.1: 7/8 carries oil from 430 to 450 ft/min, 1-1/8 from about 510. By continuity on WE-26 (1676 and 983
  // ft/min at 36,000 Btu/h) these are 9,240 to 9,670 and 18,700 Btu/h.
  it.each([
    ['7/8', 8_300, true],
    ['7/8', 10_700, false],
    ['1-1/8', 16_800, true],
    ['1-1/8', 20_800, false],
  ])('%s at %d Btu/h: the oil falls back %s', (tube, least, falls) => {
    const figure = lineFigure(riser(least, tube), 'suction-line', 'riser-flooding-number');
    const [low, high] = endsIn(figure, 1);
    expect([low < 0.85, high < 0.85]).toEqual([falls, falls]);
    expect(figure.notes.join().includes('oil falls back below')).toBe(falls);
  });

  it('counts from the full load where the plan states no least', () => {
    const [low] = endsIn(
      lineFigure(cooling(suctionOf('7/8', 'rise 20 ft')), 'suction-line', 'riser-flooding-number'),
      1,
    );
    expect(off(low, flooding(1676, 1.477, 0.785, 990))).toBeLessThan(0.01);
  });

  it.each(['drop 20 ft', 'rise 3 ft', 'joint brazed'])('is none with %s', (rise) => {
    // A metre is the least rise (common practice, no source).
    expect(ofLine(riser(12_000, '7/8', rise), 'suction-line', 'riser-flooding-number')).toEqual([]);
  });

  it('is one with rise 4 ft', () => {
    expect(ofLine(riser(12_000, '7/8', 'rise 4 ft'), 'suction-line', 'riser-flooding-number')).toHaveLength(1);
  });
});

describe('a double riser', () => {
  const pipe = (name: string, tube: string): string =>
    `branch ${name} {
        ${line(`${name}: suction-line kept`, `tube ${tube} in ACR`, 'length 20 ft', 'rise 18 ft')}
      }`;
  const of = (least: number, ...pipes: readonly string[]) =>
    viewOf(
      plainPlan({
        circuit: split(liquidLine, `parallel {\n      ${pipes.join('\n      ')}\n    }`),
        system: `capacity 36000 Btu/h, least ${least} Btu/h\n    ${working}`,
      }),
    );
  const [small, large] = [pipe('small', '5/8'), pipe('large', '7/8')];

  /** lb/min at which the flooding number of a pipe is 1, its closed form times density and area (handbook 10.1). */
  const atOne = (boreInches: number, square: number, oil: number): number => {
    const density = 1.477 * poundACubicFoot;
    const speed = Math.sqrt((9.80665 * boreInches * 0.0254 * (oil - density)) / density) / feetAMinute;
    return (speed * 1.477 * square) / 144;
  };

  it.each([
    ['the small pipe first', [small, large]],
    ['the large pipe first', [large, small]],
  ])('%s: the small one alone at the least load, both at full load', (_, pipes) => {
    const view = of(9_000, ...pipes);
    const number = (subject: string) => endsIn(lineFigure(view, 'small', 'double-riser-number', subject), 1);
    // A quarter of 8.32 lb/min (handbook WE-26) through 5/8; all of it through both. Oils of 990 and 880 kg/m3.
    const [alone, both] = [number('small alone, least load'), number('small and large, full load')];
    for (const [end, oil] of [
      [0, 990],
      [1, 880],
    ] as const) {
      const [five, seven] = [atOne(0.555, area['5/8'], oil), atOne(0.785, area['7/8'], oil)];
      expect(off(alone[end], 8.32 / 4 / five)).toBeLessThan(0.01);
      expect(off(both[end], 8.32 / (five + seven))).toBeLessThan(0.01);
      // The denser oil asks for more: the ends of the least flow are the other way round.
      const flow = (subject: string) =>
        endsIn(lineFigure(view, 'small', 'double-riser-least-flow', subject), poundAMinute)[1 - end]!;
      expect(off(flow('small alone'), 0.85 * five)).toBeLessThan(0.01);
      expect(off(flow('small and large'), 0.85 * (five + seven))).toBeLessThan(0.01);
    }
    const speed = endsIn(lineFigure(view, 'small', 'line-velocity'), feetAMinute)[0];
    expect(off(speed, velocity(8.32 / 4, 1.477, area['5/8']))).toBeLessThan(0.01);
    // Everything of the pair stands with the small pipe, nothing twice.
    const built = ['line-volume', 'tube-working-pressure'];
    expect(view.takeOff.lines.find((each) => each.part === 'large')!.figures.map((each) => each.name)).toEqual(built);
  });

  it('says so where the least load is too little for the small pipe', () => {
    // 0.85 of what 5/8 asks with oil of 880 kg/m3 is about 0.93 lb/min: 4,000 Btu/h are 0.92 lb/min, 4,500 are 1.04 and
    // carry even the oil of 990 kg/m3, which asks 0.99 (handbook 10.1 by continuity).
    expect(0.85 * atOne(0.555, area['5/8'], 990)).toBeLessThan((8.32 * 4_500) / 36_000);
    expect(0.85 * atOne(0.555, area['5/8'], 880)).toBeGreaterThan((8.32 * 3_900) / 36_000);
    const notes = (least: number) =>
      lineFigure(of(least, small, large), 'small', 'double-riser-number', 'small alone, least load').notes.join();
    expect(notes(3_900)).toContain('oil falls back below');
    expect(notes(4_500)).not.toContain('oil falls back below');
  });
});

describe('a liquid line', () => {
  const at100 = `capacity 36000 Btu/h
    evaporating 40 degF
    condensing 110 degF
    superheat 10 Δ°F
    subcooling 10 Δ°F`;
  const standing = (refrigerant: string, height: string, system = at100) =>
    viewOf(
      plainPlan({
        refrigerant,
        oil: 'POE',
        system,
        circuit: split(line('liquid-line kept', 'tube 3/8 in ACR', 'length 50 ft', height), suctionOf('7/8')),
      }),
    );

  // Handbook 10.2, psi for a foot of liquid at 100 degF.
  it.each([
    ['R-22', 0.49],
    ['R-410A', 0.43],
    ['R-32', 0.39],
  ])('%s: 50 ft up take %d psi a foot, 50 ft down give it back', (refrigerant, each) => {
    const [up, down] = ['rise 50 ft', 'drop 50 ft'].map(
      (height) => endsIn(lineFigure(standing(refrigerant, height), 'liquid-line', 'static-head'), psi)[0],
    );
    expect(Math.abs(up! / 50 - each)).toBeLessThan(0.006);
    expect(down).toBeCloseTo(-up!, 9);
  });

  it('level with the coil it has no head', () => {
    expect(ofLine(standing('R-22', 'joint brazed'), 'liquid-line', 'static-head')).toEqual([]);
  });

  it('3/8 of R-22: velocity and drop', () => {
    // CoolProp 8.0.0: 71.8 lb/ft3 at 95 degF; flow of WE-26. Viscosity about 0.148 cP: printed tables, from memory.
    const view = standing('R-22', 'joint brazed', `capacity 36000 Btu/h\n    ${working}`);
    const expected = velocity(8.32, 71.8, area['3/8']);
    expect(off(endsIn(lineFigure(view, 'liquid-line', 'line-velocity'), feetAMinute)[0], expected)).toBeLessThan(0.01);
    const [bore, density] = [0.311 * 0.0254, 71.8 * poundACubicFoot];
    const speed = expected * feetAMinute;
    const reynolds = (density * speed * bore) / 0.148e-3;
    // Colebrook by repetition with 1.5 micrometre drawn tube (handbook 10.2).
    let factor = 0.02;
    for (let turn = 0; turn < 30; turn++)
      factor = (-2 * Math.log10(1.5e-6 / (3.7 * bore) + 2.51 / (reynolds * Math.sqrt(factor)))) ** -2;
    const drop = (factor * (50 * 0.3048) * density * speed ** 2) / bore / 2;
    expect(off(endsIn(lineFigure(view, 'liquid-line', 'pressure-drop'), 1)[0], drop)).toBeLessThan(0.03);
    // What a drop of a liquid costs is subcooling, no saturation temperature.
    expect(ofLine(view, 'liquid-line', 'saturation-loss')).toEqual([]);
  });

  /** Bubble pressure of R-22 in psig, straight lines between the rows of handbook 3.5. */
  const bubble = (degrees: number): number =>
    degrees <= 95
      ? 136.7 + ((degrees - 77) / 18) * 45.1
      : degrees <= 105
        ? 181.8 + ((degrees - 95) / 10) * 29
        : 210.8 + ((degrees - 105) / 10) * 32;

  it.each([
    ['rise 50 ft', 10],
    ['rise 50 ft', 18],
    ['rise 25 ft', 10],
    ['drop 20 ft', 10],
    ['joint brazed', 10],
  ])('%s with %d °F of subcooling: what is left at the valve', (height, subcooling) => {
    const view = standing(
      'R-22',
      height,
      `capacity 36000 Btu/h\n    ${working.replace('subcooling 10', `subcooling ${subcooling}`)}`,
    );
    const drop = endsIn(lineFigure(view, 'liquid-line', 'pressure-drop'), psi)[0];
    const feet = height.startsWith('joint') ? 0 : Number(/\d+/.exec(height)![0]) * (height.startsWith('drop') ? -1 : 1);
    // R-22 loses 0.49 psi for a foot (handbook 10.2, at 100 degF); it then boils where the table has what is left.
    const left = 210.8 - drop - 0.49 * feet;
    let boils = 77;
    while (bubble(boils) < left) boils += 0.01;
    const found = endsIn(lineFigure(view, 'liquid-line', 'subcooling-left'), degree)[0];
    expect(Math.abs(found - (boils - (105 - subcooling)))).toBeLessThan(0.6);
  });
});

describe('hot gas', () => {
  const discharge = (refrigerant: string, height: string) =>
    viewOf(
      plainPlan({
        refrigerant,
        oil: 'POE',
        system: `capacity 36000 Btu/h, least 18000 Btu/h\n    ${working}`,
        circuit: `compressor kept
    ${line('discharge-line kept', 'tube 5/8 in ACR', 'length 20 ft', height)}
    condenser kept
    ${liquidLine}
    expansion-valve kept
    evaporator kept
    ${suctionOf('7/8')}`,
      }),
    );

  // CoolProp 8.0.0, asked directly: degF and lb/ft3 behind compressions of 75 and 60 %; effect of a pound in Btu.
  it.each([
    ['R-22', 161.11, 178.97, 55.349, 52.768, 72.128],
    ['R-134a', 134.5, 147.85, 45.795, 43.994, 67.6],
    ['R-32', 183.98, 203.86, 53.182, 50.324, 110.788],
    // A blend with glide condenses by its bubble line.
    ['R-407C', 159.55, 175.42, 65.86, 62.658, 70.795],
  ])('%s: temperature, velocity and oil up the riser', (refrigerant, cool, hot, dense, thin, effect) => {
    const view = discharge(refrigerant, 'rise 10 ft');
    const [low, high] = endsIn(lineFigure(view, 'discharge-line', 'discharge-temperature'), degree);
    expect(Math.abs(low - 459.67 - cool)).toBeLessThan(1.5);
    expect(Math.abs(high - 459.67 - hot)).toBeLessThan(1.5);
    const flow = 36_000 / 60 / effect;
    // The densities are in kg/m3.
    const [slow, fast] = [dense, thin].map((each) => velocity(flow, each / poundACubicFoot, area['5/8']));
    const found = endsIn(lineFigure(view, 'discharge-line', 'line-velocity'), feetAMinute);
    expect(off(found[0], slow!)).toBeLessThan(0.01);
    expect(off(found[1], fast!)).toBeLessThan(0.01);
    // j* = v √ρ / √(g D (ρ oil - ρ)), at half the load (handbook 10.1).
    const number = (speed: number, density: number, oil: number): number =>
      (speed * feetAMinute * Math.sqrt(density)) / Math.sqrt(9.80665 * 0.555 * 0.0254 * (oil - density));
    const ends = endsIn(lineFigure(view, 'discharge-line', 'riser-flooding-number'), 1);
    const corners = [990, 880].flatMap((oil) => [number(slow! / 2, dense, oil), number(fast! / 2, thin, oil)]);
    // Velocity and density are ranges of their own in the figure: it is at least as wide as the states that go together.
    expect(ends[0]).toBeLessThanOrEqual(Math.min(...corners) * 1.005);
    expect(ends[1]).toBeGreaterThanOrEqual(Math.max(...corners) * 0.995);
    expect(middle(ends) / middle([Math.min(...corners), Math.max(...corners)])).toBeCloseTo(1, 1);
  });

  it('carries no oil up where the line falls', () => {
    expect(ofLine(discharge('R-22', 'drop 10 ft'), 'discharge-line', 'riser-flooding-number')).toEqual([]);
  });
});

describe('the lines of a heat pump', () => {
  const pump = (liquidHeight: string, vapourHeight: string) =>
    viewOf(
      plainPlan({
        refrigerant: 'R-22',
        system: `capacity 36000 Btu/h, least 18000 Btu/h\n    ${working}`,
        circuit: heatPump(
          line('liquid-line kept', 'tube 3/8 in ACR', 'length 60 ft', liquidHeight),
          line('vapour-line kept', 'tube 7/8 in ACR', 'length 60 ft', vapourHeight),
        ),
      }),
    );

  it('above the outdoor unit: the liquid climbs in cooling, the hot gas in heating', () => {
    const view = pump('rise 50 ft', 'drop 50 ft');
    // Handbook 10.2: 0.49 psi a foot at 100 degF; at 95 it is 71.8 lb/ft3 / 144 = 0.499 (CoolProp 8.0.0).
    const head = (subject: string) => endsIn(lineFigure(view, 'liquid-line', 'static-head', subject), psi)[0];
    expect(head('liquid-line') / 50).toBeCloseTo(71.8 / 144, 3);
    expect(head('liquid-line in heating') / 50).toBeCloseTo(-71.8 / 144, 3);
    const risers = ofLine(view, 'vapour-line', 'riser-flooding-number');
    expect(risers.map((each) => each.subject)).toEqual(['vapour-line in heating']);
  });

  it('below the outdoor unit: the other way round', () => {
    const view = pump('drop 50 ft', 'rise 50 ft');
    const head = (subject: string) => endsIn(lineFigure(view, 'liquid-line', 'static-head', subject), psi)[0];
    expect(head('liquid-line') / 50).toBeCloseTo(-71.8 / 144, 3);
    expect(head('liquid-line in heating') / 50).toBeCloseTo(71.8 / 144, 3);
    const risers = ofLine(view, 'vapour-line', 'riser-flooding-number');
    expect(risers.map((each) => each.subject)).toEqual(['vapour-line']);
  });

  it('carries suction gas in cooling and hot gas in heating, and says by what it is told', () => {
    const view = pump('rise 50 ft', 'drop 50 ft');
    // WE-26: 1676 ft/min; hot gas of 55.349 to 52.768 kg/m3 (CoolProp 8.0.0, as above) by continuity.
    const [cold] = endsIn(lineFigure(view, 'vapour-line', 'line-velocity', 'vapour-line'), feetAMinute);
    expect(off(cold, 1676)).toBeLessThan(0.01);
    const heating = lineFigure(view, 'vapour-line', 'line-velocity', 'vapour-line in heating');
    const [slow, fast] = endsIn(heating, feetAMinute);
    expect(off(slow, velocity(8.32, 55.349 / poundACubicFoot, area['7/8']))).toBeLessThan(0.01);
    expect(off(fast, velocity(8.32, 52.768 / poundACubicFoot, area['7/8']))).toBeLessThan(0.01);
    expect(heating.notes.join()).toContain('In heating');
    const [hot] = endsIn(lineFigure(view, 'vapour-line', 'discharge-temperature'), degree);
    expect(Math.abs(hot - 459.67 - 161.11)).toBeLessThan(1.5);
  });

  it('a vapour line of a machine that only cools has nothing of heating', () => {
    const view = viewOf(
      plainPlan({
        circuit: split(liquidLine, line('vapour-line kept', 'tube 7/8 in ACR', 'length 60 ft', 'drop 9 ft')),
      }),
    );
    const subjects = view.takeOff.lines.flatMap((each) => each.figures.map((figure) => figure.subject));
    expect(subjects).toContain('vapour-line');
    expect(subjects.filter((each) => each.includes('heating'))).toEqual([]);
  });
});

describe('what a line is', () => {
  const changed = (oil: string, suction: string) =>
    viewOf(plainPlan({ oil, refrigerant: 'R-22 -> R-407C', circuit: split(liquidLine, suction) }));
  const film = (view: ReturnType<typeof viewOf>, part: string) => ofLine(view, part, 'oil-film');

  it('keeps a film of the old oil: half of 95 and of 38 mL up to all of it on 50 ft of 7/8 and 3/8', () => {
    // Handbook 4.3: 0.1 mm on 50 ft of 7/8 are 95 mL, of 3/8 38 mL; half of it at 0.05 mm.
    const view = changed('mineral -> POE', line('suction-line kept', 'tube 7/8 in ACR', 'length 50 ft'));
    for (const [part, most] of [
      ['suction-line', 95.5],
      ['liquid-line', 37.8],
    ] as const) {
      const ends = endsIn(film(view, part)[0]!, 1e-6);
      expect(off(ends[0], most / 2)).toBeLessThan(0.01);
      expect(off(ends[1], most)).toBeLessThan(0.01);
    }
  });

  it.each([
    ['the oil stays', 'mineral', 'suction-line kept', 0],
    ['the line is new', 'mineral -> POE', 'suction-line new', 0],
    ['the line is reused', 'mineral -> POE', 'suction-line reused', 1],
  ])('%s', (_, oil, head, count) => {
    const view = changed(oil, line(head, 'tube 7/8 in ACR', 'length 50 ft'));
    expect(view.takeOff.lines.map((each) => each.part)).toContain('suction-line');
    expect(film(view, 'suction-line')).toHaveLength(count);
  });

  it('holds its volume and bears its pressure', () => {
    const view = changed('mineral', line('suction-line kept', 'tube 7/8 in ACR', 'length 50 ft'));
    // Handbook WE-30: 0.747 and 4.759 L.
    expect(off(endsIn(lineFigure(view, 'liquid-line', 'line-volume'), 1e-3)[0], 0.747)).toBeLessThan(0.005);
    expect(off(endsIn(lineFigure(view, 'suction-line', 'line-volume'), 1e-3)[0], 4.759)).toBeLessThan(0.005);
    // ASME B31.5 form with the 6,000 psi of annealed copper at 100 degF: 2 S t / (D - 0.8 t), nominal wall (handbook 1.3).
    for (const [part, outside, wall] of [
      ['liquid-line', 0.375, 0.032],
      ['suction-line', 0.875, 0.045],
    ] as const) {
      const expected = (2 * 6000 * wall) / (outside - 0.8 * wall);
      const found = (endsIn(lineFigure(view, part, 'tube-working-pressure'), 1)[0] - 101325) / psi;
      expect(off(found, expected)).toBeLessThan(0.005);
    }
  });

  it('is not told of a line that comes out', () => {
    const view = changed(
      'mineral -> POE',
      `${line('suction-line removed', 'tube 7/8 in ACR', 'length 50 ft')}
    ${line('new-line: suction-line new', 'tube 1-1/8 in ACR', 'length 50 ft')}`,
    );
    expect(view.takeOff.lines.map((each) => each.part)).toEqual(['liquid-line', 'new-line']);
  });
});
