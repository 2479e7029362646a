// What a visitor does in the workbench: sees a solved example, edits, mistypes, undoes, saves and opens, starts an own
// design, looks at a cycle without a tank, all without an error or a request to anywhere else.

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { type OpenWorkbench, oneVisitor, openWorkbench, startBrowserForThisFile } from './harness.ts';
import { chooseUnits, drawChart, go, settled } from './waiting.ts';

startBrowserForThisFile();

/** Changes nothing of the design. */
const visitor = oneVisitor();

async function openSolved(options: Parameters<typeof openWorkbench>[0] = {}): Promise<OpenWorkbench> {
  const workbench = await openWorkbench(options);
  await workbench.page.waitForSelector('.verdict-sentence');
  await settled(workbench.page);
  return workbench;
}

const sentence = (page: Page) => page.locator('.verdict-sentence').textContent();

/** Types into a field and leaves it, so that the text is used. */
async function fill(page: Page, label: string | RegExp, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label });
  await field.fill(text);
  await field.blur();
}

describe('a first visit', () => {
  test('shows a solved example with heat path, verdict, caution and the p-h picture', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'where-it-settles');
    expect(await sentence(page)).toMatch(/the tank needs .* and this machine brings/);
    await expect.poll(() => page.locator('.caution').textContent()).toContain('not permission to build');
    await expect.poll(() => page.locator('.heat-node').count()).toBeGreaterThan(5);
    for (const words of await page.locator('.heat-node').allTextContents()) expect(words).toMatch(/\d/);
    await drawChart(page.locator('.chart-picture').first());
    await page.waitForSelector('.chart-picture[data-state="drawn"] .scatterlayer');
    expectNoComplaints();
  });

  test('every station opens from its link, keeps the caution in view and has one heading of its own', async () => {
    const { page, expectNoComplaints } = visitor();
    for (const title of ['What leaves', 'The machine', 'Where it settles', 'Two bills', 'Cycle alone']) {
      await page.getByRole('navigation', { name: 'Stations' }).getByRole('link', { name: title }).click();
      await expect.poll(() => page.locator('#page-title').textContent()).toBe(title);
      expect(await page.locator('.caution').textContent()).toContain('Local law comes first');
    }
    expectNoComplaints();
  });

  test('the machine shows its cautions, and what could hurt someone is found there', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'the-machine');
    const text = () => page.locator('.machine-cautions').textContent();
    for (const word of ['licensed', 'dry nitrogen', 'Capacitors', 'Residual-current', 'Local codes']) {
      await expect.poll(text).toContain(word);
    }
    expectNoComplaints();
  });
});

/** Runs in the page: how long after the last key each fault was told, from now on. */
function pausesBeforeErrors(): number[] {
  const pauses: number[] = [];
  let lastKey = 0;
  document.addEventListener('input', () => {
    lastKey = performance.now();
  });
  new MutationObserver((changes) => {
    const came = changes.flatMap(({ addedNodes }) => [...addedNodes]);
    if (came.some((node) => node instanceof HTMLElement && node.matches('.field-error')))
      pauses.push(performance.now() - lastKey);
  }).observe(document.body, { childList: true, subtree: true });
  return pauses;
}

