import type { Check } from './define';

/** What a finding's page shows; a check has one, and so has every fault of the text that is no check. */
export type Page = Pick<
  Check,
  'name' | 'severity' | 'title' | 'meaning' | 'why' | 'source' | 'ground' | 'acceptable' | 'noFix' | 'wrong' | 'right'
>;
