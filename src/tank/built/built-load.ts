// A tank as it stands in the room: its vessels, its pipes, the air drawn through its water and the fresh water it is given.
// Steady state. Named simplifications: inner dimensions, flat corners; the whole room is as warm as its air.

import { dryAirDensity, humidityRatio } from '../../matter/air/index.ts';
import { waterDensity, waterHeatCapacity } from '../../matter/water/index.ts';
import { InputError, requireWithin } from '../../numerics/index.ts';
import type { BuiltTank, Cover, Vessel } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import {
  airStoneEvaporation,
  airStoneHeat,
  blownDryAir,
  evaporationHeat,
  makeUpHeat,
  waterChangeHeat,
} from '../exchange.ts';
import { builtFindings } from '../findings/built.ts';
import type { AirDrawnState, AirState, BuiltIntermediates, HeatPath, TankLoad, VesselState } from '../load.ts';
import { settlePipe } from '../pipes.ts';
import {
  heatCapacity,
  latentToRoom,
  lossPerKelvin,
  lostElsewhere,
  netLoad,
  sensibleToRoom,
  sumOfPaths,
  waterLost,
  watersBeside,
} from '../totals.ts';
import { airState } from '../water-surface/vapour.ts';
import { evaporationRange } from './evaporation-range.ts';
import { mixedPaths } from './night.ts';
import { settleVessel, vesselEvaporation, vesselPlace } from './vessel.ts';

/** What leaves a tank, without what is only told beside it. */
export interface TankLosses {
  readonly paths: readonly HeatPath[];
  /** [kg/s]. */
  readonly evaporation: number;
  readonly intermediates: BuiltIntermediates;
}

/** Load of a tank; input checked by the caller. */
export function builtLoad(tank: BuiltTank, conditions: TankConditions): TankLoad {
  const { paths, evaporation, intermediates } = builtLosses(tank, conditions);
  const loss = sumOfPaths(paths);
  const gains = { pump: tank.pumpHeat, light: tank.lightHeat, ultraviolet: tank.ultravioletHeat };
  const load = netLoad(loss, gains.pump, gains.light, gains.ultraviolet);
  const density = waterDensity(conditions.waterTemperature, tank.salinity);
  const volume = tank.vessels.reduce((sum, { waterVolume }) => sum + waterVolume, 0);
  const place = vesselPlace(tank, conditions, intermediates.air);
  const range = evaporationRange(tank, place, intermediates, evaporation);
  let conductance: number | undefined;
  return {
    kind: 'built',
    loss,
    gains,
    load,
    paths,
    evaporation,
    evaporationRange: range,
    sensibleToRoom: sensibleToRoom(paths),
    latentToRoom: latentToRoom(paths),
    lostElsewhere: lostElsewhere(paths),
    waterVolume: volume,
    waterMass: volume * density,
    heatCapacity: heatCapacity(volume, density, waterHeatCapacity(conditions.waterTemperature, tank.salinity)),
    // It takes another balance, half the time of a load, and of most loads nobody asks for it.
    get conductance() {
      conductance ??= builtConductance(tank, conditions, loss);
      return conductance;
    },
    intermediates,
    warnings: builtFindings(tank, intermediates, evaporation, range, load, conditions),
  };
}

function builtConductance(tank: BuiltTank, conditions: TankConditions, loss: number): number {
  const { cooler, warmer } = watersBeside(conditions.waterTemperature);
  const lossAt = (waterTemperature: number) =>
    waterTemperature === conditions.waterTemperature
      ? loss
      : sumOfPaths(builtLosses(tank, { ...conditions, waterTemperature }).paths);
  return lossPerKelvin(lossAt(warmer), lossAt(cooler), warmer - cooler);
}

/** Heat by path, vapour, and the numbers on the way. */
export function builtLosses(tank: BuiltTank, conditions: TankConditions): TankLosses {
  const air = airState(conditions, tank.salinity);
  const place = vesselPlace(tank, conditions, air);
  const vessels = tank.vessels.map((vessel) => settleVessel(vessel, vessel.cover, place));
  const night =
    tank.night === undefined
      ? undefined
      : { share: tank.night.share, vessel: settleVessel(tank.vessels[0]!, tank.night.cover, place) };
  const pipes = tank.pipes.map((pipe) =>
    settlePipe(
      pipe,
      conditions.waterTemperature,
      conditions.roomTemperature,
      conditions.atmosphericPressure,
      place.outerFilmFactor,
    ),
  );
  const airDrawn = airDrawnThrough(tank, air, conditions);
  const factor = tank.measuredOverModelled ?? 1;
  const evaporated = vapourOf(vessels, night, airDrawn);
  const makeUpTemperature =
    tank.exchange.makeUpFrom === 'mains' ? mainsTemperature(conditions) : conditions.roomTemperature;
  const makeUpHeatCapacity = waterHeatCapacity(conditions.waterTemperature, 0);
  const paths = [
    ...mixedPaths(vessels, night),
    ...pipes.map(({ name, heat }): HeatPath => ({ path: `pipes.${name}`, heat, kind: 'sensible', to: 'room' })),
    ...airDrawn.flatMap((drawn) => airPaths(drawn, air, conditions)),
    ...freshWaterPaths(tank, conditions, evaporated, makeUpHeatCapacity, makeUpTemperature),
  ];
  const intermediates: BuiltIntermediates = {
    kind: 'built',
    air,
    vessels,
    night,
    pipes,
    airDrawn,
    makeUpHeatCapacity,
    makeUpTemperature,
    measuredOverModelled: factor,
  };
  if (factor === 1) return { paths, evaporation: evaporated, intermediates };
  const scaled = paths.map((path) => ({ ...path, heat: factor * path.heat }));
  return { paths: scaled, evaporation: factor * evaporated, intermediates };
}

