// Side by side in the browser: answers first, law and safety above the numbers, what is not for this machine under its own
// heading, bases and fluids by keyboard, both unit views, phone, print, and nothing that the accessibility engine finds.

import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { oneVisitor, screens, startBrowserForThisFile } from './harness.ts';
import { chooseUnits, drawCharts, go, tooWide } from './waiting.ts';

startBrowserForThisFile();

const visitor = oneVisitor({ path: '#side-by-side' });

/** The paper with the choice that it begins with. */
async function openPaper(): Promise<{ page: Page; expectNoComplaints: () => void }> {
  const { page, expectNoComplaints } = visitor();
  await go(page, 'cautions');
  await page.evaluate(() => localStorage.removeItem('kettlefin.sideBySide'));
  await go(page, 'side-by-side');
  return { page, expectNoComplaints };
}

const cellsOf = (page: Page, label: string) =>
  page.locator('table.comparison tr', { has: page.getByRole('rowheader', { name: label, exact: true }) }).locator('td');

describe('what is shown', () => {
  test('the fluid of the machine first, the others under their heading; law, safety and oil before any number', async () => {
    const { page, expectNoComplaints } = await openPaper();
    const table = page.locator('table.comparison');
    expect(await table.locator('.comparison-fluid').allTextContents()).toEqual(['R134a', 'R600a', 'R290']);
    expect(await table.getByRole('columnheader', { name: 'Not for this machine, for study only' }).count()).toBe(1);
    expect(await table.locator('.comparison-group').allTextContents()).toEqual([
      'Law, safety and oil',
      'Pressures',
      'Lift and discharge',
      'Heat and electricity',
      'Environment',
    ]);
    const rows = await table.getByRole('rowheader').allTextContents();
    expect(rows.indexOf('Legal status')).toBeLessThan(rows.indexOf('Safety class'));
    expect(rows.indexOf('Usual oil')).toBeLessThan(rows.indexOf('Evaporating pressure, absolute'));
    expect(await cellsOf(page, 'Room that would stay below the limit of a leak').allTextContents()).toEqual([
      expect.stringMatching(/^\d+.L/),
      expect.stringContaining('withheld'),
      expect.stringContaining('withheld'),
    ]);
    expect(await page.locator('.station-answer').textContent()).toContain('made for R134a alone');
    expect(await page.getByText('Only R134a is for this machine, so nothing is ranked.').count()).toBe(1);
    expectNoComplaints();
  });

  test('the loops over one another, with their table', async () => {
    const { page, expectNoComplaints } = await openPaper();
    await drawCharts(page);
    await expect.poll(() => page.locator('.chart .legendtext').allTextContents()).toEqual(['R134a', 'R600a', 'R290']);
    const dashes = await page
      .locator('.chart .legendlines path.js-line')
      .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).strokeDasharray));
    expect(new Set(dashes).size).toBe(3);
    await page.locator('.chart summary').click();
    await expect.poll(() => page.locator('.chart tbody tr').count()).toBe(3);
    expectNoComplaints();
  });

  test('how a number was computed, fluid by fluid', async () => {
    const { page, expectNoComplaints } = await openPaper();
    await page.locator('.comparison-workings summary', { hasText: 'R290' }).click();
    await page
      .locator('.comparison-workings details[open] button', { hasText: 'Heat per volume of gas drawn in' })
      .click();
    const working = page.locator('.comparison-workings .working').first();
    await expect.poll(() => working.textContent()).toContain('Volumetric heating capacity');
    expect(await page.locator('.comparison-workings').getByText('Open in Working').count()).toBe(0);
    expectNoComplaints();
  });
});

