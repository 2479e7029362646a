// A machine from whatever is known of it: ranges of its numbers, printed and measured points. The most probable machine, how far
// each input moves it, how well it meets each given value, and what that tells of the model elsewhere.

import { choleskyFactor } from '../../../numerics/index.ts';
import { covarianceOf, type Places, withoutSeriesFactors } from './deviation/covariance.ts';
import { type DeviationKind, deviationAmounts, deviationKind, middleOf } from './deviation/discrepancy.ts';
import { krigedMisses } from './deviation/misses.ts';
import { disagreesAt, scoresOf } from './disagreement.ts';
import type { MachineDescription } from './evidence.ts';
import { type Fitted, fitted } from './fitting/fit.ts';
import type { Problem } from './fitting/problem.ts';
import type { IdentifiedMachine, KnownPoint, Residual } from './identified.ts';
import { influencesOf } from './influences.ts';
import { type Datum, dataOf, preparedPoint } from './points.ts';
import { requirePossiblePoints } from './possible.ts';
import { priorOf } from './priors.ts';

/**
 * The machine behind a description.
 * @param description  fluid of the points, supply of the motor, ranges of all numbers, points, series
 * @returns            likely machine, influences, residuals, what is known of the model near and far
 * @throws InputError at an impossible range, temperature or value; OutOfModelError 'outsideFluid';
 *         NoSolutionError 'moreThanSwept' and 'belowIsentropic' with the limit, or the reason why no machine near the ranges
 *         runs at a point; ConvergenceError
 * Validity: as the model's (hermeticPoint); ranges about one machine in ten lies beyond.
 * Pitfall: values that disagree are not left out; `residuals` names them.
 * Source: as fit.ts, influences.ts, disagreement.ts and discrepancy.ts.
 */
export function identifyMachine(description: MachineDescription): IdentifiedMachine {
  const { fluid, series } = description;
  const prior = priorOf(description);
  const points = description.points.map((point) => preparedPoint(fluid, point));
  const data = dataOf(description);
  requirePossiblePoints(description, prior, points);
  const places = placesOf(description);
  const weighed = covarianceOf(data, series, places, withoutSeriesFactors);
  const problem: Problem = { fluid, prior, points, data, lower: choleskyFactor(weighed, data.length) };
  const fit = fitted(problem);
  const scores = scoresOf(data, covarianceOf(data, series, places), fit);
  return {
    compressor: fit.compressor,
    prior,
    deviations: fit.deviations,
    madeFor: fluid.name,
    influences: influencesOf(description, problem, places, fit),
    residuals: data.map((datum, row) => residualOf(datum, fit.modelled[row]!, scores[row]!)),
    known: knownPoints(description, data, fit),
    scatter: { flow: scatterOf('flow', data, fit), power: scatterOf('power', data, fit) },
    kriged: {
      flow: krigedMisses('flow', data, series, places, fit),
      power: krigedMisses('power', data, series, places, fit),
    },
    frequencies: frequenciesOf(description),
  };
}

function placesOf({ points }: MachineDescription): Places {
  const of = points.map(({ evaporating, condensing }) => ({ evaporating, condensing }));
  // Without points nothing asks for the middle.
  return { of, middle: middleOf(of) ?? { evaporating: 0, condensing: 0 } };
}

function frequenciesOf({ points, ratedSupply }: MachineDescription): readonly number[] {
  if (points.length === 0) return [ratedSupply.frequency];
  return [...new Set(points.map(({ supply }) => supply.frequency))];
}

/** Given values as printed beside the modelled ones. */
function residualOf({ path, label, quantity, given }: Datum, modelled: number, score: number): Residual {
  const isTemperature = quantity === 'dischargeTemperature';
  const value = isTemperature ? modelled : Math.exp(modelled);
  return {
    path,
    label,
    quantity,
    given,
    modelled: value,
    deviation: isTemperature ? value - given : value / given - 1,
    score,
    disagrees: Math.abs(score) >= disagreesAt,
  };
}

function knownPoints({ points }: MachineDescription, data: readonly Datum[], fit: Fitted): readonly KnownPoint[] {
  const missOf = (point: number, kind: DeviationKind) => {
    const row = data.findIndex((datum) => datum.point === point && deviationKind(datum.quantity) === kind);
    return row === -1 ? null : data[row]!.observed - fit.modelled[row]!;
  };
  return points.map(({ evaporating, condensing }, index) => ({
    evaporating,
    condensing,
    flow: missOf(index, 'flow'),
    power: missOf(index, 'power'),
  }));
}

/** Root mean square of what the likely machine misses; without any value what is stated of the model. */
function scatterOf(kind: DeviationKind, data: readonly Datum[], fit: Fitted): number {
  const squares = data.flatMap(({ quantity, observed }, row) =>
    deviationKind(quantity) === kind ? [(observed - fit.modelled[row]!) ** 2] : [],
  );
  if (squares.length === 0) return Math.hypot(deviationAmounts[kind].smooth, deviationAmounts[kind].rough);
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}
