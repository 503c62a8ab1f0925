import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  CodeAction,
  CodeLens,
  DocumentLink,
  DocumentSymbol,
  FoldingRange,
  InlayHint,
  Position,
  SelectionRange,
  SemanticTokens,
  SemanticTokensDelta,
  SignatureHelp,
  TextEdit,
  WorkspaceSymbol,
} from 'vscode-languageserver-protocol';
import { tokenTypes } from '../../server/editor/highlight/tokens';
import type { Sheet, StateAnswer } from '../../server/editor/protocol';
import { Asking, applied, markBehind, marked, samples, uriOf } from './asking';

let asking: Asking;
beforeAll(async () => {
  asking = await Asking.start(samples, { pages: true });
});
afterAll(() => asking.stop());

const split = 'changeout-split.jobplan';
const standard = 'standard-line-set-reuse.jobplan';
const text = samples[split] ?? '';
const behind = (name: string, before: string): Position => marked(markBehind(samples[name] ?? '', before)).position;

/** Each capability that the server announces, with the test here or beside that asks it. */
const asked: Readonly<Record<string, string>> = {
  positionEncoding: 'positions.test.ts',
  textDocumentSync: 'frame.test.ts',
  workspace: 'frame.test.ts',
  hoverProvider: 'hover.test.ts',
  completionProvider: 'completion.test.ts',
  definitionProvider: 'names.test.ts',
  referencesProvider: 'names.test.ts',
  documentHighlightProvider: 'names.test.ts',
  renameProvider: 'names.test.ts',
  codeActionProvider: 'code actions',
  signatureHelpProvider: 'signature help',
  inlayHintProvider: 'inlay hints',
  documentSymbolProvider: 'symbols',
  workspaceSymbolProvider: 'symbols',
  documentFormattingProvider: 'formatting',
  documentRangeFormattingProvider: 'formatting',
  documentOnTypeFormattingProvider: 'formatting',
  semanticTokensProvider: 'semantic tokens',
  foldingRangeProvider: 'folding and selecting',
  selectionRangeProvider: 'folding and selecting',
  documentLinkProvider: 'links and lenses',
  codeLensProvider: 'links and lenses',
};

test('every capability that is announced is asked by a test', () => {
  expect(Object.keys(asking.client.capabilities).sort()).toEqual(Object.keys(asked).sort());
});

describe('code actions', () => {
  test('a finding carries its name and a way out', async () => {
    await asking.open(split, text.replace('under quillbrook', 'under quilbrook'));
    const found = (await asking.client.diagnostics(uriOf(split), () => true)).find(
      ({ code }) => code === 'unknown-name',
    );
    expect(found).toMatchObject({ code: 'unknown-name', data: 'unknown-name', source: 'jobplan', severity: 1 });
    const [action] = await asking.request<CodeAction[]>('textDocument/codeAction', split, {
      range: found?.range,
      context: { diagnostics: [found] },
    });
    expect(action).toMatchObject({ title: 'Write "quillbrook"', kind: 'quickfix', isPreferred: true });
    expect(asking.after(action?.edit ?? {})[split]).toBe(text);
  });

  test('fixing all takes nothing that is not safe', async () => {
    const whole = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
    const context = { diagnostics: [], only: ['source.fixAll'] };
    expect(await asking.request('textDocument/codeAction', split, { range: whole, context })).toEqual([]);
    await asking.open(split, text);
  });
});

describe('signature help', () => {
  test.each([
    ['    evacuate |>', 'evacuate PARTS to PRESSURE', 0],
    ['    evacuate each open part to |>', 'evacuate PARTS to PRESSURE', 1],
    ['    evacuate each open part to 500 micron for |>', 'evacuate PARTS to PRESSURE', 2],
  ])('%s', async (line, label, parameter) => {
    const position = await asking.open(split, text.replace('    drain suction-line at trap', line));
    const found = await asking.request<SignatureHelp>('textDocument/signatureHelp', split, { position });
    expect(found.signatures[0]?.label.startsWith(label)).toBe(true);
    expect(found.activeParameter).toBe(parameter);
    await asking.open(split, text);
  });
});

describe('inlay hints', () => {
  test('figures stand at the line of their step, short, with their workings in the tooltip', async () => {
    await asking.open(split, text);
    const range = { start: { line: 0, character: 0 }, end: { line: 200, character: 0 } };
    const found = await asking.request<InlayHint[]>('textDocument/inlayHint', split, { range });
    const shown = found.map(({ position, label }) => `${asking.line(split, position.line)} | ${label as string}`);
    expect(shown.some((each) => /^break-vacuum with nitrogen .* \| = [\d.]+ scf nitrogen$/.test(each))).toBe(true);
    expect(shown.some((each) => /^nitrogen 1 x n2-250 \| = 1 needed$/.test(each))).toBe(true);
    for (const { label, tooltip, position } of found) {
      expect((label as string).length).toBeLessThanOrEqual(30);
      expect((tooltip as { value: string }).value).toContain('**');
      expect(position.character).toBe(asking.line(split, position.line).length + leadOf(position.line));
    }
  });

  test('only the lines that are asked for have hints', async () => {
    const { line } = behind(split, 'nitrogen 1 x');
    const found = await asking.hints(split, { start: { line, character: 0 }, end: { line: line + 1, character: 0 } });
    expect(found).toEqual(['nitrogen 1 x n2-250 = 1 needed']);
  });

  test('a broken line leaves the hints of the others', async () => {
    const before = await asking.hints(split);
    await asking.open(split, text.replace('outdoors 84 degF', 'outdoors 84 deg'));
    expect((await asking.hints(split)).length).toBeGreaterThan(before.length / 2);
    await asking.open(split, text);
  });

  const leadOf = (line: number): number => (text.split('\n')[line] ?? '').search(/\S/);
});

