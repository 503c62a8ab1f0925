import { isLine } from '../../../server/engine/circuit/kinds';
import type { Step } from '../../../server/engine/plan/step';
import { air, type Closure } from './plant';
import type { Run } from './run';
import { endsMeant } from './targets';

const refrigerant = new Set(['old', 'charge', 'own']);

/** Opens a part at some ends: power off, empty, proved at zero, no pressure behind it. */
export function opened(run: Run, part: number, ends: readonly number[], shellOnly = false): void {
  const { plant } = run;
  const name = run.name(part);
  if (plant.lockedOut.size === 0) run.report('open-live', name, [part]);
  for (const end of ends) {
    const joint = plant.graph.ends[end]!.joint;
    const behindValve = plant.ends[end]!.valve === 'shut' && !shellOnly;
    const fills = [
      ...(behindValve ? [] : [plant.ends[end]!.fill]),
      ...(joint >= 0 && plant.ends[end]!.made && !shellOnly ? [plant.joints[joint]!] : []),
    ];
    for (const fill of fills) {
      if (refrigerant.has(fill.gas)) run.report('open-charged', name, [part]);
      else if (fill.gas === 'nitrogen' && fill.pressure > 35e3) run.report('open-pressure', name, [part]);
      else if (fill.gas === 'vacuum') run.report('open-proved', name, [part]);
      else if ((fill.gas === 'traces' || fill.gas === 'nitrogen') && !fill.proved)
        run.report('open-unproven', name, [part]);
      // An inch of mercury is what a gauge shows of nothing.
      if (fill.gas === 'traces' && fill.pressure < -3386) run.report('open-below', name, [part]);
    }
    const met =
      joint >= 0 && !shellOnly ? plant.graph.joints[joint]!.ends.map((each) => plant.graph.ends[each]!.part) : [];
    for (const each of [part, ...met]) {
      plant.parts[each]!.opened = true;
      plant.parts[each]!.tested = 0;
    }
  }
  if (shellOnly) for (const end of ends) plant.ends[end]!.fill = air;
  run.touch([part]);
}

/** Undoes joints: in a joint of two, both ends come free; at a tee, only this one; a branch box has a port for each line. */
function undo(run: Run, ends: readonly number[], seen = new Set<number>()): void {
  const { plant } = run;
  for (const end of ends) {
    if (seen.has(end)) continue;
    seen.add(end);
    plant.ends[end]!.made = false;
    const joint = plant.graph.joints[plant.graph.ends[end]!.joint];
    const box = plant.graph.parts[plant.graph.ends[end]!.part]!.kind.kind === 'branch-box';
    if (!joint || (joint.ends.length !== 2 && !box)) continue;
    for (const each of joint.ends) {
      plant.ends[each]!.made = false;
      const owner = plant.graph.ends[each]!.part;
      if (plant.bridged(owner)) undo(run, plant.graph.parts[owner]!.ends, seen);
    }
  }
}

/** Makes up ends to what stands there; where the neighbour is gone for good, to what is behind it. */
function make(run: Run, ends: readonly number[], seen = new Set<number>()): void {
  const { plant } = run;
  for (const end of ends) {
    if (seen.has(end)) continue;
    seen.add(end);
    plant.ends[end]!.made = true;
    if (plant.ends[end]!.closure === 'cap') plant.ends[end]!.closure = null;
    const joint = plant.graph.joints[plant.graph.ends[end]!.joint];
    for (const each of joint?.ends ?? []) {
      const owner = plant.graph.parts[plant.graph.ends[each]!.part]!;
      if (joint!.ends.length > 2 && isLine(owner.kind)) continue;
      plant.ends[each]!.made = true;
      if (plant.ends[each]!.closure === 'cap') plant.ends[each]!.closure = null;
      if (plant.bridged(owner.index)) make(run, owner.ends, seen);
    }
  }
}

