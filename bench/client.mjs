// A small client for measuring: one server in a process of its own, over stdio.
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const { createProtocolConnection, StreamMessageReader, StreamMessageWriter } = require('vscode-languageserver/node');

/** Milliseconds after which a missing answer ends the bench. */
const limit = 60_000;

export class Client {
  constructor(words) {
    this.child = spawn(process.execPath, words, { stdio: ['pipe', 'pipe', 'ignore'] });
    this.connection = createProtocolConnection(
      new StreamMessageReader(this.child.stdout),
      new StreamMessageWriter(this.child.stdin),
    );
    this.looks = new Set();
    this.last = performance.now();
    this.connection.onNotification('textDocument/publishDiagnostics', (published) => {
      this.last = performance.now();
      for (const look of [...this.looks]) look(published);
    });
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.listen();
    this.versions = new Map();
  }

  async start(folder) {
    await this.connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: folder,
      workspaceFolders: [{ uri: folder, name: 'bench' }],
      capabilities: { textDocument: { publishDiagnostics: { versionSupport: true } } },
    });
    await this.connection.sendNotification('initialized', {});
  }

  /** Opens a document; gives the milliseconds to its first findings, and them. */
  open(uri, text) {
    this.versions.set(uri, 1);
    return this.timed(uri, 1, () => true, 'textDocument/didOpen', {
      textDocument: { uri, languageId: 'jobplan', version: 1, text },
    });
  }

  /** Makes a change; gives the milliseconds to findings of that version which are as wanted. */
  change(uri, range, text, wanted) {
    const version = this.versions.get(uri) + 1;
    this.versions.set(uri, version);
    return this.timed(uri, version, wanted, 'textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ range, text }],
    });
  }

  timed(uri, version, wanted, method, parameters) {
    return new Promise((done, fail) => {
      const timer = setTimeout(() => fail(new Error(`${method}: no findings as wanted in ${limit} ms`)), limit);
      let began = 0;
      const look = (published) => {
        if (published.uri !== uri || (published.version ?? version) < version || !wanted(published.diagnostics)) return;
        const milliseconds = performance.now() - began;
        clearTimeout(timer);
        this.looks.delete(look);
        done({ milliseconds, diagnostics: published.diagnostics });
      };
      this.looks.add(look);
      began = performance.now();
      void this.connection.sendNotification(method, parameters);
    });
  }

  /** Waits until nothing was published for a while; gives the moment of the last. */
  async quiet(milliseconds = 700) {
    while (performance.now() - this.last < milliseconds) await new Promise((done) => setTimeout(done, 50));
    return this.last;
  }

  /** Resident memory in MiB, where the system tells. */
  memory() {
    try {
      return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${this.child.pid}/status`, 'utf8'))[1]) / 1024;
    } catch {
      return Number.NaN;
    }
  }

  stop() {
    this.connection.dispose();
    this.child.kill();
  }
}

export const median = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];
