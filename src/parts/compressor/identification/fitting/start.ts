// Where the search for the most probable machine starts: at the likely values of its ranges, or, where such a machine has no
// answer at one of the points (its motor stalls, its clearance leaves no flow), at one that runs more easily.

import { KettlefinError, NoSolutionError, OutOfModelError } from '../../../../numerics/index.ts';
import { type HermeticParameter, hermeticParameters } from '../../hermetic/parameters.ts';
import { hermeticPoint } from '../../hermetic/point.ts';
import { dimensions } from '../coordinates.ts';
import { machineAt } from '../priors.ts';
import type { Problem } from './problem.ts';

/** Which way each number makes a machine run more easily. */
const easier: Readonly<Partial<Record<HermeticParameter, 1 | -1>>> = {
  clearanceRatio: -1,
  suctionVelocity: -1,
  dischargeVelocity: -1,
  suctionHeatingUnits: -1,
  leakageRatio: -1,
  proportionalLoss: -1,
  frictionPressure: -1,
  motorPressure: 1,
  slip: -1,
};

/** Tried in turn [σ]. */
const easings = [0, 1, 2, 3] as const;

/** Deviations from the likely values [σ]. @throws the error of the first point that none of them answers, with its path */
export function startOf(problem: Problem): Float64Array {
  let failure: KettlefinError | undefined;
  for (const easing of easings) {
    const deviations = Float64Array.from(
      { length: dimensions },
      (_, index) => easing * (easier[hermeticParameters[index]!] ?? 0),
    );
    const error = failureAt(problem, deviations);
    if (error === undefined) return deviations;
    failure = error;
  }
  throw failure;
}

function failureAt({ fluid, prior, points, data }: Problem, deviations: Float64Array): KettlefinError | undefined {
  const compressor = machineAt(prior, deviations);
  for (const [index, { evidence, conditions }] of points.entries()) {
    if (!data.some(({ point }) => point === index)) continue;
    try {
      hermeticPoint(compressor, fluid, conditions);
    } catch (error) {
      if (!(error instanceof KettlefinError)) throw error;
      return atPath(evidence.path, error);
    }
  }
  return undefined;
}

function atPath(path: string, error: KettlefinError): KettlefinError {
  if (error instanceof NoSolutionError) {
    return new NoSolutionError(`${path}: ${error.message}`, error.limit, error.code);
  }
  if (error instanceof OutOfModelError) {
    const { quantity, value, unit, low, high, code } = error;
    return new OutOfModelError(`${path}.${quantity}`, value, unit, low, high, code);
  }
  return error;
}
