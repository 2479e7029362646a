// Opens the built workbench in a browser and collects everything that must not happen: errors, faults against the
// content security policy, and requests to any other place than its own server (refused, and counted). The workbench in
// one file is opened from the disk with the network cut, and any request but that for the file counts.

import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import { startBrowser } from './browser.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built workbench is served, or the address of the one file. */
    workbenchAddress: string;
  }
}

export interface Complaints {
  readonly consoleErrors: string[];
  readonly pageErrors: string[];
  readonly policyViolations: string[];
  readonly outsideRequests: string[];
}

export interface OpenWorkbench {
  readonly page: Page;
  /** Another page of the same visitor: the same storage. It is open when this answers; its complaints count too. */
  readonly anotherPage: (path?: string) => Promise<Page>;
  readonly complaints: Complaints;
  /** Fails the test if anything that must not happen has happened so far. */
  readonly expectNoComplaints: () => void;
  readonly close: () => Promise<void>;
}

export interface OpeningOptions extends BrowserContextOptions {
  /** What follows the address: '#…' or '?…'. */
  readonly path?: string;
  /** Runs inside every page of the visitor, before the page's own scripts; must stand for itself. */
  readonly before?: () => void;
}

/** Sizes the workbench is looked at in. */
export const screens = {
  wide: { width: 1440, height: 900 },
  laptop: { width: 1024, height: 768 },
  phone: { width: 390, height: 844 },
} as const;

let browser: Browser | undefined;

/** Call once at the top of a test file: starts the browser before its tests and ends it after them. */
export function startBrowserForThisFile(): void {
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    browser = undefined;
  });
}

/** A fresh visitor: empty storage, nothing cached. Does not wait for the first answer: see `openWorkbench`. */
export async function openPage(address: string, options: OpeningOptions = {}): Promise<OpenWorkbench> {
  if (browser === undefined)
    throw new Error('startBrowserForThisFile() has not been called at the top of this test file');
  const { path = '', before, ...contextOptions } = options;
  const context = await browser.newContext({
    viewport: screens.wide,
    // A language whose readers begin with the metric view.
    locale: 'en-GB',
    timezoneId: 'UTC',
    ...contextOptions,
  });
  const complaints: Complaints = { consoleErrors: [], pageErrors: [], policyViolations: [], outsideRequests: [] };
  const home = new URL(address);
  const isOneFile = home.protocol === 'file:';
  if (isOneFile) await context.setOffline(true);
  await context.route(
    (url) => (isOneFile ? url.href.split(/[?#]/)[0] !== address : url.origin !== home.origin),
    (route) => {
      complaints.outsideRequests.push(route.request().url());
      return route.abort();
    },
  );
  await context.routeWebSocket(/.*/, (socket) => {
    complaints.outsideRequests.push(socket.url());
    return socket.close();
  });
  await context.exposeBinding('reportPolicyViolation', (_source, words: string) => {
    complaints.policyViolations.push(words);
  });
  await context.addInitScript(reportViolations);
  if (before !== undefined) await context.addInitScript(before);
  const anotherPage = async (furtherPath = '') => {
    const page = await context.newPage();
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.consoleErrors.push(message.text());
    });
    page.on('pageerror', (error) => complaints.pageErrors.push(String(error)));
    await page.goto(address + furtherPath);
    return page;
  };
  return {
    page: await anotherPage(path),
    anotherPage,
    complaints,
    expectNoComplaints: () =>
      expect(complaints).toEqual({ consoleErrors: [], pageErrors: [], policyViolations: [], outsideRequests: [] }),
    close: () => context.close(),
  };
}

/** The built workbench as a fresh visitor sees it. */
export function openWorkbench(options: OpeningOptions = {}): Promise<OpenWorkbench> {
  return openPage(inject('workbenchAddress'), options);
}

/** One visitor for all tests of the file, or of the block, that this is called in; nothing that must not happen may happen to them. */
export function oneVisitor(options: OpeningOptions = {}): () => OpenWorkbench {
  let workbench: OpenWorkbench | undefined;
  beforeAll(async () => {
    workbench = await openWorkbench(options);
    await workbench.page.waitForSelector('.verdict-sentence, .number-item');
  });
  afterAll(async () => {
    await workbench?.close();
    workbench?.expectNoComplaints();
  });
  return () => {
    if (workbench === undefined) throw new Error('the visitor of this block is there from its first test on');
    return workbench;
  };
}

/** Runs inside the page, before its own scripts. */
function reportViolations(): void {
  document.addEventListener('securitypolicyviolation', (event) => {
    const report = (globalThis as { reportPolicyViolation?: (words: string) => void }).reportPolicyViolation;
    report?.(`${event.violatedDirective}: ${event.blockedURI} ${event.sample}`.trim());
  });
}
