import type { Plan, Stated } from '../plan/plan';
import { between, exactly, type Quantity, show } from '../quantity';
import type { Counted } from './draws';
import type { Figure } from './figure';
import {
  crewTime,
  criticalPath,
  cylinderContent,
  cylindersToBring,
  massFlowRatio,
  nitrogenInAll,
  oilInAll,
  pressureRatioChange,
  recoveryCylindersNeeded,
  recoveryInAll,
  refrigerantInAll,
  safeFill,
  solventContainers,
  solventInJob,
  spentSolventMass,
  spentSolventVolume,
  suctionVolumeRatio,
  usedOil,
  valveSizeChange,
  waitingTime,
  workingTime,
} from './figures';
import { computed, input, named } from './given';
import { cylinderTemperature, type NitrogenRun } from './nitrogen-run';
import { noted } from './noted';
import { optionsOf } from './options';
import { type RecoveryRun, usualRecoveryCylinder } from './recovery-run';
import type { FigureOptions } from './relation';
import { brought, fact, houseFill, usual } from './stock-data';
import type { SupplyRun } from './supply-run';
import type { TimeRun } from './time-run';

/** What the whole job takes along and brings home. */
export function totalsOf(
  plan: Plan,
  draws: readonly Counted[],
  runs: {
    readonly nitrogen: NitrogenRun;
    readonly solvents: readonly SupplyRun[];
    readonly recovery: RecoveryRun;
    readonly time: TimeRun;
  },
): readonly Figure[] {
  const options = optionsOf(plan);
  const totals: Figure[] = [];
  const times = (counted: Counted, quantity: Quantity): Quantity =>
    between(quantity.kind, quantity.low * counted.least, quantity.high * counted.most);

  const solvents = new Map<string, Quantity[]>();
  for (const counted of draws) {
    if (counted.draw.of !== 'solvent') continue;
    solvents.set(counted.draw.solvent, [
      ...(solvents.get(counted.draw.solvent) ?? []),
      times(counted, counted.draw.volume),
    ]);
  }
  for (const [name, volumes] of solvents) {
    const declared = plan.scope.find('solvent', name);
    const all = solventInJob.figure(name, { passes: volumes.map((each) => input(each, 'computed')) }, options);
    const density = fact(declared, 'density', 'density', plan);
    const containers = solventContainers.figure(
      name,
      { volume: computed(all), density, container: fact(declared, 'container', 'mass', plan) },
      options,
    );
    const run = runs.solvents.find((each) => each.what === name);
    totals.push(
      all,
      noted(containers, [...(run ? supplyNotes(run, options) : [])]),
      spentSolventVolume.figure(`spent ${name}`, { solvent: computed(all) }, options),
      spentSolventMass.figure(`spent ${name}`, { solvent: computed(all), density }, options),
    );
  }

  const nitrogen = draws.flatMap((counted) =>
    counted.draw.of === 'nitrogen' ? [times(counted, counted.draw.volume)] : [],
  );
  if (nitrogen.length > 0) {
    const all = nitrogenInAll.figure('the job', { draws: nitrogen.map((each) => input(each, 'computed')) }, options);
    totals.push(all);
    const cylinder = usual(
      plan,
      'nitrogen-cylinder',
      (each) => fact(each, 'water-volume', 'volume', plan)?.quantity?.low ?? 0,
    );
    const highest = Math.max(
      ...draws.flatMap((counted) =>
        counted.draw.of === 'nitrogen' && counted.draw.least !== null ? [counted.draw.least] : [],
      ),
      plan.site.atmosphere,
    );
    const content = cylinderContent.figure(
      cylinder?.name ?? 'nitrogen cylinder',
      {
        waterVolume: fact(cylinder, 'water-volume', 'volume', plan),
        pressure: fact(cylinder, 'full', 'pressure', plan),
        least: input(exactly('pressure', highest), 'computed'),
        ...(plan.site.outdoors && { temperature: input(exactly('temperature', cylinderTemperature(plan)), 'plan') }),
      },
      options,
    );
    const bring = cylindersToBring.figure(
      cylinder?.name ?? 'nitrogen cylinder',
      { nitrogen: computed(all), content: computed(content) },
      options,
    );
    const changes = runs.nitrogen.changes.map(
      (change) => `Change from ${change.from} to ${change.to} at: ${change.entry.slot.step.text}.`,
    );
    const short = runs.nitrogen.short ? [`The stock falls short at: ${runs.nitrogen.short.entry.slot.step.text}.`] : [];
    totals.push(noted(bring, [...changes, ...short]));
  }

  const recovered = new Map<string, Quantity[]>();
  for (const counted of draws) {
    if (counted.draw.of === 'recovery' && counted.draw.mass)
      recovered.set(counted.draw.refrigerant, [...(recovered.get(counted.draw.refrigerant) ?? []), counted.draw.mass]);
  }
  for (const [name, masses] of recovered) {
    const all = recoveryInAll.figure(name, { masses: masses.map((each) => input(each, 'computed')) }, options);
    const cylinder =
      brought(plan, 'recovery')[0]?.declaration ?? usualRecoveryCylinder(plan, name, all.quantity?.high ?? 0);
    const fill = safeFill.figure(
      cylinder?.name ?? 'recovery cylinder',
      {
        refrigerant: named(name),
        waterCapacity: fact(cylinder, 'water-capacity', 'mass', plan),
        fillShare: houseFill(plan),
      },
      options,
    );
    const needed = recoveryCylindersNeeded.figure(name, { charge: computed(all), fill: computed(fill) }, options);
    totals.push(all, noted(needed, recoveryNotes(runs.recovery, name, options)));
  }

  const charged = new Map<string, Quantity[]>();
  for (const counted of draws) {
    if (counted.draw.of === 'refrigerant')
      charged.set(counted.draw.refrigerant, [...(charged.get(counted.draw.refrigerant) ?? []), counted.draw.mass]);
  }
  for (const [name, masses] of charged)
    totals.push(refrigerantInAll.figure(name, { masses: masses.map((each) => input(each, 'computed')) }, options));

  const oils = new Map<string, Quantity[]>();
  for (const counted of draws) {
    if (counted.draw.of === 'oil')
      oils.set(counted.draw.oil, [...(oils.get(counted.draw.oil) ?? []), times(counted, counted.draw.volume)]);
  }
  for (const [name, volumes] of oils)
    totals.push(oilInAll.figure(name, { fills: volumes.map((each) => input(each, 'computed')) }, options));

  const drained = new Map<string, Quantity[]>();
  for (const counted of draws) {
    if (counted.draw.of === 'used-oil')
      drained.set(counted.draw.oil, [...(drained.get(counted.draw.oil) ?? []), times(counted, counted.draw.volume)]);
  }
  for (const [name, volumes] of drained)
    totals.push(usedOil.figure(name, { drains: volumes.map((each) => input(each, 'computed')) }, options));
  return [...totals, ...changeOfRefrigerant(plan, options), ...timeTotals(runs.time, options)];
}

