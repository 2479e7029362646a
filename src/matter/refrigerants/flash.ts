// From any supported pair of properties to the state: decides the phase from the saturation values at the given pressure
// or temperature, then solves on that branch only, so that no metastable state is ever returned.
// Pairs: (T,p) (p,h) (p,s) (T,x) (p,x) (ρ,T) (h,s) (T,s). Those with p and a caloric property are solved in
// caloric-flash.ts, the last two in entropy-pairs/. What the solvers find is refused where the fluid would be solid.

import { InputError, OutOfModelError, requirePositive } from '../../numerics/index.ts';
import { mixedState, saturatedState, saturation, singlePhaseState } from './assemble.ts';
import {
  blendAtPressureOnDewLine,
  blendAtTemperatureAndQuality,
  blendBetweenDensities,
  blendBetweenLines,
} from './blend-flash.ts';
import { caloricState } from './caloric-flash.ts';
import { densityBesideDome, densityOnBranch } from './density.ts';
import { equilibriumAtPressure, equilibriumAtTemperature } from './dome/dome.ts';
import type { Equilibrium } from './dome/equilibrium.ts';
import { stateAtEnthalpyAndEntropy } from './entropy-pairs/enthalpy-and-entropy.ts';
import { stateAtTemperatureAndEntropy } from './entropy-pairs/entropy-at-temperature.ts';
import { qualityOf } from './equation/relations.ts';
import { SMALLEST_DENSITY, SMALLEST_PRESSURE } from './limits.ts';
import { requireMolten } from './melting-line.ts';
import type { Refrigerant, Saturation, State, StateInput } from './types.ts';

/** A pressure this close to saturation, relative, does not tell liquid from vapour: (T,p) is then no pair. */
export const SATURATED_PAIR = 1e-8;
/** A density this close to one side of the dome, relative, counts as on it. */
const ON_THE_LINE = 1e-10;

const pairs = [
  ['temperature', 'pressure'],
  ['pressure', 'enthalpy'],
  ['pressure', 'entropy'],
  ['temperature', 'quality'],
  ['pressure', 'quality'],
  ['density', 'temperature'],
  ['enthalpy', 'entropy'],
  ['temperature', 'entropy'],
] as const;
/** The pairs in words, for messages. */
export const supportedPairs: readonly string[] = pairs.map(([first, second]) => `${first} and ${second}`);

/**
 * The state of a fluid from two properties.
 * @param fluid  the fluid, from refrigerant(name)
 * @param given  one supported pair, base SI: T [K], p [Pa], ρ [kg/m³], h [J/kg], s [J/(kg K)], x [-]; h and s count from
 *               200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 °C
 * @returns      the complete stable state
 * Validity: the limits of the fluid's equation. Accuracy: that of the equation; the solution is exact to rounding.
 * @throws InputError: not a supported pair ('unsupportedPair'), not finite, (T,p) on the saturation line
 *         ('saturatedPair'), (T,s) of cold water that belongs to several states ('severalStates'); OutOfModelError naming the
 *         limit passed: temperature, pressure, density, enthalpy, entropy, the ends of the dome ('noSaturation'), the melting
 *         temperature ('frozen')
 * Source: the equation in fluid.citations.
 * Worked value: R134a, 265 K and 0.2 MPa → 9.9171 kg/m³ (Tillner-Roth & Baehr 1994, Table 9).
 */
export function stateAt(fluid: Refrigerant, given: StateInput): State {
  const fromTable = fluid.table?.stateAt(given);
  if (fromTable !== undefined) return fromTable;
  const state = stateOf(fluid, checkedPair(given));
  if (state.quality === null) requireMolten(fluid, state.temperature, state.pressure);
  return state;
}

/** The stable state as fluid, of a pair that is one. */
function stateOf(fluid: Refrigerant, values: StateInput): State {
  if ('quality' in values) {
    if (!(values.quality >= 0 && values.quality <= 1)) {
      throw new InputError('given.quality', values.quality, 'a number from 0 to 1');
    }
    return 'temperature' in values
      ? stateAtTemperatureAndQuality(fluid, values.temperature, values.quality)
      : stateAtPressureAndQuality(fluid, values.pressure, values.quality);
  }
  if ('density' in values) return stateAtDensity(fluid, values.density, values.temperature);
  if ('entropy' in values && 'temperature' in values) {
    requireTemperature(fluid, values.temperature);
    return stateAtTemperatureAndEntropy(fluid, values.temperature, values.entropy);
  }
  if ('entropy' in values && 'enthalpy' in values) {
    return stateAtEnthalpyAndEntropy(fluid, values.enthalpy, values.entropy);
  }
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
  if (density < SMALLEST_DENSITY || density > limits.densityMax * (1 + ON_THE_LINE)) {
    throw new OutOfModelError('density', density, 'kg/m³', SMALLEST_DENSITY, limits.densityMax);
  }
  if (temperature < critical.temperature) {
    const equilibrium = equilibriumAtTemperature(fluid, temperature);
    const { liquidDensity, vapourDensity } = equilibrium;
    if (Math.abs(density / liquidDensity - 1) <= ON_THE_LINE) return saturatedState(fluid, equilibrium, 'liquid');
    if (Math.abs(density / vapourDensity - 1) <= ON_THE_LINE) return saturatedState(fluid, equilibrium, 'vapour');
    if (density < liquidDensity && density > vapourDensity) {
      if (fluid.bubbleAndDew !== undefined) return blendBetweenDensities(fluid, equilibrium, density);
      const quality = qualityOf(1 / density, 1 / liquidDensity, 1 / vapourDensity);
      return mixedState(fluid, equilibrium, quality);
    }
  }
  const { pressure } = fluid.equation.residualAt(temperature, density);
  if (!(pressure <= limits.pressureMax * (1 + ON_THE_LINE))) {
    throw new OutOfModelError('pressure', pressure, 'Pa', SMALLEST_PRESSURE, limits.pressureMax);
  }
  return singlePhaseState(fluid, temperature, density, pressure);
}

function requireTemperature(fluid: Refrigerant, temperature: number): void {
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

/** The pair if it is a supported one and both values are finite. */
function checkedPair(given: StateInput): StateInput {
  const keys = typeof given === 'object' && given !== null ? Object.keys(given) : [];
  const known = pairs.some((pair) => keys.length === 2 && pair.every((key) => keys.includes(key)));
  if (!known) {
    throw new InputError('given', keys.join(' and ') || given, supportedPairs.join('; '), 'unsupportedPair');
  }
  for (const [key, value] of Object.entries(given)) {
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new InputError(`given.${key}`, value, 'a finite number');
    }
  }
  return given;
}
