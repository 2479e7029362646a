// What a running point between two dew temperatures needs beside them: gas at the inlet, liquid, air around the shell, mains. As
// asked; else as the machine's own data have it nearest to the point; else that of the rating point of its application. Each value
// says where it is from.

import type { Refrigerant } from '../../../../matter/refrigerants/index.ts';
import { InputError } from '../../../../numerics/index.ts';
import type { EvidencePoint, Supply } from '../../../../parts/compressor/index.ts';
import { bubbleTemperature, type Levels } from '../running.ts';
import type { BasisOrigin, BasisValue, PointBasis } from './point-answer.ts';

/** What was asked for beside the two temperatures; levels and differences in K. Of each pair at most one. */
export interface AskedBasis {
  readonly returnGas?: number;
  readonly superheat?: number;
  readonly liquid?: number;
  readonly subcooling?: number;
  readonly surroundings?: number;
  readonly frequency?: number;
  readonly voltage?: number;
}

/** What is known without asking. */
export interface KnownBasis {
  /** The fluid its points are of. */
  readonly fluid: Refrigerant;
  /** Points printed or measured of the machine. */
  readonly points: readonly EvidencePoint[];
  /** Rating point of its application, for a machine without points. */
  readonly rating: {
    /** "at the rating point of machines for low evaporating temperatures" */
    readonly words: string;
    readonly returnGas: number;
    readonly liquid: number;
    readonly condensing: number;
    readonly surroundings: number;
  };
  /** Mains of the design, and whether each was given there. */
  readonly supply: Supply;
  readonly given: { readonly frequency: boolean; readonly voltage: boolean };
  /** Whether the mains that a point holds for were given with it. */
  readonly isStated: (point: EvidencePoint, name: 'frequency' | 'voltage') => boolean;
}

/**
 * The basis of one point.
 * @throws InputError 'bothGiven'; 'returnGasBelowEvaporating' and 'liquidAboveCondensing' where gas or liquid make no sense there
 */
export function pointBasis(fluid: Refrigerant, levels: Levels, asked: AskedBasis, known: KnownBasis): PointBasis {
  requireOneOf(asked, 'returnGas', 'superheat');
  requireOneOf(asked, 'liquid', 'subcooling');
  const near = nearPoints(known.points, levels);
  const bubble = bubbleTemperature(fluid, levels.condensing);
  const returnGas = gasOf(levels, asked, known, near);
  const liquid = liquidOf({ ...levels, bubble }, asked, known, near);
  return {
    refrigerant: fluid.name,
    evaporating: levels.evaporating,
    condensing: levels.condensing,
    returnGas,
    superheat: returnGas.value - levels.evaporating,
    liquid,
    subcooling: bubble - liquid.value,
    surroundings: surroundingsOf(asked, known, near),
    ...supplyOf(asked, known, near),
  };
}

/**
 * Points of one series around a place, the nearest first; empty where the machine has none. What a plate says has no temperatures:
 * those it is taken at are no reason to prefer them to those of a rating.
 */
type Near = readonly EvidencePoint[];

function nearPoints(points: readonly EvidencePoint[], { evaporating, condensing }: Levels): Near {
  const stated = points.filter(({ isSupposed }) => isSupposed !== true);
  const byDistance = stated.toSorted((left, right) => distance(left) - distance(right));
  const [nearest] = byDistance;
  if (nearest === undefined) return [];
  const { series } = nearest;
  return series === undefined ? [nearest] : byDistance.filter((point) => point.series === series);

  function distance(point: EvidencePoint): number {
    return Math.hypot(point.evaporating - evaporating, point.condensing - condensing);
  }
}

/** Values as a sheet holds them constant spread less than this [K]. */
const constantWithin = 0.3;

function gasOf({ evaporating }: Levels, asked: AskedBasis, { rating }: KnownBasis, near: Near): BasisValue {
  const { returnGas, superheat } = asked;
  if (returnGas !== undefined) return aboveEvaporating('returnGas', basisValue(returnGas, 'asked', 'as asked'));
  if (superheat !== undefined) {
    if (!(superheat >= 0)) throw new InputError('superheat', superheat, 'a superheat of 0 K or above');
    return basisValue(evaporating + superheat, 'asked', 'superheat as asked');
  }
  const [nearest] = near;
  if (nearest === undefined) {
    return aboveEvaporating('returnGas', basisValue(rating.returnGas, 'ratingPoint', `as ${rating.words}`));
  }
  const superheats = near.map((point) => point.returnGas - point.evaporating);
  const isLevel = spread(near.map((point) => point.returnGas)) <= spread(superheats) + constantWithin;
  if (isLevel) return aboveEvaporating('returnGas', basisValue(nearest.returnGas, 'itsOwnData', ofData(nearest)));
  return basisValue(evaporating + superheats[0]!, 'itsOwnData', `superheat ${ofData(nearest)}`);

  function aboveEvaporating(path: string, gas: BasisValue): BasisValue {
    if (gas.value >= evaporating) return gas;
    const expected = `gas at or above the evaporating temperature of ${evaporating} K; ask for another return gas or for a superheat`;
    throw new InputError(path, gas.value, expected, 'returnGasBelowEvaporating');
  }
}

