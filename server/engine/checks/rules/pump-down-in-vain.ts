import { has } from '../course';
import { defineCheck, type Here, type WayOut } from '../define';
import { isCharged, readyCompressors, touched } from '../plant';
import { roundTrip } from '../round-trip';
import { insertBefore, takeOut } from '../ways-out';

/** A pump-down that gathers nothing. */
export const pumpDownInVain = defineCheck({
  name: 'pump-down-in-vain',
  severity: 'warning',
  title: 'A pump-down that gathers nothing',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['refrigerant-not-stated', 'compressor-without-refrigerant'],
  meaning:
    'The plan pumps down while the machine stands still, while its charge is out, or while nothing is shut behind the condenser or receiver, so that what the compressor puts in there runs out again; or nothing is opened after it.',
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
    // The valves of an old unit are no parts of the plan's circuit; one that states none relies on them.
    const valves = plant.graph.parts.some(({ kind }) => kind.shuts === 'hand' || kind.shuts === 'power');
    if (!valves || plant.marks.has('close service-valves')) return;
    if (!compressor || !roundTrip(plant, compressor.index).comesBack) return;
    here.report({
      message: (say) =>
        `Nothing is shut between ${say.part(compressor.index)} and its way back here, so what is pumped in runs out again: shut the liquid side first.`,
      root: here.step,
      fixes: shutFirst(here, compressor.index),
    });
  },
});

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
