// Doubt: how far each uncertain input alone moves each result, combined by the root-sum-square rule.
// Source: JCGM 100:2008 (GUM) 5.1.2, with each contribution found by moving the input to its own ends instead of by a
// derivative (5.1.3, note 2); upward and downward moves are kept apart so that lopsided ranges stay lopsided.
// The inputs are taken as independent: a default that follows another input comes with its own spread only and is moved along
// by `evaluate` when the other one moves (inputs.ts). Leaves out: any other correlation (two typed ranges may hang together
// all the same), interaction of two inputs, and curvature beyond what the two ends show. docs/theory/assess.md says more.

import { KettlefinError } from '../../numerics/index.ts';
import type { Band, Estimate } from '../../quantities/index.ts';

/** An input of the design whose ends differ. */
export interface DoubtfulInput {
  readonly path: string;
  readonly label: string;
  readonly estimate: Estimate;
}

/** Results of the engine by name, at one set of plain inputs. */
export type ResultValues = Readonly<Record<string, number>>;

/** What one input alone does to every result. */
export interface Move {
  readonly path: string;
  readonly label: string;
  /** Result minus the likely result, with the input at its low end. Undefined where the engine found no answer there. */
  readonly atLow: ResultValues | undefined;
  readonly atHigh: ResultValues | undefined;
}

/** An end of a range at which the engine has no answer: said, never dropped. */
export interface UnansweredEnd {
  readonly path: string;
  readonly label: string;
  readonly end: 'low' | 'high';
  readonly value: number;
  readonly message: string;
}

export interface Doubt {
  readonly bands: Readonly<Record<string, Band>>;
  readonly moves: readonly Move[];
  readonly unanswered: readonly UnansweredEnd[];
}

/**
 * Bands of every result from one-at-a-time variation.
 *     high = y + sqrt(Σ up_i²),  low = y − sqrt(Σ down_i²)
 * @param likely    results y with every input at its likely value
 * @param inputs    the inputs to vary
 * @param evaluate  results with one input at another value; may throw a KettlefinError, which is reported
 * @param neverNegative  names of results that are never below zero by nature: the lower end of these as nonNegativeBand has it
 * For a model linear in its inputs with symmetric ranges the band is exact under JCGM 100.
 * Source: JCGM 100:2008, 5.1.2, equation (10).
 */
export function doubt(
  likely: ResultValues,
  inputs: readonly DoubtfulInput[],
  evaluate: (path: string, value: number) => ResultValues,
  neverNegative: ReadonlySet<string> = new Set(),
): Doubt {
  const unanswered: UnansweredEnd[] = [];
  const moves = inputs.map(({ path, label, estimate }): Move => {
    const moveTo = (end: 'low' | 'high'): ResultValues | undefined => {
      if (estimate[end] === estimate.likely) return zeros(likely);
      try {
        return difference(evaluate(path, estimate[end]), likely);
      } catch (error) {
        if (!(error instanceof KettlefinError)) throw error;
        unanswered.push({ path, label, end, value: estimate[end], message: error.message });
        return undefined;
      }
    };
    return { path, label, atLow: moveTo('low'), atHigh: moveTo('high') };
  });
  const bands: Record<string, Band> = {};
  for (const name of Object.keys(likely)) {
    const band = neverNegative.has(name) ? nonNegativeBand : bandOfSum;
    bands[name] = band(
      likely[name]!,
      moves.map((move) => endMoves(move, name)),
    );
  }
  return { bands, moves, unanswered };
}

/** Share of the variance of `result` that each move explains; sums to 1 unless nothing moves it. */
export function varianceShares(moves: readonly Move[], result: string): ReadonlyMap<string, number> {
  const squares = moves.map((move) => [move.path, largestMove(move, result) ** 2] as const);
  const total = squares.reduce((sum, [, square]) => sum + square, 0);
  return new Map(squares.map(([path, square]) => [path, total === 0 ? 0 : square / total]));
}

/** What one input does to one number: number minus likely number, with the input at its low and at its high end. */
export type EndMoves = readonly [atLow: number, atHigh: number];

/**
 * Moves of one number by several inputs, combined.
 *     up = sqrt(Σ up_i²),  down = sqrt(Σ down_i²)
 * Source: JCGM 100:2008, 5.1.2, equation (10), upward and downward moves apart.
 */
export function combinedReach(moves: readonly EndMoves[]): { readonly up: number; readonly down: number } {
  let up = 0;
  let down = 0;
  for (const [atLow, atHigh] of moves) {
    up += Math.max(0, atLow, atHigh) ** 2;
    down += Math.min(0, atLow, atHigh) ** 2;
  }
  return { up: Math.sqrt(up), down: Math.sqrt(down) };
}

/** Share of the lower end on a scale of logarithms that the lower end of a sum never falls below; own judgement. */
const leastOfLogarithms = 0.5;

/**
 * The band of a number that is never below zero by nature. Wide ranges would take the lower end of the sum there though none of
 * them alone does: it stays above half of what the moves give on a scale of logarithms, and is 0 where one of them alone leads there.
 *     low = max(y − √(Σ down_i²), ½ · y · exp(−√(Σ ln²(y / (y − down_i)))))
 * Without a jump, and wider moves never raise it. One move alone ends where it leads.
 * Source: JCGM 100:2008, 5.1.2, equation (10), of the number and of its logarithm; their combination is own judgement.
 * Worked value: 100, two moves of −70 → max(1.0, ½ · 18.2) = 9.1.
 */
export function nonNegativeBand(likely: number, moves: readonly EndMoves[]): Band {
  const { up, down } = combinedReach(moves);
  const high = likely + up;
  const lowest = moves.map(([atLow, atHigh]) => likely + Math.min(0, atLow, atHigh));
  const least = likely - down;
  // A move below zero is told as it is: the number is not of this kind, or the models have left their range.
  if (likely === 0 || lowest.some((value) => value < 0)) return { low: least, likely, high };
  const onLogarithms = likely * Math.exp(-Math.hypot(...lowest.map((value) => Math.log(likely / value))));
  return { low: Math.max(least, leastOfLogarithms * onLogarithms), likely, high };
}

/** The band of a result were the inputs at these paths known at their likely values: their moves are left out. */
export function bandWithout({ bands, moves }: Doubt, result: string, known: readonly string[]): Band {
  const others: EndMoves[] = [];
  for (const move of moves) if (!known.includes(move.path)) others.push(endMoves(move, result));
  return bandOfSum(bands[result]!.likely, others);
}

/** How one input alone moves one result; 0 at an end where the engine has no answer, which a finding says. */
export function endMoves({ atLow, atHigh }: Move, result: string): EndMoves {
  return [atLow?.[result] ?? 0, atHigh?.[result] ?? 0];
}

function bandOfSum(likely: number, moves: readonly EndMoves[]): Band {
  const { up, down } = combinedReach(moves);
  return { low: likely - down, likely, high: likely + up };
}

function largestMove(move: Move, result: string): number {
  return Math.max(...endMoves(move, result).map(Math.abs));
}

function difference(values: ResultValues, likely: ResultValues): ResultValues {
  const moved: Record<string, number> = {};
  for (const name in likely) moved[name] = values[name]! - likely[name]!;
  return moved;
}

function zeros(likely: ResultValues): ResultValues {
  return difference(likely, likely);
}
