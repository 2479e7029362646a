// What the browser's own printing takes of a page whose pictures nobody has looked at yet, and the units of a first visit.

import { expect, test } from 'vitest';
import { openWorkbench, startBrowserForThisFile } from '../harness.ts';
import { chooseUnits, shown } from '../waiting.ts';

startBrowserForThisFile();

test('the picture of the loop and the lists under it are printed although nobody has scrolled to them', async () => {
  const { page, close, expectNoComplaints } = await openWorkbench({ path: '#where-it-settles' });
  await shown(page, 'where-it-settles');
  // It is on its way as soon as the page has been still for a while; its words come with it.
  await page.locator('.station .chart figcaption p:not(.words-to-come)').first().waitFor({ state: 'attached' });
  expect(await page.locator('.station .chart-picture').getAttribute('data-state')).toBe('waiting');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const still = page.locator('.station .chart-still > svg');
  expect(await still.isVisible()).toBe(true);
  expect(await still.textContent()).toContain('specific enthalpy');
  expect(await page.locator('.station .chart').textContent()).not.toContain('Not drawn');
  expect(await page.locator('.station section:has(> #measure-next-title) li').count()).toBeGreaterThan(0);
  expect(await page.locator('.station section:has(> #what-matters-title) tbody tr').count()).toBeGreaterThan(0);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect.poll(() => still.count()).toBe(0);
  expectNoComplaints();
  await close();
});

test('a first visit in US English begins in US units; what is chosen then stays', async () => {
  const { page, close } = await openWorkbench({ path: '#where-it-settles', locale: 'en-US' });
  await shown(page, 'where-it-settles');
  const answer = () => page.locator('.station-answer').textContent();
  await expect.poll(answer).toContain('°F');
  await page.getByRole('button', { name: 'Start my own' }).click();
  const dialog = page.getByRole('dialog');
  expect(await dialog.getByRole('radio', { name: 'US' }).isChecked()).toBe(true);
  await dialog.getByRole('radio', { name: 'Metric' }).check({ force: true });
  await expect.poll(() => dialog.textContent()).toContain('24 to 26\u00a0°C');
  await page.keyboard.press('Escape');
  await page.reload();
  await shown(page, 'where-it-settles');
  await expect.poll(answer).toContain('°C');
  await chooseUnits(page, 'US');
  await expect.poll(answer).toContain('°F');
  await close();
});
