// The workbench in one file: whole, closed, and the same bytes from the same sources. The tests beside this folder run
// against it as well.

import { createHash } from 'node:crypto';
import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, inject, test } from 'vitest';
import { buildOneFile } from '../../../src/app/serve/serve.mjs';
import { openWorkbench, startBrowserForThisFile } from '../harness.ts';
import { drawChart } from '../waiting.ts';

startBrowserForThisFile();

const html = await readFile(fileURLToPath(inject('workbenchAddress')), 'utf8');
const again = join('dist', `one-file-again-${process.pid}`);

afterAll(() => rm(again, { recursive: true, force: true }));

describe('the file', () => {
  test('names no other file and no other place to load from', () => {
    const page = html
      .replaceAll(/<script[^>]*>[\s\S]*?<\/script>/g, '')
      .replaceAll(
        /<style>([\s\S]*?)<\/style>/g,
        (_all, style: string) => `<style>${style.match(/url\([^)]{0,9}/g)}</style>`,
      );
    const addresses = [...page.matchAll(/(?:src|href)="([^"]{0,20})|url\(["']?(.{0,5})/g)].map(([, a, b]) => a ?? b);
    expect(addresses.length).toBeGreaterThan(0);
    // '#…' is a part of the page itself.
    for (const address of addresses) expect(address).toMatch(/^(?:data:|#)/);
  });

  test('its policy allows no connection, names each script by its digest, and stands first after the encoding', () => {
    const [, policy = ''] = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html) ?? [];
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("connect-src 'none'");
    expect(policy).toMatch(/script-src( 'sha256-[^' ]+'){2};/);
    expect(policy).not.toMatch(/https?:|\*|unsafe-eval|'self'|style-src [^;]*unsafe-inline/);
    const [, script = ''] = /<script type="module">([\s\S]*?)<\/script>/.exec(html) ?? [];
    expect(policy).toContain(createHash('sha256').update(script).digest('base64'));
    expect(html.indexOf('<meta charset')).toBeLessThan(html.indexOf('Content-Security-Policy'));
    expect(html.indexOf('<style')).toBeGreaterThan(html.indexOf('Content-Security-Policy'));
    expect(Buffer.byteLength(html.slice(0, html.indexOf('<meta charset="utf-8">') + 22))).toBeLessThan(1024);
  });

  test('a second build gives the same bytes', async () => {
    await buildOneFile(again);
    expect((await readFile(join(again, 'kettlefin.html'), 'utf8')) === html).toBe(true);
  });
});

describe('opened from the disk with the network cut', () => {
  test('the chart library is not run before a chart is shown, and is then', async () => {
    const workbench = await openWorkbench({ path: '#cautions' });
    const { page } = workbench;
    await page.waitForSelector('.verdict-sentence');
    expect(await page.evaluate(() => 'Plotly' in globalThis)).toBe(false);
    await page.getByRole('link', { name: 'Where it settles' }).click();
    await drawChart(page.locator('.chart-picture').first());
    await page.waitForSelector('.chart-picture[data-state="drawn"] .scatterlayer');
    expect(await page.evaluate(() => 'Plotly' in globalThis)).toBe(true);
    workbench.expectNoComplaints();
    await workbench.close();
  });
});
