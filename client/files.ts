import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { listRequest, type ReadParameters, readRequest } from '../server/editor/protocol';

/** Whether a file lies inside a workspace folder when the host follows all links. */
export type Inside = (uri: vscode.Uri, folder: vscode.Uri) => Promise<boolean>;

/** Files of a workspace beyond this number are not looked at. */
const mostFiles = 10_000;

/** Lists and reads the plan files of the workspace for the server, through VS Code's own file systems. */
export function answerFileRequests(client: BaseLanguageClient, inside: Inside): vscode.Disposable[] {
  return [
    client.onRequest(listRequest, async (): Promise<string[]> => {
      const found = await vscode.workspace.findFiles('**/*.jobplan', '**/node_modules/**', mostFiles);
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
