// Pictures and pages that stand outside the workbench write its colours out; they are those of the workbench in the light.

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { briefStyles } from '../../src/brief/styles.ts';
import { paper, paperFill, paperInks } from '../../src/charts/still/paper.ts';

const tokens = readFileSync(new URL('../../src/app/styles/tokens.css', import.meta.url), 'utf8');
const inTheLight = new Map(
  [...tokens.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]+),/g)].map(([, name, colour]) => [name!, colour!]),
);
const white = /^#fff(fff)?$/;

test('the tokens are found', () => {
  expect(inTheLight.size).toBeGreaterThan(20);
  expect(inTheLight.get('ink')).toMatch(/^#[0-9a-f]{6}$/);
});

describe('a still picture', () => {
  const roles = Object.keys(paperInks) as (keyof typeof paperInks)[];

  test.each(roles.filter((role) => role !== 'neutral'))('has the ink of %s', (role) => {
    const name = role.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    expect(paperInks[role]).toBe(inTheLight.get(name));
    // Without a fill of its own a bar has the ink.
    expect([inTheLight.get(`${name}-fill`), paperInks[role]]).toContain(paperFill(role));
  });

  test('has words that can be read on white (WCAG 2.2, 1.4.3: 4.5 to 1)', () => {
    for (const role of roles.filter((each) => each !== 'faint')) {
      expect(1.05 / (luminance(paperInks[role]) + 0.05), role).toBeGreaterThan(4.5);
    }
  });

  test('stands on white, with the rules and the grid of the workbench', () => {
    expect(paper.sheet).toMatch(white);
    expect([paper.soft, paper.rule, paper.grid]).toEqual(
      ['ink-soft', 'rule-strong', 'grid'].map((name) => inTheLight.get(name)),
    );
  });
});

test('the brief names no other colour', () => {
  const named = [...new Set(briefStyles.match(/#[0-9a-f]{3,8}\b/g))];
  expect(named.length).toBeGreaterThan(4);
  const known = [...inTheLight.values()];
  expect(named.filter((colour) => !white.test(colour) && !known.includes(colour))).toEqual([]);
});

/** Relative luminance of #rrggbb (WCAG 2.2, definition of relative luminance). */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((start) => {
    const part = Number.parseInt(colour.slice(start, start + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}
