// A sealed air space by ISO 6946:2017 Annex D: convection across it by the direction of the heat flow, its thickness and the
// difference of temperature between its faces; radiation by their emissivities. A space that is open to the room is room air
// and no layer. Constants read in a public copy; the printed table from memory.

import { type HeatFlow, radiativeCoefficient } from './films.ts';

/** Thicker air spaces than this the standard does not treat as layers, m. */
export const THICKEST_AIR_LAYER = 0.3;
/** A space whose face is less than this many thicknesses wide is 'narrow': its ends shine too. */
const WIDE_IN_THICKNESSES = 10;
/** Conductivity of the air that the standard's 0.025/d stands for, W/(m K). */
const STILL_AIR_CONDUCTIVITY = 0.025;

/** Constants of h_a = max(a dᵐ, b ΔTⁿ dᵐ, 0.025/d): `a` for at most 5 K across, `b` and `n` for more. */
export const airLayerConstants: Readonly<
  Record<HeatFlow, { readonly a: number; readonly b: number; readonly n: number; readonly m: number }>
> = {
  up: { a: 1.95, b: 1.14, n: 1 / 3, m: 0 },
  horizontal: { a: 1.25, b: 0.73, n: 1 / 3, m: 0 },
  down: { a: 0.12, b: 0.09, n: 0.187, m: -0.44 },
};

/**
 * Convective coefficient h_a across a sealed air layer.
 *     h_a = max(a dᵐ, b ΔTⁿ dᵐ, 0.025/d)
 *     up a 1.95, b 1.14, n 1/3, m 0; horizontal 1.25, 0.73, 1/3, 0; down 0.12, 0.09, 0.187, −0.44
 * @param thickness   d [m]
 * @param flow        direction of heat flow
 * @param difference  ΔT [K] between the faces, ≥ 0
 * @returns           h_a [W/(m² K)]
 * Pitfall: the standard takes the first term up to 5 K and the second beyond, which leaves a step at 5 K (−0.03 % up, −0.14 %
 * sideways, +1.3 % down). The larger of both has none; it differs from the standard by those steps at most, from 4.66 to 5.02 K.
 * Source: ISO 6946:2017, Annex D. Worked value: 25 mm, horizontal, 3 K → 1.25; down, 3 K → 0.608; up, 10 K → 2.456.
 */
export function airLayerConvection(thickness: number, flow: HeatFlow, difference: number): number {
  const { a, b, n, m } = airLayerConstants[flow];
  const moving = n === 1 / 3 ? Math.max(a, b * Math.cbrt(difference)) : Math.max(a, b * difference ** n);
  return Math.max(m === 0 ? moving : moving * thickness ** m, STILL_AIR_CONDUCTIVITY / thickness);
}

/**
 * Radiative coefficient h_r across an air layer much wider than thick.
 *     h_r = 4 σ T_m³ / (1/ε1 + 1/ε2 − 1)
 * @param emissivity1      ε1 [-], one face
 * @param emissivity2      ε2 [-], other face
 * @param meanTemperature  T_m [K]
 * @returns                h_r [W/(m² K)]
 * Source: ISO 6946:2017, Annex D. Worked value: 0.9, 0.9, 10 °C → 4.213; 0.05, 0.9 → 0.256.
 */
export function airLayerRadiation(emissivity1: number, emissivity2: number, meanTemperature: number): number {
  return radiativeCoefficient(1, meanTemperature) / (1 / emissivity1 + 1 / emissivity2 - 1);
}

/**
 * Radiative coefficient h_r across a small or divided air layer, whose ends shine too.
 *     h_r = 4 σ T_m³ / (1/ε1 + 1/ε2 − 2 + 2/(1 + √(1 + d²/b²) − d/b))
 * @param emissivity1      ε1 [-], one face
 * @param emissivity2      ε2 [-], other face
 * @param meanTemperature  T_m [K]
 * @param thickness        d [m], along the heat flow
 * @param breadth          b [m], across it, < 10 d
 * @returns                h_r [W/(m² K)]
 * Pitfall: at b = 10 d the standard changes over to the wide layer, a step of 4 % of h_r with 0.9 on both faces.
 * Source: ISO 6946:2017, Annex D (form from memory of the source). Worked value: 0.9, 0.9, 10 °C, d = b → 3.146 W/(m² K).
 */
export function narrowAirLayerRadiation(
  emissivity1: number,
  emissivity2: number,
  meanTemperature: number,
  thickness: number,
  breadth: number,
): number {
  const slimness = thickness / breadth;
  const ends = 2 / (1 + Math.sqrt(1 + slimness * slimness) - slimness);
  return radiativeCoefficient(1, meanTemperature) / (1 / emissivity1 + 1 / emissivity2 - 2 + ends);
}

/** Whether the ends of an air layer count: its face is less than ten thicknesses wide. */
export function isNarrow(thickness: number, breadth: number | undefined): breadth is number {
  return breadth !== undefined && breadth < WIDE_IN_THICKNESSES * thickness;
}

/**
 * Thermal resistance R of an air layer whose coefficients are known.
 *     R = 1 / (h_a + h_r)
 * @param convective  h_a [W/(m² K)]
 * @param radiative   h_r [W/(m² K)]
 * @returns           R [m² K/W]
 * Source: ISO 6946:2017, Annex D. Worked value: 1.25, 4.213 → 0.183 m² K/W.
 */
export function airLayerGapResistance(convective: number, radiative: number): number {
  return 1 / (convective + radiative);
}

/**
 * Thermal resistance R of a sealed air layer from its build and its temperatures: h_a and h_r as above.
 * @param thickness        d [m]
 * @param flow             direction of heat flow
 * @param emissivity1      ε1 [-], one face
 * @param emissivity2      ε2 [-], other face
 * @param meanTemperature  T_m [K]
 * @param difference       ΔT [K] between the faces, ≥ 0; up to 4.66 K it does not matter
 * @param breadth          b [m], smaller dimension of the face where it is less than 10 d
 * @returns                R [m² K/W]
 * Validity: sealed, d up to 0.3 m. Pitfall: a gap open to the room is room air, not a layer.
 * Source: ISO 6946:2017, Annex D. Worked value: 25 mm, horizontal, 0.9, 0.9, 10 °C → 0.183.
 */
export function airLayerResistance(
  thickness: number,
  flow: HeatFlow,
  emissivity1: number,
  emissivity2: number,
  meanTemperature: number,
  difference = 0,
  breadth?: number,
): number {
  const radiative = isNarrow(thickness, breadth)
    ? narrowAirLayerRadiation(emissivity1, emissivity2, meanTemperature, thickness, breadth)
    : airLayerRadiation(emissivity1, emissivity2, meanTemperature);
  return airLayerGapResistance(airLayerConvection(thickness, flow, difference), radiative);
}
