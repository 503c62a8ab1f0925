import type { Check } from './define';
import { openUnderPressure } from './rules/open-under-pressure';

/** Every check. A new check is one file and its line here. */
export const checks: readonly Check[] = [openUnderPressure];
