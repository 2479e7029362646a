// What the machine puts into the water, how long it must run for it, and what it is worth: the small laws that the
// steady state of tank, room and loop is made of.

import { requireFinite, requireNonNegative, requirePositive, requireWithin } from '../numerics/index.ts';

/**
 * Heat reaching the tank water while the machine runs, Q̇_w.
 *     Q̇_w = Q̇_c + φ · P_p
 * @param condenserHeat  Q̇_c [W], heat leaving the refrigerant on the tank side
 * @param loopPumpPower  P_p [W], electricity of the pump that exists only for the heat pump; 0 for a coil in the tank
 * @param shareToWater   φ [-], share of that electricity that ends as heat in the water, 0 to 1
 * @returns              Q̇_w [W]
 * Validity: steady running. Leaves out: heat lost by the pipes of an intermediate loop.
 * @throws InputError outside these ranges
 * Source: energy balance. Worked value: 180 W, 5 W, 0.8 → 184 W.
 */
export function heatReachingWater(condenserHeat: number, loopPumpPower: number, shareToWater: number): number {
  requireNonNegative('condenserHeat', condenserHeat);
  requireNonNegative('loopPumpPower', loopPumpPower);
  requireWithin('shareToWater', shareToWater, 0, 1);
  return condenserHeat + shareToWater * loopPumpPower;
}

/**
 * Share of the time the machine runs, x.
 *     x = min(1, max(0, L) / Q̇_w)
 * @param load              L [W], heat the tank needs; below 0 it needs none
 * @param heatReachingWater Q̇_w [W], heat reaching the water while running, > 0
 * @returns                 x [-], 0 to 1; 1 means it cannot stop, and `backupHeat` says what is missing
 * Leaves out: losses at each start. @throws InputError outside these ranges
 * Source: energy balance of a thermostat's cycle. Worked value: 120 W, 184 W → 0.6522.
 */
export function runFraction(load: number, heatReachingWater: number): number {
  requireFinite('load', load);
  requirePositive('heatReachingWater', heatReachingWater);
  return Math.min(1, Math.max(0, load) / heatReachingWater);
}

/**
 * Heat the tank needs, Q̇_n: nothing where pumps and lights already give too much.
 *     Q̇_n = max(0, L)
 * @param load  L [W], net load of the tank; negative where it would have to be cooled
 * @returns     Q̇_n [W]
 * @throws InputError unless L is finite. Source: definition. Worked value: −12 W → 0 W.
 */
export function heatNeeded(load: number): number {
  requireFinite('load', load);
  return Math.max(0, load);
}

/** Mean heat the machine brings to the water [W] = x Q̇_w: share of the time it runs [-], heat while running [W]. */
export function heatFromMachine(fraction: number, heatReachingWater: number): number {
  return fraction * heatReachingWater;
}

/** Of one of n machines alike [W] = X / n: their number [-], of all of them [W]. */
export function perMachine(count: number, ofAll: number): number {
  return ofAll / count;
}

/**
 * Margin of the machine over the load, ΔQ̇; negative where it falls short.
 *     ΔQ̇ = Q̇_w − L
 * @param heatReachingWater Q̇_w [W], while running
 * @param load              L [W], heat the tank needs
 * @returns                 ΔQ̇ [W]
 * Source: definition. Worked value: 184 W, 120 W → 64 W.
 */
export function deliveryMargin(heatReachingWater: number, load: number): number {
  return heatReachingWater - load;
}

/**
 * Resistance heat needed on top of the machine, Q̇_b.
 *     Q̇_b = max(0, L − Q̇_w)
 * @param load              L [W], heat the tank needs
 * @param heatReachingWater Q̇_w [W], 0 where the machine cannot run
 * @returns                 Q̇_b [W]
 * @throws InputError outside these ranges
 * Source: energy balance. Worked value: 220 W, 184 W → 36 W.
 */
export function backupHeat(load: number, heatReachingWater: number): number {
  requireFinite('load', load);
  requireNonNegative('heatReachingWater', heatReachingWater);
  return Math.max(0, load - heatReachingWater);
}

/**
 * Electricity of the whole system while the machine runs.
 *     P_sys = P_comp + P_fan + P_p + P_ctl
 * @param compressorPower   P_comp [W]
 * @param fanPower          P_fan [W]
 * @param loopPumpPower     P_p [W], only a pump that exists for the heat pump
 * @param controlsPower     P_ctl [W], on all the time
 * @returns                 P_sys [W]
 * Leaves out: a crankcase heater, which heats while the machine rests.
 * Source: definition of this project. Worked value: 50 + 8 + 5 + 3 → 66 W.
 */
export function systemPower(
  compressorPower: number,
  fanPower: number,
  loopPumpPower: number,
  controlsPower: number,
): number {
  return compressorPower + fanPower + loopPumpPower + controlsPower;
}

/**
 * System coefficient of performance while the machine runs.
 *     COP_sys = Q̇_w / (P_comp + P_fan + P_p + P_ctl)
 * @param heatReachingWater Q̇_w [W], heat reaching the tank water
 * @param compressorPower   P_comp [W], electricity of the compressor
 * @param fanPower          P_fan [W]
 * @param loopPumpPower     P_p [W], only a pump that exists for the heat pump
 * @param controlsPower     P_ctl [W], on all the time
 * @returns                 COP_sys [-]
 * Pitfall: not the compressor's own figure, and not the season's, which also counts standby and backup.
 * @throws InputError outside these ranges
 * Source: definition of this project. Worked value: 184 W over 50 + 8 + 5 + 3 W → 2.7879.
 */
