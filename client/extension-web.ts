import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { clientOptions, type Exported, start } from './extension';

/** Entry in a browser: the server is a web worker. */
export function activate(context: vscode.ExtensionContext): Promise<Exported> {
  const worker = new Worker(vscode.Uri.joinPath(context.extensionUri, 'dist/server-web.js').toString(true));
  const client = new LanguageClient('jobplan', 'Job Plan', clientOptions, worker);
  // File systems of a browser have no links that lead out of a folder.
  return start(context, client, 'web', async () => true);
}
