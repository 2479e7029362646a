// One water surface in the air over it, be it the room's or that in a hood: the coefficient of its evaporation by how it looks,
// then vapour, convection and radiation.

import { dryAirDensity } from '../../matter/air/index.ts';
import type { Vessel } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import type { AirState, SurfaceState } from '../load.ts';
import { quietInMovingAir } from './pools.ts';
import {
  activeCoefficientAshrae,
  evaporationRate,
  INDOOR_AIR_SPEED,
  quietCoefficientShah2014,
  surfaceCoefficient,
  surfaceConvectionCoefficient,
  surfaceMethods,
} from './surface.ts';

/** How a surface looks, and the air over it, as far as the coefficients ask. */
export type SurfaceLook = Pick<Vessel, 'surface' | 'evaporationFactor' | 'airSpeed'>;

/** Coefficients [kg/(s m² Pa)] of a surface in air of T_a [K] and p_a [Pa], on the way to K. */
export function coefficientInAir(
  look: SurfaceLook,
  { waterTemperature, atmosphericPressure }: TankConditions,
  { waterVapour, latentHeat }: AirState,
  airTemperature: number,
  airVapour: number,
) {
  const airSpeed = look.airSpeed ?? INDOOR_AIR_SPEED;
  const factor = look.evaporationFactor ?? 1;
  const { activeShare } = surfaceMethods[look.surface];
  const quietCoefficient = quietCoefficientShah2014(
    waterTemperature,
    waterVapour,
    airTemperature,
    airVapour,
    atmosphericPressure,
  );
  const movingAirCoefficient = quietInMovingAir(quietCoefficient, airSpeed, latentHeat);
  const activeCoefficient = activeCoefficientAshrae(airSpeed, latentHeat);
  const coefficient = surfaceCoefficient(movingAirCoefficient, activeCoefficient, activeShare, factor);
  return { airSpeed, quietCoefficient, movingAirCoefficient, activeCoefficient, activeShare, factor, coefficient };
}

/** The share of a vessel's surface that is open to the room, as it evaporates. */
export function openSurface(
  vessel: Vessel,
  openShare: number,
  air: AirState,
  conditions: TankConditions,
): SurfaceState {
  const { waterTemperature, roomTemperature, atmosphericPressure } = conditions;
  const coefficients = coefficientInAir(vessel, conditions, air, roomTemperature, air.roomVapour);
  const area = openShare * vessel.waterSurface;
  return {
    surface: vessel.surface,
    openShare,
    area,
    roomDryAirDensity: dryAirDensity(roomTemperature, air.roomVapour, atmosphericPressure),
    waterDryAirDensity: dryAirDensity(waterTemperature, air.waterVapour, atmosphericPressure),
    ...coefficients,
    evaporation: evaporationRate(coefficients.coefficient, area, air.waterVapour, air.roomVapour),
    convectionCoefficient: surfaceConvectionCoefficient(coefficients.coefficient, atmosphericPressure),
  };
}
