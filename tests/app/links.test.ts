// Links that carry a design: what goes in comes out, letter for letter; whatever is done to a link on its way, it opens
// that design or none.

import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { linkWith, longestLink, textOfLink } from '../../src/app/links/design-link.ts';
import { openLink } from '../../src/app/links/open-link.ts';
import { isDesignLink, placeOfAddress } from '../../src/app/pages.ts';
import { longestDesignText, parseDesign, serialiseDesign, setField } from '../../src/design/index.ts';
import { exampleFiles, exampleText } from './answers.ts';

const page = 'https://tank.example/workbench/?x=1#the-machine';
const text = exampleText('reef-in-the-study.json');
const link = await linkWith(page, text);

describe('there and back', () => {
  test.each(exampleFiles)('%s', async (file) => {
    const opened = await openLink(await linkWith(page, exampleText(file)));
    expect(opened.ok && serialiseDesign(opened.document)).toBe(exampleText(file));
  });

  test('any text (seed 20270112)', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', minLength: 1 }), async (any) => {
        expect(await textOfLink(await linkWith(page, any))).toEqual({ ok: true, text: any });
      }),
      { seed: 20270112 },
    );
  });

  test('any name, note and temperature of a design (seed 20270113)', async () => {
    const start = parseDesign(text);
    if (!start.ok) throw new Error('the example cannot be read');
    const words = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 });
    await fc.assert(
      fc.asyncProperty(words, words, fc.integer({ min: 20, max: 30 }), async (name, note, degrees) => {
        let document = start.document;
        for (const [path, value] of Object.entries({ name, note, 'tank.waterTemperature': `${degrees} °C` })) {
          const edited = setField(document, path, value);
          if (edited.ok) document = edited.document;
        }
        const opened = await openLink(await linkWith(page, serialiseDesign(document)));
        expect(opened.ok && serialiseDesign(opened.document)).toBe(serialiseDesign(document));
      }),
      { seed: 20270113, numRuns: 50 },
    );
  });

  test('is written in the zlib format of RFC 1950, as Node.js writes it too, in base64url', async () => {
    const ours = `#design=a${deflateSync(text).toString('base64url')}`;
    expect(await textOfLink(ours)).toEqual({ ok: true, text });
  });
});

describe('the address', () => {
  test('keeps the page, carries the caution in words, and is plain letters', () => {
    expect(link).toMatch(
      /^https:\/\/tank\.example\/workbench\/\?x=1#for-study-only,not-permission-to-build&design=a[\w-]+$/,
    );
    expect(link.length).toBeLessThan(2000);
  });

  test('is told from the address of a page', () => {
    const { hash } = new URL(link);
    expect(isDesignLink(hash)).toBe(true);
    expect(placeOfAddress(hash)).toBeUndefined();
    for (const other of ['', '#', '#working/tank.load', '#the-machine', '#main', '#working/design']) {
      expect(isDesignLink(other), other).toBe(false);
    }
    for (const cut of ['#for-study-only,not-per', '#design=', '#x%26design%3Da'])
      expect(isDesignLink(cut), cut).toBe(true);
  });
});

describe('on its way', () => {
  test('cut at any length it opens nothing, and says so', async () => {
    for (let length = 0; length < link.length; length++) {
      const opened = await openLink(link.slice(0, length));
      expect(opened.ok, `${length} of ${link.length}`).toBe(false);
      expect(opened.ok || opened.notice.problems[0]?.message).toMatch(/again|file/);
    }
  });

  test('with any one letter changed it opens the same design or none (seed 20270114)', async () => {
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'.split('');
    const from = link.indexOf('design=') + 'design='.length;
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: from, max: link.length - 1 }),
        fc.constantFrom(...letters),
        async (at, letter) => {
          const carried = await textOfLink(link.slice(0, at) + letter + link.slice(at + 1));
          if (carried.ok) expect(carried.text).toBe(text);
        },
      ),
      { seed: 20270114, numRuns: 400 },
    );
  });

  test('in small or capital letters only it opens nothing', async () => {
    expect((await textOfLink(link.toLowerCase())).ok).toBe(false);
    expect((await textOfLink(link.toUpperCase())).ok).toBe(false);
  });

  test.each([
    ['a full stop after it', `${link}.`],
    ['in brackets', `${link}>)`],
    ['broken into lines', link.replace(/(.{76})/g, '$1\r\n')],
    ['escaped', `https://tank.example/#${encodeURIComponent(link.slice(link.indexOf('#') + 1))}`],
    ['more after it', `${link}&sent=today`],
  ])('%s is undone', async (_name, changed) => {
    expect(await textOfLink(changed)).toEqual({ ok: true, text });
  });
});

describe('what is no link to a design', () => {
  test.each([
    ['nothing', '', 'empty'],
    ['a page', '#the-machine', 'empty'],
    ['an empty design', '#design=', 'empty'],
    ['a coding of later', '#design=b4711', 'newerLink'],
    ['the version alone', '#design=a', 'changed'],
    ['letters that are not base64url', '#design=aeJx*Vx', 'changed'],
    ['bytes that are not compressed', '#design=aAAAA', 'changed'],
    [
      'compressed bytes that are not UTF-8',
      `#design=a${deflateSync(Buffer.from([255, 254, 65])).toString('base64url')}`,
      'changed',
    ],
    ['a link without end', `#design=a${'A'.repeat(longestLink)}`, 'tooLong'],
  ])('%s', async (_name, address, fault) => {
    expect(await textOfLink(address)).toEqual({ ok: false, fault });
  });

  test('what inflates to more than any design is not read to its end', async () => {
    const fits = `#design=a${deflateSync(' '.repeat(longestDesignText)).toString('base64url')}`;
    expect((await textOfLink(fits)).ok).toBe(true);
    const bomb = deflateSync(Buffer.alloc(400_000_000, ' '), { level: 9 }).toString('base64url');
    expect(bomb.length).toBeLessThan(longestLink);
    const before = process.memoryUsage().arrayBuffers;
    expect(await textOfLink(`#design=a${bomb}`)).toEqual({ ok: false, fault: 'tooLong' });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(40_000_000);
  });

  test.each([
    ['a newer format', JSON.stringify({ ...JSON.parse(text), formatVersion: 99 }), 'newer'],
    ['a field that is not known', JSON.stringify({ ...JSON.parse(text), pump: 'big' }), 'pump'],
    ['no design', 'warm water', 'JSON'],
  ])('%s is refused with its fault', async (_name, carried, words) => {
    const opened = await openLink(await linkWith(page, carried));
    expect(opened.ok).toBe(false);
    if (opened.ok) return;
    expect(opened.notice.title).toContain('unchanged');
    expect(opened.notice.problems.map(({ message }) => message).join()).toContain(words);
  });
});
