import type { Check } from './define';

/** House rules and records. */
export const shopChecks: readonly Check[] = [];
