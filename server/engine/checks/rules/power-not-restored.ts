import { defineCheck } from '../define';
import { isCompressor, standsNow } from '../plant';
import { edits } from '../support';

/** A lock-out that nobody takes back. */
export const powerNotRestored = defineCheck({
  name: 'power-not-restored',
  severity: 'warning',
  title: 'The power is locked out and never restored',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning: 'The system is started, or the plan ends, while the power or one machine is still locked out.',
  why: 'The crew stands before a machine that cannot start, or leaves a box or a house without cooling.',
  source: 'common practice',
  wrong: {
    base: 'split',
    instead: [
      ['restore power\n', ''],
      ['start system', 'start system # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const early = whole.entries.find(
      (entry) => entry.before.power !== 'on' && entry.events.some((event) => event.type === 'starts'),
    );
    if (early) {
      whole.report(early, {
        message: (say) =>
          `The system cannot start: the power is ${early.before.power === 'controls' ? 'on for the controls alone' : 'locked out'} since ${say.step(early.before.powerBy)}.`,
        slot: 'what',
        related: [{ cause: early.before.powerBy, message: 'the power went off here' }],
        fixes: [
          {
            title: 'Restore power before this step',
            edits: (mend) => edits(mend.insertBefore(early.slot.step, 'restore power')),
          },
        ],
      });
      return;
    }
    const last = whole.entries.at(-1);
    if (!last || whole.view.walk.start.power !== 'on') return;
    const { graph, power, powerBy, lockedOut } = last.after;
    // A machine that is given up, and nothing in its stead, needs no power.
    if (!graph.parts.some((part) => isCompressor(part) && standsNow(last.after, part.index))) return;
    const cause = power !== 'on' ? powerBy : ([...lockedOut.values()][0] ?? null);
    const entry = cause && whole.entries.find((each) => each.cause === cause);
    if (!entry) return;
    // Controls that have power again stand under the lock-out of the rest.
    const off = whole.entries.filter(({ before, after }) => before.power === 'on' && after.power !== 'on').at(-1);
    whole.report(entry, {
      related: off && off !== entry ? [{ cause: off.cause, message: 'the power goes off here' }] : [],
      message:
        power === 'controls'
          ? 'After this step only the controls have power, and no step restores the rest.'
          : 'What is locked out here is never given its power back.',
      slot: 'what',
      fixes: [
        {
          title: 'Restore power at the end',
          edits: (mend) => edits(mend.insertAfter(last.slot.step, 'restore power')),
        },
      ],
    });
  },
});
