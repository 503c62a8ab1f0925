import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { Workspace } from '../engine/workspace';
import { diskDoor } from './door-disk';
import { features } from './features/all';
import { serve } from './serve';
import { today } from './today';

// The transport is chosen by the arguments: --stdio for any editor, --node-ipc from the extension.
const connection = createConnection(ProposedFeatures.all);

// One bad request must not take the others down with it.
const survive = (error: unknown) =>
  connection.console.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
process.on('uncaughtException', survive);
process.on('unhandledRejection', survive);

serve(connection, { makeWorkspace: () => new Workspace(today()), features, ownDoor: diskDoor });
