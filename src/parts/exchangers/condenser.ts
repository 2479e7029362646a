// The size of the coil in the tank that an assumed approach temperature implies: film of tank water by free convection,
// fouling, wall and inside film in series. Either refrigerant condenses in that coil, or loop water heated elsewhere flows
// through it; then the approach is split between the two exchangers and both are sized.

import {
  findRoot,
  InputError,
  NoSolutionError,
  requireFinite,
  requireNonNegative,
  requirePositive,
} from '../../numerics/index.ts';
import { exchangerAssumptions } from './assumptions.ts';
import {
  nusseltHorizontalCylinderChurchillChu1975,
  nusseltImmersedCoilXinEbadian1996,
  rayleighNumber,
  tubeWallResistance,
  xinEbadian1996Validity,
} from './films.ts';
import type { LoopFlow, RefrigerantToLoop } from './loop-water.ts';
import { loopFlow, refrigerantToLoop } from './loop-water.ts';
import {
  areaForDuty,
  filmCoefficient,
  innerDiameterOf,
  insideFilmResistance,
  surfaceDifference,
  tubeCoefficient,
  tubeLength,
} from './relations.ts';
import type { WaterFilmProperties } from './water-film.ts';
import { filmTemperature, waterFilmProperties } from './water-film.ts';

export type CondenserArrangement = 'intermediateLoop' | 'coilInTank';

/** Tube of the coil in the tank [m, W/(m K)]. */
export interface Tube {
  readonly outerDiameter: number;
  readonly wallThickness: number;
  readonly wallConductivity: number;
}

/** What the person seldom knows; exchangerAssumptions holds ranges, likelyCondenserAssumptions their likely values. */
export interface CondenserAssumptions {
  /** [m² K/W], on the tank-water side. */
  readonly fouling: number;
  /** [W/(m² K)], on inner area. */
  readonly refrigerantFilm: number;
  /** [W/(m² K)], intermediate loop only. */
  readonly loopSideFilm: number;
  /** [-], intermediate loop only. */
  readonly tankCoilShare: number;
  /** [K], intermediate loop only. */
  readonly loopTemperatureChange: number;
}

export interface CondenserRequest {
  /** Q, heat into the tank water [W]. */
  readonly duty: number;
  /** T_c, condensing dew temperature [K]. */
  readonly condensingTemperature: number;
  /** T_w, bulk of the tank [K]. */
  readonly waterTemperature: number;
  /** [kg/kg]. */
  readonly salinity: number;
  readonly arrangement: CondenserArrangement;
  readonly tube: Tube;
  readonly assumed: CondenserAssumptions;
}

/** The coil in the tank with the numbers behind it. Resistances are referred to the outer area [m² K/W]. */
export interface TankCoil {
  /** Mean temperature difference between what flows inside and the tank [K]. */
  readonly meanDifference: number;
  /** Outer area [m²]. */
  readonly area: number;
  /** Length of tube [m]. */
  readonly length: number;
  /** U on the outer area [W/(m² K)]. */
  readonly overallCoefficient: number;
  /** UA [W/K]. */
  readonly conductance: number;
  /** Surface of the deposit against the bulk of the water [K]. */
  readonly surfaceDifference: number;
  readonly water: WaterFilmProperties;
  readonly rayleigh: number;
  readonly waterNusselt: number;
  readonly waterFilm: number;
  /** Film by a second correlation (Xin & Ebadian 1996, vertical axis) [W/(m² K)]; null outside its range. */
  readonly waterFilmSecondOpinion: number | null;
  readonly fouling: number;
  readonly wallResistance: number;
  readonly insideFilm: number;
  readonly insideResistance: number;
  readonly iterations: number;
}

/** `loopVelocityHigh`: one tube carries the loop water faster than 1.5 m/s; a larger change of temperature or parallel tubes. */
export type CondenserWarning = 'loopVelocityHigh';

