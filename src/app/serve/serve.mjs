// Builds the workbench into a folder, served or as one file, and serves a built folder on this machine only. Used by
// `npm start`, by the browser tests, by the benchmarks and by the script that takes the pictures, so that all of them see
// the same page.

import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/**
 * @param {string} folder  where the built page goes, from the project's root; emptied first
 */
export async function buildWorkbench(folder) {
  await build({
    root,
    configFile: `${root}/vite.config.ts`,
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true },
  });
}

/**
 * @param {string} folder  where `kettlefin.html` goes, from the project's root; other files there stay
 */
export async function buildOneFile(folder) {
  await build({
    root,
    configFile: `${root}/vite.config.ts`,
    mode: 'one-file',
    logLevel: 'error',
    build: { outDir: folder },
  });
}

/**
 * @param {string} folder  a built folder, from the project's root
 * @param {number} port    the port asked for; the next free one is taken if it is in use
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serveWorkbench(folder, port) {
  const server = await preview({
    root,
    configFile: `${root}/vite.config.ts`,
    logLevel: 'error',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port, strictPort: false, open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('The server started without a local address.');
  return { address, close: () => server.close() };
}
