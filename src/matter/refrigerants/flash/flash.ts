// From a pair of properties to the state: decides the phase from the saturation values at the given pressure or
// temperature, then solves on that branch only, so that no metastable state is ever returned.
// Pairs: (T,p) (p,h) (p,s) (T,x) (p,x) (ρ,T). Those with p and a caloric property are solved in caloric-flash.ts; (h,s) and
// (T,s) join them in entropy-pairs/. What the solvers find is refused where the fluid would be solid.

import { InputError, OutOfModelError, requirePositive } from '../../../numerics/index.ts';
import { equilibriumAtPressure, equilibriumAtTemperature } from '../dome/dome.ts';
import type { Equilibrium } from '../dome/equilibrium.ts';
import { qualityOf } from '../equation/relations.ts';
import type { LoopPair, Refrigerant, Saturation, State } from '../types.ts';
import { mixedState, saturatedState, saturation, singlePhaseState } from './assemble.ts';
import {
  blendAtPressureOnDewLine,
  blendAtTemperatureAndQuality,
  blendBetweenDensities,
  blendBetweenLines,
} from './blend-flash.ts';
import { caloricState } from './caloric-flash.ts';
import { densityBesideDome, densityOnBranch } from './density.ts';
import { SMALLEST_DENSITY, SMALLEST_PRESSURE } from './limits.ts';
import { requireMolten } from './melting-line.ts';

/** A pressure this close to saturation, relative, does not tell liquid from vapour: (T,p) is then no pair. */
const SATURATED_PAIR = 1e-8;
/** A density this close to one side of the dome, relative, counts as on it. */
const DENSITY_ON_THE_LINE = 1e-10;

/** The pairs solved here. */
export const pairs = [
  ['temperature', 'pressure'],
  ['pressure', 'enthalpy'],
  ['pressure', 'entropy'],
  ['temperature', 'quality'],
  ['pressure', 'quality'],
  ['density', 'temperature'],
] as const;

/**
 * The state of a fluid from a pair of properties that loops are solved with: stateAt for a program that never asks for (h,s)
 * or (T,s), whose solvers are as large as all others together and need not be loaded then.
 * @param fluid  the fluid, from refrigerant(name)
 * @param given  one such pair, as for stateAt
 * @throws as stateAt
 */
export function stateInLoop(fluid: Refrigerant, given: LoopPair): State {
  return fluid.table?.stateAt(given) ?? stateOfPair(fluid, checkedPair(given, pairs));
}

/** The same by the equation alone, of a pair that was checked. */
export function stateOfPair(fluid: Refrigerant, values: LoopPair): State {
  const state = stateOf(fluid, values);
  if (state.quality === null) requireMolten(fluid, state.temperature, state.pressure);
  return state;
}

/** The stable state as fluid, of a pair that is one. */
function stateOf(fluid: Refrigerant, values: LoopPair): State {
  if ('quality' in values) {
    if (!(values.quality >= 0 && values.quality <= 1)) {
      throw new InputError('given.quality', values.quality, 'a number from 0 to 1');
    }
    return 'temperature' in values
      ? stateAtTemperatureAndQuality(fluid, values.temperature, values.quality)
      : stateAtPressureAndQuality(fluid, values.pressure, values.quality);
  }
  if ('density' in values) return stateAtDensity(fluid, values.density, values.temperature);
  requirePressure(fluid, values.pressure);
  if ('enthalpy' in values) return caloricState(fluid, values.pressure, 'enthalpy', values.enthalpy);
  if ('entropy' in values) return caloricState(fluid, values.pressure, 'entropy', values.entropy);
  return stateAtTemperatureAndPressure(fluid, values.temperature, values.pressure);
}

/**
 * Both sides of the dome at a temperature T [K], from the triple point to below the critical temperature.
 * @throws InputError, OutOfModelError ('noSaturation'). Method and worked value: see equilibriumAtTemperature.
 */
export function saturationAtTemperature(fluid: Refrigerant, temperature: number): Saturation {
  const fromTable = fluid.table?.saturationAtTemperature(temperature);
  return fromTable ?? saturation(fluid, saturatedAtTemperature(fluid, temperature));
}

/**
 * Both sides of the dome at a pressure p [Pa], from the triple point to below the critical pressure.
 * @throws InputError, OutOfModelError ('noSaturation'). Method and worked value: see equilibriumAtPressure.
 */
export function saturationAtPressure(fluid: Refrigerant, pressure: number): Saturation {
  const fromTable = fluid.table?.saturationAtPressure(pressure);
  return fromTable ?? saturation(fluid, saturatedAtPressure(fluid, pressure));
}

function saturatedAtTemperature(fluid: Refrigerant, temperature: number): Equilibrium {
  requirePositive('given.temperature', temperature);
  return equilibriumAtTemperature(fluid, temperature);
}

function saturatedAtPressure(fluid: Refrigerant, pressure: number): Equilibrium {
  requirePositive('given.pressure', pressure);
  return equilibriumAtPressure(fluid, pressure);
}

