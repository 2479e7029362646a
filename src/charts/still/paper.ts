// Inks and letters of a still picture. It stands outside the page, on white paper, so that both are fixed here: the inks
// of the workbench in the light (app/styles/tokens.css; a test holds them together), and letters that every system has.

import type { InkRole } from '../specification.ts';

/** For lines and words. */
export const paperInks: Readonly<Record<InkRole, string>> = {
  intoWater: '#b3400f',
  fromSource: '#0b6b73',
  electricity: '#4a3fa3',
  leaving: '#65624f',
  /** Darker than on screen: here words stand in it, and need 4.5 to 1 against white. */
  neutral: '#5f6964',
  faint: '#b4bcb4',
  ink: '#1b2a2e',
  doubt: '#7a5000',
  stop: '#7a2456',
};

const fills: Partial<Record<InkRole, string>> = {
  intoWater: '#d9663a',
  fromSource: '#3b98a0',
  electricity: '#6f65c7',
  leaving: '#b7b39f',
  doubt: '#e2b04a',
};

/** For bars and areas. */
export function paperFill(role: InkRole): string {
  return fills[role] ?? paperInks[role];
}

export const paper = { sheet: '#ffffff', soft: '#4a5a5a', rule: '#7d8b83', grid: '#e3e8dc' } as const;

export const letters = 'Helvetica, Arial, Liberation Sans, Open Sans, DejaVu Sans, sans-serif';

/** Sizes of the words [units of the picture]: 12 units are 3 mm where 720 units are printed 180 mm wide. */
export const sizes = { title: 15, axis: 12, words: 12, caution: 9.5 } as const;
