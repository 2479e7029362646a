// First law of the loop, per kilogram and per second: work, heats, coefficients of performance, efficiencies and the
// account that must close. Every function is one line of algebra on enthalpies; where those come from is the caller's
// affair. State numbers: 1 compressor inlet, 2s isentropic outlet, 2 outlet, 3 condenser outlet, 4 evaporator inlet.
//   per kg:    enthalpyDifference, outletEnthalpyFromEfficiency, isentropicEfficiency, volumetricHeatingCapacity
//   pressures: pressureRatio, pressureLoss
//   ratios:    coefficientOfPerformance, carnotHeatingCop, meanTemperatureLorenz, secondLawEfficiency
//   per s:     streamPower, energyAccountResidual

import { InputError, requireFinite, requirePositive } from '../numerics/index.ts';

/**
 * Heat or work of one process of the loop per kilogram [J/kg]: specific work w = h2 − h1, heat delivered q_H = h2 − h3,
 * heat taken q_L = h1 − h4.
 *     q = h_a − h_b
 * @param larger   h_a [J/kg]
 * @param smaller  h_b [J/kg], on the same reference state
 * @returns        q [J/kg]
 * Validity: steady flow, no kinetic or potential energy; work only where no heat is exchanged and the reverse.
 * Source: Çengel & Boles, Thermodynamics, 8th ed., section 11-3 (from memory of the source).
 * Worked value: 275 390, 239 160 → 36 230 J/kg.
 */
export function enthalpyDifference(larger: number, smaller: number): number {
  requireFinite('larger', larger);
  requireFinite('smaller', smaller);
  return larger - smaller;
}

/**
 * Enthalpy h2 at the outlet of an adiabatic compressor.
 *     h2 = h1 + (h2s − h1) / η_s
 * @param inletEnthalpy             h1 [J/kg]
 * @param isentropicOutletEnthalpy  h2s [J/kg], at the outlet pressure and the inlet's entropy; not below h1
 * @param efficiency                η_s [-], isentropic efficiency, above 0, at most 1
 * @returns                         h2 [J/kg]
 * @throws InputError if the efficiency is not in 0 < η_s ≤ 1 or h2s < h1.
 * Source: Çengel & Boles, Thermodynamics, 8th ed., equation 7-61 (from memory of the source).
 * Worked value: 239 160, 275 390, 0.85 → 281 783.5 J/kg.
 */
export function outletEnthalpyFromEfficiency(
  inletEnthalpy: number,
  isentropicOutletEnthalpy: number,
  efficiency: number,
): number {
  requireFinite('inletEnthalpy', inletEnthalpy);
  requireRise(inletEnthalpy, isentropicOutletEnthalpy);
  if (!(efficiency > 0 && efficiency <= 1)) {
    throw new InputError('isentropicEfficiency', efficiency, 'a number above 0, at most 1');
  }
  return inletEnthalpy + (isentropicOutletEnthalpy - inletEnthalpy) / efficiency;
}

/**
 * Isentropic efficiency η_s of an adiabatic compressor.
 *     η_s = (h2s − h1) / (h2 − h1)
 * @param inletEnthalpy             h1 [J/kg]
 * @param isentropicOutletEnthalpy  h2s [J/kg]
 * @param outletEnthalpy            h2 [J/kg], above h1
 * @returns                         η_s [-]; above 1 where h2 < h2s, which no adiabatic compressor reaches: callers refuse it
 * @throws InputError if h2 is not above h1.
 * Source: Çengel & Boles, Thermodynamics, 8th ed., equation 7-61 (from memory of the source).
 * Worked value: 246 360, 284 210, 286 690 → 0.93851.
 */
export function isentropicEfficiency(
  inletEnthalpy: number,
  isentropicOutletEnthalpy: number,
  outletEnthalpy: number,
): number {
  requireRise(inletEnthalpy, isentropicOutletEnthalpy);
  if (!(Number.isFinite(outletEnthalpy) && outletEnthalpy > inletEnthalpy)) {
    throw new InputError('outletEnthalpy', outletEnthalpy, `above the inlet's ${inletEnthalpy} J/kg`);
  }
  return (isentropicOutletEnthalpy - inletEnthalpy) / (outletEnthalpy - inletEnthalpy);
}

/**
 * Volumetric heating capacity q_v: heat delivered per cubic metre of gas the compressor draws in.
 *     q_v = (h2 − h3) · ρ1
 * @param heatDeliveredPerMass  h2 − h3 [J/kg]
 * @param suctionDensity        ρ1 [kg/m³], above 0
 * @returns                     q_v [J/m³]
 * Pitfall: what is drawn in is displacement times volumetric efficiency, not displacement.
 * Source: definition.
 * Worked value: 180 000, 7 → 1.26e6 J/m³.
 */
export function volumetricHeatingCapacity(heatDeliveredPerMass: number, suctionDensity: number): number {
  requireFinite('heatDeliveredPerMass', heatDeliveredPerMass);
  requirePositive('suctionDensity', suctionDensity);
  return heatDeliveredPerMass * suctionDensity;
}