function stateAtTemperatureAndQuality(fluid: Refrigerant, temperature: number, quality: number): State {
  requirePositive('given.temperature', temperature);
  if (fluid.bubbleAndDew !== undefined) return blendAtTemperatureAndQuality(fluid, temperature, quality);
  return mixedState(fluid, equilibriumAtTemperature(fluid, temperature), quality);
}

function stateAtPressureAndQuality(fluid: Refrigerant, pressure: number, quality: number): State {
  requirePositive('given.pressure', pressure);
  if (fluid.bubbleAndDew !== undefined && quality === 1) return blendAtPressureOnDewLine(fluid, pressure);
  return mixedState(fluid, equilibriumAtPressure(fluid, pressure), quality);
}

/** The stable state at T and p. @throws InputError 'saturatedPair' on the saturation line, on either line of a blend */
function stateAtTemperatureAndPressure(fluid: Refrigerant, temperature: number, pressure: number): State {
  requireTemperature(fluid, temperature);
  const { critical, limits, gasConstant } = fluid;
  if (temperature >= critical.temperature) {
    const start = pressure / (gasConstant * temperature);
    const density = densityOnBranch(fluid, temperature, pressure, 0, limits.densityMax, start);
    return singlePhaseState(fluid, temperature, density, pressure);
  }
  const equilibrium = equilibriumAtTemperature(fluid, temperature);
  const { bubblePressure, dewPressure } = equilibrium;
  const onLine = (line: number) => Math.abs(pressure / line - 1) <= SATURATED_PAIR;
  if (onLine(bubblePressure) || onLine(dewPressure)) {
    throw new InputError(
      'given',
      `${temperature} K and ${pressure} Pa`,
      'temperature and quality (or pressure and quality): this pressure is the saturation pressure at this temperature',
      'saturatedPair',
    );
  }
  if (pressure > dewPressure && pressure < bubblePressure && pressure < critical.pressure) {
    return blendBetweenLines(fluid, temperature, pressure);
  }
  return singlePhaseState(fluid, temperature, densityBesideDome(fluid, equilibrium, pressure), pressure);
}

function stateAtDensity(fluid: Refrigerant, density: number, temperature: number): State {
  requireTemperature(fluid, temperature);
  const { limits, critical } = fluid;
  requirePositive('given.density', density);
  if (density < SMALLEST_DENSITY || density > limits.densityMax * (1 + DENSITY_ON_THE_LINE)) {
    throw new OutOfModelError('density', density, 'kg/m³', SMALLEST_DENSITY, limits.densityMax);
  }
  if (temperature < critical.temperature) {
    const equilibrium = equilibriumAtTemperature(fluid, temperature);
    const { liquidDensity, vapourDensity } = equilibrium;
    if (Math.abs(density / liquidDensity - 1) <= DENSITY_ON_THE_LINE)
      return saturatedState(fluid, equilibrium, 'liquid');
    if (Math.abs(density / vapourDensity - 1) <= DENSITY_ON_THE_LINE)
      return saturatedState(fluid, equilibrium, 'vapour');
    if (density < liquidDensity && density > vapourDensity) {
      if (fluid.bubbleAndDew !== undefined) return blendBetweenDensities(fluid, equilibrium, density);
      const quality = qualityOf(1 / density, 1 / liquidDensity, 1 / vapourDensity);
      return mixedState(fluid, equilibrium, quality);
    }
  }
  const { pressure } = fluid.equation.residualAt(temperature, density);
  if (!(pressure <= limits.pressureMax * (1 + DENSITY_ON_THE_LINE))) {
    throw new OutOfModelError('pressure', pressure, 'Pa', SMALLEST_PRESSURE, limits.pressureMax);
  }
  return singlePhaseState(fluid, temperature, density, pressure);
}

/** @throws InputError, or OutOfModelError outside the range of the equation */
export function requireTemperature(fluid: Refrigerant, temperature: number): void {
  requirePositive('given.temperature', temperature);
  const { temperatureMin, temperatureMax } = fluid.limits;
  if (temperature < temperatureMin || temperature > temperatureMax) {
    throw new OutOfModelError('temperature', temperature, 'K', temperatureMin, temperatureMax);
  }
}

function requirePressure(fluid: Refrigerant, pressure: number): void {
  requirePositive('given.pressure', pressure);
  if (pressure < SMALLEST_PRESSURE || pressure > fluid.limits.pressureMax) {
    throw new OutOfModelError('pressure', pressure, 'Pa', SMALLEST_PRESSURE, fluid.limits.pressureMax);
  }
}

/**
 * The pair if it is a supported one and both values are finite.
 * @param given      what was given
 * @param supported  the pairs that are
 */
export function checkedPair<Pair extends object>(given: Pair, supported: readonly (readonly [string, string])[]): Pair {
  const keys = typeof given === 'object' && given !== null ? Object.keys(given) : [];
  const known = supported.some((pair) => keys.length === 2 && pair.every((key) => keys.includes(key)));
  if (!known) {
    const words = supported.map(([first, second]) => `${first} and ${second}`).join('; ');
    throw new InputError('given', keys.join(' and ') || given, words, 'unsupportedPair');
  }
  for (const [key, value] of Object.entries(given)) {
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new InputError(`given.${key}`, value, 'a finite number');
    }
  }
  return given;
}
