// One running point of a hermetic machine between given suction gas and discharge pressure. One wall temperature stands for
// shell, motor and pump: gas is throttled, warmed at the wall, drawn in against what re-expands and leaks, compressed, throttled
// and cooled at the wall; the wall gets every loss and gives the rest to the air around it.
// Leaves out: oil in the flow, pulsation, pressure loss of mufflers apart from the two openings, start-up.
// Source: structure after Winandy, Saavedra & Lebrun 2002 (Int. J. Thermal Sciences 41, 157) and Cuevas & Lebrun 2009
// (Applied Thermal Engineering 29, 469), from memory of both.

import type { Refrigerant, State } from '../../../matter/refrigerants/index.ts';
import { stateInLoop } from '../../../matter/refrigerants/index.ts';
import {
  ConvergenceError,
  InputError,
  NoSolutionError,
  OutOfModelError,
  requirePositive,
} from '../../../numerics/index.ts';
import { type MotorPoint, motorPoint } from './motor.ts';
import {
  type HermeticCompressor,
  referenceSweptDensity,
  requireHermeticCompressor,
  requireSupply,
  type Supply,
} from './parameters.ts';

/** Between what, in what, and on which mains the machine runs. */
export interface RunningConditions {
  /** Gas at the inlet of the shell; superheated or saturated vapour. */
  readonly suction: State;
  /** p_d [Pa], in the discharge line. */
  readonly dischargePressure: number;
  /** T_amb, of the air around the shell [K]. */
  readonly surroundings: number;
  readonly supply: Supply;
}

/**
 * `wetDischarge`: the shell loses more heat than compression brings, so that part of the gas would condense inside it.
 * `littleFlow`: volumetric efficiency below 0.4, where the model is an extrapolation.
 */
export type CompressorWarning = 'wetDischarge' | 'littleFlow';

/** Below this volumetric efficiency the point carries the warning `littleFlow`; measured small machines show 0.55 to 0.85. */
export const littleFlowVolumetricEfficiency = 0.4;

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
  /** h_2s [J/kg], isentropic from the inlet of the shell to the discharge line. */
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
  /** Passes of the iteration. */
  readonly iterations: number;
}

/** What one pass is made from, and what the next is made from; at the solution both are the same. */
interface Unknowns {
  readonly wallTemperature: number;
  readonly massFlow: number;
  readonly shaftPower: number;
  readonly compressedEnthalpy: number;
  readonly compressedDensity: number;
}

interface Pass {
  readonly next: Unknowns;
  readonly fillingPressure: number;
  readonly emptyingPressure: number;
  readonly cylinderGas: State;
  readonly compressedGas: State;
  readonly leakage: number;
  readonly internalPower: number;
  readonly motor: MotorPoint;
  readonly suctionHeat: number;
  readonly dischargeHeat: number;
  readonly shellHeat: number;
}

interface Settled {
  readonly pass: Pass;
  readonly iterations: number;
}

const tolerance = 1e-11;
const mostPasses = 80;

/**
 * The machine's running point.
 * @param compressor  the machine
 * @param fluid       refrigerant in it, which need not be the one it was made for
 * @param at          suction gas, discharge pressure, surroundings and supply
 * @returns           flow, power, current, heats and both ends; ṁ h_1 + W = ṁ h_2 + Q_s exactly
 * @throws InputError for an impossible machine, wet suction ('wetSuction'), discharge below suction ('dischargeBelowSuction');
 *         NoSolutionError 'noFlow', 'motorStalls', 'chokedSuction'; OutOfModelError 'dischargeTooHot' above the equation's
 *         temperature limit; ConvergenceError; errors of the refrigerant's equation where a state leaves its limits
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
  return pointOf(compressor, fluid, at, settledPass(compressor, fluid, at));
}

/** Passes until nothing moves; each step along the secant of the last two (Anderson's method of depth one). */
function settledPass(compressor: HermeticCompressor, fluid: Refrigerant, at: RunningConditions): Settled {
  const cp = heatCapacityOf(fluid, at.suction);
  let before: { readonly image: readonly number[]; readonly residual: readonly number[] } | undefined;
  let unknowns = firstGuess(compressor, fluid, at);
  let residual = Number.POSITIVE_INFINITY;
  for (let iterations = 1; iterations <= mostPasses; iterations++) {
    const pass = onePass(compressor, fluid, at, cp, unknowns);
    const image = vectorOf(pass.next);
    const from = vectorOf(unknowns);
    const moved = image.map((value, index) => value - from[index]!);
    residual = Math.max(...moved.map((value, index) => Math.abs(value / image[index]!)));
    if (residual < tolerance) return { pass, iterations };
    const step = before === undefined ? image : alongSecant(image, moved, before);
    before = { image, residual: moved };
    unknowns = unknownsOf(step.every((value) => value > 0) ? step : image);
  }
  throw new ConvergenceError(
    'running point of the compressor',
    mostPasses,
    [at.suction.pressure, at.dischargePressure],
    residual,
  );
}

