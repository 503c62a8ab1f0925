import { expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

// Behind the new unit's shut valves stands its own charge: no vacuum of "the system" is proved, broken or drawn (handbook 13.1).
it.each<[string, Swap]>([
  ['proved', ['decay-test each open part', 'decay-test system']],
  ['drawn', ['evacuate each open part to 500 micron', 'evacuate system to 500 micron']],
])('a vacuum %s of the system beside a shut charge', (_, swap) => {
  const found = foundIn('lines-pinched-overnight.jobplan', [swap]);
  expect(found.map(({ name }) => name)).toEqual(['system-takes-in-charge']);
});
