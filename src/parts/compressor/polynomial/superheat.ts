// Flow and power of a known map at another superheat: thicker gas fills the cylinder with more, but colder gas is warmed more on
// its way there, so that flow follows only part of the density.

import { requirePositive } from '../../../numerics/index.ts';

/**
 * F [-], part of a change of inlet density that reaches the flow.
 * Dabiri & Rice 1981, from memory, not re-read; found with hermetic reciprocating machines over some tens of kelvins.
 */
export const densityShareDabiriRice1981 = 0.75;

/**
 * Flow at another superheat over flow of the map.
 *     m_new / m_map = 1 + F (ρ_new / ρ_map − 1)
 * @param densityRatio  ρ_new / ρ_map [-], of the gas at the inlet of the shell, at one evaporating pressure
 * @param share         F [-]
 * @throws InputError for a density ratio that is not positive
 * Source: Dabiri & Rice 1981, ASHRAE Transactions 87(2), 771, F from memory.
 * Worked value: R134a −23.3/54.4 °C, gas 32.2 → 4.4 °C: ρ 4.7159 → 5.2380 kg/m³ → 1.0830.
 */
export function flowRatioDabiriRice1981(densityRatio: number, share = densityShareDabiriRice1981): number {
  requirePositive('densityRatio', densityRatio);
  return 1 + share * (densityRatio - 1);
}

/**
 * Power at another superheat over power of the map, at the same efficiency.
 *     W_new / W_map = (m_new / m_map) (Δh_s,new / Δh_s,map)
 * @param flowRatio  m_new / m_map [-]
 * @param workRatio  Δh_s,new / Δh_s,map [-], isentropic work from either gas to the same discharge pressure
 * @throws InputError for a ratio that is not positive
 * Source: Dabiri & Rice 1981, as above.
 * Worked value: the same change: Δh_s 67.903 → 60.916 kJ/kg → 0.9716.
 */
export function powerRatioDabiriRice1981(flowRatio: number, workRatio: number): number {
  requirePositive('flowRatio', flowRatio);
  requirePositive('workRatio', workRatio);
  return flowRatio * workRatio;
}

/**
 * Capacity at another superheat and liquid over capacity of the map.
 *     Q_new / Q_map = (m_new / m_map) (q_new / q_map)
 * @param flowRatio    m_new / m_map [-]
 * @param effectRatio  q_new / q_map [-], refrigerating effects h_1 − h_l
 * @throws InputError for a ratio that is not positive
 * Source: first law, with the flow after Dabiri & Rice 1981.
 */
export function capacityRatioOf(flowRatio: number, effectRatio: number): number {
  requirePositive('flowRatio', flowRatio);
  requirePositive('effectRatio', effectRatio);
  return flowRatio * effectRatio;
}

/** X_new = X r: a value of the map carried to another gas. */
export function carriedValue(value: number, ratio: number): number {
  return value * ratio;
}
