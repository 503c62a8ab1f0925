import { cpSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, vi } from 'vitest';
import { commands } from '../../server/command/commands';
import type { Host } from '../../server/command/host';
import { run } from '../../server/command/run';

/** What came of a command: the exit status, standard output, standard error. */
export interface Ended {
  readonly status: number;
  readonly out: string;
  readonly said: string;
  readonly bytes: Uint8Array;
}

// Plans are walked as often as they are typed, on machines that may be busy.
vi.setConfig({ testTimeout: 60_000 });

// The first load of a command makes the test runner read the whole engine, which must not count as the test's own time.
beforeAll(async () => {
  for (const { load } of commands) await load();
}, 120_000);

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A folder of a shop of its own, in which commands are typed. */
export class Shop {
  readonly folder: string;

  constructor(files: Readonly<Record<string, string | Uint8Array>> = {}) {
    this.folder = realpathSync(mkdtempSync(join(tmpdir(), 'jobplan-shop-')));
    folders.push(this.folder);
    for (const [path, text] of Object.entries(files)) this.write(path, text);
  }

  /** A shop with the sample plans in it. */
  static withSamples(): Shop {
    const shop = new Shop();
    cpSync(join(import.meta.dirname, '../fixtures/samples'), shop.folder, { recursive: true });
    return shop;
  }

  write(path: string, text: string | Uint8Array): void {
    mkdirSync(dirname(this.path(path)), { recursive: true });
    writeFileSync(this.path(path), text);
  }

  path = (path: string): string => join(this.folder, path);
  read = (path: string): string => readFileSync(this.path(path), 'utf8');

  type = (...words: readonly string[]): Promise<Ended> => this.typeWith({}, ...words);

  /** Types a command on another machine: `input` is what standard input holds. */
  async typeWith(machine: Partial<Host> & { readonly typed?: string }, ...words: readonly string[]): Promise<Ended> {
    const pieces: Uint8Array[] = [];
    let said = '';
    const { typed, ...other } = machine;
    const host: Host = {
      folder: this.folder,
      out: (piece) => void pieces.push(Buffer.from(piece)),
      say: (message) => {
        said += message;
      },
      input: async () => Buffer.from(typed ?? ''),
      outIsTerminal: false,
      sayIsTerminal: false,
      columns: 100,
      environment: {},
      today: () => '2027-05-18',
      ...other,
    };
    const status = await run(words, host);
    const bytes = Buffer.concat(pieces);
    return { status, out: bytes.toString('utf8'), bytes, said };
  }
}

/** What a command wrote as JSON. */
export const json = ({ out }: Ended): unknown => JSON.parse(out);
