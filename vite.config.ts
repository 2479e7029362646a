// The workbench: one page, its worker, and the chart library in a file of its own that is loaded when a chart is shown.

import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
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
 * design's schema, the quantities) instead of loading it twice. `virtual:engine-worker` is the worker's address.
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
      if (!isBuild) return `export default ${JSON.stringify(worker)};`;
      const reference = this.emitFile({ type: 'chunk', id: `.${worker}`, name: 'engine.worker' });
      return `export default import.meta.ROLLUP_FILE_URL_${reference};`;
    },
  };
}

export default defineConfig({
  base: './',
  plugins: [react(), policyInPage(), sharedWorker()],
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