describe('editing', () => {
  test('a warmer tank changes the verdict; undo brings it back, redo does it again', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    const before = await sentence(page);
    await fill(page, 'Water temperature', '31 °C');
    await expect.poll(() => sentence(page)).not.toBe(before);
    await settled(page);
    const after = await sentence(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => sentence(page)).toBe(before);
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => sentence(page)).toBe(after);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('a text is used while it is typed; one that is unusable half-way is not told before typing stops', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    const before = await sentence(page);
    const field = page.getByRole('textbox', { name: 'Water temperature' });
    // However slowly the keys come here, what is told is told no sooner than this after the last of them [ms].
    const pauses = await page.evaluateHandle(pausesBeforeErrors);
    await field.selectText();
    await field.pressSequentially('31');
    expect(await sentence(page)).toBe(before);
    await field.pressSequentially(' °C');
    await expect.poll(() => sentence(page)).not.toBe(before);
    expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
    await expect.poll(() => page.locator('.field-error').count()).toBe(0);
    await field.pressSequentially('x');
    await page.locator('.field-error').waitFor();
    const told = await pauses.jsonValue();
    expect(told.length).toBeGreaterThan(0);
    for (const pause of told) expect(pause).toBeGreaterThan(650);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('any unit is taken and said back in the units of the view', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    await fill(page, 'Water temperature', '79F');
    await expect
      .poll(() => page.locator('.field-understood').allTextContents())
      .toContainEqual(expect.stringContaining('26.1'));
    await workbench.close();
  });

  test('text that cannot be used is explained under the field and leaves the design untouched', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    const before = await sentence(page);
    const field = page.getByRole('textbox', { name: 'Water temperature' });
    for (const text of ['warm', '26', '-400 °C', '9 to 3 °C', '26 bar']) {
      await field.fill(text);
      await field.blur();
      const message = page.locator('.field-error').first();
      await message.waitFor();
      await expect.poll(() => message.textContent()).toContain('unchanged');
      const id = await message.getAttribute('id');
      await expect.poll(async () => (await field.getAttribute('aria-describedby'))?.split(' ')).toContain(id);
      await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    }
    await settled(page);
    expect(await sentence(page)).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('units shown are a view: the saved text stays the same, the page speaks the other units', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'where-it-settles');
    const metric = await saved(page);
    await chooseUnits(page, 'US');
    await expect.poll(() => sentence(page)).toContain('BTU/h');
    expect(await saved(page)).toBe(metric);
    await page.keyboard.press('Escape');
    await chooseUnits(page, 'Metric');
    expectNoComplaints();
  });

  test('a rating asks for what it cannot be without, and only then changes the design', async () => {
    const workbench = await openSolved({ path: '#the-machine' });
    const { page } = workbench;
    const before = await sentence(page);
    await page.locator('.station-inputs summary', { hasText: 'I know more' }).click();
    await page.locator('.station-inputs summary', { hasText: 'Ratings from a sheet' }).click();
    await page.getByRole('button', { name: 'Add a rating' }).click();
    const pending = page.locator('.field-pending');
    await pending.getByLabel('Stated at').selectOption({ label: 'A point with a name' });
    await pending.getByLabel('Rating point').selectOption({ index: 3 });
    expect(await sentence(page)).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await pending.getByRole('button', { name: 'Leave it' }).click();
    await pending.waitFor({ state: 'detached' });
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Add a rating');
    expect(await sentence(page)).toBe(before);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('an assumption is replaced in the list of assumptions, and one fewer is left', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    const left = async () => (await page.locator('.verdict-links button').first().textContent()) ?? '';
    const before = Number.parseInt(await left(), 10);
    await page.locator('.verdict-links button').first().click();
    const dialog = page.getByRole('dialog');
    // What it costs is told last; with that the list has its order.
    await expect.poll(() => dialog.textContent()).toContain('Moves what this loop costs');
    const field = dialog.getByRole('textbox').first();
    const shown = (await field.getAttribute('placeholder')) ?? '';
    const value = /assumed: .*?([\d.,−]+ ?\S*)$/.exec(shown.replaceAll('\u00a0', ' '))?.[1] ?? '';
    await field.fill(value);
    await field.blur();
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect.poll(async () => Number.parseInt(await left(), 10)).toBe(before - 1);
    await workbench.close();
  });
});

