// The most probable machine with its ranges or given values moved: the linear response, then a few steps with the same matrices
// that take up how curved the model is on the way.
//     Δz = C m + G Δy;  then z ← z + C (m − z) + G (y + Δy − modelled(z))

import { choleskyFactor, inverseCholesky, solveLowerTransposed } from '../../../../numerics/index.ts';
import { dimensions } from '../coordinates.ts';
import type { Fitted } from './fit.ts';
import { informationOf } from './linearised.ts';
import { jacobianAt, type Problem, triedData, whitenedJacobian } from './problem.ts';

/** Matrices of the linear response about the likely machine. */
export interface Response {
  readonly problem: Problem;
  readonly fit: Fitted;
  /** C, covariance of z: dimensions × dimensions, row by row. */
  readonly covariance: Float64Array;
  /** G = C Jᵀ Σ⁻¹, dimensions × data, row by row: how z follows what the values say. */
  readonly gain: Float64Array;
  /** What the likely machine itself would still be moved by [σ]: nothing to speak of, but where it lies in a flat valley. */
  readonly rest: Float64Array;
}

type Matrices = Pick<Response, 'covariance' | 'gain'>;

export function responseOf(problem: Problem, fit: Fitted): Response {
  const matrices = matricesOf(problem, fit.information, whitenedJacobian(problem, fit.jacobian));
  const still: Response = { problem, fit, ...matrices, rest: new Float64Array(dimensions) };
  return { ...still, rest: correction(still, { of: 'number', index: 0, by: 0 }, fit.deviations, fit.modelled) };
}

function matricesOf({ data, lower }: Problem, information: Float64Array, whitened: Float64Array): Matrices {
  const size = data.length;
  const covariance = inverseCholesky(information, dimensions);
  const gain = new Float64Array(dimensions * size);
  for (let row = 0; row < dimensions; row++) {
    const towards = new Float64Array(size);
    for (let datum = 0; datum < size; datum++) {
      for (let k = 0; k < dimensions; k++) {
        towards[datum]! += covariance[row * dimensions + k]! * whitened[datum * dimensions + k]!;
      }
    }
    gain.set(solveLowerTransposed(lower, size, towards), row * size);
  }
  return { covariance, gain };
}

/** m [σ] of one number's likely value, and Δy of one given value on its scale. */
export type Move =
  | { readonly of: 'number'; readonly index: number; readonly by: number }
  | { readonly of: 'value'; readonly index: number; readonly by: number };

/** Steps after the linear one, and the step that needs none after it [σ]. */
const mostSteps = 4;
const smallStep = 0.03;
/** Movements as short as this are taken as straight [σ]. */
const straightMove = 0.15;
/** A movement that leads to a machine without an answer is halved so often; then it stays as short as it is. */
const mostHalvings = 5;

/** Δz. Where the whole movement leads to a machine without an answer at the points, the part of it that has one. */
export function movedBy(response: Response, move: Move): Float64Array {
  let part = move;
  for (let halvings = 0; halvings <= mostHalvings; halvings++) {
    const found = settled(response, part);
    if (found !== undefined) return found;
    part = { ...part, by: part.by / 2 };
  }
  return linear(response, part);
}

function linear({ covariance, gain, problem }: Response, { of, index, by }: Move): Float64Array {
  const size = problem.data.length;
  return Float64Array.from({ length: dimensions }, (_, number) =>
    of === 'number' ? covariance[number * dimensions + index]! * by : gain[number * size + index]! * by,
  );
}

function settled(response: Response, move: Move): Float64Array | undefined {
  const { problem } = response;
  let moved = linear(response, move);
  if (problem.data.length === 0 || Math.max(...moved.map(Math.abs)) < straightMove) return moved;
  let local = response;
  for (let times = 0; times <= mostRelinearised; times++) {
    const stepped = steppedFrom(local, move, moved);
    if (stepped === undefined) return undefined;
    moved = stepped.moved;
    if (stepped.isSettled || times === mostRelinearised) return moved;
    const about = linearisedThere(response, moved);
    if (about === undefined) return moved;
    local = { ...response, ...about };
  }
  return moved;
}

/** Where the matrices of the likely machine do not lead to the end, they are made anew so often where they led to. */
const mostRelinearised = 3;

function linearisedThere({ problem, fit }: Response, moved: Float64Array): Matrices | undefined {
  const deviations = fit.deviations.map((value, number) => value + moved[number]!);
  const modelled = triedData(problem, deviations);
  if (modelled === undefined) return undefined;
  const whitened = whitenedJacobian(problem, jacobianAt(problem, deviations, modelled));
  return matricesOf(problem, choleskyFactor(informationOf(whitened), dimensions), whitened);
}

interface Stepped {
  readonly moved: Float64Array;
  /** The last step was small. */
  readonly isSettled: boolean;
}

/** Undefined where a step leads to a machine without an answer at the points. */
function steppedFrom(response: Response, move: Move, start: Float64Array): Stepped | undefined {
  const { problem, fit } = response;
  let moved = start;
  let before = Number.POSITIVE_INFINITY;
  for (let steps = 0; steps < mostSteps; steps++) {
    const deviations = fit.deviations.map((value, number) => value + moved[number]!);
    const modelled = triedData(problem, deviations);
    if (modelled === undefined) return undefined;
    const step = correction(response, move, deviations, modelled);
    const length = Math.max(...step.map(Math.abs));
    if (length > before) return { moved, isSettled: false };
    before = length;
    moved = moved.map((value, number) => value + step[number]!);
    if (length < smallStep) return { moved, isSettled: true };
  }
  return { moved, isSettled: false };
}

function correction(
  { covariance, gain, problem, rest }: Response,
  { of, index, by }: Move,
  deviations: Float64Array,
  modelled: Float64Array,
): Float64Array {
  const { data } = problem;
  const size = data.length;
  const misses = data.map(
    ({ observed }, row) => observed + (of === 'value' && row === index ? by : 0) - modelled[row]!,
  );
  const towards = Array.from(deviations, (value, number) => (of === 'number' && number === index ? by : 0) - value);
  return Float64Array.from({ length: dimensions }, (_, number) => {
    let step = -rest[number]!;
    for (let k = 0; k < dimensions; k++) step += covariance[number * dimensions + k]! * towards[k]!;
    for (let row = 0; row < size; row++) step += gain[number * size + row]! * misses[row]!;
    return step;
  });
}
