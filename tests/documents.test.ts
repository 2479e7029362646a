// Links between the documents lead somewhere, commands named in the README exist, and the caution reads the same.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { theoryPages, theoryText } from '../docs/theory/gather.ts';
import { validationPages } from '../docs/validation/pages.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

const documents = [
  ...readdirSync(root).filter((name) => name.endsWith('.md')),
  ...(readdirSync(join(root, 'docs'), { recursive: true }) as string[])
    .filter((name) => name.endsWith('.md'))
    .map((name) => `docs/${name.split(sep).join('/')}`),
];

describe('documents', () => {
  test('are found', () => {
    for (const name of [
      'README.md',
      'DEVELOPERS.md',
      'SAFETY.md',
      'CHANGELOG.md',
      'docs/README.md',
      'docs/validation/README.md',
    ]) {
      expect(documents).toContain(name);
    }
  });

  test.each(documents)('links of %s lead somewhere', (name) => {
    const broken = linksIn(read(name)).filter((link) => !existsSync(join(root, dirname(name), link)));
    expect(broken).toEqual([]);
  });

  test('every page of our own hand is named in the index', () => {
    const linked = linksIn(read('docs/README.md'));
    for (const name of documents.filter((document) => /^docs\/((decisions|guide)\/)?[\w-]+\.md$/.test(document))) {
      if (name !== 'docs/README.md') expect(linked).toContain(name.replace('docs/', ''));
    }
  });

  test('the pages of theory are those of the present formulas ("npm run documents" writes them)', () => {
    const pages = theoryPages();
    expect(pages.length).toBeGreaterThan(5);
    const stale = pages.filter((page) => {
      const path = `docs/theory/${page.name}`;
      return !documents.includes(path) || read(path) !== theoryText(page, read(path));
    });
    expect(stale.map(({ name }) => name)).toEqual([]);
  });

  // Rounding may differ between versions of the runtime: words must be the same, numbers close, and below 1e-11 all are equal.
  test('the pages of validation are those of the present code ("npm run documents" writes them)', () => {
    const pages = validationPages();
    expect(pages.length).toBeGreaterThan(4);
    const stale = pages.flatMap(({ name, text }) => {
      const path = `docs/validation/${name}`;
      return documents.includes(path) ? differences(name, read(path), text) : [`${name} is not there`];
    });
    expect(stale).toEqual([]);
    const written = documents.filter((name) => name.startsWith('docs/validation/'));
    expect(written.sort()).toEqual(pages.map(({ name }) => `docs/validation/${name}`).sort());
  });

  test('npm scripts named in the documents exist', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    const named = documents.flatMap((name) =>
      [...read(name).matchAll(/npm run (?:-s )?([\w:-]+)/g)].map((match) => match[1]!),
    );
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
  });

  test('the automatic check runs what the README names, and nothing else', () => {
    const commands = read('.ci/run')
      .split('\n')
      .filter((line) => !/^(#|set |cd |$)/.test(line));
    expect(commands).toEqual(['npm ci && npm test']);
    expect(read('README.md')).toContain('npm ci && npm test');
  });

  test('files named in the map for developers exist', () => {
    const named = [...read('DEVELOPERS.md').matchAll(/`((?:src|tests|docs|data)\/[\w./-]+)`/g)].map(
      (match) => match[1]!,
    );
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

const number = /[-−+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?/g;

/** Lines that are not the same but for rounding: exponents of deviations to half of themselves, other numbers to 1e-6. */
function differences(name: string, present: string, wanted: string): string[] {
  const lines = wanted.split('\n');
  const old = present.split('\n');
  if (old.length !== lines.length) return [`${name}: ${old.length} lines in place of ${lines.length}`];
  return lines.flatMap((line, k) =>
    isClose(old[k]!, line) ? [] : [`${name}:${k + 1}: ${old[k]} in place of ${line}`],
  );
}

function isClose(present: string, wanted: string): boolean {
  if (present === wanted) return true;
  if (present.replaceAll(number, '#') !== wanted.replaceAll(number, '#')) return false;
  const numbers = present.match(number)!;
  return wanted.match(number)!.every((word, k) => {
    const [a, b] = [word, numbers[k]!].map((text) => Number(text.replace('−', '-'))) as [number, number];
    const share = word.includes('e') ? 0.5 : 1e-6;
    return Math.abs(a - b) <= Math.max(1e-11, share * Math.abs(b));
  });
}

function read(name: string): string {
  return readFileSync(join(root, name), 'utf8');
}

/** Relative links and pictures, without anchors. */
function linksIn(text: string): string[] {
  return [...text.matchAll(/\]\(([^)\s]+)\)/g)]
    .map((match) => match[1]!.replace(/#.*$/, ''))
    .filter((link) => link !== '' && !/^[a-z]+:/.test(link));
}
