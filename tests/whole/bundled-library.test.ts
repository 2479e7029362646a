// The library inside another program's bundle: a bundler leaves out modules that package.json says have no effect of their
// own, and the coefficient files must not be among them.

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { buildForNode, root } from '../../src/cli/build.mjs';

// Lemmon, McLinden & Wagner (2009), J. Chem. Eng. Data 54, 3141: triple point of propane 85.525 K; the fluid must be there.
test('a program that imports the library and nothing else finds every refrigerant', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'kettlefin-'));
  try {
    const program = join(folder, 'program.ts');
    const library = JSON.stringify(join(root, 'src', 'index.ts'));
    await writeFile(
      program,
      `import { refrigerant, refrigerantNames } from ${library};
       export const coldest = Object.fromEntries(
         refrigerantNames.map((name) => [name, refrigerant(name).limits.temperatureMin]));`,
    );
    await buildForNode(program, join(folder, 'built'));
    const { coldest } = await import(pathToFileURL(join(folder, 'built', 'entry.js')).href);
    expect(Object.keys(coldest)).toHaveLength(25);
    expect(coldest.R290).toBe(85.525);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
