/** Folders that hold no plans of the shop's own: whoever lists files, on the command line or in an editor, passes them by. */
export const passedBy: ReadonlySet<string> = new Set(['node_modules', 'dist']);
