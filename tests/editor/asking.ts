import { readdirSync, readFileSync } from 'node:fs';
import type {
  CompletionItem,
  Hover,
  InlayHint,
  Location,
  Position,
  Range,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { features } from '../../server/editor/features/all';
import { LineIndex } from '../../server/editor/positions';
import { Workspace } from '../../server/engine/workspace';
import { Connected } from './connected';

const samplesFolder = new URL('../fixtures/samples/', import.meta.url);

/** The sample plans by file name. */
export const samples: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(samplesFolder)
    .filter((name) => name.endsWith('.jobplan'))
    .map((name) => [name, readFileSync(new URL(name, samplesFolder), 'utf8')]),
);

/** A text with its cursor mark `|>` taken out, and where that was. */
export function marked(text: string): { readonly text: string; readonly position: Position } {
  const offset = text.indexOf('|>');
  if (offset < 0) throw new Error('no cursor mark |> in the text');
  const plain = text.slice(0, offset) + text.slice(offset + 2);
  return { text: plain, position: LineIndex.of(plain).positionAt(offset) };
}

/** Puts a mark into a text, behind the first place that matches. */
export function markBehind(text: string, before: string): string {
  const at = text.indexOf(before);
  if (at < 0) throw new Error(`no ${JSON.stringify(before)} in the text`);
  return `${text.slice(0, at + before.length)}|>${text.slice(at + before.length)}`;
}

/** A server over files in memory, asked in the words of the protocol. */
export class Asking {
  private constructor(
    readonly client: Connected,
    private readonly texts: Map<string, string>,
  ) {}

  static async start(files: Readonly<Record<string, string>> = samples, options: object = {}): Promise<Asking> {
    const texts = new Map(Object.entries(files));
    const nameOf = (uri: string) => uri.slice(uri.lastIndexOf('/') + 1);
    const answers = {
      'jobplan/list': () => [...texts.keys()].map(uriOf),
      'jobplan/read': ({ uri }: { uri: string }) => texts.get(nameOf(uri)) ?? null,
    };
    const host = { makeWorkspace: () => new Workspace(), features };
    const client = await Connected.start(host, ['memory:/shop'], { door: true, answers, ...options });
    return new Asking(client, texts);
  }

  /** Opens a file, or gives an open one other content, which may hold a mark; waits for its findings. */
  async open(name: string, text = this.texts.get(name) ?? ''): Promise<Position> {
    const begin = { text, position: { line: 0, character: 0 } };
    const { text: plain, position } = text.includes('|>') ? marked(text) : begin;
    this.texts.set(name, plain);
    const uri = uriOf(name);
    const wanted = this.client.isOpen(uri) ? await this.client.replace(uri, plain) : 1;
    if (wanted === 1) await this.client.open(uri, plain);
    await this.client.diagnostics(uri, ({ version }) => version === wanted);
    return position;
  }

  request<T>(method: string, name: string, rest: object = {}): Promise<T> {
    return this.client.connection.sendRequest(method, { textDocument: { uri: uriOf(name) }, ...rest });
  }

  /** What the hover says at a mark. */
  async hover(name: string, text: string): Promise<string> {
    const position = await this.open(name, text);
    const found = await this.request<Hover | null>('textDocument/hover', name, { position });
    return found === null ? '' : (found.contents as { value: string }).value;
  }

  async complete(name: string, text: string): Promise<CompletionItem[]> {
    const position = await this.open(name, text);
    const found = (await this.request<CompletionItem[] | null>('textDocument/completion', name, { position })) ?? [];
    return [...found].sort((a, b) => (a.sortText ?? '').localeCompare(b.sortText ?? ''));
  }

  async hints(name: string, range?: Range): Promise<string[]> {
    const whole = { start: { line: 0, character: 0 }, end: { line: 100_000, character: 0 } };
    const found = await this.request<InlayHint[]>('textDocument/inlayHint', name, { range: range ?? whole });
    return found.map(({ position, label }) => `${this.line(name, position.line)} ${label as string}`);
  }

  /** A line of a file, without its indentation. */
  line(name: string, line: number): string {
    return (this.texts.get(name) ?? '').split('\n')[line]?.trim() ?? '';
  }

  /** `file: line of the place`, for each of some places. */
  shown(places: readonly Location[] | null): string[] {
    return (places ?? []).map(
      ({ uri, range }) =>
        `${uri.slice(uri.lastIndexOf('/') + 1)}: ${this.line(uri.slice(uri.lastIndexOf('/') + 1), range.start.line)}`,
    );
  }

  /** The files of an edit as they are after it. */
  after({ changes = {} }: WorkspaceEdit): Record<string, string> {
    return Object.fromEntries(
      Object.entries(changes).map(([uri, edits]) => {
        const name = uri.slice(uri.lastIndexOf('/') + 1);
        return [name, applied(this.texts.get(name) ?? '', edits)];
      }),
    );
  }

  stop(): void {
    this.client.stop();
  }
}

export const uriOf = (name: string): string => `memory:/shop/${name}`;

/** A text after some edits of the protocol. */
export function applied(text: string, edits: readonly TextEdit[]): string {
  const lines = LineIndex.of(text);
  const spans = edits.map(({ range, newText }) => ({
    from: lines.offsetAt(text, range.start),
    to: lines.offsetAt(text, range.end),
    newText,
  }));
  return spans
    .sort((a, b) => b.from - a.from)
    .reduce((now, { from, to, newText }) => now.slice(0, from) + newText + now.slice(to), text);
}
