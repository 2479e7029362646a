// How far each uncertain input alone moves the verdict: the margin at its ends, its share of the doubt, what would be left of
// the margin's range were it known, and whether knowing it at one of its ends would change what can be said of the load.

import type { Band } from '../../quantities/index.ts';
import type { Influence, LoadStanding } from '../assessment/assessment.ts';
import type { NamedInput } from '../inputs.ts';
import { judgeLoad } from '../verdict.ts';
import { bandWithout, type Doubt, endMoves, type Move } from './doubt.ts';
import { influencesOn } from './vary.ts';

const margin = 'plant.margin';
const delivered = 'plant.heatReachingWater';
const needed = 'tank.load';

/** Inputs by how much of the margin's doubt each explains, the most telling first. */
export function marginInfluences(doubt: Doubt, inputs: readonly NamedInput[]): readonly Influence[] {
  const byPath = new Map(inputs.map((input) => [input.path, input]));
  const movesByPath = new Map(doubt.moves.map((move) => [move.path, move]));
  const now = judgeLoad(doubt.bands[delivered]!, doubt.bands[needed]!);
  return influencesOn(doubt, margin).map(({ atLow, atHigh, ...influence }) => {
    const { estimate, quantity } = byPath.get(influence.path)!;
    const [low, high] = loadStandingsAtEnds(doubt, movesByPath.get(influence.path)!);
    return {
      ...influence,
      quantity,
      input: { low: estimate.low, likely: estimate.likely, high: estimate.high },
      marginAtLow: atLow,
      marginAtHigh: atHigh,
      marginIfKnown: bandWithout(doubt, margin, [influence.path]),
      flipsAtLow: low === now ? null : low,
      flipsAtHigh: high === now ? null : high,
    };
  });
}

/**
 * What could be said of the load were one input known to lie at its low, and at its high end: heat delivered and heat needed
 * moved there, each with the range that all other inputs leave it. The moves of the others are taken to be as large there as
 * at the likely value, as everywhere in the combination of ranges.
 */
function loadStandingsAtEnds(doubt: Doubt, move: Move): readonly [atLow: LoadStanding, atHigh: LoadStanding] {
  const heat = bandWithout(doubt, delivered, [move.path]);
  const load = bandWithout(doubt, needed, [move.path]);
  const [heatAtLow, heatAtHigh] = endMoves(move, delivered);
  const [loadAtLow, loadAtHigh] = endMoves(move, needed);
  return [
    judgeLoad(movedBy(heat, heatAtLow), movedBy(load, loadAtLow)),
    judgeLoad(movedBy(heat, heatAtHigh), movedBy(load, loadAtHigh)),
  ];
}

function movedBy({ low, likely, high }: Band, by: number): Band {
  return { low: low + by, likely: likely + by, high: high + by };
}
