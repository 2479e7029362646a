// The caution, the list at the machine and SAFETY.md say the same; and three words appear in none of them.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { caution, cautionCodes, machineCautions, notChecked } from '../../src/cautions/index.ts';
import { cases } from './speaking.ts';

const root = join(import.meta.dirname, '../..');
const page = readFileSync(join(root, 'SAFETY.md'), 'utf8');
const forbidden = /\b(?:safe|safely|approved|compliant)\b/i;

describe('the caution', () => {
  it('opens the page word for word', () => {
    expect(page.split('\n')[2]).toBe(`> ${caution}`);
  });

  it('is repeated in full by the list on the page', () => {
    for (const line of machineCautions) expect(page).toContain(`- ${line}\n`);
  });

  it.each([
    /certified or licensed people only/i,
    /energise a dome that is open to air/i,
    /no air or oxygen in a pressure test/i,
    /no flame or heat on a circuit that holds or held a flammable fluid/i,
    /recover before dismantling, never vent/i,
    /capacitors hold a charge/i,
    /oil of a burnt-out motor is acid/i,
    /residual-current protection/i,
    /bonding/i,
    /drip loops/i,
    /independent mechanical over-temperature cut-out/i,
    /local codes and licensed practice come first/i,
  ])('has %s in its list', (expected) => {
    expect(machineCautions.some((line) => expected.test(line))).toBe(true);
  });

  it('is followed by the theory: its table names every rule once, with the severity it speaks with', () => {
    const theory = readFileSync(join(root, 'docs/theory/cautions.md'), 'utf8');
    const told = [
      ...theory.matchAll(/^\| ([a-zA-Z, ]+) \| ((?:stop|look|note)(?:, (?:stop|look|note))*) \|/gm),
    ].flatMap(([, names, severities]) => {
      const each = severities!.split(', ');
      return names!.split(', ').map((name, index) => [name, each.length === 1 ? each[0] : each[index]] as const);
    });
    expect(told.length).toBe(cautionCodes.length);
    expect(Object.fromEntries(told)).toEqual(
      Object.fromEntries(Object.entries(cases).map(([code, { severity }]) => [code, severity])),
    );
  });

  it('is followed by what no rule looks at, word for word', () => {
    const theory = readFileSync(join(root, 'docs/theory/cautions.md'), 'utf8');
    expect(notChecked.length).toBeGreaterThan(5);
    for (const line of notChecked) expect(theory).toContain(`- ${line}\n`);
  });

  it('promises nothing', () => {
    expect(page).not.toMatch(forbidden);
    expect([caution, ...machineCautions].join('\n')).not.toMatch(forbidden);
    const folder = join(root, 'src/cautions');
    const files = (readdirSync(folder, { recursive: true }) as string[]).filter((name) => name.endsWith('.ts'));
    expect(files.length).toBeGreaterThan(5);
    for (const name of files) expect(readFileSync(join(folder, name), 'utf8')).not.toMatch(forbidden);
    const phrases = readdirSync(join(root, 'src/assess/wording/phrases'));
    expect(phrases.length).toBeGreaterThan(3);
    for (const name of phrases) {
      expect(readFileSync(join(root, 'src/assess/wording/phrases', name), 'utf8')).not.toMatch(forbidden);
    }
  });
});
