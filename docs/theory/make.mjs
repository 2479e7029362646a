// `npm run documents`: writes the formulas into the pages of docs/theory from the formula records of the engine.

import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildForNode, root } from '../../src/cli/build.mjs';

const folder = join(root, 'dist', `theory-${process.pid}`);
const target = join(root, 'docs', 'theory');

try {
  await buildForNode(join(target, 'gather.ts'), folder);
  const { theoryPages, theoryText } = await import(pathToFileURL(join(folder, 'entry.js')).href);
  /** @type {readonly import('./gather.ts').TheoryPage[]} */
  const pages = theoryPages();
  if (pages.length === 0) throw new Error('no formula record was found');
  for (const page of pages) {
    const path = join(target, page.name);
    const present = await readFile(path, 'utf8').catch(() => undefined);
    await writeFile(path, theoryText(page, present));
  }
  const list = pages.map(({ name, title }) => `- [${title}](${name})`).join('\n');
  await writeFile(
    join(target, 'README.md'),
    `# Theory\n\nOne page per folder of the engine: what the model is, what it leaves out, how far to believe it, then every formula with its symbols, source, range and the file that computes it. The formulas and this list are written by \`npm run documents\`.\n\n${list}\n`,
  );
  console.log(`${pages.length} pages written to docs/theory`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
