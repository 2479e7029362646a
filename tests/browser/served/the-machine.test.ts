// The station The machine: its sentence, how it is known, the pictures and their limits, a table pasted from a spreadsheet with a
// point that does not fit, a measurement on the bench, several machines, other units, keyboard, phone, paper, and what the
// accessibility engine finds.

import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoTexts } from '../../designs.ts';
import { accessibilityFaults } from '../accessibility.ts';
import { oneVisitor, screens, startBrowserForThisFile } from '../harness.ts';
import { chooseUnits, drawChart, drawCharts, openDesign, settled, shown, tooWide } from '../waiting.ts';

startBrowserForThisFile();

const text = demoTexts['frag-tank-cold-garage.json']!;

/** R600a reciprocating, 13.54 cm³, 60 Hz, condensing 35 °C, return gas and liquid 32.2 °C: four published rows (F. Fortkamp 2022). */
const published = [
  [-35, 167, 129],
  [-25, 282, 160],
  [-20, 362, 177],
  [-10, 570, 217],
];

function spreadsheet(rows: readonly (readonly number[])[]): string {
  return ['Te [°C]\tTc [°C]\tCapacity [W]\tPower [W]', ...rows.map(([te, q, p]) => `${te}\t35\t${q}\t${p}`)].join('\n');
}

function withTable(rows: readonly (readonly number[])[]): string {
  const design = JSON.parse(text);
  design.machine = {
    refrigerant: 'R600a',
    compressor: {
      appliance: 'chestFreezer',
      madeFor: 'R600a',
      displacement: '13.54 cm3',
      nameplate: { frequency: '60 Hz', voltage: '115 V', ratedCurrent: '2.1 A' },
      tables: [
        {
          table: spreadsheet(rows),
          basis: {
            suction: { kind: 'returnGas', returnGas: '32.2 °C' },
            liquid: { kind: 'temperature', temperature: '32.2 °C' },
          },
          frequency: '60 Hz',
        },
      ],
    },
    supply: { frequency: '60 Hz', voltage: '115 V' },
  };
  return JSON.stringify(design);
}

const visitor = oneVisitor({ path: '#two-bills' });

async function open(design: string): Promise<{ page: Page; expectNoComplaints: () => void }> {
  const { page, expectNoComplaints } = visitor();
  await openDesign(page, design, 'the-machine');
  return { page, expectNoComplaints };
}

/** The study is of the design as it stands. */
const studied = (page: Page) => shown(page, 'the-machine');

const answer = (page: Page) => page.locator('.station-answer').textContent();
const block = (page: Page, title: string) =>
  page.locator('section.block', { has: page.getByRole('heading', { name: title }) });

