import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { DocumentHighlight, Location, Position, WorkspaceEdit } from 'vscode-languageserver-protocol';
import { Asking, markBehind, marked, samples } from './asking';

let asking: Asking;
beforeAll(async () => {
  asking = await Asking.start();
  for (const name of Object.keys(samples)) await asking.open(name);
});
afterAll(() => asking.stop());

const split = 'changeout-split.jobplan';
const standard = 'standard-line-set-reuse.jobplan';
const record = 'ductless-three-zone.record.jobplan';

const behind = (name: string, before: string): Position => marked(markBehind(samples[name] ?? '', before)).position;
const places = async (method: string, name: string, before: string, rest: object = {}): Promise<string[]> =>
  asking.shown(await asking.request<Location[] | null>(method, name, { position: behind(name, before), ...rest }));

describe('definition', () => {
  test.each([
    [
      'a label of the standard',
      split,
      'change roun',
      [`${standard}: rounds: repeat until clear, at least 2, at most 4 {`],
    ],
    ['a part', split, 'drain suction-l', [`${split}: suction-line kept {`]],
    ['house rules', split, 'under quil', ['house.jobplan: house-rules quillbrook "Quillbrook shop rules" {']],
    [
      'a solvent, two files away',
      split,
      'solvent 2 x shop',
      ['materials.jobplan: solvent shop-flush "Line flush, non-flammable, 12 lb returnable" {'],
    ],
    ['a used file', split, 'use "stand', [`${standard}: use "materials.jobplan"`]],
    ['a label within the standard', standard, 'back to clo', [`${standard}: close-up: phase "Close the circuit" {`]],
    ['what the job must state', standard, 'part to test-p', [`${standard}: needs test-pressure pressure`]],
    [
      'a labelled cylinder',
      'rack-conversion.jobplan',
      '4 inHg into burn',
      ['rack-conversion.jobplan: burnt: recovery 1 x rc-30 empty'],
    ],
    ['the step that a record answers', record, '\n  surve', ['standard-ductless.jobplan: survey: survey system']],
    ['a word of the language', split, 'kind change', []],
  ])('%s', async (_, name, before, expected) => {
    expect(await places('textDocument/definition', name, before)).toEqual(expected);
  });
});

describe('references', () => {
  const all = { context: { includeDeclaration: true } };

  test('of a standard: its jobs', async () => {
    expect(
      await places('textDocument/references', standard, 'standard line-set', {
        context: { includeDeclaration: false },
      }),
    ).toEqual([`${split}: follows line-set-reuse revision 4`]);
  });

  test('of a label: its own file, the jobs that depart from it', async () => {
    expect(await places('textDocument/references', standard, '    evacuat', all)).toEqual([
      `${split}: before evacuate add because "Rain is forecast for both days" {`,
      `${standard}: evacuate: evacuate each open part to 500 micron`,
      `${standard}: if-fails back to evacuate, at most 3 times`,
    ]);
  });

  test('highlights stay in the file and tell where the name is made', async () => {
    const found = await asking.request<DocumentHighlight[]>('textDocument/documentHighlight', standard, {
      position: behind(standard, 'close-'),
    });
    expect(found.map(({ range, kind }) => [asking.line(standard, range.start.line), kind])).toEqual([
      ['close-up: phase "Close the circuit" {', 3],
      ['if-fails back to close-up, at most 3 times', 2],
    ]);
  });
});

describe('rename', () => {
  const rename = async (name: string, before: string, newName: string): Promise<Record<string, string>> =>
    asking.after(
      (await asking.request<WorkspaceEdit | null>('textDocument/rename', name, {
        position: behind(name, before),
        newName,
      })) ?? {},
    );

  test('a label changes in the standard and in the job', async () => {
    const after = await rename(standard, '    evacuat', 'pull-down');
    expect(Object.keys(after).sort()).toEqual([split, standard]);
    expect(after[standard]).toBe(
      (samples[standard] ?? '')
        .replace('evacuate: evacuate', 'pull-down: evacuate')
        .replace('back to evacuate', 'back to pull-down'),
    );
    expect(after[split]).toBe((samples[split] ?? '').replace('before evacuate add', 'before pull-down add'));
  });

  test('a declared thing changes in every file that speaks of it', async () => {
    const after = await rename('house.jobplan', 'house-rules quil', 'house');
    expect(Object.keys(after).sort()).toEqual([
      split,
      'ductless-three-zone.jobplan',
      'house.jobplan',
      'rack-conversion.jobplan',
    ]);
    expect(after[split]).toBe((samples[split] ?? '').replace('under quillbrook', 'under house'));
  });

  test('a part changes in the circuit and in the steps', async () => {
    const name = 'rack-conversion.jobplan';
    const after = await rename(name, 'stub-', 'stub-2');
    expect(after[name]).toBe((samples[name] ?? '').replaceAll('stub-b', 'stub-2'));
  });

  test.each([
    ['a name that is taken', standard, '    evacuat', 'decay', /"decay" is taken/],
    ['no name at all', standard, '    evacuat', '7 days', /begins with a letter/],
  ])('%s is refused', async (_, name, before, newName, why) => {
    await expect(rename(name, before, newName)).rejects.toThrow(why);
  });

  test('a part that is called by its kind has no name to change', async () => {
    expect(
      await asking.request('textDocument/prepareRename', split, { position: behind(split, '    suction-l') }),
    ).toBeNull();
    expect(
      await asking.request('textDocument/prepareRename', standard, { position: behind(standard, '    evacuat') }),
    ).toMatchObject({ placeholder: 'evacuate' });
  });
});
