import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { listRequest, passedBy, type ReadParameters, readRequest } from '../server/editor/protocol';

/** Whether a file lies inside a workspace folder when the host follows all links. */
export type Inside = (uri: vscode.Uri, folder: vscode.Uri) => Promise<boolean>;

/** Files of a workspace beyond this number are not looked at. */
const mostFiles = 10_000;
/** Milliseconds that a search may take before the folders are walked instead. */
const patience = 3000;

/** The folders that are passed by, as the editor's search wants them. */
const elsewhere = `{${[...passedBy].map((name) => `**/${name}/**`).join(',')}}`;

/** Lists and reads the plan files of the workspace for the server, through VS Code's own file systems. */
export function answerFileRequests(client: BaseLanguageClient, inside: Inside): vscode.Disposable[] {
  return [
    client.onRequest(listRequest, async (): Promise<string[]> => {
      const searched = await search();
      // A browser's file systems need not offer a search; then the folders are walked.
      const found = searched.length > 0 ? searched : await walk();
      return found.map((uri) => client.code2ProtocolConverter.asUri(uri));
    }),
    client.onRequest(readRequest, async ({ uri }: ReadParameters): Promise<string | null> => {
      const file = client.protocol2CodeConverter.asUri(uri);
      const folder = vscode.workspace.getWorkspaceFolder(file);
      if (folder === undefined) return null;
      try {
        if (!(await inside(file, folder.uri))) return null;
        return new TextDecoder('utf-8', { ignoreBOM: true }).decode(await vscode.workspace.fs.readFile(file));
      } catch {
        // Not there, a folder, or not readable: for a plan that is all the same.
        return null;
      }
    }),
  ];
}

/** The editor's own search; without an answer in time nothing, for it waits forever where a file system offers none. */
async function search(): Promise<vscode.Uri[]> {
  const stop = new vscode.CancellationTokenSource();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<vscode.Uri[]>((done) => {
    timer = setTimeout(() => done([]), patience);
  });
  const found = vscode.workspace.findFiles('**/*.jobplan', elsewhere, mostFiles, stop.token);
  try {
    return await Promise.race([found, late]);
  } catch {
    return [];
  } finally {
    clearTimeout(timer);
    stop.cancel();
    stop.dispose();
  }
}

/** Walks the workspace folders, without links, without folders whose name begins with a dot. */
async function walk(): Promise<vscode.Uri[]> {
  const found: vscode.Uri[] = [];
  const waiting = (vscode.workspace.workspaceFolders ?? []).map(({ uri }) => uri);
  let walked = 0;
  for (let folder = waiting.pop(); folder !== undefined && walked < mostFiles; folder = waiting.pop()) {
    walked += 1;
    const entries = await Promise.resolve(vscode.workspace.fs.readDirectory(folder)).catch(() => []);
    for (const [name, type] of entries) {
      if (name.startsWith('.') || passedBy.has(name)) continue;
      const uri = vscode.Uri.joinPath(folder, name);
      if (type === vscode.FileType.Directory) waiting.push(uri);
      else if (type === vscode.FileType.File && name.endsWith('.jobplan') && found.length < mostFiles) found.push(uri);
    }
  }
  return found;
}
