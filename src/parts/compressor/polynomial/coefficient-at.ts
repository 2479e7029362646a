// What a set of ten coefficients says itself at a running point inside its ranges: with the gas and liquid it was made for, and
// carried to another gas.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import type { RatingConditions } from '../rating-points.ts';
import { conditionsWithoutCapacity, printedLevels, ratedConditions } from './basis.ts';
import { type CoefficientSet, coefficientValue, dependsOnLiquid } from './coefficient-set.ts';
import { type RatedStates, ratedStates } from './flow-and-capacity.ts';
import { capacityRatioOf, carriedValue, flowRatioDabiriRice1981, powerRatioDabiriRice1981 } from './superheat.ts';

export interface CoefficientAt {
  /** As the set has it, at its own gas and liquid: kg/s, W or A. */
  readonly own: number;
  /**
   * With the gas, and of a capacity the liquid, that was asked for; null of a current, for which no correction is known, unless
   * the gas is that of the set.
   */
  readonly corrected: number | null;
  /** The four temperatures of `own` [K]. */
  readonly conditions: RatingConditions;
  /** Whether the gas asked for is another. */
  readonly isOtherGas: boolean;
}

/** Gas nearer than this is the same [K]. */
const sameGas = 0.05;

/**
 * A set at dew, dew, gas and liquid temperature.
 * @param fluid  what the set is of
 * @param set    flow, capacity, power or current
 * @param at     the four temperatures asked for [K]
 * @throws OutOfModelError 'outsideItsData' outside the set's ranges; InputError where the set's basis makes no sense here or the
 *         set is impossible; errors of the refrigerant's equation
 * Source: Dabiri & Rice 1981 for another superheat, see superheat.ts; another liquid by the first law.
 */
export function coefficientAt(fluid: Refrigerant, set: CoefficientSet, at: RatingConditions): CoefficientAt {
  const levels = printedLevels(fluid, set.basis, at.evaporating, at.condensing);
  const own = coefficientValue(set, levels.evaporating, levels.condensing);
  const conditionsOf = dependsOnLiquid(set) ? ratedConditions : conditionsWithoutCapacity;
  const conditions = conditionsOf(fluid, set.basis, levels.evaporating, levels.condensing, `${set.path}.basis`);
  const isOtherGas = Math.abs(conditions.returnGas - at.returnGas) >= sameGas;
  if (set.of === 'current') return { own, corrected: isOtherGas ? null : own, conditions, isOtherGas };
  const given = ratedStates(fluid, conditions);
  const asked = ratedStates(fluid, { ...conditions, returnGas: at.returnGas, liquid: at.liquid });
  return { own, corrected: carriedValue(own, ratioOf(set.of, given, asked)), conditions, isOtherGas };
}

function ratioOf(of: 'massFlow' | 'capacity' | 'power', given: RatedStates, asked: RatedStates): number {
  const flowRatio = flowRatioDabiriRice1981(asked.suction.density / given.suction.density);
  switch (of) {
    case 'massFlow':
      return flowRatio;
    case 'power':
      return powerRatioDabiriRice1981(flowRatio, asked.isentropicWork / given.isentropicWork);
    case 'capacity': {
      const effect = ({ suction, liquidEnthalpy }: RatedStates) => suction.enthalpy - liquidEnthalpy;
      return capacityRatioOf(flowRatio, effect(asked) / effect(given));
    }
  }
}
