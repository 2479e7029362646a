// A rectangular tank from its geometry: wet panes and bottom as layers, the open surface, or a lid over trapped air, make-up
// water and air stones. Steady state. Named simplifications: inner dimensions, flat corners; the bottom faces room air; the
// whole room is as warm as its air; a loose lid is a tight one with a share of the surface open; make-up water comes at room
// temperature.

import { dryAirDensity, humidityRatio } from '../matter/air/index.ts';
import { waterDensity, waterHeatCapacity } from '../matter/water/index.ts';
import { findRoot } from '../numerics/index.ts';
import { headspaceFlux, lidTemperature } from './cover/headspace.ts';
import type { Layer, LidLayer, RectangularTank, TankConditions } from './description.ts';
import { airStoneEvaporation, airStoneHeat, blownDryAir, evaporationHeat, makeUpHeat } from './exchange.ts';
import { rectangularFindings } from './findings.ts';
import {
  type AirState,
  type DryFace,
  faceArea,
  freeboardConductance,
  freeboardHeat,
  type HeatPath,
  headspaceGap,
  heatCapacity,
  type LidState,
  latentToRoom,
  netLoad,
  type PaneState,
  type RectangularIntermediates,
  type SurfaceState,
  scaledRange,
  sensibleToRoom,
  sumOfPaths,
  type TankAreas,
  type TankLoad,
  tankAreas,
  type WetFace,
  waterLost,
  waterVolume,
} from './load.ts';
import {
  type HeatFlow,
  innerResistance,
  layerResistance,
  outerSurface,
  paneHeat,
  transmittance,
  WATER_FILM_COEFFICIENT,
} from './stack/films.ts';
import {
  activeCoefficientAshrae,
  evaporationRate,
  INDOOR_AIR_SPEED,
  quietCoefficientShah2014,
  surfaceCoefficient,
  surfaceConvection,
  surfaceConvectionCoefficient,
  surfaceMethods,
  surfaceRadiation,
} from './water-surface/surface.ts';
import { airState } from './water-surface/vapour.ts';

/** Share of the surface that a loosely laid lid leaves open where nobody says better: own assumption, 0.05 to 0.3. */
export const LOOSE_LID_OPEN_SHARE = 0.15;
/** Emissivity of wrapping and of a lid whose own is not given (foam, paint, plastics 0.9, from memory). */
export const OUTER_EMISSIVITY = 0.9;
/** Half the step of water temperature over which `conductance` is taken, K. */
const CONDUCTANCE_STEP = 0.25;

interface Losses {
  readonly paths: readonly HeatPath[];
  readonly evaporation: number;
  readonly intermediates: RectangularIntermediates;
}

/** Load of a rectangular tank; input checked by the caller. */
export function rectangularLoad(tank: RectangularTank, conditions: TankConditions): TankLoad {
  const areas = tankAreas(tank);
  const losses = rectangularLosses(tank, areas, conditions);
  const { paths, evaporation, intermediates } = losses;
  const loss = sumOfPaths(paths);
  const load = netLoad(loss, tank.pumpHeat, tank.lightHeat);
  const density = waterDensity(conditions.waterTemperature, tank.salinity);
  const volume = waterVolume(tank.length, tank.width, tank.waterDepth);
  const specificHeat = waterHeatCapacity(conditions.waterTemperature, tank.salinity);
  const range = evaporationRange(tank, evaporation, intermediates.surface);
  return {
    kind: 'rectangular',
    loss,
    gains: { pump: tank.pumpHeat, light: tank.lightHeat },
    load,
    paths,
    evaporation,
    evaporationRange: range,
    sensibleToRoom: sensibleToRoom(paths),
    latentToRoom: latentToRoom(paths),
    areas,
    waterVolume: volume,
    waterMass: volume * density,
    heatCapacity: heatCapacity(volume, density, specificHeat),
    conductance: rectangularConductance(tank, areas, conditions),
    intermediates,
    warnings: rectangularFindings(tank, intermediates, evaporation, range, load),
  };
}

function rectangularConductance(tank: RectangularTank, areas: TankAreas, conditions: TankConditions): number {
  const high = conditions.waterTemperature + CONDUCTANCE_STEP;
  const low = Math.max(273.15, conditions.waterTemperature - CONDUCTANCE_STEP);
  const lossAt = (waterTemperature: number) =>
    sumOfPaths(rectangularLosses(tank, areas, { ...conditions, waterTemperature }).paths);
  return (lossAt(high) - lossAt(low)) / (high - low);
}

