// What tells how good a running point is, from its ends alone: pressure ratio, volumetric and overall efficiency.

/** Pressure ratio r [-] = p_d / p_s of absolute pressures [Pa]. */
export function pressureRatioOf(dischargePressure: number, suctionPressure: number): number {
  return dischargePressure / suctionPressure;
}

/** Isentropic work Δh_s [J/kg] = h_2s − h_1. */
export function isentropicWorkOf(isentropicDischargeEnthalpy: number, inletEnthalpy: number): number {
  return isentropicDischargeEnthalpy - inletEnthalpy;
}

/** Overall efficiency η_o [-] = ṁ · Δh_s / W: isentropic power from inlet to discharge line over electric power. */
export function overallEfficiency(massFlow: number, isentropicWork: number, power: number): number {
  return (massFlow * isentropicWork) / power;
}

/**
 * Volumetric efficiency η_v [-]: flow over what the stroke sweeps of gas as it is at the inlet of the shell.
 *     η_v = ṁ / (ρ_1 V_d N)
 * @param massFlow      ṁ [kg/s]
 * @param inletDensity  ρ_1 [kg/m³]
 * @param displacement  V_d [m³]
 * @param speed         N [1/s], of the shaft under load
 * Pitfall: sheets that take the frequency of the mains in place of N print some hundredths less.
 * Source: definition. Worked value: 1.6 g/s, 5 kg/m³, 8 cm³, 49 1/s → 0.8163.
 */
export function volumetricEfficiencyOf(
  massFlow: number,
  inletDensity: number,
  displacement: number,
  speed: number,
): number {
  return massFlow / (inletDensity * displacement * speed);
}

/**
 * Volumetric efficiency η_vc [-] that clearance alone leaves of a perfect machine.
 *     η_vc = 1 − C [r^(1/n) − 1]
 * @param clearanceRatio       C [-], clearance volume over swept volume
 * @param reexpansionExponent  n [-], polytropic exponent of the gas left in the clearance
 * @param pressureRatio        r [-], absolute pressures, 1 or above
 * Validity: C 0.02 to 0.05 and n 1.05 to 1.15 are usual of small reciprocating machines.
 * Pitfall: what openings, heating and leakage take comes on top; 0 or below where re-expansion fills the stroke.
 * Source: clearance volumetric efficiency as in textbooks of refrigeration.
 * Worked value: C 0.03, n 1.1, ratio 8 → 0.8313.
 */
export function clearanceVolumetricEfficiency(
  clearanceRatio: number,
  reexpansionExponent: number,
  pressureRatio: number,
): number {
  return 1 - clearanceRatio * (pressureRatio ** (1 / reexpansionExponent) - 1);
}
