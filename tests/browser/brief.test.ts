// The brief in the workbench: shown as it will be printed, printed alone on one to three pages with the caution on each,
// saved as a file that runs nothing; readable for everybody. How wide letters really are is measured here as well.

import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { briefHtml } from '../../src/brief/index.ts';
import { caution } from '../../src/cautions/index.ts';
import { chartSvg, monthsChart } from '../../src/charts/index.ts';
import type { UnitView } from '../../src/quantities/index.ts';
import { assessed, briefOf, wordsOf } from '../brief/briefs.ts';
import { demoTexts } from '../designs.ts';
import { accessibilityFaults } from './accessibility.ts';
import { openPage, openWorkbench, screens, startBrowserForThisFile } from './harness.ts';
import { pdfPages } from './pdf-text.ts';

startBrowserForThisFile();

const formats = ['A4', 'Letter'] as const;

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'kettlefin-brief-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** A saved brief as the technician opens it: a file on the disk, the network cut. */
async function openSaved(html: string) {
  const file = join(folder, 'brief.html');
  await writeFile(file, html);
  return openPage(pathToFileURL(file).href);
}

interface Opened {
  readonly text?: string;
  readonly view?: UnitView;
  readonly colorScheme?: 'light' | 'dark';
  readonly viewport?: { readonly width: number; readonly height: number };
}

/** The paper with its pages made, of a demo that was opened as a person's file would be. */
async function openBrief({ text, view, ...options }: Opened = {}) {
  const workbench = await openWorkbench({ ...options, path: '#brief' });
  const { page } = workbench;
  if (text !== undefined) {
    const file = { name: 'design.json', mimeType: 'application/json', buffer: Buffer.from(text) };
    await page.locator('input[type=file]').setInputFiles(file);
  }
  if (view === 'us') {
    await page.locator('summary', { hasText: 'View' }).click();
    await page.getByRole('radio', { name: 'US' }).check({ force: true });
    await page.keyboard.press('Escape');
  }
  const name = text === undefined ? 'Reef tank in the study' : String(JSON.parse(text).name);
  await expect.poll(() => page.locator('.brief header h3').textContent()).toContain(name.slice(0, 20));
  if (view === 'us') await expect.poll(() => page.locator('.brief table').first().textContent()).toContain('psi');
  return workbench;
}

async function printed(page: Page, format: (typeof formats)[number]): Promise<readonly string[]> {
  return pdfPages(await page.pdf({ format, preferCSSPageSize: false }));
}

function expectBriefPages(pages: readonly string[], text: string, view: UnitView): void {
  expect(pages.length).toBeGreaterThanOrEqual(1);
  expect(pages.length).toBeLessThanOrEqual(3);
  for (const [index, words] of pages.entries()) {
    expect(words, `page ${index + 1}`).toContain(caution);
    expect(words).toContain(`${index + 1} / ${pages.length}`);
  }
  const all = pages.join(' ');
  const document = briefOf(text, view);
  expect(all).toContain(document.standingTitle);
  for (const row of document.states.rows) expect(all).toContain(row.join(' '));
  for (const question of document.asked.questions) expect(all).toContain(question.replace(/[\u00a0\u202f]/g, ' '));
}

