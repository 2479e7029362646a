// Choosing among all refrigerants: a short list, all of them one step away, found by number, name or use with the keyboard
// alone; blends tell their glide, fluids for study only say so, and a cycle that cannot be offers one that can.

import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { oneVisitor, screens, startBrowserForThisFile } from './harness.ts';
import { go, openCycleAfresh, settled, tooWide } from './waiting.ts';

startBrowserForThisFile();

const visitor = oneVisitor({ path: '#cycle-alone' });

async function openCycle() {
  const { page, expectNoComplaints } = visitor();
  await openCycleAfresh(page);
  return { page, expectNoComplaints };
}

const allFluids = (page: Page) => page.getByRole('button', { name: 'all 25 fluids' });
const search = (page: Page) => page.getByLabel('Find by number, name or use');
const chosen = (page: Page) => page.getByLabel('Refrigerant', { exact: true });
const answer = (page: Page) => page.locator('.station-answer').textContent();

async function choose(page: Page, typed: string): Promise<void> {
  await allFluids(page).click();
  await search(page).fill(typed);
  await search(page).press('Enter');
}

function numberItem(page: Page, label: string): Promise<string> {
  return page.locator('.number-item', { hasText: label }).innerText();
}

describe('Cycle alone', () => {
  test('a blend is found by its number, and tells bubble, dew and glide', async () => {
    const { page, expectNoComplaints } = await openCycle();
    expect(await page.locator('.number-item', { hasText: 'Glide' }).count()).toBe(0);
    await choose(page, '407');
    await expect.poll(() => answer(page)).toMatch(/^With R407C/);
    await expect.poll(() => chosen(page).inputValue()).toBe('R407C');
    await expect.poll(() => chosen(page).evaluate((select) => select === document.activeElement)).toBe(true);
    await expect.poll(() => numberItem(page, 'Glide, evaporating')).toMatch(/6\.\d.K\s+bubble −6\.\d.°C, dew 0.°C/);
    await expect
      .poll(() => numberItem(page, 'Glide, condensing'))
      .toMatch(/\d\.\d.K\s+bubble 3\d(\.\d)?.°C, dew 40.°C/);
    await expect.poll(() => page.locator('.cycle-notes').textContent()).toContain('glide approximation');
    await page.getByText('Viscosity and conductivity of these states').click();
    const transport = page.locator('.cycle-transport');
    await expect.poll(() => transport.locator('tbody tr').last().textContent()).toMatch(/into the evaporator––$/);
    expect(await transport.getByRole('columnheader', { name: 'estimate' }).count()).toBe(0);
    await choose(page, 'R410A');
    await expect.poll(() => answer(page)).toMatch(/^With R410A/);
    await expect.poll(() => numberItem(page, 'Glide, evaporating')).toMatch(/0\.1.K/);
    await choose(page, 'R32');
    await expect.poll(() => answer(page)).toMatch(/^With R32/);
    await expect.poll(() => page.locator('.number-item', { hasText: 'Glide' }).count()).toBe(0);
    await expect.poll(() => transport.getByRole('columnheader', { name: 'Viscosity, estimate' }).count()).toBe(1);
    expectNoComplaints();
  });

  test('by keyboard alone: what is typed narrows the list, Escape leaves it as it was', async () => {
    const { page, expectNoComplaints } = await openCycle();
    await allFluids(page).focus();
    await page.keyboard.press('Enter');
    await search(page).waitFor();
    const found = page.locator('.fluid-finder [role=status]');
    await expect.poll(() => page.locator('.fluid-item').count()).toBe(25);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('freezers');
    await expect.poll(() => found.textContent()).toMatch(/^[2-9] of 25\.$/);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.fluid-finder').count()).toBe(0);
    await expect.poll(() => allFluids(page).evaluate((button) => button === document.activeElement)).toBe(true);
    expect(await chosen(page).inputValue()).toBe('R134a');
    await page.keyboard.press('Enter');
    await search(page).fill('CO2');
    await expect.poll(() => found.textContent()).toBe('1 of 25. Enter takes R744.');
    await search(page).fill('propane');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => answer(page)).toMatch(/^With R290/);
    expectNoComplaints();
  });

  test('a fluid for study only says so where it is chosen and where its figures stand; it begins where it can boil', async () => {
    const { page, expectNoComplaints } = await openCycle();
    await page.setViewportSize(screens.phone);
    await choose(page, 'water');
    await expect.poll(() => answer(page)).toMatch(/^With R718/);
    const words = 'R718 is for study only: no source that was read confirms';
    const notes = () => page.locator('.cycle-notes').textContent();
    await expect.poll(notes).toContain(words);
    await expect.poll(() => page.locator('.fluid-study').textContent()).toContain(words);
    await expect.poll(notes).toContain('R718 begins with evaporating 5 °C');
    const evaporating = page.getByRole('textbox', { name: 'Evaporating temperature', exact: true });
    await expect.poll(() => evaporating.inputValue()).toBe('5 °C');
    await allFluids(page).click();
    await search(page).waitFor();
    await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'R290 (propane' }).click();
    await expect.poll(() => answer(page)).toMatch(/^With R290/);
    await expect.poll(notes).toBe('');
    await expect.poll(() => page.locator('.fluid-study').count()).toBe(0);
    await page.setViewportSize(screens.wide);
    expectNoComplaints();
  });

  test('what one fluid began with is not handed on to the next', async () => {
    const { page, expectNoComplaints } = await openCycle();
    const condensing = page.getByRole('textbox', { name: 'Condensing temperature', exact: true });
    const evaporating = page.getByRole('textbox', { name: 'Evaporating temperature', exact: true });
    await choose(page, 'CO2');
    await expect.poll(() => answer(page)).toMatch(/^With R744/);
    await expect.poll(() => condensing.inputValue()).toBe('25 °C');
    await choose(page, 'water');
    await expect.poll(() => answer(page)).toMatch(/^With R718/);
    await expect.poll(() => condensing.inputValue()).toBe('40 °C');
    await expect.poll(() => evaporating.inputValue()).toBe('5 °C');
    await choose(page, 'R134a');
    await expect.poll(() => answer(page)).toMatch(/^With R134a/);
    await expect.poll(() => evaporating.inputValue()).toBe('0 °C');
    expectNoComplaints();
  });

  test('typed temperatures outside the dome are answered with those that are inside, one press away', async () => {
    const { page, expectNoComplaints } = await openCycle();
    const condensing = page.getByRole('textbox', { name: 'Condensing temperature', exact: true });
    await condensing.fill('45 °C');
    await condensing.press('Enter');
    await choose(page, 'carbon dioxide');
    const notice = page.locator('.station .notice');
    await expect
      .poll(() => notice.textContent())
      .toMatch(/Above its critical point \(31.°C, .*\) R744 does not condense/);
    await expect.poll(() => condensing.inputValue()).toBe('45 °C');
    await notice.getByRole('button', { name: 'Take condensing 25 °C' }).click();
    await expect.poll(() => answer(page)).toMatch(/^With R744/);
    await expect.poll(() => condensing.inputValue()).toBe('25 °C');
    await expect.poll(() => notice.count()).toBe(0);
    expectNoComplaints();
  });
});

