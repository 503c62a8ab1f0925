import { describe, expect, it } from 'vitest';
import type { Item } from '../../../grammar/tree';
import { exampleText } from '../../../server/engine/checks/bases';
import type { Plant } from '../../../server/engine/circuit/state';
import type { Finding } from '../../../server/engine/finding';
import { Workspace } from '../../../server/engine/workspace';
import { type LeftOne, leftOnes } from '../../harness/leave-one';
import { filesOf, folders, sound, workspaceOf } from '../../harness/plans';

const above = (found: readonly Finding[]): readonly Finding[] =>
  found.filter((finding) => finding.severity !== 'information');
const said = (found: readonly Finding[]): string =>
  found.map(({ name, severity, message }) => `${severity} ${name}: ${message}`).join('\n');

/** What a forgotten part leaves for good, by the state alone: a joint undone, an end closed, a valve as it must not stay, a part off. */
function leavesSomething(was: Plant, is: Plant): boolean {
  return (
    is.ends.some(
      (end, at) =>
        (was.ends[at]!.attached && !end.attached) ||
        (was.ends[at]!.closure === null && end.closure !== null) ||
        (was.ends[at]!.valve === 'open' && end.valve === 'shut'),
    ) ||
    is.parts.some(
      (part, at) =>
        (was.parts[at]!.mounted !== 'none' && part.mounted === 'none') ||
        (was.parts[at]!.heldBy === null && part.heldBy !== null) ||
        (was.parts[at]!.position === 'open' && part.position === 'shut'),
    )
  );
}

interface Case extends LeftOne {
  readonly path: string;
  readonly found: readonly Finding[];
  readonly leaves: boolean;
}

