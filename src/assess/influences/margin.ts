// How far each uncertain input alone moves the verdict: the margin at its ends, its share of the doubt, what would be left of
// the margin's range were it known, and whether knowing it at one of its ends would change what can be said of the load.

import type { Band } from '../../quantities/index.ts';
import type { Influence, LoadStanding } from '../assessment.ts';
import { bandWithout, type Doubt, endMoves } from '../doubt.ts';
import type { NamedInput } from '../inputs.ts';
import { influencesOn } from '../vary.ts';
import { judgeLoad } from '../verdict.ts';

const margin = 'plant.margin';

/** Inputs by how much of the margin's doubt each explains, the most telling first. */
export function marginInfluences(doubt: Doubt, inputs: readonly NamedInput[]): readonly Influence[] {
  const byPath = new Map(inputs.map((input) => [input.path, input]));
  const now = judgeLoad(doubt.bands['plant.heatReachingWater']!, doubt.bands['tank.load']!);
  return influencesOn(doubt, margin).map(({ atLow, atHigh, ...influence }) => {
    const { estimate, quantity } = byPath.get(influence.path)!;
    const flip = (end: 'low' | 'high') => differing(loadStandingAt(doubt, influence.path, end), now);
    return {
      ...influence,
      quantity,
      input: { low: estimate.low, likely: estimate.likely, high: estimate.high },
      marginAtLow: atLow,
      marginAtHigh: atHigh,
      marginIfKnown: bandWithout(doubt, margin, [influence.path]),
      flipsAtLow: flip('low'),
      flipsAtHigh: flip('high'),
    };
  });
}

/**
 * What could be said of the load were one input known to lie at one of its ends: heat delivered and heat needed moved there,
 * each with the range that all other inputs leave it. The moves of the others are taken to be as large there as at the
 * likely value, as everywhere in the combination of ranges.
 */
function loadStandingAt(doubt: Doubt, path: string, end: 'low' | 'high'): LoadStanding {
  const known = (result: string): Band => {
    const { low, likely, high } = bandWithout(doubt, result, [path]);
    const move = doubt.moves.find((each) => each.path === path)!;
    const by = endMoves(move, result)[end === 'low' ? 0 : 1];
    return { low: low + by, likely: likely + by, high: high + by };
  };
  return judgeLoad(known('plant.heatReachingWater'), known('tank.load'));
}

function differing(then: LoadStanding, now: LoadStanding): LoadStanding | null {
  return then === now ? null : then;
}
