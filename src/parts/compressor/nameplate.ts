// What runs against what is printed on the dome.

import { requireFinite, requirePositive } from '../../numerics/index.ts';
import type { Formula } from '../../quantities/index.ts';

/**
 * Running current over the rated one.
 *     i = I / I_r
 * @param current  I [A]; finite
 * @param rated    I_r [A], as printed on the machine; above 0
 * @returns        i [-]; above 1 the machine takes more than its plate says
 * Pitfall: plates state either the current of a rating point or the most for long; the latter is larger by about a half.
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 0.72, 0.9 → 0.8.
 */
export function currentShare(current: number, rated: number): number {
  requireFinite('current', current);
  requirePositive('rated', rated);
  return current / rated;
}

export const nameplateFormulas: readonly Formula[] = [
  {
    id: 'compressor.currentShare',
    title: 'Running current over the rated current',
    result: { symbol: 'i', meaning: 'share of the rated current', unit: '1', quantity: 'fraction' },
    expression: 'I / I_r',
    symbols: {
      I: { meaning: 'running current', unit: 'A', quantity: 'current' },
      I_r: { meaning: 'rated current, as printed', unit: 'A', quantity: 'current' },
    },
    source: 'definition',
    validity: 'any',
    file: 'src/parts/compressor/nameplate.ts',
    compute: (v) => currentShare(v.I!, v.I_r!),
    examples: [
      { I: 0.72, I_r: 0.9 },
      { I: 1.65, I_r: 1.3 },
    ],
  },
];
