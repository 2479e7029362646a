// `npm run pictures`: builds the workbench, opens it in a browser and takes the screenshots that the documents show. With
// names behind it, those only.

import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { buildWorkbench, serveWorkbench } from '../../src/app/serve/serve.mjs';
import { root } from '../../src/cli/build.mjs';
import { startBrowser } from '../../tests/browser/browser.mjs';
import { scenes } from './scenes.mjs';

const named = process.argv.slice(2);
const wanted = named.length === 0 ? scenes : scenes.filter(({ name }) => named.includes(name));
if (wanted.length === 0)
  throw new Error(`No picture of that name. Pictures: ${scenes.map(({ name }) => name).join(', ')}`);
const folder = join('dist', `pictures-${process.pid}`);
await buildWorkbench(folder);
const { address, close } = await serveWorkbench(folder, 4700);
const browser = await startBrowser();
try {
  for (const scene of wanted) await take(scene);
} finally {
  await browser.close();
  await close();
  await rm(join(root, folder), { recursive: true, force: true });
}

/** @param {import('./scenes.mjs').Scene} scene */
async function take({ name, address: page = '', width = 1180, height = 900, colorScheme = 'light', act, part, from }) {
  const context = await browser.newContext({
    viewport: { width, height },
    locale: 'en-GB',
    colorScheme,
    deviceScaleFactor: 1.25,
  });
  const open = await context.newPage();
  await open.goto(address + page);
  await open.waitForSelector('#verdict .verdict-sentence, .station-answer');
  await act?.(open);
  await open.waitForLoadState('networkidle');
  await open.evaluate(() => document.fonts.ready.then(() => undefined));
  // Charts are drawn when they come into sight, and answers follow the last edit after a moment.
  await open.waitForTimeout(1200);
  if (from !== undefined) {
    await open
      .locator(from)
      .first()
      .evaluate((element) => element.scrollIntoView({ block: 'start' }));
    await open.waitForTimeout(1200);
  }
  const path = join(root, 'docs', 'pictures', `${name}.png`);
  if (part === undefined) await open.screenshot({ path, animations: 'disabled' });
  else await open.locator(part).first().screenshot({ path, animations: 'disabled' });
  await context.close();
  console.log(`docs/pictures/${name}.png`);
}
