// The intermediate loop of fresh water between refrigerant and tank: its temperature level, flow, film and pressure drop in
// one tube, and the exchanger between refrigerant and loop water sized with two assumed films.

import { NoSolutionError, requirePositive, requireWithin } from '../../numerics/index.ts';
import { logarithmicMean } from './effectiveness.ts';
import { frictionFactorChurchill1977, nusseltInsideTube } from './films.ts';
import { areaForDuty, filmCoefficient, twoFilmCoefficient } from './relations.ts';
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
  const meanTemperature = waterTemperature + share * approach;
  const tankCoilInlet = meanTemperature + temperatureChange / 2;
  const tankCoilOutlet = meanTemperature - temperatureChange / 2;
  const room = 2 * Math.min(share, 1 - share) * approach;
  if (temperatureChange >= room) {
    throw new NoSolutionError(
      `Loop water that changes by ${temperatureChange} K does not fit between tank and refrigerant.`,
      `loop temperature change below ${room.toPrecision(3)} K with an approach of ${approach.toPrecision(3)} K`,
      'loopOutsideApproach',
    );
  }
  const water = waterFilmProperties(meanTemperature, 0);
  const massFlow = duty / (water.heatCapacity * temperatureChange);
  const velocity = massFlow / (water.density * (Math.PI / 4) * innerDiameter ** 2);
  const reynolds = (water.density * velocity * innerDiameter) / water.viscosity;
  const nusselt = nusseltInsideTube(reynolds, water.prandtl);
  const frictionFactor = frictionFactorChurchill1977(reynolds, 0);
  return {
    meanTemperature,
    tankCoilInlet,
    tankCoilOutlet,
    massFlow,
    volumeFlow: massFlow / water.density,
    innerDiameter,
    velocity,
    reynolds,
    prandtl: water.prandtl,
    nusselt,
    film: filmCoefficient(nusselt, water.conductivity, innerDiameter),
    conductivity: water.conductivity,
    frictionFactor,
    pressureGradient: (frictionFactor * water.density * velocity ** 2) / (2 * innerDiameter),
    meanDifferenceToTank: logarithmicMean(tankCoilInlet - waterTemperature, tankCoilOutlet - waterTemperature),
    meanDifferenceToRefrigerant: logarithmicMean(
      condensingTemperature - tankCoilOutlet,
      condensingTemperature - tankCoilInlet,
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