export function systemCop(
  heatReachingWater: number,
  compressorPower: number,
  fanPower: number,
  loopPumpPower: number,
  controlsPower: number,
): number {
  requireNonNegative('heatReachingWater', heatReachingWater);
  requirePositive('compressorPower', compressorPower);
  requireNonNegative('fanPower', fanPower);
  requireNonNegative('loopPumpPower', loopPumpPower);
  requireNonNegative('controlsPower', controlsPower);
  return heatReachingWater / systemPower(compressorPower, fanPower, loopPumpPower, controlsPower);
}

/**
 * Electricity of heat pump and backup heater, mean over time.
 *     P̄ = x (P_comp + P_fan + P_p) + (1 − x) P_cr + P_ctl + Q̇_b
 * @param fraction         x [-], share of the time the machine runs
 * @param compressorPower  P_comp [W], while running
 * @param fanPower         P_fan [W], while running
 * @param loopPumpPower    P_p [W], while running
 * @param controlsPower    P_ctl [W], on all the time
 * @param backup           Q̇_b [W], mean, all of it electricity
 * @param resting          (1 − x) P_cr [W], crankcase heaters, mean
 * @returns                P̄ [W]
 * Source: definition of this project. Worked value: 0.65, 50, 8, 5, 3, 0, 0 → 43.95 W.
 */
export function meanElectricity(
  fraction: number,
  compressorPower: number,
  fanPower: number,
  loopPumpPower: number,
  controlsPower: number,
  backup: number,
  resting: number,
): number {
  return fraction * (compressorPower + fanPower + loopPumpPower) + resting + controlsPower + backup;
}

/** Mean electricity of crankcase heaters [W] = (1 − x) P_cr: share of the time the machine runs [-], their power [W]. */
export function restingHeat(fraction: number, heaterPower: number): number {
  return (1 - fraction) * heaterPower;
}

/** What n machines alike do [W] = n X: their number [-], what one of them does while it runs [W]. */
export function ofAllMachines(count: number, ofOne: number): number {
  return count * ofOne;
}

/** Heat of the loop pump that misses the water [W] = (1 − φ) P_p: electricity [W], share that ends in the water [-]. */
export function pumpHeatToRoom(loopPumpPower: number, shareToWater: number): number {
  return (1 - shareToWater) * loopPumpPower;
}

/** Mean heat taken from the source [W] = x Q̇_e: share of the time the machine runs [-], heat taken while it runs [W]. */
export function heatTakenInMean(fraction: number, heatTaken: number): number {
  return fraction * heatTaken;
}

/** Sensible part of the heat taken from the source [W] = s Q̇_e: share [-], 1 for a dry evaporator, heat taken [W]. */
export function sensibleHeatTaken(share: number, heatTaken: number): number {
  return share * heatTaken;
}

/**
 * Net sensible heat that tank and machine give the tank's room, Q̇_room; negative where they chill it.
 *     Q̇_room = Q̇_tank + x (P_sh + P_f + (1 − φ) P_p − s Q̇_e) + Q̇_cr + P_ctl
 * @param tankSensible      Q̇_tank [W], sensible loss of the tank to the room
 * @param runFraction       x [-]
 * @param shellHeat         P_sh [W], shell heat while running, where the shell stands in this room; else 0
 * @param fanPower          P_f [W], where the fan blows this room's air; else 0
 * @param pumpHeatToRoom    (1 − φ) P_p [W], loop pump heat that misses the water
 * @param heatTaken         s Q̇_e [W], sensible part of the heat taken, where this room's air is the source; else 0
 * @param controlsPower     P_ctl [W], on all the time
 * @param restingHeat       Q̇_cr [W], mean of crankcase heaters whose shells stand in this room; else 0
 * @returns                 Q̇_room [W]
 * Pitfall: vapour is not in it; it warms a room only where it condenses.
 * @throws InputError outside these ranges
 * Source: energy balance. Worked value: 90, 0.65, 15, 8, 1, 130, 3, 0 → 24.1 W.
 */
export function roomNetHeat(
  tankSensible: number,
  runFraction: number,
  shellHeat: number,
  fanPower: number,
  pumpHeatToRoom: number,
  heatTaken: number,
  controlsPower: number,
  restingHeat: number,
): number {
  requireFinite('tankSensible', tankSensible);
  requireWithin('runFraction', runFraction, 0, 1);
  requireFinite('shellHeat', shellHeat);
  requireNonNegative('fanPower', fanPower);
  requireNonNegative('pumpHeatToRoom', pumpHeatToRoom);
  requireNonNegative('heatTaken', heatTaken);
  requireNonNegative('controlsPower', controlsPower);
  requireNonNegative('restingHeat', restingHeat);
  return tankSensible + runFraction * (shellHeat + fanPower + pumpHeatToRoom - heatTaken) + restingHeat + controlsPower;
}
