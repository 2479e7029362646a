// A hood whose fan draws room air over the water. The air inside is well mixed: water gives it warmth and vapour, the walls
// take some of both (what condenses there runs back), the fan carries the rest to the room. All stream at once through three
// balances: vapour of the air, warmth of the air, heat of the walls. Without flow it is a closed hood; with ever more flow the
// surface evaporates as it would under open room air. Left out: the fan's own heat, drafts along the water, and the warmth by
// which vapour leaves at hood instead of water temperature (under 1 % of its latent heat).

import { dryAirDensity, humidityRatio, saturationVapourPressure } from '../../matter/air/index.ts';
import { findRoot, type Root } from '../../numerics/index.ts';
import type { Cover, Vessel } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import { blownDryAir, evaporationHeat } from '../exchange.ts';
import type { AirState } from '../load.ts';
import type { PanelState, Surroundings } from '../stack/panel.ts';
import { coefficientInAir } from '../water-surface/open-surface.ts';
import { evaporationRate, surfaceConvection, surfaceConvectionCoefficient } from '../water-surface/surface.ts';
import {
  airCapacityFlow,
  hoodAirHeat,
  hoodCondensate,
  hoodConvection,
  hoodRadiation,
  hoodTemperature,
  hoodVapourPressure,
  wallVapourCoefficient,
} from './hood-air.ts';
import {
  type FaceGroups,
  facesAboveWater,
  groupFaces,
  heatThroughFaces,
  type InnerFace,
  settleFaces,
  sinkRange,
} from './inner-faces.ts';

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

/** Air in a hood that agrees with the coefficient of the water beneath it. */
interface HoodAir {
  readonly coefficient: number;
  readonly airTemperature: number;
  readonly airVapour: number;
  readonly condensate: number;
}

/** Air and inner faces of a hood at a trial temperature of the faces. */
interface Trial extends HoodAir {
  readonly innerSaturation: number;
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
  /** Coldest and warmest of all that meets here [K]. */
  readonly coldest: number;
  readonly warmest: number;
  /** K [kg/(s m² Pa)] in the air that holds it down most, and above what any air allows. */
  readonly leastCoefficient: number;
  readonly mostCoefficient: number;
}

/** The balance of the inner faces may be open by this much heat per area of them [W/m²]. */
const BALANCE_TOLERANCE = 2e-10;
/** Beyond the coldest and the warmest of all that meets here the sign of the balance is plain [K]. */
const MARGIN = 1e-3;

/**
 * The surface of a vessel under a hood.
 * @throws ConvergenceError where the balances do not settle; InputError where an exposure lacks its temperature
 */
export function hoodedSurface(input: HoodInput): HoodState {
  const frame = frameOf(input);
  const { innerArea, coldest, warmest } = frame;
  const surplus = (inner: number) => trial(frame, inner).surplus;
  const settled: Root =
    coldest === warmest
      ? { root: coldest, iterations: 0, residual: surplus(coldest) }
      : findRoot(surplus, coldest - MARGIN, warmest + MARGIN, {
          residualTolerance: BALANCE_TOLERANCE * innerArea,
          what: 'temperature of a hood',
        });
  return stateOf(frame, settled);
}

