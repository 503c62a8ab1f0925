import {
  type Connection,
  DidChangeWatchedFilesNotification,
  FileChangeType,
  type InitializeParams,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { clientDoor, type Door, noDoor } from './door';
import type { Workspace } from './engine';
import type { Feature } from './features/feature';
import type { Folder } from './folder';
import type { StartOptions } from './protocol';
import { Publisher } from './publisher';
import { Refresher } from './refresher';
import { loadFile, loadFolder, loadWanted, Session } from './session';
import { guarded, type Log } from './turns';

/** What a host gives the server beside the connection. */
export interface Host {
  readonly makeWorkspace: () => Workspace;
  readonly features: readonly Feature[];
  /** The file door for a client that does not read files itself; a browser has none. */
  readonly ownDoor?: Door;
}

/** Starts the server on a connection; the host (Node or a web worker) has made the connection. */
export function serve(connection: Connection, host: Host): void {
  const log: Log = (where, error) => {
    connection.console.error(`${where}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
  };
  const session = new Session(host.makeWorkspace);
  const publisher = new Publisher(connection, log, session);
  const refresher = new Refresher(connection, session);
  let door: Door = noDoor;
  let watches = false;
  let changesFolders = false;

  connection.onInitialize((parameters) => {
    const options = parameters.initializationOptions as Partial<StartOptions> | undefined;
    session.client = parameters.capabilities;
    session.showsPages = options?.pages === true;
    door = options?.door === true ? clientDoor(connection) : (host.ownDoor ?? noDoor);
    watches = parameters.capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
    changesFolders = parameters.capabilities.workspace?.workspaceFolders === true;
    for (const uri of rootsOf(parameters)) session.addFolder({ uri });
    return { capabilities: capabilitiesOf(host.features), serverInfo: { name: 'jobplan' } };
  });

  connection.onInitialized(
    guarded(log, 'start', undefined, async () => {
      if (watches) {
        const watchers = [{ globPattern: '**/*.jobplan' }];
        // Not waited for: a client that is slow to answer must not hold the files back.
        connection.client
          .register(DidChangeWatchedFilesNotification.type, { watchers })
          .catch((error) => log('watch', error));
      }
      if (changesFolders)
        connection.workspace.onDidChangeWorkspaceFolders(guarded(log, 'folders', undefined, changeFolders));
      await Promise.all(session.folders.map(load));
    }),
  );

  const load = async (folder: Folder): Promise<void> => {
    if (folder.loaded) return;
    try {
      await loadFolder(folder, door);
    } finally {
      folder.loaded = true;
      publisher.everything(folder);
      refresher.now();
    }
  };

  const changeFolders = async (event: { added: { uri: string }[]; removed: { uri: string }[] }): Promise<void> => {
    for (const { uri } of event.removed) {
      const folder = session.removeFolder(uri);
      if (folder === undefined) continue;
      publisher.forget(folder);
      for (const document of folder.openDocuments()) take(document.uri, document.text, document.version);
    }
    for (const { uri } of event.added) {
      // Documents that were open before their folder came move into it.
      const open = session.folders.flatMap((folder) => [...folder.openDocuments()]);
      const folder = session.addFolder({ uri });
      for (const document of open) {
        const before = session.folders.find((other) => other !== folder && other.openDocuments().includes(document));
        if (before === undefined || folder.pathOf(document.uri) === undefined) continue;
        if (session.find(document.uri)?.folder !== folder) continue;
        drop(before, document.uri);
        take(document.uri, document.text, document.version);
      }
      await load(folder);
    }
  };

  /** Takes an open document in, or in again. */
  const take = (uri: string, text: string, version: number | undefined): void => {
    const { folder, path } = session.findOrAdd(uri);
    const before = folder.document(path)?.uri;
    if (before !== undefined && before !== uri) publisher.withdraw(before);
    folder.put(path, uri, text, version);
    settle(folder, path);
  };

  /** Lets a document go; a loose one takes its folder with it. */
  const drop = (folder: Folder, uri: string): void => {
    const path = folder.pathOf(uri);
    if (folder.loose) session.removeFolder(folder.uri);
    if (folder.loose) publisher.forget(folder);
    else if (path !== undefined) {
      folder.remove(path);
      publisher.withdraw(uri);
      publisher.everything(folder);
    }
  };

  /** After a change: publish, and fetch what a `use` newly asks for. */
  const settle = (folder: Folder, path: string): void => {
    publisher.changed(folder, path);
    // The changed document asks for itself; others that stand open may draw on it.
    if (folder.openDocuments().length > 1) refresher.soon();
    if (!folder.loaded || folder.workspace.wanted().length === 0) return;
    loadWanted(folder, door)
      .then((came) => {
        if (!came) return;
        publisher.changed(folder, path);
        refresher.soon();
      })
      .catch((error) => log('use', error));
  };

  connection.onDidOpenTextDocument(
    guarded(log, 'open', undefined, ({ textDocument }) =>
      take(textDocument.uri, textDocument.text, textDocument.version),
    ),
  );

  connection.onDidChangeTextDocument(
    guarded(log, 'change', undefined, ({ textDocument, contentChanges }) => {
      const found = session.find(textDocument.uri);
      const document = found?.folder.document(found.path);
      if (found === undefined || document === undefined) return;
      for (const event of contentChanges) {
        const change = document.change(event);
        if (change === undefined) found.folder.workspace.setFile(found.path, document.text);
        else found.folder.workspace.edit(found.path, [change]);
      }
      document.version = textDocument.version;
      settle(found.folder, found.path);
    }),
  );

  connection.onDidCloseTextDocument(
    guarded(log, 'close', undefined, async ({ textDocument: { uri } }) => {
      const found = session.find(uri);
      const document = found?.folder.document(found.path);
      if (found === undefined || document === undefined) return;
      const { folder, path } = found;
      if (folder.loose) return drop(folder, uri);
      // What was not saved is forgotten: the file is again what the disk says.
      document.version = undefined;
      await loadFile(folder, uri, door);
      if (folder.document(path) === undefined) publisher.withdraw(uri);
      publisher.everything(folder);
    }),
  );

  connection.onDidChangeWatchedFiles(
    guarded(log, 'watched files', undefined, async ({ changes }) => {
      const touched = new Set<Folder>();
      for (const { uri, type } of changes) {
        const found = session.find(uri);
        if (found === undefined || found.folder.loose || found.folder.document(found.path)?.version !== undefined)
          continue;
        const { folder, path } = found;
        touched.add(folder);
        if (type !== FileChangeType.Deleted) await loadFile(folder, uri, door);
        if (type === FileChangeType.Deleted || folder.document(path) === undefined) {
          const shown = folder.uriOf(path);
          folder.remove(path);
          publisher.withdraw(shown);
        }
      }
      for (const folder of touched) {
        await loadWanted(folder, door);
        publisher.everything(folder);
        refresher.soon();
      }
    }),
  );

  for (const feature of host.features) feature.register(connection, session, log);
  connection.onShutdown(() => refresher.stop());
  connection.listen();
}

function rootsOf(parameters: InitializeParams): readonly string[] {
  if (parameters.workspaceFolders) return parameters.workspaceFolders.map(({ uri }) => uri);
  return parameters.rootUri ? [parameters.rootUri] : [];
}

function capabilitiesOf(features: readonly Feature[]): ServerCapabilities {
  const own: ServerCapabilities = {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
  };
  return Object.assign(own, ...features.map((feature) => feature.capabilities));
}
