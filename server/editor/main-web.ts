import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { Workspace } from '../engine/workspace';
import { features } from './features/all';
import { serve } from './serve';
import { today } from './today';

const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
const connection = createConnection(new BrowserMessageReader(scope), new BrowserMessageWriter(scope));
serve(connection, { makeWorkspace: () => new Workspace(today()), features });
