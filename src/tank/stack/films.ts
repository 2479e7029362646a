// Films and panes by ISO 6946: the water film inside, solid layers, and the outer surface whose radiation follows from
// its real temperature. Heat flows one way through a pane; edges, corners and the frame are left out.

import { ConvergenceError } from '../../numerics/index.ts';

/** Stefan-Boltzmann constant σ, W/(m² K⁴); the value ISO 6946 prints is 5.67e-8. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;
/** Film between water and pane, W/(m² K): natural convection in water, 200 to 500; hardly matters beside the outer film. */
export const WATER_FILM_COEFFICIENT = 300;
/** Internal convective coefficients, W/(m² K): ISO 6946:2017 Annex C (values read in a public copy). */
export const INTERNAL_CONVECTION = { up: 5.0, horizontal: 2.5, down: 0.7 } as const;

/**
 * Range of the factor on h_c + h_r of an outer surface, one factor for all faces. The standard's coefficients are fixed; on
 * tanks 0.3 to 0.7 m high whose surface is 2 to 10 K above the room the laminar vertical plate of Churchill & Chu (1975) gives
 * 0.90 to 1.10 of them for panes, textbook horizontal plates 1.0 to 1.2 for bottoms and 0.7 to 0.9 for lids; room air moving
 * at 0.1 m/s gives 1.25 (4 + 4 v of the same standard, from memory of the source); the emissivity of glass is worth 2 %.
 * A wall or a stand close by takes as much away. Where between these the ends lie is a judgement.
 */
export const outerFilmRange = {
  low: 0.8,
  likely: 1,
  high: 1.25,
  source:
    'ISO 6946:2017 Annex C holds the film fixed; the ends are a judgement from plates in still air (0.7 to 1.2), room air at 0.1 m/s (1.25) and walls close by',
} as const;

export type HeatFlow = keyof typeof INTERNAL_CONVECTION;

/**
 * Thermal resistance R of a solid layer.
 *     R = d / k
 * @param thickness     d [m]
 * @param conductivity  k [W/(m K)]
 * @returns             R [m² K/W]
 * Source: ISO 6946:2017, clause 6.7.1 (number from memory). Worked value: 10 mm glass (1.0) → 0.010 m² K/W.
 */
export function layerResistance(thickness: number, conductivity: number): number {
  return thickness / conductivity;
}

/**
 * Radiative coefficient h_r of a surface.
 *     h_r = 4 ε σ T_m³
 * @param emissivity       ε [-]
 * @param meanTemperature  T_m [K], mean of the surface and its surroundings
 * @returns                h_r [W/(m² K)]
 * Accuracy: 0.1 % of the exact difference of fourth powers up to 20 K difference.
 * Source: ISO 6946:2017, Annex C. Worked value: ε 1, 20 °C → 5.714 (printed 5.7).
 */
export function radiativeCoefficient(emissivity: number, meanTemperature: number): number {
  return 4 * emissivity * STEFAN_BOLTZMANN * meanTemperature ** 3;
}

/**
 * Surface resistance R_s.
 *     R_s = 1 / (f (h_c + h_r))
 * @param convective  h_c [W/(m² K)]
 * @param radiative   h_r [W/(m² K)]
 * @param factor      f [-], > 0: how far the real film departs from the standard one; 1 is the standard itself
 * @returns           R_s [m² K/W]
 * Source: ISO 6946:2017, Annex C, with a factor of our own. Worked value: 2.5, 0.9 · 5.714, 1 → 0.1309 (conventional 0.13).
 */
export function surfaceResistance(convective: number, radiative: number, factor = 1): number {
  return 1 / (factor * (convective + radiative));
}

/**
 * Heat through a pane of area A between a warm inside at T_i and the room.
 *     Q = A (T_i − T_r) / (R_inner + R_s)
 * @param area       A [m²]
 * @param inside     T_i [K]
 * @param room       T_r [K]
 * @param inner      R_inner [m² K/W], all between T_i and the outer surface
 * @param outer      R_s [m² K/W]
 * @returns          Q [W], positive out of the tank
 * Source: ISO 6946:2017. Worked value: 1 m², 299.15, 295.15 K, 0.01333, 0.13 → 27.9 W.
 */
export function paneHeat(area: number, inside: number, room: number, inner: number, outer: number): number {
  return (area * (inside - room)) / (inner + outer);
}

/**
 * Resistance R_inner of all that lies between the inside of a face and its outer surface.
 *     R_inner = R_film + R_pane + R_insulation
 * @param film        R_film [m² K/W], water film 1/300; 0 where no water touches the face
 * @param pane        R_pane [m² K/W]
 * @param insulation  R_insulation [m² K/W], 0 where there is none
 * @returns           R_inner [m² K/W]
 * Source: ISO 6946:2017, clause 6.7.1 (number from memory). Worked value: 0.00333 + 0.010 + 0 → 0.01333.
 */
export function innerResistance(film: number, pane: number, insulation: number): number {
  return film + pane + insulation;
}

