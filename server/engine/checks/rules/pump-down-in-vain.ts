import type { Part } from '../../circuit/graph';
import type { Amount, Name } from '../../plan/term';
import { isProblem, toQuantity } from '../../quantity';
import type { Entry } from '../../walk/walk';
import { has } from '../course';
import { defineCheck, type Here, type WayOut, type Whole } from '../define';
import { isCharged, readyCompressors, touched } from '../plant';
import { drawnFrom, roundTrip } from '../round-trip';
import { gauge } from '../support';
import { insertBefore, takeOut, writeAt, writtenGauge } from '../ways-out';

/** A pump-down that gathers nothing. */
export const pumpDownInVain = defineCheck({
  name: 'pump-down-in-vain',
  severity: 'warning',
  title: 'A pump-down that gathers nothing',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: [
    'circuit-out-of-order',
    'refrigerant-not-stated',
    'compressor-without-refrigerant',
    'started-against-shut-valve',
  ],
  meaning:
    'The plan pumps down while the machine stands still, while its charge is out, or while nothing is shut behind the condenser or receiver, so that what the compressor puts in there runs out again; or into a part of the low side, or a vessel that a shut valve keeps the gas out of; or while the machine heats or defrosts, which is an error; or it is to end near the pressure at which the machine stands at rest; or nothing is opened after it.',
  why: 'The lines stay full; whoever opens them next relies on a charge that is not put away.',
  source: 'common practice (handbook 13.5: shut the liquid side, run, stop, shut the suction side)',
  wrong: {
    base: 'rack',
    instead: [['lock-out power\n', 'pump-down system into receiver to 0 psig # <- here\n    lock-out power\n']],
  },
  right: {
    base: 'rack',
    instead: [
      ['lock-out power\n', 'close sol-1, sol-2\n    pump-down system into receiver to 0 psig\n    lock-out power\n'],
    ],
  },
  plan(whole) {
    turnedRound(whole);
    // A charge that is put away at the end, with nothing opened after it.
    const last = whole.entries.reduce((found, entry, at) => (has(entry, 'pumps-down') ? at : found), -1);
    const entry = whole.entries[last];
    if (!entry || whole.entries.slice(last + 1).some((each) => has(each, 'opens') || has(each, 'recovers'))) return;
    whole.report(entry, {
      message:
        'Nothing is recovered or opened after this pump-down: leave it out, or do it before the circuit is opened.',
      root: entry.slot.step,
      fixes: [takeOut(entry.slot.step)],
    });
  },
  step(here) {
    if (here.events('pumps-down').length === 0) return;
    if (intoLowSide(here)) return;
    const plant = here.before;
    if (!plant.running) {
      here.report({ message: 'The machine stands still here, and draws nothing in: start it first.', root: here.step });
      return;
    }
    const [compressor] = readyCompressors(plant);
    if (compressor && !isCharged(plant, compressor.index)) {
      const held = plant.parts[compressor.index]!.contents[0]!;
      here.report({
        message: (say) =>
          `There is no charge in ${say.part(compressor.index)} to pump down: it would run on ${held.gas === 'refrigerant' ? 'a rest' : held.gas}, since ${say.step(held.since)}.`,
        root: here.step,
        related: held.since ? [{ cause: held.since, message: 'it stands so since here' }] : [],
      });
      return;
    }
    if (compressor && drawsNothing(here, compressor.index)) return;
    if (stopsAtRest(here)) return;
    // The valves of an old unit are no parts of the plan's circuit; one that states none relies on them.
    const valves = plant.graph.parts.some(({ kind }) => kind.shuts === 'hand' || kind.shuts === 'power');
    if (!valves || plant.marks.has('close service-valves')) return;
    if (shutBeforeVessel(here)) return;
    if (!compressor || !roundTrip(plant, compressor.index).comesBack) return;
    here.report({
      message: (say) =>
        `Nothing is shut between ${say.part(compressor.index)} and its way back here, so what is pumped in runs out again: shut the liquid side first.`,
      root: here.step,
      fixes: shutFirst(here, compressor.index),
    });
  },
});

/** A suction side that is left at more than this share of what it stands at anyway was not pumped down (common practice, no source). */
const leftMost = 0.6;

/** A pump-down that is to end where the machine stands at rest: a unit, or a digit, slipped. */
function stopsAtRest(here: Here): boolean {
  const { plan, step } = here;
  const level = step.values['level'] as Amount | undefined;
  const refrigerant = plan.system.refrigerant.before;
  const rest = refrigerant === null ? null : plan.startPressure(refrigerant);
  if (!level?.literal || !rest || here.per !== null) return false;
  const { atmosphere } = plan.site;
  const found = toQuantity(level.literal, 'pressure', atmosphere);
  if (isProblem(found) || found.low - atmosphere <= (rest[1] - atmosphere) * leftMost) return false;
  here.report({
    message: `The pump-down is to end at ${gauge(plan, found.low)}, and ${refrigerant} stands at about ${gauge(plan, rest[1])} when nothing draws on it: the lines stay full. Read figure and unit again.`,
    slot: 'level',
    root: step,
    fixes: writeAt(step, level, writtenGauge(plan, atmosphere)),
  });
  return true;
}

