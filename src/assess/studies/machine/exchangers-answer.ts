// The loop of a changed machine between the exchangers there are: each passes heat in proportion to the difference it works with, and
// its size is the one that the design's approach implies before the change. Leaves out that air and refrigerant films follow the
// flow a little.

import type { OperatingPoint } from '../../../loop/index.ts';
import { ConvergenceError } from '../../../numerics/index.ts';

/** Temperature differences between refrigerant and source, and refrigerant and water [K]. */
export interface Approaches {
  readonly evaporatorApproach: number;
  readonly condenserApproach: number;
}

/** Surfaces over those before the change [-]. */
export interface Surfaces {
  readonly evaporator: number;
  readonly condenser: number;
}

/** Approaches are found this closely [K]. */
const approachTolerance = 1e-6;
const mostTries = 60;

/**
 * The operating point at which both exchangers pass the heat they are given.
 *     ΔT′ = ΔT · (Q′/Q) / A′
 * @param settle    the loop of the changed machine at approaches that are held; may throw
 * @param before    the operating point before the change, whose heats and approaches tell how large the exchangers are
 * @param held      its approaches [K]
 * @param surfaces  of the exchangers after the change over before
 * @throws what settle throws; ConvergenceError
 * Source: heat flow in proportion to the temperature difference at constant conductance and constant flow of air or water.
 */
export function exchangersAnswer(
  settle: (approaches: Approaches) => OperatingPoint,
  before: OperatingPoint,
  held: Approaches,
  surfaces: Surfaces = { evaporator: 1, condenser: 1 },
): OperatingPoint {
  let approaches: Approaches = {
    evaporatorApproach: held.evaporatorApproach / surfaces.evaporator,
    condenserApproach: held.condenserApproach / surfaces.condenser,
  };
  let change = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < mostTries; tries++) {
    const point = settle(approaches);
    const next: Approaches = {
      evaporatorApproach: approachFor(held.evaporatorApproach, point.heatTaken / before.heatTaken, surfaces.evaporator),
      condenserApproach: approachFor(
        held.condenserApproach,
        point.heatDelivered / before.heatDelivered,
        surfaces.condenser,
      ),
    };
    change = Math.max(
      Math.abs(next.evaporatorApproach - approaches.evaporatorApproach),
      Math.abs(next.condenserApproach - approaches.condenserApproach),
    );
    if (change <= approachTolerance) return point;
    approaches = between(approaches, next);
  }
  const { evaporatorApproach, condenserApproach } = approaches;
  throw new ConvergenceError(
    'approaches of the exchangers',
    mostTries,
    [evaporatorApproach, condenserApproach],
    change,
    [0, held.evaporatorApproach + held.condenserApproach],
  );
}

/** Half way: more heat asks for more difference, which leaves less heat, so that the whole way would swing. */
function between(a: Approaches, b: Approaches): Approaches {
  return {
    evaporatorApproach: (a.evaporatorApproach + b.evaporatorApproach) / 2,
    condenserApproach: (a.condenserApproach + b.condenserApproach) / 2,
  };
}

/** Approach ΔT′ [K] = ΔT (Q′/Q)/A′ of an exchanger at another heat and with another surface. */
function approachFor(approach: number, heatShare: number, surface: number): number {
  return (approach * heatShare) / surface;
}
