// Bundles one TypeScript entry into one file that Node.js runs by itself.

import { rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Builds beside the target and renames at the end, so that nobody ever runs half a build, also when two start at once.
 * @param {string} entry   TypeScript file, absolute
 * @param {string} folder  absolute; holds `entry.js` afterwards
 */
export async function buildForNode(entry, folder) {
  const { build } = await import('vite');
  const unfinished = `${dirname(folder)}/unfinished-${process.pid}`;
  await build({
    root,
    configFile: false,
    logLevel: 'silent',
    ssr: { noExternal: true },
    build: {
      ssr: entry,
      target: 'node20',
      outDir: unfinished,
      emptyOutDir: true,
      copyPublicDir: false,
      rolldownOptions: { output: { entryFileNames: 'entry.js', codeSplitting: false } },
    },
  });
  try {
    await rename(unfinished, folder);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    // Somebody else has finished the very same build in the meantime: theirs is as good.
    if (code !== 'ENOTEMPTY' && code !== 'EEXIST') throw error;
    await rm(unfinished, { recursive: true, force: true });
  }
}
