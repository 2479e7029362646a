// How far the numbers of two fluids lie apart, with the range of the difference itself. What both share moves both at once,
// so that the range is not that of two strangers: temperatures, and the build of the compressor. How well the compressor
// works with a fluid it was not made for is another unknown than with its own: there both move each for itself.

import { bandWithUnit } from '../../answers/pieces.ts';
import { combinedReach, type Doubt, type EndMoves, endMoves, type Move } from '../../doubt/doubt.ts';
import type { MachineBasis, MachineStanding, PairDifference, RowDifference } from './comparison.ts';
import { type ComparedValue, isToldApart } from './values.ts';

/** A fluid with what every input does to its numbers. */
export interface AnsweredFluid {
  readonly fluid: string;
  readonly standing: MachineStanding;
  readonly doubt: Doubt;
}

/**
 * Each of the other fluids beside one of them.
 * @param beside    the fluid the others are held against
 * @param answered  all fluids with a loop, that one among them
 * @param values    the rows of the basis
 * @param basis     decides which rows it makes equal by itself
 */
export function pairDifferences(
  beside: AnsweredFluid,
  answered: readonly AnsweredFluid[],
  values: readonly ComparedValue[],
  basis: MachineBasis,
): readonly PairDifference[] {
  const told = values.filter(({ name }) => isToldApart(basis, name));
  return answered
    .filter(({ fluid }) => fluid !== beside.fluid)
    .map((other) => {
      const mayBeRanked = other.standing === 'forThisMachine' && beside.standing === 'forThisMachine';
      return {
        fluid: other.fluid,
        beside: beside.fluid,
        mayBeRanked,
        rows: told.map((value) => rowDifference(value, beside, other, mayBeRanked)),
      };
    });
}

/** Inputs that say how well a compressor works with its fluid, not how it is built. */
const boundToTheFluid: readonly string[] = [
  'machine.compressor.suctionHeatingUnits',
  'machine.compressor.dischargeCoolingUnits',
  'machine.compressor.leakageRatio',
  'machine.compressor.frictionPressure',
  'engine.machineFlowDoubt',
  'engine.machinePowerDoubt',
];

function rowDifference(
  { name, quantity }: ComparedValue,
  beside: AnsweredFluid,
  other: AnsweredFluid,
  isSameKnowledge: boolean,
): RowDifference {
  const likely = other.doubt.bands[name]!.likely - beside.doubt.bands[name]!.likely;
  const moves = other.doubt.moves.flatMap((move, index): readonly EndMoves[] => {
    const besides = beside.doubt.moves[index]!;
    const isApart = !isSameKnowledge && boundToTheFluid.includes(move.path);
    return isApart ? [endMoves(move, name), turned(endMoves(besides, name))] : [movesApart(name, move, besides)];
  });
  const { up, down } = combinedReach(moves);
  const band = { low: likely - down, likely, high: likely + up };
  const kind = quantity === 'temperature' ? 'temperatureDifference' : quantity;
  return {
    row: name,
    difference: bandWithUnit(`${other.fluid} - ${beside.fluid}: ${name}`, kind, band),
    beyondRange: band.low > 0 || band.high < 0,
  };
}

/** An end at which one of the two has no answer tells nothing of their difference; the column says so. */
function movesApart(name: string, other: Move, beside: Move): EndMoves {
  const apart = (left: Move['atLow'], right: Move['atLow']) =>
    left === undefined || right === undefined ? 0 : left[name]! - right[name]!;
  return [apart(other.atLow, beside.atLow), apart(other.atHigh, beside.atHigh)];
}

function turned([atLow, atHigh]: EndMoves): EndMoves {
  return [-atLow, -atHigh];
}
