// What tests of the brief do with its page: open it on a design, print it, hold the pages against the brief of that design.

import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { caution } from '../../src/cautions/index.ts';
import type { UnitView } from '../../src/quantities/index.ts';
import { briefOf } from '../brief/briefs.ts';
import { openWorkbench } from './harness.ts';
import { pdfPages } from './pdf-text.ts';
import { chooseUnits, openDesign, shown } from './waiting.ts';

export const formats = ['A4', 'Letter'] as const;

/** The paper with its pages made, of a demo that was opened as a person's file would be. */
export async function openBrief({ text, view }: { readonly text?: string; readonly view?: UnitView } = {}) {
  const workbench = await openWorkbench({ path: '#brief' });
  if (text === undefined) await shown(workbench.page, 'brief');
  else await showBrief(workbench.page, text, view);
  return workbench;
}

/** The same on a page that is already open. */
export async function showBrief(page: Page, text: string, view: UnitView = 'metric'): Promise<void> {
  await openDesign(page, text, 'brief');
  if (view === 'us') {
    await chooseUnits(page, 'US');
    await expect.poll(() => page.locator('.brief table').first().textContent()).toContain('psi');
    await shown(page, 'brief');
  }
  const name = String(JSON.parse(text).name);
  await expect.poll(() => page.locator('.brief header h3').textContent()).toContain(name.slice(0, 20));
}

export async function printed(page: Page, format: (typeof formats)[number]): Promise<readonly string[]> {
  return pdfPages(await page.pdf({ format, preferCSSPageSize: false }));
}

export function expectBriefPages(pages: readonly string[], text: string, view: UnitView): void {
  expect(pages.length).toBeGreaterThanOrEqual(1);
  expect(pages.length).toBeLessThanOrEqual(3);
  for (const [index, words] of pages.entries()) {
    expect(words, `page ${index + 1}`).toContain(caution);
    expect(words).toContain(`${index + 1} / ${pages.length}`);
  }
  const all = pages.join(' ');
  const document = briefOf(text, view);
  expect(all).toContain(document.standingTitle);
  for (const row of document.states.rows) expect(all).toContain(row.join(' '));
  for (const question of document.asked.questions) expect(all).toContain(question.replace(/[\u00a0\u202f]/g, ' '));
}
