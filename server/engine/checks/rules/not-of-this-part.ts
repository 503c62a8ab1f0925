import type { Part } from '../../circuit/graph';
import { type Kind, kinds } from '../../circuit/kinds';
import { wordSpan } from '../../plan/gather';
import { defineCheck } from '../define';
import { listed } from '../listed';

/** A part that is described like a part of another kind: one of the two is a slip, and everything else follows the kind. */
export const notOfThisPart = defineCheck({
  name: 'not-of-this-part',
  severity: 'warning',
  title: 'A part is described like one of another kind',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    "The part's block states what no part of its kind has: a trap or a rise of a drier, a core of a line, the oil of a coil.",
  why: 'Whether a part may be flushed, what it holds and what is asked of it follow from its kind; a line that is stated as a drier is passed by, and a drier stated as a line is flushed.',
  source: 'what the parts are: common knowledge of the trade, no source',
  wrong: {
    base: 'split',
    instead: [['suction-line kept {', 'suction: filter-drier new { # <- here']],
  },
  right: { base: 'split' },
  plan({ plan, reportAt }) {
    for (const part of plan.graph.parts) {
      const bound = plan.partStatements[part.index];
      const odd = (bound?.block ?? []).filter(({ word }) => word?.ofParts && !word.ofParts.includes(part.kind.group));
      if (!bound || odd.length === 0) continue;
      const words = [...new Set(odd.map(({ word }) => word!.word))];
      const has = kinds.filter((kind) => odd.every(({ word }) => word!.ofParts!.includes(kind.group)));
      const meant = likeliest(part, has);
      reportAt(bound, wordSpan(bound), {
        message: `${part.name} is a ${part.kind.kind}, and no ${part.kind.kind} has ${listed(words.map((word) => `\`${word}\``))}: name its kind${meant ? `, perhaps ${meant.kind}` : ''}, or take that out.`,
        concerns: [part.index],
        related: odd.map((each) => ({ bound: each, span: wordSpan(each), message: 'what it does not have' })),
        fixes: meant
          ? [
              {
                title: `Make it a ${meant.kind}`,
                edits: (mend) => [mend.change(bound, wordSpan(bound), meant.kind)],
              },
            ]
          : [],
      });
    }
  },
});

/** Of the kinds that have all that is stated, the one whose name has most in common with the part's own. */
function likeliest(part: Part, has: readonly Kind[]): Kind | undefined {
  const own = part.name.split('-');
  const shared = (kind: Kind): number => kind.kind.split('-').filter((word) => own.includes(word)).length;
  return [...has].sort((a, b) => shared(b) - shared(a))[0];
}
