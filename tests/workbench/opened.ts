import * as vscode from 'vscode';

/** Opens a file of the run's folder and shows it. */
export async function openFile(name: string): Promise<vscode.TextDocument> {
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  if (folder === undefined) throw new Error('no folder is open');
  // A browser without a server has no disk; this extension of the run fills its folder.
  await vscode.extensions.getExtension('jobplan.fill')?.activate();
  const document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder, name));
  await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  return document;
}