describe('the design as it was opened', () => {
  let page: Page;
  beforeAll(async () => {
    ({ page } = await open(text));
  });

  test('the sentence: what it was built for, where it would run, heat, electricity, current, first limit', async () => {
    const words = (await answer(page)) ?? '';
    expect(words).toMatch(
      /^Built for R134a evaporating at −40 to −10.°C, you would run it at .*°C: expect between \d+ and \d+.W of heat from \d+ to \d+.W of electricity/,
    );
    expect(words).toContain('its rated current is not known');
    expect(words).toMatch(/First limit: .*, (passed by|.* away)/);
    expect(await page.locator('.station-inputs > .fields .field').count()).toBeLessThanOrEqual(7);
  });

  test('the rest is asked under headings, none of them a wall', async () => {
    const folds = page.locator('.station-inputs .fields-subject');
    await expect.poll(() => folds.count()).toBeGreaterThanOrEqual(7);
    for (const fold of await folds.all()) {
      expect(await fold.locator(':scope > .fields .field').count()).toBeLessThanOrEqual(12);
    }
  });

  test('heat, electricity and COP are drawn, with a table of the same beside each', async () => {
    const figures = page.locator('.machine-study .chart');
    await expect
      .poll(() => figures.locator('h3').allTextContents())
      .toEqual(['Heat of one machine', 'Electricity of one machine', 'COP of one machine']);
    for (const figure of await figures.all()) {
      await drawChart(figure.locator('.chart-picture'));
      const table = figure.locator('table');
      expect(await table.locator('thead th').count()).toBeGreaterThanOrEqual(3);
      expect(await table.locator('tbody tr').count()).toBeGreaterThanOrEqual(6);
    }
  });

  test('another condensing temperature has its own range and limits', async () => {
    const choice = page.getByRole('group', { name: 'Range and limits at condensing' });
    const words = () => page.locator('.machine-study .chart figcaption p').first().textContent();
    const before = await words();
    await choice.getByRole('radio').last().check({ force: true });
    await expect.poll(words).not.toBe(before);
    await settled(page);
    await choice.getByRole('radio').first().check({ force: true });
    await expect.poll(words).toBe(before);
  });

  test('limits, remedies, number and start answer with numbers', async () => {
    expect(await block(page, 'How near its limits').locator('tbody tr').count()).toBeGreaterThan(8);
    const remedies = block(page, 'What would help it').locator('tbody tr');
    expect(await remedies.count()).toBe(5);
    const many = block(page, 'How many of them');
    expect(await many.textContent()).toMatch(/It would take \d/);
    expect(await many.locator('tr.planned').count()).toBe(1);
    expect(await block(page, 'Starting it, and letting it rest').locator('dt').count()).toBeGreaterThanOrEqual(5);
  });

  test('every other fluid is headed as not for this machine, and one that burns by a stop with its reason', async () => {
    const others = block(page, 'Another fluid in it');
    expect(await others.locator('.study-only').textContent()).toContain('Not for this machine');
    const fluids = others.locator('.other-fluid');
    expect(await fluids.count()).toBeGreaterThanOrEqual(5);
    for (const fluid of await fluids.all()) expect(await fluid.locator('summary .state-stop').count()).toBe(1);
    const propane = fluids.filter({ hasText: 'R290' });
    expect(await propane.locator('summary').textContent()).toContain('burns, and this equipment was not made for it');
    await page.locator('#other-fluids').click();
    await propane.locator('summary').click();
    await expect.poll(() => propane.locator('p').first().isVisible()).toBe(true);
    expect(await others.locator('table caption').textContent()).toContain('for study only');
  });

  test('links near the top lead to the parts: a folded one opens, and the keyboard goes on from its heading', async () => {
    const links = page.getByRole('navigation', { name: 'Parts of this station' }).getByRole('link');
    const focused = () => page.evaluate(() => document.activeElement?.id);
    expect(await links.count()).toBeGreaterThanOrEqual(8);
    for (const link of await links.all()) {
      const part = decodeURIComponent((await link.getAttribute('href'))!.split('/').at(-1)!);
      await link.focus();
      await page.keyboard.press('Enter');
      await expect.poll(async () => [part, `${part}-title`].includes((await focused()) ?? '')).toBe(true);
      expect(await page.locator(':focus').isVisible()).toBe(true);
    }
    const fold = page.locator('details.part', { has: page.locator('#remedies') });
    expect(await fold.getAttribute('open')).not.toBeNull();
    await page.locator('#remedies').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => fold.getAttribute('open')).toBeNull();
  });

  test('on paper everything folded is open, and every picture is drawn; afterwards it is as it was', async () => {
    const folds = page.locator('.the-machine .station-pictures details:not(.chart-foot details)');
    const openOnes = () => folds.evaluateAll((all) => all.map((fold) => (fold as HTMLDetailsElement).open));
    const before = await openOnes();
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    expect(await openOnes()).toEqual(before.map(() => true));
    for (const figure of await page.locator('.the-machine .chart').all()) {
      expect(await figure.locator('.chart-still > svg, .chart-picture[data-state=drawn] svg').count()).toBeGreaterThan(
        0,
      );
    }
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect.poll(openOnes).toEqual(before);
  });

  test('other units everywhere, and back', async () => {
    const before = await answer(page);
    await chooseUnits(page, 'US');
    await expect.poll(() => answer(page)).toMatch(/°F, you would run it at .*BTU\/h of heat/);
    await studied(page);
    await expect.poll(() => block(page, 'How many of them').textContent()).toContain('BTU/h');
    await expect.poll(() => page.locator('.machine-study .chart thead').first().textContent()).toContain('°F');
    await chooseUnits(page, 'Metric');
    await expect.poll(() => answer(page)).toBe(before);
    await studied(page);
  });

  test('without faults', async () => {
    expect(await accessibilityFaults(page)).toEqual([]);
    visitor().expectNoComplaints();
  });
});

