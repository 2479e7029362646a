// What a meter says of a tank that is known by its sizes: measured against modelled loss with their ranges, and for each
// uncertain input the value that alone would bring the two together.

import { fieldRecord } from '../../design/index.ts';
import { findRoot, KettlefinError } from '../../numerics/index.ts';
import type { MeterAnswer, MeterExplanation } from '../assessment/tank-answer.ts';
import { type Doubt, endMoves, type Move } from '../doubt/doubt.ts';
import type { NamedInput } from '../inputs.ts';
import type { MeterResult } from '../stages/tank/meter.ts';
import { howToSettleMeter } from '../wording/measure.ts';
import { type Bands, bandOf } from './pieces.ts';
import { modelledLossName } from './tank-values.ts';

const ratioName = 'tank.meter.ratio';

/** An input that closes less than this share of the gap at either of its ends is left out. */
const leastTelling = 0.02;

/** No value farther from the likely one than so many times the way to the end of the range is looked for. */
const farthest = 4;

/** So near to 1 the ratio is brought; nobody reads more digits of an input. */
const closeness = 1e-4;

/**
 * @param meter     the likely measurement and model
 * @param inputs    uncertain inputs of the design
 * @param doubt     their moves
 * @param bands     of the results that have one
 * @param ratioAt   measured over modelled loss with one input at another value, all others likely
 */
export function meterAnswer(
  meter: MeterResult,
  inputs: readonly NamedInput[],
  doubt: Doubt,
  bands: Bands,
  ratioAt: (path: string, value: number) => number,
): MeterAnswer {
  const ratio = bandOf(bands, ratioName);
  return {
    roomTemperature: meter.roomTemperature,
    waterTemperature: meter.waterTemperature,
    meanPower: bandOf(bands, 'tank.meter.meanPower'),
    measuredLoss: bandOf(bands, 'tank.meter.measuredLoss'),
    modelledLoss: bandOf(bands, modelledLossName),
    ratio,
    agrees: ratio.low <= 1 && 1 <= ratio.high,
    adopted: meter.isAdopted,
    explanations: explanations(meter.ratio, inputs, doubt, ratioAt),
  };
}

/** Those that could explain the gap within their own range first, the nearest to its likely value at the front. */
export function explanations(
  ratio: number,
  inputs: readonly NamedInput[],
  { moves }: Doubt,
  ratioAt: (path: string, value: number) => number,
): readonly MeterExplanation[] {
  if (Math.abs(ratio - 1) <= closeness) return [];
  const byPath = new Map(inputs.map((input) => [input.path, input]));
  return moves
    .flatMap((move) => {
      const explained = explanation(ratio, byPath.get(move.path)!, move, (value) => ratioAt(move.path, value));
      return explained === null ? [] : [explained];
    })
    .toSorted((left, right) =>
      left.effort === right.effort ? right.closing - left.closing : left.effort - right.effort,
    )
    .map(({ effort: _, closing: _also, ...told }) => told);
}

/**
 * `effort`: how far the value lies from the likely one, by the way to the end of the range; above 1 beyond it.
 * `closing`: which part of the gap the end of the range closes.
 */
type Ranked = MeterExplanation & { readonly effort: number; readonly closing: number };

function explanation(
  ratio: number,
  { path, label, quantity, estimate }: NamedInput,
  move: Move,
  ratioAt: (value: number) => number,
): Ranked | null {
  const { low, likely, high } = estimate;
  const [atLow, atHigh] = endMoves(move, ratioName);
  const gap = 1 - ratio;
  const closing = Math.max(atLow / gap, atHigh / gap);
  if (!(closing > leastTelling)) return null;
  const end = atLow / gap > atHigh / gap ? low : high;
  const value = closingValue(path, ratio, likely, end, closing, ratioAt);
  const effort = value === null ? Number.POSITIVE_INFINITY : Math.abs(value - likely) / Math.abs(end - likely);
  return {
    path,
    label,
    quantity,
    input: { low, likely, high },
    value,
    isWithin: effort <= 1,
    ratioAtLow: ratio + atLow,
    ratioAtHigh: ratio + atHigh,
    measure: howToSettleMeter(path),
    effort,
    closing,
  };
}

/** Value of the input at which the ratio is 1; null where none that its field or the model accepts is near enough. */
function closingValue(
  path: string,
  ratio: number,
  likely: number,
  end: number,
  closing: number,
  ratioAt: (value: number) => number,
): number | null {
  const way = end - likely;
  // Beyond the end the search goes as far as a straight line asks for, and half as far again.
  const reach = closing >= 1 ? 1 : Math.min(farthest, 1.5 / closing);
  const limit = accepted(path, likely + reach * way);
  if (closing < 1 && (limit - end) * way <= 0) return null;
  try {
    const atLimit = closing >= 1 ? ratio + closing * (1 - ratio) : ratioAt(limit);
    if ((atLimit - 1) * (ratio - 1) > 0) return null;
    const beyond = (value: number) => ratioAt(value) - 1;
    const known = { valueAtLow: ratio - 1, valueAtHigh: atLimit - 1, residualTolerance: closeness };
    return findRoot(beyond, likely, closing >= 1 ? end : limit, { ...known, what: path }).root;
  } catch (error) {
    if (error instanceof KettlefinError) return null;
    throw error;
  }
}

/** The nearest value that the field accepts; factors of the models stay above 0. */
function accepted(path: string, value: number): number {
  const record = fieldRecord(path);
  if (record === undefined) return Math.max(value, 0.05);
  return Math.min(Math.max(value, record.minimum ?? value), record.maximum ?? value);
}
