// Only a served page fetches the coefficients of a refrigerant when it is first asked about: which ones it fetches, and what
// it says where one cannot be had.

import { expect, inject, test } from 'vitest';
import { openWorkbench, startBrowserForThisFile } from '../harness.ts';

startBrowserForThisFile();

/** 'R134a' of '…/assets/R134a-DxvY8hMA.js' */
const fluidOf = (address: string) => /\/(R\d[^/]*?)-[^/]{8}\.js$/.exec(decodeURIComponent(address))?.[1];

test('the fluid of the design is fetched, another one when it is chosen; one that cannot be had costs itself only', async () => {
  const { page, complaints, close } = await openWorkbench({ path: '#cycle-alone' });
  const fetched: string[] = [];
  page.context().on('request', (request) => {
    const name = fluidOf(request.url());
    if (name !== undefined) fetched.push(name);
  });
  await page.reload();
  await page.locator('.number-item').first().waitFor();
  await expect.poll(() => [...new Set(fetched)]).toEqual(['R134a']);
  const choice = page.getByLabel('Refrigerant', { exact: true });
  const answer = page.locator('.station-answer');
  await choice.selectOption('R290');
  await expect.poll(() => answer.textContent()).toMatch(/^With R290/);
  await expect.poll(() => [...new Set(fetched)]).toEqual(['R134a', 'R290']);

  await page.context().route(/\/R600a-/, (route) => route.abort());
  await choice.selectOption('R600a');
  await expect
    .poll(() => page.locator('.station .notice').textContent())
    .toContain('The equation of R600a could not be fetched');
  await choice.selectOption('R134a');
  await expect.poll(() => answer.textContent()).toMatch(/^With R134a/);
  await expect.poll(() => page.locator('.station .notice').count()).toBe(0);

  // The browser itself reports the request that was cut off.
  expect(complaints.consoleErrors.filter((words) => !/ERR_FAILED/.test(words))).toEqual([]);
  expect([complaints.pageErrors, complaints.policyViolations, complaints.outsideRequests]).toEqual([[], [], []]);
  expect(new URL(page.url()).origin).toBe(new URL(inject('workbenchAddress')).origin);
  await close();
});
