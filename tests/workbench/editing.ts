import * as vscode from 'vscode';
import { ask, diagnostics, equal, includes, until } from './asking';
import { openFile } from './opened';
import { test } from './runner';

const plan = 'changeout-split.jobplan';

/** The position behind the first place in a document that reads so. */
function behind(document: vscode.TextDocument, before: string): vscode.Position {
  const at = document.getText().indexOf(before);
  if (at < 0) throw new Error(`no ${JSON.stringify(before)} in the document`);
  return document.positionAt(at + before.length);
}

/** Replaces the first place that reads so; the document is not saved. */
async function replace(document: vscode.TextDocument, before: string, after: string): Promise<void> {
  const end = behind(document, before);
  const edit = new vscode.WorkspaceEdit();
  const start = document.positionAt(document.offsetAt(end) - before.length);
  edit.replace(document.uri, new vscode.Range(start, end), after);
  await vscode.workspace.applyEdit(edit);
}

test('activates with the first plan', async () => {
  const document = await openFile(plan);
  equal(document.languageId, 'jobplan');
  const extension = vscode.extensions.getExtension('jobplan.jobplan');
  if (extension === undefined) throw new Error('the extension is not loaded');
  const { host } = await extension.activate();
  console.log(`# VS Code ${vscode.version}, extension host: ${host}`);
  equal(['node', 'web'].includes(host), true);
});

test('shows a finding while the text is wrong', async () => {
  const document = await openFile(plan);
  await replace(document, 'under quillbrook', 'under quilbrook');
  const wrong = (found: vscode.Diagnostic[]) => found.filter(({ message }) => message.includes('quilbrook'));
  const [finding] = wrong(await diagnostics(document.uri, (found) => wrong(found).length > 0));
  equal(finding?.severity, vscode.DiagnosticSeverity.Error);
  const actions = await ask<vscode.CodeAction[]>('vscode.executeCodeActionProvider', document.uri, finding?.range);
  includes(actions.map(({ title }) => title).join(), 'Write "quillbrook"');
  await replace(document, 'under quilbrook', 'under quillbrook');
  await diagnostics(document.uri, (found) => wrong(found).length === 0);
});

test('says in a hover how a part stands at a step', async () => {
  const document = await openFile(plan);
  const place = behind(document, 'drain suction-');
  const hovers = await ask<vscode.Hover[]>('vscode.executeHoverProvider', document.uri, place);
  const text = hovers.flatMap(({ contents }) => contents.map((each) => (each as vscode.MarkdownString).value)).join();
  includes(text, 'holds air, since step');
});

test('completes what may stand in a line', async () => {
  const document = await openFile(plan);
  const place = behind(document, 'follows ');
  const list = await ask<vscode.CompletionList>('vscode.executeCompletionItemProvider', document.uri, place);
  const labels = list.items.map(({ label }) => (typeof label === 'string' ? label : label.label));
  includes(labels.join(), 'line-set-reuse');
});

test('hints computed figures', async () => {
  const document = await openFile(plan);
  const whole = new vscode.Range(0, 0, document.lineCount, 0);
  const hints = await ask<vscode.InlayHint[]>('vscode.executeInlayHintProvider', document.uri, whole);
  includes(hints.map(({ label }) => label as string).join(), 'scf nitrogen');
});

test('has a lens above the plan that shows the procedure', async () => {
  const document = await openFile(plan);
  const lenses = await ask<vscode.CodeLens[]>('vscode.executeCodeLensProvider', document.uri);
  equal(lenses[0]?.command?.command, 'jobplan.showProcedure');
});

test('shows the procedure', async () => {
  await vscode.commands.executeCommand('jobplan.showProcedure');
  const shown = () => vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs.map(({ label }) => label));
  await until(vscode.window.tabGroups.onDidChangeTabs, () => shown().includes(`Procedure: ${plan}`));
});

test('has a view of the circuit at the cursor', async () => {
  await openFile(plan);
  const commands = await vscode.commands.getCommands();
  equal(commands.includes('jobplan.circuit.focus'), true);
  await vscode.commands.executeCommand('jobplan.circuit.focus');
});

test('shows the page of a check', async () => {
  const page = await vscode.workspace.openTextDocument(vscode.Uri.parse('jobplan-check:/open-under-pressure.md'));
  includes(page.getText(), '# open-under-pressure');
});
