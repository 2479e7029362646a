// The motor of a hermetic machine: losses, speed and current by load, voltage and frequency. A two-pole induction motor told by
// its best load: what it does at other loads follows from losses that go with the square of flux and of torque over flux.
// Leaves out: starting, saturation of the iron, the auxiliary winding as such, resistance that grows as the winding warms.

import { NoSolutionError } from '../../../numerics/index.ts';
import type { HermeticCompressor, Supply } from './parameters.ts';

/** What the motor does at one shaft power. */
export interface MotorPoint {
  /** x, torque over the torque at the motor's best load [-]. */
  readonly load: number;
  /** P_l = W − W_sh [W]. */
  readonly losses: number;
  /** N [1/s]. */
  readonly speed: number;
  /** W, electric power [W]. */
  readonly power: number;
  /** I [A]. */
  readonly current: number;
}

/** Slip at which an induction motor is taken to stall [-]: beyond it the torque falls while the load does not. From memory. */
export const stallingSlip = 0.2;

/**
 * Shaft power P_b [W] at the motor's best load and rated supply.
 *     P_b = p_m V_d f_r
 * @param motorPressure   p_m [Pa], that power over the swept volume flow
 * @param displacement    V_d [m³]
 * @param ratedFrequency  f_r [1/s]
 * Source: definition of p_m. Worked value: 300 kPa, 10 cm³, 50 1/s → 150 W.
 */
export function motorBestPower(motorPressure: number, displacement: number, ratedFrequency: number): number {
  return motorPressure * displacement * ratedFrequency;
}

/**
 * Magnetic flux φ [-] over that at rated supply.
 *     φ = (V/V_r) / (f/f_r)
 * @param voltage         V [V]
 * @param ratedVoltage    V_r [V]
 * @param frequency       f [1/s]
 * @param ratedFrequency  f_r [1/s]
 * Validity: small voltage over the winding's resistance; iron not saturated.
 * Source: law of induction. Worked value: 230 V of 230 V, 60 of 50 1/s → 0.8333.
 */
export function fluxRatio(voltage: number, ratedVoltage: number, frequency: number, ratedFrequency: number): number {
  return voltage / ratedVoltage / (frequency / ratedFrequency);
}

/**
 * Load x [-]: torque over that at the best load.
 *     x = W_sh / (P_b f/f_r)
 * @param shaftPower      W_sh [W]
 * @param bestPower       P_b [W]
 * @param frequency       f [1/s]
 * @param ratedFrequency  f_r [1/s]
 * Pitfall: the slip's part of the speed, some hundredths, is left out on both sides of the division.
 * Source: power over speed. Worked value: 120 W of 150 W, 50 of 50 1/s → 0.8.
 */
export function motorLoad(shaftPower: number, bestPower: number, frequency: number, ratedFrequency: number): number {
  return shaftPower / ((bestPower * frequency) / ratedFrequency);
}

/**
 * Losses P_l [W] of the motor: one half follows the square of the flux, the other that of torque over flux.
 *     P_l = P_b (1/η_m − 1)/2 · [φ² f/f_r + (x/φ)²]
 * @param bestPower        P_b [W]
 * @param motorEfficiency  η_m [-], at the best load and rated supply
 * @param flux             φ [-]
 * @param load             x [-]
 * @param frequency        f [1/s]
 * @param ratedFrequency   f_r [1/s]
 * Validity: loads up to where the motor stalls; the efficiency is highest where both halves are equal, x = 1 at rated supply.
 * Source: separation of losses of electric machines, as in textbooks; equal halves at the best load follow from it.
 * Worked value: 150 W, 0.75, φ 1, x 1, 50 of 50 1/s → 50 W: 150 of 200 W.
 */
export function motorLosses(
  bestPower: number,
  motorEfficiency: number,
  flux: number,
  load: number,
  frequency: number,
  ratedFrequency: number,
): number {
  const half = (bestPower * (1 / motorEfficiency - 1)) / 2;
  return half * ((flux ** 2 * frequency) / ratedFrequency + (load / flux) ** 2);
}

/**
 * Slip σ [-] of the rotor behind the field.
 *     σ = s x / φ²
 * @param ratedSlip  s [-], at the best load and rated supply
 * @param load       x [-]
 * @param flux       φ [-]
 * Validity: below `stallingSlip`, where torque is proportional to slip.
 * Source: straight part of the torque curve of an induction motor, as in textbooks. Worked value: 0.03, 1.2, 0.9 → 0.04444.
 */
export function motorSlip(ratedSlip: number, load: number, flux: number): number {
  return (ratedSlip * load) / flux ** 2;
}

/** Speed of a two-pole motor N [1/s] = f (1 − σ), frequency f [1/s] and slip σ [-]. Source: definition of slip. */
export function shaftSpeed(frequency: number, slip: number): number {
  return frequency * (1 - slip);
}

