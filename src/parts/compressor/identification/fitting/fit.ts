// The most probable machine: the least sum of squares of its numbers' deviations from their ranges and of what it misses of the
// given values, each in its own σ. Steps after Levenberg and Marquardt with a numeric Jacobian; where a trial step leads to a
// machine without an answer, the step is shortened.
//     minimise |z|² + rᵀ Σ⁻¹ r,  z the numbers in σ from their likely values, r = observed − modelled
// Source: D. W. Marquardt 1963, J. SIAM 11, 431; A. Tarantola 2005, Inverse Problem Theory, section 3.2 (from memory of both).

import {
  ConvergenceError,
  choleskyFactor,
  type KettlefinError,
  NoSolutionError,
  solveCholesky,
  solveLower,
} from '../../../../numerics/index.ts';
import type { HermeticCompressor } from '../../hermetic/parameters.ts';
import { dimensions } from '../coordinates.ts';
import { machineAt } from '../priors.ts';
import { descent, informationOf, type Linearised, linearisedAt, type ModelledMachine } from './linearised.ts';
import { modelledData, objective, type Problem, triedData, whitenedMisses } from './problem.ts';
import { startOf } from './start.ts';

export interface Fitted {
  /** z, in σ from the likely values of the ranges. */
  readonly deviations: Float64Array;
  readonly compressor: HermeticCompressor;
  /** On the scales of the data. */
  readonly modelled: Float64Array;
  /** ∂modelled/∂z, data × dimensions, row by row. */
  readonly jacobian: Float64Array;
  /** L of the matrix 1 + Jᵀ Σ⁻¹ J, whose inverse is the covariance of z. */
  readonly information: Float64Array;
  /** |z|² + rᵀ Σ⁻¹ r. */
  readonly squares: number;
  readonly iterations: number;
}

const mostIterations = 60;
/** Converged where no number moves by more of its σ. */
const smallestMove = 1e-4;
/** Sums of squares that differ by less than this share are alike: flows settle to about 1e-11. */
const rounding = 1e-9;
/** Steps this short lead nowhere. */
const mostDamping = 1e10;
/** Where the search stands. */
interface Standing extends ModelledMachine {
  /** Half of the sum of squares. */
  readonly value: number;
  readonly damping: number;
}

interface Step {
  readonly to: Standing;
  /** Largest change of a number [σ]. */
  readonly move: number;
}

/**
 * The most probable machine.
 * @throws the error of the first point that no machine near the ranges answers; NoSolutionError 'contradictoryValues';
 *         ConvergenceError
 */
export function fitted(problem: Problem): Fitted {
  const deviations = startOf(problem);
  const modelled = modelledData(problem, machineAt(problem.prior, deviations));
  let standing: Standing = { deviations, modelled, value: objective(problem, deviations, modelled), damping: 1e-3 };
  let linearised = linearisedAt(problem, standing);
  let before = Number.POSITIVE_INFINITY;
  for (let iterations = 1; iterations <= mostIterations; iterations++) {
    const isFresh = linearised.about === standing.deviations;
    const step = stepFrom(problem, standing, linearised, isFresh ? mostDamping : standing.damping);
    // A Jacobian costs as much as many steps: it serves on while they shrink fast.
    if (!isFresh && !(step !== undefined && step.move < slowly * before)) {
      linearised = linearisedAt(problem, standing, linearised);
      before = Number.POSITIVE_INFINITY;
      continue;
    }
    if (step === undefined) throw notConverged(problem, iterations, standing);
    const fall = standing.value - step.to.value;
    standing = step.to;
    before = step.move;
    const isFlat =
      isFresh && iterations > patience && fall < flatFall * Math.max(1, standing.value / problem.data.length);
    if (step.move >= smallestMove && !isFlat) continue;
    if (isFlat || distance(linearised.about, standing.deviations) < nearEnough) {
      return settledAt(problem, standing, linearised, iterations);
    }
    linearised = linearisedAt(problem, standing, linearised);
    before = Number.POSITIVE_INFINITY;
  }
  throw notConverged(problem, mostIterations, standing);
}

/** After so many steps, one that makes the machine so little more probable (of ln; more where the values disagree anyway) is the
 *  last: its numbers can be traded for each other along a flat valley, and any of them will do. */
const patience = 20;
const flatFall = 2e-3;
/** Beyond this the model is not taken as straight [σ]. */
const longestMove = 2;
/** Steps shrink fast that are less than this share of the one before. */
const slowly = 0.2;
/** A Jacobian made this near to the machine is its own [σ]. */
const nearEnough = 0.02;