const cases = folders.flatMap((folder): readonly Case[] => {
  const files = filesOf(folder);
  const workspace = workspaceOf(files);
  return sound(files).flatMap((path) => {
    const text = files[path]!;
    if (!/^ {2}steps \{/m.test(text) || /^standard /m.test(text)) return [];
    const { plan, walk } = workspace.snapshot().plans(path)[0]!;
    const own = [...leftOnes(plan, text)].map((left): Case => {
      workspace.setFile(path, left.text);
      const snapshot = workspace.snapshot();
      const is = snapshot.plans(path)[0]!.walk.entries.at(-1)!.after;
      const leaves = leavesSomething(walk.entries.at(-1)!.after, is);
      return { ...left, path, found: above(snapshot.findings(path)), leaves };
    });
    workspace.setFile(path, text);
    return own;
  });
});

/** The name of a part's statement: its label, or its kind where it has none. */
const nameOf = (item: Item): string | undefined =>
  ('label' in item ? item.label?.text.replace(/:$/, '') : undefined) ??
  item.head
    .map((token) => token.text)
    .join('')
    .trim()
    .split(/\s/)[0];

describe('a single part or end forgotten, of every sound plan: one finding, and it names the part', () => {
  it('is tried often', () => {
    expect(cases.length).toBeGreaterThan(300);
    expect(cases.filter((each) => each.leaves).length).toBeGreaterThan(100);
  });
  it.each(['connect', 'install', 'place', 'trim', 'unplug', 'uncap', 'open', 'return', 'restore', 'purge'])(
    '%s',
    (verb) => {
      for (const { path, part, end, found, leaves } of cases.filter((each) => each.verb === verb)) {
        const what = `${path}: ${verb} ${part} ${end ?? ''}\n${said(found)}`;
        expect(found.length, what).toBeLessThanOrEqual(1);
        if (leaves) expect(found.length, what).toBe(1);
        // The message names it, or a related place is its own statement.
        const own = found[0]?.related.some(({ at: { item } }) => nameOf(item) === part) ?? false;
        if (found[0] && !own) expect(found[0].message, what).toContain(part);
      }
    },
  );
});

/** A plan of 200 steps: the usual order with the cleaning, the pulls and the talk that a careful lead writes down. */
const long = (...instead: readonly (readonly [string, string])[]): string => {
  const talk = Array.from({ length: 138 }, (_, at) =>
    at % 3 === 0 ? '  photo gauge' : at % 3 === 1 ? '  notify owner' : '  tag isolator',
  );
  const pulls = Array.from(
    { length: 15 },
    () => '  evacuate each open part to 1500 micron\n  break-vacuum with nitrogen to 2 psig\n',
  );
  return exampleText({
    base: 'split',
    instead: [
      ['  place new equipment', `${talk.join('\n')}\n    place new equipment`],
      ['  evacuate each open part to 500', `${pulls.join('')}  evacuate each open part to 500`],
      ...instead,
    ],
  });
};

describe('a plan of 200 steps with one mistake has one finding', () => {
  const workspace = new Workspace();
  const findings = (text: string): readonly Finding[] => {
    workspace.setFile('long.jobplan', text);
    return above(workspace.snapshot().findings('long.jobplan'));
  };

  it('has 200 steps, and none without a mistake', () => {
    expect(said(findings(long()))).toBe('');
    expect(workspace.snapshot().plans('long.jobplan')[0]!.plan.steps.length).toBeGreaterThanOrEqual(195);
  });

  it.each([
    ['recovery left out', ['recover system to 0 inHg\n', '']],
    ['lock-out left out', ['lock-out power\n', '']],
    ['zero not proved', ['prove-zero system\n', '']],
    ['no container at the flush', ['flush each kept line into container', 'flush each kept line']],
    ['the crimp left in', ['    trim each kept line at far end\n', '']],
    ['no final purge', ['    purge each kept line at 100 psig for 60 s into container\n', '']],
    ['the equipment not placed', ['    place new equipment\n', '']],
    ['the lines not connected', ['    connect each kept line at both ends with nitrogen at 5 cfh\n', '']],
    ['the drier forgotten', ['    install filter-drier with nitrogen at 5 cfh\n', '']],
    ['brazed without nitrogen', ['at both ends with nitrogen at 5 cfh', 'at both ends']],
    ['no test', ['    pressure-test each open part to 450 psig for 30 min\n    release nitrogen outdoors\n', '']],
    ['the nitrogen not released', ['    release nitrogen outdoors\n', '']],
    ['the last pull too shallow', ['to 500 micron', 'to 1000 micron']],
    ['no decay test', ['    decay-test each open part for 15 min, rise at most 300 micron\n', '']],
    ['the valves forgotten', ['    open service-valves\n', '']],
    [
      'the valves opened under test pressure',
      [
        '    release nitrogen outdoors\n',
        '    check ignition-sources within 10 ft\n    open service-valves\n    release nitrogen outdoors\n',
      ],
    ],
    ['power over the vacuum', ['    check ignition-sources', '    restore power\n    check ignition-sources']],
    ['the power not restored', ['    restore power\n', '']],
  ] as const)('%s', (_, edit) => {
    const found = findings(long(edit));
    expect(found.length, said(found)).toBe(1);
  });
});

describe('a slip of the keys in one name has one finding', () => {
  const workspace = new Workspace();
  const text = exampleText({ base: 'split' });
  const steps = text.indexOf('steps {');
  const slips = [...text.matchAll(/\b(system|line|lines|part|equipment|filter-drier)\b(?=[ \n])/g)]
    .filter(({ index }) => index > steps)
    .map(
      ({ index, 0: name }) => [text.slice(0, index + name.length - 1) + text.slice(index + name.length), name] as const,
    )
    .map(([slipped, name]) => [
      slipped
        .split('\n')
        .find((line, k) => line !== text.split('\n')[k])!
        .trim(),
      slipped,
      name,
    ]);

  it('is tried in most steps', () => expect(slips.length).toBeGreaterThan(15));

  it.each(slips)('%s', (_, slipped) => {
    workspace.setFile('slip.jobplan', slipped!);
    const found = above(workspace.snapshot().findings('slip.jobplan'));
    expect(
      found.map(({ name }) => name),
      said(found),
    ).toEqual(['unknown-name']);
  });
});

describe('a letter left out of any word of a plan is one finding at most', () => {
  const workspace = new Workspace();
  const text = exampleText({ base: 'split' });
  const plan = text.indexOf('plan example');
  // A kind that nobody can tell from a shorter one, a unit of another kind, what a unit holds: two findings, each of its own.
  const known = new Set(['holds R-454 6 lb', 'smallest-room 9600 ft', 'nitrogen at 5 cf']);
  const words = [...text.matchAll(/[a-zA-Z][\w-]{2,}/g)].flatMap(({ index, 0: word }) => {
    const slipped = text.slice(0, index + word.length - 1) + text.slice(index + word.length);
    const line = slipped.split('\n')[text.slice(0, index).split('\n').length - 1]!.trim();
    const quoted = text.slice(0, index).split('"').length % 2 === 0;
    return index < plan || quoted || [...known].some((each) => line.includes(each)) ? [] : [[line, slipped] as const];
  });

  it('is tried on every word', () => expect(words.length).toBeGreaterThan(120));

  it.each(words)('%s', (_, slipped) => {
    workspace.setFile('slip.jobplan', slipped);
    const found = above(workspace.snapshot().findings('slip.jobplan'));
    expect(found.length, said(found)).toBeLessThanOrEqual(1);
  });
});
