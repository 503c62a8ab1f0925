import type { Check } from './define';

/** Figures: what is stated against what is computed, and limits of the work. */
export const figureChecks: readonly Check[] = [];
