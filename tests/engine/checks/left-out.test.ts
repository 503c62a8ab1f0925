import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

function found(from: string, by: string, base: 'split' | 'rack' = 'split'): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('a.jobplan', exampleText({ base, instead: [[from, by]] }));
  return workspace
    .snapshot()
    .findings('a.jobplan')
    .filter(({ severity }) => severity !== 'information')
    .map(({ name, message }) => `${name}: ${message}`);
}

// A line that somebody reads aloud is done as far as it is understood: what nobody understands is told, once.
describe('what a line says too much is left out, and the step is done', () => {
  it.each([
    ['lock-out power', 'lock-out power at the panel', /^unknown-name: "at the panel" cannot stand here/],
    ['place new equipment', 'place new equipment with care', /^unknown-name: "with care" cannot stand here/],
    ['open service-valves', 'open service-valves quickly', /^unknown-name: "quickly"/],
    ['trim each kept line', 'trim each really kept line', /^unknown-name: "really"/],
    ['restore power', 'restore power length 3 ft', /^unexpected-term: .*"length 3 ft"/],
    ['restore power', 'restore power (at last)', /^unreadable-text: Brackets/],
    ['  flush each kept line', '  flush each kept line really', /^unknown-name: "really"/],
    ['at both ends with nitrogen', 'at both really ends with nitrogen', /^unexpected-term: "really"/],
    ['rise at most 300 micron', 'rise really at most 300 micron', /^unexpected-term: "really"/],
    ['to 450 psig for 30 min', 'to 450 really psig for 30 min', /^unexpected-term: "really"|^unknown-unit: `really`/],
  ] as const)('%s: %s', (from, by, expected) => {
    const all = found(from, by);
    expect(all[0]).toMatch(expected);
    expect(all).toHaveLength(1);
  });
});

describe('a figure that cannot be read is not also missing', () => {
  it.each([
    ['at 100 psig for 60 s', 'at 100 bananas for 60 s', 'unknown-unit'],
    ['with nitrogen at 5 cfh\ninstall', 'with nitrogen at 5\ninstall', 'no-unit'],
    ['leaving 1/8 in', 'leaving 1/8', 'no-unit'],
    ['for 15 min, rise', 'for 15 kg, rise', 'wrong-kind'],
    ['rise at most 300 micron', 'rise at most some', 'wrong-term'],
    ['after 15 min', 'after 15 bananas', 'unknown-unit'],
  ] as const)('%s: %s', (from, by, name) => {
    const all = found(from.replace('\n', '\n    '), by.replace('\n', '\n    '));
    expect(all.map((each) => each.split(':')[0])).toEqual([name]);
  });

  it('nor is a refrigerant that nobody knows another one', () => {
    const all = found('charge system\n', 'charge system with care\n');
    expect(all.map((each) => each.split(':')[0])).toEqual(['unknown-name']);
  });
});

it('two parts with no comma between are both meant', () => {
  const all = found('close valve-s, valve-d', 'close valve-s valve-d', 'rack');
  expect(all).toEqual([
    'unknown-name: "valve-s valve-d" is no name: between two parts stands a comma, "valve-s, valve-d".',
  ]);
});

it('half a figure is none', () => {
  expect(found('to 500 micron', 'to 1e3 micron')[0]).toMatch(/^not-a-number/);
});

// A lead who is told that a word cannot stand here asks where it can.
describe('what cannot stand here is told where it can', () => {
  it.each([
    [
      'liquid-line kept {',
      'liquid-line kept length 40 ft {',
      /"length 40 ft" .* in the block: liquid-line … \{ length /,
    ],
    [
      'test-pressure 450 psig',
      'test-pressure 450 psig altitude 9 ft',
      /"altitude 9 ft" .* belongs in a site block: altitude /,
    ],
    ['outdoors 80 degF', 'outdoors 80 degF altitude 9 ft', /"altitude 9 ft" .* a line of its own: altitude /],
    [
      'to 500 micron',
      'to 500 micron, rise at most 3 Pa',
      /"rise at most 3 Pa" .* goes with "decay-test", as in: decay-test /,
    ],
    [
      'flush each kept line into container',
      'flush each kept line into container 3 ft',
      /"3 ft" .* "flush" takes .*into …/,
    ],
  ] as const)('%s: %s', (from, by, message) => {
    const all = found(from, by);
    expect(all[0]).toMatch(message);
    expect(all).toHaveLength(1);
  });
});