export function takenOff(run: Run, part: number): void {
  const { plant } = run;
  const now = plant.parts[part]!;
  if (now.mounted === 'none') return;
  opened(
    run,
    part,
    plant.graph.parts[part]!.ends.filter((end) => plant.ends[end]!.made),
  );
  undo(run, plant.graph.parts[part]!.ends);
  now.mounted = 'none';
  plant.shutBy.delete(part);
  plant.heldOpen.delete(part);
  plant.done.add(`off ${part}`);
}

function putIn(run: Run, parts: readonly number[]): readonly number[] {
  const { plant } = run;
  const come: number[] = [];
  for (const part of parts) {
    const it = plant.graph.parts[part]!;
    const now = plant.parts[part]!;
    const renews = it.standing === 'new' || it.standing === 'added';
    if (now.mounted === 'new' || (now.mounted === 'old' && !renews)) continue;
    if (now.mounted === 'old') takenOff(run, part);
    const clamped = it.kind.kind === 'piercing-valve';
    if (it.standing === 'added' && !clamped && now.mounted === 'none') {
      // Its neighbours are parted to let it in, if they stand.
      const there = it.ends.filter((end) =>
        plant.graph.joints[plant.graph.ends[end]!.joint]?.ends.some(
          (met) => plant.parts[plant.graph.ends[met]!.part]!.mounted !== 'none',
        ),
      );
      if (there.length > 0 && !plant.plan.kinds.includes('new')) opened(run, part, there);
      undo(run, it.ends);
    }
    plant.done.add(`came ${part}`);
    now.mounted = renews ? 'new' : 'old';
    now.wet = 0;
    now.position =
      it.kind.shuts === 'hand'
        ? it.properties.closed
          ? 'shut'
          : 'open'
        : it.kind.shuts === 'driven'
          ? 'shut'
          : it.kind.shuts
            ? 'control'
            : 'open';
    const unit = it.unit === null ? null : plant.graph.parts[it.unit]!;
    const own = renews && unit !== null && (unit.properties.holds !== undefined || unit.properties.valves === 'closed');
    for (const end of it.ends) {
      // A joint that was made up to it while it was away stands as soon as it is in.
      if (clamped) {
        plant.ends[end]!.made = true;
        plant.ends[end]!.fill = plant.joints[plant.graph.ends[end]!.joint] ?? air;
        continue;
      }
      plant.ends[end]!.closure = null;
      plant.ends[end]!.fill = own ? { gas: 'own', pressure: 5e5, proved: false, held: false } : air;
      if (plant.graph.ends[end]!.valve)
        plant.ends[end]!.valve = own && unit.properties.valves === 'closed' ? 'shut' : 'open';
    }
    now.opened = !own && !clamped;
    now.tested = 0;
    come.push(part);
  }
  // Joints among parts that come together are made before they are set.
  plant.graph.joints.forEach((joint) => {
    const owners = joint.ends.map((end) => plant.graph.ends[end]!.part);
    if (owners.every((owner) => come.includes(owner))) for (const end of joint.ends) plant.ends[end]!.made = true;
  });
  for (const joint of plant.graph.joints.keys()) {
    const owners = plant.graph.joints[joint]!.ends.map((end) => plant.graph.ends[end]!.part);
    const fills = owners.map((owner) => plant.ends[plant.graph.parts[owner]!.ends[0]!]!.fill);
    if (owners.every((owner) => come.includes(owner)))
      plant.joints[joint] = fills.every((fill) => fill.gas === 'own') ? fills[0]! : air;
    // A stop valve that comes shut with the unit stands between its charge and the line.
    const own = fills.find((fill) => fill.gas === 'own');
    if (own && owners.every((owner) => come.includes(owner) && (shutStop(run, owner) || isOwn(run, owner)))) {
      plant.joints[joint] = own;
      for (const end of plant.graph.joints[joint]!.ends) plant.ends[end]!.fill = own;
    }
  }
  run.touch(come);
  return come;
}

const shutStop = ({ plant }: Run, part: number): boolean =>
  plant.graph.parts[part]!.kind.shuts === 'hand' && plant.parts[part]!.position === 'shut';
const isOwn = ({ plant }: Run, part: number): boolean =>
  plant.ends[plant.graph.parts[part]!.ends[0]!]!.fill.gas === 'own';

