import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { diskDoor } from '../../server/editor/door-disk';
import type { Host } from '../../server/editor/serve';
import { brief, Connected } from './connected';
import { wordFinder } from './word-finder';

const host: Host = { makeWorkspace: wordFinder, features: [], ownDoor: diskDoor };
let home: string;
let shop: string;
let client: Connected | undefined;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'jobplan-frame-'));
  shop = join(home, 'shop');
  mkdirSync(join(shop, 'jobs'), { recursive: true });
});

afterEach(() => {
  client?.stop();
  rmSync(home, { recursive: true, force: true });
});

const uri = (...names: string[]) => pathToFileURL(join(shop, ...names)).href;
const write = (text: string, ...names: string[]) => writeFileSync(join(shop, ...names), text);

test('findings follow the edits of an open document', async () => {
  client = await Connected.start(host, [uri()]);
  const plan = uri('plan.jobplan');
  await client.open(plan, 'right\r\nwrong thing\r\n');
  expect(brief(await client.diagnostics(plan, ({ version }) => version === 1))).toEqual(['1:0-1:5 wrong-word']);
  let version = await client.change(plan, [0, 0, 0, 0, 'above\r\n'], [0, 0, 0, 5, 'wrong']);
  expect(brief(await client.diagnostics(plan, (found) => found.version === version))).toEqual([
    '0:0-0:5 wrong-word',
    '2:0-2:5 wrong-word',
  ]);
  version = await client.change(plan, [0, 0, 3, 0, '']);
  expect(await client.diagnostics(plan, (found) => found.version === version)).toEqual([]);
});

test('several changes at once give the findings of the last', async () => {
  client = await Connected.start(host, [uri()]);
  const plan = uri('plan.jobplan');
  await client.open(plan, 'right\n');
  await Promise.all('wrong'.split('').map((letter, at) => client?.change(plan, [1, at, 1, at, letter])));
  expect(brief(await client.diagnostics(plan, ({ version }) => version === 6))).toEqual(['1:0-1:5 wrong-word']);
});

test('closed files have findings too, and lose them with the file', async () => {
  write('wrong\n', 'jobs', 'a b.jobplan');
  write('wrong\n', 'other.txt');
  client = await Connected.start(host, [uri()]);
  const closed = uri('jobs', 'a b.jobplan');
  expect(brief(await client.diagnostics(closed, () => true))).toEqual(['0:0-0:5 wrong-word']);
  rmSync(join(shop, 'jobs/a b.jobplan'));
  await client.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri: closed, type: 3 }] });
  await client.diagnostics(closed, ({ diagnostics }) => diagnostics.length === 0);
  expect(client.published.map((found) => found.uri)).not.toContain(uri('other.txt'));
});

test('a document that is closed without saving is again what the disk says', async () => {
  write('right\n', 'plan.jobplan');
  client = await Connected.start(host, [uri()]);
  const plan = uri('plan.jobplan');
  await client.open(plan, 'wrong\n');
  await client.diagnostics(plan, ({ diagnostics }) => diagnostics.length === 1);
  await client.close(plan);
  await client.diagnostics(plan, ({ diagnostics }) => diagnostics.length === 0);
});

test('nothing outside the folder is read, links or not', async () => {
  writeFileSync(join(home, 'secret.jobplan'), 'wrong\n');
  symlinkSync(join(home, 'secret.jobplan'), join(shop, 'link.jobplan'));
  symlinkSync(home, join(shop, 'linked'));
  write('use "link.jobplan"\nuse "linked/secret.jobplan"\nuse "../secret.jobplan"\nuse "jobs"\n', 'plan.jobplan');
  client = await Connected.start(host, [uri()]);
  const found = await client.diagnostics(uri('plan.jobplan'), () => true);
  expect(found.map(({ message }) => message)).toEqual([
    'No link.jobplan.',
    'No linked/secret.jobplan.',
    'No ../secret.jobplan.',
    'No jobs.',
  ]);
});

