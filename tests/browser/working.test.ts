// How a number was computed, as a visitor follows it: from any page to the working, along the chain of steps, back into the
// field it began with; the textbook cycle to hand in; by keyboard, on a phone, on paper.

import { evaluate } from 'mathjs';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { allFormulas } from '../../src/assess/index.ts';
import { accessibilityFaults } from './accessibility.ts';
import { type OpeningOptions, type OpenWorkbench, openWorkbench, screens, startBrowserForThisFile } from './harness.ts';
import { pdfPages } from './pdf-text.ts';

startBrowserForThisFile();

async function openWorking(part: string, options: OpeningOptions = {}): Promise<OpenWorkbench> {
  const workbench = await openWorkbench({ ...options, path: part === '' ? '#working' : `#working/${part}` });
  await workbench.page.waitForSelector('.chain-actions, .paper > .chooser');
  return workbench;
}

const answer = (page: Page) => page.locator('.station-answer').textContent();
const title = (page: Page) => page.locator('#page-title').textContent();
const focusedField = (page: Page) => page.evaluate(() => document.activeElement?.getAttribute('data-field'));

async function openEveryStep(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open all steps' }).click();
  await expect.poll(() => page.locator('details.chain-part:not([open]), .chain details:not([open])').count()).toBe(0);
}

