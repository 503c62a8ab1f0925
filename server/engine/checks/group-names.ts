import type { Check } from './define';

/** Names, references and revisions: what binding alone cannot see. */
export const nameChecks: readonly Check[] = [];
