import type { Connection, ServerCapabilities } from 'vscode-languageserver';
import type { Session } from '../session';
import type { Log } from '../turns';

/** One feature of the editor, in a file of its own: what it announces, and how it answers. */
export interface Feature {
  readonly name: string;
  readonly capabilities: ServerCapabilities;
  register(connection: Connection, session: Session, log: Log): void;
}
