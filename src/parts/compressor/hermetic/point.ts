// One running point of a hermetic machine between given suction gas and discharge pressure. One wall temperature stands for
// shell, motor and pump: gas is throttled, warmed at the wall, drawn in against what re-expands and leaks, compressed, throttled
// and cooled at the wall; the wall gets every loss and gives the rest to the air around it.
// Leaves out: oil in the flow, pulsation, pressure loss of mufflers apart from the two openings, start-up.
// Source: structure after Winandy, Saavedra & Lebrun 2002 (Int. J. Thermal Sciences 41, 157) and Cuevas & Lebrun 2009
// (Applied Thermal Engineering 29, 469), from memory of both.

import type { Refrigerant, State } from '../../../matter/refrigerants/index.ts';
import { stateInLoop } from '../../../matter/refrigerants/index.ts';
import { InputError, NoSolutionError, OutOfModelError, requirePositive } from '../../../numerics/index.ts';
import { isentropicWorkOf, overallEfficiency, pressureRatioOf, volumetricEfficiencyOf } from './efficiencies.ts';
import { heatAtWall } from './gas-path.ts';
import { type MotorPoint, motorPoint } from './motor.ts';
import { type HermeticCompressor, requireHermeticCompressor, requireSupply } from './parameters.ts';
import { compressedTo, type RunningConditions, tooHot } from './pass.ts';
import { type Settled, settledPass } from './settle.ts';
import { dischargeEnthalpyOf, shellHeatOf } from './shell.ts';

export type { RunningConditions } from './pass.ts';

/**
 * `wetDischarge`: the shell loses more heat than compression brings, so that part of the gas would condense inside it.
 * `littleFlow`: volumetric efficiency below 0.4, where the model is an extrapolation.
 */
export type CompressorWarning = 'wetDischarge' | 'littleFlow';

/** Below this volumetric efficiency the point carries the warning `littleFlow`; measured small machines show 0.55 to 0.85. */
export const littleFlowVolumetricEfficiency = 0.4;

/** Hottest wall that the model describes [K]: beyond the hottest class of insulation, 453 K (class H, from memory). */
const hottestWall = 500;

export interface HermeticPoint {
  /** ṁ [kg/s]. */
  readonly massFlow: number;
  /** W, electric power [W]. */
  readonly power: number;
  /** I [A]. */
  readonly current: number;
  /** N [1/s]. */
  readonly speed: number;
  readonly motor: MotorPoint;
  /** Power given to the gas [W]. */
  readonly internalPower: number;
  /** Power at the shaft [W]: internal power with the mechanical losses. */
  readonly shaftPower: number;
  /** T_w [K]. */
  readonly wallTemperature: number;
  /** Q_su, from the wall into the suction gas [W]. */
  readonly suctionHeat: number;
  /** Q_ex, from the discharge gas into the wall [W]; negative where the wall is hotter. */
  readonly dischargeHeat: number;
  /** Q_s, from the shell to the air around it [W]; negative where that is hotter. */
  readonly shellHeat: number;
  /** Pressure in the cylinder while it fills and while it empties [Pa]. */
  readonly fillingPressure: number;
  readonly emptyingPressure: number;
  /** Gas as it enters the cylinder, leakage mixed in. */
  readonly cylinderGas: State;
  /** Gas at the end of isentropic compression inside. */
  readonly compressedGas: State;
  /** ṁ_l, leakage back to suction [kg/s]. */
  readonly leakage: number;
  /** η_v [-]: flow over swept volume flow times density at the inlet of the shell. */
  readonly volumetricEfficiency: number;
  /** η_o [-]: isentropic power from inlet to discharge line over electric power; 0 without lift. */
  readonly overallEfficiency: number;
  /** h_2 [J/kg]. */
  readonly dischargeEnthalpy: number;
  /** T_2 [K]. */
  readonly dischargeTemperature: number;
  /** p_d / p_s [-]. */
  readonly pressureRatio: number;
  readonly suction: State;
  /** 2s: at the discharge pressure and the entropy of the suction gas. */
  readonly isentropic: State;
  readonly discharge: State;
  readonly warnings: readonly CompressorWarning[];
  /** Passes of the iteration. */
  readonly iterations: number;
}

/**
 * The machine's running point.
 * @param compressor  the machine
 * @param fluid       refrigerant in it, which need not be the one it was made for
 * @param at          suction gas, discharge pressure, surroundings and supply
 * @returns           flow, power, current, heats and both ends; ṁ h_1 + W = ṁ h_2 + Q_s exactly
 * @throws InputError for an impossible machine, wet suction ('wetSuction'), discharge below suction ('dischargeBelowSuction');
 *         NoSolutionError 'noFlow', 'motorStalls', 'chokedSuction', 'belowIsentropic'; OutOfModelError 'wallTooHot' above
 *         `hottestWall`, 'dischargeTooHot' above the equation's temperature limit; ConvergenceError; errors of the
 *         refrigerant's equation where a state leaves its limits
 * Validity: small machines with one cylinder pair or rolling piston, the suction gas over a motor in the same shell. Accuracy:
 *           not stated by its sources for one set of numbers; identification tells how far a given machine is off.
 * Pitfall: one wall temperature stands for dome, motor and cylinder head.
 * Source: structure after Winandy, Saavedra & Lebrun 2002 and Cuevas & Lebrun 2009, from memory of both.
 * Worked value: five points in tests/reference/parts/hermetic-points.json, solved a second time elsewhere.
 */