export interface CondenserCoil {
  readonly arrangement: CondenserArrangement;
  /** T_c − T_w [K]. */
  readonly approach: number;
  readonly tankCoil: TankCoil;
  /** null for a coil that refrigerant flows through. */
  readonly loop: (LoopFlow & { readonly exchanger: RefrigerantToLoop }) | null;
  readonly warnings: readonly CondenserWarning[];
  readonly leavesOut: string;
}

/** Loop water in one tube above this [m/s] carries the warning `loopVelocityHigh`; common practice, no source. */
export const highLoopVelocity = 1.5;

/** What the coil's size leaves out, in words to be shown beside it. */
export const condenserLeavesOut =
  'desuperheating and subcooling zones (one condensing temperature throughout), turns of the coil standing in each other’s plume, pump currents in the tank (free convection only)';

/** Likely values of exchangerAssumptions. */
export function likelyCondenserAssumptions(): CondenserAssumptions {
  const { fouling, refrigerantFilm, loopSideFilm, tankCoilShare, loopTemperatureChange } = exchangerAssumptions;
  return {
    fouling: fouling.likely,
    refrigerantFilm: refrigerantFilm.likely,
    loopSideFilm: loopSideFilm.likely,
    tankCoilShare: tankCoilShare.likely,
    loopTemperatureChange: loopTemperatureChange.likely,
  };
}

/**
 * Size of the condenser that duty and approach imply.
 *     1/U = 1/h_w + R_f + D_o ln(D_o/D_i)/(2k) + D_o/(D_i h_i);  A = Q/(U ΔT_m);  L = A/(π D_o)
 * Coil in the tank: ΔT_m = T_c − T_w. Intermediate loop: the mean loop water stands at T_w + share · (T_c − T_w), ΔT_m is
 * the logarithmic mean along the coil, and the exchanger between refrigerant and loop water is sized beside it.
 * @returns       area, length and every number in between
 * @throws InputError for impossible numbers; NoSolutionError 'noApproach' where condensing is not above the tank,
 *         'loopOutsideApproach' where the loop water's change does not fit between tank and refrigerant
 * Validity: tank at rest. Moving water needs less tube: the free-convection film is the careful choice.
 * Accuracy: ±15 to 30 % from the films alone; fouling may matter more.
 * Source: series resistances; film after Churchill & Chu 1975.
 */
export function condenserCoil(request: CondenserRequest): CondenserCoil {
  requireRequest(request);
  const { duty, condensingTemperature, waterTemperature, tube, assumed, arrangement } = request;
  const approach = condensingTemperature - waterTemperature;
  if (arrangement === 'coilInTank') {
    const tankCoil = sizeTankCoil(request, approach, assumed.refrigerantFilm);
    return { arrangement, approach, tankCoil, loop: null, warnings: [], leavesOut: condenserLeavesOut };
  }
  const flow = loopFlow({
    duty,
    condensingTemperature,
    waterTemperature,
    innerDiameter: innerDiameterOf(tube.outerDiameter, tube.wallThickness),
    share: assumed.tankCoilShare,
    temperatureChange: assumed.loopTemperatureChange,
  });
  const tankCoil = sizeTankCoil(request, flow.meanDifferenceToTank, flow.film);
  const exchanger = refrigerantToLoop({
    duty,
    meanDifference: flow.meanDifferenceToRefrigerant,
    refrigerantFilm: assumed.refrigerantFilm,
    loopSideFilm: assumed.loopSideFilm,
    fouling: assumed.fouling,
  });
  const warnings: CondenserWarning[] = flow.velocity > highLoopVelocity ? ['loopVelocityHigh'] : [];
  const pressureDrop = flow.pressureGradient * tankCoil.length;
  const loop = { ...flow, pressureDrop, hydraulicPower: pressureDrop * flow.volumeFlow, exchanger };
  return { arrangement, approach, tankCoil, loop, warnings, leavesOut: condenserLeavesOut };
}

