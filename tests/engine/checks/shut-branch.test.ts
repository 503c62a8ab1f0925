import { expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

const plan = 'vrf-branch-leak.jobplan';
const later =
  '    untag liquid-shut-3, vapour-shut-3\n    return eev-3 to control\n    open liquid-shut-3, vapour-shut-3\n';
const started = '    start system in heating\n';

// The room that was shut off and emptied is opened before the machine runs: it draws on a branch under vacuum otherwise (handbook 13.5).
it.each<[string, readonly Swap[]]>([
  [
    'opened behind the start',
    [
      [later, ''],
      [started, started + later],
    ],
  ],
])('a branch %s', (_, swaps) => {
  expect(foundIn(plan, swaps).map(({ name }) => name)).toContain('started-against-shut-valve');
});

it('a branch opened before the start', () => {
  expect(foundIn(plan, []).map(({ name }) => name)).not.toContain('started-against-shut-valve');
});
