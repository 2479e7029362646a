// Four published ways to the evaporation of one surface, at the conditions it has: their disagreement is the range. Which of
// them speak for a look: undisturbed water is what Shah, the analogy and the quiet pools describe; the handbook's figure
// and used pools describe water that is stirred up. Each end is widened to what the data behind a method scatter.

import type { Surface } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import type { AirState } from '../load.ts';
import { analogyCoefficient, surfaceLength } from './mass-transfer.ts';
import { quietCoefficientSmith1993, quietInMovingAir, USED_POOL_RATIO } from './pools.ts';
import { activeCoefficientAshrae, quietCoefficientShah2014, surfaceCoefficient, surfaceMethods } from './surface.ts';
import { airState } from './vapour.ts';

/** Coefficients [kg/(s m² Pa)] of one surface by each method. */
export interface MethodCoefficients {
  /** Analogy of heat and mass transfer, from the size of the surface; in moving air with the pools' term. */
  readonly massTransfer: number;
  /** Shah, undisturbed water; in moving air with the pools' term. */
  readonly shah: number;
  /** Smith, Löf & Jones, undisturbed pools. */
  readonly quietPools: number;
  /** ASHRAE Handbook HVAC Applications, active water. */
  readonly handbook: number;
  /** Smith, Löf & Jones, pools in use. */
  readonly usedPools: number;
}

/** What a surface evaporates by the methods, over what is computed for it. */
export interface SurfaceMethodRange {
  readonly methods: MethodCoefficients;
  /** K [kg/(s m² Pa)] that the load takes, at an evaporation factor of 1. */
  readonly likely: number;
  /** Range of the evaporation factor: what the methods span here, and never less than `surfaceMethods` holds fixed. */
  readonly low: number;
  readonly high: number;
  /** What the methods alone span here, as factors. */
  readonly methodsLow: number;
  readonly methodsHigh: number;
}

/** Shah's mean deviation from the data [-], as his abstract states. */
const SHAH_DEVIATION = 0.18;

/** Ends [kg/(s m² Pa)] of the methods that describe a look. */
const ends: Readonly<Record<Surface, (methods: MethodCoefficients) => readonly number[]>> = {
  still: ({ shah, massTransfer, quietPools }) => [
    (1 - SHAH_DEVIATION) * shah,
    (1 + SHAH_DEVIATION) * shah,
    massTransfer,
    quietPools,
  ],
  rippled: ({ shah, massTransfer, quietPools, handbook }) => [shah, massTransfer, quietPools, handbook],
  rough: ({ quietPools, handbook, usedPools }) => [quietPools, handbook, usedPools],
};

/**
 * All methods for one surface.
 * @param conditions  T_w, T_r, p
 * @param air         vapour pressures and latent heat there
 * @param area        A [m²] of the whole surface
 * @param perimeter   P [m]
 * @param airSpeed    v [m/s]
 */
export function methodCoefficients(
  conditions: TankConditions,
  air: AirState,
  area: number,
  perimeter: number,
  airSpeed: number,
): MethodCoefficients {
  const { waterTemperature, roomTemperature, atmosphericPressure } = conditions;
  const at = [waterTemperature, air.waterVapour, roomTemperature, air.roomVapour, atmosphericPressure] as const;
  const handbook = activeCoefficientAshrae(airSpeed, air.latentHeat);
  const quietPools = quietCoefficientSmith1993(handbook);
  return {
    massTransfer: quietInMovingAir(analogyCoefficient(...at, surfaceLength(area, perimeter)), airSpeed, air.latentHeat),
    shah: quietInMovingAir(quietCoefficientShah2014(...at), airSpeed, air.latentHeat),
    quietPools,
    handbook,
    usedPools: USED_POOL_RATIO * quietPools,
  };
}

/**
 * Range of the evaporation factor of a surface at the conditions it has, from the methods themselves.
 * @param conditions  T_w, T_r, RH, p
 * @param surface     how the surface looks
 * @param area        A [m²] of the whole surface
 * @param perimeter   P [m]
 * @param airSpeed    v [m/s]; INDOOR_AIR_SPEED in a still room
 * @param salinity    S [kg/kg]
 * @returns           the four methods, what the load takes, and the factors that span them
 * Pitfall: continuous through p_w = p_r, but where the room is warmer and drier than the water the methods part further than the
 * fixed factors say, as Shah's then has its unconfirmed second term alone.
 * Worked value: 26 °C over 22 °C 50 %, rippled, 1.2 x 0.5 m, 0.1 m/s → methods 0.72 to 1.24 of K, so 0.72 to 1.25.
 */
export function surfaceMethodRange(
  conditions: TankConditions,
  surface: Surface,
  area: number,
  perimeter: number,
  airSpeed: number,
  salinity: number,
): SurfaceMethodRange {
  const air = airState(conditions, salinity);
  return methodRange(methodCoefficients(conditions, air, area, perimeter, airSpeed), surface);
}

/** The same from coefficients already known. */
export function methodRange(methods: MethodCoefficients, surface: Surface): SurfaceMethodRange {
  const { activeShare, factor } = surfaceMethods[surface];
  const likely = surfaceCoefficient(methods.shah, methods.handbook, activeShare, 1);
  const factors = ends[surface](methods).map((coefficient) => coefficient / likely);
  const methodsLow = Math.min(...factors);
  const methodsHigh = Math.max(...factors);
  return {
    methods,
    likely,
    low: Math.min(factor.low, methodsLow),
    high: Math.max(factor.high, methodsHigh),
    methodsLow,
    methodsHigh,
  };
}
