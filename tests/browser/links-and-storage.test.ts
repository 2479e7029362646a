// A design passed on as a link and what comes back of it; what the browser keeps, or does not; two tabs on one design; and
// work that takes long. Nothing of it may lose a design.

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { linkWith } from '../../src/app/links/design-link.ts';
import { type OpenWorkbench, openWorkbench, startBrowserForThisFile } from './harness.ts';
import { settled } from './waiting.ts';

startBrowserForThisFile();

const example = (file: string) => readFile(new URL(`../../data/designs/${file}.json`, import.meta.url), 'utf8');
const garage = await example('frag-tank-cold-garage');
const garageName = JSON.parse(garage).name as string;
const shrimp = await example('shrimp-rack-unknown-draughts');
const shrimpName = JSON.parse(shrimp).name as string;

/** What follows the page's address in a link. */
const hashFor = (text: string) => linkWith('', text);

async function openSolved(options: Parameters<typeof openWorkbench>[0] = {}): Promise<OpenWorkbench> {
  const workbench = await openWorkbench(options);
  await workbench.page.waitForSelector('.verdict-sentence');
  await settled(workbench.page);
  return workbench;
}

const nameOf = (page: Page) => page.locator('.design-name').textContent();
const notices = async (page: Page) => (await page.locator('.notice').allTextContents()).join('\n');
const sentence = (page: Page) => page.locator('.verdict-sentence').textContent();
const kept = (page: Page) => page.evaluate(() => localStorage.getItem('kettlefin.design'));

async function openDesigns(page: Page): Promise<void> {
  const menu = page.locator('details.menu', { hasText: 'Designs' });
  if ((await menu.getAttribute('open')) === null) await menu.locator('summary').click();
  await page.getByRole('button', { name: 'Copy link' }).waitFor();
}

async function fill(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.blur();
}

/** Waits until this tab keeps a text that holds the words. */
const isKept = (page: Page, words: string) => expect.poll(() => kept(page)).toContain(words);

