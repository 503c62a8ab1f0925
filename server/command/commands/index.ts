import type { CommandDescription } from '../description';

/** A command before it is loaded: help and start-up need no more of those that are not asked for. */
export interface Listed {
  readonly name: string;
  readonly summary: string;
  readonly load: () => Promise<CommandDescription>;
}

/** Every command, in the order of the help. A new one is one file and its line here. */
export const commands: readonly Listed[] = [
  { name: 'check', summary: 'findings of files and folders', load: async () => (await import('./check')).check },
  { name: 'sheet', summary: 'the printable procedure of a plan', load: async () => (await import('./sheet')).sheet },
  {
    name: 'takeoff',
    summary: 'every computed figure of a plan, and the totals',
    load: async () => (await import('./takeoff')).takeoff,
  },
  { name: 'state', summary: 'what each part holds after each step', load: async () => (await import('./state')).state },
  { name: 'format', summary: 'canonical layout, in place', load: async () => (await import('./format')).format },
  {
    name: 'figure',
    summary: 'the relations that the engine knows, or one of them computed',
    load: async () => (await import('./figure')).figure,
  },
  {
    name: 'properties',
    summary: 'saturation properties of a refrigerant',
    load: async () => (await import('./properties')).properties,
  },
  {
    name: 'explain',
    summary: 'the page of a check, a word of the language or a figure',
    load: async () => (await import('./explain')).explain,
  },
];
