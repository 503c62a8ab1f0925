import { expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

const bypass = '      bypass transducers, relief-valves, low-pressure-switch\n';
const low = '      test-low: pressure-test low-side, high-side to 200 psig for 60 min\n';
const charge =
  '    charge system with R-410A 2 lb 3 oz as liquid {\n      note "What was weighed out of room 3, and what the log says had leaked"\n    }\n';

// Steps that come when what they are for is past, or once more than there is something for them (handbook 4.3, 7.1, 9.1).
it.each<[string, string, readonly Swap[], string]>([
  [
    'instruments isolated for the last of two tests',
    'rack-conversion.jobplan',
    [
      [bypass, ''],
      [low, low + bypass],
    ],
    'instruments-under-test',
  ],
  [
    'one more oil change after the rounds, with the refrigerant gone',
    'double-riser-flushed.jobplan',
    [['      prove-zero system\n', '      prove-zero system\n      change-oil compressor to POE 3 qt, leaving 35 %\n']],
    'oil-rounds-late',
  ],
  [
    'the charge of a section weighed in twice before the start',
    'vrf-branch-leak.jobplan',
    [['    untag liquid-shut-3, vapour-shut-3\n', `${charge}    untag liquid-shut-3, vapour-shut-3\n`]],
    'charged-twice',
  ],
  [
    'valves of a drier that is not in yet',
    'burnout-by-standard.jobplan',
    [['    drain suction-line at trap\n', '    drain suction-line at trap\n    open valves of suction-drier\n']],
    'no-effect',
  ],
])('%s', (_, plan, swaps, name) => {
  expect(foundIn(plan, swaps).map((finding) => finding.name)).toEqual([name]);
});
