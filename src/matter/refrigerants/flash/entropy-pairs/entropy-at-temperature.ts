// States from temperature and entropy. On an isotherm the entropy falls as the density rises, wherever pressure rises with
// temperature at constant density: (∂s/∂ρ)_T = −(∂p/∂T)_ρ / ρ². One state belongs to a pair, found by Newton's method on
// ln ρ inside a bracket; inside the dome by the lever rule. The exception is a liquid that is densest above its lowest
// temperature, as water below about 4 °C: there a pair can belong to three states, and is refused with all of them named.

import { findRoot, OutOfModelError } from '../../../../numerics/index.ts';
import { equilibriumAtTemperature } from '../../dome/dome.ts';
import type { Equilibrium } from '../../dome/equilibrium.ts';
import { qualityOf } from '../../equation/relations.ts';
import type { Refrigerant, State } from '../../types.ts';
import { mixedState, saturatedState, stateOfDensity } from '../assemble.ts';
import { blendBetweenEntropies } from '../blend-flash.ts';
import { densityOnBranch } from '../density.ts';
import { ROUNDING_AT_LIMIT, SMALLEST_PRESSURE } from '../limits.ts';
import { meltingPressure } from '../melting-line.ts';
import { BEFORE_FIRST_STEP, isLastStep } from '../newton.ts';
import { severalStates } from './several-states.ts';

/**
 * An entropy this close to one side of the dome counts as on it: as a share of R. Closer than with a pressure given: here the
 * pressure follows, and in a cold liquid it changes by ρ Δs/α, many times the saturation pressure.
 */
const ENTROPY_ON_THE_LINE = 1e-11;
/** First guesses of the densities on the dome serve to tell the phase where the entropy is further from it: as a share of R. */
const CLEAR_OF_THE_DOME = 0.05;
/** Closer to the critical temperature than this share the guesses are not asked. */
const CLOSE_TO_CRITICAL = 0.005;
const STEPS = 200;

/**
 * The stable state at temperature T and entropy s.
 * @param fluid        the fluid
 * @param temperature  T [K], checked by the caller against the limits
 * @param entropy      s [J/(kg K)], finite
 * @returns            the state
 * @throws OutOfModelError with the lowest and highest entropy of this isotherm: that at the largest pressure (or the melting
 *         pressure, if lower) and that at 1e-30 Pa; InputError 'severalStates' naming all of them (see the head of this file)
 */
export function stateAtTemperatureAndEntropy(fluid: Refrigerant, temperature: number, entropy: number): State {
  const [state, ...others] = everyStateAt(fluid, temperature, entropy);
  if (others.length === 0) return state!;
  throw severalStates(`${temperature} K and ${entropy} J/(kg K)`, [state!, ...others]);
}

/** Every state at T and s, lowest pressure first; at least one. @throws OutOfModelError */
export function everyStateAt(fluid: Refrigerant, temperature: number, entropy: number): readonly State[] {
  const { critical, limits, gasConstant } = fluid;
  if (temperature >= critical.temperature) {
    const density = fluidDensity(
      fluid,
      temperature,
      entropy,
      0,
      limits.densityMax,
      thinStart(fluid, temperature, entropy),
    );
    return [stateOfDensity(fluid, temperature, density)];
  }
  const clear = clearOfTheDome(fluid, temperature, entropy);
  if (clear !== undefined) return [stateOfDensity(fluid, temperature, clear)];
  return statesByTheDome(
    fluid,
    equilibriumAtTemperature(fluid, temperature),
    temperature,
    entropy,
    ENTROPY_ON_THE_LINE * gasConstant,
  );
}

