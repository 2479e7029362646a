// A machine from whatever is known of it: ranges of its numbers, printed and measured points. The most probable machine, how far
// each input moves it, how well it meets each given value, and what that tells of the model elsewhere.

import { choleskyFactor, KettlefinError } from '../../../numerics/index.ts';
import { littleFlowVolumetricEfficiency } from '../hermetic/point.ts';
import { covarianceOf, type Places, withoutSeriesFactors } from './deviation/covariance.ts';
import { type DeviationKind, deviationAmounts, deviationKind, middleOf } from './deviation/discrepancy.ts';
import { krigedMisses } from './deviation/misses.ts';
import { disagreesAt, scoresOf } from './disagreement.ts';
import type { MachineDescription } from './evidence.ts';
import { type Fitted, fitted } from './fitting/fit.ts';
import type { Problem } from './fitting/problem.ts';
import type { IdentifiedMachine, KnownPoint, Residual, SetAsidePoint } from './identified.ts';
import { influencesOf } from './influences.ts';
import { type Datum, dataOf, type PreparedPoint, preparedPoint } from './points.ts';
import { requirePossiblePoints } from './possible.ts';
import { type Prior, priorOf } from './priors.ts';
import { littleFilledPoints } from './set-aside.ts';

/**
 * The machine behind a description.
 * @param description  fluid of the points, supply of the motor, ranges of all numbers, points, series
 * @returns            likely machine, influences, residuals, what is known of the model near and far
 * @throws InputError at an impossible range, temperature or value; OutOfModelError 'outsideFluid';
 *         NoSolutionError 'moreThanSwept' and 'belowIsentropic' with the limit, or the reason why no machine near the ranges
 *         runs at a point; ConvergenceError
 * Validity: as the model's (hermeticPoint); ranges about one machine in ten lies beyond.
 * Pitfall: values that disagree are not left out; `residuals` names them. Left out are points that fill little of the stroke, where
 *          no one machine meets them and the others; `setAside` names them.
 * Source: as fit.ts, influences.ts, disagreement.ts and discrepancy.ts.
 */
export function identifyMachine(description: MachineDescription): IdentifiedMachine {
  const prior = priorOf(description);
  const points = description.points.map((point) => preparedPoint(description.fluid, point));
  requirePossiblePoints(description, prior, points);
  const whole = attempted(description, prior, points);
  if (!(whole instanceof KettlefinError) && whole.missed < poorlyMet) return whole.machine;
  const little = littleFilledPoints(prior, points);
  for (const limit of setAsideBelow) {
    const setAside = little.filter(({ volumetricEfficiency }) => volumetricEfficiency < limit);
    const rest = withoutPoints(description, setAside);
    if (setAside.length === 0 || rest.points.length === 0) continue;
    const kept = points.filter(({ evidence }) => rest.points.includes(evidence));
    const others = attempted(rest, prior, kept);
    if (!(others instanceof KettlefinError) && others.missed < poorlyMet) return { ...others.machine, setAside };
  }
  if (whole instanceof KettlefinError) throw whole;
  return whole.machine;
}

/** Mean of the squares per value from which on the points are not those of one machine: each some 2 σ off. */
const poorlyMet = 4;

/** Volumetric efficiencies below which points are set aside, tried in turn: as few as will do [-]. */
const setAsideBelow = [0.2, 0.25, 0.3, littleFlowVolumetricEfficiency];

interface Attempt {
  readonly machine: IdentifiedMachine;
  /** Sum of squares of the likely machine per given value [-]; 0 without any. */
  readonly missed: number;
}

/** The machine behind the points, or why there is none. */
function attempted(
  description: MachineDescription,
  prior: Prior,
  points: readonly PreparedPoint[],
): Attempt | KettlefinError {
  try {
    return identifiedFrom(description, prior, points);
  } catch (error) {
    if (error instanceof KettlefinError) return error;
    throw error;
  }
}

function withoutPoints(description: MachineDescription, without: readonly SetAsidePoint[]): MachineDescription {
  const points = description.points.filter(({ path }) => !without.some((each) => each.path === path));
  const series = description.series.filter(({ path }) => points.some((point) => point.series === path));
  return { ...description, points, series };
}

function identifiedFrom(description: MachineDescription, prior: Prior, points: readonly PreparedPoint[]): Attempt {
  const { fluid, series } = description;
  const data = dataOf(description);
  const places = placesOf(description);
  const weighed = covarianceOf(data, series, places, withoutSeriesFactors);
  const problem: Problem = { fluid, prior, points, data, lower: choleskyFactor(weighed, data.length) };
  const fit = fitted(problem);
  const scores = scoresOf(data, covarianceOf(data, series, places), fit);
  const machine: IdentifiedMachine = {
    compressor: fit.compressor,
    prior,
    deviations: fit.deviations,
    madeFor: fluid.name,
    influences: influencesOf(description, problem, places, fit),
    residuals: data.map((datum, row) => residualOf(datum, fit.modelled[row]!, scores[row]!)),
    known: knownPoints(description, data, fit),
    setAside: [],
    scatter: { flow: scatterOf('flow', data, fit), power: scatterOf('power', data, fit) },
    kriged: {
      flow: krigedMisses('flow', data, series, places, fit),
      power: krigedMisses('power', data, series, places, fit),
    },
    frequencies: frequenciesOf(description),
  };
  return { machine, missed: data.length === 0 ? 0 : fit.squares / data.length };
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
