// One running point of a hermetic machine between given suction gas and discharge pressure: flow from displacement and
// re-expansion, power from constant plus proportional losses, the discharge enthalpy from the energy balance of the shell.
// Leaves out: valves and leakage as such, motor curve, oil in the flow, suction heating that varies with load.

import type { Refrigerant, State } from '../../matter/refrigerants/index.ts';
import { stateInLoop } from '../../matter/refrigerants/index.ts';
import { InputError, NoSolutionError, OutOfModelError, requirePositive } from '../../numerics/index.ts';
import type { CompressorModel } from './model.ts';
import { requireCompressorModel } from './model.ts';

/**
 * `wetDischarge`: the shell loses more heat than compression brings, so that part of the gas would condense inside it.
 * `littleFlow`: volumetric efficiency below 0.4, where the re-expansion model is an extrapolation.
 */
export type CompressorWarning = 'wetDischarge' | 'littleFlow';

/** Below this volumetric efficiency the point carries the warning `littleFlow`; measured small machines show 0.55 to 0.85. */
export const littleFlowVolumetricEfficiency = 0.4;

export interface CompressorPoint {
  /** ṁ [kg/s]. */
  readonly massFlow: number;
  /** W, electric power [W]. */
  readonly power: number;
  /** Part of W proportional to the isentropic power [W]. */
  readonly compressionPower: number;
  /** Constant part of W [W]. */
  readonly frictionPower: number;
  /** Q_s, heat that leaves through the shell [W]. */
  readonly shellHeat: number;
  /** η_v [-]. */
  readonly volumetricEfficiency: number;
  /** η_o, isentropic power over electric power [-]. */
  readonly overallEfficiency: number;
  /** h_2s [J/kg]. */
  readonly isentropicDischargeEnthalpy: number;
  /** h_2 [J/kg]. */
  readonly dischargeEnthalpy: number;
  /** T_2 [K]. */
  readonly dischargeTemperature: number;
  /** p_d / p_s [-]. */
  readonly pressureRatio: number;
  readonly suction: State;
  readonly discharge: State;
  readonly warnings: readonly CompressorWarning[];
}

/** Pressure ratio r [-] = p_d / p_s of absolute pressures [Pa]. */
export function pressureRatioOf(dischargePressure: number, suctionPressure: number): number {
  return dischargePressure / suctionPressure;
}

/** Isentropic work Δh_s [J/kg] = h_2s − h_1. */
export function isentropicWorkOf(isentropicDischargeEnthalpy: number, inletEnthalpy: number): number {
  return isentropicDischargeEnthalpy - inletEnthalpy;
}

/** Heat through the shell Q_s [W] = f_s W. */
export function shellHeatOf(shellHeatShare: number, power: number): number {
  return shellHeatShare * power;
}

/**
 * Volumetric efficiency η_v of a machine with clearance: flow at the inlet over swept volume flow.
 *     η_v = f · {1 − C · [(p_d/p_s)^(1/n) − 1]}
 * @param fillingFactor         f [-], what valves, leakage and suction heating leave at pressure ratio 1
 * @param clearanceRatio        C [-], clearance volume over swept volume
 * @param reexpansionExponent   n [-], polytropic exponent of the gas left in the clearance
 * @param pressureRatio         p_d/p_s [-], absolute pressures, 1 or above
 * @returns                     η_v [-]
 * Validity: C 0.02 to 0.05 and n 1.05 to 1.15 are usual of small reciprocating machines.
 * Pitfalls: f also holds the loss by suction heating, which in truth grows as the flow falls. Flow follows the density at
 *           the inlet in full; measured machines follow about three quarters of a change of superheat (Dabiri & Rice 1981,
 *           ASHRAE Trans. 87(2), 771, factor from memory): about 4 % less flow at 6 K than this, if f was found at 55 K.
 * @throws NoSolutionError code 'noFlow' where re-expansion fills the whole stroke; its limit is the largest pressure ratio.
 * Source: clearance volumetric efficiency as in textbooks of refrigeration.
 * Worked value: f = 1, C = 0.03, n = 1.1, ratio 8 → 0.8313.
 */