function frameOf(input: HoodInput): HoodFrame {
  const { vessel, cover, conditions, air, surroundings } = input;
  const { waterTemperature, roomTemperature, atmosphericPressure } = conditions;
  const faces = [...hoodFaces(cover, vessel.waterSurface), ...facesAboveWater(vessel, 1)];
  const innerArea = faces.reduce((sum, { area }) => sum + area, 0);
  const areaFacing = (isTop: boolean) =>
    faces.reduce((sum, { area, facing }) => ((facing === 'top') === isTop ? sum + area : sum), 0);
  const convection = hoodConvection(areaFacing(true), areaFacing(false));
  const roomRatio = humidityRatio(air.roomVapour, atmosphericPressure);
  const dryAirFlow = blownDryAir(cover.airFlow, dryAirDensity(roomTemperature, air.roomVapour, atmosphericPressure));
  const [coldestSink, warmestSink] = sinkRange(faces, surroundings);
  const coldest = Math.min(coldestSink, waterTemperature, roomTemperature);
  const warmest = Math.max(warmestSink, waterTemperature, roomTemperature);
  const coefficientAt = (airTemperature: number, airVapour: number) =>
    coefficientInAir(vessel, conditions, air, airTemperature, airVapour).coefficient;
  return {
    input,
    area: vessel.waterSurface,
    dryAirFlow,
    roomRatio,
    carried: airCapacityFlow(dryAirFlow, roomRatio),
    faces,
    groups: groupFaces(faces),
    innerArea,
    innerConvection: convection,
    innerVapourCoefficient: wallVapourCoefficient(convection, atmosphericPressure),
    coldest,
    warmest,
    // Air much warmer than the water lies on it; the coldest, driest air lifts most. Humidity is worth some 10 % besides, hence 2.
    leastCoefficient: coefficientAt(warmest + 100, air.waterVapour),
    mostCoefficient: 2 * coefficientAt(coldest, 0),
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

function trial(frame: HoodFrame, inner: number): Trial {
  const { input, area, groups, innerArea, innerConvection } = frame;
  const innerSaturation = saturationVapourPressure(inner);
  const air = settledAir(frame, inner, innerSaturation);
  const radiation = hoodRadiation(area, innerArea, input.conditions.waterTemperature, inner);
  const received =
    innerConvection * innerArea * (air.airTemperature - inner) + radiation + air.condensate * input.air.latentHeat;
  const surplus = received - heatThroughFaces(groups, inner, input);
  return { ...air, innerSaturation, radiation, surplus };
}

/** K of the water depends on the air in the hood, and that on K: the one at which both agree. */
function settledAir(frame: HoodFrame, inner: number, innerSaturation: number): HoodAir {
  const { leastCoefficient: least, mostCoefficient: most } = frame;
  const { vessel, conditions, air } = frame.input;
  if (most === 2 * least) return airAt(frame, least, inner, innerSaturation);
  const disagreement = (coefficient: number) => {
    const { airTemperature, airVapour } = airAt(frame, coefficient, inner, innerSaturation);
    return coefficientInAir(vessel, conditions, air, airTemperature, airVapour).coefficient / coefficient - 1;
  };
  const what = 'evaporation coefficient under a hood';
  const { root } = findRoot(disagreement, least, most, { residualTolerance: 1e-13, what });
  return airAt(frame, root, inner, innerSaturation);
}

/** Air in the hood over water of a given K, with its inner faces at a given temperature. */
function airAt(frame: HoodFrame, coefficient: number, inner: number, innerSaturation: number): HoodAir {
  const { input, area, dryAirFlow, roomRatio, carried, innerArea, innerConvection, innerVapourCoefficient } = frame;
  const { waterTemperature, roomTemperature, atmosphericPressure: pressure } = input.conditions;
  const { waterVapour } = input.air;
  const surface = coefficient * area;
  const walls = innerVapourCoefficient * innerArea;
  const dry = hoodVapourPressure(dryAirFlow, roomRatio, surface, waterVapour, 0, 0, pressure);
  const isWet = dry > innerSaturation;
  const airVapour = isWet
    ? hoodVapourPressure(dryAirFlow, roomRatio, surface, waterVapour, walls, innerSaturation, pressure)
    : dry;
  const airTemperature = hoodTemperature(
    surfaceConvectionCoefficient(coefficient, pressure) * area,
    waterTemperature,
    innerConvection * innerArea,
    inner,
    carried,
    roomTemperature,
  );
  const condensate = hoodCondensate(innerVapourCoefficient, innerArea, airVapour, innerSaturation);
  return { coefficient, airTemperature, airVapour, condensate };
}

function stateOf(frame: HoodFrame, { root: inner, iterations, residual }: Root): HoodState {
  const { input, area, dryAirFlow, roomRatio, carried, faces, groups } = frame;
  const { waterTemperature, roomTemperature, atmosphericPressure } = input.conditions;
  const { coefficient, airTemperature, airVapour, condensate, innerSaturation, radiation } = trial(frame, inner);
  const convectionCoefficient = surfaceConvectionCoefficient(coefficient, atmosphericPressure);
  const airHumidity = humidityRatio(airVapour, atmosphericPressure);
  const carriedVapour = dryAirFlow * (airHumidity - roomRatio);
  const states = settleFaces(faces, groups, inner, input);
  const isHood = ({ name }: PanelState) => name === 'hoodTop' || name === 'hoodSides';
  return {
    area,
    dryAirFlow,
    coefficient,
    convectionCoefficient,
    airTemperature,
    airVapour,
    airHumidity,
    innerTemperature: inner,
    innerSaturation,
    innerArea: frame.innerArea,
    innerConvection: frame.innerConvection,
    innerVapourCoefficient: frame.innerVapourCoefficient,
    evaporation: evaporationRate(coefficient, area, input.air.waterVapour, airVapour),
    condensate,
    carriedVapour,
    convection: surfaceConvection(convectionCoefficient, area, waterTemperature, airTemperature),
    radiation,
    airHeat: hoodAirHeat(carried, airTemperature, roomTemperature),
    vapourHeat: evaporationHeat(carriedVapour, input.air.latentHeat),
    walls: states.filter(isHood),
    freeboard: states.filter((state) => !isHood(state)),
    iterations,
    residual,
  };
}
