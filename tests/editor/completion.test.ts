import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CompletionItem } from 'vscode-languageserver-protocol';
import { Asking, markBehind, samples } from './asking';

let asking: Asking;
beforeAll(async () => {
  asking = await Asking.start();
});
afterAll(() => asking.stop());

const name = 'changeout-split.jobplan';
const split = samples[name] ?? '';

async function complete(text: string): Promise<CompletionItem[]> {
  const found = await asking.complete(name, text);
  expect(asking.client.logged).toEqual([]);
  return found;
}

const labels = (items: readonly CompletionItem[]): string[] => items.map(({ label }) => label);
/** The sample with one line of its steps replaced; the mark is in the line. */
const step = (line: string): string => split.replace('drain suction-line at trap', line);

describe('words of the place', () => {
  test('steps offer verbs with what their form needs', async () => {
    const found = await complete(step('|>'));
    const purge = found.find(({ label }) => label === 'evacuate');
    expect(purge?.textEdit?.newText).toMatch(/^evacuate \$\{1\} to \$\{2:500 micron\}$/);
    expect(JSON.stringify(purge?.documentation)).toContain('Example:');
    expect(labels(found)).not.toContain('altitude');
  });

  test.each([
    ['the file', '|>', 'plan', 'purge'],
    ['a half-typed word', split.replace('  under quillbrook', '  und|>'), 'under', 'site'],
    [
      'a circuit that is not closed',
      `${split.slice(0, split.indexOf('    condenser new'))}    cond|>`,
      'condenser',
      'plan',
    ],
    ['a part', split.replace('      length 48 ft\n      joint', '      |>\n      joint'), 'length', 'joint'],
    ['behind an opening brace', split.replace('outdoors 84 degF', '|>'), 'outdoors', 'altitude'],
  ])('%s', async (_, text, there, notThere) => {
    const found = labels(await complete(text));
    expect(found).toContain(there);
    expect(found).not.toContain(notThere);
  });
});

describe('terms of the word', () => {
  test.each([
    ['parts of the circuit', 'purge |>', ['suction-line', 'each'], ['shop-flush']],
    ['nouns behind "each"', 'purge each |>', ['line', 'kept'], ['at', 'because']],
    ['clauses that are not there yet', 'purge liquid-line at 50 psig |>', ['for', 'into', 'because'], ['at']],
    ['several words of a key', 'connect liquid-line with nit|>', ['with nitrogen at'], ['suction-line']],
    ['a list that goes on', 'flush liquid-line, |>', ['suction-line'], ['into']],
    ['what people usually look for', 'inspect liquid-line for |>', ['low-spots', 'kinks'], ['into', 'because']],
    ['more of what they look for', 'inspect liquid-line for wall, |>', ['low-spots', 'kinks'], ['into', 'because']],
    ['what a joint is made with', 'connect liquid-line with |>', ['torque-wrench', 'new-gaskets'], ['kinks']],
    ['labels of the standard', 'if-fails back to |>', ['close-up', 'rounds'], ['suction-line']],
    ['stock', 'flush liquid-line into |>', ['container', 'rc-30'], ['close-up']],
    ['units of the kind', 'purge liquid-line at 50 |>', ['psig', 'kPa gauge'], ['ft', 's']],
    ['units of a time', 'purge liquid-line for 30 m|>', ['min', 's'], ['psig', 'mm']],
  ])('%s', async (_, line, there, notThere) => {
    const found = labels(await complete(step(line)));
    for (const each of there) expect(found).toContain(each);
    for (const each of notThere) expect(found).not.toContain(each);
  });

  test('the unit of the example comes first', async () => {
    expect(labels(await complete(step('evacuate system to 500 |>')))[0]).toBe('micron');
    expect(labels(await complete(step('purge liquid-line for 30 |>')))[0]).toBe('s');
  });

  test.each([
    ['house rules', split.replace('under quillbrook', 'under |>'), 'quillbrook'],
    ['standards', split.replace('follows line-set-reuse', 'follows |>'), 'line-set-reuse'],
    ['refrigerants', split.replace('R-22 -> R-454B', 'R-22 -> |>'), 'R-454B'],
    ['choices', split.replace('tube 3/8 in ACR', 'tube 3/8 in |>'), 'ACR'],
    ['recovery cylinders', split.replace('recovery 1 x rc-30 empty', 'recovery 1 x |>'), 'rc-125'],
    ['clauses of the step that is changed', split.replace('    at most 5', '    at |>'), 'at most'],
    ['files of the folder', split.replace('use "house.jobplan"', 'use "|>'), 'house.jobplan'],
  ])('%s', async (_, text, there) => {
    expect(labels(await complete(text))).toContain(there);
  });

  test('a record offers the steps without an answer', async () => {
    const record = 'ductless-three-zone.record.jobplan';
    const text = (samples[record] ?? '').replace(/\n}\s*$/, '\n  |>\n}\n');
    const found = labels(await asking.complete(record, text));
    expect(found).toContain('clean-lines');
    expect(found).not.toContain('survey');
  });

  test('nothing is offered in a comment', async () => {
    expect(await complete(step('drain suction-line # at |>'))).toEqual([]);
  });
});

test('accepting a proposal replaces what was typed, and no more', async () => {
  const found = await complete(step('conn|>ect liquid-line'));
  const connect = found.find(({ label }) => label === 'connect');
  const edit = connect?.textEdit;
  const range = edit && 'range' in edit ? edit.range : undefined;
  expect(range && range.end.character - range.start.character).toBe('conn'.length);
});

test('every line of every sample, cut at each token, gives completion without an error', async () => {
  for (const file of [name, 'standard-line-set-reuse.jobplan']) {
    const text = samples[file] ?? '';
    await asking.open(file, text);
    let offset = 0;
    for (const [line, content] of text.split('\n').entries()) {
      for (const { index } of content.matchAll(/ (?=\S)|$/g)) {
        await asking.request('textDocument/completion', file, { position: { line, character: index } });
      }
      offset += content.length + 1;
    }
    expect(offset).toBeGreaterThan(text.length);
  }
  expect(asking.client.logged).toEqual([]);
});

test('the marks of this file are where they should be', () => {
  expect(markBehind('a b', 'a')).toBe('a|> b');
});
