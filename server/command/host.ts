import type { Readable } from 'node:stream';
import { styleText } from 'node:util';

/** What the command line asks of the machine, besides files: tests hand over their own. */
export interface Host {
  /** The folder that it was started in; paths are relative to it. */
  readonly folder: string;
  readonly out: (piece: string | Uint8Array) => void;
  readonly say: (message: string) => void;
  /** All of standard input. */
  readonly input: () => Promise<Uint8Array>;
  readonly outIsTerminal: boolean;
  readonly sayIsTerminal: boolean;
  readonly columns: number;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** The date of the day, `2027-05-18`. */
  readonly today: () => string;
}

export type Style = Parameters<typeof styleText>[0];
export type Paint = (style: Style, text: string) => string;

/** Colours for a terminal that takes them; plain words everywhere else, and where NO_COLOR is set to anything. */
export function paintFor(host: Host): Paint {
  const { NO_COLOR, TERM } = host.environment;
  const colours = host.outIsTerminal && (NO_COLOR === undefined || NO_COLOR === '') && TERM !== 'dumb';
  return colours ? (style, text) => styleText(style, text, { validateStream: false }) : (_, text) => text;
}

async function all(stream: Readable): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

/** The local date: the one on the calendar of whoever does the work. */
function dateOf(now: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export const nodeHost = (): Host => ({
  folder: process.cwd(),
  out: (piece) => void process.stdout.write(piece),
  say: (message) => void process.stderr.write(message),
  input: () => all(process.stdin),
  outIsTerminal: process.stdout.isTTY === true,
  sayIsTerminal: process.stderr.isTTY === true,
  columns: process.stdout.columns ?? 100,
  environment: process.env,
  today: () => dateOf(new Date()),
});
