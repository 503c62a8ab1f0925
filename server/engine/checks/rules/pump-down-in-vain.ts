import { defineCheck } from '../define';
import { readyCompressors } from '../plant';
import { roundTrip } from '../round-trip';

/** A pump-down that gathers nothing. */
export const pumpDownInVain = defineCheck({
  name: 'pump-down-in-vain',
  severity: 'warning',
  title: 'A pump-down that gathers nothing',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['compressor-without-refrigerant'],
  meaning:
    'The plan pumps down while the machine stands still, or while nothing is shut behind the condenser or receiver: what the compressor puts in there runs out again.',
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
  step(here) {
    if (here.events('pumps-down').length === 0) return;
    const plant = here.before;
    if (!plant.running) {
      here.report({ message: 'The machine stands still here, and draws nothing in: start it first.', root: here.step });
      return;
    }
    // The valves of an old unit are no parts of the plan's circuit; one that states none relies on them.
    const valves = plant.graph.parts.some(({ kind }) => kind.shuts === 'hand' || kind.shuts === 'power');
    if (!valves || plant.marks.has('close service-valves')) return;
    const [compressor] = readyCompressors(plant);
    if (!compressor || !roundTrip(plant, compressor.index).comesBack) return;
    here.report({
      message: (say) =>
        `Nothing is shut between ${say.part(compressor.index)} and its way back here, so what is pumped in runs out again: shut the liquid side first.`,
      root: here.step,
    });
  },
});
