// Chebyshev's polynomials in powers: printed coefficients, and the cosine that defines them.

import { expect, test } from 'vitest';
import { chebyshevInPowers } from '../../src/numerics/index.ts';

// M. Abramowitz, I. A. Stegun (1964), Handbook of Mathematical Functions, table 22.3 (from memory of the source).
test.each([
  [2, [-1, 0, 2]],
  [5, [0, 5, 0, -20, 0, 16]],
  [6, [-1, 0, 18, 0, -48, 0, 32]],
])('T%i', (n, coefficients) => {
  const count = 9;
  const row = chebyshevInPowers(count).subarray(n * count, (n + 1) * count);
  expect([...row]).toEqual([...coefficients, ...new Array<number>(count - coefficients.length).fill(0)]);
});

test('Tₙ(cos x) = cos(n x)', () => {
  const count = 12;
  const rows = chebyshevInPowers(count);
  for (const x of [0.1, 1, 2, 3]) {
    for (let n = 0; n < count; n++) {
      let value = 0;
      for (let k = count - 1; k >= 0; k--) value = value * Math.cos(x) + rows[n * count + k]!;
      expect(value).toBeCloseTo(Math.cos(n * x), 11);
    }
  }
});
