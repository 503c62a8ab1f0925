import { contentsOfCell } from '../circuit/settle';
import type { Space } from '../circuit/spaces';
import { child } from '../plan/bind';
import type { Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import type { Amount, Name } from '../plan/terms';
import { exactly, isProblem, type Quantity, toQuantity } from '../quantity';
import type { Event, Flow } from '../steps/events';
import type { Entry } from '../walk/walk';
import type { Draw, Release, StepTakeOff } from './draws';
import type { Figure } from './figure';
import {
  allowedLoss,
  brazingNitrogen,
  fillNitrogen,
  firstCharge,
  flushShots,
  flushTime,
  keepAwayDistance,
  mostCharge,
  nitrogenInAll,
  oilLeft,
  pumpDownTime,
  purgeFlow,
  purgeNitrogen,
  purgeVolumeChanges,
  readingChange,
  recoveryCylindersNeeded,
  recoveryLevel,
  safeFill,
  solventOfStep,
  solventPerPass,
  storedEnergy,
  totalCharge,
  vacuumBreakNitrogen,
  waterBoiling,
} from './figures';
import { computed, type Given, input, named } from './given';
import { lineCharge } from './line-charge';
import { noted } from './noted';
import { usualRecoveryCylinder } from './recovery-run';
import { brought, dateOf, fact, houseFill } from './stock-data';
import { volumeOfLine, volumeOfSpaces, volumesOfTraps } from './volumes';

/** The figures and draws of one walked step, once: a repeat multiplies them afterwards. */
export function stepTakeOff(plan: Plan, entry: Entry): StepTakeOff {
  const figures: Figure[] = [];
  const draws: Draw[] = [];
  const releases: Release[] = [];
  const context: Context = { plan, entry, options: { atmosphere: plan.site.atmosphere }, figures, draws, releases };
  for (const event of entry.events) takers[event.type]?.(context, event as never);
  sums(context);
  oil(context);
  return { figures, draws, releases };
}

interface Context {
  readonly plan: Plan;
  readonly entry: Entry;
  readonly options: { readonly atmosphere: number };
  readonly figures: Figure[];
  readonly draws: Draw[];
  readonly releases: Release[];
}

type Of<T extends Event['type']> = Extract<Event, { type: T }>;
type Takers = { readonly [T in Event['type']]?: (context: Context, event: Of<T>) => void };

const pressure = (value: number): Given => input(exactly('pressure', value), 'plan');
const outdoors = (plan: Plan): Given | undefined =>
  plan.site.outdoors ? input(plan.site.outdoors.quantity, 'plan', plan.site.outdoors.amount.literal.text) : undefined;
const timeOf = (time: Quantity | null): Given | undefined => (time ? input(time, 'plan') : undefined);

/** The pressure that stands in some spaces before the step, the highest; null where they hold nothing known. */
function standing(entry: Entry, spaces: readonly Space[]): number | null {
  const levels = spaces.flatMap((space) => space.cells.map((cell) => contentsOfCell(entry.before, cell).low));
  return levels.length > 0 ? Math.max(...levels) : null;
}

const takers: Takers = {
  flows: (context, event) => (event.medium === 'solvent' ? solventFlow(context, event) : nitrogenFlow(context, event)),

  pressurises({ plan, entry, options, figures, draws }, event) {
    if (event.medium !== 'nitrogen' || event.spaces.length === 0) return;
    const subject = subjectOf(plan, event.spaces);
    const volume = volumeOfSpaces(plan, subject, event.spaces);
    const start = standing(entry, event.spaces);
    const inputs = {
      volume: computed(volume),
      pressure: pressure(event.level),
      ...(start !== null && { start: input(exactly('pressure', Math.min(start, event.level)), 'computed') }),
      ...temperature(plan),
    };
    const fill =
      event.purpose === 'break'
        ? vacuumBreakNitrogen.figure(subject, inputs, options)
        : fillNitrogen.figure(subject, inputs, options);
    const used = noted(fill, volume.notes);
    figures.push(used);
    if (fill.quantity) draws.push({ of: 'nitrogen', volume: fill.quantity, least: event.level, figure: used });
    if (event.purpose === 'test') {
      const tube = { pressure: pressure(event.level), temperature: outdoors(plan) };
      const energy = storedEnergy.figure(
        subject,
        { volume: computed(volume), pressure: pressure(event.level) },
        options,
      );
      figures.push(
        readingChange.figure(subject, tube, options),
        allowedLoss.figure(subject, tube, options),
        energy,
        keepAwayDistance.figure(subject, { energy: computed(energy) }, options),
      );
    }
    figures.push(volume);
  },

  joins({ plan, options, figures, draws, releases }, event) {
    if (!event.torch || !event.nitrogen || event.nitrogen.kind !== 'volume-flow') return;
    const part = plan.graph.parts[event.part]!;
    const figure = brazingNitrogen.figure(
      part.name,
      {
        joints: input(exactly('count', event.ends.length), 'plan'),
        flow: input(event.nitrogen, 'plan'),
        volume: part.properties.tube
          ? computed(volumeOfLine(plan, part))
          : input(
              exactly('volume', part.properties.volume ?? 0),
              part.properties.volume === undefined ? 'default' : 'plan',
            ),
      },
      options,
    );
    figures.push(figure);
    if (!figure.quantity) return;
    draws.push({ of: 'nitrogen', volume: figure.quantity, least: null, figure });
    releases.push({ volume: figure.quantity, time: null, figure });
  },

  recovers({ plan, options, figures, draws }, event) {
    const refrigerant = event.held[0]?.refrigerant;
    if (!refrigerant) return;
    const machine = brought(plan, 'recovery-machine')[0]?.declaration;
    const whole = event.spaces.some((space) => space.parts.length > plan.graph.parts.length / 2);
    const massFigure = whole && plan.system.recoverCharge ? plan.system.recoverCharge : null;
    const charge = massFigure ? input(massFigure.quantity, 'plan', massFigure.amount.literal.text) : undefined;
    const made = dateOf(machine, 'made', 'year');
    if (whole)
      figures.push(
        recoveryLevel.figure(
          refrigerant,
          { refrigerant: named(refrigerant), charge, machineMade: made ? named(made) : undefined },
          options,
        ),
      );
    const stock = brought(plan, 'recovery');
    const cylinder =
      (event.into ? stock.find((each) => each.label === event.into) : stock[0])?.declaration ??
      usualRecoveryCylinder(plan, refrigerant, massFigure?.quantity.high ?? 0);
    const fill = safeFill.figure(
      cylinder?.name ?? 'recovery cylinder',
      {
        refrigerant: named(refrigerant),
        waterCapacity: fact(cylinder, 'water-capacity', 'mass', plan),
        fillShare: houseFill(plan),
      },
      options,
    );
    figures.push(fill);
    if (charge)
      figures.push(
        recoveryCylindersNeeded.figure(
          cylinder?.name ?? 'recovery cylinder',
          { charge, fill: computed(fill) },
          options,
        ),
      );
    draws.push({ of: 'recovery', refrigerant, mass: massFigure?.quantity ?? null, into: event.into });
  },

  evacuates({ plan, entry, options, figures }, event) {
    if (event.spaces.length === 0) return;
    const subject = subjectOf(plan, event.spaces);
    const volume = volumeOfSpaces(plan, subject, event.spaces);
    const pumpItem = (plan.bring ?? []).find((item) => item.word === 'pump');
    const hose = pumpItem && plan.scope.find('hose', (pumpItem.bound.values['hose'] as Name | undefined)?.text ?? '');
    figures.push(waterBoiling.figure(subject, { level: pressure(event.level) }, options));
    const start = standing(entry, event.spaces);
    const time = pumpDownTime.figure(
      subject,
      {
        volume: computed(volume),
        pump: fact(pumpItem?.declaration, 'flow', 'flow', plan),
        ultimate: fact(pumpItem?.declaration, 'ultimate', 'level', plan),
        bore: fact(hose, 'bore', 'diameter', plan),
        length: fact(hose, 'length', 'length', plan),
        hoses: pumpItem ? input(exactly('count', pumpItem.number), 'plan') : undefined,
        level: pressure(event.level),
        ...(start !== null && { start: input(exactly('pressure', Math.max(start, event.level)), 'computed') }),
      },
      options,
    );
    figures.push(noted(time, volume.notes), volume);
  },

  charges({ plan, options, figures, draws }, event) {
    const { system } = plan;
    if (event.purpose === 'adjust') return;
    if (event.mass) draws.push({ of: 'refrigerant', refrigerant: event.refrigerant, mass: event.mass });
    if (plan.kinds.includes('conversion')) {
      const inputs = {
        oldCharge: system.recoverCharge ? input(system.recoverCharge.quantity, 'plan') : undefined,
        from: system.refrigerant.before ? named(system.refrigerant.before) : undefined,
        to: named(event.refrigerant),
      };
      figures.push(
        firstCharge.figure('system', inputs, options),
        mostCharge.figure('system', { oldCharge: inputs.oldCharge }, options),
      );
      return;
    }
    const lines = lineCharge(plan, event.refrigerant, options);
    const allowance = lines[0];
    if (allowance) {
      figures.push(...lines);
      if (allowance.quantity && !event.mass)
        draws.push({ of: 'refrigerant', refrigerant: event.refrigerant, mass: allowance.quantity });
    }
    figures.push(
      totalCharge.figure(
        'system',
        {
          plate: system.charge ? input(system.charge.quantity, 'plan', system.charge.amount.literal.text) : undefined,
          additions: allowance ? [computed(allowance)] : [],
        },
        options,
      ),
    );
  },

  'lets-down'({ plan, entry, options, releases }, event) {
    if (event.outdoors || event.spaces.length === 0) return;
    const volume = volumeOfSpaces(plan, subjectOf(plan, event.spaces), event.spaces);
    const figure = fillNitrogen.figure(
      volume.subject,
      {
        volume: computed(volume),
        pressure: pressure(Math.max(...event.levels)),
        start: pressure(entry.before.atmosphere),
        ...temperature(plan),
      },
      options,
    );
    if (figure.quantity) releases.push({ volume: figure.quantity, time: null, figure });
  },
};

/** Temperature of the gas, where the site says it. */
const temperature = (plan: Plan): { temperature?: Given } => {
  const given = outdoors(plan);
  return given ? { temperature: given } : {};
};

function solventFlow({ plan, entry, options, figures, draws, releases }: Context, event: Flow): void {
  const line = plan.graph.parts[event.line]!;
  const solvent = solventOf(plan, entry);
  const pass = solventPerPass.figure(
    line.name,
    {
      lineVolume: computed(volumeOfLine(plan, line)),
      share: fact(solvent, 'share-of-volume', 'share', plan),
      leastPerPass: fact(solvent, 'least-per-pass', 'volume', plan),
      traps: volumesOfTraps(plan, line).map((trap) => computed(trap)),
    },
    options,
  );
  const delivery = fact(solvent, 'delivers', 'rate', plan);
  figures.push(
    pass,
    flushTime.figure(line.name, { perPass: computed(pass), delivery }, options),
    flushShots.figure(line.name, { perPass: computed(pass), delivery }, options),
  );
  if (pass.quantity)
    draws.push({ of: 'solvent', volume: pass.quantity, solvent: solvent?.name ?? 'solvent', figure: pass });
  // The nitrogen that drives the solvent fills the line once at the pressure that the solvent's sheet names.
  const behind = solvent && child(solvent.bound.block, 'delivers') ? fact(solvent, 'delivers', 'at', plan) : undefined;
  const level = behind?.quantity ?? (event.level === null ? null : exactly('pressure', event.level));
  if (!level) return;
  const push = fillNitrogen.figure(
    line.name,
    { volume: computed(volumeOfLine(plan, line)), pressure: input(level, 'plan'), ...temperature(plan) },
    options,
  );
  figures.push(push);
  if (!push.quantity) return;
  draws.push({ of: 'nitrogen', volume: push.quantity, least: level.high, figure: push });
  if (!event.outdoors) releases.push({ volume: push.quantity, time: null, figure: push });
}

/** The solvent that a flush names, else the plan's, else the only one that the job brings. */
function solventOf(plan: Plan, entry: Entry): Declaration | null {
  const named = entry.slot.step.values['with'] as Name | undefined;
  const stock = brought(plan, 'solvent');
  return (
    (named && plan.scope.find('solvent', named.text)) ??
    plan.parameters.solvent ??
    (stock.length === 1 ? stock[0]!.declaration : null)
  );
}

function nitrogenFlow({ plan, options, figures, draws, releases }: Context, event: Flow): void {
  const line = plan.graph.parts[event.line]!;
  const { tube, length } = line.properties;
  const diameter = event.outlets[0]?.opening.diameter ?? null;
  const flow = purgeFlow.figure(
    line.name,
    {
      pressure: event.level === null ? undefined : pressure(event.level),
      opening: diameter === null ? undefined : input(exactly('length', diameter), 'computed'),
      bore: tube ? input(exactly('length', tube.bore), 'reference', tube.shown) : undefined,
      length: length === undefined ? undefined : input(exactly('length', length), 'plan'),
      ...temperature(plan),
    },
    options,
  );
  const used = purgeNitrogen.figure(line.name, { flow: computed(flow), time: timeOf(event.time) }, options);
  figures.push(used);
  if (event.level !== null) {
    figures.push(
      purgeVolumeChanges.figure(
        line.name,
        {
          nitrogen: computed(used),
          lineVolume: computed(volumeOfLine(plan, line)),
          pressure: pressure(event.level),
          ...temperature(plan),
        },
        options,
      ),
    );
  }
  figures.push(flow);
  if (!used.quantity) return;
  draws.push({ of: 'nitrogen', volume: used.quantity, least: event.level, figure: used });
  if (!event.outdoors) releases.push({ volume: used.quantity, time: event.time, figure: used });
}

/** The sum over the lines of a step stands first: it is what the crew gets ready. */
function sums({ figures, draws, options }: Context): void {
  const nitrogen = draws.flatMap((draw) => (draw.of === 'nitrogen' ? [computed(draw.figure)] : []));
  if (nitrogen.length > 1) figures.unshift(nitrogenInAll.figure('this step', { draws: nitrogen }, options));
  const solvent = draws.flatMap((draw) => (draw.of === 'solvent' ? [computed(draw.figure)] : []));
  if (solvent.length > 1) figures.unshift(solventOfStep.figure('this step', { passes: solvent }, options));
}

/** Oil that goes in, and as much used oil that comes out where it is changed. */
function oil({ plan, entry, options, figures, draws }: Context): void {
  const { step, round } = entry.slot;
  const changes = step.word.word === 'change-oil';
  if (!changes && step.word.word !== 'add-oil') return;
  const to = step.values[changes ? 'to' : 'with'] as { readonly a: Name; readonly b?: Amount } | undefined;
  const volume = quantityOf(plan, to?.b);
  if (to && volume) {
    draws.push({ of: 'oil', oil: to.a.text, volume });
    if (changes) draws.push({ of: 'used-oil', oil: plan.system.oil.before ?? 'old', volume });
  }
  if (!changes) return;
  const leaving = step.values['leaving'] as Amount | undefined;
  const share = quantityOf(plan, leaving);
  figures.push(
    oilLeft.figure(
      plan.system.oil.before ?? 'old oil',
      {
        leftByDrain: share && leaving ? input(share, 'plan', leaving.literal.text) : undefined,
        rounds: input(exactly('count', round ?? 1), 'plan'),
      },
      options,
    ),
  );
}

function quantityOf(plan: Plan, amount: Amount | undefined): Quantity | null {
  if (!amount?.literal) return null;
  const quantity = toQuantity(amount.literal, amount.kind, plan.site.atmosphere);
  return isProblem(quantity) ? null : quantity;
}

function subjectOf(plan: Plan, spaces: readonly Space[]): string {
  const parts = [...new Set(spaces.flatMap((space) => space.parts))];
  const names = parts.map((index) => plan.graph.parts[index]!.name);
  return names.length <= 4 ? names.join(', ') : `${names[0]} … ${names.at(-1)} (${names.length} parts)`;
}
