// The station What to wrap: the answer, the waterfall and the cards, a measure changed, added and removed, other units, the
// keyboard, a phone, paper, and what the accessibility engine finds.

import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoTexts } from '../../designs.ts';
import { accessibilityFaults } from '../accessibility.ts';
import { oneVisitor, screens, startBrowserForThisFile } from '../harness.ts';
import { chooseUnits, drawCharts, openDesign, settled, tooWide } from '../waiting.ts';

startBrowserForThisFile();

const visitor = oneVisitor({ path: '#two-bills' });

async function openExample(): Promise<{ page: Page; expectNoComplaints: () => void }> {
  const { page, expectNoComplaints } = visitor();
  await openDesign(page, demoTexts['frag-tank-cold-garage.json']!, 'what-to-wrap');
  await answered(page, / first: that saves /);
  return { page, expectNoComplaints };
}

async function answered(page: Page, words: RegExp): Promise<void> {
  await page.locator('.station-answer', { hasText: words }).waitFor();
  await page.locator('.wrapping:not(.stale) .measure').first().waitFor();
  await settled(page);
}

const cards = (page: Page) => page.locator('.measure');
const measureNames = (page: Page) => page.locator('.measure h4').allTextContents();

describe('the design as it was opened', () => {
  let page: Page;
  beforeAll(async () => {
    ({ page } = await openExample());
  });

  test('the answer names what comes first, what it saves and when it is paid for; the cards follow that order', async () => {
    const answer = (await page.locator('.station-answer').textContent()) ?? '';
    expect(answer).toMatch(/has paid for itself (?:after|at once|within)/);
    const [first] = await measureNames(page);
    expect(first).toMatch(/^1\. /);
    expect(answer.startsWith(first!.replace('1. ', ''))).toBe(true);
    expect(await page.locator('.station-inputs > .fields .field').count()).toBeLessThanOrEqual(7);
  });

  test('the waterfall ends at what is left, with every number as text', async () => {
    const rows = page.locator('.waterfall tbody tr');
    expect(await rows.first().textContent()).toContain('Leaves the tank now');
    expect(await rows.last().textContent()).toContain('What is left');
    for (const row of await rows.all()) expect(await row.locator('.number').first().textContent()).toMatch(/\d\sW$/);
  });

  test('both accounts stand on every card, and a measure that stops paying with a heat pump says so', async () => {
    for (const card of await cards(page).all()) {
      const words = (await card.textContent()) ?? '';
      expect(words).toContain('Tank: electricity not paid');
      expect(words).toContain('Room: ');
      expect(words).toContain('Saved a year, tank and room');
    }
    const stopping = page.locator('.measure', { hasText: 'stops paying with' });
    expect(await stopping.count()).toBeGreaterThan(0);
    expect(await stopping.first().textContent()).toContain('No longer pays');
  });

  test('the design’s own prices are marked in the table of other prices', async () => {
    expect(await page.locator('.price-table td.own').count()).toBe(1);
    expect(await page.locator('.price-table .own-mark').count()).toBe(2);
  });

  test('without faults, with the curve drawn', async () => {
    await drawCharts(page);
    expect(await accessibilityFaults(page)).toEqual([]);
    visitor().expectNoComplaints();
  });

  test('other units: inches and BTU/h everywhere, and back', async () => {
    const before = await page.locator('.waterfall').textContent();
    await chooseUnits(page, 'US');
    await expect.poll(() => page.locator('.waterfall').textContent()).toContain('BTU/h');
    await expect.poll(() => page.locator('.chart table th').first().textContent()).toBe('Thickness');
    await settled(page);
    await expect.poll(() => page.locator('.chart tbody th').first().textContent()).toMatch(/\sin$/);
    await expect.poll(() => page.locator('.measure').first().textContent()).toContain('ft²');
    await chooseUnits(page, 'Metric');
    await expect.poll(() => page.locator('.waterfall').textContent()).toBe(before);
    await settled(page);
  });
});

