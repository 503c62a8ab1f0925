import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import { kindNamed } from '../../engine/circuit/kinds';
import type { Bound } from '../../engine/plan/bind';
import { firstLine } from '../../engine/plan/step';
import { boundView } from '../asking';
import { forEachPlaced } from '../placed';
import type { LineIndex } from '../positions';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** The outline of a file: declarations, their blocks, the circuit's parts, phases and steps. */
export const documentSymbols: Feature = {
  name: 'document symbols',
  capabilities: { documentSymbolProvider: true },
  register(connection, session, log) {
    connection.onDocumentSymbol(
      guarded(log, 'document symbols', null, ({ textDocument }) => {
        const view = boundView(session, textDocument.uri);
        if (view === undefined) return null;
        const found: DocumentSymbol[] = [];
        forEachPlaced(
          view.bound,
          (bound, at, parent: DocumentSymbol | null) => {
            const symbol = symbolOf(bound, at, view.document.lines);
            if (symbol === undefined) return undefined;
            if (parent === null) found.push(symbol);
            else (parent.children ??= []).push(symbol);
            return symbol;
          },
          null,
        );
        return found;
      }),
    );
  },
};

function symbolOf(bound: Bound, at: number, lines: LineIndex): DocumentSymbol | undefined {
  const { word, item } = bound;
  if (word === null || item.word === null) return undefined;
  const kind = kindOf(bound);
  if (kind === undefined) return undefined;
  const { name, detail } = naming(bound);
  const lead = item.label ?? item.word;
  const last = item.tail.length > 0 ? item.tail : item.head;
  const newline = last.at(-1)?.kind === 'newline' ? last.at(-1)!.text.length : 0;
  const first = item.head.find((token) => token.kind !== 'space') ?? lead;
  return {
    name,
    ...(detail ? { detail } : {}),
    kind,
    range: lines.range(at + first.at, at + item.length - newline),
    selectionRange: lines.range(at + lead.at, at + lead.at + lead.text.length),
  };
}

const blocks: Readonly<Record<string, SymbolKind>> = {
  plan: SymbolKind.Module,
  standard: SymbolKind.Module,
  'house-rules': SymbolKind.Module,
  record: SymbolKind.Module,
};

function kindOf(bound: Bound): SymbolKind | undefined {
  const word = bound.word!;
  switch (bound.place) {
    case 'file':
      return word.word === 'use' ? undefined : (blocks[word.word] ?? SymbolKind.Object);
    case 'circuit':
    case 'branches':
      return word.word === 'through' ? undefined : kindNamed(word.word) ? SymbolKind.Field : SymbolKind.Namespace;
    case 'steps':
      return !('verb' in word) ? undefined : word.block === 'steps' ? SymbolKind.Namespace : SymbolKind.Method;
    case 'record':
      return SymbolKind.Event;
    case 'plan':
    case 'standard':
      return word.block === undefined && word.word !== 'skip' ? undefined : SymbolKind.Namespace;
  }
  return undefined;
}

function naming(bound: Bound): { readonly name: string; readonly detail?: string } {
  const named = (bound.values['name'] as { text?: string } | undefined)?.text;
  const title = bound.values['title'];
  if (bound.place === 'file')
    return { name: named ?? bound.word!.word, detail: typeof title === 'string' ? title : bound.word!.word };
  if (bound.label) return { name: bound.label.text, detail: firstLine(bound).replace(/^[^:]*:\s*/, '') };
  const reason = bound.values['because'];
  const name = firstLine(bound).replace(/ because ".*$/, '');
  return { name, ...(typeof reason === 'string' ? { detail: reason } : {}) };
}
