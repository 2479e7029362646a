// Everything that needs no browser. The browser tests have their own configuration in tests/browser/.

import { defineConfig } from 'vitest/config';
import { pageLibrary } from './src/app/serve/page-library.ts';

export default defineConfig({
  resolve: { alias: pageLibrary },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/browser/**', 'tests/bench/**'],
    environment: 'node',
    // The tests change no state of a module: files share what they import, which is a third of the time of all of them.
    isolate: false,
    // On two cores the runner itself would take one of them; it has little to do meanwhile.
    maxWorkers: 2,
    setupFiles: [
      'src/matter/every-refrigerant/index.ts',
      'src/assess/every-machine/index.ts',
      'src/assess/every-tank/index.ts',
    ],
    env: { TZ: 'UTC' },
    // A test that starts programs of its own takes minutes where others use the machine too.
    testTimeout: 240_000,
    hookTimeout: 240_000,
  },
});
