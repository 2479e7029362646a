// Films and panes by ISO 6946: the water film inside, solid layers in series, and the coefficients of the outer film. Heat
// flows one way through a pane; edges, corners and the frame are left out. Gaps: air-gap.ts, water-gap.ts; joints: joints.ts.

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

/** Which way heat flows: ISO 6946 calls everything within 30° of the horizontal plane 'horizontal'. */
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
 * Convective coefficient h_c of a face in moving outdoor air.
 *     h_c = 4 + 4 v
 * @param windSpeed  v [m/s], close to the face
 * @returns          h_c [W/(m² K)]
 * Source: ISO 6946:2017, Annex C. Worked value: 4 m/s → 20 W/(m² K), with which R_se is the conventional 0.04 m² K/W.
 */
export function windConvection(windSpeed: number): number {
  return 4 + 4 * windSpeed;
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
  return 4 * emissivity * STEFAN_BOLTZMANN * (meanTemperature * meanTemperature * meanTemperature);
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
 * Heat through a pane of area A between a warm inside at T_i and what lies beyond.
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
 * Resistance R_inner up to the far face of a layer: films and layers in series.
 *     R_inner = R_before + R_layer
 * @param before  R_before [m² K/W], water film (1/300; 0 where no water touches the face) and the layers before this one
 * @param layer   R_layer [m² K/W], joints included
 * @returns       R_inner [m² K/W]
 * Source: ISO 6946:2017, clause 6.7.1 (number from memory). Worked value: 0.00333 + 0.010 → 0.01333.
 */
export function innerResistance(before: number, layer: number): number {
  return before + layer;
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
 * Transmittance U of a face, from its inside to what lies beyond.
 *     U = 1 / (R_inner + R_s)
 * @param inner  R_inner [m² K/W]
 * @param outer  R_s [m² K/W]
 * @returns      U [W/(m² K)]
 * Source: ISO 6946:2017. Worked value: 0.01333, 0.13 → 6.977.
 */
export function transmittance(inner: number, outer: number): number {
  return 1 / (inner + outer);
}

/**
 * Heat per area q through a face.
 *     q = U (T_i − T_r)
 * @param transmittance  U [W/(m² K)]
 * @param inside         T_i [K]
 * @param beyond         T_r [K]
 * @returns              q [W/m²]
 * Source: definition of U. Worked value: 6.977, 299.15, 295.15 K → 27.91 W/m².
 */
export function heatFlux(transmittance: number, inside: number, beyond: number): number {
  return transmittance * (inside - beyond);
}

/**
 * Temperature T behind a resistance, on the way out.
 *     T = T_i − q R
 * @param inside      T_i [K]
 * @param flux        q [W/m²]
 * @param resistance  R [m² K/W], from the inside up to there
 * @returns           T [K]
 * Source: resistances in series. Worked value: 299.15 K, 27.91, 0.01333 → 298.78 K.
 */
export function faceTemperature(inside: number, flux: number, resistance: number): number {
  return inside - flux * resistance;
}
