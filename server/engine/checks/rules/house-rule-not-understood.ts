import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { defineCheck } from '../define';
import { houseRules } from '../house-rules';

/** A rule that no check can see. Reads the rule's words: that nobody understands them is what it is about. */
export const houseRuleNotUnderstood = defineCheck({
  name: 'house-rule-not-understood',
  severity: 'warning',
  title: 'A house rule speaks about something that no check can see',
  acceptable: true,
  noFix: 'Only the shop knows what the rule was to be about.',
  reads: 'words',
  ground: 'practice',
  meaning:
    'A house rule is about a subject that is no kind of job, joint, line or step. It is printed, but nothing is held against it.',
  why: 'The shop believes that the rule is kept, and nobody looks.',
  source: 'how house rules are read',
  wrong: { base: 'split', file: 'house-rules shop {\n  every big van needs ladder\n}', plan: 'under shop # <- here' },
  right: { base: 'split', file: 'house-rules shop {\n  every job needs survey\n}', plan: 'under shop' },
  plan(whole) {
    const { bound } = whole.plan.declaration;
    const under = child(bound.block, 'under') ?? bound;
    for (const rule of houseRules(whole.plan)) {
      if (rule.subject) continue;
      whole.reportAt(under, under.spans['rules'] ?? wordSpan(under), {
        message: `"${rule.text}" is about "${String(rule.bound.values['subject'])}", which no check can see: write it over a kind of job (changeout, burnout, A2L job), "brazed joint", "flushed line", "final purge" or a step's word.`,
        root: rule.bound,
        related: [{ bound: rule.bound, file: rule.file, message: 'the rule' }],
      });
    }
  },
});
