// The main job from the first screen to the printed brief by keyboard alone: no pointer is used anywhere in this file.

import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openWorkbench, startBrowserForThisFile } from './harness.ts';
import { settled } from './waiting.ts';

startBrowserForThisFile();

/** Presses Tab until what has the focus is called this; fails where the keyboard does not get there. */
async function tabTo(page: Page, name: RegExp, atMost = 120): Promise<void> {
  const passed: string[] = [];
  for (let count = 0; count < atMost; count++) {
    await page.keyboard.press('Tab');
    const focused = await nameOfFocus(page);
    if (name.test(focused)) return;
    passed.push(focused);
  }
  expect.fail(`Tab does not lead to ${name}; it passed ${passed.slice(0, 60).join(' | ')}`);
}

function nameOfFocus(page: Page): Promise<string> {
  return page.evaluate(() => {
    const focused = document.activeElement;
    if (focused === null) return '';
    const labels = (focused as HTMLInputElement).labels;
    return (focused.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? focused.textContent ?? '').trim();
  });
}

async function answer(page: Page, label: RegExp, text: string): Promise<void> {
  await tabTo(page, label);
  await page.keyboard.type(text);
}

test('seven questions, verdict, an assumption replaced, stations, cautions, brief and print', async () => {
  const { page, close, expectNoComplaints } = await openWorkbench({
    before: () => {
      const asked = globalThis as { printed?: number };
      asked.printed = 0;
      window.print = () => {
        asked.printed = (asked.printed ?? 0) + 1;
      };
    },
  });
  await page.waitForSelector('#verdict .verdict-sentence');

  await tabTo(page, /^Start my own$/);
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog');
  const question = (number: number) => expect.poll(() => dialog.textContent()).toContain(`Question ${number} of 7`);
  const next = async (name = /^Next question$/) => {
    await tabTo(page, name);
    await page.keyboard.press('Enter');
  };
  await question(1);
  await answer(page, /How the tank is known/, 'I measured');
  await answer(page, /What the heater used/, '38 kWh');
  await answer(page, /How long you measured/, '7 days');
  await next();
  await question(2);
  await answer(page, /^Water temperature/, '25.5 °C');
  await answer(page, /^Water$/, 'Sea');
  await next();
  await question(3);
  await answer(page, /^Room temperature/, '20 to 22 °C');
  await next();
  await question(4);
  await next();
  await question(5);
  await answer(page, /It came out of/, 'Dehumidifier');
  await answer(page, /made for/, 'R134a');
  await next();
  await question(6);
  await answer(page, /^Currency/, 'EUR');
  await answer(page, /^Price of electricity/, '0.34 EUR/kWh');
  await next();
  await question(7);
  await next(/^Show me the verdict$/);
  await expect.poll(() => dialog.count()).toBe(0);
  await expect.poll(() => page.locator('.design-name').textContent()).toContain('My tank');
  await expect.poll(() => page.locator('.verdict-sentence').textContent()).toMatch(/tank needs/);

  await settled(page);
  const left = async () => Number.parseInt((await page.locator('.verdict-links').textContent()) ?? '', 10);
  const before = await left();
  await tabTo(page, /assumptions left/);
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog.textContent()).toContain('assumptions left');
  // What it costs is told last; with that the list has its order.
  await expect.poll(() => dialog.textContent()).toContain('Moves what this loop costs');
  await answer(page, /Volume swept per revolution/, '9 to 10 cm3');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await expect.poll(left).toBe(before - 1);
  await settled(page);

  for (const [name, title] of [
    [/^What leaves$/, 'What leaves'],
    [/^Two bills$/, 'Two bills'],
    [/^Cautions$/, 'Cautions'],
    [/^Brief$/, 'Brief'],
  ] as const) {
    // From the top: the row of pages stands behind the heat path and the verdict.
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.evaluate(() => document.querySelector<HTMLElement>('.skip')?.focus());
    await tabTo(page, name);
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('#page-title').textContent()).toBe(title);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('page-title');
  }
  await tabTo(page, /^Print$/);
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => (globalThis as { printed?: number }).printed)).toBe(1);
  expectNoComplaints();
  await close();
});
