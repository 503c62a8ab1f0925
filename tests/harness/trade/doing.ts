import type { Selector } from '../../../server/engine/plan/selection';
import type { Step } from '../../../server/engine/plan/step';
import { purely } from './doing-gas';
import { joining, opened } from './doing-joints';
import type { Run } from './run';
import { partsMeant } from './targets';

/** What a step does to the plant, and what must hold before it. Words that only print do nothing here. */
export function doStep(run: Run, step: Step): void {
  const verb = step.word.word;
  const what = step.values['what'] as readonly Selector[] | undefined;
  const nouns = (Array.isArray(what) ? what : []).map((each) => each.noun);
  const parts = Array.isArray(what) ? partsMeant(run.plant, what) : [];
  if (joining(run, step, verb, parts, nouns)) return;
  if (purely(run, step, verb, parts, nouns)) return;
  power(run, step, verb, parts, nouns);
}

function power(run: Run, step: Step, verb: string, parts: readonly number[], nouns: readonly string[]): void {
  const { plant } = run;
  switch (verb) {
    case 'lock-out':
      for (const noun of nouns) plant.lockedOut.set(noun, step);
      if (nouns.includes('power')) {
        plant.resumes ||= plant.running;
        plant.readings = [];
        plant.running = false;
        plant.controls = false;
      }
      return;
    case 'energise':
      plant.controls = true;
      return;
    case 'bypass':
      for (const noun of nouns) plant.bypassed.set(noun, step);
      return;
    case 'restore':
      for (const noun of nouns) {
        plant.bypassed.delete(noun);
        if (noun === 'power') {
          // A machine that is shut off from what stands in vacuum is not meant: it has its charge.
          for (const space of plant.spaces()) {
            const { gas } = plant.ends[space.ends[0]!]!.fill;
            const machines = plant
              .partsOf(space)
              .filter((part) => plant.graph.parts[part]!.kind.kind === 'compressor' && !plant.untouched(part));
            if (machines.length > 0 && !['charge', 'old', 'own'].includes(gas))
              run.report('powered-in-vacuum', run.names(machines), machines);
          }
          powered(run);
          plant.controls = true;
          plant.lockedOut.clear();
        }
        plant.lockedOut.delete(noun);
      }
      return;
    case 'stop':
      plant.running = false;
      plant.resumes = false;
      return;
    case 'start':
      start(run);
      return;
    case 'run':
      if (plant.lockedOut.has('power')) run.report('started-locked', 'run');
      return;
    case 'adjust':
    case 'read':
    case 'sample': {
      const needs = nouns.filter((noun) =>
        /charge|superheat|subcooling|amps|temperature-split|pressure-drop/.test(noun),
      );
      // What is read after some minutes is read of a running machine.
      if ((needs.length > 0 || / after \d/.test(step.text)) && !plant.running)
        readIdle(run, step, `${verb} ${needs.join(',')}`);
      else if (nouns.includes('pressures') && !plant.running) run.report('standing-pressure', '');
      return;
    }
    case 'change-oil': {
      const gone = parts.some(
        (part) => !['old', 'charge'].includes(plant.ends[plant.graph.parts[part]!.ends[0]!]!.fill.gas),
      );
      if (gone || plant.lockedOut.has('power')) run.report('oil-round-late', run.names(parts), parts);
      return;
    }
    case 'drain':
      for (const part of parts) {
        const { gas, pressure } = plant.ends[plant.graph.parts[part]!.ends[0]!]!.fill;
        run.touch([part]);
        if (['old', 'charge', 'own'].includes(gas)) run.report('open-charged', `drain ${run.name(part)}`, [part]);
        else if (gas === 'nitrogen' && pressure > 35e3) run.report('open-pressure', `drain ${run.name(part)}`, [part]);
      }
      return;
    case 'prove-airflow':
      if (plant.lockedOut.has('power')) run.report('airflow-locked', '');
      return;
    case 'inspect':
      for (const part of parts) plant.parts[part]!.inspected = true;
      return;
    case 'check':
      for (const noun of nouns) plant.done.add(noun);
      return;
    case 'renew':
    case 'change':
      for (const part of parts) {
        opened(run, part, plant.graph.parts[part]!.ends);
        plant.parts[part]!.mounted = plant.graph.parts[part]!.standing === 'new' ? 'new' : plant.parts[part]!.mounted;
        if (verb === 'change') plant.done.add(`renewed ${part}`);
        if (plant.graph.parts[part]!.kind.shuts === 'driven') plant.parts[part]!.position = 'shut';
      }
      return;
    case 'remove-cores':
    case 'replace-cores':
      for (const part of parts) opened(run, part, plant.graph.parts[part]!.ends, true);
      return;
    case 'bench-flush':
      for (const part of parts)
        if (plant.parts[part]!.mounted !== 'none') run.report('no-path', run.name(part), [part]);
      return;
    case 'open':
    case 'close':
    case 'return':
      valves(run, step, verb, parts, nouns);
      return;
    default:
      return;
  }
}