test('a client with a door is asked instead of the disk', async () => {
  write('wrong\n', 'on-disk.jobplan');
  const asked: string[] = [];
  const answers = {
    'jobplan/list': () => ['memory:/shop/a.jobplan'],
    'jobplan/read': ({ uri: address }: { uri: string }) => {
      asked.push(address);
      return address.endsWith('/a.jobplan') ? 'use "b.jobplan"\n' : 'wrong\n';
    },
  };
  client = await Connected.start(host, ['memory:/shop'], { door: true, answers });
  await client.diagnostics('memory:/shop/b.jobplan', ({ diagnostics }) => diagnostics.length === 1);
  expect(asked).toEqual(['memory:/shop/a.jobplan', 'memory:/shop/b.jobplan']);
});

test('a document that was never saved has findings of its own', async () => {
  client = await Connected.start(host, [uri()]);
  await client.open('untitled:Untitled-1', 'wrong\n');
  await client.diagnostics('untitled:Untitled-1', ({ diagnostics }) => diagnostics.length === 1);
  await client.close('untitled:Untitled-1');
  await client.diagnostics('untitled:Untitled-1', ({ diagnostics }) => diagnostics.length === 0);
});

test('a folder that is added brings its files, and takes them with it', async () => {
  write('wrong\n', 'plan.jobplan');
  client = await Connected.start(host, []);
  const folder = { uri: uri(), name: 'shop' };
  const plan = uri('plan.jobplan');
  const change = (added: object[], removed: object[]) =>
    client?.connection.sendNotification('workspace/didChangeWorkspaceFolders', { event: { added, removed } });
  await change([folder], []);
  await client.diagnostics(plan, ({ diagnostics }) => diagnostics.length === 1);
  await change([], [folder]);
  await client.diagnostics(plan, ({ diagnostics }) => diagnostics.length === 0);
});

test('an error in one file is logged, and the server goes on', async () => {
  const broken: Host = {
    ...host,
    makeWorkspace() {
      const workspace = wordFinder();
      return {
        ...workspace,
        snapshot() {
          const snapshot = workspace.snapshot();
          return {
            ...snapshot,
            findings(path) {
              if (snapshot.file(path)?.text.includes('boom')) throw new Error('boom');
              return snapshot.findings(path);
            },
          };
        },
      };
    },
  };
  client = await Connected.start(broken, [uri()]);
  const plan = uri('plan.jobplan');
  await client.open(plan, 'boom\n');
  const version = await client.change(plan, [0, 0, 0, 4, 'wrong']);
  expect(brief(await client.diagnostics(plan, (found) => found.version === version))).toEqual(['0:0-0:5 wrong-word']);
});

test('where the checks take long, the text is answered at once, with what the last check found beside it', async () => {
  let checks = 0;
  const slow: Host = {
    ...host,
    makeWorkspace() {
      const workspace = wordFinder();
      return {
        ...workspace,
        snapshot() {
          const snapshot = workspace.snapshot();
          return {
            ...snapshot,
            findings(path) {
              // Work of 30 ms, more than goes out with a key press; it finds the first statement wanting.
              for (const until = performance.now() + 30; performance.now() < until; );
              checks += 1;
              const item = snapshot.file(path)?.tree.items[0];
              const plain = snapshot.plainFindings(path);
              if (item === undefined) return plain;
              const at = { file: path, item, from: 0, to: 5 };
              return [...plain, { name: 'check', severity: 'warning', message: 'Late.', at, related: [], fixes: [] }];
            },
          };
        },
      };
    },
  };
  client = await Connected.start(slow, [uri()]);
  const plan = uri('plan.jobplan');
  await client.open(plan, 'right\nright\n');
  expect(brief(await client.diagnostics(plan, ({ version }) => version === 1))).toEqual(['0:0-0:5 check']);
  const before = checks;
  const version = await client.change(plan, [1, 0, 1, 5, 'wrong']);
  const first = await client.diagnostics(plan, (found) => found.version === version);
  expect(checks).toBe(before);
  expect(brief(first)).toEqual(['1:0-1:5 wrong-word', '0:0-0:5 check']);
  const next = await client.change(plan, [1, 0, 1, 5, 'right']);
  expect(brief(await client.diagnostics(plan, (found) => found.version === next))).toEqual(['0:0-0:5 check']);
  while (checks === before) await new Promise((done) => setTimeout(done, 10));
});
