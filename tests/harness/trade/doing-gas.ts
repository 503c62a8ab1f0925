import { isLine } from '../../../server/engine/circuit/kinds';
import type { Selector } from '../../../server/engine/plan/selection';
import type { Step } from '../../../server/engine/plan/step';
import type { Fill, Space } from './plant';
import type { Run } from './run';

const refrigerant = new Set(['old', 'charge', 'own']);

/** Steps that move gas or liquid; true if the step was one. */
export function purely(
  run: Run,
  step: Step,
  verb: string,
  parts: readonly number[],
  nouns: readonly string[],
): boolean {
  const { plant } = run;
  const spacesOf = (): readonly Space[] => {
    const inside = within(run, parts);
    return plant.spaces().filter((space) => plant.partsOf(space).some((part) => inside.includes(part)));
  };
  const fillOf = (space: Space): Fill => plant.ends[space.ends[0]!]!.fill;
  switch (verb) {
    case 'pump-down':
      pumpDown(run, step);
      return true;
    case 'recover': {
      const spaces = spacesOf();
      const reached = spaces.some((space) => plant.hasPort(space))
        ? spaces.filter((space) => plant.hasPort(space))
        : spaces;
      const level = run.level(step.values['level']) ?? 0;
      for (const space of spaces) {
        const inIt = plant.partsOf(space);
        if (!refrigerant.has(fillOf(space).gas)) continue;
        if (!reached.includes(space)) run.report('recover-short', run.names(inIt), inIt);
        else plant.fill(space, { gas: 'traces', pressure: level, proved: false, held: false });
        run.touch(inIt);
      }
      return true;
    }
    case 'prove-zero':
      for (const space of spacesOf())
        if (fillOf(space).gas === 'traces' || (fillOf(space).gas === 'nitrogen' && fillOf(space).pressure < 35e3))
          plant.fill(space, { ...fillOf(space), proved: true });
      return true;
    case 'break-vacuum': {
      const spaces = parts.length > 0 ? spacesOf() : plant.spaces();
      if (
        /^(nitrogen|air)$/.test(String(step.values['with'])) &&
        spaces.every((space) => refrigerant.has(fillOf(space).gas))
      )
        run.report('break-charged', '', parts);
      for (const space of spaces) {
        const { gas } = fillOf(space);
        if ((gas === 'vacuum' || gas === 'traces') && space.leaks.length === 0) {
          plant.fill(space, {
            ...fillOf(space),
            gas: step.values['with'] === 'air' ? 'air' : 'nitrogen',
            pressure: run.level(step.values['level']) ?? 0,
            held: false,
          });
          run.touch(plant.partsOf(space));
        }
      }
      return true;
    }
    case 'release':
      for (const space of nouns.includes('nitrogen') ? plant.spaces() : spacesOf()) {
        const pressure = run.level(step.values['to']) ?? 0;
        if (fillOf(space).gas === 'nitrogen') plant.fill(space, { ...fillOf(space), pressure });
        // Out of parts that are named, refrigerant goes as well.
        if (!nouns.includes('nitrogen') && refrigerant.has(fillOf(space).gas))
          plant.fill(space, { gas: 'traces', pressure, proved: false, held: false });
      }
      return true;
    case 'blow-out':
    case 'flush':
    case 'purge':
    case 'back-flush':
    case 'pull-swab':
      for (const part of parts) through(run, step, verb, part);
      return true;
    case 'pressure-test':
    case 'evacuate':
    case 'decay-test':
      prove(run, step, verb, parts);
      return true;
    case 'charge':
      charge(run, step, parts);
      return true;
    default:
      return false;
  }
}

/** A section ends at its shut valves: what lies behind them is not meant. */
function within(run: Run, parts: readonly number[]): readonly number[] {
  const inside = parts.filter((part) => run.plant.passes(part));
  return inside.length > 0 ? inside : parts;
}

