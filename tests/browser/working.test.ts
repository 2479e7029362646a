// How a number was computed, as a visitor follows it in either form of the workbench: opened in place, its chain of steps, a
// number chosen by keyboard, the textbook cycle to hand in, on a phone and on paper. Every way in and back is followed in
// served/working.test.ts.

import { evaluate } from 'mathjs';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { allFormulas } from '../../src/assess/index.ts';
import { accessibilityFaults } from './accessibility.ts';
import { oneVisitor, screens, startBrowserForThisFile } from './harness.ts';
import { pdfPages } from './pdf-text.ts';
import { go, tooWide } from './waiting.ts';
import { answer, focusedField, openEveryStep, showWorking, stepsOnPage, title } from './working-page.ts';

startBrowserForThisFile();

const visitor = oneVisitor();

async function openWorking(part: string): Promise<{ page: Page; expectNoComplaints: () => void }> {
  const { page, expectNoComplaints } = visitor();
  await showWorking(page, part);
  return { page, expectNoComplaints };
}

describe('from a number to its working', () => {
  test('opened in place, with the way to the whole chain', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'where-it-settles');
    await page.getByRole('button', { name: 'how computed: Discharge gas' }).click();
    const step = page.locator('.working').first();
    await step.locator('math').first().waitFor();
    await expect.poll(() => step.textContent()).toMatch(/Source.*Holds for.*In the code.*src\//);
    // Deeper than any fixed limit would allow, always by the first number that is a step.
    for (let depth = 0; depth < 14; depth++) {
      const next = page.locator('.working button[aria-expanded="false"]').last();
      if ((await next.count()) === 0) break;
      await next.click();
    }
    await expect.poll(() => page.locator('.working').count()).toBeGreaterThan(8);
    await page.getByRole('link', { name: 'Open in Working' }).click();
    await expect.poll(() => title(page)).toBe('Working');
    await expect.poll(() => answer(page)).toContain('temperature of the discharge gas');
    expectNoComplaints();
  });
});

describe('the chain of a result', () => {
  test.each([
    ['tankLoad', 'heat the tank needs', 'tank.load'],
    ['heatDelivered', 'heat to the water', 'plant.heatReachingWater'],
  ])('%s: every step once, and its printed numbers lead to its printed result', async (key, label, result) => {
    const { page, expectNoComplaints } = await openWorking(key);
    const sentence = await answer(page);
    expect(sentence).toMatch(new RegExp(`^How ${label} = about .* was computed: \\d+ steps from \\d+ of your inputs`));
    await openEveryStep(page);
    const steps = await stepsOnPage(page);
    expect(steps.length).toBe(Number(/(\d+) steps/.exec(sentence ?? '')?.[1]));
    expect(await page.locator('.chain > li').last().getAttribute('id')).toBe(`step:${result}`);
    const expressions = new Map(allFormulas.map((formula) => [formula.id, formula.expression]));
    for (const { formula, inputs, result: printed, formulas } of steps) {
      const numbers = Object.fromEntries(Object.entries(inputs).map(([name, text]) => [name, Number(text)]));
      const value = Number(evaluate(expressions.get(formula)!, { ...numbers }));
      const said = value === 0 ? '0' : value.toPrecision(5).replace('e+', 'e');
      expect(said, formula).toBe(printed);
      expect(formulas).toHaveLength(2);
      expect(formulas[1]).toContain('; equals ');
    }
    expectNoComplaints();
  });
});

describe('choosing a number', () => {
  test('by its page, or by typing, by keyboard alone', async () => {
    const { page, expectNoComplaints } = await openWorking('');
    await expect.poll(() => answer(page)).toMatch(/Each of the \d+ steps/);
    await expect
      .poll(() => page.locator('.chooser-groups summary').allTextContents())
      .toEqual(
        ['What leaves', 'The machine', 'Where it settles', 'Two bills', 'Cycle alone'].map((name) =>
          expect.stringContaining(name),
        ),
      );
    await page.getByRole('searchbox').focus();
    await page.keyboard.type('evaporates');
    await expect.poll(() => page.locator('.chooser-found').textContent()).toMatch(/water that evaporates/i);
    await page.getByRole('searchbox').fill('');
    await page.locator('.chooser-groups summary').first().waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => answer(page)).toMatch(/^How heat the tank needs = /);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('page-title');
    await page.getByRole('button', { name: 'Open all steps' }).focus();
    const steps = await page.locator('.chain > li').count();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.step').count()).toBe(steps);
    const line = page.locator('.chain summary').first();
    await line.focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.step').count()).toBe(steps - 1);
    expectNoComplaints();
  });
});