/** In which cylinder it goes, as sentences: the crew reads the scale by them. */
function recoveryNotes(run: RecoveryRun, refrigerant: string, options: FigureOptions): readonly string[] {
  const filled = run.cylinders
    .filter((each) => each.refrigerant === refrigerant && each.end > each.start)
    .map((each) => {
      const most = each.most === null ? '' : ` of at most ${show(exactly('mass', each.most), options)}`;
      return `${each.name} ends with ${show(exactly('mass', each.end), options)}${most}.`;
    });
  const passed = run.passedOver.filter((each) => each.why.includes(refrigerant)).map((each) => each.why);
  const short = run.short
    .filter((each) => each.refrigerant === refrigerant)
    .map(
      (each) => `There is no room for ${show(exactly('mass', each.mass), options)} at: ${each.entry.slot.step.text}.`,
    );
  return [...filled, ...passed, ...short];
}

/** What a conversion does to flow, pressures and the opening of the valves, where the plan states what it works between. */
function changeOfRefrigerant(plan: Plan, options: FigureOptions): readonly Figure[] {
  const { refrigerant, evaporating, condensing, superheat, subcooling } = plan.system;
  if (!plan.kinds.includes('conversion') || !refrigerant.before || !refrigerant.after) return [];
  if (!evaporating || !condensing) return [];
  const stated = (each: Stated | null) => (each ? input(each.quantity, 'plan', each.amount.literal.text) : undefined);
  const inputs = {
    from: named(refrigerant.before),
    to: named(refrigerant.after),
    evaporating: stated(evaporating),
    condensing: stated(condensing),
    superheat: stated(superheat),
    subcooling: stated(subcooling),
  };
  return [massFlowRatio, suctionVolumeRatio, pressureRatioChange, valveSizeChange].map((relation) =>
    relation.figure(`${refrigerant.before} to ${refrigerant.after}`, inputs, options),
  );
}

/** When a container is changed, and what the last one keeps. */
function supplyNotes(run: SupplyRun, options: FigureOptions): readonly string[] {
  const changes = run.changes.map((each) => `Change from ${each.from} to ${each.to} at: ${each.entry.slot.step.text}.`);
  const last = run.containers.at(-1);
  const left = last ? [`${last.name} keeps ${show(exactly(run.kind, last.left), options)} at the most rounds.`] : [];
  const short = run.short
    ? [`${show(exactly(run.kind, run.short.amount), options)} are missing from: ${run.short.entry.slot.step.text}.`]
    : [];
  return [...changes, ...(short.length > 0 ? short : left)];
}

function timeTotals(time: TimeRun, options: FigureOptions): readonly Figure[] {
  if (time.steps.size === 0) return [];
  const work = workingTime.figure('the job', { steps: [input(time.work, 'computed')] }, options);
  const waits = waitingTime.figure('the job', { waits: [input(time.wait, 'computed')] }, options);
  const path = criticalPath.figure(
    'the job',
    { work: computed(work), waits: computed(waits), meanwhile: input(time.meanwhile, 'computed') },
    options,
  );
  const crew = crewTime.figure(
    'the job',
    { onSite: input(time.onSite, 'computed'), people: input(exactly('count', time.people), 'plan') },
    options,
  );
  const long = time.long.map(
    (each) => `Nobody stays through ${show(each.wait, options)} at: ${each.entry.slot.step.text}.`,
  );
  return [path, work, waits, noted(crew, [...long])];
}
