// What leaves, as somebody describes the tank that stands in the room: panels chosen by pointer and keyboard, layers added, moved
// and removed, a sump and a meter beside it, all without a fault of accessibility and within a phone's screen. One visitor.

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults } from '../accessibility.ts';
import { type OpenWorkbench, openWorkbench, screens, startBrowserForThisFile } from '../harness.ts';
import { chooseUnits, settled, tooWide } from '../waiting.ts';

startBrowserForThisFile();

let workbench: OpenWorkbench;
let page: Page;

beforeAll(async () => {
  workbench = await openWorkbench({ path: '#what-leaves' });
  ({ page } = workbench);
  await page.waitForSelector('.verdict-sentence');
  const buffer = await readFile('data/designs/frag-tank-cold-garage.json');
  await page.setInputFiles('input[type=file]', { name: 'garage.json', mimeType: 'application/json', buffer });
  await page.locator('.tank-sheet').waitFor();
  await settled(page);
});
afterAll(async () => {
  workbench.expectNoComplaints();
  await workbench.close();
});

const panelTitle = () => page.locator('#panel-title').textContent();
const layerNames = () => page.locator('.panel-section tbody th').allTextContents();
const radio = (panel: string) => page.locator(`input[data-panel="${panel}"]`);
const outside = () => page.getByRole('group', { name: 'Layers outside' });
const adding = () => outside().locator('.field-pending');
const captions = () => page.locator('.tank-caption').allTextContents();

async function fill(label: string | RegExp, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label });
  await field.fill(text);
  await field.blur();
}

async function addLayer(material: string, thickness: string): Promise<void> {
  await outside().getByRole('button', { name: 'Add an outer layer' }).click();
  await adding().getByLabel('Material').selectOption(material);
  await adding().getByLabel('Thickness').fill(thickness);
  await adding().getByRole('button', { name: 'Add it' }).click();
}

describe('panels', () => {
  test('each is chosen by a click on its face, and by the arrow keys among all of them', async () => {
    await page.locator('label.tank-face[for$="tank.bottom"]').click();
    await expect.poll(panelTitle).toBe('Bottom');
    await radio('tank.front').focus();
    await page.keyboard.press('Space');
    await expect.poll(panelTitle).toBe('Front pane');
    const seen = new Set([await panelTitle()]);
    const count = await page.locator('.tank-choice input').count();
    for (let pressed = 1; pressed < count; pressed++) {
      await page.keyboard.press('ArrowRight');
      await expect.poll(async () => seen.has(await panelTitle())).toBe(false);
      seen.add(await panelTitle());
    }
    expect(seen.size).toBe(count);
    await expect.poll(() => page.locator('.tank-focused').count()).toBeGreaterThan(0);
  });

  test('the table of the picture says the same and chooses too', async () => {
    await page.locator('.tank-table > summary').click();
    const rows = page.locator('.tank-table tbody tr');
    await expect.poll(() => rows.count()).toBe(await page.locator('.tank-choice input').count());
    const row = rows.filter({ hasText: 'Left end' });
    expect(await row.textContent()).toMatch(/W\/m²/);
    await row.getByRole('button').click();
    await expect.poll(panelTitle).toBe('Left end');
    await expect.poll(() => radio('tank.left').isChecked()).toBe(true);
  });
});

