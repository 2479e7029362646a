// What tests of Working do with its page: open it at a result, open its steps, read them.

import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { type OpeningOptions, type OpenWorkbench, openWorkbench } from './harness.ts';
import { go, settled } from './waiting.ts';

export async function openWorking(part: string, options: OpeningOptions = {}): Promise<OpenWorkbench> {
  const workbench = await openWorkbench({ ...options, path: part === '' ? '#working' : `#working/${part}` });
  await workbench.page.waitForSelector('.chain-actions, .paper > .chooser');
  await settled(workbench.page);
  return workbench;
}

/** The same on a page that is already open, begun afresh. */
export async function showWorking(page: Page, part: string): Promise<void> {
  await go(page, 'cautions');
  await go(page, 'working', part === '' ? undefined : part);
}

export const answer = (page: Page) => page.locator('.station-answer').textContent();
export const title = (page: Page) => page.locator('#page-title').textContent();
export const focusedField = (page: Page) => page.evaluate(() => document.activeElement?.getAttribute('data-field'));

export async function openEveryStep(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open all steps' }).click();
  await expect.poll(() => page.locator('details.chain-part:not([open]), .chain details:not([open])').count()).toBe(0);
}

/** What stands on the page of every step that is open. */
export async function stepsOnPage(page: Page) {
  return page.locator('.step').evaluateAll((steps) =>
    steps.map((step) => ({
      formula: step.getAttribute('data-formula') ?? '',
      result: step.querySelector('.step-result data')?.getAttribute('value') ?? '',
      inputs: Object.fromEntries(
        [...step.querySelectorAll('tr[data-symbol]')].map((row) => [
          row.getAttribute('data-symbol') ?? '',
          row.querySelector('data')?.getAttribute('value') ?? '',
        ]),
      ),
      formulas: [...step.querySelectorAll('.formula math')].map((math) => math.getAttribute('alttext') ?? ''),
    })),
  );
}
