// The paper of cautions: answer first, grouped by whom it could hurt, a way from each caution into the field that could
// settle it, no metric number in the US view, everything on paper, readable for everybody.

import { describe, expect, test } from 'vitest';
import { caution, notChecked } from '../../../src/cautions/index.ts';
import type { UnitView } from '../../../src/quantities/index.ts';
import { demoTexts } from '../../designs.ts';
import { accessibilityFaults } from '../accessibility.ts';
import { oneVisitor, screens, startBrowserForThisFile } from '../harness.ts';
import { pdfPages } from '../pdf-text.ts';
import { chooseUnits, openDesign, shown, tooWide } from '../waiting.ts';

startBrowserForThisFile();

interface Opened {
  readonly demo?: string;
  readonly view?: UnitView;
  readonly colorScheme?: 'light' | 'dark';
  readonly viewport?: { readonly width: number; readonly height: number };
}

const visitor = oneVisitor();

/** The paper of a demo that was opened as a person's file would be. */
async function openCautions(opened: Opened = {}) {
  const { demo = 'propane-in-the-cabinet.json', view, colorScheme = 'light', viewport = screens.wide } = opened;
  const { page, expectNoComplaints } = visitor();
  await page.setViewportSize(viewport);
  await page.emulateMedia({ colorScheme });
  await openDesign(page, demoTexts[demo]!, 'cautions');
  if (view === 'us') {
    await chooseUnits(page, 'US');
    await expect.poll(() => page.locator('.verdict-sentence').textContent()).toContain('BTU/h');
  }
  return { page, expectNoComplaints };
}

describe('the paper', () => {
  test('answers first, then groups by whom it could hurt, the gravest first', async () => {
    const { page, expectNoComplaints } = await openCautions();
    const answer = await page.locator('.paper .station-answer').textContent();
    expect(answer).toMatch(/^\d+ to stop for, \d+ to look at, \d+ to note\. The worst: R290 burns/);
    const groups = page.locator('.caution-group');
    expect(await groups.locator('h3').allTextContents()).toEqual([
      'Persons',
      'The house',
      'The animals',
      'The machine',
      'The law',
      'What the models leave out',
    ]);
    for (const group of await groups.all()) {
      const states = await group.locator('.finding > .state').allTextContents();
      const rank = states.map((word) => ['stop', 'look here', 'note'].indexOf(word));
      expect(rank).toEqual(rank.toSorted((a, b) => a - b));
    }
    // The counts are those of the list: nothing is told twice, and nothing is left out.
    const counted = [...answer!.matchAll(/(\d+) to/g)].reduce((sum, [, count]) => sum + Number(count), 0);
    expect(await page.locator('.caution-group .finding').count()).toBe(counted);
    expect(await page.locator('.caution-group .licensed').count()).toBeGreaterThan(3);
    for (const line of notChecked)
      expect(await page.locator('.not-checked').first().textContent()).toContain(line.slice(1));
    expectNoComplaints();
  });

  test('judges each space by itself and keeps the charge out of sight where the answer is not to build', async () => {
    const { page, expectNoComplaints } = await openCautions();
    const spaces = page.locator('section:has(> #cautions-spaces-title) tbody tr');
    const rows = await spaces.allTextContents();
    expect(rows.find((row) => row.includes('closed cabinet'))).toMatch(/180\sL.*720\sg\/m³.*would burn/);
    expect(rows.find((row) => row.includes('room of the tank'))).toMatch(/30\sm³.*below it/);
    expect(rows.find((row) => row.includes('lower than the floor'))).toMatch(/not known/);
    expect(await page.locator('section:has(> #cautions-charge-title) tbody tr').count()).toBe(8);
    const text = await page.locator('main').innerText();
    expect(text).not.toMatch(/\b(?:90|130)\sg\b/);
    expect(text).not.toMatch(/\b(?:safe|safely|approved|compliant)\b/i);
    expectNoComplaints();
  });

  test('says no metric number in the US view, source and remedy included', async () => {
    const { page, expectNoComplaints } = await openCautions({ demo: 'frag-tank-cold-garage.json', view: 'us' });
    await expect.poll(() => page.locator('main').innerText()).toMatch(/°F/);
    for (const fold of await page.locator('.caution-notes').all())
      await fold.evaluate((each) => each.setAttribute('open', ''));
    const groups = (await page.locator('.caution-group').allInnerTexts()).join('\n');
    expect(groups).toMatch(/°F/);
    expect(groups).not.toMatch(/°C|\d\s?K\b|W\/K|kelvin|\d\s(?:bar|kPa|m³|m²|kg|g|L)\b/);
    expectNoComplaints();
  });

  test('prints whole: notes in their folds, both tables, the caution on every page', async () => {
    const { page, expectNoComplaints } = await openCautions({ demo: 'shrimp-rack-unknown-draughts.json' });
    const titles = await page.locator('.caution-group h4').allTextContents();
    const pages = pdfPages(await page.pdf({ format: 'A4' }));
    const bare = (text: string) => text.replaceAll(/[\s\u00a0\u202f\u00ad-]/g, '');
    const printed = bare(pages.join(' '));
    expect(titles.length).toBeGreaterThan(10);
    for (const title of titles) expect(printed).toContain(bare(title));
    for (const heading of [
      'Each enclosed space by itself',
      'The charge beside figures of standards',
      'What was not checked',
    ])
      expect(printed).toContain(bare(heading));
    const foot = bare(caution.slice(0, 50));
    for (const each of pages) expect(bare(each)).toContain(foot);
    expectNoComplaints();
  });
});