describe('symbols', () => {
  const names = (symbols: readonly DocumentSymbol[]): string[] => symbols.map(({ name }) => name);

  test('the outline goes from the plan to its parts and steps', async () => {
    const [plan] = await asking.request<DocumentSymbol[]>('textDocument/documentSymbol', split);
    expect(plan?.name).toBe('tansy-row-14');
    const circuit = plan?.children?.find(({ name }) => name === 'circuit');
    expect(names(circuit?.children ?? [])).toContain('suction-line kept');
    await asking.open(standard);
    const [procedure] = await asking.request<DocumentSymbol[]>('textDocument/documentSymbol', standard);
    const steps = procedure?.children?.find(({ name }) => name === 'steps');
    const phase = steps?.children?.find(({ name }) => name === 'clean-lines');
    expect(names(phase?.children ?? [])).toContain('rounds');
  });

  test.each([
    ['quil', 'quillbrook'],
    ['finpurg', 'final-purge'],
    ['riser-l', 'riser-large'],
  ])('%s is found in the folder', async (query, name) => {
    const found = await asking.client.connection.sendRequest<WorkspaceSymbol[]>('workspace/symbol', { query });
    expect(found.map((each) => each.name)).toContain(name);
  });
});

describe('formatting', () => {
  const untidy = text
    .replace('    altitude 640 ft', '  altitude   640 ft')
    .replace('  test-pressure 450 psig', '      test-pressure  450 psig');

  test('the whole file', async () => {
    await asking.open(split, untidy);
    const edits = await asking.request<TextEdit[]>('textDocument/formatting', split, { options: {} });
    expect(applied(untidy, edits)).toBe(text);
  });

  test('some lines alone', async () => {
    const { line } = behind(split, '    altitude');
    const range = { start: { line, character: 0 }, end: { line, character: 30 } };
    const edits = await asking.request<TextEdit[]>('textDocument/rangeFormatting', split, { range, options: {} });
    expect(applied(untidy, edits)).toBe(text.replace('  test-pressure 450 psig', '      test-pressure  450 psig'));
  });

  test('the line of a brace that is typed', async () => {
    const braced = text.replace(
      '    leak-detector A2L\n    refrigerant R-454B 10 lb\n  }',
      '    leak-detector A2L\n    refrigerant R-454B 10 lb\n      }',
    );
    await asking.open(split, braced);
    const position = marked(markBehind(braced, 'R-454B 10 lb\n      }')).position;
    const edits = await asking.request<TextEdit[]>('textDocument/onTypeFormatting', split, {
      position,
      ch: '}',
      options: {},
    });
    expect(applied(braced, edits)).toBe(text);
    await asking.open(split, text);
  });
});

describe('semantic tokens', () => {
  /** `type text` of each token. */
  const decoded = ({ data }: SemanticTokens): string[] => {
    const lines = text.split('\n');
    const found: string[] = [];
    let [line, character] = [0, 0];
    for (let at = 0; at < data.length; at += 5) {
      const [down, right, length, type] = data.slice(at, at + 4) as [number, number, number, number];
      line += down;
      character = down === 0 ? character + right : right;
      found.push(`${tokenTypes[type]} ${lines[line]?.slice(character, character + length)}`);
    }
    return found;
  };

  test('words, verbs, parts, clauses, choices, names and labels are told apart', async () => {
    const found = decoded(await asking.request<SemanticTokens>('textDocument/semanticTokens/full', split));
    for (const each of [
      'keyword plan',
      'function drain',
      'class suction-line',
      'property wet-bulb',
      'enumMember kept',
      'variable shop-flush',
      'label rounds',
      'property because',
    ])
      expect(found).toContain(each);
  });

  test('a range gives the same tokens as the whole does there', async () => {
    const { line } = behind(split, '  circuit');
    const range = { start: { line, character: 0 }, end: { line: line + 4, character: 0 } };
    const part = decoded(await asking.request<SemanticTokens>('textDocument/semanticTokens/range', split, { range }));
    expect(part).toContain('class compressor');
    expect(part).not.toContain('keyword site');
  });

  test('the difference makes the new tokens of the old', async () => {
    const before = await asking.request<SemanticTokens>('textDocument/semanticTokens/full', split);
    await asking.open(split, text.replace('  solvent shop-flush\n\n', '  solvent shop-flush\n  note "dry day"\n\n'));
    const delta = await asking.request<SemanticTokensDelta>('textDocument/semanticTokens/full/delta', split, {
      previousResultId: before.resultId,
    });
    const data = [...before.data];
    for (const { start, deleteCount, data: added = [] } of delta.edits) data.splice(start, deleteCount, ...added);
    expect(delta.edits).toHaveLength(1);
    expect(data).toEqual((await asking.request<SemanticTokens>('textDocument/semanticTokens/full', split)).data);
    await asking.open(split, text);
  });
});

