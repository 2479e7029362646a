// No fault that the accessibility engine finds on any page, in either light, in dialogs and menus, on a phone, and in a working
// with every step open. The page of the one file has the same elements and styles: it is looked at once, served.

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pageTitles } from '../../../src/app/pages.ts';
import { accessibilityFaults, colourFaults } from '../accessibility.ts';
import { type OpenWorkbench, openWorkbench, screens, startBrowserForThisFile } from '../harness.ts';
import { drawCharts, go, shown, tooWide } from '../waiting.ts';

startBrowserForThisFile();

const pages = Object.keys(pageTitles) as (keyof typeof pageTitles)[];

// One visitor for all pages of a light: the engine is only asked to look.
describe.each(['light', 'dark'] as const)('in the %s', (colorScheme) => {
  const faults = colorScheme === 'light' ? accessibilityFaults : colourFaults;
  let workbench: OpenWorkbench;
  beforeAll(async () => {
    workbench = await openWorkbench({ colorScheme });
    await workbench.page.waitForSelector('.verdict-sentence');
  });
  afterAll(() => workbench.close());

  test.each(pages)('%s', async (name) => {
    const { page } = workbench;
    await go(page, name);
    await drawCharts(page);
    // Fetched when it comes near, or after a rest.
    if (name === 'where-it-settles') await page.locator('table.moves').waitFor();
    expect(await faults(page)).toEqual([]);
  });

  test.each(['wide', 'phone'] as const)('the working of a result with every step open, %s', async (screen) => {
    const { page } = workbench;
    await page.setViewportSize(screens[screen]);
    await go(page, 'working', 'plant.heatReachingWater');
    await page.getByRole('button', { name: 'Open all steps' }).click();
    await expect.poll(() => page.locator('details.chain-part:not([open]), .chain details:not([open])').count()).toBe(0);
    expect(await faults(page)).toEqual([]);
    await go(page, 'what-leaves');
  });
});

test('dialogs and menus, and a phone', async () => {
  const workbench = await openWorkbench({ path: '#where-it-settles' });
  const { page } = workbench;
  await shown(page, 'where-it-settles');
  for (const opener of [
    page.getByRole('button', { name: 'Start my own' }),
    page.locator('.verdict-links button').first(),
  ]) {
    await opener.click();
    await page.getByRole('dialog').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  }
  await page.locator('summary', { hasText: 'Designs' }).click();
  await page.getByRole('button', { name: 'Copy link' }).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.setViewportSize(screens.phone);
  await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await workbench.close();
});
