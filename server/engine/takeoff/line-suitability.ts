import type { Part } from '../circuit/graph';
import type { Plan } from '../plan/plan';
import {
  bubblePressure,
  dewPressure,
  liquidViscosity,
  type Refrigerant,
  refrigerantNamed,
  superheatedVapour,
} from '../properties';
import { between, exactly, type Quantity } from '../quantity';
import { subcoolingDefault, superheatDefault } from '../reference/charging';
import { equivalentLength } from '../reference/equivalent-lengths';
import type { Figure } from './figure';
import {
  dischargeTemperature,
  doubleRiserLeastFlow,
  doubleRiserNumber,
  equivalentLineLength,
  lineVelocity,
  massFlow,
  pressureDrop,
  riserFloodingNumber,
  saturationLiquidDensity,
  saturationLoss,
  staticHead,
  subcoolingLeft,
  suctionDensity,
} from './figures';
import { computed, type Given, input, named } from './given';
import { besides, boreOf, lengthOf, loadsOf } from './lines';
import { noted } from './noted';
import type { FigureOptions } from './relation';
import { stated } from './step/context';

/** Kinds of line by what flows through them in cooling. */
const suction = new Set(['suction-line', 'vapour-line']);
const discharge = new Set(['discharge-line', 'hot-gas-line']);

/** Nothing shorter is a riser: oil is carried over a hump (common practice, no source), m. */
const leastRise = 1;

interface Line {
  readonly plan: Plan;
  readonly part: Part;
  readonly gas: Refrigerant;
  readonly options: FigureOptions;
  /** Flow at full and at the least load; the same figure where no least is stated. */
  readonly full: Figure;
  readonly least: Figure;
}

/**
 * Whether a line suits the new refrigerant: velocity, pressure drop and what it costs, oil up a riser, what the height takes
 * of the subcooling. Where the plan does not say what flows, the one figure that lacks it stands alone.
 */
export function suitabilityOf(plan: Plan, part: Part, options: FigureOptions): readonly Figure[] {
  const { kind } = part.kind;
  const gas = refrigerantNamed(plan.system.refrigerant.after ?? '');
  if (!gas || !(suction.has(kind) || discharge.has(kind) || kind === 'liquid-line')) return [];
  const loads = loadsOf(plan, part, besides(plan, part));
  const flow = (subject: string, load: number | undefined): Figure =>
    massFlow.figure(subject, { refrigerant: named(gas.name), capacity: power(load), ...workingOf(plan) }, options);
  // What flows at the capacity of the system is told once, whatever line it goes through.
  const of = part.properties.capacity ? part.name : 'system';
  const full = flow(of, loads?.full);
  if (!full.quantity) return [full];
  const least = loads && loads.least < loads.full ? flow(`${of} at the least load`, loads.least) : full;
  const line: Line = { plan, part, gas, options, full, least };
  if (kind === 'liquid-line') return [...flows(line), ...liquid(line)];
  if (discharge.has(kind)) return [...flows(line), ...hotGas(line, part.name, part.properties.rise ?? 0)];
  const back = reverses(plan) && kind === 'vapour-line';
  // In heating the hot gas goes the other way: what falls in cooling rises.
  const heating = back ? hotGas(line, `${part.name} in heating`, part.properties.drop ?? 0) : [];
  return [...flows(line), ...vapour(line), ...heating.map((figure) => noted(figure, [asInCooling]))];
}

const asInCooling = 'In heating: by the flow and the temperatures that the plan states for cooling.';

const flows = ({ full, least }: Line): readonly Figure[] => (full === least ? [full] : [full, least]);

const reverses = (plan: Plan): boolean => plan.graph.parts.some((part) => part.kind.kind === 'reversing-valve');

const power = (load: number | undefined): Given | undefined =>
  load === undefined ? undefined : input(exactly('power', load), 'plan');

const workingOf = ({ system }: Plan) => ({
  evaporating: stated(system.evaporating),
  condensing: stated(system.condensing),
  superheat: stated(system.superheat),
  subcooling: stated(system.subcooling),
});

/** Gas that comes back to the compressor. */
function vapour(line: Line): readonly Figure[] {
  const { plan, part, gas, options } = line;
  const { evaporating, superheat } = workingOf(plan);
  const density = suctionDensity.figure(part.name, { refrigerant: named(gas.name), evaporating, superheat }, options);
  const pipes = besides(plan, part);
  const rises = (part.properties.rise ?? 0) >= leastRise;
  // The figures of the whole riser stand with its small pipe, once.
  if (pipes.length > 1 && rises) return part === pipes[0] ? [density, ...doubleRiser(line, pipes, density)] : [];
  const warm = (plan.system.superheat?.quantity ?? superheatDefault.quantity).high;
  const pressure = dewPressure(gas, plan.system.evaporating!.quantity.low);
  const state =
    pressure === null ? null : superheatedVapour(gas, pressure, plan.system.evaporating!.quantity.low + warm);
  return [
    density,
    ...resistance(line, part.name, density, state?.viscosity ?? null, evaporating),
    ...(rises ? [oilUp(line, part.name, density)] : []),
  ];
}

