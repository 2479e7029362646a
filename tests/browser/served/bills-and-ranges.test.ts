// Ranges felt, and two bills: what matters most, measuring next with the field in place, the list of assumptions by keyboard,
// bills by month, break-evens and the cost of being wrong; in both unit views, on a phone, and for a reader.

import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { PageName } from '../../../src/app/pages.ts';
import { demoTexts } from '../../designs.ts';
import { accessibilityFaults } from '../accessibility.ts';
import { oneVisitor, screens, startBrowserForThisFile } from '../harness.ts';
import { chooseUnits, drawChart, drawCharts, openDesign, settled } from '../waiting.ts';

startBrowserForThisFile();

const visitor = oneVisitor();

type Example =
  | 'reef-in-the-study'
  | 'propane-in-the-cabinet'
  | 'shrimp-rack-unknown-draughts'
  | 'frag-tank-cold-garage';

/** The page with an example opened as a file, as anybody opens one. */
async function openExample(
  example: Example,
  name: PageName,
  screen: keyof typeof screens = 'wide',
): Promise<{ page: Page; expectNoComplaints: () => void }> {
  const { page, expectNoComplaints } = visitor();
  await page.setViewportSize(screens[screen]);
  await openDesign(page, demoTexts[`${example}.json`]!, name);
  return { page, expectNoComplaints };
}

async function toUs(page: Page): Promise<void> {
  await chooseUnits(page, 'US');
  await expect.poll(() => page.locator('.verdict-sentence').textContent()).toContain('BTU/h');
}

/** What reaches beyond the window's right edge, other than inside a part that scrolls by itself. */
async function widerThanWindow(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    return [...document.querySelectorAll('main *')]
      .filter(
        (element) => element.closest('.table-scroll') === null && element.getBoundingClientRect().right > clientWidth,
      )
      .map((element) => element.outerHTML.slice(0, 200));
  });
}

test('what matters most tells for each input the margin at both ends, and which end would settle it', async () => {
  const { page, expectNoComplaints } = await openExample('shrimp-rack-unknown-draughts', 'where-it-settles');
  const rows = page.locator('table.moves tbody tr');
  await expect.poll(() => rows.count()).toBeGreaterThanOrEqual(5);
  expect(await rows.count()).toBeLessThanOrEqual(8);
  await expect.poll(() => rows.first().textContent()).toContain('it would carry the load');
  expect(await rows.first().locator('.number .bar-note').allTextContents()).toEqual([
    expect.stringMatching(/^at .*cm³$/),
    expect.stringMatching(/^at .*cm³$/),
  ]);
  for (const row of await rows.allTextContents()) expect(row).toMatch(/W.*W.*%/s);
  await toUs(page);
  await expect.poll(() => rows.first().textContent()).toContain('BTU/h');
  expectNoComplaints();
});

test('a measurement is entered where it is asked for, and the field stays while the hand is in it', async () => {
  const { page, expectNoComplaints } = await openExample('frag-tank-cold-garage', 'where-it-settles');
  const next = page.locator('.measurements > li');
  await expect.poll(() => next.count()).toBeGreaterThan(0);
  expect(await next.count()).toBeLessThanOrEqual(3);
  await expect
    .poll(() => next.first().textContent())
    .toMatch(/topped up.*% of the doubt.*at best.*Divide what you top up/s);
  const field = next.first().getByRole('textbox');
  const before = await page.locator('.verdict-sentence').textContent();
  await field.fill('1.1 to 1.2');
  await expect.poll(() => page.locator('.verdict-sentence').textContent()).not.toBe(before);
  await settled(page);
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.press('Tab');
  expectNoComplaints();
});

