// Tests that drive the built workbench in a real browser: npx vitest run --config tests/browser/vitest.config.ts
// The same files run twice: "served" against the page as a server hands it out, "one file" against the page opened from
// the disk with the network cut. What cannot differ between the two runs once, in served/, beside what only a served page
// has; what only the one file has stands in one-file/. One form alone:
// --project served, --project 'one file'.

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

const both = 'tests/browser/*.test.ts';

const common = {
  environment: 'node',
  // The tests change no state of a module: files share what they import.
  isolate: false,
  // A wait that is met costs nothing; on a slow machine that others use too, one answer may take many seconds.
  testTimeout: 180_000,
  hookTimeout: 180_000,
  expect: { poll: { timeout: 20_000 } },
  // Some tests compare the page with what the engine answers in Node.
  setupFiles: [
    'src/matter/every-refrigerant/index.ts',
    'src/assess/every-machine/index.ts',
    'src/assess/every-tank/index.ts',
  ],
};

export default defineConfig({
  root,
  test: {
    // Each file starts a browser of its own; more at once than this only slow each other down.
    maxWorkers: 2,
    projects: [
      {
        root,
        test: {
          ...common,
          name: 'served',
          include: [both, 'tests/browser/served/*.test.ts'],
          globalSetup: ['tests/browser/build-and-serve.ts'],
        },
      },
      {
        root,
        test: {
          ...common,
          name: 'one file',
          include: [both, 'tests/browser/one-file/*.test.ts'],
          globalSetup: ['tests/browser/build-one-file.ts'],
        },
      },
    ],
  },
});