export function hermeticPoint(
  compressor: HermeticCompressor,
  fluid: Refrigerant,
  at: RunningConditions,
): HermeticPoint {
  requireHermeticCompressor(compressor);
  requireSupply('supply', at.supply);
  requireDrySuction(at.suction);
  requirePositive('surroundings', at.surroundings);
  requirePositive('dischargePressure', at.dischargePressure);
  if (at.dischargePressure < at.suction.pressure) {
    const expected = `at least the suction pressure, ${at.suction.pressure} Pa`;
    throw new InputError('dischargePressure', at.dischargePressure, expected, 'dischargeBelowSuction');
  }
  const isentropic = compressedTo(fluid, at.suction, at.dischargePressure);
  return pointOf(compressor, fluid, at, isentropic, settledPass(compressor, fluid, at, isentropic));
}

function pointOf(
  compressor: HermeticCompressor,
  fluid: Refrigerant,
  at: RunningConditions,
  isentropic: State,
  { pass, iterations }: Settled,
): HermeticPoint {
  const { suction, dischargePressure } = at;
  const { internalPower, shaftPower, suctionHeat, dischargeCapacity, compressedGas } = pass;
  const { massFlow, wallTemperature } = pass.from;
  if (!(wallTemperature <= hottestWall)) throw wallTooHot(wallTemperature);
  const motor = motorPoint(compressor, at.supply, shaftPower);
  const { power, current, speed } = motor;
  const shellHeat = shellHeatOf(compressor.shellConductance, wallTemperature, at.surroundings);
  const dischargeEnthalpy = dischargeEnthalpyOf(suction.enthalpy, power, shellHeat, massFlow);
  const discharge = dischargeState(fluid, dischargePressure, dischargeEnthalpy);
  const flowEfficiency = volumetricEfficiencyOf(massFlow, suction.density, compressor.displacement, speed);
  const isentropicWork = isentropicWorkOf(isentropic.enthalpy, suction.enthalpy);
  const efficiency = overallEfficiency(massFlow, isentropicWork, power);
  if (!(efficiency < 1)) throw belowIsentropic(efficiency);
  return {
    massFlow,
    power,
    current,
    speed,
    motor,
    internalPower,
    shaftPower,
    wallTemperature,
    suctionHeat,
    dischargeHeat: heatAtWall(dischargeCapacity, compressedGas.temperature, wallTemperature),
    shellHeat,
    fillingPressure: pass.fillingPressure,
    emptyingPressure: pass.emptyingPressure,
    cylinderGas: pass.cylinderGas,
    compressedGas,
    leakage: pass.leakage,
    volumetricEfficiency: flowEfficiency,
    overallEfficiency: efficiency,
    dischargeEnthalpy,
    dischargeTemperature: discharge.temperature,
    pressureRatio: pressureRatioOf(dischargePressure, suction.pressure),
    suction,
    isentropic,
    discharge,
    warnings: warningsOf(flowEfficiency, discharge),
    iterations,
  };
}

/** @throws OutOfModelError 'dischargeTooHot' where the gas would be hotter than the equation of state describes. */
export function dischargeState(fluid: Refrigerant, pressure: number, enthalpy: number): State {
  try {
    return stateInLoop(fluid, { pressure, enthalpy });
  } catch (error) {
    if (!(error instanceof OutOfModelError) || error.quantity !== 'enthalpy' || error.value < error.high) throw error;
    const { value, unit, low, high } = error;
    throw new OutOfModelError('dischargeEnthalpy', value, unit, low, high, 'dischargeTooHot', tooHot(fluid));
  }
}

function requireDrySuction(suction: State): void {
  const isGas = suction.phase === 'vapour' || suction.phase === 'supercritical';
  const isDrySaturated = suction.phase === 'twoPhase' && suction.quality !== null && suction.quality >= 1 - 1e-9;
  if (isGas || isDrySaturated) return;
  const received = suction.quality === null ? suction.phase : `quality ${suction.quality}`;
  throw new InputError('suction', received, 'dry gas: superheated or saturated vapour', 'wetSuction');
}

/** What is to be said of a point of this volumetric efficiency and discharge. */
export function warningsOf(flowEfficiency: number, discharge: State): readonly CompressorWarning[] {
  const warnings: CompressorWarning[] = [];
  if (discharge.phase === 'twoPhase' || discharge.phase === 'liquid') warnings.push('wetDischarge');
  if (flowEfficiency < littleFlowVolumetricEfficiency) warnings.push('littleFlow');
  return warnings;
}

function wallTooHot(temperature: number): OutOfModelError {
  const reason = 'windings and oil do not stand more';
  return new OutOfModelError('wallTemperature', temperature, 'K', 0, hottestWall, 'wallTooHot', reason);
}

export function belowIsentropic(efficiency: number): NoSolutionError {
  const message = `The machine would need ${(1 / efficiency).toPrecision(3)} times the least power that physics allows of gas that is not cooled.`;
  return new NoSolutionError(message, 'overall efficiency below 1', 'belowIsentropic');
}