function alongSecant(
  image: readonly number[],
  moved: readonly number[],
  before: { readonly image: readonly number[]; readonly residual: readonly number[] },
): number[] {
  let above = 0;
  let below = 0;
  moved.forEach((value, index) => {
    const scale = 1 / image[index]! ** 2;
    const change = value - before.residual[index]!;
    above += change * value * scale;
    below += change * change * scale;
  });
  const share = below > 0 ? above / below : 0;
  return image.map((value, index) => value - share * (value - before.image[index]!));
}

function vectorOf(unknowns: Unknowns): readonly number[] {
  const { wallTemperature, massFlow, shaftPower, compressedEnthalpy, compressedDensity } = unknowns;
  return [wallTemperature, massFlow, shaftPower, compressedEnthalpy, compressedDensity];
}

function unknownsOf(values: readonly number[]): Unknowns {
  const [wallTemperature, massFlow, shaftPower, compressedEnthalpy, compressedDensity] = values as [
    number,
    number,
    number,
    number,
    number,
  ];
  return { wallTemperature, massFlow, shaftPower, compressedEnthalpy, compressedDensity };
}

/** A machine that fills to 70 % and whose wall is 40 K above its surroundings. */
function firstGuess(compressor: HermeticCompressor, fluid: Refrigerant, at: RunningConditions): Unknowns {
  const { suction, dischargePressure, surroundings, supply } = at;
  const compressed = compressedFrom(fluid, suction, dischargePressure);
  const massFlow = 0.7 * suction.density * compressor.displacement * supply.frequency;
  const friction = compressor.frictionPressure * compressor.displacement * supply.frequency;
  return {
    wallTemperature: surroundings + 40,
    massFlow,
    shaftPower: Math.max(
      1e-6,
      massFlow * (compressed.enthalpy - suction.enthalpy) * (1 + compressor.proportionalLoss) + friction,
    ),
    compressedEnthalpy: compressed.enthalpy,
    compressedDensity: compressed.density,
  };
}

function onePass(
  compressor: HermeticCompressor,
  fluid: Refrigerant,
  at: RunningConditions,
  cp: number,
  from: Unknowns,
): Pass {
  const { suction, dischargePressure, surroundings, supply } = at;
  const { displacement, clearanceRatio, proportionalLoss, frictionPressure, shellConductance } = compressor;
  const motor = motorPoint(compressor, supply, from.shaftPower);
  const swept = displacement * motor.speed;
  const fillingPressure = suction.pressure - openingLoss(compressor, 'suctionVelocity', from.massFlow, suction.density);
  if (!(fillingPressure > 0.5 * suction.pressure)) throw choked(suction.pressure);
  const emptyingPressure =
    dischargePressure + openingLoss(compressor, 'dischargeVelocity', from.massFlow, from.compressedDensity);
  const suctionCapacity = exchanged(compressor, 'suctionHeatingUnits', from.massFlow) * from.massFlow * cp;
  const suctionHeat = suctionCapacity * (from.wallTemperature - suction.temperature);
  const leakage = leakageFlow(compressor, fillingPressure, emptyingPressure, from.compressedDensity);
  const warmed = suction.enthalpy + suctionHeat / from.massFlow;
  const mixed = (from.massFlow * warmed + leakage * from.compressedEnthalpy) / (from.massFlow + leakage);
  const cylinderGas = stateInLoop(fluid, { pressure: fillingPressure, enthalpy: mixed });
  const compressedGas = compressedFrom(fluid, cylinderGas, emptyingPressure);
  const filled = 1 - clearanceRatio * (compressedGas.density / cylinderGas.density - 1);
  const massFlow = cylinderGas.density * swept * filled - leakage;
  if (!(massFlow > 0)) throw noFlow(dischargePressure / suction.pressure);
  const internalPower = (massFlow + leakage) * (compressedGas.enthalpy - cylinderGas.enthalpy);
  const shaftPower = internalPower * (1 + proportionalLoss) + frictionPressure * swept;
  const losses = shaftPower + motor.losses - internalPower;
  const dischargeCapacity =
    exchanged(compressor, 'dischargeCoolingUnits', massFlow) * massFlow * heatCapacityOf(fluid, compressedGas);
  // The wall's balance, losses + Q_ex = Q_su + Q_amb, solved for its temperature with everything else as in this pass.
  const conductance = shellConductance + suctionCapacity + dischargeCapacity;
  const gains = losses + shellConductance * surroundings + suctionCapacity * suction.temperature;
  const wallTemperature = (gains + dischargeCapacity * compressedGas.temperature) / conductance;
  return {
    next: {
      wallTemperature,
      massFlow,
      shaftPower,
      compressedEnthalpy: compressedGas.enthalpy,
      compressedDensity: compressedGas.density,
    },
    fillingPressure,
    emptyingPressure,
    cylinderGas,
    compressedGas,
    leakage,
    internalPower,
    motor,
    suctionHeat,
    dischargeHeat: dischargeCapacity * (compressedGas.temperature - wallTemperature),
    shellHeat: shellConductance * (wallTemperature - surroundings),
  };
}

