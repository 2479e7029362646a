// Where a table answers. Everything else is answered by the equation itself.

import { InputError } from '../../../numerics/index.ts';
import { meltingTemperature } from '../flash/melting-line.ts';
import type { Refrigerant } from '../types.ts';

/**
 * Temperatures [K] and the highest pressure [Pa] of a table. Its lowest pressure is the (bubble) saturation pressure at the
 * lowest temperature. Left out are the surroundings of the critical point: from AROUND_CRITICAL.below to AROUND_CRITICAL.above
 * times the critical pressure, between the enthalpies of saturated liquid and vapour at the lower of these pressures.
 */
export interface TableRegion {
  readonly temperatureMin: number;
  readonly temperatureMax: number;
  readonly pressureMax: number;
}

/** Ends of the surroundings of the critical point, as shares of the critical pressure. */
export const AROUND_CRITICAL = { below: 0.93, above: 1.15 } as const;

/** The loop's region [K]; the highest pressure as a share of the critical one. */
const COLDEST = 200;
const WARMEST = 450;
const ABOVE_CRITICAL = 75;
const PRESSURE_SHARE = 3;
/** A table begins this much above the melting line [K]. */
const MOLTEN = 0.1;

/**
 * The region of a refrigerant loop: from 200 K, but not below the fluid's triple point or its melting temperature at the
 * highest pressure; to 450 K or 75 K above the critical temperature, the higher of these, but not beyond the equation's own
 * limit; to three times the critical pressure.
 */
export function loopRegion(fluid: Refrigerant): TableRegion {
  const { critical, limits } = fluid;
  const pressureMax = Math.min(PRESSURE_SHARE * critical.pressure, limits.pressureMax);
  return {
    temperatureMin: coldestLiquid(fluid, pressureMax, COLDEST),
    temperatureMax: Math.min(Math.max(WARMEST, critical.temperature + ABOVE_CRITICAL), limits.temperatureMax),
    pressureMax,
  };
}

/** @throws InputError if a region leaves the fluid's limits or does not reach beyond the critical point */
export function checkedRegion(fluid: Refrigerant, region: TableRegion): TableRegion {
  const { critical, limits } = fluid;
  const { temperatureMin, temperatureMax, pressureMax } = region;
  const coldest = coldestLiquid(fluid, pressureMax, limits.temperatureMin);
  require('temperatureMin', temperatureMin, coldest, 0.95 * critical.temperature);
  require('temperatureMax', temperatureMax, critical.temperature + 1, limits.temperatureMax);
  require('pressureMax', pressureMax, 1.2 * critical.pressure, limits.pressureMax);
  return region;
}

function coldestLiquid(fluid: Refrigerant, pressureMax: number, wanted: number): number {
  const melting = meltingTemperature(fluid, pressureMax);
  return Math.max(wanted, fluid.limits.temperatureMin, melting === undefined ? 0 : melting + MOLTEN);
}

function require(name: keyof TableRegion, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high))
    throw new InputError(`region.${name}`, value, `a number from ${low} to ${high}`);
}
