// What the gas goes through on its way: two openings that throttle it, heat exchanged with the wall, leakage that mixes in, the
// clearance it has to share, and compression. One function for each relation.
// Leaves out: pulsation, dynamics of valves, heat exchanged inside the cylinder, oil in the gas.

import { type Refrigerant, type State, saturationAtPressure } from '../../../matter/refrigerants/index.ts';
import { ConvergenceError } from '../../../numerics/index.ts';
import { referenceSweptDensity } from './parameters.ts';

/** Exponent of the gas in the leak [-]; small machines' fluids lie near. From memory. */
export const leakingExponent = 1.1;

/**
 * Pressure Δp [Pa] lost in an opening.
 *     Δp = ½ ρ [u ṁ / (ρ V_d f_r)]²
 * @param velocity        u [m/s], swept volume flow at rated frequency over the equivalent opening
 * @param massFlow        ṁ [kg/s]
 * @param density         ρ [kg/m³], before the opening
 * @param displacement    V_d [m³]
 * @param ratedFrequency  f_r [1/s]
 * Validity: losses small beside the pressure; refused where a suction path takes more than half of it.
 * Pitfall: a valve that is open for part of a turn has an equivalent opening far below its own.
 * Source: orifice without recovery, as in Winandy, Saavedra & Lebrun 2002, from memory.
 * Worked value: 15 m/s, 1 g/s, 5 kg/m³, 8 cm³, 50 1/s → 140.6 Pa.
 */
export function openingLoss(
  velocity: number,
  massFlow: number,
  density: number,
  displacement: number,
  ratedFrequency: number,
): number {
  return 0.5 * density * ((velocity * massFlow) / (density * displacement * ratedFrequency)) ** 2;
}

/** Pressure p_f [Pa] = p_s − Δp_s while the cylinder fills, suction pressure and loss of the suction path [Pa]. Source: definition. */
export function pressureInFilling(suctionPressure: number, loss: number): number {
  return suctionPressure - loss;
}

/** Pressure p_e [Pa] = p_d + Δp_d while it empties, discharge pressure and loss of the discharge path [Pa]. Source: definition. */
export function pressureInEmptying(dischargePressure: number, loss: number): number {
  return dischargePressure + loss;
}

/**
 * Transfer units NTU [-] between gas and wall at a flow.
 *     NTU = NTU_r [ṁ / (V_d f_r G_r)]^−0.2
 * @param referenceUnits  NTU_r [-], at G_r = `referenceSweptDensity`
 * @param massFlow        ṁ [kg/s]
 * @param displacement    V_d [m³]
 * @param ratedFrequency  f_r [1/s]
 * Validity: turbulent films, which grow as flow^0.8 while the flow takes away as flow^1.
 * Source: Winandy, Saavedra & Lebrun 2002, AU ∝ ṁ^0.8, from memory. Worked value: 0.6, 1 g/s, 8 cm³, 50 1/s → 0.6893.
 */
export function transferUnits(
  referenceUnits: number,
  massFlow: number,
  displacement: number,
  ratedFrequency: number,
): number {
  return referenceUnits * (massFlow / (displacement * ratedFrequency * referenceSweptDensity)) ** -0.2;
}

/** Effectiveness ε [-] = 1 − exp(−NTU) of gas along a wall of one temperature. Source: textbooks. Worked value: 0.6 → 0.4512. */
export function wallEffectiveness(units: number): number {
  return -Math.expm1(-units);
}

/** Exchanged capacity C [W/K] = ε ṁ c_p: effectiveness [-], flow [kg/s], heat capacity of the gas [J/(kg K)]. Source: definition of ε. */
export function exchangedCapacity(effectiveness: number, massFlow: number, heatCapacity: number): number {
  return effectiveness * massFlow * heatCapacity;
}

/** Heat Q [W] = C (T_hot − T_cold), exchanged capacity [W/K] and both temperatures [K]. Source: definition of C. */
export function heatAtWall(capacity: number, hot: number, cold: number): number {
  return capacity * (hot - cold);
}

/**
 * Pressure ratio r [-] in the leak, not below that at which its gas is choked.
 *     r = max(p_f/p_e, [2/(n+1)]^[n/(n−1)]),  n = `leakingExponent`
 * @param fillingPressure   p_f [Pa]
 * @param emptyingPressure  p_e [Pa]
 * Source: choked nozzle, as in textbooks. Worked value: 1 and 10 bar → 0.5847; 8 and 10 bar → 0.8.
 */
export function leakagePressureRatio(fillingPressure: number, emptyingPressure: number): number {
  return Math.max(fillingPressure / emptyingPressure, chokedRatio);
}

const chokedRatio = (2 / (leakingExponent + 1)) ** (leakingExponent / (leakingExponent - 1));

