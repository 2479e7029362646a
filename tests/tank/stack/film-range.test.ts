// The range of the outer film against natural convection of textbooks: what the standard holds fixed, plates of a tank's size do
// not; with the radiation beside it each must lie inside the range that the load carries.

import { expect, test } from 'vitest';
import { INTERNAL_CONVECTION, outerFilmRange, radiativeCoefficient } from '../../../src/tank/stack/films.ts';
import { plainPlates } from '../../reference/tank/published.ts';

test.each(plainPlates)('%s: heat flow %s, h_c %d W/(m² K) of the textbook lies inside', (_, flow, convective) => {
  const radiative = radiativeCoefficient(0.9, 295.15);
  const ratio = (convective + radiative) / (INTERNAL_CONVECTION[flow] + radiative);
  expect(ratio).toBeGreaterThan(outerFilmRange.low);
  expect(ratio).toBeLessThan(outerFilmRange.high);
});
