import { checks } from '../../construct';
import type { StepLine } from '../../document';
import type { Here } from '../here';
import { unhyphened } from '../words';
import { addOilLines, adjustLines, changeOilLines, chargeLines, labelLines, startLines } from './charge';
import { authorLines } from './expected';
import { flushLines, purgeLines } from './flow';
import { breakVacuumLines, pressureTestLines, releaseLines } from './pressure';
import { acidLines, blockReadings, readLines, sampleLines, weighLines } from './readings';
import { lockOutLines, proveZeroLines, recoverLines } from './recovery';
import { decayLines, evacuateLines } from './vacuum';

/** What each verb prints under its sentence: figures, blanks with their limits. A verb that is not here has its sentence. */
const byVerb: Readonly<Record<string, (here: Here) => readonly StepLine[]>> = {
  'acid-test': acidLines,
  'add-oil': addOilLines,
  adjust: adjustLines,
  'back-flush': flushLines,
  'blow-out': purgeLines,
  'break-vacuum': breakVacuumLines,
  'change-oil': changeOilLines,
  charge: chargeLines,
  'decay-test': decayLines,
  evacuate: evacuateLines,
  flush: flushLines,
  inspect: (here) => {
    const what = here.value<readonly string[]>('for') ?? [];
    return what.length > 0 ? [checks('Looked for', ...what.map((each) => unhyphened(each, here.sheet.isName)))] : [];
  },
  label: labelLines,
  'lock-out': lockOutLines,
  'pressure-test': pressureTestLines,
  'prove-zero': proveZeroLines,
  purge: purgeLines,
  read: readLines,
  recover: recoverLines,
  release: releaseLines,
  sample: sampleLines,
  start: startLines,
  weigh: weighLines,
};

export const linesOf = (here: Here): readonly StepLine[] => [
  ...(byVerb[here.step.word.word]?.(here) ?? []),
  ...blockReadings(here),
  ...authorLines(here),
];
