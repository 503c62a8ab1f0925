import { expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

/** One or more lines of the steps, moved in front of another. */
const moved = (lines: string, before: string): readonly Swap[] => [
  [lines, ''],
  [before, lines + before],
];

// Shut the liquid side, draw in, stop, shut the suction side, lock out, and only then recover what is left (handbook 13.5).
it.each<[string, string, readonly Swap[], string]>([
  [
    'the suction side is shut before the pump-down',
    'walk-in-remote-condenser.jobplan',
    moved('    close back-valve\n', '    pump-down system into receiver to 0 psig\n'),
    'pump-down-in-vain',
  ],
  [
    'the suction side stands open at the recovery of what is behind it',
    'ductless-line-moved.jobplan',
    moved('    close vapour-stop\n', '    disconnect head at both ends\n'),
    'recovery-beyond-section',
  ],
  [
    'the machine runs on after its pump-down, and the recovery draws on it',
    'dry-lines-heat-pump.jobplan',
    moved('    stop system\n    lock-out power\n', '    prove-zero system\n'),
    'recovered-while-running',
  ],
  [
    'solenoid and regulator of a machine that was stopped are held open only after the recovery',
    'freezer-regulator-renewed.jobplan',
    moved('    lock-out power\n    open liquid-solenoid by magnet\n    open epr by stem\n', '    weigh cylinder\n'),
    'section-not-recovered',
  ],
])('%s', (_, plan, swaps, name) => {
  expect(foundIn(plan, swaps).map((finding) => finding.name)).toEqual([name]);
});
