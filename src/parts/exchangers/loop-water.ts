// The intermediate loop of fresh water between refrigerant and tank: its temperature level, flow, film and pressure drop in
// one tube, and the exchanger between refrigerant and loop water sized with two assumed films.

import { NoSolutionError, requirePositive, requireWithin } from '../../numerics/index.ts';
import { logarithmicMean } from './effectiveness.ts';
import { frictionFactorChurchill1977, nusseltInsideTube } from './films.ts';
import { areaForDuty, filmCoefficient, temperatureDifference, twoFilmCoefficient } from './relations.ts';
import type { WaterFilmProperties } from './water-film.ts';
import { waterFilmProperties } from './water-film.ts';

export interface LoopFlow {
  /** Mean of inlet and outlet of the tank coil [K]. */
  readonly meanTemperature: number;
  readonly tankCoilInlet: number;
  readonly tankCoilOutlet: number;
  /** ṁ of loop water [kg/s]. */
  readonly massFlow: number;
  /** [m³/s]. */
  readonly volumeFlow: number;
  readonly innerDiameter: number;
  /** At the mean temperature. */
  readonly water: WaterFilmProperties;
  /** [m/s]. */
  readonly velocity: number;
  readonly reynolds: number;
  readonly prandtl: number;
  /** k [W/(m K)]. */
  readonly conductivity: number;
  readonly nusselt: number;
  /** Film inside the tank coil, on inner area [W/(m² K)]. */
  readonly film: number;
  /** Darcy. */
  readonly frictionFactor: number;
  /** [Pa/m]. */
  readonly pressureGradient: number;
  /** Along the tank coil, straight smooth tube [Pa]. */
  readonly pressureDrop: number;
  /** What the pump gives to the water there [W]; its electric power is several times that. */
  readonly hydraulicPower: number;
  /** Logarithmic mean between loop water and tank [K]. */
  readonly meanDifferenceToTank: number;
  /** Logarithmic mean between refrigerant and loop water [K]. */
  readonly meanDifferenceToRefrigerant: number;
}

export interface LoopRequest {
  readonly duty: number;
  readonly condensingTemperature: number;
  readonly waterTemperature: number;
  readonly innerDiameter: number;
  readonly share: number;
  readonly temperatureChange: number;
}

/**
 * Mean temperature of the loop water along the coil in the tank.
 *     T_m = T_w + share (T_c − T_w)
 * @param waterTemperature       T_w [K], of the tank
 * @param condensingTemperature  T_c [K], dew
 * @param share                  [-], part of the approach that stands between loop and tank
 * @returns                      T_m [K]
 * Source: definition of the share. Worked value: 299.15, 309.15 K, 0.6 → 305.15 K.
 */
export function loopTemperature(waterTemperature: number, condensingTemperature: number, share: number): number {
  return waterTemperature + share * (condensingTemperature - waterTemperature);
}

/** Loop water where it enters the coil [K] = T_m + ΔT/2: mean temperature [K], change along the coil [K]. Definition. */
export function loopInlet(meanTemperature: number, change: number): number {
  return meanTemperature + change / 2;
}

/** Loop water where it leaves the coil [K] = T_m − ΔT/2: mean temperature [K], change along the coil [K]. Definition. */
export function loopOutlet(meanTemperature: number, change: number): number {
  return meanTemperature - change / 2;
}

/** ṁ [kg/s] = Q/(c_p ΔT): heat carried [W], specific heat [J/(kg K)], change of temperature [K]. Energy balance. */
export function loopMassFlow(duty: number, heatCapacity: number, change: number): number {
  return duty / (heatCapacity * change);
}

/** w [m/s] = ṁ/(ρ π D²/4): mass flow [kg/s], density [kg/m³], inner diameter [m]. Continuity. */
export function tubeVelocity(massFlow: number, density: number, innerDiameter: number): number {
  return massFlow / (density * (Math.PI / 4) * innerDiameter ** 2);
}

/** Re [-] = ρ w D/μ: density [kg/m³], velocity [m/s], inner diameter [m], dynamic viscosity [Pa s]. Definition. */
export function reynoldsNumber(density: number, velocity: number, innerDiameter: number, viscosity: number): number {
  return (density * velocity * innerDiameter) / viscosity;
}