describe('what is known of it', () => {
  test('a published table fits the machine; a wrong number in it is pointed at, and the way leads into its field', async () => {
    const { page, expectNoComplaints } = await open(withTable(published));
    const known = block(page, 'How it is known');
    await expect.poll(() => known.textContent()).toContain('a machine that meets all of them is likely');
    const wrong = published.map(([te, q, p]) => (te === -20 ? [te, 452, p!] : [te!, q!, p!]));
    await open(withTable(wrong));
    await expect.poll(() => known.textContent()).toContain('does not fit the rest');
    const odd = known.locator('.known-odd li');
    await expect.poll(() => odd.first().textContent()).toMatch(/line 4: 452.W was given/);
    await expect
      .poll(() => known.locator('tbody tr', { hasText: 'does not fit' }).locator('th').textContent())
      .toBe('4');
    await odd.first().getByRole('link').click();
    await expect
      .poll(() => page.evaluate(() => (document.activeElement as HTMLElement).dataset.field))
      .toBe('machine.compressor.tables.0.table');
    await studied(page);
    expect(await accessibilityFaults(page)).toEqual([]);
    expectNoComplaints();
  });

  test('a table is pasted: what was read is said back, what cannot be read names line and column, and the answer moves', async () => {
    const { page, expectNoComplaints } = await open(text);
    const before = await answer(page);
    await page.locator('.station-inputs summary', { hasText: 'I know more' }).click();
    await page.locator('.station-inputs summary', { hasText: 'A table of points' }).click();
    await page.getByRole('button', { name: 'Add a table' }).click();
    const form = page.locator('.field-pending');
    const field = form.getByLabel('Table');
    await field.fill('Te [°C]\tTc [°C]\tCapacity [W]\tPower [W]\n-25\t40\t70\tmuch');
    await form.getByLabel('Mains frequency of the data').fill('50 Hz');
    await form.getByRole('button', { name: 'Add it' }).click();
    await expect.poll(() => form.locator('[role=alert]').textContent()).toMatch(/line 2.*column 4|4.*much/);
    await field.fill('Te [°C]\tTc [°C]\tCapacity [W]\tPower [W]\n-30\t45\t62\t62\n-25\t45\t86\t71\n-20\t45\t114\t80');
    await expect.poll(() => form.textContent()).toContain('understood: 3 points with');
    // Neither gas nor liquid stands in it: both are asked for now.
    await form.getByRole('button', { name: 'Add it' }).click();
    await form.getByLabel('Return gas they hold for').selectOption({ label: 'A return gas temperature' });
    await form.getByLabel('Return gas of the data').fill('32 °C');
    await form.getByLabel('Liquid they hold for').selectOption({ label: 'A subcooling' });
    await form.getByLabel('Subcooling of the data').fill('0 K');
    await form.getByRole('button', { name: 'Add it' }).click();
    await form.waitFor({ state: 'detached' });
    await expect.poll(() => answer(page)).not.toBe(before);
    await studied(page);
    await expect
      .poll(() => block(page, 'How it is known').textContent())
      .toContain('What was read of the table: 3 points');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => answer(page)).toBe(before);
    expectNoComplaints();
  });

  test('by keyboard alone: a measurement on the bench with amps instead of watts', async () => {
    const { page, expectNoComplaints } = await open(text);
    await page.locator('.station-inputs summary', { hasText: 'I know more' }).focus();
    await page.keyboard.press('Enter');
    await page.locator('.station-inputs summary', { hasText: 'Measured by yourself' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Add a measurement' }).focus();
    await page.keyboard.press('Enter');
    const form = page.locator('.field-pending');
    const values = {
      'Evaporating temperature': '-20 °C',
      'Condensing temperature': '42 °C',
      'Suction pipe': '15 °C',
      'Liquid pipe': '36 °C',
      'Air around the shell': '21 °C',
    };
    for (const [label, value] of Object.entries(values)) {
      await form.getByLabel(label, { exact: true }).focus();
      await page.keyboard.type(value);
    }
    await form.getByLabel('Measured with').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await form.getByLabel('Current at the meter').focus();
    await page.keyboard.type('0.7 A');
    await page.keyboard.press('Enter');
    await form.waitFor({ state: 'detached' });
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Add a measurement');
    await studied(page);
    await expect.poll(() => block(page, 'How it is known').textContent()).toMatch(/values? (were|was) given of it/);
    expectNoComplaints();
  });
});

test('two machines: the plan stands among the numbers, heat and electricity are of both', async () => {
  const { page, expectNoComplaints } = await open(text);
  const field = page.getByRole('textbox', { name: 'How many such machines' });
  await field.fill('2');
  await field.press('Enter');
  await page.locator('.station-head', { hasText: 'Electricity of 2 compressors' }).waitFor();
  await studied(page);
  await expect.poll(() => block(page, 'How many of them').locator('tr.planned th').textContent()).toMatch(/^2/);
  expectNoComplaints();
});

test('where the answer is not to build, no amount of refrigerant is shown', async () => {
  const design = JSON.parse(text);
  design.machine.refrigerant = 'R290';
  const { page, expectNoComplaints } = await open(JSON.stringify(design));
  await page.locator('#verdict', { hasText: /do not build/i }).waitFor();
  await studied(page);
  await expect.poll(() => page.locator('.station-head .study-only').count()).toBe(1);
  const words = (await block(page, 'How many of them').textContent()) ?? '';
  expect(words).toContain('How much each circuit holds is withheld.');
  expect(words).not.toMatch(/holds \d/);
  expectNoComplaints();
});

test('a phone in the dark: nothing is wider than the screen, no faults', async () => {
  const { page } = await open(text);
  await page.setViewportSize(screens.phone);
  await page.emulateMedia({ colorScheme: 'dark' });
  await drawCharts(page);
  await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.setViewportSize(screens.wide);
  await page.emulateMedia({ colorScheme: null });
});

test('on paper: tables stay, what is pressed goes', async () => {
  const { page } = await open(text);
  await page.emulateMedia({ media: 'print' });
  await expect.poll(() => block(page, 'How near its limits').locator('table').first().isVisible()).toBe(true);
  await expect.poll(() => page.getByRole('group', { name: 'Range and limits at condensing' }).isVisible()).toBe(false);
  await page.emulateMedia({ media: null });
});
