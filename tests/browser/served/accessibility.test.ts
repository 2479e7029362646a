// No fault that the accessibility engine finds on any page, in either light, in dialogs and menus, on a phone, and in a working
// with every step open. The page of the one file has the same elements and styles: it is looked at once, served.

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pageTitles } from '../../../src/app/pages.ts';
import { accessibilityFaults } from '../accessibility.ts';
import { type OpenWorkbench, openWorkbench, screens, startBrowserForThisFile } from '../harness.ts';

startBrowserForThisFile();

const pages = Object.keys(pageTitles) as (keyof typeof pageTitles)[];

/** The answer's first number: the paper without a tank has no verdict. */
const answered = '.number-item, .bill, .side-by-side .block, .chooser, .cautions-paper, .brief-host';

async function show(page: Page, name: string, title: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, name);
  await expect.poll(() => page.locator('#page-title').textContent()).toBe(title);
  await page.waitForSelector(answered);
}

async function drawCharts(page: Page): Promise<void> {
  for (const picture of await page.locator('.chart-picture').all()) {
    await picture.scrollIntoViewIfNeeded();
    await expect.poll(() => picture.getAttribute('data-state')).toBe('drawn');
  }
}

// One visitor for all pages of a light: the engine is only asked to look.
describe.each(['light', 'dark'] as const)('in the %s', (colorScheme) => {
  let workbench: OpenWorkbench;
  beforeAll(async () => {
    workbench = await openWorkbench({ colorScheme });
    await workbench.page.waitForSelector('.verdict-sentence');
  });
  afterAll(() => workbench.close());

  test.each(pages)('%s', async (name) => {
    const { page } = workbench;
    await show(page, name, pageTitles[name]);
    await drawCharts(page);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  test.each(['wide', 'phone'] as const)('the working of a result with every step open, %s', async (screen) => {
    const { page } = workbench;
    await page.setViewportSize(screens[screen]);
    await page.evaluate(() => {
      location.hash = 'working/plant.heatReachingWater';
    });
    await page.getByRole('button', { name: 'Open all steps' }).click();
    await expect.poll(() => page.locator('details.chain-part:not([open]), .chain details:not([open])').count()).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.evaluate(() => {
      location.hash = 'what-leaves';
    });
    await expect.poll(() => page.locator('#page-title').textContent()).toBe('What leaves');
  });
});

test('dialogs and menus, and a phone', async () => {
  const workbench = await openWorkbench({ path: '#where-it-settles' });
  const { page } = workbench;
  await page.waitForSelector(answered);
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
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.setViewportSize(screens.phone);
  expect(await accessibilityFaults(page)).toEqual([]);
  await workbench.close();
});
