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

/** @returns what is expected at one running point; undefined where the likely machine does not run */
export function expectedAt(fluid: Refrigerant, prior: Prior, at: RunningConditions): Expected | undefined {
  const deviations = new Float64Array(hermeticParameters.length);
  const likely = logarithms(fluid, prior, deviations, at);
  if (likely === undefined) return undefined;
  const moves = hermeticParameters.map((_, index) => {
    if (prior.spread[index] === 0) return { flow: 0, power: 0 };
    deviations[index] = 1;
    const moved = logarithms(fluid, prior, deviations, at) ?? likely;
    deviations[index] = 0;
    return { flow: moved.flow - likely.flow, power: moved.power - likely.power };
  });
  return { likely, moves };
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