/**
 * Flow ṁ_l [kg/s] that leaks back to suction through a small opening.
 *     ṁ_l = λ V_d^(2/3) √{2n/(n−1) · p_e ρ (r^(2/n) − r^((n+1)/n))}
 * @param leakageRatio      λ [-], equivalent opening over V_d^(2/3)
 * @param displacement      V_d [m³]
 * @param emptyingPressure  p_e [Pa]
 * @param density           ρ [kg/m³], of the compressed gas
 * @param ratio             r [-], as leakagePressureRatio
 * Validity: perfect gas of exponent n = `leakingExponent` without friction; friction is part of λ.
 * Source: isentropic nozzle, as in textbooks; a leak as a nozzle after Winandy, Saavedra & Lebrun 2002, from memory.
 * Worked value: 1e-4, 8 cm³, 10 bar, 40 kg/m³, 0.5847 → 0.1589 g/s.
 */
export function leakageFlow(
  leakageRatio: number,
  displacement: number,
  emptyingPressure: number,
  density: number,
  ratio: number,
): number {
  const n = leakingExponent;
  const expansion = ((2 * n) / (n - 1)) * (ratio ** (2 / n) - ratio ** ((n + 1) / n));
  return leakageRatio * displacement ** (2 / 3) * Math.sqrt(emptyingPressure * density * expansion);
}

/**
 * Enthalpy h_f [J/kg] of the gas in the filling cylinder: what came in, warmed at the wall, and what leaked back.
 *     h_f = (ṁ h_1 + Q_su + ṁ_l h_e) / (ṁ + ṁ_l)
 * @param massFlow            ṁ [kg/s]
 * @param inletEnthalpy       h_1 [J/kg]
 * @param suctionHeat         Q_su [W]
 * @param leakage             ṁ_l [kg/s]
 * @param compressedEnthalpy  h_e [J/kg]
 * Source: first law. Worked value: 1 g/s, 400 kJ/kg, 10 W, 0.1 g/s, 460 kJ/kg → 414.5 kJ/kg.
 */
export function fillingEnthalpy(
  massFlow: number,
  inletEnthalpy: number,
  suctionHeat: number,
  leakage: number,
  compressedEnthalpy: number,
): number {
  return (massFlow * inletEnthalpy + suctionHeat + leakage * compressedEnthalpy) / (massFlow + leakage);
}

/**
 * Mass flow ṁ [kg/s] into the discharge line: what the stroke draws in beside the re-expanding gas, less what leaks back.
 *     ṁ = ρ_f V_d N [1 − C (ρ_e/ρ_f − 1)] − ṁ_l
 * @param fillingDensity     ρ_f [kg/m³], of the gas in the filled cylinder
 * @param compressedDensity  ρ_e [kg/m³], of the gas left in the clearance
 * @param displacement       V_d [m³]
 * @param speed              N [1/s]
 * @param clearanceRatio     C [-], clearance volume over swept volume
 * @param leakage            ṁ_l [kg/s]
 * @returns                  ṁ [kg/s]; 0 or below where re-expansion and leakage fill the stroke
 * Source: balance of the cylinder with isentropic re-expansion, as in Winandy, Saavedra & Lebrun 2002, from memory.
 * Worked value: 5 and 30 kg/m³, 8 cm³, 49 1/s, 0.03, no leakage → 1.666 g/s.
 */
export function pumpedFlow(
  fillingDensity: number,
  compressedDensity: number,
  displacement: number,
  speed: number,
  clearanceRatio: number,
  leakage: number,
): number {
  const filled = 1 - clearanceRatio * (compressedDensity / fillingDensity - 1);
  return fillingDensity * displacement * speed * filled - leakage;
}

/** Power given to the gas W_in [W] = (ṁ + ṁ_l)(h_e − h_f): flows [kg/s], enthalpies after and before compression [J/kg]. Source: first law. */
export function powerToGas(
  massFlow: number,
  leakage: number,
  compressedEnthalpy: number,
  fillingEnthalpyNow: number,
): number {
  return (massFlow + leakage) * (compressedEnthalpy - fillingEnthalpyNow);
}

/**
 * Power W_sh [W] at the shaft: what the gas gets, with losses in proportion to it and constant ones.
 *     W_sh = W_in (1 + α) + p_f V_d N
 * @param internalPower     W_in [W]
 * @param proportionalLoss  α [-]
 * @param frictionPressure  p_f [Pa], constant losses per swept volume flow
 * @param displacement      V_d [m³]
 * @param speed             N [1/s]
 * Source: Winandy, Saavedra & Lebrun 2002, W = W_in (1 + α) + W_loss, from memory.
 * Worked value: 80 W, 0.1, 25 kPa, 8 cm³, 49 1/s → 97.8 W.
 */
export function shaftPowerOf(
  internalPower: number,
  proportionalLoss: number,
  frictionPressure: number,
  displacement: number,
  speed: number,
): number {
  return internalPower * (1 + proportionalLoss) + frictionPressure * displacement * speed;
}

/** c_p [J/(kg K)] of a gas; of wet gas, and on the dew line, that of the dry gas there. */
export function heatCapacityOf(fluid: Refrigerant, gas: State): number {
  if (gas.cp !== null) return gas.cp;
  const { cp } = saturationAtPressure(fluid, gas.pressure).vapour;
  // Only at the critical point itself, where no machine settles.
  if (cp === null) throw new ConvergenceError('heat capacity of the gas', 0, [gas.pressure, gas.temperature], 1);
  return cp;
}
