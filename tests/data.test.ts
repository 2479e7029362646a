// Every data file says where its numbers come from, and holds only numbers that exist. What a file means is tested
// beside the code that reads it; here stands what holds for all of them.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const data = fileURLToPath(new URL('../data', import.meta.url));

const files = (readdirSync(data, { recursive: true }) as string[]).map((name) => name.split(sep).join('/'));
const tables = files.filter((name) => name.endsWith('.json') && !name.startsWith('designs/'));
/** A list of names alone, such as that of the refrigerants, has no numbers that could come from anywhere. */
const numbers = tables.filter((name) => everything(read(name), '').some(({ value }) => typeof value === 'number'));
const designs = files.filter((name) => name.startsWith('designs/') && name.endsWith('.json'));

interface Found {
  readonly path: string;
  readonly key: string;
  readonly value: unknown;
}

describe('data files', () => {
  test('are found', () => {
    expect(tables.length).toBeGreaterThan(5);
    expect(tables.filter((name) => !numbers.includes(name))).toEqual(['refrigerants/names.json']);
    expect(designs.length).toBeGreaterThanOrEqual(3);
  });

  test.each(numbers)('%s says where its numbers come from', (name) => {
    const content = read(name);
    expect(Object.keys(content).some((key) => ['sources', 'source', 'citations', 'bibliography'].includes(key))).toBe(
      true,
    );
    const sources = content.sources;
    if (typeof sources !== 'object' || sources === null || Array.isArray(sources)) return;
    const declared = Object.keys(sources);
    for (const words of Object.values(sources)) expect(JSON.stringify(words).length).toBeGreaterThan(10);
    const used = everything(content, '')
      .filter(({ path, key, value }) => key === 'source' && typeof value === 'string' && !path.startsWith('.sources'))
      .map(({ path, value }) => ({ path, value: String(value) }));
    expect(used.filter(({ value }) => !declared.includes(value))).toEqual([]);
  });

  test.each([...tables, ...designs])('%s holds no empty text', (name) => {
    const empty = everything(read(name), '').filter(({ value }) => typeof value === 'string' && value.trim() === '');
    expect(empty.map(({ path }) => path)).toEqual([]);
  });

  test.each(designs)('%s names itself and its format', (name) => {
    const { formatVersion, name: title } = read(name);
    expect(formatVersion).toBe(2);
    expect(typeof title).toBe('string');
  });

  test('the same content is not kept twice', () => {
    const digests = files
      .filter((name) => name.endsWith('.json'))
      .map((name) =>
        createHash('sha256')
          .update(readFileSync(join(data, name)))
          .digest('hex'),
      );
    expect(new Set(digests).size).toBe(digests.length);
  });
});

function read(name: string): Record<string, unknown> {
  return JSON.parse(readFileSync(join(data, name), 'utf8'));
}

/** Every value inside, with its path. */
function everything(value: unknown, path: string): Found[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [
    { path: `${path}.${key}`, key, value: inner },
    ...everything(inner, `${path}.${key}`),
  ]);
}
