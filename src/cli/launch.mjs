// `npm run -s kettlefin`: starts the command line in this process. The TypeScript source is bundled first if no bundle of
// exactly these source and data files exists; a bundle is found by a fingerprint of names, sizes and times, so starting
// from a finished one costs a walk over the folders and nothing else. Bundling is silent; its faults go to stderr.

import { createHash } from 'node:crypto';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { stripVTControlCharacters } from 'node:util';
import { buildForNode, root } from './build.mjs';

const bundles = join(root, 'dist', 'cli');
/** What can change the bundle; the workbench cannot. */
const watched = ['src', 'data', 'package-lock.json'];
const unwatched = join(root, 'src', 'app');
/** Bundles of older sources that are kept: a start that has just found one must be able to read it. */
const olderBundlesKept = 3;
/** Not one of the command line's own exit codes: the program itself is broken. */
const cannotBuild = 70;

const folder = join(bundles, fingerprint());
const entry = join(folder, 'entry.js');
if (await isBuilt()) await import(pathToFileURL(entry).href);

async function isBuilt() {
  if (existsSync(entry)) return true;
  try {
    await buildForNode(join(root, 'src', 'cli', 'entry.ts'), folder);
    await removeOldBundles();
    return true;
  } catch (error) {
    const message = stripVTControlCharacters(error instanceof Error ? error.message : String(error));
    process.stderr.write(`The command line could not be built (has "npm ci" been run?):\n${message}\n`);
    process.exitCode = cannotBuild;
    return false;
  }
}

function fingerprint() {
  const hash = createHash('sha256');
  for (const name of watched) add(join(root, name));
  return hash.digest('hex').slice(0, 16);

  /** @param {string} path */
  function add(path) {
    if (path === unwatched) return;
    const facts = statSync(path);
    if (facts.isDirectory()) {
      for (const name of readdirSync(path).sort()) add(join(path, name));
    } else {
      hash.update(`${path}\0${facts.size}\0${facts.mtimeMs}\n`);
    }
  }
}

async function removeOldBundles() {
  const others = (await readdir(bundles)).filter((name) => join(bundles, name) !== folder);
  const dated = await Promise.all(
    others.map(async (name) => ({
      name,
      time: (await stat(join(bundles, name)).catch(() => undefined))?.mtimeMs ?? 0,
    })),
  );
  dated.sort((a, b) => b.time - a.time);
  for (const { name } of dated.slice(olderBundlesKept)) {
    await rm(join(bundles, name), { recursive: true, force: true });
  }
}
