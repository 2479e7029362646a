// Once for the browser tests of the one file: builds it into a folder of this run's own. It is opened from there.

import { rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { TestProject } from 'vitest/node';
import { buildOneFile } from '../../src/app/serve/serve.mjs';

export default async function buildAndName(project: TestProject) {
  const given = process.env.KETTLEFIN_BUILT_WORKBENCH;
  const folder = given ?? join('dist', `one-file-under-test-${process.pid}`);
  if (given === undefined) await buildOneFile(folder);
  project.provide('workbenchAddress', pathToFileURL(resolve(folder, 'kettlefin.html')).href);
  return async () => {
    if (given === undefined) await rm(folder, { recursive: true, force: true });
  };
}