function liquidOf(
  at: Levels & { readonly bubble: number },
  asked: AskedBasis,
  { rating, fluid }: KnownBasis,
  near: Near,
): BasisValue {
  const { bubble } = at;
  if (asked.liquid !== undefined) {
    if (asked.liquid <= bubble) return basisValue(asked.liquid, 'asked', 'as asked');
    const expected = `liquid at most as warm as the bubble point of ${bubble} K there`;
    throw new InputError('liquid', asked.liquid, expected, 'liquidAboveCondensing');
  }
  if (asked.subcooling !== undefined) {
    if (!(asked.subcooling >= 0)) throw new InputError('subcooling', asked.subcooling, 'a subcooling of 0 K or above');
    return basisValue(bubble - asked.subcooling, 'asked', 'subcooling as asked');
  }
  const [nearest] = near;
  if (nearest === undefined) {
    const subcooling = Math.max(0, rating.condensing - rating.liquid);
    return fixedOrSubcooled(rating.liquid, subcooling, 'ratingPoint', `as ${rating.words}`);
  }
  const subcoolings = near.map((point) => bubbleTemperature(fluid, point.condensing) - point.liquid);
  const isLevel =
    subcoolings[0]! > constantWithin &&
    spread(near.map((point) => point.liquid)) <= spread(subcoolings) + constantWithin;
  if (isLevel) return fixedOrSubcooled(nearest.liquid, subcoolings[0]!, 'itsOwnData', ofData(nearest));
  return basisValue(bubble - Math.max(0, subcoolings[0]!), 'itsOwnData', `subcooling ${ofData(nearest)}`);

  /** A sheet's fixed liquid where it can be; at a condensing temperature below it the same subcooling instead, which is said. */
  function fixedOrSubcooled(liquid: number, subcooling: number, from: BasisOrigin, words: string): BasisValue {
    if (liquid <= bubble) return basisValue(liquid, from, words);
    return basisValue(bubble - subcooling, from, `${words}, with its subcooling: its liquid would be warmer than this`);
  }
}

function surroundingsOf(asked: AskedBasis, { rating }: KnownBasis, [nearest]: Near): BasisValue {
  if (asked.surroundings !== undefined) return basisValue(asked.surroundings, 'asked', 'as asked');
  if (nearest === undefined) return basisValue(rating.surroundings, 'ratingPoint', 'as on a calorimeter');
  return basisValue(nearest.surroundings, 'itsOwnData', ofData(nearest));
}

/** Mains as asked, as the design gives them, as the data were measured on, or as assumed for the place. */
function supplyOf(
  asked: AskedBasis,
  { supply, given, isStated }: KnownBasis,
  [nearest]: Near,
): Pick<PointBasis, 'frequency' | 'voltage'> {
  const isElsewhere = asked.frequency !== undefined || given.frequency;
  const of = (name: 'frequency' | 'voltage'): BasisValue => {
    const value = asked[name];
    if (value !== undefined) return basisValue(value, 'asked', 'as asked');
    if (given[name]) return basisValue(supply[name], 'design', 'mains of the design');
    // A voltage goes with its frequency: that of a sheet for 60 Hz says nothing about mains of 50 Hz.
    const isOfData = nearest !== undefined && (name === 'frequency' || !isElsewhere);
    if (isOfData) {
      const words = isStated(nearest, name) ? ofData(nearest) : `as assumed for its own data: ${nearest.label}`;
      return basisValue(nearest.supply[name], 'itsOwnData', words);
    }
    return basisValue(supply[name], 'design', 'assumed for the place');
  };
  return { frequency: of('frequency'), voltage: of('voltage') };
}

function requireOneOf(asked: AskedBasis, first: keyof AskedBasis, second: keyof AskedBasis): void {
  if (asked[first] === undefined || asked[second] === undefined) return;
  throw new InputError(second, asked[second], `either ${first} or ${second}`, 'bothGiven');
}

function ofData({ label }: EvidencePoint): string {
  return `as its own data have it: ${label}`;
}

function basisValue(value: number, from: BasisOrigin, words: string): BasisValue {
  return { value, from, words };
}

function spread(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
