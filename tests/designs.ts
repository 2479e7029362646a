// The demo designs by file name, read as a person's file would be.

import { readdirSync, readFileSync } from 'node:fs';

const folder = new URL('../data/designs/', import.meta.url);

export const demoTexts: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')]),
);

if (Object.keys(demoTexts).length === 0) throw new Error('data/designs holds no design');

/** A design with other values at some paths; undefined removes one. */
export function changedDesign(text: string, values: Readonly<Record<string, unknown>>): string {
  const design = JSON.parse(text);
  for (const [path, value] of Object.entries(values)) {
    const keys = path.split('.');
    const last = keys.pop()!;
    let part = design;
    for (const key of keys) part = part[key] ??= {};
    part[last] = value;
  }
  return JSON.stringify(design);
}