describe('choices', () => {
  test('by keyboard: another basis, another fluid; both are kept for the next visit to the paper', async () => {
    const { page, expectNoComplaints } = await openPaper();
    await page.getByRole('radio', { name: 'The same temperatures' }).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => cellsOf(page, 'Displacement needed for it').count()).toBe(3);
    const heats = await cellsOf(page, 'Heat out of the condenser').allTextContents();
    expect(new Set(heats).size).toBe(1);
    await page.getByRole('checkbox', { name: /^R22/ }).focus();
    await page.keyboard.press('Space');
    await expect.poll(() => cellsOf(page, 'Displacement needed for it').count()).toBe(4);
    await page.getByRole('link', { name: 'Where it settles' }).click();
    await expect.poll(() => page.locator('#page-title').textContent()).toBe('Where it settles');
    await page.getByRole('link', { name: 'Side by side' }).click();
    await expect.poll(() => cellsOf(page, 'Displacement needed for it').count()).toBe(4);
    expectNoComplaints();
  });

  test('fewer than two fluids are not compared, and what is shown is marked as of before', async () => {
    const { page, expectNoComplaints } = await openPaper();
    await page.getByRole('checkbox', { name: /^R600a/ }).uncheck();
    await page.getByRole('checkbox', { name: /^R290/ }).uncheck();
    await page.getByText('Choose at least two fluids.').waitFor();
    await page.getByText('What is shown belongs to the choice before.').waitFor();
    await page.getByRole('checkbox', { name: /^R290/ }).check();
    await expect.poll(() => page.locator('.comparison-fluid').allTextContents()).toEqual(['R134a', 'R290']);
    expectNoComplaints();
  });

  test('US units', async () => {
    const { page, expectNoComplaints } = await openPaper();
    await chooseUnits(page, 'US');
    await expect
      .poll(async () => (await cellsOf(page, 'Evaporating pressure, gauge').first().textContent())?.replace(/\s/g, ' '))
      .toMatch(/psig/);
    await expect.poll(() => cellsOf(page, 'Heat out of the condenser').first().textContent()).toContain('BTU/h');
    await chooseUnits(page, 'Metric');
    expectNoComplaints();
  });
});

describe('for everybody', () => {
  test.each(['light', 'dark'] as const)(
    'no fault that the accessibility engine finds in the %s',
    async (colorScheme) => {
      const { page } = await openPaper();
      await page.emulateMedia({ colorScheme });
      expect(await accessibilityFaults(page)).toEqual([]);
      await page.emulateMedia({ colorScheme: null });
    },
  );

  test('phone: the table scrolls inside itself, its row heads stay in sight', async () => {
    const { page, expectNoComplaints } = await openPaper();
    await page.setViewportSize(screens.phone);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
    const scroll = page.locator('.comparison-scroll');
    await scroll.focus();
    for (let count = 0; count < 12; count++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => scroll.evaluate((element) => element.scrollLeft)).toBeGreaterThan(50);
    const head = await page.getByRole('rowheader', { name: 'Safety class' }).boundingBox();
    const box = await scroll.boundingBox();
    expect(Math.abs(head!.x - box!.x)).toBeLessThan(2);
    await page.setViewportSize(screens.wide);
    expectNoComplaints();
  });
});

describe('on paper', () => {
  test('crosswise while this paper is open, with the whole table between the margins', async () => {
    const { page, expectNoComplaints } = await openPaper();
    const pageRules = () =>
      page.evaluate(() => document.adoptedStyleSheets.map((sheet) => sheet.cssRules[0]?.cssText ?? '').join(' '));
    await expect.poll(pageRules).toContain('landscape');
    await page.emulateMedia({ media: 'print' });
    // A page of 279 mm less its margins.
    await page.setViewportSize({ width: 960, height: 720 });
    const beyondThePage = () =>
      page.evaluate(() => {
        const table = document.querySelector('table.comparison')!.getBoundingClientRect();
        return table.right - document.documentElement.clientWidth;
      });
    await expect.poll(beyondThePage).toBeLessThanOrEqual(1);
    await expect.poll(() => page.locator('.comparison-choices').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize(screens.wide);
    await page.getByRole('link', { name: 'Two bills' }).click();
    await expect.poll(pageRules).not.toContain('landscape');
    expectNoComplaints();
  });
});
