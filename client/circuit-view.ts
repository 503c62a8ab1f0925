import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import {
  circuitView,
  planShownContext,
  type StateAnswer,
  type StateFact,
  type StateParameters,
  stateRequest,
} from '../server/editor/protocol';

/** Milliseconds that the cursor rests, or the keys, before the circuit is asked for again. */
const pause = 150;

type Part = StateAnswer['parts'][number];
type Row = Part | StateFact;

/** Tells beside the explorer how each part stands after the step at the cursor; what that step did is marked. */
export class CircuitView implements vscode.TreeDataProvider<Row>, vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<void>();
  readonly onDidChangeTreeData = this.changed.event;
  private readonly view: vscode.TreeView<Row>;
  private readonly listeners: vscode.Disposable[];
  private parts: readonly Part[] = [];
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** Counts the requests, so that a late answer does not replace a newer one. */
  private asked = 0;

  constructor(private readonly client: BaseLanguageClient) {
    this.view = vscode.window.createTreeView(circuitView, { treeDataProvider: this });
    const soon = () => this.refreshSoon();
    this.listeners = [
      this.changed,
      this.view,
      this.view.onDidChangeVisibility(soon),
      vscode.window.onDidChangeActiveTextEditor(soon),
      vscode.window.onDidChangeVisibleTextEditors(() => void this.appear()),
      vscode.window.onDidChangeTextEditorSelection(soon),
      vscode.workspace.onDidChangeTextDocument(({ document }) => {
        if (document.languageId === 'jobplan') soon();
      }),
    ];
    void this.appear();
  }

  getChildren(row?: Row): Row[] {
    if (row === undefined) return [...this.parts];
    return 'facts' in row ? [...row.facts] : [];
  }

  getTreeItem(row: Row): vscode.TreeItem {
    return 'facts' in row ? partItem(row) : factItem(row);
  }

  dispose(): void {
    clearTimeout(this.timer);
    for (const listener of this.listeners) listener.dispose();
  }

  /** Shows or hides the view with the plans on the screen; a preview in front takes no plan away. */
  private async appear(): Promise<void> {
    const shown = vscode.window.visibleTextEditors.some(({ document }) => document.languageId === 'jobplan');
    await vscode.commands.executeCommand('setContext', planShownContext, shown);
    this.refreshSoon();
  }

  private refreshSoon(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.refresh(), pause);
  }

  private async refresh(): Promise<void> {
    const editor = vscode.window.activeTextEditor;
    if (!this.view.visible || editor?.document.languageId !== 'jobplan') return;
    this.asked += 1;
    const number = this.asked;
    const parameters: StateParameters = {
      uri: this.client.code2ProtocolConverter.asUri(editor.document.uri),
      line: editor.selection.active.line,
    };
    const answer = await this.client.sendRequest<StateAnswer | null>(stateRequest, parameters).catch(() => undefined);
    // Without an answer the last good one stays.
    if (answer === undefined || number !== this.asked) return;
    this.parts = answer?.parts ?? [];
    this.view.description = answer?.title ?? '';
    this.changed.fire();
  }
}

/** A part with its weightiest fact beside its name; open where the step did something to it. */
function partItem(part: Part): vscode.TreeItem {
  const fresh = part.facts.some((fact) => fact.fresh);
  const { None, Collapsed, Expanded } = vscode.TreeItemCollapsibleState;
  const item = new vscode.TreeItem(part.name, part.facts.length === 0 ? None : fresh ? Expanded : Collapsed);
  // The state of folding belongs to one part as this step leaves it.
  item.id = `${part.name} ${fresh}`;
  const told = part.facts.find(({ text }) => text.startsWith('holds')) ?? part.facts[0];
  item.description = told?.text.split(', since')[0] ?? '';
  item.tooltip = part.facts.map(({ text }) => text).join('\n');
  return item;
}

function factItem({ text, fresh }: StateFact): vscode.TreeItem {
  const item = new vscode.TreeItem(text);
  item.tooltip = fresh ? `${text}: by this step` : text;
  if (fresh) item.iconPath = new vscode.ThemeIcon('arrow-small-right', new vscode.ThemeColor('charts.blue'));
  return item;
}
