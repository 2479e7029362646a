// The polynomial of ten coefficients by which makers state flow, capacity, power and current over the two saturation
// temperatures, and the exact conversion of a whole set to other units. A set belongs to its units: the same machine has other
// numbers in °F and lb/h. What it leaves out: everything but the two temperatures; nothing here knows where a set holds.

import { InputError, requireFinite } from '../../../numerics/index.ts';

/** C1 … C10, in the order of the standards. */
export type TenCoefficients = readonly [number, number, number, number, number, number, number, number, number, number];

/** How many coefficients a set has. */
export const coefficientCount = 10;

/** Powers of S and D beside each coefficient, in the order of the standards. */
export const coefficientPowers: readonly (readonly [suction: number, discharge: number])[] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [2, 0],
  [1, 1],
  [0, 2],
  [3, 0],
  [2, 1],
  [1, 2],
  [0, 3],
];

/**
 * X, what a set of ten coefficients gives.
 *     X = C1 + C2 S + C3 D + C4 S² + C5 S D + C6 D² + C7 S³ + C8 D S² + C9 S D² + C10 D³
 * @param coefficients  C1 … C10, in the unit of X over powers of the temperature unit of the set
 * @param suction       S, saturation (dew) temperature at suction, in the temperature unit of the set
 * @param discharge     D, the same at discharge
 * @returns             X in the unit of the set
 * Validity: only between the temperatures the set was made from. Pitfalls: some sheets print the cross terms in another order,
 * which no number shows: compare with a printed cell; cubics run away outside their data.
 * @throws InputError for a number that is not finite, and where the numbers are so large that the result is not
 * Source: AHRI 540 and EN 12900, order read in open implementations of both.
 * Worked values: all ten 1, S 2, D 3 → 90; only C8 = 1 → 12; only C9 = 1 → 18.
 */
export function tenCoefficients(coefficients: TenCoefficients, suction: number, discharge: number): number {
  const [c1, c2, c3, c4, c5, c6, c7, c8, c9, c10] = coefficients;
  const s = suction;
  const d = discharge;
  const value =
    c1 +
    c2 * s +
    c3 * d +
    c4 * s ** 2 +
    c5 * s * d +
    c6 * d ** 2 +
    c7 * s ** 3 +
    c8 * d * s ** 2 +
    c9 * s * d ** 2 +
    c10 * d ** 3;
  if (!Number.isFinite(value)) {
    requireTenCoefficients(coefficients);
    requireFinite('suction', suction);
    requireFinite('discharge', discharge);
    throw new InputError('coefficients', value, 'coefficients that give a finite number');
  }
  return value;
}

/** A list of numbers as a set. @throws InputError unless it is ten finite numbers, not all of them 0. */
export function requireTenCoefficients(values: readonly number[], path = 'coefficients'): TenCoefficients {
  if (values.length !== coefficientCount) {
    throw new InputError(path, `${values.length} numbers`, 'ten numbers, C1 to C10', 'notTenCoefficients');
  }
  values.forEach((value, index) => {
    if (!Number.isFinite(value)) throw new InputError(`${path}.C${index + 1}`, value, 'a finite number');
  });
  if (values.every((value) => value === 0)) {
    throw new InputError(path, 'ten zeros', 'ten numbers of which at least one is not 0', 'notTenCoefficients');
  }
  return values as unknown as TenCoefficients;
}

/** S = shift + scale S′: degrees of the given set per degree of the wanted one, and what the given scale reads at its zero. */
export interface TemperatureChange {
  readonly scale: number;
  readonly shift: number;
}

/**
 * The same polynomial over other temperature scales, its value times `factor`.
 * @param coefficients  the set as given
 * @param suction       change of S, with the factor of X: wanted unit per given unit
 * @param discharge     change of D; absent: that of S
 * @returns             exactly the same function of the other numbers, apart from rounding
 * @throws InputError where a coefficient would not be finite
 * Source: binomial expansion.
 * Worked value: only C8 = 1 in °F, so scale 1.8, shift 32 → in °C C1 32768, C2 3686.4, C3 1843.2, C4 103.68, C5 207.36, C8 5.832.
 */
export function convertedCoefficients(
  coefficients: TenCoefficients,
  suction: TemperatureChange & { readonly factor: number },
  discharge: TemperatureChange = suction,
): TenCoefficients {
  const converted = coefficientPowers.map(([i, j]) => {
    let sum = 0;
    coefficientPowers.forEach(([m, n], index) => {
      if (m < i || n < j) return;
      const shifts = suction.shift ** (m - i) * discharge.shift ** (n - j);
      sum += coefficients[index]! * binomial(m, i) * binomial(n, j) * shifts;
    });
    return suction.factor * sum * suction.scale ** i * discharge.scale ** j;
  });
  return requireTenCoefficients(converted);
}

/** How often k things are chosen out of n, n up to 3. */
function binomial(n: number, k: number): number {
  return [[1], [1, 1], [1, 2, 1], [1, 3, 3, 1]][n]![k]!;
}