describe('folding and selecting', () => {
  test('blocks and comments fold', async () => {
    const name = 'fold.jobplan';
    await asking.open(name, '# one\n# two\nplan a "A" {\n  site {\n    altitude 1 ft\n  }\n}\n');
    expect(await asking.request<FoldingRange[]>('textDocument/foldingRange', name)).toEqual(
      expect.arrayContaining([
        { startLine: 0, endLine: 1, kind: 'comment' },
        { startLine: 2, endLine: 5 },
        { startLine: 3, endLine: 4 },
      ]),
    );
  });

  test('a selection grows from the word to the file', async () => {
    const [found] = await asking.request<SelectionRange[]>('textDocument/selectionRange', split, {
      positions: [behind(split, 'to 1500')],
    });
    const lines = text.split('\n');
    const shown: string[] = [];
    for (let at: SelectionRange | undefined = found; at; at = at.parent) {
      const { start, end } = at.range;
      shown.push(
        start.line === end.line
          ? (lines[start.line] ?? '').slice(start.character, end.character)
          : `${end.line - start.line + 1} lines`,
      );
    }
    expect(shown.slice(0, 3)).toEqual(['1500 micron', 'to 1500 micron', 'evacuate each open part to 1500 micron']);
    expect(shown.at(-1)).toBe(`${lines.length} lines`);
  });
});

describe('links and lenses', () => {
  test('a use leads to its file', async () => {
    const found = await asking.request<DocumentLink[]>('textDocument/documentLink', split);
    expect(found.map(({ target }) => target)).toEqual([uriOf(standard), uriOf('house.jobplan')]);
  });

  test.each([
    [split, 'Show procedure', 'jobplan.showProcedure'],
    [standard, '1 job follows this standard', 'jobplan.showPlaces'],
  ])('%s: %s', async (name, title, command) => {
    const [lens] = await asking.request<CodeLens[]>('textDocument/codeLens', name);
    expect(lens?.command).toMatchObject({ title, command });
  });
});

describe('requests of the client', () => {
  const send = <T>(method: string, parameters: object): Promise<T> =>
    asking.client.connection.sendRequest(method, parameters);

  test('the sheet is the printed procedure of the text as it is now', async () => {
    const { html, style, version } = await send<Sheet>('jobplan/sheet', { uri: uriOf(split) });
    expect(html).toContain('14 Tansy Row, downstairs air conditioner');
    expect(html).not.toContain('<script');
    expect(style).toContain('body.sheet');
    expect(version).not.toBeNull();
    await asking.open(split, text.replace('14 Tansy Row', '15 Tansy Row'));
    expect((await send<Sheet>('jobplan/sheet', { uri: uriOf(split) })).html).toContain('15 Tansy Row');
    await asking.open(split, text);
  });

  test('a file without a plan has no sheet', async () => {
    expect(await send('jobplan/sheet', { uri: uriOf('materials.jobplan') })).toBeNull();
  });

  test('the state of the parts at a line', async () => {
    const { line } = behind(split, '    break-vacuu');
    const { title, parts } = await send<StateAnswer>('jobplan/state', { uri: uriOf(split), line });
    expect(title).toContain('break-vacuum with nitrogen to 2 psig');
    const facts = parts.find(({ name }) => name === 'suction-line')?.facts ?? [];
    expect(facts[0]).toEqual({ text: 'holds nitrogen at 2 psig', fresh: true });
    expect(facts.find(({ text }) => text.startsWith('tested at'))?.text).toMatch(
      /, since step \d+ \(test: pressure-test/,
    );
    expect(facts.filter(({ fresh }) => fresh)).toHaveLength(1);
  });

  test('before the steps the parts stand as the job finds them', async () => {
    const { line } = behind(split, '  circuit {');
    const { title, parts } = await send<StateAnswer>('jobplan/state', { uri: uriOf(split), line });
    expect(title).toBe('at the beginning');
    expect(parts.flatMap(({ facts }) => facts).filter(({ fresh }) => fresh)).toEqual([]);
    expect(parts.find(({ name }) => name === 'suction-line')?.facts[0]?.text).toMatch(/^holds R-/);
  });

  test('the page of a check, or nothing', async () => {
    expect(await send<string>('jobplan/check', { name: 'open-under-pressure' })).toContain('# open-under-pressure');
    expect(await send('jobplan/check', { name: 'no-such-check' })).toBeNull();
  });
});

test('no request of this file was answered by an error in the log', () => {
  expect(asking.client.logged).toEqual([]);
});
