import * as vscode from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { type StartOptions, showProcedureCommand } from '../server/editor/protocol';
import { checkPages } from './check-pages';
import { CircuitView } from './circuit-view';
import { answerFileRequests, type Inside } from './files';
import { showPlaces } from './places';
import { Previews } from './preview';

/** What `activate` returns: where the extension runs. */
export interface Exported {
  readonly host: 'node' | 'web';
}

const startOptions: StartOptions = { door: true, pages: true };

export const clientOptions: LanguageClientOptions = {
  documentSelector: [{ language: 'jobplan' }],
  initializationOptions: startOptions,
};

/** The part of the extension that is the same on the desktop and in the browser. */
export async function start(
  context: vscode.ExtensionContext,
  client: BaseLanguageClient,
  host: Exported['host'],
  inside: Inside,
): Promise<Exported> {
  const previews = new Previews(client);
  context.subscriptions.push(
    { dispose: () => void client.stop() },
    ...answerFileRequests(client, inside),
    previews,
    new CircuitView(client),
    vscode.commands.registerCommand(showProcedureCommand, (uri?: unknown) =>
      previews.showAt(typeof uri === 'string' ? client.protocol2CodeConverter.asUri(uri).toString() : undefined),
    ),
    ...showPlaces(client),
    ...checkPages(client),
  );
  await client.start();
  return { host };
}