/**
 * Coefficient of performance: heating COP_H = q_H / w, cooling COP_C = q_L / w; per kg or per s, both of the same.
 *     COP = q / w
 * @param heat  q [J/kg or W]
 * @param work  w [J/kg or W], above 0: for the textbook cycle the work on the gas, for a machine its electricity
 * @returns     COP [-]
 * Pitfall: adiabatic compressor: COP_H = COP_C + 1; with a share f of the input lost from the shell: COP_C + 1 − f.
 * Source: Çengel & Boles, Thermodynamics, 8th ed., equations 11-1, 11-2 (from memory of the source).
 * Worked value: 7180, 1810 → 3.9669.
 */
export function coefficientOfPerformance(heat: number, work: number): number {
  requireFinite('heat', heat);
  requirePositive('work', work);
  return heat / work;
}

/**
 * Pressure ratio of the compressor.
 *     r = p_d / p_s
 * @param dischargePressure  p_d [Pa], absolute
 * @param suctionPressure    p_s [Pa], absolute
 * @returns                  r [-]
 * Source: definition.
 * Worked value: 800 000, 140 000 → 5.7143.
 */
export function pressureRatio(dischargePressure: number, suctionPressure: number): number {
  requirePositive('dischargePressure', dischargePressure);
  requirePositive('suctionPressure', suctionPressure);
  return dischargePressure / suctionPressure;
}

/**
 * Pressure lost between two places along the flow, Δp.
 *     Δp = p_in − p_out
 * @param before  p_in [Pa], absolute
 * @param after   p_out [Pa], absolute
 * @returns       Δp [Pa]
 * Source: definition.
 * Worked value: 150 000, 140 000 → 10 000 Pa.
 */
export function pressureLoss(before: number, after: number): number {
  requirePositive('before', before);
  requirePositive('after', after);
  return before - after;
}

/**
 * Heating COP of a reversible heat pump between two constant temperatures (Carnot), COP_rev.
 *     COP_rev = T_h / (T_h − T_c)
 * @param warm  T_h [K], of the body heated
 * @param cold  T_c [K], of the source, below T_h
 * @returns     COP_rev [-]
 * @throws InputError unless 0 < T_c < T_h.
 * Source: Çengel & Boles, Thermodynamics, 8th ed., equation 6-21 (from memory of the source).
 * Worked value: 301.15, 278.15 → 13.0935.
 */
export function carnotHeatingCop(warm: number, cold: number): number {
  requirePositive('cold', cold);
  if (!(Number.isFinite(warm) && warm > cold)) throw new InputError('warm', warm, `above the cold side's ${cold} K`);
  return warm / (warm - cold);
}

/**
 * Thermodynamic mean temperature T̄ of a stream of constant heat capacity that changes its temperature. With the means
 * of both streams in place of T_h and T_c, the Carnot expression becomes the one of Lorenz.
 *     T̄ = (T2 − T1) / ln(T2 / T1)
 * @param from  T1 [K]
 * @param to    T2 [K]
 * @returns     T̄ [K]; T1 where both are equal
 * Source: H. Lorenz (1894), after textbooks (from memory); follows from ΔS = c ln(T2/T1).
 * Worked value: 298.15, 303.15 → 300.6431 K.
 */
export function meanTemperatureLorenz(from: number, to: number): number {
  requirePositive('from', from);
  requirePositive('to', to);
  const relative = (to - from) / from;
  return from === to ? from : (to - from) / Math.log1p(relative);
}

/**
 * Power carried by, or given to, a steady stream.
 *     Q = m (h_a − h_b)
 * @param massFlow  m [kg/s], above 0
 * @param larger    h_a [J/kg]
 * @param smaller   h_b [J/kg], on the same reference state
 * @returns         Q [W]
 * Source: steady-flow energy equation.
 * Worked value: 0.05, 275 390, 95 470 → 8996 W.
 */
export function streamPower(massFlow: number, larger: number, smaller: number): number {
  requirePositive('massFlow', massFlow);
  return massFlow * enthalpyDifference(larger, smaller);
}

/**
 * What is left of the loop's energy account, as a share of the heat delivered; 0 where it closes.
 *     r = (Q_e + W − Q_c − Q_shell) / Q_c
 * @param heatTaken      Q_e [W], into the evaporator
 * @param power          W [W], electricity into the compressor
 * @param heatDelivered  Q_c [W], out of the condenser, above 0
 * @param shellHeat      Q_shell [W], from the shell
 * @returns              r [-]
 * Source: first law on the loop as a whole, steady, all other surfaces adiabatic.
 * Worked value: 200, 100, 260, 40 → 0.
 */
export function energyAccountResidual(
  heatTaken: number,
  power: number,
  heatDelivered: number,
  shellHeat: number,
): number {
  requireFinite('heatTaken', heatTaken);
  requireFinite('power', power);
  requireFinite('shellHeat', shellHeat);
  requirePositive('heatDelivered', heatDelivered);
  return (heatTaken + power - heatDelivered - shellHeat) / heatDelivered;
}

function requireRise(inletEnthalpy: number, isentropicOutletEnthalpy: number): void {
  requireFinite('inletEnthalpy', inletEnthalpy);
  if (!(Number.isFinite(isentropicOutletEnthalpy) && isentropicOutletEnthalpy >= inletEnthalpy)) {
    throw new InputError(
      'isentropicOutletEnthalpy',
      isentropicOutletEnthalpy,
      `at least the inlet's ${inletEnthalpy} J/kg`,
    );
  }
}
