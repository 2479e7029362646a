// `npm run pictures`: builds the workbench, opens it in a browser and takes the screenshots that the documents show.

import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { buildWorkbench, serveWorkbench } from '../../src/app/serve/serve.mjs';
import { root } from '../../src/cli/build.mjs';
import { startBrowser } from '../../tests/browser/browser.mjs';

/** @type {{ name: string, width: number, height: number, colorScheme: 'light' | 'dark' }[]} */
const pictures = [
  { name: 'workbench', width: 1280, height: 1900, colorScheme: 'light' },
  { name: 'workbench-dark', width: 1280, height: 900, colorScheme: 'dark' },
  { name: 'workbench-phone', width: 390, height: 844, colorScheme: 'light' },
];

const folder = join('dist', `pictures-${process.pid}`);
await buildWorkbench(folder);
const { address, close } = await serveWorkbench(folder, 4700);
const browser = await startBrowser();
try {
  for (const { name, width, height, colorScheme } of pictures) {
    const context = await browser.newContext({ viewport: { width, height }, colorScheme, deviceScaleFactor: 1.25 });
    const page = await context.newPage();
    await page.goto(address);
    await page.waitForSelector('#verdict .verdict-sentence');
    await page.waitForLoadState('networkidle');
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    await page.screenshot({ path: join(root, 'docs', 'pictures', `${name}.png`), animations: 'disabled' });
    await context.close();
    console.log(`docs/pictures/${name}.png`);
  }
} finally {
  await browser.close();
  await close();
  await rm(join(root, folder), { recursive: true, force: true });
}
