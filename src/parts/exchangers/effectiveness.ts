// Relations between temperatures, conductance UA and capacity flows of heat exchangers: mean differences, effectiveness.

import {
  InputError,
  NoSolutionError,
  requireFinite,
  requireNonNegative,
  requirePositive,
} from '../../numerics/index.ts';

/**
 * Logarithmic mean ΔT_lm of the differences at the two ends.
 *     ΔT_lm = (ΔT_1 − ΔT_2) / ln(ΔT_1/ΔT_2)
 * @param oneEnd     ΔT_1 [K], above 0
 * @param otherEnd   ΔT_2 [K], above 0
 * @returns          ΔT_lm [K]; the common value where both are equal
 * @throws InputError unless both are finite and above 0: streams that cross exchange no heat at that end
 * Source: textbook definition. Worked value: 10 K, 5 K → 7.2135 K.
 */
export function logarithmicMean(oneEnd: number, otherEnd: number): number {
  requirePositive('temperatureDifference', oneEnd);
  requirePositive('temperatureDifference', otherEnd);
  const ratio = oneEnd / otherEnd;
  const offset = ratio - 1;
  // Near equal ends the quotient loses digits: ln(1 + x)/x ≈ 1 − x/2 + x²/3.
  if (Math.abs(offset) < 1e-5) return otherEnd / (1 - offset / 2 + offset ** 2 / 3);
  return (oneEnd - otherEnd) / Math.log(ratio);
}

/**
 * Effectiveness ε of an exchanger with one side at constant temperature.
 *     ε = 1 − exp(−NTU)
 * @param transferUnits   NTU = UA/C [-], 0 or above
 * @returns               ε [-], 0 to 1
 * Source: Kays & London. Worked value: NTU 1.5 → 0.7768698.
 */
export function effectivenessIsothermal(transferUnits: number): number {
  requireNonNegative('transferUnits', transferUnits);
  return -Math.expm1(-transferUnits);
}

/**
 * Transfer units NTU that an effectiveness asks for, one side at constant temperature.
 *     NTU = −ln(1 − ε)
 * @param effectiveness   ε [-], 0 to below 1
 * @throws NoSolutionError code 'effectivenessOne' at 1 and above: no finite surface reaches it
 * Worked value: 0.7768698 → 1.5.
 */
export function transferUnitsIsothermal(effectiveness: number): number {
  requireNonNegative('effectiveness', effectiveness);
  if (effectiveness >= 1) {
    throw new NoSolutionError(
      `No finite surface reaches an effectiveness of ${effectiveness}.`,
      'effectiveness below 1',
      'effectivenessOne',
    );
  }
  return -Math.log1p(-effectiveness);
}

/**
 * Effectiveness ε of a counter-flow exchanger.
 *     ε = (1 − exp(−N (1 − C))) / (1 − C exp(−N (1 − C)));  at C = 1: N/(1 + N)
 * @param transferUnits   N = UA/C_min [-], 0 or above
 * @param capacityRatio   C = C_min/C_max [-], 0 to 1
 * @returns               ε [-]
 * Source: Kays & London. Worked value: N 2, C 0.5 → 0.774600.
 */
export function effectivenessCounterFlow(transferUnits: number, capacityRatio: number): number {
  requireNonNegative('transferUnits', transferUnits);
  requireFinite('capacityRatio', capacityRatio);
  if (capacityRatio < 0 || capacityRatio > 1) throw new InputError('capacityRatio', capacityRatio, '0 to 1');
  const exponent = transferUnits * (1 - capacityRatio);
  // Near C = 1 both numerator and denominator vanish; the first terms of the series keep the digits.
  if (exponent < 1e-6) return transferUnits / (1 + transferUnits);
  return -Math.expm1(-exponent) / (1 - capacityRatio * Math.exp(-exponent));
}
