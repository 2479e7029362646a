// The brief in either form of the workbench: printed alone with the caution on each page, saved as a file that runs nothing.
// Every design, and the file by itself, are looked at in served/brief.test.ts.

import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { wordsOf } from '../brief/briefs.ts';
import { demoTexts } from '../designs.ts';
import { expectBriefPages, openBrief, printed } from './brief-page.ts';
import { startBrowserForThisFile } from './harness.ts';
import { go } from './waiting.ts';

startBrowserForThisFile();

test('US view from the workbench', async () => {
  const text = demoTexts['frag-tank-cold-garage.json']!;
  const workbench = await openBrief({ text, view: 'us' });
  expectBriefPages(await printed(workbench.page, 'Letter'), text, 'us');
  workbench.expectNoComplaints();
  await workbench.close();
});

describe('in the workbench', () => {
  test('who asks is kept in this browser and stands on the pages and in the saved file only if typed', async () => {
    const workbench = await openBrief();
    const { page } = workbench;
    expect(await page.locator('.brief .contact').count()).toBe(0);
    const odd = '<b>A. Person</b> & others';
    await page.getByRole('textbox', { name: /Who asks/ }).fill(odd);
    await expect.poll(() => page.locator('.brief .contact').textContent()).toBe(`Asked by: ${odd}`);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as an HTML file' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/brief\.html$/);
    const saved = await readFile((await download.path())!, 'utf8');
    expect(saved).not.toMatch(/<script|<b>A\. Person/);
    expect(wordsOf(saved)).toContain(odd);
    const again = await workbench.anotherPage('#brief');
    await expect.poll(() => again.getByRole('textbox', { name: /Who asks/ }).inputValue()).toBe(odd);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('where the answer is not to build it says so first, and saves no figure of the charge', async () => {
    const design = JSON.parse(demoTexts['propane-in-the-cabinet.json']!);
    design.machine.charge = '91.7 to 133.3 g';
    const workbench = await openBrief({ text: JSON.stringify(design) });
    const { page } = workbench;
    await expect.poll(() => page.locator('.station-answer').textContent()).toMatch(/^The answer is not to build/);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as an HTML file' }).click(),
    ]);
    const saved = await readFile((await download.path())!, 'utf8');
    for (const words of [wordsOf(saved), (await printed(page, 'A4')).join(' ')]) {
      expect(words).toContain('Nothing is asked to be built.');
      expect(words).not.toMatch(/\b91\.7|\b92 g|\b133\.3|\b13[03] g/);
    }
    await workbench.close();
  });

  test('where the answer is not to build, no printed page of the workbench holds a figure of the charge', async () => {
    const design = JSON.parse(demoTexts['propane-in-the-cabinet.json']!);
    design.machine.charge = '91.7 to 133.3 g';
    const workbench = await openBrief({ text: JSON.stringify(design) });
    const { page } = workbench;
    await go(page, 'the-machine');
    for (const more of await page.locator('.station-inputs details.fields-more').all()) {
      await more.locator('> summary').click();
    }
    const charge = page.getByRole('textbox', { name: 'Refrigerant in the circuit' });
    await expect.poll(() => charge.inputValue()).toBe('91.7 to 133.3 g');
    const words = (await printed(page, 'A4')).join(' ');
    expect(words).toContain('Refrigerant in the circuit');
    expect(words).toContain('withheld');
    expect(words).not.toMatch(/\b91\.7|\b92 g|\b133\.3|\b13[03] g/);
    await workbench.close();
  });

  test('a design without an answer has no brief', async () => {
    const workbench = await openBrief();
    const { page } = workbench;
    const design = JSON.parse(demoTexts['reef-in-the-study.json']!);
    design.exchangers.condenserApproach = '1 K';
    const file = { name: 'design.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(design)) };
    await page.locator('input[type=file]').setInputFiles(file);
    await expect.poll(() => page.locator('.station-answer').textContent()).toMatch(/^There is no brief/);
    await expect.poll(() => page.locator('.brief').count()).toBe(0);
    await workbench.close();
  });
});
