import * as vscode from 'vscode';

/** Fails with both values when they differ. */
export function equal<T>(actual: T, expected: T): void {
  const [is, wanted] = [JSON.stringify(actual), JSON.stringify(expected)];
  if (is !== wanted) throw new Error(`expected ${wanted}, got ${is}`);
}

/** Fails with the text when it lacks what is wanted. */
export function includes(text: string, wanted: string): void {
  if (!text.includes(wanted)) throw new Error(`expected ${JSON.stringify(wanted)} in ${JSON.stringify(text)}`);
}

/** Asks what the editor itself asks, through one of its commands. */
export async function ask<T>(command: string, ...rest: unknown[]): Promise<T> {
  return vscode.commands.executeCommand<T>(command, ...rest);
}

/** The document's diagnostics, as soon as they are as wanted. */
export async function diagnostics(
  uri: vscode.Uri,
  wanted: (found: vscode.Diagnostic[]) => boolean,
): Promise<vscode.Diagnostic[]> {
  const now = () => vscode.languages.getDiagnostics(uri);
  await until(vscode.languages.onDidChangeDiagnostics, () => wanted(now()));
  return now();
}

/** Waits for an event after which the condition holds; it may hold already. */
export function until<T>(event: vscode.Event<T>, holds: () => boolean): Promise<void> {
  return new Promise((done) => {
    if (holds()) {
      done();
      return;
    }
    const subscription = event(() => {
      if (!holds()) return;
      subscription.dispose();
      done();
    });
  });
}
