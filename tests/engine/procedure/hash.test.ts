import { describe, expect, test } from 'vitest';
import { contentHash, sha256 } from '../../../server/engine/procedure/hash';

const bytes = (text: string) => new TextEncoder().encode(text);

// Messages and digests: NIST, "SHA-256 example values" to FIPS 180-4 and the SHA test vectors of the validation
// programme (empty, one block, two blocks, long message).
const vectors: readonly (readonly [string, string, string])[] = [
  ['nothing', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['24 bits', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    '448 bits: the length needs a block of its own',
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  [
    '896 bits',
    'abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu',
    'cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1',
  ],
  ['a million a', 'a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
];

describe('SHA-256', () => {
  test.each(vectors)('%s', (_name, message, digest) => {
    expect(sha256(bytes(message))).toBe(digest);
  });
});

describe('content hash', () => {
  const job = { path: 'job.jobplan', text: 'plan a' };
  const house = { path: 'house.jobplan', text: 'house-rules b' };
  test('does not depend on the order in which files were read', () => {
    expect(contentHash([job, house])).toBe(contentHash([house, job]));
  });
  test.each([
    ['a changed text', [job, { ...house, text: 'house-rules c' }]],
    ['a file less', [job]],
    ['a renamed file', [job, { ...house, path: 'home.jobplan' }]],
    [
      'text moved from one file to the other',
      [
        { ...job, text: 'plan ' },
        { ...house, text: 'ahouse-rules b' },
      ],
    ],
  ])('sees %s', (_name, files) => {
    expect(contentHash(files)).not.toBe(contentHash([job, house]));
  });
});
