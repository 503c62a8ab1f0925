import type { Check } from './define';

/** Whether materials, tools, people and equipment suit the refrigerant and each other. */
export const suitabilityChecks: readonly Check[] = [];
