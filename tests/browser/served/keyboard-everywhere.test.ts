// Everything by keyboard: the way to the station, dialogs, undo, and every field in sight as it is reached.

import { describe, expect, test } from 'vitest';
import { openWorkbench, startBrowserForThisFile } from '../harness.ts';
import { settled, shown } from '../waiting.ts';

startBrowserForThisFile();

describe('keyboard', () => {
  test('the skip link leads to the station, and a station opens by Enter with focus on its heading', async () => {
    const workbench = await openWorkbench({ path: '#where-it-settles' });
    const { page } = workbench;
    await shown(page, 'where-it-settles');
    await page.keyboard.press('Tab');
    await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('skip');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('main');
    expect(await page.locator('#page-title').textContent()).toBe('Where it settles');
    await page.locator('.heat-node[data-node="machine"]').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('#page-title').textContent()).toBe('The machine');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('page-title');
    await workbench.close();
  });

  test('a dialog keeps the focus and gives it back', async () => {
    const workbench = await openWorkbench({ path: '#where-it-settles' });
    const { page } = workbench;
    await shown(page, 'where-it-settles');
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
    await expect.poll(() => opener.evaluate((element) => element === document.activeElement)).toBe(true);
    await workbench.close();
  });

  test('undo by keyboard outside a field', async () => {
    const workbench = await openWorkbench({ path: '#what-leaves' });
    const { page } = workbench;
    await shown(page, 'what-leaves');
    const sentence = () => page.locator('.verdict-sentence').textContent();
    const before = await sentence();
    const field = page.getByRole('textbox', { name: 'Water temperature' });
    await field.fill('31 °C');
    await field.blur();
    await expect.poll(sentence).not.toBe(before);
    await settled(page);
    await page.keyboard.press('Control+z');
    await expect.poll(sentence).toBe(before);
    await workbench.close();
  });

  test('every field reached by Tab is clear of bar, row and caution', async () => {
    const workbench = await openWorkbench({ path: '#where-it-settles', viewport: { width: 1024, height: 600 } });
    const { page } = workbench;
    await shown(page, 'where-it-settles');
    await page.locator('#page-title').focus();
    for (let count = 0; count < 24; count++) {
      await page.keyboard.press('Tab');
      const hidden = () =>
        page.evaluate(() => {
          const focused = document.activeElement;
          if (!(focused instanceof HTMLElement) || focused.closest('.caution-line, .top, .pages')) return '';
          const { top, bottom } = focused.getBoundingClientRect();
          const row = document.querySelector('.pages')!.getBoundingClientRect().bottom;
          const line = document.querySelector('.caution-line')!.getBoundingClientRect().top;
          const isTall = bottom - top > line - row;
          return isTall || (top >= row - 1 && bottom <= line + 1) ? '' : (focused.textContent ?? focused.tagName);
        });
      await expect.poll(hidden).toBe('');
    }
    await workbench.close();
  });
});
