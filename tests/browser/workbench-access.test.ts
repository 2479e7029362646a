// Reachable for everybody: no fault that the accessibility engine finds, in either light and at any width; everything by
// keyboard; nothing wider than the screen; the chart library's cloud switched off.

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { type OpenWorkbench, openWorkbench, screens, startBrowserForThisFile } from './harness.ts';

startBrowserForThisFile();

const stations = ['what-leaves', 'the-machine', 'where-it-settles', 'two-bills', 'cycle-alone'] as const;
const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

async function openStation(station: string, options: Parameters<typeof openWorkbench>[0] = {}): Promise<OpenWorkbench> {
  const workbench = await openWorkbench({ ...options, path: `#${station}` });
  // The answer's first number: the paper without a tank has no verdict.
  await workbench.page.waitForSelector('.number-item, .bill');
  return workbench;
}

async function drawCharts(page: Page): Promise<void> {
  for (const picture of await page.locator('.chart-picture').all()) {
    await picture.scrollIntoViewIfNeeded();
    await expect.poll(() => picture.getAttribute('data-state')).toBe('drawn');
  }
}

/** What the accessibility engine finds, in words. */
async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const engine = (globalThis as unknown as { axe: typeof import('axe-core') }).axe;
    const { violations } = await engine.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary}`),
    );
  });
}

describe('accessibility engine', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    test.each(stations)(`%s in the ${colorScheme}`, async (station) => {
      const workbench = await openStation(station, { colorScheme });
      await drawCharts(workbench.page);
      expect(await faults(workbench.page)).toEqual([]);
      await workbench.close();
    });
  }

  test('dialogs and menus', async () => {
    const workbench = await openStation('where-it-settles');
    const { page } = workbench;
    await page.getByRole('button', { name: 'Start my own' }).click();
    expect(await faults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.locator('.verdict-links button').first().click();
    expect(await faults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.locator('summary', { hasText: 'Designs' }).click();
    expect(await faults(page)).toEqual([]);
    await workbench.close();
  });

  test('phone', async () => {
    const workbench = await openStation('where-it-settles', { viewport: screens.phone });
    expect(await faults(workbench.page)).toEqual([]);
    await workbench.close();
  });
});

describe('any width', () => {
  test.each([360, 390, 768, 1024, 1440, 1600])('nothing is wider than %i px', async (width) => {
    const workbench = await openStation('what-leaves', { viewport: { width, height: 900 } });
    for (const station of stations) {
      await workbench.page.evaluate((name) => {
        location.hash = name;
      }, station);
      await workbench.page.waitForTimeout(150);
      const wide = await workbench.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide, station).toBeLessThanOrEqual(0);
    }
    await workbench.close();
  });
});

describe('keyboard', () => {
  test('the skip link leads to the station, and a station opens by Enter with focus on its heading', async () => {
    const workbench = await openStation('where-it-settles');
    const { page } = workbench;
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('skip');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
    expect(await page.locator('#station-title').textContent()).toBe('Where it settles');
    await page.locator('.heat-node[data-node="machine"]').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('#station-title').textContent()).toBe('The machine');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('station-title');
    await workbench.close();
  });

  test('a dialog keeps the focus and gives it back', async () => {
    const workbench = await openStation('where-it-settles');
    const { page } = workbench;
    const opener = page.getByRole('button', { name: 'Start my own' });
    await opener.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor();
    for (let count = 0; count < 12; count++) await page.keyboard.press('Tab');
    const isInside = await page.evaluate(
      () => document.activeElement === document.body || document.activeElement?.closest('dialog') !== null,
    );
    expect(isInside).toBe(true);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(await opener.evaluate((element) => element === document.activeElement)).toBe(true);
    await workbench.close();
  });

  test('undo by keyboard outside a field', async () => {
    const workbench = await openStation('what-leaves');
    const { page } = workbench;
    const sentence = () => page.locator('.verdict-sentence').textContent();
    const before = await sentence();
    const field = page.getByRole('textbox', { name: 'Water temperature' });
    await field.fill('31 °C');
    await field.blur();
    await expect.poll(sentence).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(sentence).toBe(before);
    await workbench.close();
  });
});

describe('charts', () => {
  test('offer nothing that leaves this machine, and have their table beside them', async () => {
    const workbench = await openStation('where-it-settles');
    const { page } = workbench;
    await drawCharts(page);
    const offers = await page.evaluate(() =>
      [...document.querySelectorAll('.modebar-btn')].map((button) => button.getAttribute('data-title') ?? ''),
    );
    expect(offers.join()).not.toMatch(/share|cloud|edit|plotly/i);
    const tables = await page.locator('.chart details table').count();
    expect(tables).toBe(await page.locator('.chart').count());
    workbench.expectNoComplaints();
    await workbench.close();
  });
});