function pumpDown(run: Run, step: Step): void {
  const { plant } = run;
  const into = (step.values['into'] as { text: string } | undefined)?.text;
  const vessel = into ? plant.graph.named.get(into) : undefined;
  if (!plant.running || plant.lockedOut.has('power')) {
    run.report('pump-down-standing', '');
    return;
  }
  if (!vessel) return;
  const spaces = plant.spaces(true);
  const held = spaces.filter((space) => plant.partsOf(space).some((part) => vessel.includes(part)));
  const rest = spaces.filter((space) => !held.includes(space));
  const metering = plant.metering;
  if (
    held.some((space) =>
      plant.partsOf(space).some((part) => metering.includes(part) && plant.graph.parts[part]!.kind.shuts !== 'driven'),
    )
  ) {
    run.report('pump-down-through', into ?? '', vessel);
    return;
  }
  for (const space of rest) plant.fill(space, { gas: 'charge', pressure: 0, proved: false, held: false });
}

function through(run: Run, step: Step, verb: string, part: number): void {
  const { plant } = run;
  const it = plant.graph.parts[part]!;
  const now = plant.parts[part]!;
  run.touch([part]);
  const shut = it.ends.filter((end) => {
    const { made, closure } = plant.ends[end]!;
    if (closure === 'cap' || closure === 'plug' || closure === 'pinch') return true;
    const joint = plant.graph.ends[end]!.joint;
    return made && (joint < 0 || !plant.jointOpen(joint));
  });
  if (shut.length > (verb === 'blow-out' ? it.ends.length - 1 : 0)) run.report('no-path', it.name, [part]);
  else if (shut.length > 0) run.report('blown-back', it.name, [part]);
  const { gas } = plant.ends[it.ends[0]!]!.fill;
  if (refrigerant.has(gas) || gas === 'traces') run.report('solvent-meets-charge', it.name, [part]);
  if (verb === 'flush' || verb === 'back-flush') {
    if (!now.inspected) run.report('not-inspected', it.name, [part]);
    if (step.values['into'] === undefined) run.report('no-container', it.name, [part]);
    const way = verb === 'back-flush' || step.values['from'] === 'far end' ? 'back' : 'forward';
    if (now.wet === 2 && (now.ways === 'both' || now.ways === way)) run.report('flush-on-flush', it.name, [part]);
    const early = plant.graph.parts.filter(
      (each) => each.kind.kind === 'filter-drier' && plant.parts[each.index]!.mounted === 'new',
    );
    if (early.length > 0)
      run.report(
        'drier-early',
        run.names(early.map((each) => each.index)),
        early.map((each) => each.index),
      );
    now.ways = now.wet === 2 && now.ways !== way ? 'both' : way;
    now.wet = 2;
  }
  if (verb === 'purge' && now.wet > 0) {
    const level = run.level(step.values['level']) ?? 0;
    const time = run.quantity(step.values['time'], 'time') ?? 0;
    const dry =
      (level > 6e5 && time >= 20) ||
      (level > 2.5e5 && time >= 90) ||
      time >= 600 ||
      (step.values['per'] !== undefined && time >= 30);
    now.wet = dry ? 0 : 1;
  }
}

