// What a machine would do at a point as far as its ranges tell, before anything that was printed or measured of it is believed:
// flow and power of the likely machine there, and how far each range moves them. Printed numbers are held against it.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import { KettlefinError } from '../../../numerics/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import { type HermeticParameter, hermeticParameters, type Supply } from '../hermetic/parameters.ts';
import { hermeticPoint, type RunningConditions } from '../hermetic/point.ts';
import type { PriorRange } from '../identification/evidence.ts';
import { machineAt, type Prior, priorOf } from '../identification/priors.ts';

/** Ranges of a machine's numbers, of its class or typed, and the mains it was wound for. */
export interface UsualMachine {
  readonly numbers: Readonly<Record<HermeticParameter, Estimate>>;
  readonly ratedSupply: Supply;
}

/** Natural logarithms of flow [kg/s] and power [W]. */
export interface Logarithms {
  readonly flow: number;
  readonly power: number;
}

export interface Expected {
  readonly likely: Logarithms;
  /** How far each range alone moves both with its σ, in the order of `hermeticParameters`. */
  readonly moves: readonly Logarithms[];
}

/** The ranges as the identification has them. @throws InputError at a range that is none. */
export function usualPrior({ numbers, ratedSupply }: UsualMachine): Prior {
  const ranges = hermeticParameters.map((name): [HermeticParameter, PriorRange] => [
    name,
    { path: name, label: name, estimate: numbers[name] },
  ]);
  return priorOf({ prior: Object.fromEntries(ranges) as Record<HermeticParameter, PriorRange>, ratedSupply });
}

/**
 * Flow and power that the ranges let expect, in logarithms, and what one σ of each range does to them.
 *     move = (ln x(+s) − ln x(−s)) / 2s,  s in σ of the range
 * @param fluid  what it pumps
 * @param prior  its ranges
 * @param at     gas at the inlet, p_d [Pa], air around the shell [K] and mains
 * @returns      undefined where the likely machine does not run there, or none in which one of its numbers alone is a little other
 * Pitfall: taken as straight, each range for itself: far from the likely machine it is a guess.
 * Source: definition; the model is hermeticPoint.
 */
export function expectedAt(fluid: Refrigerant, prior: Prior, at: RunningConditions): Expected | undefined {
  const likely = logarithms(fluid, prior, new Float64Array(hermeticParameters.length), at);
  if (likely === undefined) return undefined;
  const moves = hermeticParameters.map((_, index) =>
    prior.spread[index] === 0 ? { flow: 0, power: 0 } : moveAt(fluid, prior, at, likely, index),
  );
  return moves.every((move) => move !== undefined) ? { likely, moves } : undefined;
}

/** One σ of a wide range may lead to a machine that does not run; then a part of it tells the slope [σ]. */
const steps = [1, 0.25] as const;

/** What one σ of one range does; from one side alone where the machine runs on one side only, undefined where on none. */
function moveAt(
  fluid: Refrigerant,
  prior: Prior,
  at: RunningConditions,
  likely: Logarithms,
  index: number,
): Logarithms | undefined {
  const deviations = new Float64Array(hermeticParameters.length);
  for (const step of steps) {
    deviations[index] = step;
    const above = logarithms(fluid, prior, deviations, at);
    deviations[index] = -step;
    const below = logarithms(fluid, prior, deviations, at);
    if (above === undefined && below === undefined) continue;
    const [from, to] = [below ?? likely, above ?? likely];
    const width = (below === undefined ? 0 : step) + (above === undefined ? 0 : step);
    return { flow: (to.flow - from.flow) / width, power: (to.power - from.power) / width };
  }
  return undefined;
}

/** Undefined where such a machine does not run. */
function logarithms(
  fluid: Refrigerant,
  prior: Prior,
  deviations: Float64Array,
  at: RunningConditions,
): Logarithms | undefined {
  try {
    const { massFlow, power } = hermeticPoint(machineAt(prior, deviations), fluid, at);
    return { flow: Math.log(massFlow), power: Math.log(power) };
  } catch (error) {
    if (error instanceof KettlefinError) return undefined;
    throw error;
  }
}
