// Links between the documents lead somewhere, commands named in the README exist, and the caution reads the same.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { theoryPages, theoryText } from '../docs/theory/gather.ts';

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

function read(name: string): string {
  return readFileSync(join(root, name), 'utf8');
}

/** Relative links and pictures, without anchors. */
function linksIn(text: string): string[] {
  return [...text.matchAll(/\]\(([^)\s]+)\)/g)]
    .map((match) => match[1]!.replace(/#.*$/, ''))
    .filter((link) => link !== '' && !/^[a-z]+:/.test(link));
}
