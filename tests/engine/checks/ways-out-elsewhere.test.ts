import { describe, expect, it } from 'vitest';
import { locate } from '../../../grammar';
import { exampleText } from '../../../server/engine/checks/bases';
import type { Example } from '../../../server/engine/checks/define';
import type { Finding } from '../../../server/engine/finding';
import { Workspace } from '../../../server/engine/workspace';

const path = 'plan.jobplan';

function open(text: string): { readonly workspace: Workspace; readonly found: readonly Finding[] } {
  const workspace = new Workspace();
  workspace.setFile(path, text);
  const all = workspace.snapshot().findings(path);
  return { workspace, found: all.filter(({ severity }) => severity !== 'information') };
}

/** The text with the first way out of a finding applied. */
function mended(text: string, workspace: Workspace, finding: Finding): string {
  const [fix] = finding.fixes;
  const places = locate(workspace.snapshot().file(path)!.tree, new Set(fix!.edits.map((edit) => edit.at.item)));
  return fix!.edits
    .map(({ at, text: by }) => ({ start: places.get(at.item)! + at.from, end: places.get(at.item)! + at.to, by }))
    .sort((a, b) => b.start - a.start)
    .reduce((result, { start, end, by }) => result.slice(0, start) + by + result.slice(end), text);
}

const heats = 'energise controls for 24 h';

/** A machine that nobody opens, topped up by these steps. */
const toppedUp = (...steps: readonly string[]): Example => ({
  base: 'rack',
  plan: 'kind repair',
  steps: ['survey system', 'start system', ...steps, 'record quantities, readings'].join('\n'),
  instead: [
    ['refrigerant R-22 -> R-448A', 'refrigerant R-448A'],
    ['oil mineral -> POE', 'oil POE'],
    ['liquid-drier: filter-drier new', 'liquid-drier: filter-drier kept'],
    ['txv-1: expansion-valve new', 'txv-1: expansion-valve kept'],
    ['txv-2: expansion-valve new', 'txv-2: expansion-valve kept'],
    ['recover-charge 60 lb', 'recover-charge 46 lb'],
  ],
});

// Mistakes beside the one of a check's own page: each is one finding at its step, and its way out leaves nothing.
describe('a mistake that the page does not show', () => {
  it.each([
    [
      'the heater after the start (handbook 13.1)',
      'heater-too-short',
      heats,
      {
        base: 'rack',
        instead: [
          [`    ${heats}\n`, ''],
          ['start system\n', `start system\n    ${heats}\n`],
        ],
      },
    ],
    [
      'the heater of a compressor that is not in yet (handbook 13.1)',
      'heater-too-short',
      'start system',
      {
        base: 'rack',
        instead: [
          ['oil mineral -> POE', 'oil POE'],
          ['comp: compressor kept', 'comp: compressor reused'],
          [`    ${heats}\n`, ''],
          [
            'cut-out liquid-drier\n',
            `cut-out liquid-drier, comp\n    ${heats}\n    install comp with nitrogen at 5 cfh\n`,
          ],
        ],
      },
    ],
    [
      'a safety that is put back after the start (handbook 13.5)',
      'not-put-back',
      'restore relief-valves',
      {
        base: 'rack',
        instead: [
          ['close valve-s, valve-d\n', 'bypass relief-valves\n    close valve-s, valve-d\n'],
          ['start system\n', 'start system\n    restore relief-valves\n'],
        ],
      },
    ],
    [
      'water that is shut under a machine that runs (common practice, no source)',
      'not-put-back',
      'close water-valves',
      {
        base: 'rack',
        instead: [
          ['lock-out power\n', 'close water-valves\n    lock-out power\n'],
          ['start system\n', 'open water-valves\n    start system\n'],
        ],
      },
    ],
    [
      'a pump-down into the low side (handbook 13.5)',
      'pump-down-in-vain',
      'pump-down system into evap-1 to 0 psig',
      {
        base: 'rack',
        instead: [
          ['lock-out power\n', 'close sol-1, sol-2\n    pump-down system into evap-1 to 0 psig\n    lock-out power\n'],
        ],
      },
    ],
    [
      'a pump-down while the machine heats (handbook 13.5)',
      'pump-down-in-vain',
      'pump-down system to 0 psig',
      {
        base: 'heat-pump',
        instead: [
          [
            'lock-out power\n',
            'start system in heating\n    close service-valves\n    pump-down system to 0 psig\n    lock-out power\n',
          ],
        ],
      },
    ],
    [
      'gas for a machine that leaks (40 CFR 84.106)',
      'leak-check-missing',
      'charge system with R-448A 5 lb',
      toppedUp(
        'charge system with R-448A 5 lb',
        'adjust charge with R-448A to level after 15 min',
        'leak-check system',
      ),
    ],
    [
      'gas for a machine that leaks, as a trim (40 CFR 84.106)',
      'leak-check-missing',
      'adjust charge with R-448A to level after 15 min, at most 55 lb',
      toppedUp('adjust charge with R-448A to level after 15 min, at most 55 lb', 'leak-check system'),
    ],
  ] as readonly (readonly [string, string, string, Example])[])('%s', (_, name, step, example) => {
    const text = exampleText(example);
    const { workspace, found } = open(text);
    expect(found.map((each) => each.name)).toEqual([name]);
    const [{ at }] = found as [Finding];
    const start = locate(workspace.snapshot().file(path)!.tree, new Set([at.item])).get(at.item)!;
    expect(text.slice(start).trimStart().slice(0, step.length)).toBe(step);
    expect(open(mended(text, workspace, found[0]!)).found.map((each) => each.name)).toEqual([]);
  });
});
