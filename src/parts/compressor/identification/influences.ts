// How far each input alone moves the identified machine: the ends of its numbers' ranges, of the values given for points that
// stand alone, of the factors of series; and, gathered in a few directions, what the scatter of series and the model's own
// deviation leave open. In a linear problem these movements, added as squares, are exactly the covariance of the most probable
// machine: C = (1 + Jᵀ Σ⁻¹ J)⁻¹ = C Cᵀ + G Σ Gᵀ with G = C Jᵀ Σ⁻¹.

import { leadingDirections } from '../../../numerics/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import { hermeticParameters } from '../hermetic/parameters.ts';
import { dimensions, onScale, parameterScales, type Scale } from './coordinates.ts';
import { covarianceOf, type Places } from './deviation/covariance.ts';
import type { MachineDescription } from './evidence.ts';
import type { Fitted } from './fitting/fit.ts';
import { type Move, movedBy, type Response, responseOf } from './fitting/moved.ts';
import type { Problem } from './fitting/problem.ts';
import type { Influence } from './identified.ts';
import { quantityScale, seriesFactorOf } from './points.ts';
import { endsAt } from './priors.ts';
import { evidenceQuantityNames, parameterQuantities } from './quantity-names.ts';

/** Open directions stop where this share of their variance is left; the last carries it. */
const openRemainder = 0.02;

/** More single values than this are gathered in the open directions like those of a series: nobody looks at so many one by one. */
const mostNamedValues = 12;

function areNamed({ data }: Problem): boolean {
  return data.filter(({ series, spread }) => series === undefined && spread > 0).length <= mostNamedValues;
}

/** Influences, in the order: ranges, values of single points, series, open directions. */
export function influencesOf(
  description: MachineDescription,
  problem: Problem,
  places: Places,
  fit: Fitted,
): readonly Influence[] {
  const response = responseOf(problem, fit);
  return [
    ...rangeInfluences(description, response),
    ...(areNamed(problem) ? valueInfluences(description, response) : []),
    ...seriesInfluences(description, response),
    ...openInfluences(description, response, places),
  ];
}

/** z to the scales of the numbers. */
function onScales({ problem }: Response, deviations: ArrayLike<number>): readonly number[] {
  return problem.prior.spread.map((spread, number) => spread * deviations[number]!);
}

/** Nothing moves where the end is the likely value itself. */
function moved(response: Response, move: Move): readonly number[] {
  return onScales(response, move.by === 0 ? new Float64Array(dimensions) : movedBy(response, move));
}

function rangeInfluences({ prior: ranges }: MachineDescription, response: Response): readonly Influence[] {
  const { spread, low, high } = response.problem.prior;
  return hermeticParameters.flatMap((name, index) => {
    if (spread[index] === 0) return [];
    const { path, label, estimate } = ranges[name];
    return [
      {
        path,
        label,
        estimate,
        quantity: parameterQuantities[name],
        scale: parameterScales[name],
        atLow: moved(response, { of: 'number', index, by: low[index]! }),
        atHigh: moved(response, { of: 'number', index, by: high[index]! }),
      },
    ];
  });
}

/** From the likely value to either end, on the scale. */
function ends({ low, likely, high }: Estimate, scale: Scale, path: string): { low: number; high: number } {
  const centre = onScale(scale, likely, path);
  return { low: onScale(scale, low, path) - centre, high: onScale(scale, high, path) - centre };
}

function valueInfluences({ points }: MachineDescription, response: Response): readonly Influence[] {
  return response.problem.data.flatMap((datum, index) => {
    if (datum.series !== undefined || datum.spread === 0) return [];
    const { path, label, quantity } = datum;
    const estimate = points[datum.point]!.given[quantity]!;
    const scale = quantityScale(quantity);
    const to = ends(estimate, scale, path);
    return [
      {
        path,
        label,
        estimate,
        quantity: evidenceQuantityNames[quantity],
        scale,
        atLow: moved(response, { of: 'value', index, by: to.low }),
        atHigh: moved(response, { of: 'value', index, by: to.high }),
      },
    ];
  });
}

function seriesInfluences({ series }: MachineDescription, response: Response): readonly Influence[] {
  const { problem, gain } = response;
  const { data } = problem;
  const scale: Scale = { kind: 'logarithm' };
  return series.flatMap((each, index) =>
    (['flowFactor', 'powerFactor'] as const).flatMap((factor) => {
      const isMoved = data.map((datum) => datum.series === index && seriesFactorOf(datum.quantity) === factor);
      const estimate = each[factor];
      if (estimate.low === estimate.high || !isMoved.includes(true)) return [];
      const path = `${each.path}.${factor}`;
      const to = ends(estimate, scale, path);
      const direction = Float64Array.from({ length: dimensions }, (_, number) =>
        isMoved.reduce((sum, is, datum) => (is ? sum + gain[number * data.length + datum]! : sum), 0),
      );
      return [
        {
          path,
          label: each.label,
          estimate,
          quantity: 'ratio',
          scale,
          atLow: onScales(response, scaled(direction, to.low)),
          atHigh: onScales(response, scaled(direction, to.high)),
        },
      ];
    }),
  );
}

/** −1 to 1 along each direction. */
const openEstimate: Estimate = { low: -1, likely: 0, high: 1, origin: 'inferred' };

function openInfluences({ series }: MachineDescription, response: Response, places: Places): readonly Influence[] {
  const { problem, gain } = response;
  const { data } = problem;
  const scatter = covarianceOf(data, series, places, {
    model: true,
    ownInSeries: true,
    ownAlone: !areNamed(problem),
    seriesFactors: false,
  });
  const directions = leadingDirections(sandwich(gain, scatter, data.length), dimensions, openRemainder);
  return directions.map((direction, index) => ({
    path: `machine.compressor.points.open.${index}`,
    label: `What the scatter of the points leaves open, direction ${index + 1} of ${directions.length}`,
    estimate: openEstimate,
    quantity: 'ratio',
    scale: { kind: 'linear' },
    atLow: onScales(response, scaled(direction, -endsAt)),
    atHigh: onScales(response, scaled(direction, endsAt)),
  }));
}

function scaled(direction: Float64Array, by: number): Float64Array {
  return direction.map((value) => value * by);
}

/** G S Gᵀ, dimensions × dimensions. */
function sandwich(gain: Float64Array, scatter: Float64Array, size: number): Float64Array {
  const right = new Float64Array(size * dimensions);
  for (let datum = 0; datum < size; datum++) {
    for (let number = 0; number < dimensions; number++) {
      let sum = 0;
      for (let k = 0; k < size; k++) sum += scatter[datum * size + k]! * gain[number * size + k]!;
      right[datum * dimensions + number] = sum;
    }
  }
  const product = new Float64Array(dimensions * dimensions);
  for (let a = 0; a < dimensions; a++) {
    for (let b = 0; b < dimensions; b++) {
      let sum = 0;
      for (let datum = 0; datum < size; datum++) sum += gain[a * size + datum]! * right[datum * dimensions + b]!;
      product[a * dimensions + b] = sum;
    }
  }
  return product;
}
