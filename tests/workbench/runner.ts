/** A runner small enough for every extension host: no file system, no terminal, no page. */

const tests: { name: string; body: () => Promise<void> }[] = [];

/** Registers a test; tests run in the order in which they were registered. */
export function test(name: string, body: () => Promise<void>): void {
  tests.push({ name, body });
}

/** Runs all tests, one console line each, and rejects if any failed. `limit` is in milliseconds, for one test. */
export async function runAll(limit = 20_000): Promise<void> {
  let failed = 0;
  for (const { name, body } of tests) {
    const began = Date.now();
    try {
      await within(limit, body());
      console.log(`ok ${name} (${Date.now() - began} ms)`);
    } catch (error) {
      failed += 1;
      console.log(`not ok ${name}: ${error instanceof Error ? error.stack : String(error)}`);
    }
  }
  console.log(`${tests.length - failed} passed, ${failed} failed`);
  if (failed > 0) throw new Error(`${failed} of ${tests.length} failed`);
}

function within<T>(limit: number, work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout>;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no result within ${limit} ms`)), limit);
  });
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
}
