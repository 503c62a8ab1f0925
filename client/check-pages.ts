import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { type CheckParameters, checkRequest, checkScheme } from '../server/editor/protocol';

/** The pages of checks as documents, so that the name of a finding in the list of problems leads to its page. */
export function checkPages(client: BaseLanguageClient): vscode.Disposable[] {
  return [
    vscode.workspace.registerTextDocumentContentProvider(checkScheme, {
      async provideTextDocumentContent(uri) {
        const parameters: CheckParameters = { name: uri.path.replace(/^\//, '').replace(/\.md$/, '') };
        const page = await client.sendRequest<string | null>(checkRequest, parameters).catch(() => null);
        return page ?? `There is no page about "${parameters.name}".\n`;
      },
    }),
  ];
}
