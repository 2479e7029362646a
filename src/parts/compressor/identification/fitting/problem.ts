// What is minimised: the deviations of a machine's numbers from their ranges, and what it misses of the given values, each in its
// own σ; and how the modelled values change with each number (numeric Jacobian).

import type { Refrigerant } from '../../../../matter/refrigerants/index.ts';
import { ConvergenceError, KettlefinError, solveLower } from '../../../../numerics/index.ts';
import { type HermeticCompressor, hermeticParameters } from '../../hermetic/parameters.ts';
import { hermeticPoint } from '../../hermetic/point.ts';
import { dimensions } from '../coordinates.ts';
import type { Datum, PreparedPoint } from '../points.ts';
import { machineAt, type Prior } from '../priors.ts';

export interface Problem {
  readonly fluid: Refrigerant;
  readonly prior: Prior;
  readonly points: readonly PreparedPoint[];
  readonly data: readonly Datum[];
  /** L of Σ = L Lᵀ. */
  readonly lower: Float64Array;
}

/** Step of the numeric Jacobian, on the scales of the numbers. */
const jacobianStep = 1e-4;

/** Values of the model on the scales of the data. @throws what hermeticPoint throws. */
export function modelledData({ fluid, points, data }: Problem, compressor: HermeticCompressor): Float64Array {
  const values = new Float64Array(data.length);
  let number = 0;
  points.forEach((point, index) => {
    if (data[number]?.point !== index) return;
    const at = hermeticPoint(compressor, fluid, point.conditions);
    for (; data[number]?.point === index; number++) {
      const { quantity } = data[number]!;
      if (quantity === 'dischargeTemperature') values[number] = at.dischargeTemperature;
      else if (quantity === 'capacity') values[number] = Math.log(at.massFlow * point.refrigeratingEffect);
      else values[number] = Math.log(at[quantity]);
    }
  });
  return values;
}

/** The model's values, or undefined where such a machine has no answer at one of the points. */
export function triedData(problem: Problem, deviations: Float64Array): Float64Array | undefined {
  try {
    return modelledData(problem, machineAt(problem.prior, deviations));
  } catch (error) {
    if (error instanceof KettlefinError) return undefined;
    throw error;
  }
}

export function jacobianAt(problem: Problem, deviations: Float64Array, modelled: Float64Array): Float64Array {
  const { prior, data } = problem;
  const jacobian = new Float64Array(data.length * dimensions);
  const needsCurrent = data.some(({ quantity }) => quantity === 'current');
  for (let number = 0; number < dimensions; number++) {
    const spread = prior.spread[number]!;
    if (spread === 0 || (number === powerFactorIndex && !needsCurrent)) continue;
    const column = columnOf(problem, deviations, modelled, number, jacobianStep / spread);
    column.forEach((value, row) => {
      jacobian[row * dimensions + number] = value;
    });
  }
  return jacobian;
}

/** Only the current knows of the power factor. */
const powerFactorIndex = hermeticParameters.indexOf('powerFactor');

function columnOf(
  problem: Problem,
  deviations: Float64Array,
  modelled: Float64Array,
  number: number,
  step: number,
): Float64Array {
  for (const signed of [step, -step]) {
    const moved = Float64Array.from(deviations);
    moved[number]! += signed;
    const values = triedData(problem, moved);
    if (values !== undefined) return values.map((value, row) => (value - modelled[row]!) / signed);
  }
  throw new ConvergenceError('identification of the machine', 0, [...deviations], step);
}

/** Half of the sum of squares. */
export function objective(problem: Problem, deviations: Float64Array, modelled: Float64Array): number {
  const whitened = whitenedMisses(problem, modelled);
  let sum = 0;
  for (const value of deviations) sum += value * value;
  for (const value of whitened) sum += value * value;
  return sum / 2;
}

export function whitenedMisses({ data, lower }: Problem, modelled: Float64Array): Float64Array {
  const misses = Float64Array.from(data, ({ observed }, row) => observed - modelled[row]!);
  return solveLower(lower, data.length, misses);
}

/** L⁻¹ J. */
export function whitenedJacobian({ data, lower }: Problem, jacobian: Float64Array): Float64Array {
  const size = data.length;
  const whitened = new Float64Array(jacobian.length);
  for (let number = 0; number < dimensions; number++) {
    const column = Float64Array.from({ length: size }, (_, row) => jacobian[row * dimensions + number]!);
    solveLower(lower, size, column).forEach((value, row) => {
      whitened[row * dimensions + number] = value;
    });
  }
  return whitened;
}