/** Coil for a given mean difference and inside film: the surface temperature is where water film and the rest pass the same heat. */
function sizeTankCoil(request: CondenserRequest, meanDifference: number, insideFilm: number): TankCoil {
  const { duty, waterTemperature, salinity, tube, assumed } = request;
  const innerDiameter = innerDiameterOf(tube.outerDiameter, tube.wallThickness);
  const wallResistance = tubeWallResistance(tube.outerDiameter, innerDiameter, tube.wallConductivity);
  const insideResistance = insideFilmResistance(tube.outerDiameter, innerDiameter, insideFilm);
  const filmAt = (difference: number) => waterFilm(waterTemperature, salinity, tube.outerDiameter, difference);
  const overallWith = (film: number) => tubeCoefficient(film, assumed.fouling, wallResistance, insideResistance);
  const excess = (difference: number) => {
    const film = filmAt(difference).waterFilm;
    return difference - surfaceDifference(meanDifference, overallWith(film), film);
  };
  const { root, iterations } = findRoot(excess, 1e-9 * meanDifference, meanDifference, {
    what: 'surface temperature of the coil in the tank',
  });
  const film = filmAt(root);
  const overallCoefficient = overallWith(film.waterFilm);
  const area = areaForDuty(duty, overallCoefficient, meanDifference);
  const inRange =
    film.rayleigh >= xinEbadian1996Validity.rayleigh.min && film.rayleigh <= xinEbadian1996Validity.rayleigh.max;
  return {
    meanDifference,
    area,
    length: tubeLength(area, tube.outerDiameter),
    overallCoefficient,
    conductance: overallCoefficient * area,
    surfaceDifference: root,
    ...film,
    waterFilmSecondOpinion: inRange ? secondOpinion(film.rayleigh, film.water.conductivity, tube.outerDiameter) : null,
    fouling: assumed.fouling,
    wallResistance,
    insideFilm,
    insideResistance,
    iterations,
  };
}

function secondOpinion(rayleigh: number, conductivity: number, outerDiameter: number): number {
  return filmCoefficient(nusseltImmersedCoilXinEbadian1996(rayleigh, 'vertical'), conductivity, outerDiameter);
}

/** Free convection of tank water at a tube whose surface is `difference` above the bulk; properties at the mean of the two. */
export function waterFilm(waterTemperature: number, salinity: number, outerDiameter: number, difference: number) {
  const water = waterFilmProperties(filmTemperature(waterTemperature, difference), salinity);
  const { expansion, density, heatCapacity, viscosity, conductivity, prandtl } = water;
  const rayleigh = rayleighNumber(expansion, difference, outerDiameter, density, heatCapacity, viscosity, conductivity);
  const waterNusselt = nusseltHorizontalCylinderChurchillChu1975(rayleigh, prandtl);
  return { water, rayleigh, waterNusselt, waterFilm: filmCoefficient(waterNusselt, conductivity, outerDiameter) };
}

function requireRequest(request: CondenserRequest): void {
  const { tube, assumed, condensingTemperature, waterTemperature } = request;
  requirePositive('duty', request.duty);
  requireFinite('condensingTemperature', condensingTemperature);
  requireFinite('waterTemperature', waterTemperature);
  requirePositive('tube.outerDiameter', tube.outerDiameter);
  requirePositive('tube.wallThickness', tube.wallThickness);
  requirePositive('tube.wallConductivity', tube.wallConductivity);
  if (!(2 * tube.wallThickness < tube.outerDiameter)) {
    throw new InputError('tube.wallThickness', tube.wallThickness, `below half of ${tube.outerDiameter} m`);
  }
  requireNonNegative('assumed.fouling', assumed.fouling);
  requirePositive('assumed.refrigerantFilm', assumed.refrigerantFilm);
  if (request.arrangement !== 'coilInTank' && request.arrangement !== 'intermediateLoop') {
    throw new InputError('arrangement', request.arrangement, 'intermediateLoop or coilInTank');
  }
  if (!(condensingTemperature > waterTemperature)) {
    throw new NoSolutionError(
      `Condensing at ${condensingTemperature} K cannot heat a tank at ${waterTemperature} K.`,
      'condensing temperature above the tank water temperature',
      'noApproach',
    );
  }
}