const closures: Readonly<Record<string, Closure>> = {
  cap: 'cap',
  plug: 'plug',
  'pinch-off': 'pinch',
  crimp: 'crimp',
  choke: 'choke',
  tape: 'tape',
};

/** Steps at joints and ends; true if the step was one. */
export function joining(
  run: Run,
  step: Step,
  verb: string,
  parts: readonly number[],
  nouns: readonly string[],
): boolean {
  const { plant } = run;
  const which = step.values['ends'];
  switch (verb) {
    case 'disconnect':
      for (const part of parts) {
        if (plant.parts[part]!.mounted === 'none') continue;
        const ends = endsMeant(plant, part, which).filter((end) => plant.ends[end]!.made);
        if (ends.length > 0) opened(run, part, ends);
        undo(run, ends);
      }
      return true;
    case 'cut-out':
    case 'remove':
      for (const part of parts) takenOff(run, part);
      return true;
    case 'place':
      putIn(run, parts);
      return true;
    case 'install':
    case 'connect':
      if (verb === 'install') putIn(run, parts);
      for (const part of parts) {
        // Joining what is not there does nothing; what stays open by it is found where it is relied on.
        if (plant.parts[part]!.mounted === 'none') continue;
        const ends = endsMeant(plant, part, verb === 'install' ? undefined : which);
        torch(run, step, part, ends);
        make(run, ends);
        run.touch([part]);
      }
      return true;
    case 'flare':
    case 'crimp':
    case 'choke':
    case 'tape':
    case 'plug':
    case 'cap':
    case 'pinch-off':
      for (const part of parts)
        for (const end of endsMeant(plant, part, which)) {
          const made = inFitting(run, end);
          // Before anything is opened the step only does nothing; once it is closed again it spoils what was made.
          if (
            made &&
            plant.parts[part]!.opened &&
            !/^(pinch-off|cap)$/.test(verb) &&
            isLine(plant.graph.parts[part]!.kind)
          )
            run.report('not-there', `${verb} ${run.name(part)}`, [part]);
          if (made) continue;
          if (verb !== 'flare') plant.ends[end]!.closure = closures[verb]!;
          run.touch([part]);
        }
      return true;
    case 'uncap':
    case 'unplug':
    case 'trim':
      for (const part of parts)
        for (const end of endsMeant(plant, part, which)) {
          if (inFitting(run, end)) continue;
          plant.ends[end]!.closure = null;
          run.touch([part]);
        }
      return true;
    case 'take-off':
      for (const end of plant.ends.keys())
        if (
          !inFitting(run, end) &&
          (nouns.some((noun) => ['chokes', 'caps', 'plugs'].includes(noun)) ||
            parts.includes(plant.graph.ends[end]!.part))
        )
          plant.ends[end]!.closure = null;
      return true;
    default:
      return false;
  }
}

/** What stands on an end is out of reach once its joint is made up over it. */
function inFitting({ plant }: Run, end: number): boolean {
  const joint = plant.graph.ends[end]!.joint;
  return plant.ends[end]!.made && joint >= 0 && !plant.jointOpen(joint);
}

function torch(run: Run, step: Step, part: number, ends: readonly number[]): void {
  const { plant } = run;
  const hot = step.values['nitrogen'] !== undefined;
  if (!hot && step.values['with'] === undefined) {
    const stated = ends.flatMap((end) =>
      (plant.graph.joints[plant.graph.ends[end]!.joint]?.ends ?? [end]).flatMap(
        (each) => plant.graph.parts[plant.graph.ends[each]!.part]!.properties.joint ?? [],
      ),
    );
    if (stated.length === 0 || stated.includes('brazed')) run.report('no-nitrogen', run.name(part), [part]);
  }
  for (const end of ends)
    for (const met of plant.graph.joints[plant.graph.ends[end]!.joint]?.ends ?? []) {
      const other = plant.graph.ends[met]!.part;
      if (plant.parts[other]!.wet === 0 || plant.parts[other]!.mounted === 'none') continue;
      run.report(hot ? 'wet-torch' : 'wet-closed', run.name(other), [other]);
    }
}
