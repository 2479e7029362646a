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

export default defineConfig({
  base: './',
  plugins: [react(), policyInPage()],
  worker: { format: 'es' },
  build: {
    outDir: 'dist/app',
    target: 'es2023',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    // The chart library alone is larger than the usual warning allows; it is not part of the first load.
    chunkSizeWarningLimit: 5000,
  },
  preview: { headers: answerHeaders },
});
