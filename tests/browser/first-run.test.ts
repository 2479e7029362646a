// A first visit: the open design says that it is an invented example and leads to the seven questions; terms of the trade
// open their explanation where they stand.

import { describe, expect, test } from 'vitest';
import { openWorkbench, screens, startBrowserForThisFile } from './harness.ts';

startBrowserForThisFile();

describe('the invented example', () => {
  test('says what it is, leads to the seven questions, and says it no longer once something is changed', async () => {
    const { page, close, expectNoComplaints } = await openWorkbench();
    await page.waitForSelector('#verdict .verdict-sentence');
    await page.getByRole('button', { name: 'answer seven questions' }).click();
    await expect.poll(() => page.getByRole('dialog').textContent()).toContain('Question 1 of 7');
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'What leaves' }).click();
    const field = page.locator('.station-inputs input[type="text"]').first();
    await field.fill('26 °C');
    await field.press('Enter');
    await expect.poll(() => page.locator('.example-note').count()).toBe(0);
    expectNoComplaints();
    await close();
  });
});

describe('terms', () => {
  for (const screen of ['wide', 'phone'] as const) {
    test(`${screen}: a term opens its explanation inside the window, by mouse and by keyboard, and Escape closes it`, async () => {
      const { page, close, expectNoComplaints } = await openWorkbench({ viewport: screens[screen] });
      const term = page.locator('.verdict-sentence .term').first();
      await term.waitFor();
      await term.click();
      const meaning = page.locator('.term-meaning:popover-open');
      await expect.poll(() => meaning.textContent()).toContain('coldest spell');
      const box = await meaning.boundingBox();
      expect(box!.x).toBeGreaterThanOrEqual(0);
      expect(box!.x + box!.width).toBeLessThanOrEqual(screens[screen].width);
      await page.keyboard.press('Escape');
      await expect.poll(() => meaning.count()).toBe(0);
      await term.focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => meaning.count()).toBe(1);
      expectNoComplaints();
      await close();
    });
  }
});