/** Velocity at full load, the drop over the line with its fittings, and what that costs in saturation temperature. */
function resistance(
  { part, gas, options, full }: Line,
  subject: string,
  density: Figure,
  viscosity: number | null,
  saturation: Given | undefined,
): readonly Figure[] {
  const velocity = lineVelocity.figure(
    subject,
    { flow: computed(full), density: computed(density), bore: boreOf(part) },
    options,
  );
  const { elbows, tube } = part.properties;
  const each =
    elbows && tube && equivalentLength(elbows.kind === 'standard' ? 'elbow' : 'long-radius-elbow', tube.outside);
  const fittings = each
    ? [input(exactly('length', each * elbows.count), 'reference', undefined, `${elbows.count} ${elbows.kind} elbows`)]
    : [];
  const length = equivalentLineLength.figure(subject, { length: lengthOf(part), fittings }, options);
  const drop = pressureDrop.figure(
    subject,
    {
      flow: computed(full),
      density: computed(density),
      viscosity: viscosity === null ? undefined : input(exactly('viscosity', viscosity), 'reference'),
      bore: boreOf(part),
      length: computed(length),
    },
    options,
  );
  const loss = saturationLoss.figure(
    subject,
    { refrigerant: named(gas.name), temperature: saturation, drop: computed(drop) },
    options,
  );
  return [velocity, ...(fittings.length > 0 ? [length] : []), drop, ...(saturation ? [loss] : [])];
}

/** Whether the oil climbs with the gas at the least load. */
function oilUp({ part, options, least }: Line, subject: string, density: Figure): Figure {
  const velocity = lineVelocity.figure(
    `${subject} at the least load`,
    { flow: computed(least), density: computed(density), bore: boreOf(part) },
    options,
  );
  return riserFloodingNumber.figure(
    subject,
    { velocity: computed(velocity), density: computed(density), bore: boreOf(part) },
    options,
  );
}

/** The small pipe alone at the least load, all pipes at full load, and from which flow on each of them carries oil. */
function doubleRiser({ options, full, least }: Line, pipes: readonly Part[], density: Figure): readonly Figure[] {
  const small = pipes[0]!;
  const bores = (of: readonly Part[]): readonly Given[] => of.flatMap((pipe) => boreOf(pipe) ?? []);
  const together = pipes.map((pipe) => pipe.name).join(' and ');
  const number = (subject: string, flow: Figure, of: readonly Part[]): Figure =>
    doubleRiserNumber.figure(subject, { flow: computed(flow), density: computed(density), bores: bores(of) }, options);
  const leastFlow = (subject: string, of: readonly Part[]): Figure =>
    doubleRiserLeastFlow.figure(subject, { density: computed(density), bores: bores(of) }, options);
  return [
    number(`${small.name} alone, least load`, least, [small]),
    number(`${together}, full load`, full, pipes),
    leastFlow(`${small.name} alone`, [small]),
    leastFlow(together, pipes),
    lineVelocity.figure(
      `${small.name} alone, least load`,
      { flow: computed(least), density: computed(density), bore: boreOf(small) },
      options,
    ),
  ];
}

/** Gas behind the compressor, as hot as an estimate has it. */
function hotGas(line: Line, subject: string, rise: number): readonly Figure[] {
  const { plan, gas, options } = line;
  const { evaporating, superheat, condensing } = workingOf(plan);
  const hot = dischargeTemperature.figure(
    subject,
    { refrigerant: named(gas.name), evaporating, superheat, condensing },
    options,
  );
  const pressure = bubblePressure(gas, plan.system.condensing!.quantity.high);
  if (!hot.quantity || pressure === null) return [hot];
  const states = (['high', 'low'] as const).flatMap(
    (end) => superheatedVapour(gas, pressure, hot.quantity![end]) ?? [],
  );
  if (states.length < 2) return [hot];
  const density = tabled(hot, between('density', states[0]!.density, states[1]!.density));
  return [
    hot,
    ...resistance(line, subject, density, states[0]!.viscosity, condensing),
    ...(rise >= leastRise ? [oilUp(line, subject, density)] : []),
  ];
}

/** What the tables give at the state of a figure before; it is as sure as that one. */
const tabled = (figure: Figure, quantity: Quantity): Figure => ({ ...figure, kind: quantity.kind, quantity });

/** Liquid on its way to the metering device, upwards or down. */
function liquid(line: Line): readonly Figure[] {
  const { plan, part, gas, options } = line;
  const { condensing, subcooling } = workingOf(plan);
  const at = plan.system.condensing!.quantity;
  const less = plan.system.subcooling?.quantity ?? subcoolingDefault.quantity;
  const temperature = between('temperature', at.low - less.high, at.high - less.low);
  const density = saturationLiquidDensity.figure(
    part.name,
    {
      refrigerant: named(gas.name),
      temperature: input(temperature, 'computed', undefined, 'condensing less subcooling'),
    },
    options,
  );
  const viscosity = liquidViscosity(gas, (temperature.low + temperature.high) / 2);
  const own = resistance(line, part.name, density, viscosity, undefined);
  const drop = own.find((figure) => figure.name === 'pressure-drop')!;
  const { rise, drop: fall } = part.properties;
  const height = rise ?? (fall === undefined ? 0 : -fall);
  const head = (subject: string, metres: number): Figure =>
    staticHead.figure(subject, { density: computed(density), rise: input(exactly('length', metres), 'plan') }, options);
  const heads = height === 0 ? [] : [head(part.name, height)];
  const left = subcoolingLeft.figure(
    part.name,
    { refrigerant: named(gas.name), condensing, subcooling, losses: [drop, ...heads].map((each) => computed(each)) },
    options,
  );
  const heating =
    reverses(plan) && height !== 0 ? [noted(head(`${part.name} in heating`, -height), [asInCooling])] : [];
  return [density, ...own, ...heads, left, ...heating];
}
