import { leaves } from '../course';
import { defineCheck } from '../define';
import { edits } from '../support';

/** Swabs of which nobody can say whether all came out. */
export const swabsNotCounted = defineCheck({
  name: 'swabs-not-counted',
  severity: 'information',
  title: 'Swabs are pulled and nobody counts them',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'Swabs are pulled through lines, and neither does the step say how many go into each line, nor does a later step read or record their number.',
  why: 'A swab that is left in a line ends in the metering device or in the compressor.',
  source: 'swabs in = swabs out: common practice, no source',
  wrong: {
    base: 'split',
    instead: [['  crimp each kept line', '  pull-swab each kept line until clean # <- here\n    crimp each kept line']],
  },
  right: {
    base: 'split',
    instead: [['  crimp each kept line', '  pull-swab each kept line until clean with 4\n    crimp each kept line']],
  },
  plan(whole) {
    const counted = whole.entries.some((entry) => leaves(entry, /^(read|record|check) .*swab/));
    if (counted) return;
    for (const entry of whole.entries) {
      const lines = entry.events.flatMap((event) => (event.type === 'swabs' ? [event.line] : []));
      if (lines.length === 0 || entry.slot.step.values['number'] !== undefined) continue;
      whole.report(entry, {
        message: (say) =>
          `Nobody counts the swabs that are pulled through ${say.parts(lines)}: say how many go in ("with 4") or have them recorded, so that as many come out.`,
        slot: 'what',
        root: 'swabs',
        concerns: lines,
        fixes: [
          {
            title: 'Check the count after it',
            edits: (mend) => edits(mend.insertAfter(entry.slot.step, 'check swab-count')),
          },
        ],
      });
    }
  },
});
