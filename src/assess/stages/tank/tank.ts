// Stage: the tank as the tank model wants it told, and what it needs under given conditions.

import type { PlainDesign } from '../../../design/index.ts';
import type { MonthConditions } from '../../../surroundings/index.ts';
import {
  lightHeat,
  type MeasuredTank,
  pumpHeat,
  type TankConditions,
  type TankDescription,
  type TankLoad,
  tankLoad,
} from '../../../tank/index.ts';
import { sizedTankParts } from '../sized-tank/handed-over.ts';
import { airedHumidity, type RoomVentilation } from '../surroundings/room-air.ts';
import type { TankFactors } from './tank-assumptions.ts';
import { exposuresIn } from './tank-stacks.ts';

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
 * @param slice  its part of the design
 */
export function tankDescription(slice: TankSlice): TankDescription {
  const { load } = slice.tank;
  return load.kind === 'measured' ? measuredTank(slice.tank, load) : sizedTankParts().builtTank(slice, load);
}

/** The conditions around the tank as its model reads them. */
export function tankConditions(slice: TankSlice, place: TankPlace, atmosphericPressure: number): TankConditions {
  return conditionsAround(slice, place, atmosphericPressure, () => tankDescription(slice));
}

/** @param described  the slice's tank; read where the room's humidity follows from it */
function conditionsAround(
  slice: TankSlice,
  place: TankPlace,
  atmosphericPressure: number,
  described: () => TankDescription,
): TankConditions {
  const { roomTemperature, outdoorTemperature, groundTemperature, mainsTemperature } = place;
  const conditions = {
    waterTemperature: slice.tank.waterTemperature,
    roomTemperature,
    roomRelativeHumidity: slice.relativeHumidity,
    atmosphericPressure,
    outdoorTemperature,
    groundTemperature,
    mainsTemperature,
  };
  if (slice.ventilation === null) return conditions;
  return { ...conditions, roomRelativeHumidity: airedHumidity(slice.ventilation, described(), conditions) };
}

/** The tank's heat balance in its place. */
export function tankLoadAt(slice: TankSlice, place: TankPlace, atmosphericPressure: number): TankLoad {
  return tankLoadIn(slice, atmosphericPressure)(place);
}

/** The tank's heat balance in any of several places; the tank is described once for all of them. */
export function tankLoadIn(slice: TankSlice, atmosphericPressure: number): (place: TankPlace) => TankLoad {
  const tank = tankDescription(slice);
  return (place) =>
    tankLoad(
      tank,
      conditionsAround(slice, place, atmosphericPressure, () => tank),
    );
}

/** Months that differ in what surrounds the tank, and which of them each month is. */
export interface DifferentMonths {
  readonly different: readonly (MonthConditions & TankPlace)[];
  readonly ofMonth: readonly number[];
}

/**
 * Months as far from the coldest one are alike in all that surrounds the tank; so are heated months where neither outdoors nor
 * the water main reaches the tank.
 */
export function differentMonths(slice: TankSlice, months: readonly (MonthConditions & TankPlace)[]): DifferentMonths {
  const readsSeasons = dependsOnSeasons(slice);
  const different: (MonthConditions & TankPlace)[] = [];
  const ofMonth = months.map((month) => {
    const known = different.findIndex(
      ({ roomTemperature, distance }) =>
        roomTemperature === month.roomTemperature && (!readsSeasons || distance === month.distance),
    );
    return known >= 0 ? known : different.push(month) - 1;
  });
  return { different, ofMonth };
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

/** What stays in the water of pumps and lights [W]. */
export function gainsOf(load: PlainTank['load']) {
  return {
    pumpHeat: pumpHeat(load.pumpPower, load.pumpShareToWater),
    lightHeat: lightHeat(load.lightPower, load.lightHours, load.lightShareToWater),
  };
}
