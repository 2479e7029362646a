// Air flow, face area and conductance of the evaporator that an assumed approach temperature implies: evaporating refrigerant
// at one temperature, air cooled by a stated share of the difference. Dry coil; frost and condensation are only flagged.

import {
  DRY_AIR_HEAT_CAPACITY,
  dewPoint,
  dryAirDensity,
  humidityRatio,
  VAPOUR_HEAT_CAPACITY,
  vapourPressure,
} from '../../matter/air/index.ts';
import { NoSolutionError, requireFinite, requirePositive, requireWithin } from '../../numerics/index.ts';
import { exchangerAssumptions } from './assumptions.ts';
import { transferUnitsIsothermal } from './effectiveness.ts';
import { airCapacityFlow, airVolumeFlow, conductanceFor, faceAreaFor, finnedAreaFor } from './relations.ts';

/** What the person seldom knows; exchangerAssumptions holds ranges. */
export interface EvaporatorAssumptions {
  /** ε, share of the largest possible cooling that the air undergoes [-]. */
  readonly effectiveness: number;
  /** U on the whole finned surface [W/(m² K)]. */
  readonly finnedCoefficient: number;
}

export interface EvaporatorRequest {
  /** Q_e, heat taken from the air [W]. */
  readonly duty: number;
  /** T_a, air at the inlet [K]. */
  readonly airTemperature: number;
  /** φ [-], 0 to 1. */
  readonly relativeHumidity: number;
  /** p [Pa], absolute. */
  readonly pressure: number;
  /** T_e, evaporating dew temperature [K]. */
  readonly evaporatingTemperature: number;
  /** w, air speed before the face [m/s]. */
  readonly faceVelocity: number;
  readonly assumed: EvaporatorAssumptions;
}

/** `condensation`: evaporating below the dew point of the air; `frost`: below it and below 0 °C. */
export type EvaporatorWarning = 'condensation' | 'frost';

export interface EvaporatorFace {
  /** T_a − T_e [K]. */
  readonly approach: number;
  /** How much the air cools [K]. */
  readonly airTemperatureDrop: number;
  readonly airOutletTemperature: number;
  /** C, capacity flow of the air [W/K]. */
  readonly capacityFlow: number;
  /** Dry air [kg/s]. */
  readonly dryAirFlow: number;
  /** At the inlet [m³/s]. */
  readonly volumeFlow: number;
  /** [m²]. */
  readonly faceArea: number;
  readonly effectiveness: number;
  /** NTU [-]. */
  readonly transferUnits: number;
  /** UA [W/K]. */
  readonly conductance: number;
  /** Whole finned surface that the assumed coefficient implies [m²]. */
  readonly finnedArea: number;
  /** W [kg/kg dry air]. */
  readonly humidityRatio: number;
  /** ρ_da at the inlet [kg dry air/m³]. */
  readonly dryAirDensity: number;
  /** Per kg of dry air [J/(kg K)]. */
  readonly heatCapacity: number;
  /** [K]; null for perfectly dry air. */
  readonly dewPoint: number | null;
  readonly warnings: readonly EvaporatorWarning[];
  readonly leavesOut: string;
}

/** What the face area leaves out, in words to be shown beside it. */
export const evaporatorLeavesOut =
  'frost, the latent heat of a wet coil (which would need less air), the superheated part of the coil (which needs more surface), pressure drop of the air';

/** 0 °C [K]. */
const freezing = 273.15;

/** Likely values of exchangerAssumptions. */
export function likelyEvaporatorAssumptions(): EvaporatorAssumptions {
  const { airEffectiveness, finnedCoefficient } = exchangerAssumptions;
  return { effectiveness: airEffectiveness.likely, finnedCoefficient: finnedCoefficient.likely };
}

/**
 * Size of the evaporator that duty and approach imply.
 *     C = Q_e/(ε (T_a − T_e));  V̇ = C/(ρ_da (c_pa + W c_pv));  A_face = V̇/w;  NTU = −ln(1 − ε);  UA = NTU · C
 * @returns       flow, face area, conductance and every number in between
 * @throws InputError for impossible numbers; NoSolutionError 'noApproach' where evaporating is not below the air
 * Validity: dry coil, one evaporating temperature. Above the dew point exact for the stated effectiveness; below it condensing
 *           vapour carries a part of the duty and less air is needed.
 * Source: Kays & London effectiveness, one side isothermal; moist air after ASHRAE Handbook Fundamentals.
 */
export function evaporatorFace(request: EvaporatorRequest): EvaporatorFace {
  requireRequest(request);
  const { duty, airTemperature, relativeHumidity, pressure, evaporatingTemperature, faceVelocity, assumed } = request;
  const approach = airTemperature - evaporatingTemperature;
  const partialPressure = vapourPressure(airTemperature, relativeHumidity);
  const ratio = humidityRatio(partialPressure, pressure);
  const density = dryAirDensity(airTemperature, partialPressure, pressure);
  const heatCapacity = moistHeatCapacity(ratio);
  const transferUnits = transferUnitsIsothermal(assumed.effectiveness);
  const capacityFlow = airCapacityFlow(duty, assumed.effectiveness, approach);
  const volumeFlow = airVolumeFlow(capacityFlow, density, heatCapacity);
  const conductance = conductanceFor(transferUnits, capacityFlow);
  const dew = partialPressure > 0 ? dewPoint(airTemperature, partialPressure) : null;
  return {
    approach,
    airTemperatureDrop: assumed.effectiveness * approach,
    airOutletTemperature: airTemperature - assumed.effectiveness * approach,
    capacityFlow,
    dryAirFlow: capacityFlow / heatCapacity,
    volumeFlow,
    faceArea: faceAreaFor(volumeFlow, faceVelocity),
    effectiveness: assumed.effectiveness,
    transferUnits,
    conductance,
    finnedArea: finnedAreaFor(conductance, assumed.finnedCoefficient),
    humidityRatio: ratio,
    dryAirDensity: density,
    heatCapacity,
    dewPoint: dew,
    warnings: warningsOf(evaporatingTemperature, dew),
    leavesOut: evaporatorLeavesOut,
  };
}

/** Specific heat of moist air per kg of dry air [J/(kg K)] from its humidity ratio [kg/kg]. */
export function moistHeatCapacity(ratio: number): number {
  return DRY_AIR_HEAT_CAPACITY + ratio * VAPOUR_HEAT_CAPACITY;
}

function warningsOf(evaporatingTemperature: number, dew: number | null): readonly EvaporatorWarning[] {
  if (dew === null || evaporatingTemperature >= dew) return [];
  return evaporatingTemperature < freezing ? ['frost'] : ['condensation'];
}

function requireRequest(request: EvaporatorRequest): void {
  const { airTemperature, evaporatingTemperature, assumed } = request;
  requirePositive('duty', request.duty);
  requireFinite('airTemperature', airTemperature);
  requireFinite('evaporatingTemperature', evaporatingTemperature);
  requireWithin('relativeHumidity', request.relativeHumidity, 0, 1);
  requirePositive('pressure', request.pressure);
  requirePositive('faceVelocity', request.faceVelocity);
  requirePositive('assumed.effectiveness', assumed.effectiveness);
  requirePositive('assumed.finnedCoefficient', assumed.finnedCoefficient);
  if (!(evaporatingTemperature < airTemperature)) {
    throw new NoSolutionError(
      `Evaporating at ${evaporatingTemperature} K takes no heat from air at ${airTemperature} K.`,
      'evaporating temperature below the air temperature',
      'noApproach',
    );
  }
}