async function saved(page: Page): Promise<string> {
  await page.locator('summary', { hasText: 'Designs' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  return readFile(await download.path(), 'utf8');
}

async function openText(page: Page, name: string, text: string): Promise<void> {
  await page.setInputFiles('input[type=file]', { name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** The example with a source warmer than its water would ever need. */
async function withoutAnswer(page: Page): Promise<string> {
  const design = JSON.parse(await saved(page));
  design.source = { kind: 'otherRoom', temperature: '45 °C', coldest: '44 °C', warmest: '46 °C' };
  design.tank.waterTemperature = '18 °C';
  return JSON.stringify({ ...design, name: 'No answer' });
}

describe('a design without an answer', () => {
  test('opened: shows why and its inputs, and nothing of the design before', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    await openText(page, 'none.json', await withoutAnswer(page));
    await expect.poll(() => page.locator('.notice').textContent()).toContain('not above evaporating');
    await expect.poll(() => page.locator('.verdict-sentence').count()).toBe(0);
    await expect.poll(() => page.locator('.top-standing').textContent()).toBe('No answer');
    await fill(page, 'Temperature there', '14 °C');
    await fill(page, 'Coldest it stays there', '12 °C');
    await expect.poll(() => sentence(page)).toMatch(/tank needs/);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('edited into: what is still shown is marked as of before', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    const before = await sentence(page);
    await openText(page, 'warm.json', (await withoutAnswer(page)).replace('18 °C', '34 °C'));
    await expect.poll(() => sentence(page)).not.toBe(before);
    await settled(page);
    const solved = await sentence(page);
    await fill(page, 'Water temperature', '18 °C');
    await expect.poll(() => page.locator('.notice').count()).toBe(1);
    await expect.poll(() => page.locator('.verdict-standing').textContent()).toContain('No answer');
    await expect.poll(() => page.locator('.top-standing').textContent()).toBe('No answer');
    expect(await sentence(page)).toBe(solved);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('.notice').count()).toBe(0);
    await expect.poll(() => page.locator('.top-standing').textContent()).not.toContain('No answer');
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('files', () => {
  test('save, edit, open: the saved design is back, letter for letter', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    const before = await sentence(page);
    const text = await saved(page);
    await fill(page, 'Water temperature', '31 °C');
    await expect.poll(() => sentence(page)).not.toBe(before);
    await openText(page, 'saved.json', text);
    await expect.poll(() => sentence(page)).toBe(before);
    await settled(page);
    expect(await saved(page)).toBe(text);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('a file that cannot be used is refused with its faults by path; the design stays', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    const before = await sentence(page);
    const good = JSON.parse(await saved(page));
    const bad: readonly (readonly [string, string, string])[] = [
      ['not JSON', 'warm water', 'JSON'],
      ['cut off', JSON.stringify(good).slice(0, 100), 'cut off'],
      ['empty', '', 'empty'],
      ['wrong type', JSON.stringify({ ...good, name: 7 }), 'name'],
      ['unknown key', JSON.stringify({ ...good, pump: 'big' }), 'pump'],
      ['missing part', JSON.stringify({ ...good, machine: undefined }), 'machine'],
      ['future format', JSON.stringify({ ...good, formatVersion: 99 }), 'newer'],
      [
        'unknown unit',
        JSON.stringify({ ...good, tank: { ...good.tank, waterTemperature: '26 °X' } }),
        'tank.waterTemperature',
      ],
      ['far too large', ' '.repeat(3_000_000), 'MB'],
    ];
    for (const [name, text, words] of bad) {
      await openText(page, `${name}.json`, text);
      await expect.poll(() => page.locator('.notice').textContent(), { message: name }).toContain(words);
      await expect.poll(() => page.locator('.notice').textContent()).toContain('unchanged');
      await page.locator('.notice').getByRole('button', { name: 'Close' }).click();
    }
    expect(await sentence(page)).toBe(before);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('the open design is there again after a reload', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    const before = await sentence(page);
    await fill(page, 'Water temperature', '31 °C');
    await expect.poll(() => sentence(page)).not.toBe(before);
    await settled(page);
    const after = await sentence(page);
    await page.reload();
    await page.waitForSelector('.verdict-sentence');
    await settled(page);
    expect(await sentence(page)).toBe(after);
    await workbench.close();
  });

  test('rubbish in the browser’s storage, or no storage at all, opens an example and says so', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    await page.evaluate(() => localStorage.setItem('kettlefin.design', '{"formatVersion": 1, "name": '));
    await page.reload();
    await page.waitForSelector('.verdict-sentence');
    await expect.poll(() => page.locator('.notice').textContent()).toContain('set aside');
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem('kettlefin.set-aside')))
      .toContain('formatVersion');
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    });
    await page.reload();
    await page.waitForSelector('.verdict-sentence');
    await expect.poll(() => page.locator('.design-name').textContent()).toContain('Not kept');
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('start my own', () => {
  test('seven questions lead to a verdict with its assumptions', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    await page.getByRole('button', { name: 'Start my own' }).click();
    const dialog = page.getByRole('dialog');
    const press = () => dialog.getByRole('button', { name: /Next question|Show me the verdict/ }).click();
    let question = 1;
    const next = async () => {
      await press();
      question += 1;
      await expect.poll(() => dialog.textContent()).toContain(`Question ${question} of 7`);
    };
    await press();
    await expect.poll(() => dialog.locator('.question-problems').textContent()).toContain('please answer');
    await dialog.getByRole('combobox').selectOption('measured');
    await dialog.getByRole('textbox').nth(0).fill('38 kWh');
    await dialog.getByRole('textbox').nth(1).fill('7 days');
    await next();
    await dialog.getByRole('textbox').first().fill('79 F');
    await dialog.getByRole('combobox').first().selectOption('fresh');
    await next();
    await dialog.getByRole('textbox').first().fill('20 to 22 °C');
    await next();
    await next();
    const boxes = dialog.getByRole('combobox');
    await boxes.nth(0).selectOption({ index: 1 });
    await expect.poll(async () => (await boxes.nth(1).locator('option').allTextContents()).join()).toContain('R134a');
    await boxes.nth(1).selectOption('R134a');
    await next();
    await dialog.getByRole('textbox').nth(0).fill('EUR');
    await dialog.getByRole('textbox').nth(1).fill('0.32 EUR/kWh');
    await next();
    await press();
    await dialog.waitFor({ state: 'detached' });
    await expect.poll(() => page.locator('.design-name').textContent()).toContain('My tank');
    await expect.poll(() => sentence(page)).toMatch(/tank needs/);
    await expect.poll(() => page.locator('.verdict-links').textContent()).toMatch(/\d+ assumptions left/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('.design-name').textContent()).not.toContain('My tank');
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('cycle alone', () => {
  test('answers at once, follows its fields, refuses what cannot be', async () => {
    const workbench = await openWorkbench({ path: '#cycle-alone' });
    const { page } = workbench;
    const work = () => page.locator('.number-item', { hasText: 'Heating COP' }).locator('.number-value').textContent();
    await page.locator('.number-item').first().waitFor();
    const before = await work();
    await fill(page, 'Condensing', '60 °C');
    await expect.poll(async () => Number(await work())).toBeLessThan(Number(before));
    const after = await work();
    await fill(page, 'Condensing', '150 °C');
    await expect.poll(() => page.locator('.station .notice').textContent()).toMatch(/condensing/i);
    expect(await work()).toBe(after);
    await fill(page, 'Condensing', '60 °C');
    await expect.poll(() => page.locator('.station .notice').count()).toBe(0);
    await expect.poll(() => page.locator('.chart').count()).toBe(2);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('a pressure in place of a temperature gives the same cycle; its working opens; it is there after a reload', async () => {
    const workbench = await openWorkbench({ path: '#cycle-alone' });
    const { page } = workbench;
    const cop = () => page.locator('.number-item', { hasText: 'Heating COP' }).locator('.number-value').textContent();
    await page.locator('.number-item').first().waitFor();
    const before = Number(await cop());
    await page.getByRole('button', { name: 'give the pressure instead' }).first().click();
    const pressure = page.getByRole('textbox', { name: 'Evaporating pressure' });
    await expect.poll(() => pressure.inputValue()).toMatch(/bar abs/);
    await expect.poll(async () => Math.abs(Number(await cop()) - before)).toBeLessThan(0.01);
    await fill(page, 'Evaporating pressure', '30 psia');
    await expect.poll(async () => Number(await cop())).toBeLessThan(before - 0.3);
    const after = await cop();
    await page.getByRole('button', { name: 'how computed: Heating COP', exact: true }).click();
    await page.locator('.working').getByRole('button', { name: 'cycle.heatDelivered' }).click();
    await expect.poll(() => page.locator('.working .working').textContent()).toContain('src/loop/');
    await chooseUnits(page, 'US');
    await expect.poll(() => page.locator('main').textContent()).not.toMatch(/°C|K\b.*dead state|kJ\/kg\b/);
    await page.reload();
    await page.locator('.number-item').first().waitFor();
    await expect.poll(cop).toBe(after);
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('how computed', () => {
  test('a number shown opens its formula, the numbers put in, the source and the file', async () => {
    const { page, expectNoComplaints } = visitor();
    await go(page, 'where-it-settles');
    await page.getByRole('button', { name: /how computed: Evaporating/ }).click();
    const working = page.locator('.working').first();
    await expect.poll(() => working.textContent()).toContain('src/');
    await expect.poll(() => working.textContent()).toMatch(/Source/);
    expectNoComplaints();
  });
});
