// The workbench, built in two forms: served (one page, its worker, and the chart library in a file of its own that is
// loaded when a chart is shown), and as one file (see src/app/serve/one-file.ts).

import { defineConfig, type Plugin } from 'vite';
import { oneFile, oneFileBuild, oneFileMode } from './src/app/serve/one-file.ts';
import { pageLibrary } from './src/app/serve/page-library.ts';
import { answerHeaders, pagePolicy } from './src/app/serve/policy.mjs';

/** States the content security policy inside the built page too. */
function policyInPage(): Plugin {
  return {
    name: 'policy-in-page',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/**
 * Builds the engine's worker as one more entry of the page's own build, so that both share what they have in common (the
 * design's schema, the quantities) instead of loading it twice. `virtual:engine-worker` starts the worker.
 */
function sharedWorker(): Plugin {
  const name = 'virtual:engine-worker';
  const resolved = `\0${name}`;
  const worker = '/src/app/worker/engine.worker.ts';
  let isBuild = false;
  return {
    name: 'shared-worker',
    configResolved(config) {
      isBuild = config.command === 'build';
    },
    resolveId: (id) => (id === name ? resolved : undefined),
    load(id) {
      if (id !== resolved) return undefined;
      const address = isBuild
        ? `import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'chunk', id: `.${worker}`, name: 'engine.worker' })}`
        : JSON.stringify(worker);
      return `export default () => new Worker(${address}, { type: 'module' });`;
    },
  };
}

const served = defineConfig({
  base: './',
  resolve: { alias: pageLibrary },
  plugins: [policyInPage(), sharedWorker()],
  worker: { format: 'es' },
  build: {
    outDir: 'dist/app',
    target: 'es2023',
    modulePreload: {
      polyfill: false,
      // Preloading goes through the document, which the worker does not have.
      resolveDependencies: (_file, dependencies, { hostId }) => (hostId.includes('engine.worker') ? [] : dependencies),
    },
    assetsInlineLimit: 0,
    // The chart library alone is larger than the usual warning allows; it is not part of the first load.
    chunkSizeWarningLimit: 5000,
  },
  preview: { headers: answerHeaders },
});

/** `vite build --mode one-file`: everything in one HTML file. */
const inOneFile = defineConfig({
  base: './',
  resolve: { alias: pageLibrary },
  plugins: [oneFile()],
  build: { ...oneFileBuild, target: 'es2023', chunkSizeWarningLimit: 5000 },
});

export default defineConfig(({ mode }) => (mode === oneFileMode ? inOneFile : served));