describe('the list', () => {
  test('one removed, one changed, one added: each is one step, and the usual ones come back', async () => {
    const { page, expectNoComplaints } = await openExample();
    const usual = await measureNames(page);
    const last = cards(page).last();
    await last.getByRole('button', { name: /^Remove: / }).click();
    await expect.poll(() => cards(page).count()).toBe(usual.length - 1);
    await expect.poll(() => page.locator('#measures-title + p').textContent()).toContain('This is your list.');
    await settled(page);

    await cards(page)
      .first()
      .getByRole('button', { name: /^Change it: / })
      .click();
    const cost = page.getByLabel('Cost', { exact: true });
    await cost.fill('999 USD');
    await cost.press('Enter');
    await expect.poll(() => page.locator('.measure dd', { hasText: /^1000\sUSD$/ }).count()).toBe(1);
    // Dearer, it comes later in the turn; the keyboard stays in its field.
    await expect.poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('999 USD');
    await settled(page);

    await page.getByRole('button', { name: 'Add a measure' }).click();
    await page.getByLabel('What to do').last().selectOption('cooler');
    await page.getByLabel('Cooler by').last().fill('1.5 K');
    await page.getByRole('button', { name: 'Add it' }).click();
    await expect.poll(() => cards(page).count()).toBe(usual.length);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Add a measure');
    await settled(page);

    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => cards(page).count()).toBe(usual.length - 1);
    await settled(page);
    await page.getByRole('button', { name: 'Take the usual measures in place of this list' }).click();
    await expect.poll(() => measureNames(page)).toEqual(usual);
    expectNoComplaints();
  });

  test('by keyboard alone: a measure is opened, changed and removed', async () => {
    const { page, expectNoComplaints } = await openExample();
    const count = await cards(page).count();
    await cards(page)
      .first()
      .getByRole('button', { name: /^Change it: / })
      .focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('Cost', { exact: true }).waitFor();
    await page.getByLabel('Cost', { exact: true }).focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('5 USD');
    await page.keyboard.press('Enter');
    await expect.poll(() => cards(page).first().textContent()).toMatch(/To buy5\sUSD/);
    await settled(page);
    await cards(page)
      .first()
      .getByRole('button', { name: /^Remove: / })
      .focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => cards(page).count()).toBe(count - 1);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Add a measure');
    expectNoComplaints();
  });

  test('a tank known by its meter alone says what cannot be reckoned, and where to give its sizes', async () => {
    const { page } = visitor();
    await openDesign(page, demoTexts['reef-in-the-study.json']!, 'what-to-wrap');
    await answered(page, /sizes are known/);
    await page.getByRole('link', { name: 'Give the sizes of the tank' }).click();
    await expect.poll(() => page.locator('#page-title').textContent()).toBe('What leaves');
    visitor().expectNoComplaints();
  });
});

test('a phone in the dark: nothing is wider than the screen, one scale for all bars, no faults', async () => {
  const { page } = await openExample();
  await page.setViewportSize(screens.phone);
  await page.emulateMedia({ colorScheme: 'dark' });
  await drawCharts(page);
  await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
  const widths = await page.locator('.waterfall-bar').evaluateAll((bars) => bars.map((bar) => bar.clientWidth));
  expect(new Set(widths).size).toBe(1);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.setViewportSize(screens.wide);
  await page.emulateMedia({ colorScheme: null });
});

test('on paper: the cards stay, what is pressed goes', async () => {
  const { page } = await openExample();
  await page.emulateMedia({ media: 'print' });
  const removing = page.getByRole('button', { name: /^Remove: /, includeHidden: true }).first();
  await expect.poll(() => cards(page).first().isVisible()).toBe(true);
  await expect.poll(() => removing.isVisible()).toBe(false);
  await expect.poll(() => page.locator('.measure-adding').isVisible()).toBe(false);
  await page.emulateMedia({ media: null });
});
