import * as vscode from 'vscode';
import { equal, until } from './asking';
import { openFile } from './opened';
import { test } from './runner';

test('activates with the first plan', async () => {
  const document = await openFile('changeout-split.jobplan');
  equal(document.languageId, 'jobplan');
  const extension = vscode.extensions.getExtension('jobplan.jobplan');
  if (extension === undefined) throw new Error('the extension is not loaded');
  const { host } = await extension.activate();
  console.log(`# VS Code ${vscode.version}, extension host: ${host}`);
  equal(['node', 'web'].includes(host), true);
});

test('shows the procedure', async () => {
  await vscode.commands.executeCommand('jobplan.showProcedure');
  const shown = () => vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs.map(({ label }) => label));
  await until(vscode.window.tabGroups.onDidChangeTabs, () => shown().includes('Procedure: changeout-split.jobplan'));
});
