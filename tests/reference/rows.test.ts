// What goes into the validation tables is whole: every folder of outside values gives rows, each with a source, and a
// reference row that lies far off names the reason.

import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { gatherRows } from '../../docs/validation/gather.ts';

const here = dirname(fileURLToPath(import.meta.url));
/** Beyond this a reference row needs words [share]. */
const farOff = 0.02;
const files = gatherRows();

describe('validation rows', () => {
  test('every folder that holds outside values gives some', () => {
    const folders = readdirSync(here, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && readdirSync(join(here, entry.name)).length > 0)
      .map(({ name }) => `tests/reference/${name}/rows.ts`);
    expect(folders.length).toBeGreaterThan(2);
    expect(files.map(({ file }) => file)).toEqual(expect.arrayContaining(folders));
  });

  test.each(files.map(({ file, rows }) => [file, rows] as const))('%s', (_file, rows) => {
    expect(rows.length).toBeGreaterThan(0);
    for (const { subject, quantity, source, published, ours, status, reason } of rows) {
      const where = `${subject}, ${quantity}`;
      expect(Number.isFinite(ours), where).toBe(true);
      expect(source.trim(), where).not.toBe('');
      if (status === 'common practice, no source') expect(source, where).toContain('no source');
      if (status !== 'reference' || typeof published !== 'number') continue;
      const isFarOff = Math.abs(ours - published) > farOff * Math.abs(published);
      expect(isFarOff && reason === undefined, `${where}: ${ours} against ${published}`).toBe(false);
    }
  });
});