describe.each(Object.entries(demoTexts))('printed: %s', (_file, text) => {
  test.each(['metric', 'us'] as const)('the file, %s view: one to three pages on either paper', async (view) => {
    const saved = await openSaved(
      briefHtml(briefOf(text, view, 'A. Person, Invented Street 5, who may be called in the evening')),
    );
    for (const format of formats) expectBriefPages(await printed(saved.page, format), text, view);
    saved.expectNoComplaints();
    await saved.close();
  });

  test('from the workbench, the pages and nothing else', async () => {
    const workbench = await openBrief({ text });
    const { page } = workbench;
    for (const format of formats) {
      const pages = await printed(page, format);
      expectBriefPages(pages, text, 'metric');
      expect(pages.join(' ')).not.toMatch(/Start my own|Who asks, and how|Save as an HTML|assumptions left/i);
    }
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

test('US view from the workbench', async () => {
  const text = demoTexts['frag-tank-cold-garage.json']!;
  const workbench = await openBrief({ text, view: 'us' });
  expectBriefPages(await printed(workbench.page, 'Letter'), text, 'us');
  workbench.expectNoComplaints();
  await workbench.close();
});

describe('in the workbench', () => {
  test('who asks is kept in this browser and stands on the pages and in the saved file only if typed', async () => {
    const workbench = await openBrief();
    const { page } = workbench;
    expect(await page.locator('.brief .contact').count()).toBe(0);
    const odd = '<b>A. Person</b> & others';
    await page.getByRole('textbox', { name: /Who asks/ }).fill(odd);
    await expect.poll(() => page.locator('.brief .contact').textContent()).toBe(`Asked by: ${odd}`);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as an HTML file' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/brief\.html$/);
    const saved = await readFile((await download.path())!, 'utf8');
    expect(saved).not.toMatch(/<script|<b>A\. Person/);
    expect(wordsOf(saved)).toContain(odd);
    const again = await workbench.anotherPage('#brief');
    await expect.poll(() => again.getByRole('textbox', { name: /Who asks/ }).inputValue()).toBe(odd);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('where the answer is not to build it says so first, and saves no figure of the charge', async () => {
    const design = JSON.parse(demoTexts['propane-in-the-cabinet.json']!);
    design.machine.charge = '91.7 to 133.3 g';
    const workbench = await openBrief({ text: JSON.stringify(design) });
    const { page } = workbench;
    expect(await page.locator('.station-answer').textContent()).toMatch(/^The answer is not to build/);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as an HTML file' }).click(),
    ]);
    const saved = await readFile((await download.path())!, 'utf8');
    for (const words of [wordsOf(saved), (await printed(page, 'A4')).join(' ')]) {
      expect(words).toContain('Nothing is asked to be built.');
      expect(words).not.toMatch(/\b91\.7|\b92 g|\b133\.3|\b13[03] g/);
    }
    await workbench.close();
  });

  test('where the answer is not to build, no printed page of the workbench holds a figure of the charge', async () => {
    const design = JSON.parse(demoTexts['propane-in-the-cabinet.json']!);
    design.machine.charge = '91.7 to 133.3 g';
    const workbench = await openBrief({ text: JSON.stringify(design) });
    const { page } = workbench;
    await page.evaluate(() => {
      location.hash = 'the-machine';
    });
    await expect.poll(() => page.locator('#page-title').textContent()).toBe('The machine');
    for (const more of await page.locator('details.fields-more').all()) await more.locator('> summary').click();
    expect(await page.getByRole('textbox', { name: 'Refrigerant in the circuit' }).inputValue()).toBe(
      '91.7 to 133.3 g',
    );
    const words = (await printed(page, 'A4')).join(' ');
    expect(words).toContain('Refrigerant in the circuit');
    expect(words).toContain('withheld');
    expect(words).not.toMatch(/\b91\.7|\b92 g|\b133\.3|\b13[03] g/);
    await workbench.close();
  });

  test('a design without an answer has no brief', async () => {
    const workbench = await openBrief();
    const { page } = workbench;
    const design = JSON.parse(demoTexts['reef-in-the-study.json']!);
    design.exchangers.condenserApproach = '1 K';
    const file = { name: 'design.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(design)) };
    await page.locator('input[type=file]').setInputFiles(file);
    await expect.poll(() => page.locator('.station-answer').textContent()).toMatch(/^There is no brief/);
    expect(await page.locator('.brief').count()).toBe(0);
    await workbench.close();
  });
});

describe('for everybody', () => {
  test.each([
    ['light', {}],
    ['dark', { colorScheme: 'dark' }],
    ['phone', { viewport: screens.phone }],
    ['propane', { text: demoTexts['propane-in-the-cabinet.json']! }],
  ] as const)(
    '%s: the accessibility engine finds no fault, and nothing is wider than the screen',
    async (_name, options) => {
      const workbench = await openBrief(options);
      const { page } = workbench;
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      await workbench.close();
    },
  );

  test('the file by itself', async () => {
    for (const viewport of [screens.wide, screens.phone]) {
      const saved = await openSaved(briefHtml(briefOf(demoTexts['reef-in-the-study.json']!)));
      await saved.page.setViewportSize(viewport);
      expect(await accessibilityFaults(saved.page)).toEqual([]);
      expect(await saved.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      await saved.close();
    }
  });
});

test.each(Object.entries(demoTexts))(
  'still pictures of %s: the browser reads them, and real letters keep clear',
  async (_file, text) => {
    const workbench = await openWorkbench();
    for (const view of ['metric', 'us'] as const) {
      const { diagram } = briefOf(text, view);
      const { year } = assessed(text, view).assessment;
      for (const chart of [diagram, monthsChart(year, view)]) {
        const svg = chartSvg(chart, { width: 720, height: 400 });
        const found = await workbench.page.evaluate(readPicture, svg);
        expect(found).toEqual({ fault: '', outside: [], overlapping: [] });
      }
    }
    await workbench.close();
  },
);

/** Runs in the page: reads the picture as a browser would read the file, and measures its words as they are set. */
function readPicture(svg: string) {
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
  const fault = parsed.querySelector('parsererror')?.textContent ?? '';
  const picture = document.importNode(parsed.documentElement, true);
  document.body.append(picture);
  const frame = picture.getBoundingClientRect();
  const words = [...picture.querySelectorAll('text')].map((text) => {
    const { left, right, top, bottom } = text.getBoundingClientRect();
    // The box of a line reaches above and below its letters.
    const slack = (text.getAttribute('transform') === null ? bottom - top : right - left) * 0.2;
    return { text: text.textContent ?? '', left, right, top: top + slack, bottom: bottom - slack };
  });
  const outside = words
    .filter(
      (one) => one.left < frame.left || one.right > frame.right || one.top < frame.top || one.bottom > frame.bottom,
    )
    .map(({ text }) => text);
  const overlapping = words.flatMap((a, index) =>
    words
      .slice(index + 1)
      .filter((b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1)
      .map((b) => `${a.text} and ${b.text}`),
  );
  picture.remove();
  return { fault, outside, overlapping };
}
