import { PassThrough } from 'node:stream';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import {
  createProtocolConnection,
  type Diagnostic,
  type InitializeParams,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type ServerCapabilities,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { type Host, serve } from '../../server/editor/serve';

/** A client on a server in this process, over real protocol messages. */
export class Connected {
  readonly published: PublishDiagnosticsParams[] = [];
  private readonly waiting = new Set<() => void>();
  private readonly versions = new Map<string, number>();

  private constructor(readonly connection: ProtocolConnection) {
    connection.onNotification('textDocument/publishDiagnostics', (parameters: PublishDiagnosticsParams) => {
      this.published.push(parameters);
      for (const look of [...this.waiting]) look();
    });
    connection.onRequest('client/registerCapability', () => null);
    connection.onNotification('window/logMessage', ({ message }: { message: string }) => {
      this.logged.push(message);
    });
  }

  readonly logged: string[] = [];
  /** What the server said that it can do. */
  capabilities: ServerCapabilities = {};

  /** Starts a server; `folders` are addresses, `answers` are requests that this client answers. */
  static async start(
    host: Host,
    folders: string[],
    options: { door?: boolean; pages?: boolean; answers?: Record<string, (parameters: never) => unknown> } = {},
  ): Promise<Connected> {
    const [up, down] = [new PassThrough(), new PassThrough()];
    const server = createConnection(ProposedFeatures.all, new StreamMessageReader(up), new StreamMessageWriter(down));
    serve(server, host);
    const client = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    const connected = new Connected(client);
    for (const [method, answer] of Object.entries(options.answers ?? {}))
      client.onRequest(method, answer as () => unknown);
    client.listen();
    const parameters: InitializeParams = {
      processId: null,
      rootUri: null,
      workspaceFolders: folders.map((uri) => ({ uri, name: uri })),
      capabilities: {
        workspace: { workspaceFolders: true, didChangeWatchedFiles: { dynamicRegistration: true } },
        textDocument: { completion: { completionItem: { snippetSupport: true } } },
      },
      initializationOptions: { door: options.door ?? false, pages: options.pages ?? false },
    };
    connected.capabilities = ((await client.sendRequest('initialize', parameters)) as InitializeResult).capabilities;
    await client.sendNotification('initialized', {});
    return connected;
  }

  async open(uri: string, text: string): Promise<void> {
    this.versions.set(uri, 1);
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId: 'jobplan', version: 1, text },
    });
  }

  /** Sends changes as `[line, character, line, character, text]`; gives the new version. */
  async change(uri: string, ...changes: [number, number, number, number, string][]): Promise<number> {
    const version = (this.versions.get(uri) ?? 0) + 1;
    this.versions.set(uri, version);
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: changes.map(([line, character, endLine, endCharacter, text]) => ({
        range: { start: { line, character }, end: { line: endLine, character: endCharacter } },
        text,
      })),
    });
    return version;
  }

  /** Replaces the whole text of an open document; gives the new version. */
  async replace(uri: string, text: string): Promise<number> {
    const version = (this.versions.get(uri) ?? 0) + 1;
    this.versions.set(uri, version);
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ text }],
    });
    return version;
  }

  isOpen(uri: string): boolean {
    return this.versions.has(uri);
  }

  async close(uri: string): Promise<void> {
    await this.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
  }

  /** The last diagnostics of an address, once there are some that are as wanted. */
  async diagnostics(uri: string, wanted: (found: PublishDiagnosticsParams) => boolean): Promise<Diagnostic[]> {
    const last = () => this.published.filter((parameters) => parameters.uri === uri).at(-1);
    return new Promise((done) => {
      const look = () => {
        const found = last();
        if (found === undefined || !wanted(found)) return;
        this.waiting.delete(look);
        done(found.diagnostics);
      };
      this.waiting.add(look);
      look();
    });
  }

  stop(): void {
    this.connection.dispose();
  }
}

/** Where diagnostics stand and what they are called, one short line each. */
export function brief(diagnostics: readonly Diagnostic[]): string[] {
  return diagnostics.map(
    ({ range: { start, end }, code }) => `${start.line}:${start.character}-${end.line}:${end.character} ${code}`,
  );
}
