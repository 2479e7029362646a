// The sum of squares about one machine: its slope, and its curvature with one correction for how the model bends.

import { dimensions } from '../coordinates.ts';
import { jacobianAt, type Problem, whitenedJacobian, whitenedMisses } from './problem.ts';

/** 1 + Jᵀ Σ⁻¹ J. */
export function informationOf(whitened: Float64Array): Float64Array {
  const matrix = new Float64Array(dimensions * dimensions);
  for (let row = 0; row < whitened.length; row += dimensions) {
    for (let a = 0; a < dimensions; a++) {
      for (let b = 0; b <= a; b++) matrix[a * dimensions + b]! += whitened[row + a]! * whitened[row + b]!;
    }
  }
  for (let a = 0; a < dimensions; a++) {
    matrix[a * dimensions + a]! += 1;
    for (let b = 0; b < a; b++) matrix[b * dimensions + a] = matrix[a * dimensions + b]!;
  }
  return matrix;
}

/** −∂objective/∂z. */
export function descent(deviations: Float64Array, whitened: Float64Array, misses: Float64Array): Float64Array {
  const towards = deviations.map((value) => -value);
  misses.forEach((miss, row) => {
    for (let number = 0; number < dimensions; number++) {
      towards[number]! += whitened[row * dimensions + number]! * miss;
    }
  });
  return towards;
}

/** A machine [σ from the likely values of its ranges] and what the model gives for it, on the scales of the data. */
export interface ModelledMachine {
  readonly deviations: Float64Array;
  readonly modelled: Float64Array;
}

/** The model about one machine. */
export interface Linearised {
  readonly about: Float64Array;
  readonly jacobian: Float64Array;
  readonly whitened: Float64Array;
  /** −∂objective/∂z there. */
  readonly towards: Float64Array;
  /** Of the objective: 1 + Jᵀ Σ⁻¹ J, corrected along the last way for how the model bends. */
  readonly curvature: Float64Array;
}

export function linearisedAt(
  problem: Problem,
  { deviations, modelled }: ModelledMachine,
  before?: Linearised,
): Linearised {
  const jacobian = jacobianAt(problem, deviations, modelled);
  const whitened = whitenedJacobian(problem, jacobian);
  const towards = descent(deviations, whitened, whitenedMisses(problem, modelled));
  const straight = informationOf(whitened);
  const curvature = before === undefined ? straight : bent(straight, deviations, towards, before);
  return { about: deviations, jacobian, whitened, towards, curvature };
}

/**
 * The matrix with the secant of the gradient along the way since the linearisation before (one update after Broyden, Fletcher,
 * Goldfarb and Shanno): where numbers can be traded for each other along a bent valley, steps without it creep.
 */
function bent(straight: Float64Array, to: Float64Array, towards: Float64Array, before: Linearised): Float64Array {
  const way = to.map((value, number) => value - before.about[number]!);
  const change = towards.map((value, number) => before.towards[number]! - value);
  const carried = new Float64Array(dimensions);
  let [along, secant] = [0, 0];
  for (let a = 0; a < dimensions; a++) {
    for (let b = 0; b < dimensions; b++) carried[a]! += straight[a * dimensions + b]! * way[b]!;
    along += way[a]! * carried[a]!;
    secant += way[a]! * change[a]!;
  }
  if (!(secant > leastSecant * along)) return straight;
  return straight.map((value, index) => {
    const [a, b] = [Math.floor(index / dimensions), index % dimensions];
    return value - (carried[a]! * carried[b]!) / along + (change[a]! * change[b]!) / secant;
  });
}

/** Below this share of the straight curvature the secant tells of no valley floor. */
const leastSecant = 1e-3;
