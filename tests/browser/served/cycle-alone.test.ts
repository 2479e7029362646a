// The textbook cycle on its paper: what a textbook adds to the five facts, a second cycle over the first, the states as a
// table for spreadsheets, and every kind of contradiction refused in a sentence while the last cycle stays.

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { oneVisitor, startBrowserForThisFile } from '../harness.ts';
import { chooseUnits, openCycleAfresh } from '../waiting.ts';

startBrowserForThisFile();

const visitor = oneVisitor({ path: '#cycle-alone' });

async function openCycle(view: 'US' | 'Metric' = 'Metric') {
  const { page, expectNoComplaints } = visitor();
  await openCycleAfresh(page);
  if (view === 'US') {
    await chooseUnits(page, view);
    await expect
      .poll(() => page.locator('.number-item').allTextContents())
      .toContainEqual(expect.stringContaining('psi'));
  }
  return { page, expectNoComplaints };
}

function field(page: Page, name: string) {
  return page.getByRole('textbox', { name, exact: true });
}

async function fill(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).fill(text);
  await field(page, name).press('Enter');
}

function number(page: Page, label: string): Promise<string | null> {
  return page.locator('.number-item', { hasText: label }).locator('.number-value').first().textContent();
}

async function knowMore(page: Page): Promise<void> {
  await page.locator('summary', { hasText: 'I know more' }).click();
}

describe('a textbook problem', () => {
  // Çengel & Boles, Thermodynamics, example 11-2 (from memory of the source): R134a enters the compressor at 0.14 MPa and
  // −10 °C with 0.05 kg/s, leaves at 0.8 MPa and 50 °C; liquid at 0.72 MPa and 26 °C. Printed: 7.93 kW cooling, 2.02 kW,
  // efficiency 0.939, COP 3.93.
  test('with real outlet states and a mass flow', async () => {
    const { page, expectNoComplaints } = await openCycle();
    for (let count = 0; count < 2; count++) {
      await page.getByRole('button', { name: 'give the pressure instead' }).first().click();
    }
    await page.getByRole('button', { name: 'give the temperature instead' }).nth(2).click();
    await page.getByRole('button', { name: 'give the temperature instead' }).last().click();
    await page.getByRole('button', { name: 'give the discharge temperature instead' }).click();
    await fill(page, 'Evaporating pressure', '0.14 MPa');
    await fill(page, 'Suction temperature', '-10 °C');
    await fill(page, 'Condensing pressure', '0.8 MPa');
    await fill(page, 'Discharge temperature', '50 °C');
    await fill(page, 'Liquid temperature', '26 °C');
    await knowMore(page);
    await fill(page, 'Pressure at the condenser outlet', '0.72 MPa');
    await page.getByLabel('How much flows').selectOption('massFlow');
    await fill(page, 'Mass flow', '0.05 kg/s');
    await expect
      .poll(async () => Number.parseFloat((await number(page, 'Cooling capacity')) ?? ''))
      .toBeCloseTo(7926, -1.3);
    const read = async (label: string) => Number.parseFloat((await number(page, label)) ?? '');
    await expect.poll(() => read('Power on the gas')).toBeCloseTo(2017, -1);
    await expect.poll(() => read('Cooling COP')).toBeCloseTo(3.93, 1);
    await expect.poll(() => read('Isentropic efficiency')).toBeCloseTo(93.7, 0);
    expectNoComplaints();
  });
});

describe('what contradicts itself is refused in a sentence, and the last cycle stays', () => {
  const cases: readonly [string, (page: Page) => Promise<void>, RegExp][] = [
    [
      'liquid hotter than condensing',
      async (page) => {
        await page.getByRole('button', { name: 'give the temperature instead' }).last().click();
        await fill(page, 'Liquid temperature', '55 °C');
      },
      /liquid temperature cannot be 55/,
    ],
    [
      'discharge below that of a compression without losses',
      async (page) => {
        await page.getByRole('button', { name: 'give the discharge temperature instead' }).click();
        await fill(page, 'Discharge temperature', '41 °C');
      },
      /discharge temperature cannot be 41/,
    ],
    ['superheat past the limit of the equation', (page) => fill(page, 'Superheat', '300 K'), /covers .* to /],
    [
      'condensing below evaporating',
      (page) => fill(page, 'Condensing temperature', '-20 °C'),
      /condensing temperature/,
    ],
  ];
  test.each(cases)('%s', async (_name, act, sentence) => {
    const { page, expectNoComplaints } = await openCycle();
    const before = await number(page, 'Pressure ratio');
    await act(page);
    await expect.poll(() => page.locator('.station .notice').textContent()).toMatch(sentence);
    expect(await number(page, 'Pressure ratio')).toBe(before);
    expect(await page.locator('.station .notice').textContent()).not.toMatch(/NaN|undefined|\bPa\b/);
    expectNoComplaints();
  });
});

describe('two cycles', () => {
  test('a second begins as a copy; its change shows beside the first, in table and pictures; one can be taken away', async () => {
    const { page, expectNoComplaints } = await openCycle();
    await page.getByRole('button', { name: 'lay a second cycle over it' }).click();
    await expect.poll(() => page.locator('.station-answer').textContent()).toContain('both give the same heat');
    await page.getByLabel('Refrigerant', { exact: true }).selectOption('R290');
    await expect
      .poll(() => page.locator('.station-answer').textContent())
      .toMatch(/[AB] gives 1\.\d\d times the heat of/);
    await expect
      .poll(() => page.locator('.chart h3').allTextContents())
      .toEqual([expect.stringMatching(/R134a.*R290/), expect.stringMatching(/R134a.*R290/)]);
    const compared = page.locator('table', { hasText: 'B by A' });
    await expect.poll(() => compared.textContent()).not.toMatch(/Glide|Second-law/);
    await page.getByLabel('Refrigerant', { exact: true }).selectOption('R407C');
    await expect.poll(() => compared.textContent()).toMatch(/Glide, evaporating–6\.\d+.K/);
    await expect.poll(() => page.locator('.cycle-notes').textContent()).toMatch(/^R407C is a blend/);
    await page.getByLabel('Refrigerant', { exact: true }).selectOption('R290');
    await expect.poll(() => compared.textContent()).not.toContain('Glide');
    await page.reload();
    await expect.poll(() => page.locator('.station-answer').textContent()).toContain('for B');
    await page.getByRole('button', { name: 'take cycle A away' }).click();
    await expect.poll(() => page.locator('.station-answer').textContent()).toMatch(/^With R290 and a lift/);
    expectNoComplaints();
  });
});

describe('states as a table for spreadsheets', () => {
  test.each([
    ['Metric', /°C/],
    ['US', /°F/],
  ] as const)('%s view: caution first, units in the head, a row for each state', async (view, degrees) => {
    const { page, expectNoComplaints } = await openCycle(view);
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the states (CSV)' }).click();
    const file = await coming;
    expect(file.suggestedFilename()).toBe('R134a-states.csv');
    const lines = (await readFile(await file.path(), 'utf8')).trim().split('\r\n');
    expect(lines[0]).toMatch(/^# .*not permission to build/);
    const rows = lines.filter((line) => !line.startsWith('#'));
    expect(rows[0]).toMatch(degrees);
    expect(rows).toHaveLength(1 + 5);
    if (view === 'US') await chooseUnits(page, 'Metric');
    expectNoComplaints();
  });
});