describe('the textbook cycle', () => {
  test('to hand in: given, states, every step open, results; without the verdict on the design; back into its fields', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'cycle-alone');
    await page.getByRole('button', { name: 'Every step, to hand in' }).click();
    await page.locator('.chain-part').first().waitFor();
    await expect.poll(() => page.locator('.verdict, .heat-path').count()).toBe(0);
    await expect
      .poll(() => page.locator('.hand-in h3').allTextContents())
      .toEqual(['Given', 'Taken as true', 'States', 'Step by step', 'Results']);
    const steps = await stepsOnPage(page);
    expect(steps.length).toBeGreaterThan(50);
    expect(await page.locator('.chain > li').count()).toBe(steps.length);
    const parts = await page.locator('.chain-part h4').allTextContents();
    for (const name of ['State 1', 'State 2s', 'State 2,', 'State 3', 'State 4']) {
      expect(parts.join('; ')).toContain(name);
    }
    const cop = await page.locator('tr', { hasText: 'Heating COP' }).last().locator('td').textContent();
    expect(cop).toMatch(/^\d\.\d{3}$/);
    expect(await answer(page)).toContain(`heating COP ${cop}`);
    await page.locator('.hand-in').getByRole('link', { name: 'Condensing temperature' }).first().click();
    await expect.poll(() => title(page)).toBe('Cycle alone');
    await expect.poll(() => focusedField(page)).toBe('request.condensing');
    expectNoComplaints();
  });
});

describe('on a phone', () => {
  test('long formulas move inside their own box, the page is never wider than the screen', async () => {
    const { page, expectNoComplaints } = await openWorking('condenser.length');
    await page.setViewportSize(screens.phone);
    await openEveryStep(page);
    const stopsAtWide = () =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.formula')]
          .filter((box) => box.scrollWidth > box.clientWidth + 1)
          .map((box) => box.tabIndex),
      );
    await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
    await expect.poll(async () => (await stopsAtWide()).length).toBeGreaterThan(2);
    await expect.poll(async () => new Set(await stopsAtWide())).toEqual(new Set([0]));
    await page.setViewportSize(screens.wide);
    expectNoComplaints();
  });
});

describe('on paper', () => {
  test.each(['tank.load', 'cycle'])('%s: every step stands open, and the caution on every page', async (part) => {
    const { page, expectNoComplaints } = await openWorking(part);
    if (part !== 'cycle') {
      await page.getByRole('button', { name: 'Fold all' }).click();
      await expect.poll(() => page.locator('.step').count()).toBe(0);
    }
    const titles = await page
      .locator('.chain-title')
      .evaluateAll((lines) => lines.map((line) => line.firstChild?.textContent ?? ''));
    const pages = pdfPages(await page.pdf({ format: 'A4', printBackground: true }));
    const text = pages.join(' ').replaceAll(/\s+/g, '');
    expect(pages.length).toBeGreaterThan(2);
    for (const [index, one] of pages.entries()) expect(one, `page ${index + 1}`).toContain('not permission to build');
    for (const words of titles) expect(text).toContain(words.replaceAll(/\s+/g, ''));
    expect(text.split('Inthecode').length - 1).toBe(titles.length);
    expectNoComplaints();
  });

  test('no formula and no table is wider than the paper', async () => {
    const { page, expectNoComplaints } = await openWorking('condenser.length');
    await page.setViewportSize({ width: 690, height: 900 });
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect.poll(() => page.locator('.step').count()).toBeGreaterThan(20);
    const wide = () =>
      page
        .locator('.formula > math, .step-table')
        .evaluateAll((all) =>
          all.filter((one) => one.getBoundingClientRect().right > innerWidth + 1).map((one) => one.textContent),
        );
    await expect.poll(wide).toEqual([]);
    await page.emulateMedia({ media: null });
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await page.setViewportSize(screens.wide);
    expectNoComplaints();
  });
});

test('the design reckoned both ways says that nothing changed, and how long each took', async () => {
  const { page, expectNoComplaints } = await openWorking('');
  await page.getByRole('button', { name: 'Reckon it both ways' }).click();
  const told = page.getByRole('status').filter({ hasText: 'The answer is the same' });
  await told.waitFor({ timeout: 60_000 });
  expect(await told.textContent()).toMatch(
    /moves most, by one part in [\d,]{6,}\..* takes [\d.]+ ms, from the table [\d.]+ ms;/,
  );
  expect(await accessibilityFaults(page)).toEqual([]);
  expectNoComplaints();
});