/** Water lost as vapour [kg/s], as `builtLosses` finds it, without what warmth leaves by. */
export function builtEvaporation(tank: BuiltTank, conditions: TankConditions): number {
  const air = airState(conditions, tank.salinity);
  const place = vesselPlace(tank, conditions, air);
  const vapourUnder = (vessel: Vessel, cover: Cover) => ({ evaporation: vesselEvaporation(vessel, cover, place) });
  const night =
    tank.night === undefined
      ? undefined
      : { share: tank.night.share, vessel: vapourUnder(tank.vessels[0]!, tank.night.cover) };
  const vessels = tank.vessels.map((vessel) => vapourUnder(vessel, vessel.cover));
  const evaporated = vapourOf(vessels, night, airDrawnThrough(tank, air, conditions));
  return (tank.measuredOverModelled ?? 1) * evaporated;
}

function airDrawnThrough(tank: BuiltTank, air: AirState, conditions: TankConditions): readonly AirDrawnState[] {
  return (['airStones', 'skimmer'] as const)
    .filter((name) => tank.airFlow[name] > 0)
    .map((name) => drawnAir(name, tank.airFlow[name], air, conditions));
}

type Vapour = Pick<VesselState, 'evaporation'>;

function vapourOf(
  vessels: readonly Vapour[],
  night: { readonly share: number; readonly vessel: Vapour } | undefined,
  airDrawn: readonly AirDrawnState[],
): number {
  const [display, ...others] = vessels;
  const share = night?.share ?? 0;
  const surface =
    (1 - share) * (display?.evaporation ?? 0) +
    share * (night?.vessel.evaporation ?? 0) +
    others.reduce((sum, { evaporation }) => sum + evaporation, 0);
  return waterLost(
    surface,
    airDrawn.reduce((sum, { evaporation }) => sum + evaporation, 0),
  );
}

/** Room air drawn through the water leaves as warm as the water, saturated. */
function drawnAir(
  name: AirDrawnState['name'],
  flow: number,
  air: AirState,
  { roomTemperature, atmosphericPressure }: TankConditions,
): AirDrawnState {
  const dryAirFlow = blownDryAir(flow, dryAirDensity(roomTemperature, air.roomVapour, atmosphericPressure));
  const saturated = humidityRatio(air.waterVapour, atmosphericPressure);
  const room = humidityRatio(air.roomVapour, atmosphericPressure);
  return { name, dryAirFlow, evaporation: airStoneEvaporation(dryAirFlow, saturated, room) };
}

function airPaths(
  { name, dryAirFlow, evaporation }: AirDrawnState,
  air: AirState,
  { waterTemperature, roomTemperature, atmosphericPressure }: TankConditions,
): readonly HeatPath[] {
  const room = humidityRatio(air.roomVapour, atmosphericPressure);
  return [
    { path: `${name}Vapour`, heat: evaporationHeat(evaporation, air.latentHeat), kind: 'latent', to: 'room' },
    {
      path: name,
      heat: airStoneHeat(dryAirFlow, room, waterTemperature, roomTemperature),
      kind: 'sensible',
      to: 'room',
    },
  ];
}

function freshWaterPaths(
  { exchange, salinity }: BuiltTank,
  conditions: TankConditions,
  evaporation: number,
  makeUpHeatCapacity: number,
  makeUpTemperature: number,
): readonly HeatPath[] {
  const { waterTemperature } = conditions;
  const own = { kind: 'sensible' as const, to: 'freshWater' as const };
  const paths: HeatPath[] = [];
  if (evaporation > 0) {
    const heat = makeUpHeat(evaporation, makeUpHeatCapacity, waterTemperature, makeUpTemperature);
    paths.push({ path: 'makeUpWater', heat, ...own });
  }
  if (exchange.changeFlow > 0) {
    const density = waterDensity(waterTemperature, salinity);
    const specificHeat = waterHeatCapacity(waterTemperature, salinity);
    const mains = mainsTemperature(conditions);
    const heat = waterChangeHeat(exchange.changeFlow, density, specificHeat, waterTemperature, mains);
    paths.push({ path: 'waterChange', heat, ...own });
  }
  return paths;
}

/** Fresh water comes liquid and not hot, K. */
const freshWater = { min: 273.15, max: 333.15 } as const;

/** Temperature of the water main. @throws InputError where it is not given, or no main has it */
function mainsTemperature({ mainsTemperature: mains }: TankConditions): number {
  if (mains === undefined) {
    throw new InputError('place.mains', mains, 'a temperature, as fresh water comes from the main', 'missing');
  }
  requireWithin('place.mains', mains, freshWater.min, freshWater.max);
  return mains;
}