export function volumetricEfficiency(
  fillingFactor: number,
  clearanceRatio: number,
  reexpansionExponent: number,
  pressureRatio: number,
): number {
  const efficiency = fillingFactor * (1 - clearanceRatio * (pressureRatio ** (1 / reexpansionExponent) - 1));
  if (!(efficiency > 0)) {
    const largest = (1 + 1 / clearanceRatio) ** reexpansionExponent;
    throw new NoSolutionError(
      `At a pressure ratio of ${pressureRatio.toPrecision(4)} the gas left in the clearance fills the whole stroke: no flow.`,
      `pressure ratio below ${largest.toPrecision(4)} with a clearance ratio of ${clearanceRatio}`,
      'noFlow',
    );
  }
  return efficiency;
}

/**
 * Mass flow ṁ [kg/s] = η_v · V_d · N · ρ_s: volumetric efficiency [-], displacement per revolution [m³], speed [1/s],
 * density of the gas at the inlet of the shell [kg/m³].
 */
export function compressorMassFlow(efficiency: number, displacement: number, speed: number, density: number): number {
  return efficiency * displacement * speed * density;
}

/**
 * Electric power W of the machine: constant plus proportional losses.
 *     W = ṁ · Δh_s / η_c + p_f · V_d · N
 * @param massFlow                ṁ [kg/s]
 * @param isentropicWork          Δh_s = h_2s − h_1 [J/kg]
 * @param compressionEfficiency   η_c [-]
 * @param frictionPressure        p_f [Pa], constant losses per swept volume flow
 * @param displacement            V_d [m³]
 * @param speed                   N [1/s]
 * @returns                       W [W]
 * Validity: between the conditions that fixed η_c and p_f; the four rows of F. Fortkamp 2022 (R600a, pressure ratio 4 to 13)
 *           are met within 2.3 % by one pair fitted to all, and within 6 % by the pair fixed by the outer two.
 * Pitfall: the motor's own curve and voltage are not in it; starting current even less.
 * Source: structure W = W_in (1 + α) + W_loss after Winandy, Saavedra & Lebrun 2002 (Int. J. Thermal Sciences 41), from memory.
 * Worked value: 1e-3 kg/s, 60 kJ/kg, 0.6, 40 kPa, 10 cm³, 50 1/s → 120 W.
 */
export function compressorPower(
  massFlow: number,
  isentropicWork: number,
  compressionEfficiency: number,
  frictionPressure: number,
  displacement: number,
  speed: number,
): number {
  return (massFlow * isentropicWork) / compressionEfficiency + frictionPressure * displacement * speed;
}

/**
 * Enthalpy h_2 [J/kg] in the discharge line from the energy balance of the shell.
 *     h_2 = h_1 + (1 − f_s) · W / ṁ
 * with inlet enthalpy h_1 [J/kg], shell heat share f_s [-], power W [W], mass flow ṁ [kg/s]. Worked value: 400 kJ/kg,
 * 0.5, 120 W, 1 g/s → 460 kJ/kg. Source: first law.
 */
export function dischargeEnthalpy(
  inletEnthalpy: number,
  shellHeatShare: number,
  power: number,
  massFlow: number,
): number {
  return inletEnthalpy + ((1 - shellHeatShare) * power) / massFlow;
}

/** Overall efficiency η_o [-] = ṁ · Δh_s / W: isentropic power over electric power. */
export function overallEfficiency(massFlow: number, isentropicWork: number, power: number): number {
  return (massFlow * isentropicWork) / power;
}

/**
 * The machine's running point.
 * @param model   the eight numbers of the machine
 * @param fluid   refrigerant in it, which need not be the one it was made for
 * @param at      state of the gas at the inlet of the shell, and discharge pressure p_d [Pa]
 * @returns       flow, power, efficiencies, shell heat and both ends; ṁ h_1 + W = ṁ h_2 + Q_s exactly
 * @throws InputError for an impossible model, wet suction ('wetSuction'), discharge below suction ('dischargeBelowSuction');
 *         NoSolutionError 'noFlow'; OutOfModelError 'dischargeTooHot' above the equation's temperature limit; errors of the refrigerant's equation where a state leaves its limits
 * Pitfalls: a machine made for another fluid keeps its displacement and clearance, but its motor may be overloaded and its
 *           friction pressure was estimated for the fluid it was made for.
 * Source: the four functions above.
 */
