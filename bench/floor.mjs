// The floor under a language server: the same connection and incremental documents, and no language at all. It answers
// each change with a finding on the changed line if the line holds the mark.
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const {
  createConnection,
  ProposedFeatures,
  TextDocuments,
  TextDocumentSyncKind,
} = require('vscode-languageserver/node');
const { TextDocument } = require('vscode-languageserver-textdocument');

const mark = '\u2717';
const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout);
const documents = new TextDocuments(TextDocument);
connection.onInitialize(() => ({ capabilities: { textDocumentSync: TextDocumentSyncKind.Incremental } }));
documents.onDidChangeContent(({ document }) => {
  const at = document.getText().indexOf(mark);
  const range = { start: document.positionAt(at), end: document.positionAt(at + 1) };
  const diagnostics = at < 0 ? [] : [{ range, severity: 1, message: 'the mark' }];
  void connection.sendDiagnostics({ uri: document.uri, version: document.version, diagnostics });
});
documents.listen(connection);
connection.listen();
