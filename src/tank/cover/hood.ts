// A hood whose fan draws room air over the water. The air inside is well mixed: water gives it warmth and vapour, the walls
// take some of both (what condenses there runs back), the fan carries the rest to the room. All stream at once through three
// balances: vapour of the air, warmth of the air, heat of the walls. Without flow it is a closed hood; with ever more flow the
// surface evaporates as it would under open room air. Left out: the fan's own heat, drafts along the water, and the warmth by
// which vapour leaves at hood instead of water temperature (under 1 % of its latent heat).

import {
  DRY_AIR_HEAT_CAPACITY,
  dryAirDensity,
  humidityRatio,
  MOLAR_MASS_RATIO,
  saturationVapourPressure,
  VAPOUR_HEAT_CAPACITY,
} from '../../matter/air/index.ts';
import { findRoot } from '../../numerics/index.ts';
import type { Cover, Vessel } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import { blownDryAir } from '../exchange.ts';
import type { AirState } from '../load.ts';
import { STEFAN_BOLTZMANN } from '../stack/films.ts';
import type { PanelState, Surroundings } from '../stack/panel.ts';
import { coefficientInAir } from '../water-surface/open-surface.ts';
import {
  evaporationRate,
  surfaceConvection,
  surfaceConvectionCoefficient,
  WATER_EMISSIVITY,
} from '../water-surface/surface.ts';
import {
  type FaceGroups,
  facesAboveWater,
  groupFaces,
  heatThroughFaces,
  type InnerFace,
  settleFaces,
  sinkRange,
} from './inner-faces.ts';

/**
 * Convective coefficients of air that a fan stirs against the inside of top and sides, W/(m² K): ISO 6946:2017 Annex C for heat
 * flowing up and sideways, whichever way it flows here. Own simplification.
 */
export const HOOD_CONVECTION = { top: 5.0, side: 2.5 } as const;

export interface HoodInput {
  readonly vessel: Vessel;
  readonly cover: Extract<Cover, { readonly kind: 'hood' }>;
  readonly conditions: TankConditions;
  readonly air: AirState;
  readonly surroundings: Surroundings;
  readonly outerFilmFactor: number;
}

/** A vessel's surface under a hood, as it settles. */
export interface HoodState {
  /** Water under the hood [m²]. */
  readonly area: number;
  /** Dry air drawn through [kg/s]. */
  readonly dryAirFlow: number;
  /** K [kg/(s m² Pa)] and h_c [W/(m² K)] of the water in the hood's air. */
  readonly coefficient: number;
  readonly convectionCoefficient: number;
  /** T_h [K], p_h [Pa], W_h [kg/kg] of the air in the hood. */
  readonly airTemperature: number;
  readonly airVapour: number;
  readonly airHumidity: number;
  /** T_l [K] inside of hood and of panels above the water, p_ws [Pa] there. */
  readonly innerTemperature: number;
  readonly innerSaturation: number;
  /** All inner faces: area [m²], mean convective coefficient [W/(m² K)], vapour coefficient [kg/(s m² Pa)]. */
  readonly innerArea: number;
  readonly innerConvection: number;
  readonly innerVapourCoefficient: number;
  /** Leaves the water as vapour; condenses inside and runs back; is carried to the room [kg/s]. */
  readonly evaporation: number;
  readonly condensate: number;
  readonly carriedVapour: number;
  /** From the water to the hood's air and to its walls [W]. */
  readonly convection: number;
  readonly radiation: number;
  /** Carried to the room as warmth and as vapour [W]. */
  readonly airHeat: number;
  readonly vapourHeat: number;
  /** Top and sides of the hood; panels above the water. */
  readonly walls: readonly PanelState[];
  readonly freeboard: readonly PanelState[];
  readonly iterations: number;
  /** [W], how far the inner faces are from balance: ~0. */
  readonly residual: number;
}

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

/** Air and inner faces of a hood at a trial temperature of the faces. */
interface Trial {
  readonly airTemperature: number;
  readonly airVapour: number;
  readonly innerSaturation: number;
  readonly condensate: number;
  readonly radiation: number;
  /** [W] that the faces receive beyond what leaves through them. */
  readonly surplus: number;
}

