// SHA-256 after FIPS 180-4 (NIST, August 2015), sections 4.1.2, 5.1.1, 5.3.3 and 6.2.2. The engine runs in a browser
// worker too, where node's own hash is not there and the web's is asynchronous.

/** First 32 bits of the fractional parts of the square or cube roots of the first primes (FIPS 180-4, 4.2.2, 5.3.3). */
function rootFractions(count: number, root: (prime: number) => number): Uint32Array {
  const fractions = new Uint32Array(count);
  let found = 0;
  for (let candidate = 2; found < count; candidate++) {
    let prime = true;
    for (let divisor = 2; divisor * divisor <= candidate; divisor++) if (candidate % divisor === 0) prime = false;
    if (!prime) continue;
    const value = root(candidate);
    fractions[found++] = Math.floor((value - Math.floor(value)) * 2 ** 32);
  }
  return fractions;
}

const roundConstants = rootFractions(64, Math.cbrt);
const firstState = rootFractions(8, Math.sqrt);

const turn = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

/** The message with its end mark and its length in bits, in whole blocks of 64 bytes. */
function padded(message: Uint8Array): DataView {
  const length = Math.ceil((message.length + 9) / 64) * 64;
  const bytes = new Uint8Array(length);
  bytes.set(message);
  bytes[message.length] = 0x80;
  const view = new DataView(bytes.buffer);
  view.setUint32(length - 8, Math.floor(message.length / 2 ** 29));
  view.setUint32(length - 4, (message.length * 8) >>> 0);
  return view;
}

function compress(state: Uint32Array, view: DataView, offset: number, schedule: Uint32Array): void {
  for (let t = 0; t < 16; t++) schedule[t] = view.getUint32(offset + 4 * t);
  for (let t = 16; t < 64; t++) {
    const early = schedule[t - 15]!;
    const late = schedule[t - 2]!;
    const sigma0 = turn(early, 7) ^ turn(early, 18) ^ (early >>> 3);
    const sigma1 = turn(late, 17) ^ turn(late, 19) ^ (late >>> 10);
    schedule[t] = sigma1 + schedule[t - 7]! + sigma0 + schedule[t - 16]!;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [number, number, number, number, number, number, number, number];
  for (let t = 0; t < 64; t++) {
    const sum1 = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
    const choice = (e & f) ^ (~e & g);
    const first = (h + sum1 + choice + roundConstants[t]! + schedule[t]!) | 0;
    const sum0 = turn(a, 2) ^ turn(a, 13) ^ turn(a, 22);
    const majority = (a & b) ^ (a & c) ^ (b & c);
    const second = (sum0 + majority) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + first) | 0;
    d = c;
    c = b;
    b = a;
    a = (first + second) | 0;
  }
  for (const [index, word] of [a, b, c, d, e, f, g, h].entries()) state[index] = state[index]! + word;
}

/** SHA-256 of bytes as 64 lower-case hexadecimal signs. */
export function sha256(message: Uint8Array): string {
  const view = padded(message);
  const state = firstState.slice();
  const schedule = new Uint32Array(64);
  for (let offset = 0; offset < view.byteLength; offset += 64) compress(state, view, offset, schedule);
  return [...state].map((word) => word.toString(16).padStart(8, '0')).join('');
}

/**
 * The hash of everything that a plan draws in: its own file and all used ones. Files count in the order of their
 * names, each with its length, so that no text can pass from one file to the next unnoticed.
 */
export function contentHash(files: readonly { readonly path: string; readonly text: string }[]): string {
  const inOrder = [...files].sort((one, other) => (one.path < other.path ? -1 : one.path > other.path ? 1 : 0));
  const all = inOrder.map(({ path, text }) => `${path.length}:${path}${text.length}:${text}`).join('');
  return sha256(new TextEncoder().encode(all));
}