describe('a link that carries a design', () => {
  test('is copied, opens the same design elsewhere, and leaves a plain address', async () => {
    const workbench = await openSolved({ path: '#what-leaves', permissions: ['clipboard-read', 'clipboard-write'] });
    const { page } = workbench;
    await fill(page, 'Water temperature', '27.3 °C');
    await isKept(page, '27.3 °C');
    const text = await kept(page);
    await openDesigns(page);
    await page.getByRole('button', { name: 'Copy link' }).click();
    await page.getByText('Copied.').waitFor();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toContain('#for-study-only,not-permission-to-build&design=');

    const elsewhere = await openSolved({ path: link.slice(link.indexOf('#')) });
    await expect.poll(() => kept(elsewhere.page)).toBe(text);
    await expect.poll(() => elsewhere.page.url()).toMatch(/#where-it-settles$/);
    await expect.poll(() => notices(elsewhere.page)).toContain('came with the link');
    expect(await elsewhere.page.locator('.caution').textContent()).toContain('not permission to build');
    await elsewhere.page.reload();
    await elsewhere.page.waitForSelector('.verdict-sentence');
    await settled(elsewhere.page);
    expect(await kept(elsewhere.page)).toBe(text);
    expect(await elsewhere.page.locator('.notice').count()).toBe(0);
    elsewhere.expectNoComplaints();
    workbench.expectNoComplaints();
    await elsewhere.close();
    await workbench.close();
  });

  test('stands in a field to be copied where the clipboard is denied', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new DOMException('denied', 'NotAllowedError'));
    });
    await openDesigns(page);
    await page.getByRole('button', { name: 'Copy link' }).click();
    const field = page.getByRole('textbox', { name: /denies its clipboard/ });
    await field.waitFor();
    await expect.poll(() => field.inputValue()).toContain('&design=');
    await expect.poll(() => field.evaluate((input: HTMLInputElement) => input.selectionEnd)).toBeGreaterThan(500);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('opened over a design of one’s own, that one is a step back and set aside', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    await fill(page, 'Water temperature', '27.3 °C');
    await isKept(page, '27.3 °C');
    const own = await kept(page);
    const another = await workbench.anotherPage(await hashFor(garage));
    await another.waitForSelector('.verdict-sentence');
    await expect.poll(() => nameOf(another)).toBe(garageName);
    await expect.poll(() => notices(another)).toContain('set aside under Designs');
    await openDesigns(another);
    await another.locator('.set-aside li').waitFor();
    await another.keyboard.press('Escape');
    await another.getByRole('button', { name: 'Go back to what was open' }).click();
    await expect.poll(() => nameOf(another)).not.toBe(garageName);
    await expect.poll(() => kept(another)).toBe(own);
    await expect.poll(() => another.locator('.notice').count()).toBe(0);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('put into the address of an open page, or into the field for it, opens too', async () => {
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    const hash = await hashFor(garage);
    await page.evaluate((link) => {
      location.hash = link;
    }, hash);
    await expect.poll(() => nameOf(page)).toBe(garageName);
    await expect.poll(() => page.url()).toMatch(/#what-leaves$/);
    await expect.poll(() => page.locator('#page-title').textContent()).toBe('What leaves');
    await openDesigns(page);
    await page.getByRole('textbox', { name: 'Open a link' }).fill(`https://tank.example/${await hashFor(shrimp)}`);
    await page.keyboard.press('Enter');
    await expect.poll(() => nameOf(page)).toBe(shrimpName);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => nameOf(page)).toBe(garageName);
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('cut, changed, or carrying no design: says what to do, opens what was kept, cleans the address', async () => {
    const hash = await hashFor(garage);
    const bad: readonly (readonly [string, string])[] = [
      [hash.slice(0, 20), 'cut off'],
      [hash.slice(0, 400), 'Copy it again'],
      [`${hash.slice(0, 300)}A${hash.slice(301)}`.replace('design=ae', 'design=aE'), 'Copy it again'],
      [hash.replace('design=a', 'design=q'), 'newer release'],
      [await hashFor(garage.replace('"formatVersion": 2', '"formatVersion": 7')), 'newer'],
      [await hashFor('{"name": "half'), 'ends too early'],
    ];
    const workbench = await openSolved({ path: '#what-leaves' });
    const { page } = workbench;
    await fill(page, 'Water temperature', '27.3 °C');
    await isKept(page, '27.3 °C');
    const own = await kept(page);
    for (const [path, words] of bad) {
      const another = await workbench.anotherPage(path);
      await another.waitForSelector('.verdict-sentence');
      await expect.poll(() => notices(another), { message: words }).toContain(words);
      await expect.poll(() => notices(another)).toContain('unchanged');
      await expect.poll(() => another.url()).toMatch(/#where-it-settles$/);
      await settled(another);
      expect(await kept(another)).toBe(own);
      await another.close();
    }
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('leaves the addresses of pages and their parts alone', async () => {
    const workbench = await openSolved({ path: '#where-it-settles/cautions' });
    const { page } = workbench;
    expect(page.url()).toMatch(/#where-it-settles\/cautions$/);
    await page.getByRole('link', { name: 'Two bills' }).click();
    await expect.poll(() => page.url()).toMatch(/#two-bills$/);
    await page.goBack();
    await expect.poll(() => page.url()).toMatch(/#where-it-settles\/cautions$/);
    await workbench.close();
  });
});

/** Runs before the page: refuses to store anything, as a full browser would. */
function fillStorage(): void {
  const state = globalThis as { storageIsFull?: boolean };
  state.storageIsFull = true;
  const set = Storage.prototype.setItem;
  Storage.prototype.setItem = function setItem(key: string, text: string) {
    if (state.storageIsFull) throw new DOMException('full', 'QuotaExceededError');
    set.call(this, key, text);
  };
}

describe('what the browser keeps', () => {
  test('full: says what is not kept and offers a file, and keeps it all once there is room', async () => {
    const workbench = await openWorkbench({ path: '#what-leaves', before: fillStorage });
    const { page } = workbench;
    await page.waitForSelector('.verdict-sentence');
    await fill(page, 'Water temperature', '27.3 °C');
    await expect.poll(() => notices(page)).toContain('storage for this page is full');
    await expect.poll(() => notices(page)).toContain('the open design');
    await expect.poll(() => notices(page)).toContain('the units');
    await expect.poll(() => nameOf(page)).toContain('Not kept by this browser');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the design to a file' }).click(),
    ]);
    expect(await readFile(await download.path(), 'utf8')).toContain('27.3 °C');
    await page.evaluate(() => {
      (globalThis as { storageIsFull?: boolean }).storageIsFull = false;
    });
    await fill(page, 'Water temperature', '27.4 °C');
    await expect.poll(() => page.locator('.notice').count()).toBe(0);
    await isKept(page, '27.4 °C');
    await expect.poll(() => page.evaluate(() => localStorage.getItem('kettlefin.view'))).toBe('metric');
    await expect.poll(() => nameOf(page)).not.toContain('Not kept');
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('denied: the page works and says why nothing is kept', async () => {
    const workbench = await openWorkbench({
      path: '#what-leaves',
      before: () =>
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('denied', 'SecurityError');
          },
        }),
    });
    const { page } = workbench;
    await page.waitForSelector('.verdict-sentence');
    const before = await sentence(page);
    await fill(page, 'Water temperature', '31 °C');
    await expect.poll(() => sentence(page)).not.toBe(before);
    await expect.poll(() => notices(page)).toContain('allows this page no storage');
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('a kept text that cannot be read is offered as a file and stays under Designs', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    const rubbish = '{"formatVersion": 1, "name": "Half';
    await page.evaluate((text) => localStorage.setItem('kettlefin.design', text), rubbish);
    await page.reload();
    await page.waitForSelector('.verdict-sentence');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save its text to a file' }).click(),
    ]);
    expect(await readFile(await download.path(), 'utf8')).toBe(rubbish);
    await page.reload();
    await page.waitForSelector('.verdict-sentence');
    expect(await page.locator('.notice').count()).toBe(0);
    await openDesigns(page);
    const entry = page.locator('.set-aside li');
    await expect.poll(() => entry.textContent()).toContain('could not be read');
    expect(await entry.getByRole('button', { name: /^Open/ }).count()).toBe(0);
    await entry.getByRole('button', { name: /^Remove/ }).click();
    await expect.poll(() => entry.count()).toBe(0);
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('two tabs', () => {
  async function twoTabs(): Promise<{ workbench: OpenWorkbench; one: Page; other: Page }> {
    const workbench = await openSolved({ path: '#what-leaves' });
    const other = await workbench.anotherPage('#what-leaves');
    await other.waitForSelector('.verdict-sentence');
    await settled(other);
    return { workbench, one: workbench.page, other };
  }

  test('a change in one is told in the other, which keeps nothing over it and can take it over', async () => {
    const { workbench, one, other } = await twoTabs();
    await fill(one, 'Water temperature', '27.3 °C');
    await expect.poll(() => notices(other)).toContain('Another tab has changed the design');
    await fill(other, 'Water temperature', '24.1 °C');
    await expect.poll(() => nameOf(other)).toContain('another tab keeps a different one');
    await settled(one);
    await settled(other);
    expect(await sentence(other)).not.toBe(await sentence(one));
    expect(await kept(other)).toContain('27.3 °C');
    await other.getByRole('button', { name: 'Take over the other tab’s' }).click();
    await expect.poll(() => sentence(other)).toBe(await sentence(one));
    await expect.poll(() => other.locator('.notice').count()).toBe(0);
    await expect.poll(() => one.locator('.notice').count()).toBe(0);
    await openDesigns(other);
    await other.locator('.set-aside').getByRole('button', { name: /^Open/ }).first().click();
    await isKept(other, '24.1 °C');
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('this one is kept on demand: then the other is told, and neither is lost', async () => {
    const { workbench, one, other } = await twoTabs();
    await fill(one, 'Water temperature', '27.3 °C');
    await expect.poll(() => notices(other)).toContain('Another tab has changed the design');
    await fill(other, 'Water temperature', '24.1 °C');
    await other.getByRole('button', { name: 'Keep this tab’s' }).click();
    await isKept(other, '24.1 °C');
    await expect.poll(() => other.locator('.notice').count()).toBe(0);
    await expect.poll(() => notices(one)).toContain('Another tab has changed the design');
    await fill(one, 'Water temperature', '27.9 °C');
    await expect.poll(() => nameOf(one)).toContain('another tab keeps');
    expect(await kept(one)).toContain('24.1 °C');
    const aside = () => one.evaluate(() => localStorage.getItem('kettlefin.set-aside'));
    await expect.poll(aside).toContain('27.3 °C');
    await expect.poll(aside).toContain('27.9 °C');
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

describe('a design file', () => {
  test('dropped on the page opens; while it is held over it, the page says so', async () => {
    const workbench = await openSolved();
    const { page } = workbench;
    const files = await page.evaluateHandle((text) => {
      const held = new DataTransfer();
      held.items.add(new File([text], 'garage.json', { type: 'application/json' }));
      return held;
    }, garage);
    await page.dispatchEvent('main', 'dragover', { dataTransfer: files });
    await page.getByText('Drop the design file to open it').waitFor();
    await page.dispatchEvent('main', 'drop', { dataTransfer: files });
    await expect.poll(() => nameOf(page)).toBe(garageName);
    await expect.poll(() => page.getByText('Drop the design file to open it').count()).toBe(0);
    workbench.expectNoComplaints();
    await workbench.close();
  });
});

/** Runs before the page: every worker is as slow as the page says. */
function slowWorkers(): void {
  const Original = Worker;
  const state = globalThis as { workerDelay?: number };
  state.workerDelay = 60_000;
  class SlowWorker extends Original {
    override postMessage(message: unknown): void {
      setTimeout(() => super.postMessage(message), state.workerDelay);
    }
  }
  globalThis.Worker = SlowWorker;
}

describe('work that takes long', () => {
  test('is told, can be stopped, and can be asked for again', async () => {
    const workbench = await openWorkbench({ before: slowWorkers });
    const { page } = workbench;
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped: there is no answer').waitFor();
    expect(await page.locator('.verdict-sentence').count()).toBe(0);
    await page.evaluate(() => {
      (globalThis as { workerDelay?: number }).workerDelay = 0;
    });
    await page.getByRole('button', { name: 'Compute it' }).click();
    await page.waitForSelector('.verdict-sentence');
    await expect.poll(async () => (await page.locator('.working-note').textContent())?.trim()).toBe('');
    workbench.expectNoComplaints();
    await workbench.close();
  });
});
