// Mass flow and refrigerating capacity are one and the same measurement, as soon as gas and liquid before the valve are known.

import {
  type Refrigerant,
  type State,
  saturationAtDewTemperature,
  saturationAtTemperature,
  stateInLoop,
} from '../../../matter/refrigerants/index.ts';
import { InputError } from '../../../numerics/index.ts';
import type { RatingConditions } from '../rating-points.ts';

/** The states that a point's four temperatures stand for. */
export interface RatedStates {
  /** Gas at the inlet of the shell. */
  readonly suction: State;
  /** p_d [Pa]. */
  readonly dischargePressure: number;
  /** h_l of the liquid before the valve, taken as saturated at its temperature [J/kg]. */
  readonly liquidEnthalpy: number;
  /** Δh_s, isentropic work from the gas to p_d [J/kg]. */
  readonly isentropicWork: number;
}

/** Nearer to dew than this, gas at a return temperature is taken as saturated [K]. */
const saturatedWithin = 1e-6;

/**
 * States of a point from dew, dew, gas and liquid temperature.
 * @throws InputError 'returnGasBelowEvaporating'; 'noEvaporation' where the liquid is so warm that nothing is left to evaporate; errors of the refrigerant's
 *         equation outside its range
 */
export function ratedStates(fluid: Refrigerant, at: RatingConditions): RatedStates {
  const { vapour } = saturationAtDewTemperature(fluid, at.evaporating);
  const { pressure } = vapour;
  const superheat = at.returnGas - at.evaporating;
  if (!(superheat > -saturatedWithin)) {
    const expected = `gas at or above the evaporating temperature of ${at.evaporating} K`;
    throw new InputError('returnGas', at.returnGas, expected, 'returnGasBelowEvaporating');
  }
  const isSaturated = superheat < saturatedWithin;
  const suction = isSaturated ? vapour : stateInLoop(fluid, { temperature: at.returnGas, pressure });
  const dischargePressure = saturationAtDewTemperature(fluid, at.condensing).vapour.pressure;
  const liquidEnthalpy = saturationAtTemperature(fluid, at.liquid).liquid.enthalpy;
  if (!(suction.enthalpy > liquidEnthalpy)) {
    throw new InputError('liquid', at.liquid, 'liquid colder than this: nothing would evaporate', 'noEvaporation');
  }
  const isentropic = stateInLoop(fluid, { pressure: dischargePressure, entropy: suction.entropy });
  return { suction, dischargePressure, liquidEnthalpy, isentropicWork: isentropic.enthalpy - suction.enthalpy };
}

/** ṁ [kg/s] = Q_e / (h_1 − h_l): the flow that a capacity [W] stands for, from gas and liquid enthalpy [J/kg]. */
export function flowOfCapacity(capacity: number, gasEnthalpy: number, liquidEnthalpy: number): number {
  return capacity / (gasEnthalpy - liquidEnthalpy);
}

/** Q_e [W] = ṁ (h_1 − h_l): inverse of flowOfCapacity. */
export function capacityOfFlow(massFlow: number, gasEnthalpy: number, liquidEnthalpy: number): number {
  return massFlow * (gasEnthalpy - liquidEnthalpy);
}

/**
 * What the liquid temperature is worth: capacity with one liquid over capacity with another, everything else the same.
 * @param fluid   refrigerant
 * @param at      the four temperatures with the first liquid [K]
 * @param liquid  temperature of the other liquid [K]
 * Worked value: R134a at −23.3/54.4 °C, gas 32.2 °C, liquid 32.2 over 54.4 °C → 1.221.
 */
export function liquidWorth(fluid: Refrigerant, at: RatingConditions, liquid: number): number {
  const first = ratedStates(fluid, at);
  const other = ratedStates(fluid, { ...at, liquid });
  return (first.suction.enthalpy - first.liquidEnthalpy) / (other.suction.enthalpy - other.liquidEnthalpy);
}