/** Density of a state far enough from the dome to tell its side from first guesses; undefined for the others. */
function clearOfTheDome(fluid: Refrigerant, temperature: number, entropy: number): number | undefined {
  const { equation, guess, gasConstant, critical, limits } = fluid;
  if (fluid.bubbleAndDew !== undefined || temperature > critical.temperature * (1 - CLOSE_TO_CRITICAL))
    return undefined;
  const margin = CLEAR_OF_THE_DOME * gasConstant;
  const vapour = guess.vapourDensity(temperature);
  const aboveVapour = entropy - equation.at(temperature, vapour).entropy;
  if (aboveVapour > margin) {
    const start = vapour * Math.exp(-aboveVapour / (gasConstant * equation.thermalPush));
    return fluidDensity(fluid, temperature, entropy, 0, vapour, start);
  }
  const liquid = guess.liquidDensity(temperature);
  const belowLiquid = equation.at(temperature, liquid).entropy - entropy;
  const push = equation.thermalPush;
  if (!(belowLiquid > margin && push > 0)) return undefined;
  const start = liquid * Math.exp(Math.min(belowLiquid / (gasConstant * push), 0.3));
  return fluidDensity(fluid, temperature, entropy, liquid, limits.densityMax, start);
}

function statesByTheDome(
  fluid: Refrigerant,
  equilibrium: Equilibrium,
  temperature: number,
  entropy: number,
  close: number,
): readonly State[] {
  const { equation, limits } = fluid;
  const { liquidDensity, vapourDensity } = equilibrium;
  const vapour = equation.at(temperature, vapourDensity).entropy;
  if (Math.abs(entropy - vapour) <= close) return [saturatedState(fluid, equilibrium, 'vapour')];
  if (entropy > vapour) {
    const density = fluidDensity(fluid, temperature, entropy, 0, vapourDensity, vapourDensity);
    return [stateOfDensity(fluid, temperature, density)];
  }
  const liquid = equation.at(temperature, liquidDensity).entropy;
  // From the liquid line on the entropy falls, or in a liquid that expands when cooled rises up to a top first.
  const top = equation.thermalPush < 0 ? densestAt(fluid, temperature, liquidDensity) : liquidDensity;
  const highest = top === liquidDensity ? liquid : equation.at(temperature, top).entropy;
  const states: State[] = [];
  if (Math.abs(entropy - liquid) <= close) states.push(saturatedState(fluid, equilibrium, 'liquid'));
  else if (entropy > liquid) {
    states.push(
      fluid.bubbleAndDew === undefined
        ? mixedState(fluid, equilibrium, qualityOf(entropy, liquid, vapour))
        : blendBetweenEntropies(fluid, equilibrium, entropy),
    );
  }
  if (top > liquidDensity && entropy >= liquid - close && entropy <= highest) {
    if (entropy > liquid + close) {
      states.push(stateOfDensity(fluid, temperature, risingDensity(fluid, temperature, entropy, liquidDensity, top)));
    }
  }
  if (states.length === 0 || (top > liquidDensity && entropy < highest)) {
    const density = fluidDensity(fluid, temperature, entropy, top, limits.densityMax, top);
    // The second liquid may lie beyond the largest pressure, and is then none.
    if (states.length === 0 || isWithinPressure(fluid, temperature, density)) {
      states.push(stateOfDensity(fluid, temperature, density));
    }
  }
  return states;
}

/** First guess above the critical temperature: as if a gas as thin as this one kept its push. */
function thinStart(fluid: Refrigerant, temperature: number, entropy: number): number {
  const { equation, critical, gasConstant, limits } = fluid;
  const thin = critical.density / 10;
  const logarithm = (equation.at(temperature, thin).entropy - entropy) / (gasConstant * equation.thermalPush);
  return Math.min(thin * Math.exp(Math.min(logarithm, 10)), 0.9 * limits.densityMax);
}

/** Density with s(ρ,T) = s where the entropy falls with density; outside the bracket or beyond the limits it is an error. */
function fluidDensity(
  fluid: Refrigerant,
  temperature: number,
  entropy: number,
  low: number,
  high: number,
  start: number,
): number {
  const density = fallingDensity(fluid, temperature, entropy, low, high, start);
  if (density === undefined || !isWithinPressure(fluid, temperature, density))
    throw beyond(fluid, temperature, entropy);
  return density;
}