function rectangularLosses(tank: RectangularTank, areas: TankAreas, conditions: TankConditions): Losses {
  const { waterTemperature, roomTemperature } = conditions;
  const air = airState(conditions, tank.salinity);
  const panes = wetPanes(tank, areas, conditions);
  const openShare = openShareOf(tank);
  const surface = openShare > 0 ? openSurface(tank, openShare, air, conditions) : undefined;
  const lid = openShare < 1 ? coveredSurface(tank, 1 - openShare, air, conditions) : undefined;
  const airStones = blownAir(tank, air, conditions);
  const evaporation = waterLost(surface?.evaporation ?? 0, airStones?.evaporation ?? 0);
  const makeUpHeatCapacity = waterHeatCapacity(waterTemperature, 0);
  const paths: HeatPath[] = [];
  const add = (path: HeatPath['path'], heat: number, kind: HeatPath['kind'] = 'sensible') =>
    paths.push({ path, heat, kind });

  if (surface !== undefined) {
    const { area, convectionCoefficient } = surface;
    add('evaporation', evaporationHeat(surface.evaporation, air.latentHeat), 'latent');
    add('surfaceConvection', surfaceConvection(convectionCoefficient, area, waterTemperature, roomTemperature));
    add('surfaceRadiation', surfaceRadiation(area, waterTemperature, roomTemperature));
  }
  if (lid !== undefined) {
    add('lid', lid.lid.heat);
    if (lid.freeboard !== undefined) {
      const { front, back, sides } = lid.freeboard;
      add('freeboard', freeboardHeat(front.heat, back.heat, sides.heat));
    }
  }
  for (const face of ['front', 'back', 'sides', 'bottom'] as const) add(face, panes[face].heat);
  if (airStones !== undefined) {
    add('airStonesVapour', evaporationHeat(airStones.evaporation, air.latentHeat), 'latent');
    add(
      'airStones',
      airStoneHeat(airStones.dryAirFlow, roomHumidity(air, conditions), waterTemperature, roomTemperature),
    );
  }
  if (evaporation > 0) {
    add('makeUpWater', makeUpHeat(evaporation, makeUpHeatCapacity, waterTemperature, roomTemperature));
  }
  const intermediates = { kind: 'rectangular' as const, air, panes, surface, lid, airStones, makeUpHeatCapacity };
  return { paths, evaporation, intermediates };
}

/** Share of the water surface that is open to the room. */
function openShareOf(tank: RectangularTank): number {
  if (tank.lid === 'none') return 1;
  return tank.lid === 'tight' ? 0 : (tank.lidOpenShare ?? LOOSE_LID_OPEN_SHARE);
}

function wetPanes(tank: RectangularTank, areas: TankAreas, conditions: TankConditions): Record<WetFace, PaneState> {
  const { waterTemperature, roomTemperature } = conditions;
  const face = (area: number, flow: HeatFlow, insulation: Layer | undefined) =>
    pane(tank, area, waterTemperature, roomTemperature, 1 / WATER_FILM_COEFFICIENT, tank.wall, insulation, flow);
  return {
    front: face(areas.front, 'horizontal', undefined),
    back: face(areas.back, 'horizontal', tank.insulation.back),
    sides: face(areas.sides, 'horizontal', tank.insulation.sides),
    bottom: face(areas.bottom, waterTemperature >= roomTemperature ? 'down' : 'up', tank.insulation.bottom),
  };
}

/** One face, from its inside temperature to the room. */
function pane(
  { outerFilmFactor = 1 }: RectangularTank,
  area: number,
  inside: number,
  room: number,
  waterFilmResistance: number,
  sheet: LidLayer,
  insulation: Layer | undefined,
  flow: HeatFlow,
): PaneState {
  const paneResistance =
    'conductance' in sheet ? 1 / sheet.conductance : layerResistance(sheet.thickness, sheet.conductivity);
  const insulationResistance =
    insulation === undefined ? 0 : layerResistance(insulation.thickness, insulation.conductivity);
  const inner = innerResistance(waterFilmResistance, paneResistance, insulationResistance);
  const emissivity = insulation === undefined ? (sheet.emissivity ?? OUTER_EMISSIVITY) : OUTER_EMISSIVITY;
  const outer = outerSurface(inside, room, inner, flow, emissivity, outerFilmFactor);
  return {
    area,
    inside,
    waterFilmResistance,
    paneResistance,
    insulationResistance,
    innerResistance: inner,
    outer,
    transmittance: transmittance(inner, outer.resistance),
    heat: paneHeat(area, inside, room, inner, outer.resistance),
  };
}