function prove(run: Run, step: Step, verb: string, named: readonly number[]): void {
  const { plant } = run;
  const what = (step.values['what'] as readonly Selector[]) ?? [];
  const eachOpen = what.some((each) => each.standing === 'open');
  const wanted = eachOpen ? named.filter((part) => plant.parts[part]!.opened) : within(run, named);
  const gasIn = (space: Space): Fill['gas'] => plant.ends[space.ends[0]!]!.fill.gas;
  const all = plant.spaces().filter((space) => plant.partsOf(space).some((part) => wanted.includes(part)));
  // Where all that was opened has its proof and its charge, the line on the sheet can only mean those.
  const bare = all.filter((space) => !refrigerant.has(gasIn(space)));
  const meant = !eachOpen || (bare.length === 0 && verb !== 'decay-test') ? all : bare;
  const ported = meant.filter((space) => plant.hasPort(space) || space.leaks.length > 0);
  const spaces = ported.length > 0 ? ported : meant;
  const gone = named.filter((part) => plant.parts[part]!.mounted === 'none' && !plant.bridged(part));
  if (!eachOpen && gone.length > 0 && gone.length === named.length)
    run.report(verb === 'pressure-test' ? 'test-open' : 'evacuated-open', run.names(gone), gone);
  const level = verb === 'decay-test' ? null : levelOf(run, step);
  for (const space of spaces) {
    const parts = plant.partsOf(space);
    const { gas, pressure } = plant.ends[space.ends[0]!]!.fill;
    if (space.leaks.length > 0) {
      const at = [...new Set(space.leaks.map((end) => plant.graph.ends[end]!.part))];
      const met = space.leaks.flatMap((end) => plant.graph.joints[plant.graph.ends[end]!.joint]?.ends ?? []);
      const both = [...new Set([...at, ...met.map((end) => plant.graph.ends[end]!.part)])];
      run.report(verb === 'pressure-test' ? 'test-open' : 'evacuated-open', run.names(at), both);
      continue;
    }
    for (const end of space.ends)
      if (plant.ends[end]!.closure && plant.ends[end]!.made && plant.graph.ends[end]!.joint >= 0) {
        const part = plant.graph.ends[end]!.part;
        if (isLine(plant.graph.parts[part]!.kind)) run.report('choke-left', run.name(part), [part]);
      }
    for (const part of parts) if (plant.parts[part]!.wet > 0) run.report('wet-closed', run.name(part), [part]);
    if (refrigerant.has(gas)) run.report('test-charged', run.names(parts), parts);
    if (verb === 'pressure-test') {
      for (const part of parts) {
        const rated = plant.graph.parts[part]!.properties.rated;
        if (rated !== undefined && level !== null && level > (rated - run.plan.site.atmosphere) * 1.03)
          run.report('over-rated', run.name(part), [part]);
        plant.parts[part]!.tested = Math.max(plant.parts[part]!.tested, level ?? 0);
      }
      plant.fill(space, { gas: 'nitrogen', pressure: level ?? 0, proved: true, held: false });
    } else if (verb === 'evacuate') {
      if (gas === 'nitrogen' && pressure > 36e3) run.report('evacuated-pressure', run.names(parts), parts);
      run.needsTest(parts);
      // A pull to less than what is reached already changes nothing.
      const pulled = level ?? -run.plan.site.atmosphere;
      const deepest = gas === 'vacuum' ? Math.min(pressure, pulled) : pulled;
      plant.fill(space, { gas: 'vacuum', pressure: deepest, proved: true, held: false });
    } else if (gas !== 'vacuum') run.report('not-vacuum', run.names(parts), parts);
    else plant.fill(space, { gas: 'vacuum', pressure, proved: true, held: true });
    run.touch(parts);
  }
}

/** The level of a step, or the plan's own test pressure where the step names it. */
function levelOf(run: Run, step: Step): number | null {
  const value = step.values['level'];
  if (typeof value === 'object' && value !== null && 'text' in value && !('literal' in value)) {
    const stated = run.plan.parameters.testPressure;
    return stated ? stated.quantity.low - run.plan.site.atmosphere : null;
  }
  return run.level(value);
}

function charge(run: Run, step: Step, parts: readonly number[]): void {
  const { plant } = run;
  const weighed = step.values['with'] !== undefined && (step.values['with'] as { b?: unknown }).b !== undefined;
  let into = 0;
  for (const space of plant.spaces()) {
    const inIt = plant.partsOf(space);
    if (!inIt.some((part) => parts.includes(part))) continue;
    const { gas, held, pressure } = plant.ends[space.ends[0]!]!.fill;
    run.touch(inIt);
    if (gas === 'vacuum') run.needsDepth(pressure, inIt);
    if (gas === 'own') {
      if (!weighed) run.report('charge-shut', run.names(inIt), inIt);
      continue;
    }
    if (space.leaks.length > 0) run.report('let-in-open', run.names(inIt), inIt);
    else if (gas === 'vacuum' && !held) run.report('let-in-unproven', '', inIt);
    else if (gas === 'air' || gas === 'nitrogen' || gas === 'traces') run.report('let-in-dirty', '', inIt);
    if (gas !== 'charge') {
      into++;
      run.letIn(inIt);
    }
    if (space.leaks.length === 0) plant.fill(space, { gas: 'charge', pressure: 5e5, proved: false, held: false });
  }
  if (plant.chargedBy && (into === 0 || !weighed)) run.report('charge-twice', '', [], [plant.chargedBy]);
  plant.chargedBy = step;
}