/** The next step that makes the sum of squares no larger, no more damped than told; undefined where there is none. */
function stepFrom(problem: Problem, from: Standing, linearised: Linearised, mostDamped: number): Step | undefined {
  const { whitened, curvature } = linearised;
  const towards = descent(from.deviations, whitened, whitenedMisses(problem, from.modelled));
  for (let { damping } = from; damping <= mostDamped; damping = Math.max(damping, 1e-4) * 10) {
    const lower = choleskyFactor(damped(curvature, damping), dimensions);
    const straight = solveCholesky(lower, dimensions, towards);
    const move = Math.max(...straight.map(Math.abs));
    if (move > longestMove) continue;
    const step = move < shortWay ? straight : followed(problem, from, linearised, lower, straight);
    if (step === undefined) continue;
    const deviations = from.deviations.map((each, number) => each + step[number]!);
    const modelled = triedData(problem, deviations);
    if (modelled === undefined) continue;
    const value = objective(problem, deviations, modelled);
    const isBetter = value <= from.value + rounding * (1 + value);
    // As damped as this a step is short however far the end is.
    const isFree = damping < 1;
    if (isBetter) {
      return { to: { deviations, modelled, value, damping: damping / 10 }, move: isFree ? move : Math.max(move, 1) };
    }
    if (isFree && move < smallestMove) return { to: { ...from, damping }, move };
  }
  return undefined;
}

/**
 * A step that bends with the model: half of its second derivative along the way is taken up (geodesic acceleration), so that a
 * bent valley is followed and not left. Undefined where the bend is no small part of the way.
 * Source: M. K. Transtrum, J. P. Sethna 2012, arXiv:1201.5885 (from memory of the source).
 */
function followed(
  problem: Problem,
  from: Standing,
  { jacobian, whitened }: Linearised,
  lower: Float64Array,
  straight: Float64Array,
): Float64Array | undefined {
  const ahead = triedData(
    problem,
    from.deviations.map((value, number) => value + probe * straight[number]!),
  );
  if (ahead === undefined) return undefined;
  const size = problem.data.length;
  const second = new Float64Array(size);
  for (let row = 0; row < size; row++) {
    let slope = 0;
    for (let number = 0; number < dimensions; number++)
      slope += jacobian[row * dimensions + number]! * straight[number]!;
    second[row] = (2 / probe) * ((ahead[row]! - from.modelled[row]!) / probe - slope);
  }
  const pulled = solveLower(problem.lower, size, second);
  const towards = new Float64Array(dimensions);
  pulled.forEach((value, row) => {
    for (let number = 0; number < dimensions; number++)
      towards[number]! -= whitened[row * dimensions + number]! * value;
  });
  const bend = solveCholesky(lower, dimensions, towards);
  const share = Math.hypot(...bend) / Math.hypot(...straight);
  return share > largestBend ? undefined : straight.map((value, number) => value + bend[number]! / 2);
}

/** Share of the way at which the second derivative is looked for. */
const probe = 0.1;
/** The bend is taken up while it is less than this share of the way; for shorter ways not looked for [σ]. */
const largestBend = 0.75;
const shortWay = 0.01;

/** All numbers are held alike, in σ of their ranges. */
function damped(curvature: Float64Array, damping: number): Float64Array {
  const matrix = Float64Array.from(curvature);
  for (let a = 0; a < dimensions; a++) matrix[a * dimensions + a]! += damping;
  return matrix;
}

function distance(a: Float64Array, b: Float64Array): number {
  return a.reduce((most, value, number) => Math.max(most, Math.abs(value - b[number]!)), 0);
}

function settledAt(problem: Problem, standing: Standing, linearised: Linearised, iterations: number): Fitted {
  const { deviations, modelled } = standing;
  return {
    deviations,
    compressor: machineAt(problem.prior, deviations),
    modelled,
    squares: 2 * standing.value,
    jacobian: linearised.jacobian,
    information: choleskyFactor(informationOf(linearised.whitened), dimensions),
    iterations,
  };
}

/** Values that no machine comes near to leave the search nowhere to go: the farthest is named. */
function notConverged(problem: Problem, iterations: number, standing: Standing): KettlefinError {
  const { deviations, value } = standing;
  const { data } = problem;
  if (value < hopeless * data.length) {
    return new ConvergenceError('identification of the machine', iterations, [...deviations], value);
  }
  const misses = whitenedMisses(problem, standing.modelled);
  const farthest = misses.reduce((worst, miss, row) => (Math.abs(miss) > Math.abs(misses[worst]!) ? row : worst), 0);
  return new NoSolutionError(
    `No machine near the described one comes near to the given values; the farthest off is ${data[farthest]!.path}.`,
    'values of one machine: check their units, the temperatures they hold at, and what is typed of the machine',
    'contradictoryValues',
  );
}

/** Half of the sum of squares per value, from which on the values contradict each other: each some 5 σ off. */
const hopeless = 12;
