import { expect, test } from 'vitest';
import { differentLines } from '../../server/command/difference';

test.each([
  ['a b c', 'a b c', '', ''],
  ['a b c', 'a x c', 'b', 'x'],
  ['a b', 'a close b open close', '', 'close open close'],
  ['close a', 'close b close a', '', 'b close'],
  ['', 'a', '', 'a'],
  ['a', '', 'a', ''],
])('%j to %j', (before, now, gone, come) => {
  const lines = (text: string) => text.split(' ').filter(Boolean);
  const found = differentLines(lines(before), lines(now));
  expect([found.gone.join(' '), [...found.come].sort().join(' ')]).toEqual([gone, lines(come).sort().join(' ')]);
});
