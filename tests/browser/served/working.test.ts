// Every way from a number to its working and back into the inputs it began with. The one file has the same pages and links:
// they are followed once, served; what is drawn, loaded or printed is looked at in both forms (../working.test.ts).

import { describe, expect, test } from 'vitest';
import { oneVisitor, openWorkbench, startBrowserForThisFile } from '../harness.ts';
import { chooseUnits, go, settled, shown } from '../waiting.ts';
import { answer, focusedField, openEveryStep, openWorking, showWorking, stepsOnPage, title } from '../working-page.ts';

startBrowserForThisFile();

/** Follows every link. */
const visitor = oneVisitor();

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
    const { page } = visitor();
    await go(page, page_);
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
    await expect.poll(() => title(page)).toBe('Working');
    await expect.poll(() => answer(page)).toMatch(words);
    await page.goBack();
    await shown(page, page_);
    visitor().expectNoComplaints();
  });
});

describe('the chain of a result', () => {
  test('a number from another step leads to its place in the chain', async () => {
    const { page } = visitor();
    await showWorking(page, 'tank.load');
    await page.locator('.chain .step a', { hasText: 'tank.loss' }).click();
    const focused = () => page.evaluate(() => document.activeElement?.closest('li')?.id);
    await expect.poll(focused).toBe('step:tank.loss');
    await expect.poll(() => page.locator('[id="step:tank.loss"] details').getAttribute('open')).not.toBeNull();
  });

  test('a chain of hundreds of steps is folded into named parts, and opens as a whole', async () => {
    const { page } = visitor();
    await showWorking(page, 'accounts.thisLoop.annualCost');
    await expect.poll(() => page.locator('.step').count()).toBe(1);
    const parts = await page.locator('.chain-part h4').allTextContents();
    expect(parts).toContain('January');
    expect(parts).not.toContain('Further steps');
    await openEveryStep(page);
    await expect.poll(() => page.locator('.step').count()).toBeGreaterThan(200);
    await page.getByRole('button', { name: 'Fold all' }).click();
    await expect.poll(() => page.locator('.step').count()).toBe(0);
    visitor().expectNoComplaints();
  });

  test('its range says which input moves it', async () => {
    const { page } = visitor();
    await showWorking(page, 'tank.load');
    await expect.poll(() => page.locator('#its-range-title').count()).toBe(1);
    const block = page.locator('section[aria-labelledby="its-range-title"]');
    await expect.poll(() => block.locator('tbody tr').count()).toBeGreaterThan(1);
    await expect.poll(() => block.locator('tbody').textContent()).toMatch(/\d+\s%/);
  });
});

describe('back to the inputs', () => {
  test.each([
    ['tank.load', 'tank.waterTemperature', 'What leaves'],
    ['operating.compressor.power', 'machine.compressor.frictionPressure', 'The machine'],
    ['operating.heatDelivered', 'exchangers.subcooling', 'Where it settles'],
    ['accounts.thisLoop.annualCost', 'prices.electricity', 'Two bills'],
  ])('%s began with %s: the link leads into that very field', async (result, path, station) => {
    const { page } = visitor();
    await go(page, 'working', result);
    const input = page.locator(`.inputs-behind li[data-path="${path}"]`);
    await expect.poll(() => input.textContent()).toMatch(/typed|assumed/);
    await input.getByRole('link').click();
    await expect.poll(() => title(page)).toBe(station);
    await expect.poll(() => focusedField(page)).toBe(path);
    await expect.poll(() => page.evaluate(() => document.activeElement?.checkVisibility())).toBe(true);
    visitor().expectNoComplaints();
  });
});

describe('inputs and addresses', () => {
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
    await settled(page);
    await expect.poll(() => page.locator('.step').last().textContent()).toMatch(/31\s°C/);
    // Sentence and steps are of the same state.
    const said = await answer(page);
    expect(said).toMatch(/^How condensing temperature = about/);
    expect(said).not.toBe(before);
    await workbench.close();
  });

  test('an address of a field opens with the focus in it', async () => {
    const workbench = await openWorkbench({ path: '#the-machine/machine.compressor.leakageRatio' });
    await expect.poll(() => focusedField(workbench.page)).toBe('machine.compressor.leakageRatio');
    await workbench.close();
  });

  test('an address that names no number says so and offers others', async () => {
    const { page } = visitor();
    await showWorking(page, 'tank.laod');
    await expect.poll(() => answer(page)).toContain('No number of this design is called “tank.laod”');
    await expect.poll(() => answer(page)).toContain('Perhaps “tank.load” is meant.');
    await page.locator('.chooser').waitFor();
    visitor().expectNoComplaints();
  });

  test('one result of it by its address, in the fields kept by the browser', async () => {
    const workbench = await openWorkbench({ path: '#cycle-alone' });
    const { page } = workbench;
    const field = page.getByRole('textbox', { name: 'Condensing temperature' });
    await field.fill('55 °C');
    await field.blur();
    const pressureRatio = page.locator('.number-item', { hasText: 'Pressure ratio' }).locator('.number-value');
    await expect.poll(async () => Number(await pressureRatio.textContent())).toBeGreaterThan(4.5);
    const ratio = Number(await pressureRatio.textContent());
    await go(page, 'working', 'cycle.pressureRatio');
    await page.locator('.chain').first().waitFor();
    await openEveryStep(page);
    const steps = await stepsOnPage(page);
    expect(Math.abs(Number(steps.at(-1)?.result) - ratio)).toBeLessThan(1e-3);
    await expect.poll(() => page.locator('.inputs-behind').textContent()).toContain('55 °C');
    await workbench.close();
  });
});

describe('in the US view', () => {
  test('numbers put in stand in SI, and beside them as the page shows them', async () => {
    const { page } = visitor();
    await showWorking(page, 'operating.condensingTemperature');
    await chooseUnits(page, 'US');
    await expect.poll(() => answer(page)).toMatch(/= about [\d.]+\s°F/);
    const step = page.locator('.step').last();
    await expect.poll(() => step.locator('.step-result').textContent()).toMatch(/\sK, as shown: [\d.]+\s°F/);
    const row = () => step.locator('tr[data-symbol="dT_c"]').textContent();
    await expect.poll(row).toMatch(/\d\sK/);
    await expect.poll(row).toMatch(/°F/);
    visitor().expectNoComplaints();
  });
});
