import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { furtherRounds } from '../../../server/engine/takeoff/rounds';
import { Workspace } from '../../../server/engine/workspace';

type Instead = readonly (readonly [string, string])[];

/** The split plan's usual order with its rounds changed: what is found above information, and the plan's walk. */
function looked(instead: Instead) {
  const workspace = new Workspace();
  workspace.setFile('rounds.jobplan', exampleText({ base: 'split', instead }));
  const snapshot = workspace.snapshot();
  const found = snapshot.findings('rounds.jobplan').filter((finding) => finding.severity !== 'information');
  return { found, walk: snapshot.plans('rounds.jobplan')[0]!.walk };
}

const rounds = (least: number, most: number) =>
  ['at least 2, at most 4', `at least ${least}, at most ${most}`] as const;
const lastOfRound = (lines: string) =>
  ['for 15 s into container\n', `for 15 s into container\n${lines.replace(/^/gm, '    ')}\n`] as const;
const afterRounds = (line: string) =>
  ['  purge each kept line at 100 psig', `  ${line}\n  purge each kept line at 100 psig`] as const;

// What a crew meets in the round behind the last that a plan must have: handbook 5.2 and 13.1, the same rules in every round.
describe('a further round that suits', () => {
  it.each([
    ['one round at the least', [rounds(1, 4)]],
    ['two at the least', [rounds(2, 4)]],
    ['as many at the least as at the most', [rounds(3, 3)]],
    [
      'a cap put on for the night that the round itself takes off',
      [rounds(1, 3), lastOfRound('cap each kept line at both ends\nuncap each kept line at both ends')],
    ],
  ] as const)('%s', (_, instead) => {
    expect(looked(instead).found.map(({ name, message }) => `${name}: ${message}`)).toEqual([]);
  });
});

describe('a further round that does not suit', () => {
  it.each([
    [
      'the lines stand capped when they are to be flushed once more',
      [rounds(1, 4), lastOfRound('cap each kept line at both ends'), afterRounds('uncap each kept line at both ends')],
      /further round.*flush each kept line into container.*cannot get out/,
    ],
    [
      'the valves of the charged unit stand open when the pump is put on once more',
      [
        ['  evacuate each open part', '  repeat until clear, at least 1, at most 3 {\n    evacuate each open part'],
        ['  open service-valves', '    open service-valves\n  }'],
      ],
      /further round.*evacuate each open part to 500 micron.* still hold/,
    ],
  ] as const)('%s', (_, instead, expected) => {
    expect(looked(instead).found.map(({ name, message }) => `${name}: ${message}`)).toEqual(
      expect.arrayContaining([expect.stringMatching(expected)]),
    );
  });

  it('is told at the head of the repeat, once', () => {
    const { found } = looked([
      rounds(1, 4),
      lastOfRound('cap each kept line at both ends'),
      afterRounds('uncap each kept line at both ends'),
    ]);
    expect(
      found.map(({ name, at }) => [
        name,
        at.item.head
          .map((token) => token.text)
          .join('')
          .trim()
          .split(' ')[0],
      ]),
    ).toEqual([['next-round-unsafe', 'repeat']]);
  });
});

describe('the rounds that the walk does not hold', () => {
  it.each([
    [1, 1, null],
    [1, 4, { times: 3, steps: 2 }],
    [2, 4, { times: 2, steps: 2 }],
    [3, 3, { times: 1, steps: 2 }],
    [2, 2, null],
  ] as const)('of at least %i and at most %i', (least, most, expected) => {
    const { walk } = looked([rounds(least, most)]);
    const [further] = furtherRounds(walk.entries);
    expect(further ? { times: further.times, steps: further.from - further.to + 1 } : null).toEqual(expected);
  });
});