test('the verdict leads to what to measure next', async () => {
  const { page, expectNoComplaints } = await openExample('reef-in-the-study', 'two-bills');
  await page.getByRole('button', { name: 'What to measure next' }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('measure-next-title');
  expectNoComplaints();
});

test('an assumption becomes a number by keyboard alone; each says how far it moves the verdict, its range and source', async () => {
  const { page, expectNoComplaints } = await openExample('reef-in-the-study', 'what-leaves');
  const button = page.getByRole('button', { name: /assumptions? left/ });
  const before = await button.textContent();
  await button.focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  const items = dialog.locator('.assumption-list > li');
  await expect
    .poll(() => items.first().textContent())
    .toMatch(/Volume swept.*Moves the margin from.*% of its doubt.*From:.*To know better/s);
  await expect.poll(() => dialog.textContent()).toContain('Moves what this loop costs more than');
  const field = items.first().getByRole('textbox');
  for (let presses = 0; presses < 6; presses += 1) {
    if (await field.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.type('9 to 10 cm3');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog.getByRole('heading').first().textContent()).not.toBe(before);
  await expect.poll(() => items.first().textContent()).toContain('You gave it');
  await settled(page);
  expect(await accessibilityFaults(page, 'dialog')).toEqual([]);
  await page.keyboard.press('Escape');
  await expect.poll(() => button.textContent()).not.toBe(before);
  await expect.poll(() => button.evaluate((element) => element === document.activeElement)).toBe(true);
  expectNoComplaints();
});

test('each bill has its line of room heat with the reason; the months of a chosen bill are drawn and tabled', async () => {
  const { page, expectNoComplaints } = await openExample('reef-in-the-study', 'two-bills');
  await expect.poll(() => page.locator('.bill').count()).toBe(3);
  for (const bill of await page.locator('.bill').allTextContents()) {
    expect(bill).toMatch(/room heat (gained|taken)/);
    expect(bill).toMatch(/5 months without heating.*leave as vapour/s);
  }
  await page.getByRole('radio', { name: 'A plain heater on the tank as it is' }).check({ force: true });
  const chart = page.locator('.bills-by-month .chart');
  await expect
    .poll(() => chart.locator('h3').textContent())
    .toBe('Month by month: a plain heater on the tank as it is');
  await drawChart(chart.locator('.chart-picture'));
  await page.waitForSelector('.bills-by-month .chart-picture[data-state="drawn"] .barlayer');
  await chart.locator('summary').click();
  await expect.poll(() => chart.locator('tbody tr').count()).toBe(12);
  const paid = await chart.locator('tbody tr td:last-child').allTextContents();
  const year = await page.locator('.bill').first().locator('.total dd').first().textContent();
  const sum = paid.reduce((total, text) => total + Number((/[−\d.]+$/.exec(text)?.[0] ?? 'x').replace('−', '-')), 0);
  expect(Math.abs(sum - Number(year?.replace(/[^\d]/g, '')))).toBeLessThan(8);
  await chart.getByRole('link', { name: /july, Left to pay/ }).click();
  await expect.poll(() => page.locator('#page-title').textContent()).toBe('Working');
  expectNoComplaints();
});

test('what being wrong would cost is told; a loop not to be built has its figures for study, unranked', async () => {
  const { page, expectNoComplaints } = await openExample('reef-in-the-study', 'two-bills');
  const words = () => page.locator('.station').textContent();
  await expect.poll(words).toMatch(/you forgo about .* a year/);
  await openExample('propane-in-the-cabinet', 'two-bills');
  await expect.poll(words).toContain('its bill stands here for study only');
  const text = (await words()) ?? '';
  expect(text).not.toMatch(/you forgo/);
  expect(text).toMatch(/as long as house heat costs less than about [\d.]+\sCHF\/kWh \(/);
  expect(text).not.toMatch(/pays? back|payback/);
  expectNoComplaints();
});

test.each([
  ['reef-in-the-study', 'two-bills'],
  ['shrimp-rack-unknown-draughts', 'where-it-settles'],
] as const)('%s at %s: no fault for a reader, nothing wider than a phone', async (example, name) => {
  const { page, expectNoComplaints } = await openExample(example, name, 'phone');
  await toUs(page);
  await drawCharts(page);
  await expect.poll(() => widerThanWindow(page)).toEqual([]);
  expect(await accessibilityFaults(page, 'main')).toEqual([]);
  expectNoComplaints();
});

test('numbers of the heat path tell their range to a reader and on hovering', async () => {
  const { page } = await openExample('reef-in-the-study', 'what-leaves');
  for (const name of ['source', 'socket', 'machine', 'water']) {
    const node = page.locator(`[data-node="${name}"]`);
    await expect.poll(() => node.textContent(), { message: name }).toMatch(/\(range .* to .*\)/);
    await expect.poll(() => node.getAttribute('title'), { message: name }).toMatch(/range/);
  }
});