describe('elsewhere', () => {
  test('the machine may be studied on another fluid; the verdict says what that means', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'the-machine');
    await allFluids(page).click();
    await search(page).fill('R1270');
    await search(page).press('Enter');
    await expect.poll(() => answer(page)).toMatch(/you would run it on R1270 at/);
    await expect.poll(() => page.getByLabel('Refrigerant it would run on').inputValue()).toBe('R1270');
    await expect.poll(() => page.locator('#verdict').textContent()).toMatch(/do not build/i);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('#verdict').textContent()).not.toMatch(/do not build/i);
    expectNoComplaints();
  });

  test('side by side, five of any kind: every column has its figures or says why not', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'side-by-side');
    await page.getByRole('checkbox', { name: 'R600a' }).uncheck();
    await page.getByRole('checkbox', { name: 'R290' }).uncheck();
    await allFluids(page).click();
    for (const name of ['ammonia', 'CO2', '407']) {
      await search(page).fill(name);
      await search(page).press('Enter');
    }
    await search(page).fill('');
    await page.getByRole('checkbox', { name: 'R718' }).check();
    const heads = page.locator('.comparison-fluid');
    await expect.poll(() => heads.allTextContents()).toEqual(['R134a', 'R744', 'R717', 'R407C', 'R718']);
    await settled(page);
    await expect.poll(() => page.getByRole('checkbox', { name: 'R290' }).isDisabled()).toBe(true);
    const table = page.locator('table.comparison');
    expect(await table.textContent()).not.toMatch(/NaN|undefined|Infinity/);
    await expect.poll(() => table.getByText('not below the critical point of R744').count()).toBe(1);
    await expect.poll(() => table.locator('thead').getByText('R718 is for study only').count()).toBe(1);
    for (const width of await heads.evaluateAll((all) => all.map((head) => head.closest('th')?.offsetWidth ?? 0))) {
      expect(width).toBeGreaterThan(120);
    }
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'only the usual ones and the chosen' }).click();
    await expect.poll(() => page.getByRole('checkbox', { name: 'R227ea' }).count()).toBe(0);
    expect(await page.getByRole('checkbox', { name: 'R717' }).isChecked()).toBe(true);
    expectNoComplaints();
  });
});
