// What tests do on any page before they look: open it with everything on it, open a design, choose units, draw pictures. Each is
// over when its effect is there, however long a slow machine needs for it.

import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { type PageName, pageTitles } from '../../src/app/pages.ts';

/** What each page shows last of all. */
const whole: Readonly<Record<PageName, string>> = {
  'what-leaves': '.station-inputs .field',
  'what-to-wrap': '.wrapping:not(.stale)',
  'the-machine': '.machine-study:not(.stale) .chart',
  'where-it-settles': '.station-inputs .field',
  'two-bills': '.bill',
  'side-by-side': 'table.comparison',
  'cycle-alone': '.number-item',
  working: '.chooser, .chain-actions',
  cautions: '.cautions-paper',
  brief: '.brief-host:not(.stale)',
};

/** The page is open, with the answers of the design as it stands. */
export async function shown(page: Page, name: PageName): Promise<void> {
  await page.locator('#page-title', { hasText: new RegExp(`^${pageTitles[name]}$`) }).waitFor();
  await page.locator(whole[name]).first().waitFor({ state: 'attached' });
  await settled(page);
}

/** Opens a page, or a part of it, by its address. */
export async function go(page: Page, name: PageName, part?: string): Promise<void> {
  await page.evaluate(
    (hash) => {
      location.hash = hash;
    },
    part === undefined ? name : `${name}/${part}`,
  );
  await shown(page, name);
}

/** Nothing on the page is of an earlier state of the design; where the engine refuses one, that never comes. */
export async function settled(page: Page): Promise<void> {
  // No poll: what all tests of a file begin with is done before the first of them.
  await page.waitForFunction(() => document.querySelector('[aria-busy="true"], .stale') === null, null, {
    timeout: 60_000,
  });
}

/** Every picture of the page, looked at one after the other. */
export async function drawCharts(page: Page): Promise<void> {
  const pictures = page.locator('.chart-picture');
  for (let index = 0; index < (await pictures.count()); index += 1) await drawChart(pictures.nth(index));
}

/** One picture, brought into view until it is drawn: the place kept for it gives way to it meanwhile. */
export async function drawChart(picture: Locator): Promise<void> {
  const state = () =>
    picture.evaluate((place) => {
      place.scrollIntoView({ block: 'center' });
      return place.getAttribute('data-state');
    });
  await expect.poll(state).toBe('drawn');
}

/** By how much the page is wider than the window [px]. */
export function tooWide(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
}

let opened = 0;

/**
 * A design opened as a person's file would be, shown at a page that begins afresh, in metric units. Its name is made its own,
 * so that no answer of another design can be taken for it.
 */
export async function openDesign(page: Page, text: string, name: PageName): Promise<void> {
  await page.evaluate(
    (hash) => {
      location.hash = hash;
    },
    name === 'two-bills' ? 'cautions' : 'two-bills',
  );
  await page
    .locator(name === 'two-bills' ? '.cautions-paper' : '.bill')
    .first()
    .waitFor();
  opened += 1;
  const design = JSON.parse(text) as { name: string };
  design.name = `${design.name} ${opened}`;
  const buffer = Buffer.from(JSON.stringify(design));
  await page.setInputFiles('input[type=file]', { name: 'design.json', mimeType: 'application/json', buffer });
  await page.locator('.design-name', { hasText: design.name }).waitFor();
  if ((await page.evaluate(() => localStorage.getItem('kettlefin.view'))) === 'us') await chooseUnits(page, 'Metric');
  await go(page, name);
}

/** Cycle alone as it begins: nothing kept of an earlier one. */
export async function openCycleAfresh(page: Page): Promise<void> {
  await go(page, 'cautions');
  await page.evaluate(() => localStorage.removeItem('kettlefin.cycle'));
  await go(page, 'cycle-alone');
}

/** The units of the view, chosen as a person does; the answers come in them. */
export async function chooseUnits(page: Page, name: 'US' | 'Metric'): Promise<void> {
  const menu = page.locator('.menu', { has: page.locator('summary', { hasText: /^View/ }) });
  await menu.locator('summary').click();
  await menu.getByRole('radio', { name, exact: true }).check({ force: true });
  await page.keyboard.press('Escape');
}
