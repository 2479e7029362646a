// Makes states out of densities and temperatures: one phase, one side of the dome, or a mixture of both sides.

import type { Equilibrium } from '../dome/equilibrium.ts';
import { mixed, mixedDensity } from '../equation/relations.ts';
import { surfaceTensionAt } from '../surface-tension.ts';
import type { Phase, Refrigerant, Saturation, State } from '../types.ts';
import { SMALLEST_STIFFNESS } from './limits.ts';

/**
 * Name of a single phase above a critical value: above both supercritical, above the pressure only liquid, above the
 * temperature only vapour; undefined below both, where the side of the dome names it.
 */
export function phaseAboveCritical(
  { critical }: Refrigerant,
  temperature: number,
  pressure: number,
): Phase | undefined {
  const isWarmer = temperature > critical.temperature;
  if (pressure > critical.pressure) return isWarmer ? 'supercritical' : 'liquid';
  return isWarmer ? 'vapour' : undefined;
}

/** By the side of the dome; of a blend, by the pressure half way between its lines, which no single phase comes near. */
function phaseBesideDome(fluid: Refrigerant, temperature: number, pressure: number, density: number): Phase {
  const { critical, bubbleAndDew } = fluid;
  // The critical density divides the phases of a pure fluid; a blend's equation has its own critical point elsewhere.
  if (bubbleAndDew === undefined) return density > critical.density ? 'liquid' : 'vapour';
  const middle = (bubbleAndDew.bubblePressure(temperature) + bubbleAndDew.dewPressure(temperature)) / 2;
  return pressure > middle ? 'liquid' : 'vapour';
}

/** A state of one phase; `pressure` is the one asked for, which the density meets to rounding. */
export function singlePhaseState(fluid: Refrigerant, temperature: number, density: number, pressure: number): State {
  const phase =
    phaseAboveCritical(fluid, temperature, pressure) ?? phaseBesideDome(fluid, temperature, pressure, density);
  return evaluatedState(fluid, temperature, density, pressure, null, null, phase);
}

/** A state of one phase within the limits, whose pressure follows; one that passes the largest by rounding is the largest. */
export function stateOfDensity(fluid: Refrigerant, temperature: number, density: number): State {
  const { equation, limits } = fluid;
  const pressure = Math.min(equation.residualAt(temperature, density).pressure, limits.pressureMax);
  return singlePhaseState(fluid, temperature, density, pressure);
}

/** One side of the dome: counted as two-phase, with the values of that side. */
export function saturatedState(fluid: Refrigerant, equilibrium: Equilibrium, side: 'liquid' | 'vapour'): State {
  const temperature = side === 'liquid' ? equilibrium.bubbleTemperature : equilibrium.dewTemperature;
  return sideState(fluid, equilibrium, side, surfaceTensionAt(fluid, temperature));
}

export function saturation(fluid: Refrigerant, equilibrium: Equilibrium): Saturation {
  const { bubbleTemperature, dewTemperature } = equilibrium;
  const tension = surfaceTensionAt(fluid, bubbleTemperature);
  const dewTension = dewTemperature === bubbleTemperature ? tension : surfaceTensionAt(fluid, dewTemperature);
  return {
    liquid: sideState(fluid, equilibrium, 'liquid', tension),
    vapour: sideState(fluid, equilibrium, 'vapour', dewTension),
  };
}

function sideState(fluid: Refrigerant, equilibrium: Equilibrium, side: 'liquid' | 'vapour', tension: number): State {
  const { bubbleTemperature, bubblePressure, liquidDensity, dewTemperature, dewPressure, vapourDensity } = equilibrium;
  return side === 'liquid'
    ? evaluatedState(fluid, bubbleTemperature, liquidDensity, bubblePressure, tension, 0, 'twoPhase')
    : evaluatedState(fluid, dewTemperature, vapourDensity, dewPressure, tension, 1, 'twoPhase');
}

function evaluatedState(
  fluid: Refrigerant,
  temperature: number,
  density: number,
  pressure: number,
  surfaceTension: number | null,
  quality: number | null,
  phase: Phase,
): State {
  const equation = fluid.equation.at(temperature, density);
  const { enthalpy } = equation;
  const isCritical = !(equation.stiffness > SMALLEST_STIFFNESS);
  return {
    temperature,
    pressure,
    density,
    enthalpy,
    entropy: equation.entropy,
    internalEnergy: enthalpy - pressure / density,
    cp: isCritical ? null : equation.cp,
    cv: equation.cv,
    soundSpeed: equation.soundSpeed,
    surfaceTension,
    quality,
    phase,
  };
}

/**
 * A mixture of both sides at one pressure: h, s, u and 1/ρ are linear in the quality, and of a blend the temperature too; x
 * at 0 or 1 gives that side.
 */
export function mixedState(fluid: Refrigerant, equilibrium: Equilibrium, quality: number): State {
  if (quality === 0) return saturatedState(fluid, equilibrium, 'liquid');
  if (quality === 1) return saturatedState(fluid, equilibrium, 'vapour');
  const { bubbleTemperature, dewTemperature, bubblePressure: pressure, liquidDensity, vapourDensity } = equilibrium;
  const { equation } = fluid;
  const temperature = mixed(bubbleTemperature, dewTemperature, quality);
  equation.at(bubbleTemperature, liquidDensity);
  const liquidEnthalpy = equation.enthalpy;
  const liquidEntropy = equation.entropy;
  equation.at(dewTemperature, vapourDensity);
  const enthalpy = mixed(liquidEnthalpy, equation.enthalpy, quality);
  const density = mixedDensity(liquidDensity, vapourDensity, quality);
  return {
    temperature,
    pressure,
    density,
    enthalpy,
    entropy: mixed(liquidEntropy, equation.entropy, quality),
    internalEnergy: enthalpy - pressure / density,
    cp: null,
    cv: null,
    soundSpeed: null,
    surfaceTension: surfaceTensionAt(fluid, temperature),
    quality,
    phase: 'twoPhase',
    ...(fluid.bubbleAndDew === undefined ? {} : { glideApproximation: true }),
  };
}
