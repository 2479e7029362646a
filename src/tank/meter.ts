// A meter on the heater of a tank that is known by its sizes: what it lost while it was measured, against the model's loss at
// the same temperatures, and the model's heat carried by the ratio of the two.

import { requireFinite, requirePositive } from '../numerics/index.ts';

/**
 * Heat that left a tank while a meter ran: heater and gains together kept its water warm.
 *     Q_meas = P + Q_gains
 * @param power  P [W], mean of the heater
 * @param gains  Q_gains [W], of pumps, lights and ultraviolet lamp
 * @returns      Q_meas [W]
 * Validity: water as warm at the end as at the start. Source: energy balance. Worked value: 226.2, 13 → 239.2 W.
 */
export function heatThatLeft(power: number, gains: number): number {
  requireFinite('power', power);
  requireFinite('gains', gains);
  return power + gains;
}

/**
 * Measured over modelled loss f.
 *     f = Q_meas / Q_model
 * @param measured  Q_meas [W], > 0
 * @param modelled  Q_model [W], of the same tank at the same temperatures, > 0
 * @returns         f [-]
 * @throws InputError unless both are above 0
 * Source: definition. Worked value: 239.2, 260 → 0.92.
 */
export function measuredOverModelled(measured: number, modelled: number): number {
  requirePositive('tank.load.meter.energy', measured);
  requirePositive('modelledLoss', modelled);
  return measured / modelled;
}

/**
 * A modelled heat carried by a measurement.
 *     Q = f Q_model
 * @param factor    f [-], measured over modelled loss
 * @param modelled  Q_model [W]
 * @returns         Q [W]
 * Validity: what the model misses acts in the same proportion on every path, and does so at other temperatures too.
 * Source: own simplification. Worked value: 0.92, 31 → 28.52 W.
 */
export function carriedHeat(factor: number, modelled: number): number {
  return factor * modelled;
}
