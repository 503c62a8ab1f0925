import type { Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import { between, exactly, type Quantity, show } from '../quantity';
import type { Counted, Draw } from './draws';
import type { Figure } from './figure';
import {
  carbonEquivalent,
  crewTime,
  criticalPath,
  cylinderContent,
  cylindersToBring,
  goingBack,
  nitrogenInAll,
  oilInAll,
  recoveryCylindersNeeded,
  recoveryInAll,
  refrigerantInAll,
  safeFill,
  solventContainers,
  solventInJob,
  spentSolventMass,
  spentSolventVolume,
  usedOil,
  waitingTime,
  workingTime,
} from './figures';
import { computed, type Given, input, named } from './given';
import { filmOf } from './line-run';
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
  return [
    ...solventTotals(plan, draws, runs.solvents, options),
    ...nitrogenTotals(plan, draws, runs.nitrogen, options),
    ...recoveryTotals(plan, draws, runs.recovery, options),
    ...refrigerantTotals(draws, options),
    ...oilTotals(draws, options),
    ...timeTotals(runs.time, options),
  ];
}

type DrawOf<T extends Draw['of']> = Counted & { readonly draw: Extract<Draw, { of: T }> };

const drawsOf = <T extends Draw['of']>(draws: readonly Counted[], of: T): readonly DrawOf<T>[] =>
  draws.filter((each): each is DrawOf<T> => each.draw.of === of);

/** Draws of one material together, in the order in which the materials come up. */
function byName<T extends Draw['of']>(
  draws: readonly DrawOf<T>[],
  nameOf: (draw: DrawOf<T>['draw']) => string,
): ReadonlyMap<string, readonly DrawOf<T>[]> {
  const found = new Map<string, DrawOf<T>[]>();
  for (const each of draws) {
    const name = nameOf(each.draw);
    found.set(name, [...(found.get(name) ?? []), each]);
  }
  return found;
}

/** What a draw takes over all its rounds, least to most, as an input that tells what it was drawn for. */
function overRounds({ entry, least, most }: Counted, one: Quantity, subject?: string): Given {
  const { word } = entry.slot.step.word;
  const rounds = least === most ? (most === 1 ? '' : `, ${most} times`) : `, ${least} to ${most} times`;
  return input(
    between(one.kind, one.low * least, one.high * most),
    'computed',
    undefined,
    `${word}${subject === undefined ? '' : ` ${subject}`}${rounds}`,
  );
}

function solventTotals(
  plan: Plan,
  draws: readonly Counted[],
  runs: readonly SupplyRun[],
  options: FigureOptions,
): readonly Figure[] {
  return [...byName(drawsOf(draws, 'solvent'), (draw) => draw.solvent)].flatMap(([name, own]) => {
    const declared = plan.scope.find('solvent', name);
    const passes = own.map((each) => overRounds(each, each.draw.volume, each.draw.figure.subject));
    const all = solventInJob.figure(name, { passes }, options);
    const density = fact(declared, 'density', 'density', plan);
    const containers = solventContainers.figure(
      name,
      { volume: computed(all), density, container: fact(declared, 'container', 'mass', plan) },
      options,
    );
    const run = runs.find((each) => each.what === name);
    const washed = washedOut(plan, [...new Set(own.map((each) => each.draw.line))], options);
    const caught = { solvent: computed(all), oil: washed };
    const weight = spentSolventMass.figure(`spent ${name}`, { ...caught, density }, options);
    return [
      all,
      run ? noted(containers, supplyNotes(run, options)) : containers,
      spentSolventVolume.figure(`spent ${name}`, caught, options),
      noted(weight, weighedIn(all, density, options)),
    ];
  });
}

/** The old oil that solvent takes off the walls of the lines that it goes through, once however many passes there are. */
function washedOut(plan: Plan, lines: readonly number[], options: FigureOptions): Given | undefined {
  const { before } = plan.system.oil;
  const films = lines.flatMap((index) => {
    const part = plan.graph.parts[index]!;
    const old = before !== null && (part.standing === 'kept' || part.standing === 'reused');
    const film = old ? filmOf(part, options).quantity : null;
    return film ? [{ name: part.name, film }] : [];
  });
  if (films.length === 0) return undefined;
  const sum = (end: 'low' | 'high'): number => films.reduce((total, each) => total + each.film[end], 0);
  return input(
    between('volume', sum('low'), sum('high')),
    'computed',
    undefined,
    `film of ${before} oil in ${films.map((each) => each.name).join(', ')}`,
  );
}