/** Newton's method on ln ρ, inside a bracket that shrinks at each step; undefined where it ends on a wall. */
function fallingDensity(
  fluid: Refrigerant,
  temperature: number,
  entropy: number,
  low: number,
  high: number,
  start: number,
): number | undefined {
  const { equation, gasConstant } = fluid;
  const thinnest = Math.max(low, SMALLEST_PRESSURE / (gasConstant * temperature));
  let below = thinnest;
  let above = high;
  let density = start > below && start < above ? start : Math.sqrt(below * above);
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < STEPS; step++) {
    equation.at(temperature, density);
    const gap = equation.entropy - entropy;
    const logarithm = gap / (gasConstant * equation.thermalPush);
    if (gap >= 0) below = density;
    if (gap <= 0) above = density;
    const next = density * Math.exp(logarithm);
    const size = Math.abs(logarithm);
    if (size <= 1e-14) return density;
    if (next > below && next < above) {
      density = next;
      if (isLastStep(size, before)) return density;
      before = size;
    } else {
      density = above / below > 2 ? Math.sqrt(below * above) : (below + above) / 2;
      before = BEFORE_FIRST_STEP;
    }
    // Neighbouring numbers: the root lies between them or beyond the wall of the bracket.
    if (above - below <= 4.5e-16 * above) {
      const isWall = above === high || below === thinnest;
      return isWall && size > 1e-9 ? undefined : density;
    }
  }
  return undefined;
}

/** Density with s(ρ,T) = s between the liquid line and the density of the greatest entropy, where the entropy rises. */
function risingDensity(fluid: Refrigerant, temperature: number, entropy: number, low: number, high: number): number {
  const { equation } = fluid;
  const gapAt = (density: number) => equation.at(temperature, density).entropy - entropy;
  if (gapAt(low) >= 0) return low;
  if (gapAt(high) <= 0) return high;
  return findRoot(gapAt, low, high, { relativeTolerance: 1e-15, what: 'density of a liquid from its entropy' }).root;
}

/** Density of the greatest entropy of a liquid: where the pressure does not change with temperature. */
function densestAt(fluid: Refrigerant, temperature: number, liquidDensity: number): number {
  const { equation, limits } = fluid;
  const pushAt = (density: number) => equation.residualAt(temperature, density).thermalPush;
  return findRoot(pushAt, liquidDensity, limits.densityMax, { what: 'density of the greatest entropy' }).root;
}

function isWithinPressure(fluid: Refrigerant, temperature: number, density: number): boolean {
  const { pressure } = fluid.equation.residualAt(temperature, density);
  return pressure <= fluid.limits.pressureMax * (1 + ROUNDING_AT_LIMIT) && pressure >= SMALLEST_PRESSURE * (1 - 1e-6);
}

function beyond(fluid: Refrigerant, temperature: number, entropy: number): OutOfModelError {
  const { pressureMax } = fluid.limits;
  const largest = Math.min(pressureMax, meltingPressure(fluid, temperature) ?? pressureMax);
  const [low, high] = entropyRange(fluid, temperature, largest);
  const reason = `the range at ${temperature} K`;
  return new OutOfModelError('entropy', entropy, 'J/(kg K)', low, high, 'outOfModel', reason);
}

/** Entropies at a temperature: at the largest pressure and at the smallest. */
export function entropyRange(
  fluid: Refrigerant,
  temperature: number,
  largestPressure: number,
): readonly [number, number] {
  const { equation, limits, critical, gasConstant } = fluid;
  const from = temperature < critical.temperature ? equilibriumAtTemperature(fluid, temperature).liquidDensity : 0;
  const start = from > 0 ? 1.1 * from : largestPressure / (gasConstant * temperature);
  const dense = densityOnBranch(fluid, temperature, largestPressure, from, limits.densityMax * 1.001, start);
  const low = equation.at(temperature, dense).entropy;
  const thin = SMALLEST_PRESSURE / (gasConstant * temperature);
  return [low, equation.at(temperature, thin).entropy];
}