/** Read of a machine that nobody started: it may go on by itself, unless the plan starts it later. */
function readIdle(run: Run, step: Step, subject: string): void {
  const { plant } = run;
  if (!plant.resumes || plant.lockedOut.has('power')) run.report('read-standing', subject);
  else {
    run.report('read-resumed', subject);
    plant.readings.push({ subject, step });
  }
}

/** The lock-out ends: no joint may be open by then, and what goes on by itself must not be empty. */
function powered(run: Run): void {
  const { plant } = run;
  const bare = plant.spaces().flatMap((space) => {
    const parts = plant.partsOf(space).filter((part) => !plant.untouched(part));
    const { gas } = plant.ends[space.ends[0]!]!.fill;
    const empty = ['vacuum', 'nitrogen', 'air', 'traces'].includes(gas);
    return space.leaks.length > 0 || (plant.resumes && empty && parts.some((part) => plant.parts[part]!.opened))
      ? parts
      : [];
  });
  if (bare.length > 0) run.report('powered-early', '', bare, [plant.lockedOut.get('power') ?? null]);
}

function start(run: Run): void {
  const { plant } = run;
  for (const { subject, step } of plant.readings) run.report('read-standing', subject, [], [step]);
  plant.readings = [];
  if (plant.lockedOut.has('power')) run.report('started-locked', 'start', [], [plant.lockedOut.get('power')!]);
  for (const space of plant.spaces()) {
    const parts = plant.partsOf(space).filter((part) => !plant.untouched(part));
    const { gas } = plant.ends[space.ends[0]!]!.fill;
    if (parts.length > 0 && (space.leaks.length > 0 || ['vacuum', 'nitrogen', 'air', 'traces', 'own'].includes(gas)))
      for (const part of parts) run.report('started-empty', run.name(part), [part]);
  }
  // Before anything is opened, a machine is started on a shut liquid valve to pump it down.
  if (plant.parts.some((part) => part.opened))
    for (const [part, step] of plant.shutBy) run.report('started-shut', run.name(part), [part], [step]);
  plant.running = true;
}

function valves(run: Run, step: Step, verb: string, parts: readonly number[], nouns: readonly string[]): void {
  const { plant } = run;
  const set = (ends: readonly number[], valve: 'open' | 'shut'): void => {
    for (const end of ends) if (plant.ends[end]!.valve !== null) plant.ends[end]!.valve = valve;
  };
  if (nouns.includes('service-valves'))
    for (const part of plant.graph.parts)
      if (part.unit !== null || part.kind.kind === 'service-valve') set(part.ends, verb === 'close' ? 'shut' : 'open');
  for (const part of parts) {
    const it = plant.graph.parts[part]!;
    const now = plant.parts[part]!;
    run.touch([part]);
    if (now.mounted === 'none') {
      run.report('not-there', it.name, [part]);
      continue;
    }
    if (nouns.includes('valves') || it.kind.shuts === undefined) set(it.ends, verb === 'close' ? 'shut' : 'open');
    if (it.kind.shuts === undefined) {
      if (verb === 'close') plant.shutBy.set(part, step);
      else plant.shutBy.delete(part);
      continue;
    }
    if (nouns.includes('valves')) continue;
    if (verb === 'return') {
      now.position = it.kind.shuts === 'hand' ? 'open' : 'control';
      plant.heldOpen.delete(part);
    } else if (verb === 'close') {
      now.position = 'shut';
      plant.heldOpen.delete(part);
      if (it.kind.shuts === 'hand') plant.shutBy.set(part, step);
    } else {
      const by = step.values['by'];
      if (
        it.kind.shuts !== 'hand' &&
        it.kind.shuts !== 'direction' &&
        !plant.controls &&
        plant.lockedOut.has('power') &&
        by === undefined
      ) {
        run.report('no-power-to-valve', it.name, [part]);
        continue;
      }
      now.position = 'open';
      plant.shutBy.delete(part);
      if (by === 'magnet' || by === 'stem') plant.heldOpen.set(part, step);
    }
  }
}