/** What went in by weight, to hold what comes out against. */
function weighedIn(all: Figure, density: Given | undefined, options: FigureOptions): readonly string[] {
  if (!all.quantity || !density?.quantity) return [];
  const mass = between('mass', all.quantity.low * density.quantity.low, all.quantity.high * density.quantity.high);
  return [
    `${show(mass, options)} of solvent go in. What the can weighs less, beyond what evaporates, still stands in the lines.`,
  ];
}

function nitrogenTotals(
  plan: Plan,
  draws: readonly Counted[],
  run: NitrogenRun,
  options: FigureOptions,
): readonly Figure[] {
  const own = drawsOf(draws, 'nitrogen');
  if (own.length === 0) return [];
  const each = own.map((one) => overRounds(one, one.draw.volume, one.draw.figure.subject));
  const all = nitrogenInAll.figure('the job', { draws: each }, options);
  const size = (one: Declaration): number => fact(one, 'water-volume', 'volume', plan)?.quantity?.low ?? 0;
  const cylinder = usual(plan, 'nitrogen-cylinder', size);
  const highest = Math.max(...own.flatMap(({ draw }) => draw.least ?? []), plan.site.atmosphere);
  const name = cylinder?.name ?? 'nitrogen cylinder';
  const content = cylinderContent.figure(
    name,
    {
      waterVolume: fact(cylinder, 'water-volume', 'volume', plan),
      pressure: fact(cylinder, 'full', 'pressure', plan),
      least: input(exactly('pressure', highest), 'computed'),
      ...(plan.site.outdoors && { temperature: input(exactly('temperature', cylinderTemperature(plan)), 'plan') }),
    },
    options,
  );
  const bring = cylindersToBring.figure(name, { nitrogen: computed(all), content: computed(content) }, options);
  const changes = run.changes.map(
    (change) => `Change from ${change.from} to ${change.to} at: ${change.entry.slot.step.text}.`,
  );
  const short = run.short ? [`The stock falls short at: ${run.short.entry.slot.step.text}.`] : [];
  return [all, noted(bring, [...changes, ...short]), content];
}

function recoveryTotals(
  plan: Plan,
  draws: readonly Counted[],
  run: RecoveryRun,
  options: FigureOptions,
): readonly Figure[] {
  return [...byName(drawsOf(draws, 'recovery'), (draw) => draw.refrigerant)].flatMap(([name, own]) => {
    const masses = own.flatMap(({ entry, draw }) =>
      draw.mass ? [input(draw.mass, 'computed', undefined, entry.slot.step.text)] : [],
    );
    if (masses.length === 0) return [];
    const all = recoveryInAll.figure(name, { masses }, options);
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
    return [all, noted(needed, recoveryNotes(run, name, options)), carbon(all, options)];
  });
}

const refrigerantTotals = (draws: readonly Counted[], options: FigureOptions): readonly Figure[] =>
  [...byName(drawsOf(draws, 'refrigerant'), (draw) => draw.refrigerant)].flatMap(([name, own]) => {
    const masses = own.map(({ entry, draw }) => input(draw.mass, 'computed', undefined, entry.slot.step.word.word));
    const all = refrigerantInAll.figure(name, { masses }, options);
    return [all, carbon(all, options)];
  });

/** What the refrigerant of a total would be as carbon dioxide. */
const carbon = (mass: Figure, options: FigureOptions): Figure =>
  carbonEquivalent.figure(mass.subject, { refrigerant: named(mass.subject), mass: computed(mass) }, options);

const oilTotals = (draws: readonly Counted[], options: FigureOptions): readonly Figure[] => [
  ...[...byName(drawsOf(draws, 'oil'), (draw) => draw.oil)].map(([name, own]) =>
    oilInAll.figure(name, { fills: own.map((each) => overRounds(each, each.draw.volume)) }, options),
  ),
  ...[...byName(drawsOf(draws, 'used-oil'), (draw) => draw.oil)].map(([name, own]) =>
    usedOil.figure(name, { drains: own.map((each) => overRounds(each, each.draw.volume)) }, options),
  ),
];

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
  const back = goingBack.figure(
    'the job',
    {
      ways: time.again.map(({ way, time: once }) =>
        input(
          between('time', 0, once * way.times),
          'computed',
          undefined,
          `${way.step.text} back to ${way.label.text}, at most ${way.times} times`,
        ),
      ),
    },
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
  return [path, ...(time.again.length > 0 ? [back] : []), work, waits, noted(crew, long)];
}