function openSurface(
  tank: RectangularTank,
  openShare: number,
  air: AirState,
  conditions: TankConditions,
): SurfaceState {
  const { waterTemperature, roomTemperature, atmosphericPressure } = conditions;
  const quietCoefficient = quietCoefficientShah2014(
    waterTemperature,
    air.waterVapour,
    roomTemperature,
    air.roomVapour,
    atmosphericPressure,
  );
  const activeCoefficient = activeCoefficientAshrae(INDOOR_AIR_SPEED, air.latentHeat);
  const { activeShare } = surfaceMethods[tank.surface];
  const area = faceArea(openShare, tank.length, tank.width);
  const factor = tank.evaporationFactor ?? 1;
  const coefficient = surfaceCoefficient(quietCoefficient, activeCoefficient, activeShare, factor);
  return {
    openShare,
    area,
    roomDryAirDensity: dryAirDensity(roomTemperature, air.roomVapour, atmosphericPressure),
    waterDryAirDensity: dryAirDensity(waterTemperature, air.waterVapour, atmosphericPressure),
    quietCoefficient,
    activeCoefficient,
    activeShare,
    factor,
    coefficient,
    evaporation: evaporationRate(coefficient, area, air.waterVapour, air.roomVapour),
    convectionCoefficient: surfaceConvectionCoefficient(coefficient, atmosphericPressure),
  };
}

/** The covered share: one temperature for the damp inner faces of lid and panes above the water, found by balance. */
function coveredSurface(
  tank: RectangularTank,
  coveredShare: number,
  air: AirState,
  conditions: TankConditions,
): LidState {
  const { waterTemperature, roomTemperature, atmosphericPressure } = conditions;
  const area = faceArea(coveredShare, tank.length, tank.width);
  const gap = headspaceGap(tank.height, tank.waterDepth);
  const flow = waterTemperature >= roomTemperature ? 'up' : 'down';
  const lidAt = (inner: number) => pane(tank, area, inner, roomTemperature, 0, tank.lidLayer!, undefined, flow);
  const freeboardAt = (inner: number) => dryPanes(tank, coveredShare, gap, inner, roomTemperature);
  if (gap === 0) {
    const lid = lidAt(waterTemperature);
    const nothing = { iterations: 0, residual: 0, headspace: undefined, freeboard: undefined };
    return { coveredShare, area, gap, innerTemperature: waterTemperature, lid, ...nothing };
  }
  const crossing = (inner: number) => headspaceFlux(waterTemperature, air.waterVapour, inner, gap, atmosphericPressure);
  const imbalance = (inner: number) => {
    const lid = lidAt(inner);
    const transmission = lid.area * lid.transmittance + freeboardConductance(freeboardAt(inner));
    return inner - lidTemperature(roomTemperature, area, crossing(inner).heatFlux, transmission);
  };
  const settled =
    waterTemperature === roomTemperature
      ? { root: waterTemperature, iterations: 0, residual: 0 }
      : findRoot(imbalance, roomTemperature, waterTemperature, { absoluteTolerance: 1e-9, what: 'lid temperature' });
  return {
    coveredShare,
    area,
    gap,
    innerTemperature: settled.root,
    iterations: settled.iterations,
    residual: settled.residual,
    headspace: crossing(settled.root),
    lid: lidAt(settled.root),
    freeboard: freeboardAt(settled.root),
  };
}

/** Panes above the water line; insulation covers them as it covers the wet part. */
function dryPanes(
  tank: RectangularTank,
  share: number,
  gap: number,
  inner: number,
  room: number,
): Record<DryFace, PaneState> {
  const face = (count: number, breadth: number, insulation: Layer | undefined) =>
    pane(tank, faceArea(count * share, breadth, gap), inner, room, 0, tank.wall, insulation, 'horizontal');
  return {
    front: face(1, tank.length, undefined),
    back: face(1, tank.length, tank.insulation.back),
    sides: face(2, tank.width, tank.insulation.sides),
  };
}

function roomHumidity(air: AirState, conditions: TankConditions): number {
  return humidityRatio(air.roomVapour, conditions.atmosphericPressure);
}

/** Room air blown through the water leaves at its temperature, saturated. */
function blownAir(tank: RectangularTank, air: AirState, conditions: TankConditions) {
  const flow = tank.airFlow ?? 0;
  if (flow === 0) return undefined;
  const { roomTemperature, atmosphericPressure } = conditions;
  const dryAirFlow = blownDryAir(flow, dryAirDensity(roomTemperature, air.roomVapour, atmosphericPressure));
  const saturated = humidityRatio(air.waterVapour, atmosphericPressure);
  return { dryAirFlow, evaporation: airStoneEvaporation(dryAirFlow, saturated, roomHumidity(air, conditions)) };
}

function evaporationRange(tank: RectangularTank, evaporation: number, surface: SurfaceState | undefined) {
  if (surface === undefined) return { low: evaporation, high: evaporation };
  const { low, high } = surfaceMethods[tank.surface].factor;
  const rest = evaporation - surface.evaporation;
  const range = scaledRange(surface.evaporation / surface.factor, low, high);
  return { low: rest + range.low, high: rest + range.high };
}
