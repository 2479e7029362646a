// The air in a hood, relation by relation: its vapour and its warmth by balance, what it carries to the room, what condenses on
// the walls around it, and the radiation that passes through it. How they settle together: hood.ts.

import { DRY_AIR_HEAT_CAPACITY, MOLAR_MASS_RATIO, VAPOUR_HEAT_CAPACITY } from '../../matter/air/index.ts';
import { STEFAN_BOLTZMANN } from '../stack/films.ts';
import { WATER_EMISSIVITY } from '../water-surface/surface.ts';

/**
 * Convective coefficients of air that a fan stirs against the inside of top and sides, W/(m² K): ISO 6946:2017 Annex C for heat
 * flowing up and sideways, whichever way it flows here. Own simplification.
 */
export const HOOD_CONVECTION = { top: 5.0, side: 2.5 } as const;

/**
 * Vapour pressure p_h of the air in a hood: what the water gives is carried off by the air and condenses on the walls.
 *     m (W(p_h) − W_r) = K A (p_w − p_h) − G (p_h − p_l),  W(p_h) = 0.621945 p_h / (p − p_h); a quadratic in p_h
 * @param dryAirFlow  m [kg/s]
 * @param roomRatio   W_r [kg/kg]
 * @param surface     K A [kg/(s Pa)] of the water, > 0
 * @param water       p_w [Pa]
 * @param walls       G [kg/(s Pa)] of the walls; 0 where they are dry
 * @param wall        p_l [Pa], saturation at the walls
 * @param pressure    p [Pa]
 * @returns           p_h [Pa]
 * Source: mass balance. Worked value: 0, any, any, 3363, 0 → 3363 Pa; 1e9 kg/s, 0.0082 → that of the room.
 */
export function hoodVapourPressure(
  dryAirFlow: number,
  roomRatio: number,
  surface: number,
  water: number,
  walls: number,
  wall: number,
  pressure: number,
): number {
  const sum = surface + walls;
  const given = surface * water + walls * wall;
  const b = dryAirFlow * (MOLAR_MASS_RATIO + roomRatio) + sum * pressure + given;
  const c = pressure * (dryAirFlow * roomRatio + given);
  return (2 * c) / (b + Math.sqrt(b * b - 4 * sum * c));
}

/**
 * Temperature T_h of the air in a hood: a mean of water, walls and room, each by what couples it to the air.
 *     T_h = (h_c A T_w + h_l A_l T_l + m c_p T_r) / (h_c A + h_l A_l + m c_p)
 * @param surface  h_c A [W/K] of the water
 * @param water    T_w [K]
 * @param walls    h_l A_l [W/K]
 * @param wall     T_l [K]
 * @param carried  m c_p [W/K] of the air drawn through
 * @param room     T_r [K]
 * @returns        T_h [K]
 * Source: heat balance. Worked value: 3, 299.15, 5, 296.15, 2, 295.15 → 296.85 K.
 */
export function hoodTemperature(
  surface: number,
  water: number,
  walls: number,
  wall: number,
  carried: number,
  room: number,
): number {
  return (surface * water + walls * wall + carried * room) / (surface + walls + carried);
}

/**
 * Warmth Q_h that the air drawn through a hood carries to the room.
 *     Q_h = m c_p (T_h − T_r)
 * @param carried  m c_p [W/K], of the air drawn through
 * @param air      T_h [K]
 * @param room     T_r [K]
 * @returns        Q_h [W]
 * Source: heat balance. Worked value: 2.4, 296.85, 295.15 → 4.08 W.
 */
export function hoodAirHeat(carried: number, air: number, room: number): number {
  return carried * (air - room);
}

/**
 * Radiation Q_r from the water to the walls that enclose it, both wet.
 *     Q_r = σ A (T_w⁴ − T_l⁴) / (1/ε + (A/A_l) (1/ε − 1))
 * @param area   A [m²] of the water
 * @param walls  A_l [m²], ≥ A
 * @param water  T_w [K]
 * @param wall   T_l [K]
 * @returns      Q_r [W]
 * Source: two grey surfaces that form an enclosure (textbooks). Worked value: 1, 1 m², 26 over 23 °C → 16.2 W.
 */
