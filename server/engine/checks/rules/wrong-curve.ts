import { defineCheck } from '../define';
import { newFacts, systemSpot } from '../plant-facts';
import { amount } from '../support';

/** From this glide on the two curves lie further apart than a superheat is set by, K (common practice, no source). */
const tellingGlide = 2;

/** A target read off the wrong curve of a blend. */
export const wrongCurve = defineCheck({
  name: 'wrong-curve',
  severity: 'error',
  title: 'A target is counted from the wrong curve',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The plan gives the evaporating temperature by the bubble curve, or the condensing temperature by the dew curve, of a blend with glide, and sets superheat or subcooling from it.',
  why: 'Superheat counts from dew and subcooling from bubble; from the other curve it is wrong by the whole glide, and liquid reaches the compressor.',
  source: 'common practice with blends (handbook 3.4 and 9.3)',
  wrong: {
    base: 'rack',
    instead: [['superheat 8..12 Δ°F', 'evaporating 20 degF bubble # <- here\n    superheat 8..12 Δ°F']],
  },
  right: { base: 'rack', instead: [['superheat 8..12 Δ°F', 'evaporating 20 degF dew\n    superheat 8..12 Δ°F']] },
  plan(whole) {
    const { plan } = whole;
    const facts = newFacts(plan);
    if (!facts || facts.glide < tellingGlide) return;
    for (const [word, wrong, right, target] of [
      ['evaporating', 'bubble', 'dew', plan.system.superheat],
      ['condensing', 'dew', 'bubble', plan.system.subcooling],
    ] as const) {
      const [bound, span] = systemSpot(plan, word, 'at');
      if (bound.word?.word !== word || bound.values['at'] !== wrong || !target) continue;
      whole.reportAt(bound, span, {
        message: `${target === plan.system.superheat ? 'Superheat' : 'Subcooling'} counts from ${right}, and ${facts.name} has ${amount(plan, 'temperature-difference', facts.glide)} of glide: give the ${word} temperature by the ${right} curve.`,
        fixes: [
          {
            title: `Write "${right}"`,
            edits: () => [{ at: { file: plan.file, item: bound.item, ...span }, text: right }],
          },
        ],
      });
    }
  },
});
