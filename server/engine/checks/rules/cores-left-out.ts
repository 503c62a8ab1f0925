import { defineCheck } from '../define';
import { isDrier } from '../plant';
import { edits } from '../support';
import { provesPart } from '../ways-out';

/** Cores taken out and never put back. */
export const coresLeftOut = defineCheck({
  name: 'cores-left-out',
  severity: 'warning',
  title: 'Cores are taken out and never put back',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The cores of a drier, or of an access valve, are out when the plan ends. Suction cores that come out after a clean-up are meant to.',
  why: 'A liquid drier without cores dries nothing; a valve without its core leaks the charge through its cap.',
  source: 'common practice',
  wrong: {
    base: 'rack',
    instead: [
      ['    close valve-s, valve-d\n', '    remove-cores liquid-drier # <- here\n    close valve-s, valve-d\n'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    for (const part of whole.plan.graph.parts) {
      const state = last.after.parts[part.index]!;
      if (state.cores === 'in' || state.mounted === 'none' || (isDrier(part) && !part.highSide)) continue;
      const entry = [...whole.entries]
        .reverse()
        .find((each) => each.before.parts[part.index]!.cores === 'in' && each.after.parts[part.index]!.cores === 'out');
      if (entry)
        whole.report(entry, {
          message: `The cores of ${part.name} come out here and are never put back: fit new ones before the test.`,
          slot: 'what',
          fixes: [
            {
              title: `Put new cores into ${part.name}`,
              edits: (mend) => {
                const proof = whole.entries
                  .slice(whole.entries.indexOf(entry) + 1)
                  .find((later) => provesPart(later, part.index));
                const line = `replace-cores ${part.name}`;
                return edits(
                  proof ? mend.insertBefore(proof.slot.step, line) : mend.insertAfter(entry.slot.step, line),
                );
              },
            },
          ],
        });
    }
  },
});
