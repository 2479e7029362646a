// The guide to design files: its table is that of the present schema, its example is a valid design, its quantities read.

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withFieldTable } from '../../docs/guide/gather.ts';
import { fieldRecords, parseDesign } from '../../src/design/index.ts';
import { quantityRecords, readQuantity } from '../../src/quantities/index.ts';
import { sizedDesign } from './examples.ts';

const page = readFileSync(new URL('../../docs/guide/design-file.md', import.meta.url), 'utf8');

test('the table of fields is that of the present schema ("node docs/guide/make.mjs" writes it)', () => {
  expect(withFieldTable(page)).toBe(page);
  for (const { path } of fieldRecords) expect(page).toContain(`\`${path}\``);
});

test('the example is a complete design', () => {
  const example = /```json\n([\s\S]*?)```/.exec(page)?.[1];
  expect(example).toBeDefined();
  expect(parseDesign(example!)).toMatchObject({ ok: true });
});

test('the example of a tank belongs into a design', () => {
  const written = [...page.matchAll(/```json\n([\s\S]*?)```/g)][1]?.[1];
  const { load } = JSON.parse(`{${written}}`);
  const design = sizedDesign();
  design.tank.load = load;
  expect(parseDesign(JSON.stringify(design))).toMatchObject({ ok: true });
});

test('the example of a machine belongs into a design, and nothing of it is missing', () => {
  const written = [...page.matchAll(/```json\n([\s\S]*?)```/g)][2]?.[1];
  const { compressor } = JSON.parse(`{${written}}`);
  const design = sizedDesign();
  design.machine = { compressor };
  expect(parseDesign(JSON.stringify(design))).toMatchObject({ ok: true, notices: [] });
});

test('every quantity shown in the table of forms reads as some quantity', () => {
  const section = page.slice(page.indexOf('| you know'), page.indexOf('- The ends of a range'));
  const shown = [...section.matchAll(/`"([^`]+)"`/g)].map((match) => match[1]!);
  expect(shown.length).toBeGreaterThan(10);
  for (const text of shown) {
    const names = Object.values(quantityRecords).map(({ name }) => name);
    expect(
      names.some((name) => readQuantity(text, name).ok),
      text,
    ).toBe(true);
  }
});
