// Where a loop of a given compressor settles when both exchangers hold a stated approach: evaporating and condensing from
// source and water temperature, the compressor's running point, five states, heats, and an energy account that must close.
// Leaves out: pressure drop, exchangers of given size (approaches are inputs), metering device, charge, transients.

import {
  glideOf,
  type Refrigerant,
  type Saturation,
  type State,
  saturationAtBubbleTemperature,
  saturationAtDewTemperature,
  stateInLoop,
} from '../matter/refrigerants/index.ts';
import {
  ConvergenceError,
  InputError,
  NoSolutionError,
  OutOfModelError,
  requireNonNegative,
  requirePositive,
} from '../numerics/index.ts';
import {
  type CompressorWarning,
  type RunningMachine,
  type RunningPoint,
  runningPoint,
} from '../parts/compressor/index.ts';
import type { CyclePoint, CyclePointName } from './cycle-result.ts';
import { coefficientOfPerformance, energyAccountResidual, streamPower } from './energy.ts';
import { onTheLine } from './on-the-line.ts';

/** Temperatures in K, differences in K. */
export interface OperatingPointInput {
  readonly fluid: Refrigerant;
  readonly machine: RunningMachine;
  /** T_source, of the air or water the evaporator takes heat from, where it enters. */
  readonly sourceTemperature: number;
  /** T_water, of the water that is to be kept warm. */
  readonly waterTemperature: number;
  /** Source minus evaporating dew temperature. */
  readonly evaporatorApproach: number;
  /** Condensing bubble minus water temperature: of a blend the coldest that it condenses at, and so the nearest to the water. */
  readonly condenserApproach: number;
  /** Gas at the compressor inlet above the evaporating dew temperature, gained usefully in the evaporator; 0 is quality 1. */
  readonly superheat: number;
  /** Liquid below the condensing bubble temperature. */
  readonly subcooling: number;
  /** p_max [Pa], absolute: what a valve before the compressor lets through at most; absent where there is none. */
  readonly suctionPressureLimit?: number;
}

/** `smallLift`: condensing is less than 15 K above evaporating, where small machines and metering devices are not described. */
export type OperatingWarning = CompressorWarning | 'smallLift';

/** Below this lift the point carries the warning `smallLift` [K]; common practice, no source. */
export const smallLift = 15;

/** Dew temperature [K], pressure [Pa] and both sides of the dome at that pressure; bubble temperature and glide [K]. */
export interface SaturationLevel extends Saturation {
  readonly temperature: number;
  /** Of a single substance the same as the dew temperature, and no glide. */
  readonly bubbleTemperature: number;
  readonly glide: number;
  readonly pressure: number;
}

export interface OperatingPoint {
  /** Dew temperature [K] and pressure [Pa]. */
  readonly evaporating: SaturationLevel;
  readonly condensing: SaturationLevel;
  /** The five states, in the order of CyclePointName; the compressor outlet is the real one. */
  readonly points: readonly [CyclePoint, CyclePoint, CyclePoint, CyclePoint, CyclePoint];
  /** ṁ [kg/s]. */
  readonly massFlow: number;
  /** W, electricity into the compressor [W]. */
  readonly compressorPower: number;
  /** Q_shell, from the shell to where it stands [W]. */
  readonly shellHeat: number;
  /** Q_c, out of the refrigerant in the condenser [W]. */
  readonly heatDelivered: number;
  /** Q_e, into the refrigerant in the evaporator [W]. */
  readonly heatTaken: number;
  /** Q_c / W. */
  readonly compressorCop: number;
  readonly volumetricEfficiency: number;
  /** Isentropic power over electric power. */
  readonly overallEfficiency: number;
  readonly pressureRatio: number;
  /** Condensing minus evaporating temperature [K]. */
  readonly lift: number;
  readonly dischargeTemperature: number;
  /** (Q_e + W − Q_c − Q_shell) / Q_c; below 1e-9 or there is no result. */
  readonly energyAccountResidual: number;
  readonly compressor: RunningPoint;
  readonly warnings: readonly OperatingWarning[];
}

