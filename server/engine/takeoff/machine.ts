import type { Plan } from '../plan/plan';
import { exactly, type Quantity } from '../quantity';
import { factsOf, isFlammable } from '../reference/refrigerant-facts';
import type { Figure } from './figure';
import {
  designPressure,
  dischargeTemperature,
  flammableChargeCap,
  followUpDays,
  massFlowRatio,
  oldOilShare,
  pressureRatioChange,
  roomChargeLimit,
  roomConcentration,
  suctionVolumeRatio,
  testPressure,
  valveSizeChange,
} from './figures';
import { computed, type Given, input, named } from './given';
import { filmOf, keepsOldOil } from './line-run';
import { linesOf } from './lines';
import { optionsOf } from './options';
import type { FigureOptions } from './relation';
import { stated } from './step/context';
import { visitsOf } from './visits';

/** Figures of the machine as a whole, which no step bears: what its refrigerant asks of it, what the conversion does to it. */
export function figuresOfMachine(plan: Plan): readonly Figure[] {
  const options = optionsOf(plan);
  return [
    ...pressures(plan, options),
    ...rooms(plan, options),
    ...conversion(plan, options),
    ...oil(plan, options),
    ...followUps(plan, options),
  ];
}

const cooledByWater = new Set(['coaxial-coil', 'plate-exchanger']);
const cooledByAir = new Set(['condenser', 'microchannel-coil']);

function pressures(plan: Plan, options: FigureOptions): readonly Figure[] {
  const { refrigerant, designLow, designHigh } = plan.system;
  if (!refrigerant.after) return [];
  const gas = named(refrigerant.after);
  const on = (kinds: ReadonlySet<string>): boolean =>
    plan.graph.parts.some((part) => part.highSide && kinds.has(part.kind.kind));
  const side = on(cooledByWater) && !on(cooledByAir) ? 'high-water' : 'high-air';
  const least = (subject: string, word: string): Figure =>
    designPressure.figure(subject, { refrigerant: gas, side: named(word, 'computed') }, options);
  const test = (subject: string, design: typeof designLow, high: boolean): readonly Figure[] =>
    design ? [testPressure.figure(subject, { design: stated(design), relief: lowestRelief(plan, high) }, options)] : [];
  return [
    least('high side', side),
    least('low side', 'low'),
    ...test('high side', designHigh, true),
    ...test('low side', designLow, false),
  ];
}

/** Where the first relief of a side opens; undefined where none that stays or comes is stated. */
function lowestRelief(plan: Plan, high: boolean): Given | undefined {
  const worked = plan.graph.parts.filter((part) => !plan.graph.circuits[part.circuit]?.untouched);
  const settings = worked.flatMap((part) =>
    part.highSide === high && part.standing !== 'removed' ? (part.properties.relief ?? []) : [],
  );
  return settings.length > 0 ? input(exactly('pressure', Math.min(...settings)), 'plan') : undefined;
}

/** The caps of the appliance standard by the room that they ask. */
const caps = ['m1', 'm2', 'm3'] as const;

function rooms(plan: Plan, options: FigureOptions): readonly Figure[] {
  const { refrigerant, charge } = plan.system;
  const facts = factsOf(refrigerant.after ?? '');
  const room = stated(plan.site.smallestRoom);
  if (!facts || !refrigerant.after) return [];
  const gas = named(refrigerant.after);
  const where = room ? 'smallest room' : 'room';
  return [
    ...(facts.concentrationLimit ? [roomChargeLimit.figure(where, { refrigerant: gas, room }, options)] : []),
    ...(room && charge ? [roomConcentration.figure(where, { charge: stated(charge), room }, options)] : []),
    ...(facts.safetyClass && isFlammable(facts.safetyClass)
      ? caps.map((cap) =>
          flammableChargeCap.figure(
            `${refrigerant.after}, ${cap}`,
            { refrigerant: gas, cap: named(cap, 'computed') },
            options,
          ),
        )
      : []),
  ];
}

/** What a conversion does to flow, pressures, the opening of the valves and the heat of the discharge gas. */
function conversion(plan: Plan, options: FigureOptions): readonly Figure[] {
  const { refrigerant, evaporating, condensing, superheat, subcooling } = plan.system;
  const { before, after } = refrigerant;
  if (!plan.kinds.includes('conversion') || before === null || after === null || before === after) return [];
  const from = named(before);
  const to = named(after);
  const temperatures = { evaporating: stated(evaporating), condensing: stated(condensing) };
  const working = { ...temperatures, superheat: stated(superheat), subcooling: stated(subcooling) };
  const subject = `${before} to ${after}`;
  return [
    ...[massFlowRatio, suctionVolumeRatio, valveSizeChange].map((relation) =>
      relation.figure(subject, { from, to, ...working }, options),
    ),
    pressureRatioChange.figure(subject, { from, to, ...temperatures }, options),
    ...[before, after].map((name) =>
      dischargeTemperature.figure(
        name,
        { refrigerant: named(name), ...temperatures, superheat: stated(superheat) },
        options,
      ),
    ),
  ];
}

/** Old oil that lines keep as a film, against the oil of the machine: what stays if they are blown out alone. */
function oil(plan: Plan, options: FigureOptions): readonly Figure[] {
  const films = linesOf(plan)
    .filter((part) => keepsOldOil(plan, part))
    .map((part) => filmOf(part, options));
  const fills = plan.graph.parts.flatMap((part): readonly Quantity[] =>
    part.kind.kind === 'compressor' && part.standing !== 'removed' && part.properties.oil
      ? [exactly('volume', part.properties.oil.volume)]
      : [],
  );
  if (films.length === 0 || fills.length === 0) return [];
  const fresh = exactly(
    'volume',
    fills.reduce((sum, each) => sum + each.low, 0),
  );
  return [
    oldOilShare.figure(
      `${plan.system.oil.before} in lines that are blown out alone`,
      { residues: films.map((film) => computed(film)), fresh: input(fresh, 'plan') },
      options,
    ),
  ];
}

/** When the visits after the work are due, counted from the day of the plan. */
const followUps = (plan: Plan, options: FigureOptions): readonly Figure[] =>
  visitsOf(plan).map(({ title, within }) => {
    const day = plan.date === null ? undefined : named(plan.date);
    return followUpDays.figure(title, { start: day, within, today: day }, options);
  });
