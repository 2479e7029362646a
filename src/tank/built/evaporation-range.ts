// The evaporation with the doubt of the methods at both ends: each open surface by what the methods span at its own conditions,
// size and look, a hood settled anew with either end. Air drawn through the water carries no such doubt.

import type { BuiltTank, Cover, Vessel } from '../built-tank.ts';
import { hoodedSurface } from '../cover/hood.ts';
import type { BuiltIntermediates, VesselState } from '../load.ts';
import { methodCoefficients, methodRange, type SurfaceMethodRange } from '../water-surface/methods.ts';
import { INDOOR_AIR_SPEED } from '../water-surface/surface.ts';
import type { VesselPlace } from './vessel.ts';

export interface EvaporationRange {
  readonly low: number;
  readonly high: number;
}

/**
 * Range of a tank's evaporation [kg/s] around what was computed.
 * @param tank           its vessels and their covers by day and by night
 * @param place          what they have in common
 * @param intermediates  vessels as they settled
 * @param evaporation    of the whole tank [kg/s]
 */
export function evaporationRange(
  tank: BuiltTank,
  place: VesselPlace,
  intermediates: BuiltIntermediates,
  evaporation: number,
): EvaporationRange {
  const { vessels, night, measuredOverModelled } = intermediates;
  let low = evaporation;
  let high = evaporation;
  const widen = (vessel: Vessel, cover: Cover, state: VesselState, share: number) => {
    const weight = share * measuredOverModelled;
    if (weight === 0) return;
    const range = vesselRange(vessel, cover, state, place);
    low += weight * (range.low - state.evaporation);
    high += weight * (range.high - state.evaporation);
  };
  for (const [index, vessel] of tank.vessels.entries()) {
    const dayShare = index === 0 ? 1 - (night?.share ?? 0) : 1;
    widen(vessel, vessel.cover, vessels[index]!, dayShare);
  }
  if (tank.night !== undefined && night !== undefined) {
    widen(tank.vessels[0]!, tank.night.cover, night.vessel, night.share);
  }
  return { low, high };
}

/** What the methods span for a vessel's whole surface in the room's air. */
export function vesselMethodRange(vessel: Vessel, { conditions, air }: VesselPlace): SurfaceMethodRange {
  const airSpeed = vessel.airSpeed ?? INDOOR_AIR_SPEED;
  const methods = methodCoefficients(conditions, air, vessel.waterSurface, vessel.perimeter, airSpeed);
  return methodRange(methods, vessel.surface);
}

function vesselRange(
  vessel: Vessel,
  cover: Cover,
  { surface, hood }: VesselState,
  place: VesselPlace,
): EvaporationRange {
  if (surface === undefined && hood === undefined) return { low: 0, high: 0 };
  const { low, high } = vesselMethodRange(vessel, place);
  const [one, other] = [low, high].map((factor) => {
    if (cover.kind === 'hood') {
      return hoodedSurface({ vessel: { ...vessel, evaporationFactor: factor }, cover, ...place }).carriedVapour;
    }
    return surface === undefined ? 0 : (surface.evaporation / surface.factor) * factor;
  }) as [number, number];
  return { low: Math.min(one, other), high: Math.max(one, other) };
}