describe('layers', () => {
  test('added, moved and removed; each is in the section, and undo brings the tank back', async () => {
    await page.locator('label.tank-face[for$="tank.front"]').first().click();
    await expect.poll(panelTitle).toBe('Front pane');
    const before = await layerNames();
    await addLayer('extrudedPolystyrene', '20 mm');
    await expect.poll(async () => (await layerNames()).join()).toContain('Extruded');
    await addLayer('corkBoard', '10 mm');
    await expect.poll(layerNames).toHaveLength(before.length + 2);
    await page.getByRole('button', { name: 'Move towards the water: Outer layer 2' }).click();
    const outermost = async () =>
      (await layerNames()).slice(-4, -2).map((name) => name.replace(/^\d+\s+(\w+).*$/, '$1'));
    await expect.poll(outermost).toEqual(['Cork', 'Extruded']);
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    await expect.poll(focused).toBe('Move outwards: Outer layer 1');
    await page.getByRole('button', { name: 'Remove Outer layer 2' }).click();
    await expect.poll(async () => (await layerNames()).join()).not.toContain('polystyrene');
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Add an outer layer');
    const undo = page.getByRole('button', { name: 'Undo' });
    for (let count = 0; count < 4; count++) await undo.click();
    await expect.poll(layerNames).toEqual(before);
    await settled(page);
  });

  test('a gap that nothing closes is refused in words, and the design stays', async () => {
    await outside().getByRole('button', { name: 'Add an outer layer' }).click();
    await outside().getByLabel('What the layer is').selectOption({ label: 'A sealed air space' });
    await outside().getByLabel('Width of the gap').fill('20 mm');
    await adding().getByRole('button', { name: 'Add it' }).click();
    await expect.poll(() => outside().locator('.field-error').textContent()).toMatch(/closes the gap.*unchanged/s);
    await outside().getByRole('button', { name: 'Leave it' }).click();
    await expect.poll(() => outside().locator('.list-item').count()).toBe(0);
  });
});

describe('what stands beside it', () => {
  test('a sump is added with its sizes, drawn below the tank, folded among the ways out, and removed', async () => {
    await page.locator('.fields-more > summary').first().click();
    await page.locator('summary', { hasText: 'Other vessels and pipes' }).click();
    await page.getByRole('button', { name: 'Add a sump' }).click();
    const pending = page.locator('.field-pending');
    const texts: readonly (readonly [string, string])[] = [
      ['Length of the sump', '60 cm'],
      ['Width of the sump', '35 cm'],
      ['Height of the sump', '35 cm'],
      ['Thickness of the panes of the sump', '6 mm'],
    ];
    for (const [label, text] of texts) await fill(label, text);
    await pending.getByLabel('Panes of the sump made of').selectOption('glass');
    await pending.getByLabel('Lid of the sump').selectOption('none');
    await expect.poll(captions).toContain('Sump, from outside');
    await settled(page);
    const bars = page.locator('.bars').first();
    const fold = bars.getByRole('button', { name: /^Sump/ });
    await fold.waitFor();
    expect(await bars.getByText('Bottom, sump').count()).toBe(0);
    await fold.click();
    await expect.poll(() => fold.getAttribute('aria-expanded')).toBe('true');
    await expect.poll(() => bars.locator('tr.part').count()).toBeGreaterThan(4);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Remove the sump' }).click();
    await expect.poll(captions).not.toContain('Sump, from outside');
    await settled(page);
  });

  test('a meter says how far the model is off, is taken as the load, and taken back', async () => {
    const loss = () =>
      page.locator('.number-item', { hasText: 'Leaves the tank' }).locator('.number-value').textContent();
    const modelled = await loss();
    await page.getByRole('button', { name: 'Add a meter on the heater' }).click();
    const pending = page.locator('.meter .field-pending');
    await pending.getByLabel('What the heater used').fill('60 kWh');
    await pending.getByLabel('What the heater used').blur();
    await pending.getByLabel('How long you measured').fill('7 days');
    await pending.getByLabel('How long you measured').blur();
    await expect.poll(() => page.locator('.meter').textContent()).toMatch(/The measurement is \d+ % (higher|lower)/);
    await page.getByRole('button', { name: 'Take the measurement as the load' }).click();
    await expect.poll(loss).not.toBe(modelled);
    await expect.poll(() => page.locator('.meter').textContent()).toContain('multiplied by');
    await page.getByRole('button', { name: 'Go back to what the model says' }).click();
    await expect.poll(loss).toBe(modelled);
  });
});

test('on a phone nothing is wider than the screen, in either view of units', async () => {
  await page.setViewportSize(screens.phone);
  await settled(page);
  await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await chooseUnits(page, 'US');
  await expect.poll(() => page.locator('.heat-legend').textContent()).toContain('BTU');
  await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
});
