import { nearEnd } from '../../circuit/graph';
import type { Plant } from '../../circuit/state';
import type { Flow } from '../../steps/events';
import { type Entry, roundsOf } from '../../walk/walk';
import { defineCheck } from '../define';
import { repeatAround } from '../plant';
import { edits, inOwn } from '../support';

/** One flush on top of another with no purge between them. */
export const flushNotPurged = defineCheck({
  name: 'flush-not-purged',
  severity: 'warning',
  title: 'A flush pass with no purge before the next',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['never-flush', 'line-not-disconnected', 'coil-flushed-in-place', 'flush-no-outlet'],
  meaning:
    'Solvent goes into a line while the solvent of the pass before is still in it, loaded with oil. Once each way, forward and back, is one pass: it is purged when both are through.',
  why: 'The dirty solvent is only thinned, not taken out; more passes then clean less than they seem to.',
  source:
    'common practice (handbook 5.2: solvent in, chased with nitrogen, repeated; 13.4: both directions, then the purge)',
  wrong: {
    base: 'split',
    instead: [
      ['flush each kept line into container\n', 'flush each kept line into container # <- here\n'],
      ['    purge each kept line at 50 psig for 15 s into container\n', ''],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    // The walk goes once through rounds that may be one: the next one would find the solvent of this one.
    for (const entry of whole.entries) {
      const repeat = repeatAround(entry);
      if (!repeat || roundsOf(repeat).least > 1 || roundsOf(repeat).most < 2) continue;
      const same = whole.entries.filter((each) => repeatAround(each) === repeat);
      const left = entry.events.flatMap((event) =>
        event.type === 'flows' && event.medium === 'solvent' && !same.some((each) => purges(each, event.line))
          ? [event.line]
          : [],
      );
      if (left.length === 0) continue;
      whole.report(entry, {
        message: (say) =>
          `No round purges ${say.parts(left)}: a second one sends its solvent in on top of the first. Purge in each round.`,
        slot: 'what',
        concerns: left,
      });
    }
  },
  step(here) {
    const over = here.events('flows').filter((flow) => flow.medium === 'solvent' && !turnsRound(flow, here.before));
    const [first] = over;
    if (!first) return;
    here.report({
      message: (say) =>
        `${say.parts(over.map((flow) => flow.line))} still ${over.length > 1 ? 'hold' : 'holds'} the solvent of the last pass: purge after each flush.`,
      slot: 'what',
      concerns: over.map((flow) => flow.line),
      related: [{ cause: here.before.parts[first.line]!.unpurged?.by ?? null, message: 'it came in here' }],
      fixes: [
        {
          title: 'Purge after each pass',
          edits: (mend) => {
            const what = here.step.text.replace(/^(\S+:\s*)?\S+\s+/, '').split(/\s+(into|for|at|with)\s/)[0];
            const line = `purge ${what} at ${inOwn(here.plan, '50 psig', '350 kPa gauge')} for 15 s into container`;
            const { unpurged } = here.before.parts[first.line]!;
            const by = mend.view.walk.entries.find((entry) => entry.cause === unpurged?.by);
            // The pass before may be another step's; in a repeat it is this one's own.
            return edits(
              by?.slot.step === here.step ? mend.insertAfter(here.step, line) : mend.insertBefore(here.step, line),
            );
          },
        },
      ],
    });
  },
});

/** Whether a flush meets no solvent, or goes the other way through that of the pass before: it drives that out at the other end. */
function turnsRound(flow: Flow, before: Plant): boolean {
  const { unpurged } = before.parts[flow.line]!;
  const from = flow.inlet === nearEnd(before.graph.parts[flow.line]!) ? 'near end' : 'far end';
  return unpurged === null || (unpurged.from !== 'both ends' && unpurged.from !== from);
}

const purges = (entry: Entry, line: number): boolean =>
  entry.events.some(
    (event) =>
      event.type === 'flows' &&
      event.medium === 'nitrogen' &&
      (event.line === line || event.outlets.some((outlet) => outlet.chain.includes(line))),
  );