/**
 * Operating point of a loop at stated approach temperatures.
 *     T_e = T_source − ΔT_e,  T_c,bubble = T_water + ΔT_c,  Q_c = m (h2 − h3),  Q_e = m (h1 − h4),  h2 = h1 + (W − Q_shell)/m
 * A valve that limits the suction pressure throttles the gas between evaporator and compressor at constant enthalpy.
 * @param input  see OperatingPointInput; approaches above 0, superheat and subcooling 0 or above
 * @returns      temperatures, pressures, states, flow, heats, power and how well the account closes
 * @throws InputError naming the field; NoSolutionError 'noLift' where condensing is not above evaporating, 'noHeat' where
 *         the shell loses so much that the condenser gives none; OutOfModelError 'condensingAboveCritical'; the compressor's
 *         own errors; ConvergenceError if the energy account does not close to 1e-9.
 * Pitfall: the approaches are taken as constant; in truth they grow with the heat exchanged. Of a blend each approach is the
 *          smallest difference that boiling or condensing meets: the mean one is larger by about half the glide.
 * Source: steady-flow energy equation of each part; the compressor's model states its own.
 */
export function operatingPoint(input: OperatingPointInput): OperatingPoint {
  const { fluid, machine } = input;
  const { evaporating, condensing } = levelsFromApproaches(input);
  const suction = throttledGas(fluid, suctionGas(fluid, evaporating, input.superheat), input.suctionPressureLimit);
  const liquid = condenserLiquid(fluid, condensing, input.subcooling);
  const dischargePressure = condensing.vapour.pressure;
  const compressor = runningPoint(machine, fluid, { suction, dischargePressure });
  const { massFlow, power, shellHeat, discharge } = compressor;
  const expanded = stateInLoop(fluid, { pressure: evaporating.vapour.pressure, enthalpy: liquid.enthalpy });

  if (!(discharge.enthalpy > liquid.enthalpy)) {
    const message = 'The shell loses so much heat that nothing is left for the condenser.';
    throw new NoSolutionError(message, `discharge enthalpy ${discharge.enthalpy} J/kg`, 'noHeat');
  }
  const heatDelivered = streamPower(massFlow, discharge.enthalpy, liquid.enthalpy);
  const heatTaken = streamPower(massFlow, suction.enthalpy, expanded.enthalpy);
  const residual = energyAccountResidual(heatTaken, power, heatDelivered, shellHeat);
  if (!(Math.abs(residual) < 1e-9)) {
    throw new ConvergenceError('energy account of the operating point', 1, [heatTaken, power], residual);
  }
  const lift = condensing.vapour.temperature - evaporating.vapour.temperature;
  return {
    evaporating: levelOf(evaporating),
    condensing: levelOf(condensing),
    points: [
      named('compressorInlet', suction),
      named('compressorOutletIsentropic', compressor.isentropic),
      named('compressorOutlet', discharge),
      named('condenserOutlet', liquid),
      named('evaporatorInlet', expanded),
    ],
    massFlow,
    compressorPower: power,
    shellHeat,
    heatDelivered,
    heatTaken,
    compressorCop: coefficientOfPerformance(heatDelivered, power),
    volumetricEfficiency: compressor.volumetricEfficiency,
    overallEfficiency: compressor.overallEfficiency,
    pressureRatio: compressor.pressureRatio,
    lift,
    dischargeTemperature: discharge.temperature,
    energyAccountResidual: residual,
    compressor,
    warnings: lift < smallLift ? [...compressor.warnings, 'smallLift'] : compressor.warnings,
  };
}

/** T_e = T_source − ΔT_e [K], of a source at T_source [K] and an approach ΔT_e [K]. Source: definition of the approach. */
export function evaporatingTemperature(sourceTemperature: number, approach: number): number {
  requirePositive('sourceTemperature', sourceTemperature);
  requirePositive('evaporatorApproach', approach);
  return sourceTemperature - approach;
}

/** T_c = T_water + ΔT_c [K], of a blend its bubble temperature; water at T_water [K], approach ΔT_c [K]. Source: definition of the approach. */
export function condensingTemperature(waterTemperature: number, approach: number): number {
  requirePositive('waterTemperature', waterTemperature);
  requirePositive('condenserApproach', approach);
  return waterTemperature + approach;
}

