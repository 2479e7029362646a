// Properties of fresh or sea water at a film temperature, gathered for the films of the exchangers.

import {
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterViscosity,
} from '../../matter/water/index.ts';

export interface WaterFilmProperties {
  /** Film temperature [K]. */
  readonly temperature: number;
  /** ρ [kg/m³]. */
  readonly density: number;
  /** c_p [J/(kg K)]. */
  readonly heatCapacity: number;
  /** μ [Pa s]. */
  readonly viscosity: number;
  /** k [W/(m K)]. */
  readonly conductivity: number;
  /** β [1/K]. */
  readonly expansion: number;
  /** Pr [-] = μ c_p / k. */
  readonly prandtl: number;
}

/** Film temperature [K] = T + δ/2: bulk of the water [K], surface against the bulk [K]. Convention of the films. */
export function filmTemperature(bulk: number, difference: number): number {
  return bulk + difference / 2;
}

/** Prandtl number Pr [-] = μ c_p / k: viscosity [Pa s], specific heat [J/(kg K)], conductivity [W/(m K)]. Definition. */
export function prandtlNumber(viscosity: number, heatCapacity: number, conductivity: number): number {
  return (viscosity * heatCapacity) / conductivity;
}

/** All six at one temperature [K] and salinity [kg/kg]. @throws OutOfModelError outside the range of the water properties. */
export function waterFilmProperties(temperature: number, salinity: number): WaterFilmProperties {
  const viscosity = waterViscosity(temperature, salinity);
  const heatCapacity = waterHeatCapacity(temperature, salinity);
  const conductivity = waterConductivity(temperature, salinity);
  return {
    temperature,
    density: waterDensity(temperature, salinity),
    heatCapacity,
    viscosity,
    conductivity,
    expansion: waterExpansion(temperature, salinity),
    prandtl: prandtlNumber(viscosity, heatCapacity, conductivity),
  };
}
