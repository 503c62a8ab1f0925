import { defineCheck } from '../define';
import { edits } from '../support';

/** A trap keeps its solvent through a purge of the usual length. */
export const trapNotDrained = defineCheck({
  name: 'trap-not-drained',
  severity: 'warning',
  title: 'A line with a trap is flushed with no drain and no longer purge',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['final-purge-short', 'final-purge-weak', 'wet-with-solvent'],
  meaning:
    'The circuit states a trap or low spot in a line that is flushed; no step drains it, and its purge is shorter than three minutes, or gives less than twice the gas changes that a plain line needs: an open end lets much gas through in a short time, and it passes over what stands in the trap.',
  why: 'Liquid in a trap lets the gas pass over it: the line seems clear while the trap still holds a cup of solvent.',
  source:
    'common practice: drain it, or purge longer (handbook 5.2); twice the changes and twice the usual 30 to 90 s are estimates',
  wrong: {
    base: 'split',
    instead: [
      ['tube 7/8 in ACR\n      length 40 ft', 'tube 7/8 in ACR\n      length 40 ft\n      trap at 2 ft, depth 4 in'],
      [
        'purge each kept line at 100 psig for 60 s into container',
        'purge each kept line at 100 psig for 45 s into container # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    for (const part of whole.plan.graph.parts) {
      if (!part.properties.traps?.length) continue;
      const through = whole.entries.flatMap((entry) =>
        entry.events.flatMap((event) =>
          event.type === 'flows' && event.outlets.some((outlet) => outlet.chain.includes(part.index))
            ? [{ entry, event }]
            : [],
        ),
      );
      const flush = through.find(({ event }) => event.medium === 'solvent');
      if (!flush || whole.entries.some((entry) => entry.after.parts[part.index]!.drained !== null)) continue;
      const purges = through.filter(({ event }) => event.purpose === 'purge');
      if (purges.some(({ event, entry }) => longer(event) || entry.slot.step.values['per'] !== undefined)) continue;
      const at = purges.at(-1) ?? flush;
      whole.report(at.entry, {
        message: (say) =>
          `${say.part(part.index)} has a trap that keeps solvent: drain it, or purge it for at least 3 min, twice the usual time (common practice, no source; handbook 5.2).`,
        slot: 'what',
        concerns: [part.index],
        related: [{ part: part.index, message: 'the trap is stated here' }],
        fixes: [
          {
            title: `Drain ${part.name} at the trap`,
            edits: (mend) => edits(mend.insertBefore(at.entry.slot.step, `drain ${part.name} at trap`)),
          },
        ],
      });
    }
  },
});

/** Twice the longest of the usual purges (30 to 90 s a line, handbook 5.2), s. */
const longPurge = 180;
/** A drying purge, s. */
const dryingPurge = 1800;

/** Twice the ten changes that dry a plain line, for twice the usual time; or the half hour of a drying purge. */
const longer = (flow: { readonly volumeChanges: number | null; readonly time: { readonly low: number } | null }) => {
  const time = flow.time?.low ?? 0;
  return ((flow.volumeChanges ?? 0) >= 20 && time >= longPurge) || time >= dryingPurge;
};
