// A tank known by what its heater used: the mean power is the load at the measured temperatures. Elsewhere the sensible
// share of the loss is scaled with the temperature difference and the vapour share with the vapour pressure difference,
// pump and light heat staying as they were. Simplification, named in the result: the room's relative humidity during the
// measurement is taken as the one asked for, and coefficients do not change with the difference.

import { waterDensity, waterHeatCapacity } from '../matter/water/index.ts';
import { InputError } from '../numerics/index.ts';
import type { MeasuredTank, TankConditions } from './description.ts';
import { evaporationFromHeat } from './exchange.ts';
import { measuredFindings } from './findings/measured.ts';
import type { HeatPath, MeasuredIntermediates, TankLoad } from './load.ts';
import {
  heatCapacity,
  latentToRoom,
  lossPerKelvin,
  lostElsewhere,
  netLoad,
  sensibleToRoom,
  sumOfPaths,
  watersBeside,
} from './totals.ts';
import { airState } from './water-surface/vapour.ts';

/**
 * Heat of one share of a measured loss at other conditions.
 *     Q = Q_measured Δ / Δ_measured
 * @param measured            Q_measured [W]
 * @param now                 Δ, of temperature [K] or vapour pressure [Pa]
 * @param measuredDifference  Δ_measured, the same while it was measured
 * @returns                   Q [W]
 * Source: own simplification. Worked value: 100 W, 9 K, 7 K → 128.6 W.
 */
export function scaledHeat(measured: number, now: number, measuredDifference: number): number {
  return (measured * now) / measuredDifference;
}

/**
 * Difference between the water and the room, of temperature or of vapour pressure.
 *     Δ = inside − outside
 * @param inside   T_w [K] or p_w [Pa]
 * @param outside  T_r [K] or p_r [Pa]
 * @returns        Δ [K] or [Pa]
 * Source: definition. Worked value: 299.15, 292.15 K → 7 K.
 */
export function difference(inside: number, outside: number): number {
  return inside - outside;
}

/**
 * Mean power of a heater from its energy.
 *     P = E / t
 * @param energy    E [J]
 * @param duration  t [s]
 * @returns         P [W]
 * Source: definition. Worked value: 38 kWh in 7 days → 226.2 W.
 */
export function meanPower(energy: number, duration: number): number {
  return energy / duration;
}

/**
 * One share of the whole loss while it was measured: heater, pumps and lights together kept the water warm.
 *     Q_then = s (P + Q_pump + Q_light)
 * @param share  s [-]
 * @param power  P [W], mean of the heater
 * @param pump   Q_pump [W]
 * @param light  Q_light [W]
 * @returns      Q_then [W]
 * Source: energy balance. Worked value: 0.35, 226.2, 9, 0 → 82.3 W.
 */
export function shareOfLoss(share: number, power: number, pump: number, light: number): number {
  return share * (power + pump + light);
}

/** Load of a measured tank; input checked by the caller. */
export function measuredLoad(tank: MeasuredTank, conditions: TankConditions): TankLoad {
  const intermediates = measuredIntermediates(tank, conditions);
  const paths = measuredPaths(tank, conditions, intermediates);
  const latent = latentToRoom(paths);
  const loss = sumOfPaths(paths);
  const load = netLoad(loss, tank.pumpHeat, tank.lightHeat, 0);
  const evaporation = evaporationFromHeat(latent, intermediates.air.latentHeat);
  const specificHeat = waterHeatCapacity(conditions.waterTemperature, tank.salinity);
  const density = waterDensity(conditions.waterTemperature, tank.salinity);
  return {
    kind: 'measured',
    loss,
    gains: { pump: tank.pumpHeat, light: tank.lightHeat, ultraviolet: 0 },
    load,
    paths,
    evaporation,
    evaporationRange: { low: evaporation, high: evaporation },
    sensibleToRoom: sensibleToRoom(paths),
    latentToRoom: latent,
    lostElsewhere: lostElsewhere(paths),
    waterVolume: tank.volume,
    waterMass: tank.volume * density,
    heatCapacity: heatCapacity(tank.volume, density, specificHeat),
    conductance: measuredConductance(tank, conditions),
    intermediates,
    warnings: measuredFindings(tank, load),
  };
}

function measuredIntermediates(tank: MeasuredTank, conditions: TankConditions): MeasuredIntermediates {
  const air = airState(conditions, tank.salinity);
  const then = airState(
    { ...conditions, waterTemperature: tank.waterTemperature, roomTemperature: tank.roomTemperature },
    tank.salinity,
  );
  const measuredVapourDifference = difference(then.waterVapour, then.roomVapour);
  if (tank.evaporationShare > 0 && !(measuredVapourDifference > 0)) {
    throw new InputError(
      'tank.load.evaporationShare',
      tank.evaporationShare,
      '0 where the measured room was so humid that nothing can have evaporated',
      'measuredRoomTooHumid',
    );
  }
  const power = meanPower(tank.energy, tank.duration);
  const shareThen = (share: number) => shareOfLoss(share, power, tank.pumpHeat, tank.lightHeat);
  return {
    kind: 'measured',
    air,
    meanPower: power,
    measuredLoss: shareThen(1),
    measuredLatent: shareThen(tank.evaporationShare),
    measuredSensible: shareThen(1 - tank.evaporationShare),
    measuredTemperatureDifference: difference(tank.waterTemperature, tank.roomTemperature),
    measuredVapourDifference,
  };
}

function measuredPaths(tank: MeasuredTank, conditions: TankConditions, known: MeasuredIntermediates): HeatPath[] {
  const warmth = difference(conditions.waterTemperature, conditions.roomTemperature);
  const sensible = scaledHeat(known.measuredSensible, warmth, known.measuredTemperatureDifference);
  const dry: HeatPath = { path: 'wallsAndSurface', heat: sensible, kind: 'sensible', to: 'room' };
  if (tank.evaporationShare === 0) return [dry];
  const vapour = difference(known.air.waterVapour, known.air.roomVapour);
  const latent = scaledHeat(known.measuredLatent, vapour, known.measuredVapourDifference);
  return [{ path: 'evaporation', heat: latent, kind: 'latent', to: 'room' }, dry];
}

function measuredConductance(tank: MeasuredTank, conditions: TankConditions): number {
  const lossAt = (waterTemperature: number) => {
    const at = { ...conditions, waterTemperature };
    return sumOfPaths(measuredPaths(tank, at, measuredIntermediates(tank, at)));
  };
  const { cooler, warmer } = watersBeside(conditions.waterTemperature);
  return lossPerKelvin(lossAt(warmer), lossAt(cooler), warmer - cooler);
}
