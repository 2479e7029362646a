// A first visit: the open design says that it is an invented example and leads to the seven questions; terms of the trade
// open their explanation where they stand.

import { describe, expect, test } from 'vitest';
import { openWorkbench, screens, startBrowserForThisFile } from '../harness.ts';

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

describe('the seven questions', () => {
  for (const [screen, path] of [
    ['wide', '#cycle-alone'],
    ['phone', ''],
  ] as const) {
    test(`${screen}: what is wrong is said where it is asked, and the verdict comes into sight`, async () => {
      const { page, close, expectNoComplaints } = await openWorkbench({ viewport: screens[screen], path });
      await page.getByRole('button', { name: 'Start my own' }).click();
      const dialog = page.getByRole('dialog');
      const give = (label: string, text: string) => dialog.getByRole('textbox', { name: label }).fill(text);
      const choose = (label: string, choice: string) => dialog.getByLabel(label, { exact: true }).selectOption(choice);
      const next = () => dialog.getByRole('button', { name: 'Next question' }).click();
      await choose('How the tank is known', 'measured');
      // A press of the button has to end where it began, whatever the field being left says.
      const footing = async () =>
        (await dialog.getByRole('button', { name: 'Next question' }).boundingBox())?.y ?? Number.NaN;
      const before = await footing();
      await give('What the heater used', 'nonsense');
      await page.keyboard.press('Tab');
      await dialog.locator('.field-error').waitFor();
      expect(Math.abs((await footing()) - before)).toBeLessThan(2);
      await give('What the heater used', '24 kWh');
      await give('How long you measured', '7 days');
      await next();
      await give('Water temperature', '26 °C');
      await choose('Water', 'fresh');
      await next();
      await give('Room temperature', '21 °C');
      await next();
      await next();
      await choose('It came out of a … (may stay open)', 'dehumidifier');
      await choose('Refrigerant it was made for (may stay open)', 'R134a');
      await give('Year it was made in (may stay open)', '2005 to 2015');
      await next();
      await give('Currency', 'dollars');
      await give('Price of electricity', '16 ct/kWh');
      await next();
      await expect.poll(() => dialog.locator('.question-problems').textContent()).toMatch(/^Currency: .*three capital/);
      await give('Currency', 'usd');
      await next();
      await dialog.getByRole('button', { name: 'Show me the verdict' }).click();
      await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('verdict');
      await expect.poll(() => page.locator('.design-name').textContent()).toBe('My tank');
      // What comes after it may still move it.
      const words = async () => (await page.locator('.verdict-words').boundingBox()) ?? { y: Number.NaN, height: 0 };
      await expect.poll(async () => (await words()).y).toBeGreaterThanOrEqual(0);
      await expect
        .poll(async () => (await words()).y + (await words()).height)
        .toBeLessThanOrEqual(screens[screen].height);
      expectNoComplaints();
      await close();
    });
  }
});

describe('terms', () => {
  for (const screen of ['wide', 'phone'] as const) {
    test(`${screen}: a term opens its explanation inside the window, by mouse and by keyboard, and Escape closes it`, async () => {
      const { page, close, expectNoComplaints } = await openWorkbench({ viewport: screens[screen] });
      const term = page.locator('.verdict-sentence .term').first();
      // Terms are marked once somebody is there.
      await page.mouse.move(5, 5);
      await term.waitFor();
      await term.click();
      const meaning = page.locator('.term-meaning:popover-open');
      await expect.poll(() => meaning.textContent()).toContain('coldest spell');
      const box = async () => (await meaning.boundingBox()) ?? { x: Number.NaN, width: 0 };
      await expect.poll(async () => (await box()).x).toBeGreaterThanOrEqual(0);
      await expect.poll(async () => (await box()).x + (await box()).width).toBeLessThanOrEqual(screens[screen].width);
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
