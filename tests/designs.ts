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
