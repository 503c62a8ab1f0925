import type { Command, Option } from 'commander';
import type { Host } from './host';

/** One command: its arguments and options as the help shows them, and what it does; it gives the exit status. */
export interface CommandDescription {
  /** What it does, in a sentence or two behind the summary. */
  readonly about: string;
  /** Arguments as `[name, meaning]`, in commander's notation: `<file>`, `[path...]`. */
  readonly takes: readonly (readonly [name: string, meaning: string])[];
  readonly options: readonly Option[];
  /** Lines that one could type. */
  readonly examples: readonly string[];
  readonly run: (host: Host, words: Words) => Promise<number>;
}

/** What was typed, as commander has read it. */
export interface Words {
  /** An argument that is always there. */
  readonly one: (index: number) => string;
  /** An argument that may be left out. */
  readonly maybe: (index: number) => string | undefined;
  readonly several: (index: number) => readonly string[];
  /** An option's value, or its default. */
  readonly option: <T = string>(name: string) => T | undefined;
}

export const wordsOf = (command: Command): Words => ({
  one: (index) => command.processedArgs[index] as string,
  maybe: (index) => command.processedArgs[index] as string | undefined,
  several: (index) => (command.processedArgs[index] as readonly string[] | undefined) ?? [],
  option: <T>(name: string) => command.opts()[name] as T | undefined,
});
