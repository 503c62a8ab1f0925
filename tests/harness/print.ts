import { folders } from './plans';
import { rateOf } from './rate';

/** Prints the catch rate over all sound plans: `npm run mutants`. */
const rate = rateOf(folders);
const share = (part: number, whole: number): string =>
  `${part} of ${whole} (${((100 * part) / Math.max(1, whole)).toFixed(1)} %)`;
console.log(`harmful edits found: ${share(rate.found, rate.harmful)}`);
for (const { plan, what } of rate.survivors) console.log(`  not found: ${plan}: ${what}`);
console.log(`harmless edits left in peace: ${share(rate.silent, rate.harmless)}`);
for (const { mutant, names } of rate.alarms)
  console.log(`  alarm: ${mutant.plan}: ${mutant.what} -> ${names.join(', ')}`);