/** What does not change while the balances are solved. */
interface HoodFrame {
  readonly input: HoodInput;
  readonly area: number;
  readonly dryAirFlow: number;
  readonly roomRatio: number;
  /** m c_p [W/K] of the air drawn through. */
  readonly carried: number;
  readonly faces: readonly InnerFace[];
  readonly groups: FaceGroups;
  readonly innerArea: number;
  readonly innerConvection: number;
  readonly innerVapourCoefficient: number;
}

/**
 * The surface of a vessel under a hood.
 * @throws ConvergenceError where the balances do not settle
 */
export function hoodedSurface(input: HoodInput): HoodState {
  const frame = frameOf(input);
  const coefficient = settledCoefficient(frame);
  const { root, iterations, residual } = settleInner(frame, coefficient);
  return stateOf(frame, coefficient, root, iterations, residual);
}

function frameOf(input: HoodInput): HoodFrame {
  const { vessel, cover, conditions, air } = input;
  const { roomTemperature, atmosphericPressure } = conditions;
  const faces = [...hoodFaces(cover, vessel.waterSurface), ...facesAboveWater(vessel.panels, 1)];
  const innerArea = faces.reduce((sum, { area }) => sum + area, 0);
  const convection = faces.reduce(
    (sum, { area, facing }) => sum + area * (facing === 'top' ? HOOD_CONVECTION.top : HOOD_CONVECTION.side),
    0,
  );
  const roomRatio = humidityRatio(air.roomVapour, atmosphericPressure);
  const dryAirFlow = blownDryAir(cover.airFlow, dryAirDensity(roomTemperature, air.roomVapour, atmosphericPressure));
  return {
    input,
    area: vessel.waterSurface,
    dryAirFlow,
    roomRatio,
    carried: dryAirFlow * (DRY_AIR_HEAT_CAPACITY + VAPOUR_HEAT_CAPACITY * roomRatio),
    faces,
    groups: groupFaces(faces),
    innerArea,
    innerConvection: convection / innerArea,
    innerVapourCoefficient: wallVapourCoefficient(convection / innerArea, atmosphericPressure),
  };
}

/** Top and sides: the top as large as the water, the sides the rest. */
function hoodFaces(cover: HoodInput['cover'], waterSurface: number): readonly InnerFace[] {
  const { stack, emissivity, area } = cover;
  const own = { stack, emissivity, exposure: { kind: 'roomAir' as const } };
  const top = Math.min(area, waterSurface);
  const sides = area - top;
  const faces: InnerFace[] = [{ name: 'hoodTop', area: top, facing: 'top', ...own }];
  return sides > 0 ? [...faces, { name: 'hoodSides', area: sides, facing: 'side', ...own }] : faces;
}

/** K of the water in the hood's air, which depends on that air and it on K: the one at which both agree. */
function settledCoefficient(frame: HoodFrame): number {
  const at = (temperature: number, vapour: number) => coefficientIn(frame, temperature, vapour);
  const { waterTemperature } = frame.input.conditions;
  const [coldest] = temperatureRange(frame);
  const least = at(Math.max(waterTemperature, coldest) + 100, frame.input.air.waterVapour);
  const most = at(coldest, 0);
  if (most === least) return least;
  const disagreement = (coefficient: number) => {
    const { root } = settleInner(frame, coefficient);
    const { airTemperature, airVapour } = trial(frame, coefficient, root);
    return at(airTemperature, airVapour) / coefficient - 1;
  };
  return findRoot(disagreement, least, 2 * most, {
    residualTolerance: 1e-10,
    what: 'evaporation coefficient under a hood',
  }).root;
}

function coefficientIn({ input }: HoodFrame, airTemperature: number, airVapour: number): number {
  const { vessel, conditions, air } = input;
  return coefficientInAir(vessel, conditions, air, airTemperature, airVapour).coefficient;
}

