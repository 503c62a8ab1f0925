import { describe, expect, test } from 'vitest';
import { version } from '../../package.json';
import { commands } from '../../server/command/commands';
import { Shop } from './shop';

const shop = new Shop();

describe('help', () => {
  test('lists every command with what it does', async () => {
    const { out, said, status } = await shop.type('--help');
    for (const { name, summary } of commands) {
      expect(out).toMatch(new RegExp(`^  ${name} `, 'm'));
      expect(out.replace(/\s+/g, ' ')).toContain(summary);
    }
    expect([said, status]).toEqual(['', 0]);
  });
  test.each(commands.map(({ name }) => name))(
    'of %s: about, options, examples that begin with its name',
    async (name) => {
      const { out, status } = await shop.type(name, '--help');
      expect(out).toMatch(new RegExp(`^Usage: jobplan ${name} `));
      expect(out).toContain(`\n  jobplan ${name}`);
      expect(status).toBe(0);
      expect((await shop.type('help', name)).out).toBe(out);
    },
  );
  test('without a word the help goes to standard error', async () => {
    const { out, said, status } = await shop.type();
    expect([out, status]).toEqual(['', 2]);
    expect(said).toContain('Usage: jobplan');
  });
});

test('the version', async () => {
  expect(await shop.type('--version')).toMatchObject({ out: `${version}\n`, status: 0 });
});

test.each([
  ['chekc', "unknown command 'chekc'\n(Did you mean check?)"],
  ['--hlep', "unknown option '--hlep'\n(Did you mean --help?)"],
  ['explain', "missing required argument 'name'"],
])('wrong usage: %s', async (word, message) => {
  const { out, said, status } = await shop.type(word);
  expect([out, status]).toEqual(['', 2]);
  expect(said).toContain(`jobplan: ${message}`);
});