/** Electric power W [W] = W_sh + P_l, shaft power and losses of the motor [W]. Source: first law. */
export function electricPower(shaftPower: number, losses: number): number {
  return shaftPower + losses;
}

/**
 * Magnetising current I_m [A] at rated supply: what the power factor at the best load leaves beside the active current.
 *     I_m = P_b/(η_m V_r) · √(1/cos²φ − 1)
 * @param bestPower        P_b [W]
 * @param motorEfficiency  η_m [-]
 * @param ratedVoltage     V_r [V]
 * @param powerFactor      cos φ [-], at the best load
 * Source: current of a sine as the sum of an active and a reactive part. Worked value: 150 W, 0.75, 230 V, 0.8 → 0.652 A.
 */
export function magnetisingCurrent(
  bestPower: number,
  motorEfficiency: number,
  ratedVoltage: number,
  powerFactor: number,
): number {
  return (bestPower / motorEfficiency / ratedVoltage) * Math.sqrt(1 / powerFactor ** 2 - 1);
}

/**
 * Current I [A] from the mains.
 *     I = √((W/V)² + (I_m φ)²)
 * @param power        W [W]
 * @param voltage      V [V]
 * @param magnetising  I_m [A]
 * @param flux         φ [-]
 * Pitfall: one phase, sines; a drive with a rectifier draws otherwise.
 * Source: as magnetisingCurrent. Worked value: 200 W, 230 V, 0.652 A, 1 → 1.087 A: power factor 0.8.
 */
export function motorCurrent(power: number, voltage: number, magnetising: number, flux: number): number {
  return Math.hypot(power / voltage, magnetising * flux);
}

/**
 * Shaft power W_sh [W] where constant losses go with the speed, and the speed falls with the shaft power.
 *     W_sh = W_p + F (1 − σ' W_sh)  →  W_sh = (W_p + F) / (1 + F σ')
 * @param proportional   W_p [W], internal power with the losses in proportion to it
 * @param friction       F [W], constant losses at the speed of the field, p_f V_d f
 * @param slipPerPower   σ' [1/W], slip for each watt at the shaft
 * Source: shaftPowerOf and motorSlip, both linear in W_sh. Worked value: 88 W, 10 W, 3e-4 1/W → 97.71 W.
 */
export function settledShaftPower(proportional: number, friction: number, slipPerPower: number): number {
  return (proportional + friction) / (1 + friction * slipPerPower);
}

/**
 * What the motor does at a shaft power, by the functions above.
 * @throws NoSolutionError 'motorStalls' where the slip would pass `stallingSlip`
 */
export function motorPoint(compressor: HermeticCompressor, supply: Supply, shaftPower: number): MotorPoint {
  const { ratedSupply, motorEfficiency, powerFactor } = compressor;
  const { frequency, voltage } = supply;
  const flux = fluxRatio(voltage, ratedSupply.voltage, frequency, ratedSupply.frequency);
  const best = motorBestPower(compressor.motorPressure, compressor.displacement, ratedSupply.frequency);
  const load = motorLoad(shaftPower, best, frequency, ratedSupply.frequency);
  const losses = motorLosses(best, motorEfficiency, flux, load, frequency, ratedSupply.frequency);
  const slip = motorSlip(compressor.slip, load, flux);
  if (!(slip < stallingSlip)) throw stalls(load, stallingLoad(compressor, flux));
  const power = electricPower(shaftPower, losses);
  const magnetising = magnetisingCurrent(best, motorEfficiency, ratedSupply.voltage, powerFactor);
  return {
    load,
    losses,
    speed: shaftSpeed(frequency, slip),
    power,
    current: motorCurrent(power, voltage, magnetising, flux),
  };
}

/** Shaft power [W] at which the motor stalls on this supply; infinite without slip. */
export function stallingPower(compressor: HermeticCompressor, supply: Supply): number {
  const { ratedSupply } = compressor;
  const flux = fluxRatio(supply.voltage, ratedSupply.voltage, supply.frequency, ratedSupply.frequency);
  const best = motorBestPower(compressor.motorPressure, compressor.displacement, ratedSupply.frequency);
  return (stallingLoad(compressor, flux) * best * supply.frequency) / ratedSupply.frequency;
}

/** Load at which the slip reaches `stallingSlip`. */
function stallingLoad({ slip }: HermeticCompressor, flux: number): number {
  return (stallingSlip * flux ** 2) / slip;
}

function stalls(load: number, most: number): NoSolutionError {
  return new NoSolutionError(
    `The motor would be loaded with ${load.toPrecision(3)} times the torque of its best load: it stalls.`,
    `a load below ${most.toPrecision(3)} times that torque at this voltage and frequency`,
    'motorStalls',
  );
}
