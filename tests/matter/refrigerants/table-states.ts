// Random states inside the region of a table, solved by the equation.

import {
  AROUND_CRITICAL,
  type Refrigerant,
  type State,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
  type TableRegion,
} from '../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../src/numerics/index.ts';

/** Numbers from 0 to 1 in an order that the seed alone decides (linear congruential, Numerical Recipes' constants). */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A pressure between the lowest of the region and a share of the critical one, even in its logarithm. */
export function regionPressure(fluid: Refrigerant, region: TableRegion, share: number, topShare: number): number {
  const lowest = saturationAtTemperature(fluid, region.temperatureMin).liquid.pressure * (1 + 1e-9);
  return lowest * ((topShare * fluid.critical.pressure) / lowest) ** share;
}

/**
 * States of the region by temperature and pressure, every fourth by pressure and quality; those in the surroundings of the
 * critical point, which a table leaves out, are drawn anew.
 */
export function statesInRegion(fluid: Refrigerant, region: TableRegion, count: number, seed: number): readonly State[] {
  const next = randomNumbers(seed);
  const top = saturationAtPressure(fluid, AROUND_CRITICAL.below * fluid.critical.pressure);
  const states: State[] = [];
  for (let tries = 0; states.length < count && tries < 20 * count; tries++) {
    const topShare = states.length % 4 === 3 ? AROUND_CRITICAL.below : region.pressureMax / fluid.critical.pressure;
    const pressure = regionPressure(fluid, region, next(), topShare * (1 - 1e-9));
    const share = next();
    const temperature = region.temperatureMin + share * (region.temperatureMax - region.temperatureMin);
    try {
      const state = stateAt(fluid, states.length % 4 === 3 ? { pressure, quality: share } : { temperature, pressure });
      if (!isNearCritical(fluid, state, top)) states.push(state);
    } catch (error) {
      if (!(error instanceof KettlefinError)) throw error;
    }
  }
  if (states.length < count) throw new Error(`only ${states.length} of ${count} states of ${fluid.name}`);
  return states;
}

function isNearCritical({ critical, limits }: Refrigerant, state: State, top: ReturnType<typeof saturationAtPressure>) {
  const share = state.pressure / critical.pressure;
  if (share <= AROUND_CRITICAL.below || share >= AROUND_CRITICAL.above) return false;
  // Where the equation ends close to its critical temperature, the hot side is left out too.
  const isHot = limits.temperatureMax - critical.temperature < 5 && state.enthalpy > top.liquid.enthalpy;
  return isHot || (state.enthalpy > top.liquid.enthalpy && state.enthalpy < top.vapour.enthalpy);
}