describe('ways in and out', () => {
  test('the verdict counts and leads to the paper', async () => {
    const { page, expectNoComplaints } = visitor();
    await openDesign(page, demoTexts['reef-in-the-study.json']!, 'where-it-settles');
    await page.locator('.verdict-links button', { hasText: /to look at|to stop for/ }).click();
    await shown(page, 'cautions');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('page-title');
    expectNoComplaints();
  });

  test('a caution leads into the field that could settle it, folds opened, focus in the field', async () => {
    const { page, expectNoComplaints } = await openCautions({ demo: 'shrimp-rack-unknown-draughts.json' });
    const entry = page.locator('.finding', { hasText: 'A leak could become flammable' });
    await entry.getByRole('link', { name: 'Volume of that room' }).click();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-field')))
      .toBe('source.volume');
    await expect.poll(() => page.locator('#page-title').textContent()).toBe('The machine');
    await page.keyboard.type('60 m3');
    await page.keyboard.press('Enter');
    await page.locator('.pages a', { hasText: 'Cautions' }).click();
    await shown(page, 'cautions');
    await expect.poll(() => page.locator('section:has(> #cautions-spaces-title)').textContent()).toMatch(/60\sm³/);
    expectNoComplaints();
  });

  test('a station shows the worst three and leads to all', async () => {
    const { page, expectNoComplaints } = await openCautions();
    await page.locator('.pages a', { hasText: 'The machine' }).click();
    const found = page.locator('section:has(> #findings-title)');
    await found.locator('.finding').first().waitFor();
    await expect.poll(() => found.locator('.finding > .state').allTextContents()).toEqual(['stop', 'stop', 'stop']);
    expect(await found.locator('.finding').count()).toBe(3);
    await found.getByRole('link', { name: /^All \d+ cautions$/ }).click();
    await shown(page, 'cautions');
    expectNoComplaints();
  });
});

describe('readable for everybody', () => {
  test.each([
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['phone', { viewport: screens.phone }],
  ] as const)('%s', async (_, options) => {
    const { page, expectNoComplaints } = await openCautions(options);
    await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    expect(await accessibilityFaults(page)).toEqual([]);
    expectNoComplaints();
  });
});
