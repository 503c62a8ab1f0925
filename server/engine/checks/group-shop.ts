import type { Check } from './define';
import { houseRuleBroken } from './rules/house-rule-broken';
import { houseRuleNotUnderstood } from './rules/house-rule-not-understood';
import { readingFails } from './rules/reading-fails';
import { recordGap } from './rules/record-gap';
import { recordOfNothing } from './rules/record-of-nothing';
import { recordOfOtherRevision } from './rules/record-of-other-revision';

/** House rules and records. */
export const shopChecks: readonly Check[] = [
  houseRuleBroken,
  houseRuleNotUnderstood,
  recordOfNothing,
  recordOfOtherRevision,
  recordGap,
  readingFails,
];
