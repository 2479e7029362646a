// How humid the tank's room is where it is aired: what the tank evaporates into it, and what exchanged air carries off, in
// balance. Simplification: a measure that wraps the tank leaves the room as humid as it was.

import { saturationVapourPressure } from '../../../matter/air/index.ts';
import { ventilatedRoom } from '../../../surroundings/index.ts';
import { type TankConditions, type TankDescription, tankEvaporationOf } from '../../../tank/index.ts';
import type { StagedDesign } from '../engine-assumptions.ts';

/** Air changes n [1/s] of the room's volume V [m³], relative humidity outdoors [-]. */
export interface RoomVentilation {
  readonly airChanges: number;
  readonly volume: number;
  readonly outdoorHumidity: number;
}

/** What airs the room; null where its humidity is known or held by a dehumidifier. */
export function ventilationOf({ moisture, volume }: StagedDesign['room']): RoomVentilation | null {
  if (moisture.kind !== 'ventilated') return null;
  const { airChanges, outdoorHumidity } = moisture;
  return { airChanges, volume, outdoorHumidity };
}

/** Relative humidity of the aired room [-] at which what evaporates and what is carried off agree. */
export function airedHumidity(
  { airChanges, volume, outdoorHumidity }: RoomVentilation,
  tank: TankDescription,
  conditions: TankConditions & { readonly outdoorTemperature: number },
): number {
  const { roomTemperature, atmosphericPressure, outdoorTemperature } = conditions;
  const evaporation = tankEvaporationOf(tank);
  const { relativeHumidity } = ventilatedRoom(
    { temperature: roomTemperature, pressure: atmosphericPressure, volume },
    {
      airChanges,
      outdoorTemperature,
      outdoorVapour: outdoorHumidity * saturationVapourPressure(outdoorTemperature),
    },
    (roomRelativeHumidity) => evaporation({ ...conditions, roomRelativeHumidity }),
  );
  return relativeHumidity;
}