function settleInner(frame: HoodFrame, coefficient: number) {
  const [coldest, warmest] = temperatureRange(frame);
  if (coldest === warmest)
    return { root: coldest, iterations: 0, residual: trial(frame, coefficient, coldest).surplus };
  const surplus = (inner: number) => trial(frame, coefficient, inner).surplus;
  // A little beyond both ends, where the sign is plain: at the ends themselves rounding would decide it.
  return findRoot(surplus, coldest - 0.01, warmest + 0.01, {
    residualTolerance: 1e-11 * frame.innerArea,
    what: 'temperature of a hood',
  });
}

function temperatureRange({ input, faces }: HoodFrame): readonly [number, number] {
  const [coldest, warmest] = sinkRange(faces, input.surroundings);
  const { waterTemperature, roomTemperature } = input.conditions;
  return [Math.min(coldest, waterTemperature, roomTemperature), Math.max(warmest, waterTemperature, roomTemperature)];
}

function trial(frame: HoodFrame, coefficient: number, inner: number): Trial {
  const { input, area, dryAirFlow, roomRatio, carried, groups, innerArea, innerConvection } = frame;
  const { waterTemperature, roomTemperature, atmosphericPressure: pressure } = input.conditions;
  const { waterVapour, latentHeat } = input.air;
  const surface = coefficient * area;
  const walls = frame.innerVapourCoefficient * innerArea;
  const innerSaturation = saturationVapourPressure(inner);
  const dry = hoodVapourPressure(dryAirFlow, roomRatio, surface, waterVapour, 0, 0, pressure);
  const isWet = dry > innerSaturation;
  const airVapour = isWet
    ? hoodVapourPressure(dryAirFlow, roomRatio, surface, waterVapour, walls, innerSaturation, pressure)
    : dry;
  const condensate = isWet ? evaporationRate(frame.innerVapourCoefficient, innerArea, airVapour, innerSaturation) : 0;
  const convection = surfaceConvectionCoefficient(coefficient, pressure) * area;
  const wallConvection = innerConvection * innerArea;
  const airTemperature = hoodTemperature(convection, waterTemperature, wallConvection, inner, carried, roomTemperature);
  const radiation = hoodRadiation(area, innerArea, waterTemperature, inner);
  const surplus =
    wallConvection * (airTemperature - inner) +
    radiation +
    condensate * latentHeat -
    heatThroughFaces(groups, inner, input);
  return { airTemperature, airVapour, innerSaturation, condensate, radiation, surplus };
}

function stateOf(
  frame: HoodFrame,
  coefficient: number,
  inner: number,
  iterations: number,
  residual: number,
): HoodState {
  const { input, area, dryAirFlow, roomRatio, carried, faces, groups } = frame;
  const { waterTemperature, roomTemperature, atmosphericPressure } = input.conditions;
  const settled = trial(frame, coefficient, inner);
  const convectionCoefficient = surfaceConvectionCoefficient(coefficient, atmosphericPressure);
  const airHumidity = humidityRatio(settled.airVapour, atmosphericPressure);
  const carriedVapour = dryAirFlow * (airHumidity - roomRatio);
  const states = settleFaces(faces, groups, inner, input);
  const isHood = ({ name }: PanelState) => name === 'hoodTop' || name === 'hoodSides';
  return {
    area,
    dryAirFlow,
    coefficient,
    convectionCoefficient,
    airTemperature: settled.airTemperature,
    airVapour: settled.airVapour,
    airHumidity,
    innerTemperature: inner,
    innerSaturation: settled.innerSaturation,
    innerArea: frame.innerArea,
    innerConvection: frame.innerConvection,
    innerVapourCoefficient: frame.innerVapourCoefficient,
    evaporation: evaporationRate(coefficient, area, input.air.waterVapour, settled.airVapour),
    condensate: settled.condensate,
    carriedVapour,
    convection: surfaceConvection(convectionCoefficient, area, waterTemperature, settled.airTemperature),
    radiation: settled.radiation,
    airHeat: carried * (settled.airTemperature - roomTemperature),
    vapourHeat: carriedVapour * input.air.latentHeat,
    walls: states.filter(isHood),
    freeboard: states.filter((state) => !isHood(state)),
    iterations,
    residual,
  };
}
