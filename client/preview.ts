import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { type Sheet, type SheetParameters, sheetRequest } from '../server/editor/protocol';
import { previewPage } from './preview-page';

/** Milliseconds without a key press after which the preview is made anew. */
const pause = 150;

/** Shows printed procedures beside their plans, one panel for each plan, and keeps them up with the text. */
export class Previews implements vscode.Disposable {
  private readonly open = new Map<string, Preview>();
  private readonly listeners: vscode.Disposable[];

  constructor(private readonly client: BaseLanguageClient) {
    this.listeners = [
      vscode.workspace.onDidChangeTextDocument(({ document }) => {
        // A standard or a material changes the procedures of the plans that draw it in, so every preview follows.
        if (document.languageId === 'jobplan') for (const preview of this.open.values()) preview.refreshSoon();
      }),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
        const line = selections[0]?.active.line;
        if (line !== undefined) this.open.get(textEditor.document.uri.toString())?.reveal(placeOf(textEditor, line));
      }),
    ];
  }

  /** Opens the procedure of the plan at an address, or of the active editor. */
  showAt(uri: string | undefined): void {
    const all = vscode.window.visibleTextEditors;
    this.show(all.find(({ document }) => document.uri.toString() === uri) ?? vscode.window.activeTextEditor);
  }

  /** Opens the procedure of the plan in an editor, or brings its panel to the front. */
  show(editor: vscode.TextEditor | undefined): void {
    if (editor?.document.languageId !== 'jobplan') {
      void vscode.window.showInformationMessage('Open a job plan to see its procedure.');
      return;
    }
    const { document } = editor;
    const key = document.uri.toString();
    const before = this.open.get(key);
    if (before !== undefined) {
      before.bringForward();
      return;
    }
    const preview = new Preview(this.client, document.uri, () => this.open.delete(key));
    this.open.set(key, preview);
    preview.reveal(placeOf(editor, editor.selection.active.line));
  }

  dispose(): void {
    for (const listener of this.listeners) listener.dispose();
    for (const preview of [...this.open.values()]) preview.dispose();
  }
}

/** A line of the plan, and whether a block begins there: of a block that prints nothing its first step is shown. */
interface Place {
  readonly line: number;
  readonly opens: boolean;
}

const placeOf = ({ document }: vscode.TextEditor, line: number): Place => ({
  line,
  opens: document.lineAt(line).text.trimEnd().endsWith('{'),
});

class Preview implements vscode.Disposable {
  private readonly panel: vscode.WebviewPanel;
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** Counts the requests, so that a late answer does not replace a newer one. */
  private asked = 0;
  private place: Place | undefined;

  constructor(
    private readonly client: BaseLanguageClient,
    private readonly uri: vscode.Uri,
    onClose: () => void,
  ) {
    const name = uri.path.slice(uri.path.lastIndexOf('/') + 1);
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    this.panel = vscode.window.createWebviewPanel('jobplan.procedure', `Procedure: ${name}`, column, {
      enableScripts: true,
      localResourceRoots: [],
    });
    this.panel.onDidDispose(() => {
      clearTimeout(this.timer);
      onClose();
    });
    this.panel.webview.onDidReceiveMessage((message: { ready?: true; line?: number }) => {
      // The page says so each time that it is loaded: at first, and when its tab is shown again.
      if (message.ready) void this.refresh();
      if (typeof message.line === 'number') void this.goTo(message.line);
    });
    this.panel.webview.html = previewPage();
  }

  bringForward(): void {
    this.panel.reveal(undefined, true);
  }

  refreshSoon(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.refresh(), pause);
  }

  reveal(place: Place): void {
    this.place = place;
    void this.panel.webview.postMessage({ reveal: place });
  }

  dispose(): void {
    this.panel.dispose();
  }

  private async refresh(): Promise<void> {
    this.asked += 1;
    const number = this.asked;
    const uri = this.client.code2ProtocolConverter.asUri(this.uri);
    const parameters: SheetParameters = this.place === undefined ? { uri } : { uri, line: this.place.line };
    const sheet = await this.client.sendRequest<Sheet | null>(sheetRequest, parameters).catch(() => undefined);
    // Without an answer the last good page stays.
    if (sheet === undefined || number !== this.asked) return;
    void this.panel.webview.postMessage({ html: sheet?.html ?? '', style: sheet?.style ?? '', reveal: this.place });
  }

  /** Shows the line of the plan that a step was printed from. */
  private async goTo(line: number): Promise<void> {
    const place = new vscode.Range(line, 0, line, 0);
    const column = vscode.window.visibleTextEditors.find(
      ({ document }) => document.uri.toString() === this.uri.toString(),
    )?.viewColumn;
    await vscode.window.showTextDocument(this.uri, { selection: place, viewColumn: column ?? vscode.ViewColumn.One });
  }
}