/** A pump-down into what the compressor draws from, or into a part that holds nothing. */
function intoLowSide(here: Here): boolean {
  const name = here.step.values['into'] as Name | undefined;
  const { graph } = here.plan;
  const part = graph.parts.find((each) => each.name === name?.text);
  if (!part || holdsCharge(part)) return false;
  const store =
    graph.parts.find((each) => each.kind.kind === 'receiver' && holdsCharge(each)) ?? graph.parts.find(holdsCharge);
  here.report({
    message: (say) =>
      `${say.part(part.index)} ${part.highSide ? 'holds no charge' : 'lies on the side that the compressor draws from'}: a pump-down gathers the charge in ${store ? say.part(store.index) : 'the condenser or the receiver'}.`,
    slot: 'into',
    root: here.step,
    concerns: [part.index],
    fixes: store ? writeAt(here.step, name, store.name) : [],
  });
  return true;
}

/** What is shut stands before the vessel that is to hold the charge: nothing gets in there, and nothing keeps it in. */
function shutBeforeVessel(here: Here): boolean {
  const name = here.step.values['into'] as Name | undefined;
  const plant = here.before;
  const vessel = here.plan.graph.parts.find((each) => each.name === name?.text);
  if (!vessel) return false;
  const trips = readyCompressors(plant)
    .filter(({ circuit }) => circuit === vessel.circuit)
    .map(({ index }) => roundTrip(plant, index));
  const reached = trips.some(
    ({ comesBack, passed, shut }) => comesBack || passed.includes(vessel.index) || shut.includes(vessel.index),
  );
  const [valve] = trips.flatMap(({ shut }) => shut);
  if (reached || valve === undefined) return false;
  here.report({
    message: (say) =>
      `${say.part(valve)} is shut before ${say.part(vessel.index)}, so no gas gets in there, and nothing shuts off what is in it: shut a valve behind it, or state the valve where it stands.`,
    slot: 'into',
    root: `shut before ${vessel.index}`,
    concerns: [vessel.index, valve],
    related: [{ part: valve, message: 'what is shut stands here in the order of flow' }],
  });
  return true;
}

/** A compressor whose suction side is shut: what is to be drawn in stands behind the valve. */
function drawsNothing(here: Here, compressor: number): boolean {
  const { graph } = here.plan;
  const { passed, shut } = drawnFrom(here.before, compressor);
  if (shut.length === 0 || passed.some((part) => graph.parts[part]!.kind.group === 'coil')) return false;
  here.report({
    message: (say) =>
      `${say.parts(shut)} ${shut.length > 1 ? 'stand' : 'stands'} shut before ${say.part(compressor)}, which draws a vacuum over its oil and nothing from the coil: shut the suction side when the charge is gathered.`,
    root: here.step,
    concerns: shut,
  });
  return true;
}

/** A receiver, or a coil that gives heat off in cooling. */
const holdsCharge = ({ kind, highSide }: Part): boolean =>
  kind.kind === 'receiver' || kind.kind === 'condenser' || (kind.group === 'coil' && highSide);

/** A machine that was last turned to heating, or to defrost with its own hot gas, puts its charge where it is wanted out of. */
function turnedRound(whole: Whole): void {
  let turned: { readonly entry: Entry; readonly mode: string } | null = null;
  for (const entry of whole.entries) {
    for (const event of entry.events) {
      if (event.type === 'starts')
        turned = event.mode !== null && event.mode !== 'cooling' ? { entry, mode: event.mode } : null;
      if (event.type !== 'pumps-down' || !turned || !entry.before.running) continue;
      const { cause } = turned.entry;
      const { mode } = turned;
      whole.report(entry, {
        message: (say) =>
          `The machine runs in ${mode} since ${say.step(cause)}: its hot gas goes to the other coil and its lines, and the charge gathers where it is to come out. Turn it to cooling first.`,
        severity: 'error',
        root: entry.slot.step,
        concerns: [],
        related: [{ cause, message: `it was turned to ${mode} here` }],
        fixes: [insertBefore('Turn it to cooling first', entry.slot.step, 'start system in cooling')],
      });
    }
  }
}

/** Solenoid valves, which go back to control, are shut before it where they hold the charge back. */
function shutFirst(here: Here, compressor: number): readonly WayOut[] {
  const plant = here.before;
  const valves = plant.graph.parts.filter((part) => part.kind.kind === 'solenoid' && touched(plant.graph, part.index));
  const parts = plant.parts.map((state, index) =>
    valves.some((valve) => valve.index === index) ? { ...state, position: 'shut' as const } : state,
  );
  if (valves.length === 0 || roundTrip({ ...plant, parts }, compressor).comesBack) return [];
  const line = `close ${valves.map((valve) => valve.name).join(', ')}`;
  return [insertBefore(`First: ${line}`, here.step, line)];
}
