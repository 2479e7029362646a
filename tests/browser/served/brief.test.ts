// The brief of every design on paper, and the saved file as the technician opens it, readable for everybody; how wide letters
// really are. The saved file and the pages are the same whichever form of the workbench made them.

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { briefHtml } from '../../../src/brief/index.ts';
import { chartSvg, monthsChart } from '../../../src/charts/index.ts';
import { assessed, briefOf } from '../../brief/briefs.ts';
import { demoTexts } from '../../designs.ts';
import { accessibilityFaults } from '../accessibility.ts';
import { expectBriefPages, formats, printed, showBrief } from '../brief-page.ts';
import { oneVisitor, openPage, screens, startBrowserForThisFile } from '../harness.ts';
import { tooWide } from '../waiting.ts';

startBrowserForThisFile();

const visitor = oneVisitor();

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
    const { page, expectNoComplaints } = visitor();
    await showBrief(page, text);
    for (const format of formats) {
      const pages = await printed(page, format);
      expectBriefPages(pages, text, 'metric');
      expect(pages.join(' ')).not.toMatch(/Start my own|Who asks, and how|Save as an HTML|assumptions left/i);
    }
    expectNoComplaints();
  });
});

interface Looked {
  readonly demo?: string;
  readonly colorScheme?: 'light' | 'dark';
  readonly viewport?: { readonly width: number; readonly height: number };
}

describe('for everybody', () => {
  test.each([
    ['light', {}],
    ['dark', { colorScheme: 'dark' }],
    ['phone', { viewport: screens.phone }],
    ['propane', { demo: 'propane-in-the-cabinet.json' }],
  ] as const)(
    '%s: the accessibility engine finds no fault, and nothing is wider than the screen',
    async (_name, on) => {
      const { demo = 'reef-in-the-study.json', colorScheme = 'light', viewport = screens.wide } = on as Looked;
      const { page } = visitor();
      await page.setViewportSize(viewport);
      await page.emulateMedia({ colorScheme });
      await showBrief(page, demoTexts[demo]!);
      expect(await accessibilityFaults(page)).toEqual([]);
      await expect.poll(() => tooWide(page)).toBeLessThanOrEqual(0);
    },
  );

  test('the file by itself', async () => {
    for (const viewport of [screens.wide, screens.phone]) {
      const saved = await openSaved(briefHtml(briefOf(demoTexts['reef-in-the-study.json']!)));
      await saved.page.setViewportSize(viewport);
      expect(await accessibilityFaults(saved.page)).toEqual([]);
      await expect.poll(() => tooWide(saved.page)).toBeLessThanOrEqual(0);
      await saved.close();
    }
  });
});

test.each(Object.entries(demoTexts))(
  'still pictures of %s: the browser reads them, and real letters keep clear',
  async (_file, text) => {
    for (const view of ['metric', 'us'] as const) {
      const { diagram } = briefOf(text, view);
      const { year } = assessed(text, view).assessment;
      for (const chart of [diagram, monthsChart(year, view)]) {
        const svg = chartSvg(chart, { width: 720, height: 400 });
        const found = await visitor().page.evaluate(readPicture, svg);
        expect(found).toEqual({ fault: '', outside: [], overlapping: [] });
      }
    }
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