/** Pressure lost in an opening [Pa]: ½ ρ v², with v the velocity of this flow through the equivalent opening. */
function openingLoss(
  compressor: HermeticCompressor,
  opening: 'suctionVelocity' | 'dischargeVelocity',
  massFlow: number,
  density: number,
): number {
  const { displacement, ratedSupply } = compressor;
  const velocity = (compressor[opening] * massFlow) / (density * displacement * ratedSupply.frequency);
  return 0.5 * density * velocity ** 2;
}

/** ε [-] = 1 − exp(−NTU), NTU = NTU_r (G/G_r)^−0.2 with G the mass flow per swept volume flow: films grow as flow^0.8. */
function exchanged(
  compressor: HermeticCompressor,
  units: 'suctionHeatingUnits' | 'dischargeCoolingUnits',
  massFlow: number,
): number {
  const sweptDensity = massFlow / (compressor.displacement * compressor.ratedSupply.frequency);
  return -Math.expm1(-compressor[units] * (sweptDensity / referenceSweptDensity) ** -0.2);
}

/** Flow back to suction [kg/s] through a small opening in which the gas is choked where the pressures differ enough. */
function leakageFlow(compressor: HermeticCompressor, low: number, high: number, density: number): number {
  const area = compressor.leakageRatio * compressor.displacement ** (2 / 3);
  const ratio = Math.max(low / high, criticalRatio);
  const exponent = 2 / leakingExponent;
  const square = (ratio ** exponent - ratio ** (exponent / 2 + 1)) * ((2 * leakingExponent) / (leakingExponent - 1));
  return area * Math.sqrt(high * density * Math.max(0, square));
}

/** Exponent of the gas in the leak, and the pressure ratio at which it is choked; small machines' fluids lie near. */
const leakingExponent = 1.1;
const criticalRatio = (2 / (leakingExponent + 1)) ** (leakingExponent / (leakingExponent - 1));

/** Gas after isentropic compression; without lift the gas itself, where a flash would only add rounding. */
function compressedFrom(fluid: Refrigerant, gas: State, pressure: number): State {
  if (pressure === gas.pressure) return gas;
  return stateInLoop(fluid, { pressure, entropy: gas.entropy });
}

/** c_p [J/(kg K)] of the gas; on the dew line, where none is defined, the mean over the next kelvins. */
function heatCapacityOf(fluid: Refrigerant, gas: State): number {
  if (gas.cp !== null) return gas.cp;
  const warmer = stateInLoop(fluid, { pressure: gas.pressure, temperature: gas.temperature + meanOver });
  return (warmer.enthalpy - gas.enthalpy) / meanOver;
}

/** [K] */
const meanOver = 5;

function pointOf(
  compressor: HermeticCompressor,
  fluid: Refrigerant,
  at: RunningConditions,
  settled: Settled,
): HermeticPoint {
  const { suction, dischargePressure } = at;
  const { pass, iterations } = settled;
  const { motor, shellHeat } = pass;
  const { massFlow, shaftPower, wallTemperature } = pass.next;
  const isentropic = compressedFrom(fluid, suction, dischargePressure).enthalpy;
  const dischargeEnthalpy = suction.enthalpy + (motor.power - shellHeat) / massFlow;
  const discharge = dischargeState(fluid, dischargePressure, dischargeEnthalpy);
  const flowEfficiency = massFlow / (suction.density * compressor.displacement * motor.speed);
  const { fillingPressure, emptyingPressure, cylinderGas, compressedGas, leakage, internalPower } = pass;
  const { suctionHeat, dischargeHeat } = pass;
  return {
    massFlow,
    power: motor.power,
    current: motor.current,
    speed: motor.speed,
    motor,
    internalPower,
    shaftPower,
    wallTemperature,
    suctionHeat,
    dischargeHeat,
    shellHeat,
    fillingPressure,
    emptyingPressure,
    cylinderGas,
    compressedGas,
    leakage,
    volumetricEfficiency: flowEfficiency,
    overallEfficiency: (massFlow * (isentropic - suction.enthalpy)) / motor.power,
    isentropicDischargeEnthalpy: isentropic,
    dischargeEnthalpy,
    dischargeTemperature: discharge.temperature,
    pressureRatio: dischargePressure / suction.pressure,
    suction,
    discharge,
    warnings: warningsOf(flowEfficiency, discharge),
    iterations,
  };
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

function noFlow(pressureRatio: number): NoSolutionError {
  return new NoSolutionError(
    `At a pressure ratio of ${pressureRatio.toPrecision(4)} what re-expands and leaks fills the whole stroke: no flow.`,
    'a lower pressure ratio, a smaller clearance or less leakage',
    'noFlow',
  );
}

function choked(pressure: number): NoSolutionError {
  return new NoSolutionError(
    `The suction path would take more than half of the suction pressure of ${pressure.toPrecision(4)} Pa.`,
    'less flow, or a wider suction path',
    'chokedSuction',
  );
}
