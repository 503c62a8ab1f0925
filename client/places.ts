import * as vscode from 'vscode';
import type { BaseLanguageClient, Location, Position } from 'vscode-languageclient';
import { showPlacesCommand } from '../server/editor/protocol';

/** The command of a lens that counts places: shows them in the editor's list of references. */
export function showPlaces(client: BaseLanguageClient): vscode.Disposable[] {
  const { protocol2CodeConverter: convert } = client;
  return [
    vscode.commands.registerCommand(showPlacesCommand, (uri: string, at: Position, places: Location[]) =>
      vscode.commands.executeCommand(
        'editor.action.showReferences',
        convert.asUri(uri),
        convert.asPosition(at),
        places.map((place) => convert.asLocation(place)),
      ),
    ),
  ];
}