/**
 * Temperature T_s of the outer surface.
 *     T_s = T_i − (T_i − T_r) R_inner / (R_inner + R_s)
 * @param inside  T_i [K]
 * @param room    T_r [K]
 * @param inner   R_inner [m² K/W]
 * @param outer   R_s [m² K/W]
 * @returns       T_s [K]
 * Source: resistances in series. Worked value: 299.15, 295.15, 0.01333, 0.13 → 298.78 K.
 */
export function outerTemperature(inside: number, room: number, inner: number, outer: number): number {
  return inside - ((inside - room) * inner) / (inner + outer);
}

/**
 * Mean of two temperatures or vapour pressures.
 *     x_m = (x_1 + x_2) / 2
 * @param first   x_1 [K] or [Pa]
 * @param second  x_2, in the same unit
 * @returns       x_m
 * Source: definition. Worked value: 298.78, 295.15 K → 296.965 K.
 */
export function mean(first: number, second: number): number {
  return (first + second) / 2;
}

/**
 * Transmittance U of a face, from its inside to the room.
 *     U = 1 / (R_inner + R_s)
 * @param inner  R_inner [m² K/W]
 * @param outer  R_s [m² K/W]
 * @returns      U [W/(m² K)]
 * Source: ISO 6946:2017. Worked value: 0.01333, 0.13 → 6.977.
 */
export function transmittance(inner: number, outer: number): number {
  return 1 / (inner + outer);
}

/** The outer surface of a pane as it settles. */
export interface OuterSurface {
  readonly temperature: number;
  readonly emissivity: number;
  readonly convectiveCoefficient: number;
  readonly radiativeCoefficient: number;
  /** f [-], multiplies the sum of both coefficients. */
  readonly factor: number;
  readonly resistance: number;
}

/** The surface temperature is repeated until it moves less than this, K. */
const SURFACE_TOLERANCE = 1e-10;
const SURFACE_ITERATIONS = 100;

/**
 * Outer surface of a face as it settles: its temperature sets its radiation, which sets its temperature. Solved by
 * repetition: each round shrinks the error some fifty times, as radiation follows temperature only weakly.
 * @param inside      T_i [K]
 * @param room        T_r [K], air and surroundings
 * @param inner       R_inner [m² K/W], ≥ 0
 * @param flow        direction of heat flow: fixes h_c
 * @param emissivity  ε [-]
 * @param factor      f [-] on h_c + h_r, > 0
 * @returns           the surface temperature, its coefficients and R_s, in agreement with each other
 * @throws ConvergenceError if 100 rounds do not suffice.
 * Source: ISO 6946:2017, Annex C, with the surface temperature solved rather than guessed.
 */
export function outerSurface(
  inside: number,
  room: number,
  inner: number,
  flow: HeatFlow,
  emissivity: number,
  factor = 1,
): OuterSurface {
  const convectiveCoefficient = INTERNAL_CONVECTION[flow];
  let temperature = inside;
  let change = Number.POSITIVE_INFINITY;
  for (let round = 1; round <= SURFACE_ITERATIONS; round++) {
    const radiative = radiativeCoefficient(emissivity, mean(temperature, room));
    const resistance = surfaceResistance(convectiveCoefficient, radiative, factor);
    const next = outerTemperature(inside, room, inner, resistance);
    change = Math.abs(next - temperature);
    temperature = next;
    if (change < SURFACE_TOLERANCE) {
      return { temperature, emissivity, convectiveCoefficient, radiativeCoefficient: radiative, factor, resistance };
    }
  }
  throw new ConvergenceError('surface temperature', SURFACE_ITERATIONS, [temperature], change);
}

/**
 * Thermal resistance R of a sealed air layer, much wider than thick, with at most 5 K across it.
 *     R = 1 / (h_a + 4 σ T_m³ / (1/ε1 + 1/ε2 − 1));
 *     h_a = max(1.95, 0.025/d) up, max(1.25, 0.025/d) horizontal, max(0.12 d^−0.44, 0.025/d) down
 * @param thickness        d [m]
 * @param flow             direction of heat flow
 * @param emissivity1      ε1 [-], one face
 * @param emissivity2      ε2 [-], other face
 * @param meanTemperature  T_m [K]
 * @returns                R [m² K/W]
 * Pitfall: a gap open to the room is room air, not a layer.
 * Source: ISO 6946:2017, Annex D (constants read in a public copy). Worked value: 25 mm, horizontal, 0.9, 10 °C → 0.183.
 */
export function airLayerResistance(
  thickness: number,
  flow: HeatFlow,
  emissivity1: number,
  emissivity2: number,
  meanTemperature: number,
): number {
  const still = 0.025 / thickness;
  const moving = { up: 1.95, horizontal: 1.25, down: 0.12 * thickness ** -0.44 }[flow];
  const radiative = radiativeCoefficient(1, meanTemperature) / (1 / emissivity1 + 1 / emissivity2 - 1);
  return 1 / (Math.max(moving, still) + radiative);
}
