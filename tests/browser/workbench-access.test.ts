// What depends on styles and on the chart library, in either form of the workbench: nothing wider than the screen, what stays
// in sight, paper, pictures. The accessibility engine and the keyboard are in served/.

import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { type PageName, paperNames, stationNames } from '../../src/app/pages.ts';
import { oneVisitor, openWorkbench, screens, startBrowserForThisFile } from './harness.ts';
import { drawCharts, go, shown, tooWide } from './waiting.ts';

startBrowserForThisFile();

const visitor = oneVisitor();

async function openStation(
  station: PageName,
  screen: keyof typeof screens = 'wide',
): Promise<{ page: Page; expectNoComplaints: () => void }> {
  const { page, expectNoComplaints } = visitor();
  await page.setViewportSize(screens[screen]);
  await go(page, station);
  return { page, expectNoComplaints };
}

describe('any width', () => {
  test('nothing is wider than the screen, from 360 to 1600 px', async () => {
    const { page, expectNoComplaints } = await openStation('what-leaves');
    for (const station of [...stationNames, ...paperNames]) {
      await go(page, station);
      for (const width of [360, 390, 768, 1024, 1440, 1600]) {
        await page.setViewportSize({ width, height: 900 });
        // Pictures are drawn anew a moment after the window has changed.
        await expect.poll(() => tooWide(page), { message: `${station} at ${width} px` }).toBeLessThanOrEqual(0);
      }
    }
    expectNoComplaints();
  });
});

/** Boxes of the window's own furniture and of what must not hide behind it. */
async function boxes(page: Page) {
  return page.evaluate(() => {
    const box = (selector: string) => {
      const { top, bottom } = document.querySelector(selector)!.getBoundingClientRect();
      return { top, bottom };
    };
    const top = getComputedStyle(document.querySelector('.top')!).position === 'sticky' ? box('.top').bottom : 0;
    return {
      top,
      row: box('.pages'),
      title: box('#page-title'),
      line: box('.caution-line'),
      window: innerHeight,
    };
  });
}

describe('in sight', () => {
  test.each(['wide', 'laptop', 'phone'] as const)('%s: row of stations, heading and caution', async (screen) => {
    const { page, expectNoComplaints } = await openStation('where-it-settles', screen);
    const openers = [
      [() => page.locator('.heat-node[data-node="machine"]').click(), 'The machine'],
      [() => page.getByRole('link', { name: 'Where it settles' }).click(), 'Where it settles'],
      [() => page.evaluate(() => scrollTo(0, document.body.scrollHeight)), 'Where it settles'],
      [() => page.getByRole('link', { name: 'Two bills' }).click(), 'Two bills'],
      [() => page.getByRole('link', { name: 'Cycle alone' }).click(), 'Cycle alone'],
    ] as const;
    for (const [open, title] of openers) {
      await open();
      await expect.poll(() => page.locator('#page-title').textContent()).toBe(title);
      await expect
        .poll(async () => {
          const { top, row, line, window } = await boxes(page);
          return row.top >= top - 1 && row.bottom < line.top && Math.abs(line.bottom - window) < 1;
        })
        .toBe(true);
    }
    await expect
      .poll(async () => {
        const { row, title, line } = await boxes(page);
        return title.top >= row.bottom - 1 && title.bottom < line.top;
      })
      .toBe(true);
    expect(await page.locator('.caution-line').textContent()).toContain('not permission to build');
    await page.getByRole('button', { name: 'Start my own' }).click();
    await expect.poll(() => page.locator('dialog .caution-line').isVisible()).toBe(true);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expectNoComplaints();
  });
});

describe('on paper', () => {
  test('pictures fit between the margins in the light, and the caution stands at the foot of every page', async () => {
    const { page, expectNoComplaints } = await openStation('cautions');
    await page.emulateMedia({ colorScheme: 'dark' });
    await go(page, 'where-it-settles');
    await page.waitForSelector('.chart-picture');
    await drawCharts(page);
    const drawn = () =>
      page.evaluate(() => ({
        path: document.querySelector('.heat-path-picture svg')!.getBoundingClientRect().width,
        chart: document.querySelector('.chart-picture .main-svg')!.getBoundingClientRect().width,
        ink: getComputedStyle(document.querySelector('.chart-picture .xtick text')!).fill,
      }));
    const before = await drawn();
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect.poll(async () => (await drawn()).path).toBeLessThanOrEqual(690);
    await expect.poll(async () => (await drawn()).chart).toBeLessThanOrEqual(690);
    await expect.poll(async () => (await drawn()).ink).not.toBe(before.ink);
    // The foot of a table is what browsers repeat on every page.
    const display = await page.evaluate(() => getComputedStyle(document.querySelector('.caution-line')!).display);
    expect(display).toBe('table-footer-group');
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect.poll(drawn).toEqual(before);
    await page.emulateMedia({ colorScheme: null, media: null });
    expectNoComplaints();
  });
});

test('printing waits for the pictures that nobody has looked at yet', async () => {
  const workbench = await openWorkbench({
    path: '#two-bills',
    before: () => {
      const seen = globalThis as { statesWhenPrinted?: (string | null)[] };
      window.print = () => {
        const pictures = [...document.querySelectorAll('.chart-picture')];
        seen.statesWhenPrinted = pictures.map((picture) => picture.getAttribute('data-state'));
      };
    },
  });
  const { page } = workbench;
  await shown(page, 'two-bills');
  await expect.poll(() => page.locator('.chart-picture[data-state="waiting"]').count()).toBe(2);
  await page.locator('summary', { hasText: 'View' }).click();
  await page.getByRole('button', { name: 'Print this page' }).click();
  const states = () => page.evaluate(() => (globalThis as { statesWhenPrinted?: (string | null)[] }).statesWhenPrinted);
  await expect.poll(states).toEqual(['drawn', 'drawn']);
  workbench.expectNoComplaints();
  await workbench.close();
});

describe('charts', () => {
  test('offer nothing that leaves this machine, and have their table beside them', async () => {
    const { page, expectNoComplaints } = await openStation('where-it-settles');
    await drawCharts(page);
    const offers = await page.evaluate(() =>
      [...document.querySelectorAll('.modebar-btn')].map((button) => button.getAttribute('data-title') ?? ''),
    );
    expect(offers.join()).not.toMatch(/share|cloud|edit|plotly/i);
    const charts = await page.locator('.chart').count();
    await expect.poll(() => page.locator('.chart details table').count()).toBe(charts);
    expectNoComplaints();
  });
});
