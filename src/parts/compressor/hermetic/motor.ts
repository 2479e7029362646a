// The motor of a hermetic machine: losses, speed and current by load, voltage and frequency.

import { NoSolutionError } from '../../../numerics/index.ts';
import type { HermeticCompressor, Supply } from './parameters.ts';

/** What the motor does at one shaft power. */
export interface MotorPoint {
  /** Torque over the torque at the motor's best load [-]. */
  readonly load: number;
  /** P_el − W_sh [W]. */
  readonly losses: number;
  /** N [1/s]. */
  readonly speed: number;
  /** P_el [W]. */
  readonly power: number;
  /** I [A]. */
  readonly current: number;
}

/** Slip at which an induction motor is taken to stall [-]: beyond it the torque falls while the load does not. */
export const stallingSlip = 0.2;

/** P_b, shaft power at the motor's best load and rated supply [W] = p_m V_d f. */
export function motorBestPower({ motorPressure, displacement, ratedSupply }: HermeticCompressor): number {
  return motorPressure * displacement * ratedSupply.frequency;
}

/**
 * A two-pole induction motor by its losses: a constant part that follows the square of the magnetic flux, and one that
 * follows the square of the torque over the flux; both are equal at the best load, where the efficiency is η_m.
 *     φ = (V/V_r) / (f/f_r),  x = W_sh / (P_b f/f_r),  l = (1/η_m − 1)/2
 *     P_el = W_sh + P_b l [φ² f/f_r + (x/φ)²],  N = f (1 − s x/φ²)
 * @throws NoSolutionError 'motorStalls' where the slip passes `stallingSlip`
 */
export function motorPoint(compressor: HermeticCompressor, supply: Supply, shaftPower: number): MotorPoint {
  const { ratedSupply, motorEfficiency, slip } = compressor;
  const speedRatio = supply.frequency / ratedSupply.frequency;
  const flux = supply.voltage / ratedSupply.voltage / speedRatio;
  const best = motorBestPower(compressor);
  const load = shaftPower / (best * speedRatio);
  const share = (1 / motorEfficiency - 1) / 2;
  const losses = best * share * (flux ** 2 * speedRatio + (load / flux) ** 2);
  const slipNow = (slip * load) / flux ** 2;
  if (!(slipNow < stallingSlip)) {
    throw new NoSolutionError(
      `The motor would be loaded with ${load.toPrecision(3)} times the torque of its best load: it stalls.`,
      `a load below ${((stallingSlip * flux ** 2) / slip).toPrecision(3)} times that torque at this voltage and frequency`,
      'motorStalls',
    );
  }
  const power = shaftPower + losses;
  return {
    load,
    losses,
    speed: supply.frequency * (1 - slipNow),
    power,
    current: motorCurrent(compressor, supply, power, flux),
  };
}

/** I [A] = √((P_el/V)² + (I_m φ)²), with I_m the magnetising current that gives the power factor at the best load. */
function motorCurrent(compressor: HermeticCompressor, supply: Supply, power: number, flux: number): number {
  const { ratedSupply, motorEfficiency, powerFactor } = compressor;
  const bestActive = motorBestPower(compressor) / motorEfficiency / ratedSupply.voltage;
  const magnetising = bestActive * Math.sqrt(1 / powerFactor ** 2 - 1);
  return Math.hypot(power / supply.voltage, magnetising * flux);
}