export function compressorPoint(
  model: CompressorModel,
  fluid: Refrigerant,
  at: { readonly suction: State; readonly dischargePressure: number },
): CompressorPoint {
  requireCompressorModel(model);
  const { suction, dischargePressure } = at;
  requireDrySuction(suction);
  requirePositive('dischargePressure', dischargePressure);
  if (dischargePressure < suction.pressure) {
    const expected = `at least the suction pressure, ${suction.pressure} Pa`;
    throw new InputError('dischargePressure', dischargePressure, expected, 'dischargeBelowSuction');
  }
  const pressureRatio = pressureRatioOf(dischargePressure, suction.pressure);
  const { displacement, speed, fillingFactor, clearanceRatio, reexpansionExponent } = model;
  const flowEfficiency = volumetricEfficiency(fillingFactor, clearanceRatio, reexpansionExponent, pressureRatio);
  const massFlow = compressorMassFlow(flowEfficiency, displacement, speed, suction.density);
  const isentropicDischargeEnthalpy = isentropicEnthalpy(fluid, suction, dischargePressure);
  const isentropicWork = isentropicWorkOf(isentropicDischargeEnthalpy, suction.enthalpy);
  const { compressionEfficiency, frictionPressure, shellHeatShare } = model;
  const power = compressorPower(massFlow, isentropicWork, compressionEfficiency, frictionPressure, displacement, speed);
  const enthalpy = dischargeEnthalpy(suction.enthalpy, shellHeatShare, power, massFlow);
  const discharge = dischargeState(fluid, dischargePressure, enthalpy);
  return {
    massFlow,
    power,
    compressionPower: (massFlow * isentropicWork) / compressionEfficiency,
    frictionPower: frictionPressure * displacement * speed,
    shellHeat: shellHeatOf(shellHeatShare, power),
    volumetricEfficiency: flowEfficiency,
    overallEfficiency: power > 0 ? overallEfficiency(massFlow, isentropicWork, power) : 0,
    isentropicDischargeEnthalpy,
    dischargeEnthalpy: enthalpy,
    dischargeTemperature: discharge.temperature,
    pressureRatio,
    suction,
    discharge,
    warnings: warningsOf(flowEfficiency, discharge),
  };
}

/** h_2s [J/kg]; at pressure ratio 1 the inlet enthalpy itself, where a flash would only add rounding. */
function isentropicEnthalpy(fluid: Refrigerant, suction: State, dischargePressure: number): number {
  if (dischargePressure === suction.pressure) return suction.enthalpy;
  return stateInLoop(fluid, { pressure: dischargePressure, entropy: suction.entropy }).enthalpy;
}

/** @throws OutOfModelError 'dischargeTooHot' where the gas would be hotter than the equation of state describes. */
function dischargeState(fluid: Refrigerant, pressure: number, enthalpy: number): State {
  try {
    return stateInLoop(fluid, { pressure, enthalpy });
  } catch (error) {
    if (!(error instanceof OutOfModelError) || error.quantity !== 'enthalpy' || error.value < error.high) throw error;
    const { value, unit, low, high } = error;
    throw new OutOfModelError('dischargeEnthalpy', value, unit, low, high, 'dischargeTooHot');
  }
}

function requireDrySuction(suction: State): void {
  const isGas = suction.phase === 'vapour' || suction.phase === 'supercritical';
  const isDrySaturated = suction.phase === 'twoPhase' && suction.quality !== null && suction.quality >= 1 - 1e-9;
  if (isGas || isDrySaturated) return;
  const received = suction.quality === null ? suction.phase : `quality ${suction.quality}`;
  throw new InputError('suction', received, 'dry gas: superheated or saturated vapour', 'wetSuction');
}

function warningsOf(flowEfficiency: number, discharge: State): readonly CompressorWarning[] {
  const warnings: CompressorWarning[] = [];
  if (discharge.phase === 'twoPhase' || discharge.phase === 'liquid') warnings.push('wetDischarge');
  if (flowEfficiency < littleFlowVolumetricEfficiency) warnings.push('littleFlow');
  return warnings;
}
