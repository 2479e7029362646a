// Stage: the tank as the tank model wants it told, and what it needs under given conditions.

import type { PipeOf, PlainDesign, SizedLoadOf } from '../../design/index.ts';
import { layerConductivity, material } from '../../matter/materials/index.ts';
import {
  type BuiltTank,
  lightHeat,
  type MeasuredTank,
  type Pipe,
  pumpHeat,
  type TankConditions,
  type TankDescription,
  type TankLoad,
  tankLoad,
} from '../../tank/index.ts';
import { airedHumidity, type RoomVentilation } from './room-air.ts';
import type { TankFactors } from './tank-assumptions.ts';
import { exposuresIn } from './tank-stacks.ts';
import { vesselsOf } from './tank-vessels.ts';

/** The tank as the design describes it. */
export type PlainTank = Pick<PlainDesign['tank'], 'waterTemperature' | 'salinity' | 'load'>;

/** What surrounds the tank at one moment [K]. */
export interface TankPlace {
  readonly roomTemperature: number;
  readonly outdoorTemperature: number;
  readonly groundTemperature: number;
  readonly mainsTemperature: number;
}

/** What the tank's heat balance needs of the design. */
export interface TankSlice {
  readonly tank: PlainTank;
  readonly windSpeed: number;
  readonly factors: TankFactors;
  /** Of a room whose humidity is known or held; that of an aired one follows from what the tank evaporates. */
  readonly relativeHumidity: number;
  /** How the room is aired; null where its humidity is known or held. */
  readonly ventilation: RoomVentilation | null;
  /** On every loss; 1 where absent. */
  readonly measuredOverModelled?: number;
}

/**
 * The design's tank in the words of the tank model.
 * @param slice             its part of the design
 * @param mainsTemperature  T [K] of the water main
 */
export function tankDescription(slice: TankSlice, mainsTemperature: number): TankDescription {
  const { load } = slice.tank;
  return load.kind === 'measured' ? measuredTank(slice.tank, load) : builtTank(slice, load, mainsTemperature);
}

/** The conditions around the tank as its model reads them. */
export function tankConditions(slice: TankSlice, place: TankPlace, atmosphericPressure: number): TankConditions {
  const { roomTemperature, outdoorTemperature, groundTemperature } = place;
  const conditions = {
    waterTemperature: slice.tank.waterTemperature,
    roomTemperature,
    roomRelativeHumidity: slice.relativeHumidity,
    atmosphericPressure,
    outdoorTemperature,
    groundTemperature,
  };
  if (slice.ventilation === null) return conditions;
  const tank = tankDescription(slice, place.mainsTemperature);
  return { ...conditions, roomRelativeHumidity: airedHumidity(slice.ventilation, tank, conditions) };
}

/** The tank's heat balance in its place. */
export function tankLoadAt(slice: TankSlice, place: TankPlace, atmosphericPressure: number): TankLoad {
  const tank = tankDescription(slice, place.mainsTemperature);
  return tankLoad(tank, tankConditions(slice, place, atmosphericPressure));
}

/** Whether weather, ground or water main reach the tank: else its load follows from the room alone. */
export function dependsOnSeasons({ tank: { load }, ventilation }: TankSlice): boolean {
  if (ventilation !== null) return true;
  if (load.kind === 'measured') return false;
  const isOutside = exposuresIn(load).some(({ kind }) => kind === 'outdoors' || kind === 'slab');
  return isOutside || load.makeUpFrom === 'mains' || load.waterChange !== undefined;
}

function measuredTank(tank: PlainTank, load: Extract<PlainTank['load'], { kind: 'measured' }>): MeasuredTank {
  return { ...load, ...gainsOf(load), salinity: tank.salinity };
}

function builtTank(
  { tank, factors, windSpeed, measuredOverModelled }: TankSlice,
  load: SizedLoadOf<number>,
  mains: number,
): BuiltTank {
  const { waterChange } = load;
  return {
    kind: 'built',
    salinity: tank.salinity,
    vessels: vesselsOf(load, factors, windSpeed),
    pipes: load.pipes.map((pipe, index) => pipeOf(pipe, index, factors)),
    outerFilmFactor: factors.outerFilmFactor,
    ...(measuredOverModelled === undefined ? {} : { measuredOverModelled }),
    airFlow: { airStones: load.airStones, skimmer: load.skimmerAir },
    exchange: {
      ...(load.makeUpFrom === 'mains' ? { makeUpTemperature: mains } : {}),
      changeFlow: waterChange === undefined ? 0 : waterChange.volume / waterChange.every,
      changeTemperature: mains,
    },
    ...gainsOf(load),
    ultravioletHeat: pumpHeat(load.ultravioletPower, load.ultravioletShareToWater),
  };
}

function gainsOf(load: PlainTank['load']) {
  return {
    pumpHeat: pumpHeat(load.pumpPower, load.pumpShareToWater),
    lightHeat: lightHeat(load.lightPower, load.lightHours, load.lightShareToWater),
  };
}

function pipeOf(pipe: PipeOf<number>, index: number, factors: TankFactors): Pipe {
  const { length, outerDiameter, wallThickness, insulation } = pipe;
  return {
    name: pipe.name ?? `pipe${index + 1}`,
    length,
    outerDiameter,
    wallThickness,
    wallConductivity: layerConductivity(pipe.material, wallThickness).likely,
    ...(insulation === undefined
      ? {}
      : {
          insulation: {
            thickness: insulation.thickness,
            conductivity:
              factors.insulationConductivityFactor *
              layerConductivity(insulation.material, insulation.thickness).likely,
          },
        }),
    emissivity: material(insulation?.material ?? pipe.material).emissivity.likely,
  };
}
