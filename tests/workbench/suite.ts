/** The suite for a real workbench: it uses the vscode API and nothing else, and so runs in Node and in a browser alike. */
import './editing';
import { runAll } from './runner';

/** Called by the extension host; a rejection makes the run fail. */
export function run(): Promise<void> {
  return runAll();
}
