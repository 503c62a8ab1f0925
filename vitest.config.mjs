import { defineConfig } from 'vitest/config';

/** Hands a font over as its bytes, as the bundler's `binary` loader does. */
const fontBytes = {
  name: 'font-bytes',
  enforce: 'pre',
  load: (id) =>
    id.endsWith('.ttf')
      ? `import { readFileSync } from 'node:fs';\nexport default new Uint8Array(readFileSync(${JSON.stringify(id)}));`
      : null,
};

export default defineConfig({
  plugins: [fontBytes],
  // A machine under load takes several times as long as a quiet one: a limit that ends a hang, not one that times a test.
  test: { setupFiles: ['tests/properties.ts'], testTimeout: 60_000 },
});
