// Once for the browser tests of the served workbench: builds it into a folder of this run's own and serves it.

import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { buildWorkbench, serveWorkbench } from '../../src/app/serve/serve.mjs';

const port = 4300;

export default async function buildAndServe(project: TestProject) {
  const given = process.env.KETTLEFIN_BUILT_WORKBENCH;
  const folder = given === undefined ? join('dist', `app-under-test-${process.pid}`) : join(given, 'app');
  if (given === undefined) await buildWorkbench(folder);
  const { address, close } = await serveWorkbench(folder, port);
  project.provide('workbenchAddress', address);
  return async () => {
    await close();
    if (given === undefined) await rm(folder, { recursive: true, force: true });
  };
}
