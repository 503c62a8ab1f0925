import type { Plan } from '../plan/plan';
import { between, exactly, type Quantity } from '../quantity';
import type { Figure } from './figure';
import {
  cylinderContent,
  cylindersToBring,
  nitrogenInAll,
  oilInAll,
  recoveryInAll,
  refrigerantInAll,
  solventContainers,
  solventInJob,
  spentSolventMass,
  spentSolventVolume,
} from './figures';
import { computed, input } from './given';
import type { NitrogenRun } from './nitrogen-run';
import { fact, usual } from './stock-data';
import type { Counted } from './take-off';

/** What the whole job takes along and brings home. */
export function totalsOf(plan: Plan, draws: readonly Counted[], run: NitrogenRun): readonly Figure[] {
  const options = { atmosphere: plan.site.atmosphere };
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
    totals.push(
      all,
      solventContainers.figure(
        name,
        { volume: computed(all), density, container: fact(declared, 'container', 'mass', plan) },
        options,
      ),
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
      },
      options,
    );
    const bring = cylindersToBring.figure(
      cylinder?.name ?? 'nitrogen cylinder',
      { nitrogen: computed(all), content: computed(content) },
      options,
    );
    const changes = run.changes.map(
      (change) => `Change from ${change.from} to ${change.to} at: ${change.entry.slot.step.text}.`,
    );
    const short = run.short ? [`The stock falls short at: ${run.short.entry.slot.step.text}.`] : [];
    totals.push({ ...bring, notes: [...bring.notes, ...changes, ...short] });
  }

  const recovered = new Map<string, Quantity[]>();
  for (const counted of draws) {
    if (counted.draw.of === 'recovery' && counted.draw.mass)
      recovered.set(counted.draw.refrigerant, [...(recovered.get(counted.draw.refrigerant) ?? []), counted.draw.mass]);
  }
  for (const [name, masses] of recovered)
    totals.push(recoveryInAll.figure(name, { masses: masses.map((each) => input(each, 'computed')) }, options));

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
  return totals;
}