describe('from a number to its working', () => {
  const numbers = [
    ['what-leaves', '.bars .result-link', /^How heat that leaves, .* = about [\d.,]+\sW/],
    ['what-leaves', '.heat-path-table .result-link', /^How .* = /],
    ['the-machine', '.station table.data .result-link', /^How .*(temperature|pressure ratio).* = /],
    ['where-it-settles', 'h3:text("States of the refrigerant") + section .result-link', /^How .* = .*°C/],
    ['where-it-settles', '.number-range .result-link', /^How evaporating pressure = about .*\sbar/],
    ['where-it-settles', '.sizes .result-link', /^How (surface of the coil|air through the coil).* = /],
    ['two-bills', '.chart .result-link', /^How .* = /],
    ['cycle-alone', 'table.data .result-link', /^How .* of the textbook cycle = /],
    ['cycle-alone', '.bars .result-link', /^How .* of the textbook cycle = /],
  ] as const;
  test.each(numbers)('%s: %s', async (page_, selector, words) => {
    const workbench = await openWorkbench({ path: `#${page_}` });
    const { page } = workbench;
    const link = page.locator(selector).first();
    await link.waitFor({ state: 'attached' });
    await link.evaluate((element) => {
      for (let fold = element.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
        fold.open = true;
    });
    // What is heard holds what is seen.
    const heard = (await link.getAttribute('aria-label')) ?? '';
    expect(heard).toMatch(/^how computed: .+, /);
    expect(heard.endsWith(`, ${await link.textContent()}`)).toBe(true);
    await link.click();
    await page.waitForSelector('.chain-actions');
    expect(await title(page)).toBe('Working');
    expect(await answer(page)).toMatch(words);
    await page.goBack();
    await expect.poll(() => title(page)).not.toBe('Working');
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('opened in place, with the way to the whole chain', async () => {
    const workbench = await openWorkbench({ path: '#where-it-settles' });
    const { page } = workbench;
    await page.getByRole('button', { name: 'how computed: Discharge gas' }).click();
    const step = page.locator('.working').first();
    await step.locator('math').first().waitFor();
    expect(await step.textContent()).toMatch(/Source.*Holds for.*In the code.*src\//);
    // Deeper than any fixed limit would allow, always by the first number that is a step.
    for (let depth = 0; depth < 14; depth++) {
      const next = page.locator('.working button[aria-expanded="false"]').last();
      if ((await next.count()) === 0) break;
      await next.click();
    }
    expect(await page.locator('.working').count()).toBeGreaterThan(8);
    await page.getByRole('link', { name: 'Open in Working' }).click();
    await expect.poll(() => title(page)).toBe('Working');
    expect(await answer(page)).toContain('temperature of the discharge gas');
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

/** What stands on the page of every step that is open. */
async function stepsOnPage(page: Page) {
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

describe('the chain of a result', () => {
  test.each([
    ['tankLoad', 'heat the tank needs', 'tank.load'],
    ['heatDelivered', 'heat to the water', 'plant.heatReachingWater'],
  ])('%s: every step once, and its printed numbers lead to its printed result', async (key, label, result) => {
    const workbench = await openWorking(key);
    const { page } = workbench;
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
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('a number from another step leads to its place in the chain', async () => {
    const workbench = await openWorking('tank.load');
    const { page } = workbench;
    await page.locator('.chain .step a', { hasText: 'tank.loss' }).click();
    const focused = () => page.evaluate(() => document.activeElement?.closest('li')?.id);
    await expect.poll(focused).toBe('step:tank.loss');
    expect(await page.locator('[id="step:tank.loss"] details').getAttribute('open')).not.toBeNull();
    await workbench.close();
  });

  test('a chain of hundreds of steps is folded into named parts, and opens as a whole', async () => {
    const workbench = await openWorking('accounts.thisLoop.annualCost');
    const { page } = workbench;
    expect(await page.locator('.step').count()).toBe(1);
    const parts = await page.locator('.chain-part h4').allTextContents();
    expect(parts).toContain('January');
    expect(parts).not.toContain('Further steps');
    await openEveryStep(page);
    expect(await page.locator('.step').count()).toBeGreaterThan(200);
    await page.getByRole('button', { name: 'Fold all' }).click();
    await expect.poll(() => page.locator('.step').count()).toBe(0);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('its range says which input moves it', async () => {
    const workbench = await openWorking('tank.load');
    const { page } = workbench;
    await expect.poll(() => page.locator('#its-range-title').count()).toBe(1);
    const block = page.locator('section[aria-labelledby="its-range-title"]');
    expect(await block.locator('tbody tr').count()).toBeGreaterThan(1);
    expect(await block.locator('tbody').textContent()).toMatch(/\d+\s%/);
    await workbench.close();
  });
});

describe('back to the inputs', () => {
  test.each([
    ['tank.load', 'tank.waterTemperature', 'What leaves'],
    ['operating.compressor.power', 'machine.compressor.frictionPressure', 'The machine'],
    ['operating.heatDelivered', 'exchangers.subcooling', 'Where it settles'],
    ['accounts.thisLoop.annualCost', 'prices.electricity', 'Two bills'],
  ])('%s began with %s: the link leads into that very field', async (result, path, station) => {
    const workbench = await openWorking(result);
    const { page } = workbench;
    const input = page.locator(`.inputs-behind li[data-path="${path}"]`);
    expect(await input.textContent()).toMatch(/typed|assumed/);
    await input.getByRole('link').click();
    await expect.poll(() => title(page)).toBe(station);
    await expect.poll(() => focusedField(page)).toBe(path);
    expect(await page.evaluate(() => document.activeElement?.checkVisibility())).toBe(true);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('from a step too; what is typed there changes the working', async () => {
    const workbench = await openWorking('operating.condensingTemperature');
    const { page } = workbench;
    const before = await answer(page);
    await page.locator('.step a', { hasText: 'Water temperature' }).click();
    await expect.poll(() => focusedField(page)).toBe('tank.waterTemperature');
    const field = page.locator('[data-field="tank.waterTemperature"]');
    await field.fill('31 °C');
    await field.blur();
    await page.goBack();
    await expect.poll(() => title(page)).toBe('Working');
    await expect.poll(() => answer(page)).not.toBe(before);
    expect(await page.locator('.step').last().textContent()).toMatch(/31\s°C/);
    await workbench.close();
  });

  test('an address of a field opens with the focus in it', async () => {
    const workbench = await openWorkbench({ path: '#the-machine/machine.compressor.fillingFactor' });
    await expect.poll(() => focusedField(workbench.page)).toBe('machine.compressor.fillingFactor');
    await workbench.close();
  });
});

describe('choosing a number', () => {
  test('by its page, or by typing, by keyboard alone', async () => {
    const workbench = await openWorking('');
    const { page } = workbench;
    expect(await answer(page)).toMatch(/Each of the \d+ steps/);
    expect(await page.locator('.chooser-groups summary').allTextContents()).toEqual(
      ['What leaves', 'The machine', 'Where it settles', 'Two bills', 'Cycle alone'].map((name) =>
        expect.stringContaining(name),
      ),
    );
    await page.getByRole('searchbox').focus();
    await page.keyboard.type('evaporates');
    await expect.poll(() => page.locator('.chooser-found').textContent()).toMatch(/water that evaporates/i);
    await page.getByRole('searchbox').fill('');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => answer(page)).toMatch(/^How heat the tank needs = /);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('page-title');
    await page.getByRole('button', { name: 'Open all steps' }).focus();
    await page.keyboard.press('Enter');
    const steps = await page.locator('.chain > li').count();
    await expect.poll(() => page.locator('.step').count()).toBe(steps);
    const line = page.locator('.chain summary').first();
    await line.focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.step').count()).toBe(steps - 1);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('an address that names no number says so and offers others', async () => {
    const workbench = await openWorking('tank.laod');
    const { page } = workbench;
    expect(await answer(page)).toContain('No number of this design is called “tank.laod”');
    expect(await answer(page)).toContain('Perhaps “tank.load” is meant.');
    await page.locator('.chooser').waitFor();
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('the textbook cycle', () => {
  test('to hand in: given, states, every step open, results; without the verdict on the design; back into its fields', async () => {
    const workbench = await openWorkbench({ path: '#cycle-alone' });
    const { page } = workbench;
    await page.getByRole('button', { name: 'Every step, to hand in' }).click();
    await page.locator('.chain-part').first().waitFor();
    expect(await page.locator('.verdict, .heat-path').count()).toBe(0);
    expect(await page.locator('.hand-in h3').allTextContents()).toEqual([
      'Given',
      'Taken as true',
      'States',
      'Step by step',
      'Results',
    ]);
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
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('one result of it by its address, in the fields kept by the browser', async () => {
    const workbench = await openWorkbench({ path: '#cycle-alone' });
    const { page } = workbench;
    const field = page.getByRole('textbox', { name: 'Condensing temperature' });
    await field.fill('55 °C');
    await field.blur();
    const shown = page.locator('.number-item', { hasText: 'Pressure ratio' }).locator('.number-value');
    await expect.poll(() => shown.textContent()).not.toBe('3.472');
    const ratio = Number(await shown.textContent());
    await page.evaluate(() => {
      location.hash = 'working/cycle.pressureRatio';
    });
    await page.locator('.chain').first().waitFor();
    await openEveryStep(page);
    const steps = await stepsOnPage(page);
    expect(Math.abs(Number(steps.at(-1)?.result) - ratio)).toBeLessThan(1e-3);
    expect(await page.locator('.inputs-behind').textContent()).toContain('55 °C');
    await workbench.close();
  });
});

describe('in the US view', () => {
  test('numbers put in stand in SI, and beside them as the page shows them', async () => {
    const workbench = await openWorkbench({ path: '#working/operating.condensingTemperature' });
    const { page } = workbench;
    await page.locator('summary', { hasText: 'View' }).click();
    await page.getByRole('radio', { name: 'US' }).check({ force: true });
    await expect.poll(() => answer(page)).toMatch(/= about [\d.]+\s°F/);
    const step = page.locator('.step').last();
    expect(await step.locator('.step-result').textContent()).toMatch(/\sK, as shown: [\d.]+\s°F/);
    const row = await step.locator('tr[data-symbol="dT_c"]').textContent();
    expect(row).toMatch(/\d\sK/);
    expect(row).toMatch(/°F/);
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('reachable for everybody', () => {
  test.each([
    ['light', screens.wide],
    ['dark', screens.wide],
    ['light', screens.phone],
    ['dark', screens.phone],
  ] as const)('%s, %o: no fault, with every step open', async (colorScheme, viewport) => {
    const workbench = await openWorking('plant.heatReachingWater', { colorScheme, viewport });
    const { page } = workbench;
    await openEveryStep(page);
    expect(await accessibilityFaults(page)).toEqual([]);
    await workbench.close();
  });

  test('phone: long formulas move inside their own box, the page is never wider than the screen', async () => {
    const workbench = await openWorking('condenser.length', { viewport: screens.phone });
    const { page } = workbench;
    await openEveryStep(page);
    const wide = await page.evaluate(() => ({
      page: document.documentElement.scrollWidth - innerWidth,
      boxes: [...document.querySelectorAll<HTMLElement>('.formula')]
        .filter((box) => box.scrollWidth > box.clientWidth + 1)
        .map((box) => box.tabIndex),
    }));
    expect(wide.page).toBeLessThanOrEqual(0);
    expect(wide.boxes.length).toBeGreaterThan(2);
    expect(new Set(wide.boxes)).toEqual(new Set([0]));
    await workbench.close();
  });
});

describe('on paper', () => {
  test.each(['tank.load', 'cycle'])('%s: every step stands open, and the caution on every page', async (part) => {
    const workbench = await openWorking(part);
    const { page } = workbench;
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
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('no formula and no table is wider than the paper', async () => {
    const workbench = await openWorking('condenser.length', { viewport: { width: 690, height: 900 } });
    const { page } = workbench;
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect.poll(() => page.locator('.step').count()).toBeGreaterThan(20);
    const wide = await page
      .locator('.formula > math, .step-table')
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().right > innerWidth + 1).map((one) => one.textContent),
      );
    expect(wide).toEqual([]);
    await workbench.close();
  });
});

test('the design reckoned both ways says that nothing changed, and how long each took', async () => {
  const workbench = await openWorking('');
  const { page } = workbench;
  await page.getByRole('button', { name: 'Reckon it both ways' }).click();
  const told = page.getByRole('status').filter({ hasText: 'The answer is the same' });
  await told.waitFor();
  expect(await told.textContent()).toMatch(
    /moves most, by one part in [\d,]{6,}\..* takes [\d.]+ ms, from the table [\d.]+ ms;/,
  );
  expect(await accessibilityFaults(page)).toEqual([]);
  workbench.expectNoComplaints();
});