/** T_1 = T_e + ΔT_sh [K], of gas at a superheat ΔT_sh [K] above the evaporating dew temperature T_e [K]. Source: definition. */
export function suctionTemperature(evaporating: number, superheat: number): number {
  return evaporating + superheat;
}

/** T_3 = T_b − ΔT_sc [K], of liquid at a subcooling ΔT_sc [K] below the condensing bubble temperature T_b [K]. Source: definition. */
export function liquidTemperature(bubble: number, subcooling: number): number {
  return bubble - subcooling;
}

/** p_1 = min(p_e, p_max) [Pa], behind a valve that lets through at most p_max [Pa] of an evaporating pressure p_e [Pa]. Source: definition of the valve. */
export function limitedPressure(evaporatingPressure: number, limit: number): number {
  return Math.min(evaporatingPressure, limit);
}

function levelsFromApproaches(input: OperatingPointInput): { evaporating: Saturation; condensing: Saturation } {
  const { fluid, superheat, subcooling } = input;
  requireNonNegative('superheat', superheat);
  requireNonNegative('subcooling', subcooling);
  const evaporating = evaporatingTemperature(input.sourceTemperature, input.evaporatorApproach);
  const condensing = condensingTemperature(input.waterTemperature, input.condenserApproach);
  const { temperatureMin } = fluid.limits;
  if (!(evaporating >= temperatureMin)) {
    throw new OutOfModelError('evaporating temperature', evaporating, 'K', temperatureMin, fluid.critical.temperature);
  }
  if (!(condensing < fluid.critical.temperature)) {
    const high = fluid.critical.temperature;
    const code = 'condensingAboveCritical';
    throw new OutOfModelError('condensing temperature', condensing, 'K', temperatureMin, high, code);
  }
  const low = saturationAtDewTemperature(fluid, evaporating);
  const high = condensing > temperatureMin ? saturationAtBubbleTemperature(fluid, condensing) : undefined;
  if (high === undefined || !(high.vapour.pressure > low.vapour.pressure)) {
    const message = `Condensing at ${condensing} K is not above evaporating at ${evaporating} K: nothing to pump.`;
    throw new NoSolutionError(message, 'condensing above evaporating temperature', 'noLift');
  }
  return { evaporating: low, condensing: high };
}

/** Gas as it leaves the evaporator: dew or superheated at the evaporating pressure. */
export function suctionGas(fluid: Refrigerant, evaporating: Saturation, superheat: number): State {
  if (superheat <= onTheLine) return evaporating.vapour;
  const temperature = suctionTemperature(evaporating.vapour.temperature, superheat);
  return stateInLoop(fluid, { temperature, pressure: evaporating.vapour.pressure });
}

/**
 * Gas behind a valve that limits its pressure: its enthalpy stays.
 * @throws InputError unless the limit is above 0
 */
function throttledGas(fluid: Refrigerant, gas: State, limit: number | undefined): State {
  if (limit === undefined) return gas;
  requirePositive('suctionPressureLimit', limit);
  const pressure = limitedPressure(gas.pressure, limit);
  return pressure === gas.pressure ? gas : stateInLoop(fluid, { pressure, enthalpy: gas.enthalpy });
}

function condenserLiquid(fluid: Refrigerant, condensing: Saturation, subcooling: number): State {
  if (subcooling <= onTheLine) return condensing.liquid;
  const temperature = liquidTemperature(condensing.liquid.temperature, subcooling);
  if (!(temperature >= fluid.limits.temperatureMin)) {
    const expected = `at most ${condensing.liquid.temperature - fluid.limits.temperatureMin} K here`;
    throw new InputError('subcooling', subcooling, expected);
  }
  return stateInLoop(fluid, { temperature, pressure: condensing.vapour.pressure });
}

function levelOf({ liquid, vapour }: Saturation): SaturationLevel {
  const { temperature, pressure } = vapour;
  const bubbleTemperature = liquid.temperature;
  return { temperature, bubbleTemperature, glide: glideOf(temperature, bubbleTemperature), pressure, liquid, vapour };
}

function named(name: CyclePointName, state: State): CyclePoint {
  return { name, ...state };
}