export function hoodRadiation(area: number, walls: number, water: number, wall: number): number {
  const resistance = 1 / WATER_EMISSIVITY + (area / walls) * (1 / WATER_EMISSIVITY - 1);
  return (STEFAN_BOLTZMANN * area * (water ** 4 - wall ** 4)) / resistance;
}

/**
 * Vapour coefficient K_l of a wall that air condenses on (Bowen's ratio, as at the water).
 *     K_l = 0.622 h_l / (c_p p)
 * @param convection  h_l [W/(m² K)]
 * @param pressure    p [Pa]
 * @returns           K_l [kg/(s m² Pa)]
 * Source: Bowen 1926, inverse of the convective coefficient of the open surface. Worked value: 2.5, 101325 Pa → 1.53e-8.
 */
export function wallVapourCoefficient(convection: number, pressure: number): number {
  return (0.622 * convection) / (DRY_AIR_HEAT_CAPACITY * pressure);
}

/**
 * Vapour m_c that condenses inside a hood and runs back.
 *     m_c = K_l A_l max(0, p_h − p_l)
 * @param coefficient  K_l [kg/(s m² Pa)]
 * @param area         A_l [m²] of the inner faces
 * @param air          p_h [Pa] of the air in the hood
 * @param wall         p_l [Pa], saturation at the inner faces
 * @returns            m_c [kg/s]
 * Source: Dalton's law, as at the water. Worked value: 1.53e-8, 1.9 m², 3000 over 2800 Pa → 5.8e-6 kg/s.
 */
export function hoodCondensate(coefficient: number, area: number, air: number, wall: number): number {
  return coefficient * area * Math.max(0, air - wall);
}

/**
 * Temperature T_l of the inner faces: what air, radiation and dew bring them leaves through them.
 *     T_l = T_h + (Q_r + m_c h_fg − Q_out) / (h_l A_l)
 * @param air         T_h [K] of the air in the hood
 * @param radiation   Q_r [W] from the water
 * @param dew         m_c h_fg [W]
 * @param leaving     Q_out [W] through walls and panels above the water
 * @param convection  h_l A_l [W/K]
 * @returns           T_l [K]
 * Source: heat balance. Worked value: 296.85 K, 10, 8, 25 W, 5 W/K → 295.45 K.
 */
export function hoodInnerTemperature(
  air: number,
  radiation: number,
  dew: number,
  leaving: number,
  convection: number,
): number {
  return air + (radiation + dew - leaving) / convection;
}

/**
 * Convective coefficient h_l inside a hood, mean over its faces.
 *     h_l = (5.0 A_top + 2.5 A_side) / (A_top + A_side)
 * @param top   A_top [m²], faces that look down
 * @param side  A_side [m²], upright faces
 * @returns     h_l [W/(m² K)]
 * Source: ISO 6946:2017 Annex C for heat flowing up and sideways; own simplification. Worked value: 0.6, 1.2 → 3.33.
 */
export function hoodConvection(top: number, side: number): number {
  return (HOOD_CONVECTION.top * top + HOOD_CONVECTION.side * side) / (top + side);
}

/** K A [kg/(s Pa)]: vapour coefficient [kg/(s m² Pa)] times area [m²]. Definition. */
export function vapourConductance(coefficient: number, area: number): number {
  return coefficient * area;
}

/**
 * Heat that a flow of air carries per kelvin.
 *     C = m_da (1006 + 1860 W)
 * @param dryAirFlow  m_da [kg/s]
 * @param ratio       W [kg/kg]
 * @returns           C [W/K]
 * Source: definition. Worked value: 2.36e-3, 0.0082 → 2.41 W/K.
 */
export function airCapacityFlow(dryAirFlow: number, ratio: number): number {
  return dryAirFlow * (DRY_AIR_HEAT_CAPACITY + VAPOUR_HEAT_CAPACITY * ratio);
}
