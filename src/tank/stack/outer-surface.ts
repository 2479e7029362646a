// The outer surface of a panel and what lies beyond it: room air, a wall close by, a closed stand, a slab on the ground, or
// outdoor air. Each gives a resistance from the surface to a sink of known temperature; radiation follows from the real
// temperature of the surface. Named simplifications: a wall is warmed by radiation across a gap whose air is room air; the air
// and boards of a stand have one temperature; below a slab nothing but the way to the ground counts.

import { InputError } from '../../numerics/index.ts';
import type { Exposure } from '../built-tank.ts';
import {
  type HeatFlow,
  INTERNAL_CONVECTION,
  mean,
  radiativeCoefficient,
  surfaceResistance,
  windConvection,
} from './films.ts';

/** Emissivity of the wall of a house: paint, plaster, wood (0.9, from memory of handbooks). */
export const WALL_EMISSIVITY = 0.9;

/** What surrounds a tank [K]; outdoors and ground where a panel asks for them. */
export interface Surroundings {
  readonly room: number;
  readonly outdoors?: number;
  readonly ground?: number;
}

/** The outer surface of a panel as it settles. */
export interface OuterSurface {
  readonly temperature: number;
  readonly emissivity: number;
  /** h_c and h_r [W/(m² K)]; both 0 on a slab, where no air lies between. Against a wall h_r is what reaches the room in the end. */
  readonly convectiveCoefficient: number;
  readonly radiativeCoefficient: number;
  /** f [-], multiplies the sum of both coefficients. */
  readonly factor: number;
  /** Of the film, and of what lies between it and the sink: a stand's boards, slab and ground; 0 where nothing does [m² K/W]. */
  readonly filmResistance: number;
  readonly beyondResistance: number;
  /** R_s [m² K/W], both together: from the surface to the sink. */
  readonly resistance: number;
  /** Face of the wall across an open gap [K]. */
  readonly wallTemperature?: number;
}

/** Sink of an exposure [K]. @throws InputError where a temperature it asks for is not given */
export function sinkTemperature(exposure: Exposure, { room, outdoors, ground }: Surroundings): number {
  if (exposure.kind === 'outdoors') return required('outdoorTemperature', outdoors);
  if (exposure.kind === 'slab') return required('groundTemperature', ground);
  return room;
}

function required(path: string, temperature: number | undefined): number {
  if (temperature === undefined)
    throw new InputError(path, temperature, 'a temperature, as a panel faces it', 'missing');
  return temperature;
}

/** R [m² K/W] beyond the film, in series with it. */
export function beyondResistance(exposure: Exposure): number {
  return exposure.kind === 'closedStand' || exposure.kind === 'slab' ? exposure.resistance : 0;
}

/**
 * Resistance R_s from the outer surface to what lies beyond.
 *     R_s = R_f + R_b
 * @param film    R_f [m² K/W], 0 on a slab
 * @param beyond  R_b [m² K/W], air and boards of a closed stand, or slab and ground; 0 in free air
 * @returns       R_s [m² K/W]
 * Source: resistances in series. Worked value: 0.171, 0.061 → 0.232 m² K/W.
 */
export function outerResistance(film: number, beyond: number): number {
  return film + beyond;
}

/** h_c [W/(m² K)] of the film. */
export function outerConvection(exposure: Exposure, flow: HeatFlow): number {
  if (exposure.kind === 'slab') return 0;
  return exposure.kind === 'outdoors' ? windConvection(exposure.windSpeed) : INTERNAL_CONVECTION[flow];
}

/**
 * Radiative coefficient to the room by way of a wall: the wall takes up radiation across the gap and passes it on to the air of
 * the gap and through itself.
 *     h_r' = h_r (f R_w h_c + 1) / (f R_w (h_r + h_c) + 1)
 * @param radiative   h_r [W/(m² K)], surface to wall
 * @param convective  h_c [W/(m² K)], wall to the air of the gap
 * @param wall        R_w [m² K/W], from the face of the wall to the air of the room beyond it
 * @param factor      f [-] on the films
 * @returns           h_r' [W/(m² K)], below h_r
 * Source: resistances in series and side by side; own simplification: the gap's air is room air.
 * Worked value: 4.7, 2.5, 0.5, 1 → 2.30 W/(m² K).
 */
export function radiativeCoefficientByWall(
  radiative: number,
  convective: number,
  wall: number,
  factor: number,
): number {
  const share = factor * wall;
  return (radiative * (share * convective + 1)) / (share * (radiative + convective) + 1);
}

/**
 * Radiative coefficient between a surface and a wall across an open gap.
 *     h_r = 4 σ T_m³ / (1/ε + 1/ε_w − 1)
 * @param emissivity       ε [-] of the surface
 * @param wall             ε_w [-] of the wall
 * @param meanTemperature  T_m [K]
 * @returns                h_r [W/(m² K)]
 * Source: parallel grey plates. Worked value: 0.9, 0.9, 20 °C → 4.67.
 */
export function radiationToWall(emissivity: number, wall: number, meanTemperature: number): number {
  return radiativeCoefficient(1, meanTemperature) / (1 / emissivity + 1 / wall - 1);
}

/** Film of an outer surface at a temperature, and what its radiation goes to. */
export interface OuterFilm {
  readonly radiative: number;
  readonly resistance: number;
  readonly wallTemperature: number;
}

/**
 * Radiative coefficient and resistance of the film of a surface whose temperature is known.
 * @param exposure         what lies beyond
 * @param surface          T_s [K]
 * @param facing           temperature of what it looks at [K]: the sink, or the air of a stand
 * @param wallTemperature  of a wall close by [K], as the round before left it; not read elsewhere
 * @param convective       h_c [W/(m² K)]
 * @param emissivity       ε [-]
 * @param factor           f [-]
 * @returns                h_r, the resistance of the film, and the wall's temperature that follows
 */
export function outerFilm(
  exposure: Exposure,
  surface: number,
  facing: number,
  wallTemperature: number,
  convective: number,
  emissivity: number,
  factor: number,
): OuterFilm {
  if (exposure.kind === 'slab') return { radiative: 0, resistance: 0, wallTemperature: facing };
  if (exposure.kind !== 'againstWall') {
    const radiative = radiativeCoefficient(emissivity, mean(surface, facing));
    return { radiative, resistance: surfaceResistance(convective, radiative, factor), wallTemperature: facing };
  }
  const direct = radiationToWall(emissivity, WALL_EMISSIVITY, mean(surface, wallTemperature));
  const radiative = radiativeCoefficientByWall(direct, convective, exposure.resistance, factor);
  const wall = wallFaceTemperature(surface, facing, radiative, direct);
  return { radiative, resistance: surfaceResistance(convective, radiative, factor), wallTemperature: wall };
}

/**
 * Temperature T_w of the wall of a house across an open gap: what leaves the surface by radiation reaches it.
 *     T_w = T_s − (T_s − T_r) h_r' / h_r
 * @param surface  T_s [K]
 * @param room     T_r [K]
 * @param onward   h_r' [W/(m² K)], of what reaches the room in the end
 * @param direct   h_r [W/(m² K)], from the surface to the wall
 * @returns        T_w [K]
 * Source: heat balance of the wall. Worked value: 298.4, 292.2 K, 2.9, 4.7 → 294.574 K.
 */
export function wallFaceTemperature(surface: number, room: number, onward: number, direct: number): number {
  return surface - ((surface - room) * onward) / direct;
}
