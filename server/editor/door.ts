import type { Connection } from 'vscode-languageserver';
import { listRequest, readRequest } from './protocol';

/** How closed files reach the server. Both answers are empty rather than an error when something cannot be read. */
export interface Door {
  /** The addresses of all job plan files in the given workspace folders. */
  list(folders: readonly string[]): Promise<readonly string[]>;
  /** The text of a file inside one of the folders, or null. */
  read(uri: string, folders: readonly string[]): Promise<string | null>;
}

/** The door of a client that lists and reads the files itself, on the desktop and in the browser alike. */
export function clientDoor(connection: Connection): Door {
  return {
    list: () => connection.sendRequest<string[]>(listRequest).catch(() => []),
    read: (uri) => connection.sendRequest<string | null>(readRequest, { uri }).catch(() => null),
  };
}

/** The door of a server that has neither a helping client nor a disk: only open files are known. */
export const noDoor: Door = {
  list: async () => [],
  read: async () => null,
};