/**
 * Level and flow of the loop water for one tube, before the coil's length is known (pressureDrop and hydraulicPower are added
 * by the caller).
 *     T_m = T_w + share (T_c − T_w);  ṁ = Q/(c_p ΔT_loop);  inlet and outlet T_m ± ΔT_loop/2
 * @throws NoSolutionError 'loopOutsideApproach' where inlet or outlet would pass refrigerant or tank
 */
export function loopFlow(request: LoopRequest): Omit<LoopFlow, 'pressureDrop' | 'hydraulicPower'> {
  const { duty, condensingTemperature, waterTemperature, innerDiameter, share, temperatureChange } = request;
  requireWithin('assumed.tankCoilShare', share, 0.05, 0.95);
  requirePositive('assumed.loopTemperatureChange', temperatureChange);
  const approach = condensingTemperature - waterTemperature;
  const meanTemperature = loopTemperature(waterTemperature, condensingTemperature, share);
  const tankCoilInlet = loopInlet(meanTemperature, temperatureChange);
  const tankCoilOutlet = loopOutlet(meanTemperature, temperatureChange);
  const room = 2 * Math.min(share, 1 - share) * approach;
  if (temperatureChange >= room) {
    throw new NoSolutionError(
      `Loop water that changes by ${temperatureChange} K does not fit between tank and refrigerant.`,
      `loop temperature change below ${room.toPrecision(3)} K with an approach of ${approach.toPrecision(3)} K`,
      'loopOutsideApproach',
    );
  }
  const water = waterFilmProperties(meanTemperature, 0);
  const massFlow = loopMassFlow(duty, water.heatCapacity, temperatureChange);
  const velocity = tubeVelocity(massFlow, water.density, innerDiameter);
  const reynolds = reynoldsNumber(water.density, velocity, innerDiameter, water.viscosity);
  const nusselt = nusseltInsideTube(reynolds, water.prandtl);
  const frictionFactor = frictionFactorChurchill1977(reynolds, 0);
  return {
    meanTemperature,
    tankCoilInlet,
    tankCoilOutlet,
    massFlow,
    volumeFlow: massFlow / water.density,
    innerDiameter,
    water,
    velocity,
    reynolds,
    prandtl: water.prandtl,
    nusselt,
    film: filmCoefficient(nusselt, water.conductivity, innerDiameter),
    conductivity: water.conductivity,
    frictionFactor,
    pressureGradient: (frictionFactor * water.density * velocity ** 2) / (2 * innerDiameter),
    meanDifferenceToTank: logarithmicMean(
      temperatureDifference(tankCoilInlet, waterTemperature),
      temperatureDifference(tankCoilOutlet, waterTemperature),
    ),
    meanDifferenceToRefrigerant: logarithmicMean(
      temperatureDifference(condensingTemperature, tankCoilOutlet),
      temperatureDifference(condensingTemperature, tankCoilInlet),
    ),
  };
}

export interface RefrigerantToLoop {
  readonly meanDifference: number;
  /** U [W/(m² K)], wall left out. */
  readonly overallCoefficient: number;
  /** UA [W/K]. */
  readonly conductance: number;
  /** [m²]. */
  readonly area: number;
}

/**
 * Area of the exchanger between refrigerant and loop water.
 *     1/U = 1/h_r + R_f + 1/h_l;  A = Q/(U ΔT_lm)
 * @throws InputError for impossible numbers
 * Leaves out the wall, and the zones of desuperheating and subcooling. Source: series resistances; both films assumed.
 */
export function refrigerantToLoop(request: {
  readonly duty: number;
  readonly meanDifference: number;
  readonly refrigerantFilm: number;
  readonly loopSideFilm: number;
  readonly fouling: number;
}): RefrigerantToLoop {
  const { duty, meanDifference, refrigerantFilm, loopSideFilm, fouling } = request;
  requirePositive('assumed.loopSideFilm', loopSideFilm);
  const overallCoefficient = twoFilmCoefficient(refrigerantFilm, fouling, loopSideFilm);
  const conductance = duty / meanDifference;
  return {
    meanDifference,
    overallCoefficient,
    conductance,
    area: areaForDuty(duty, overallCoefficient, meanDifference),
  };
}
