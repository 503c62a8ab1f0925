import type { Check } from './define';
import { coilFlushedInPlace } from './rules/coil-flushed-in-place';
import { finalPurgeShort } from './rules/final-purge-short';
import { finalPurgeWeak } from './rules/final-purge-weak';
import { flushBeforeRecovery } from './rules/flush-before-recovery';
import { flushNoContainer } from './rules/flush-no-container';
import { flushNoOutlet } from './rules/flush-no-outlet';
import { flushNotPurged } from './rules/flush-not-purged';
import { flushPathForks } from './rules/flush-path-forks';
import { flushUninspected } from './rules/flush-uninspected';
import { hoseNotRestrained } from './rules/hose-not-restrained';
import { lineNotDisconnected } from './rules/line-not-disconnected';
import { lineNotFlushed } from './rules/line-not-flushed';
import { neverFlush } from './rules/never-flush';
import { regulatorDoesNotSuit } from './rules/regulator-does-not-suit';
import { solventNotNamed } from './rules/solvent-not-named';
import { swabBlocked } from './rules/swab-blocked';
import { swabsNotCounted } from './rules/swabs-not-counted';
import { trapNotDrained } from './rules/trap-not-drained';
import { wetWithSolvent } from './rules/wet-with-solvent';
import { wrongTestGas } from './rules/wrong-test-gas';

/** What solvent and nitrogen pass through. */
export const flowChecks: readonly Check[] = [
  flushBeforeRecovery,
  lineNotDisconnected,
  flushNoOutlet,
  flushNoContainer,
  solventNotNamed,
  hoseNotRestrained,
  neverFlush,
  coilFlushedInPlace,
  flushPathForks,
  flushUninspected,
  swabBlocked,
  swabsNotCounted,
  trapNotDrained,
  lineNotFlushed,
  flushNotPurged,
  finalPurgeWeak,
  finalPurgeShort,
  wetWithSolvent,
  wrongTestGas,
  regulatorDoesNotSuit,
];
