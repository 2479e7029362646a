// The workbench's budgets, measured on the built page in a browser: first load to a solved demo, edit to verdict, size of
// the first load's JavaScript without the chart library, memory of the page's process; and of the one file its start and
// its size.

import { readFile, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { buildOneFile, buildWorkbench, serveWorkbench } from '../../src/app/serve/serve.mjs';
import { root } from '../../src/cli/build.mjs';
import { startBrowser } from '../browser/browser.mjs';

/** The verdict's sentence: there once a design is solved. */
const solved = '#verdict .verdict-sentence';
const loads = 8;
const edits = 40;
const titles = {
  'workbench.firstLoad': 'first load to a solved demo, local',
  'workbench.edit': 'edit to verdict in the browser, 95th percentile',
  'workbench.size': 'first-load JavaScript without the chart library, gzip',
  'workbench.memory': 'memory of the tab',
  'workbench.oneFileLoad': 'one file from the disk to a solved demo',
  'workbench.oneFileSize': 'size of the one file',
};

/**
 * @param {(id: string) => boolean} isWanted
 * @returns {Promise<import('./engine.ts').BenchRow[]>}
 */
export async function measureWorkbench(isWanted) {
  if (!Object.keys(titles).some(isWanted)) return [];
  const folder = join('dist', `bench-app-${process.pid}`);
  await buildWorkbench(join(folder, 'app'));
  await buildOneFile(folder);
  const { address, close } = await serveWorkbench(join(folder, 'app'), 4600);
  const browser = await startBrowser();
  try {
    const rows = [];
    if (isWanted('workbench.firstLoad')) rows.push(await firstLoad(browser, address));
    if (isWanted('workbench.edit')) rows.push(await editToVerdict(browser, address));
    if (isWanted('workbench.size')) rows.push(await size(browser, address, join(folder, 'app')));
    if (isWanted('workbench.memory')) rows.push(await memory(browser, address));
    const file = join(root, folder, 'kettlefin.html');
    if (isWanted('workbench.oneFileLoad')) {
      rows.push(await firstLoad(browser, pathToFileURL(file).href, 'workbench.oneFileLoad'));
    }
    if (isWanted('workbench.oneFileSize')) {
      rows.push(row('workbench.oneFileSize', 'byte', undefined, [(await stat(file)).size]));
    }
    return rows;
  } finally {
    await browser.close();
    await close();
    await rm(join(root, folder), { recursive: true, force: true });
  }
}

/**
 * @param {keyof typeof titles} id
 * @param {'s' | 'byte'} unit
 * @param {number | undefined} budget
 * @param {number[] | string} values  or why there are none
 * @param {number} [judgedShare]      percentile held against the budget
 * @returns {import('./engine.ts').BenchRow}
 */
function row(id, unit, budget, values, judgedShare = 0.5) {
  const common = { id, title: titles[id], unit, budget };
  if (typeof values === 'string') return { ...common, measured: undefined, missing: values };
  const sorted = [...values].sort((a, b) => a - b);
  /** @param {number} share */
  const at = (share) => sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;
  const median = at(0.5);
  const spread = (at(0.9) - at(0.1)) / 2 / median;
  const measured = { median, minimum: at(0), spread, runs: sorted.length, judged: at(judgedShare) };
  return { ...common, measured, missing: undefined };
}

/**
 * @param {import('playwright-core').Browser} browser
 * @param {string} address
 * @param {string} [station]  what follows the address; the first station without it
 */
async function freshPage(browser, address, station = '') {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB' });
  const page = await context.newPage();
  await page.goto(address + station);
  await page.waitForSelector(solved);
  return { page, context };
}

/**
 * @param {import('playwright-core').Browser} browser
 * @param {string} address
 * @param {'workbench.firstLoad' | 'workbench.oneFileLoad'} [id]
 */
async function firstLoad(browser, address, id = 'workbench.firstLoad') {
  const seconds = [];
  for (let i = 0; i < loads; i++) {
    const { page, context } = await freshPage(browser, address);
    // From the page's own clock, which starts with the navigation, to the frame that shows the verdict.
    seconds.push(
      await page.evaluate(() => new Promise((show) => requestAnimationFrame(() => show(performance.now() / 1000)))),
    );
    await context.close();
  }
  return row(id, 's', 1.5, /** @type {number[]} */ (seconds));
}

/** @param {import('playwright-core').Browser} browser @param {string} address */
async function editToVerdict(browser, address) {
  const { page, context } = await freshPage(browser, address, '#what-leaves');
  const field = page.getByLabel(/water temperature/i).first();
  // A station is loaded when it is opened, so its fields come a moment after the verdict.
  await field.waitFor({ timeout: 5000 }).catch(() => undefined);
  if ((await field.count()) === 0) return row('workbench.edit', 's', 0.15, 'no field to edit was found');
  await page.waitForLoadState('networkidle');
  const seconds = [];
  for (let i = 0; i < edits; i++) {
    const value = `${(24 + (i % 20) / 10).toFixed(1)} °C`;
    seconds.push(await field.evaluate(timeOneEdit, value));
  }
  await context.close();
  return row('workbench.edit', 's', 0.15, seconds, 0.95);
}

/**
 * Runs inside the page: types a value, confirms it with Enter and waits until a frame shows the verdict on it. The pause
 * after which typing alone counts as an edit is not part of it.
 * @param {Element} element
 * @param {string} value
 * @returns {Promise<number>} seconds
 */
async function timeOneEdit(element, value) {
  const verdict = document.getElementById('verdict');
  if (!(element instanceof HTMLInputElement) || verdict === null) throw new Error('no field or no verdict');
  /** @returns {Promise<unknown>} */
  const nextFrame = () => new Promise((shown) => requestAnimationFrame(() => setTimeout(shown)));
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(element, value);
  element.dispatchEvent(new Event('input', { bubbles: true }));
  await nextFrame();
  const start = performance.now();
  const answered = new Promise((resolve, reject) => {
    const giveUp = setTimeout(() => reject(new Error('the verdict was not written anew')), 10_000);
    new MutationObserver((_changes, observer) => {
      if (verdict.classList.contains('stale')) return;
      observer.disconnect();
      clearTimeout(giveUp);
      resolve(undefined);
    }).observe(verdict, { subtree: true, childList: true, characterData: true, attributes: true });
  });
  element.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  await answered;
  await nextFrame();
  return (performance.now() - start) / 1000;
}

/** @param {import('playwright-core').Browser} browser @param {string} address @param {string} folder */
async function size(browser, address, folder) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB' });
  const page = await context.newPage();
  /** @type {Set<string>} */
  const scripts = new Set();
  page.on('request', (request) => {
    const { pathname } = new URL(request.url());
    if (pathname.endsWith('.js')) scripts.add(pathname);
  });
  await page.goto(address);
  await page.waitForSelector(solved);
  await page.waitForLoadState('networkidle');
  await context.close();
  let bytes = 0;
  for (const name of scripts) {
    if (/plotly/i.test(name)) continue;
    bytes += gzipSync(await readFile(join(root, folder, name)), { level: 9 }).length;
  }
  return row('workbench.size', 'byte', 250e3, [bytes]);
}

/** @param {import('playwright-core').Browser} browser @param {string} address */
async function memory(browser, address) {
  const { page, context } = await freshPage(browser, address);
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(1000);
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const sizes = [];
  for (const { type, id } of processInfo) {
    if (type !== 'renderer') continue;
    const status = await readFile(`/proc/${id}/status`, 'utf8').catch(() => '');
    // Own pages only: the program's file is shared by all of the browser's processes.
    const own = /^RssAnon:\s+(\d+) kB/m.exec(status)?.[1];
    if (own !== undefined) sizes.push(Number(own) * 1024);
  }
  await context.close();
  if (sizes.length === 0) return row('workbench.memory', 'byte', 250e6, 'not measurable on this system');
  return row('workbench.memory', 'byte', 250e6, [Math.max(...sizes)]);
}
