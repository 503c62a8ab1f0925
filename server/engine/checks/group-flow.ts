import type { Check } from './define';

/** What solvent and nitrogen pass through. */
export const flowChecks: readonly Check[] = [];
