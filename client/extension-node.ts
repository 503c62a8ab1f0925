import { realpath } from 'node:fs/promises';
import { sep } from 'node:path';
import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { clientOptions, type Exported, start } from './extension';

/** Entry on the desktop and wherever extensions run in Node: the server is a process of its own. */
export function activate(context: vscode.ExtensionContext): Promise<Exported> {
  const module = context.asAbsolutePath('dist/server.js');
  const server = { module, transport: TransportKind.ipc };
  const client = new LanguageClient('jobplan', 'Job Plan', server, clientOptions);
  return start(context, client, 'node', inside);
}

/** Whether a file of the disk lies inside a folder when all links are followed. */
async function inside(uri: vscode.Uri, folder: vscode.Uri): Promise<boolean> {
  if (uri.scheme !== 'file') return true;
  const [file, root] = await Promise.all([realpath(uri.fsPath), realpath(folder.fsPath)]);
  return file.startsWith(root.endsWith(sep) ? root : root + sep);
}
