// Every limit of a machine as one list: of its application, of its motor, of the gas that comes back to it; and how far a
// running point is from each. Typical guides, from memory, which may warn and clear nothing; a data sheet of the very machine
// goes before all of them. What no limit is known of is not in the list, and silence about it says nothing.

import { type Refrigerant, saturationAtDewTemperature } from '../../../matter/refrigerants/index.ts';
import type { Application } from '../data.ts';
import { envelopeData } from './envelope-data.ts';
import { distanceAbove, distanceBelow } from './limit-distance.ts';
import { applicationLimits } from './limits.ts';

/** What limits are of: temperatures and superheat [K], suction pressure [Pa], current [A], ratio and motor load [-]. */
export const limitedQuantities = [
  'evaporating',
  'condensing',
  'discharge',
  'pressureRatio',
  'suctionPressure',
  'returnGas',
  'superheat',
  'wall',
  'current',
  'motorLoad',
] as const;

export type LimitedQuantity = (typeof limitedQuantities)[number];

export type LimitName =
  | 'evaporatingLowest'
  | 'evaporatingHighest'
  | 'condensingContinuous'
  | 'condensingPeak'
  | 'dischargeCaution'
  | 'dischargeHighest'
  | 'pressureRatioLowest'
  | 'pressureRatioCaution'
  | 'pressureRatioHighest'
  | 'suctionPressureHighest'
  | 'returnGasHighest'
  | 'superheatCaution'
  | 'superheatLowest'
  | 'wallCaution'
  | 'wallHighest'
  | 'currentRated'
  | 'currentContinuous'
  | 'motorLoadHighest';

export interface EnvelopeLimit {
  readonly name: LimitName;
  readonly of: LimitedQuantity;
  /** On which side of it the machine is meant to stay. */
  readonly stays: 'below' | 'above';
  readonly bound: number;
  /** `caution`: doubt begins here; `highest`: not to be passed. */
  readonly weight: 'caution' | 'highest';
  /** Where the bound was read. */
  readonly source: string;
}

export interface EnvelopeRequest {
  readonly application: Application;
  /** Fluid it was made for: the pressure its motor was matched to follows from it. */
  readonly madeFor: Refrigerant;
  /** Current printed on the nameplate [A]; null where none is known. */
  readonly ratedCurrent: number | null;
  /** Motor load at the hardest point the application allows for long, by the same model [-]; null where it has no answer. */
  readonly hardestLoad: number | null;
}

/**
 * The limits of a machine.
 * @throws InputError for an unknown application; what the fluid's equation throws at the highest evaporating temperature
 * Source: typical application guides, from memory; each limit carries its own words.
 */
export function envelopeOf(request: EnvelopeRequest): readonly EnvelopeLimit[] {
  return [...ofApplication(request), ...ofReturningGas(), ...ofMotor(request)];
}

function ofApplication({ application, madeFor }: EnvelopeRequest): readonly EnvelopeLimit[] {
  const { evaporating, condensing, discharge, pressureRatio, source } = applicationLimits(application);
  const { lowestPressureRatio: low } = envelopeData;
  const { pressure } = saturationAtDewTemperature(madeFor, evaporating.highest).vapour;
  const suction = `${source}; saturation pressure of ${madeFor.name}, the fluid it was made for, there`;
  return [
    above('evaporatingLowest', 'evaporating', evaporating.lowest, 'highest', source),
    below('evaporatingHighest', 'evaporating', evaporating.highest, 'highest', source),
    below('condensingContinuous', 'condensing', condensing.continuous, 'caution', source),
    below('condensingPeak', 'condensing', condensing.peak, 'highest', source),
    below('dischargeCaution', 'discharge', discharge.caution, 'caution', source),
    below('dischargeHighest', 'discharge', discharge.highest, 'highest', source),
    above('pressureRatioLowest', 'pressureRatio', low.bound, 'caution', low.source),
    below('pressureRatioCaution', 'pressureRatio', pressureRatio.caution, 'caution', source),
    below('pressureRatioHighest', 'pressureRatio', pressureRatio.highest, 'highest', source),
    below('suctionPressureHighest', 'suctionPressure', pressure, 'highest', suction),
  ];
}

function ofReturningGas(): readonly EnvelopeLimit[] {
  const { highestReturnGas, superheat } = envelopeData;
  return [
    below('returnGasHighest', 'returnGas', highestReturnGas.bound, 'caution', highestReturnGas.source),
    above('superheatCaution', 'superheat', superheat.caution, 'caution', superheat.source),
    above('superheatLowest', 'superheat', superheat.beyond, 'highest', superheat.source),
  ];
}

/** Of the motor: warmth of its windings, current, and torque at the hardest point it was built for. */
function ofMotor({ ratedCurrent, hardestLoad }: EnvelopeRequest): readonly EnvelopeLimit[] {
  const { wall } = envelopeData;
  const limits = [
    below('wallCaution', 'wall', wall.caution, 'caution', wall.source),
    below('wallHighest', 'wall', wall.beyond, 'highest', wall.source),
  ];
  if (ratedCurrent !== null) {
    const { high, source } = envelopeData.continuousOverRatedCurrent;
    limits.push(below('currentRated', 'current', ratedCurrent, 'caution', source));
    limits.push(below('currentContinuous', 'current', high * ratedCurrent, 'highest', source));
  }
  if (hardestLoad !== null) limits.push(below('motorLoadHighest', 'motorLoad', hardestLoad, 'highest', hardestSource));
  return limits;
}

const hardestSource =
  'the same model at the highest evaporating and the continuous condensing temperature of its application; typical application guides, from memory';

function below(
  name: LimitName,
  of: LimitedQuantity,
  bound: number,
  weight: EnvelopeLimit['weight'],
  source: string,
): EnvelopeLimit {
  return { name, of, stays: 'below', bound, weight, source };
}

function above(
  name: LimitName,
  of: LimitedQuantity,
  bound: number,
  weight: EnvelopeLimit['weight'],
  source: string,
): EnvelopeLimit {
  return { name, of, stays: 'above', bound, weight, source };
}

/** How far a running point is from one limit. */
export interface LimitReach {
  readonly limit: EnvelopeLimit;
  readonly value: number;
  /** Left until the limit, in its unit; negative once passed. */
  readonly distance: number;
  readonly passed: boolean;
  /** Distance over what is a usual change of such a quantity: what is met first has the least of it. */
  readonly nearness: number;
}

/**
 * Distance of a running point to every limit whose quantity is known, the nearest first.
 * @param limits  of the machine
 * @param values  of the point, in the units of the limits; absent where not known
 * @throws InputError for a value that is not finite
 */
export function limitsReached(
  limits: readonly EnvelopeLimit[],
  values: Readonly<Partial<Record<LimitedQuantity, number>>>,
): readonly LimitReach[] {
  const reaches = limits.flatMap((limit) => {
    const value = values[limit.of];
    return value === undefined ? [] : [reachOf(limit, value)];
  });
  return reaches.sort((one, other) => one.nearness - other.nearness);
}

function reachOf(limit: EnvelopeLimit, value: number): LimitReach {
  const { stays, bound, of } = limit;
  const distance = stays === 'below' ? distanceBelow(value, bound) : distanceAbove(value, bound);
  return { limit, value, distance, passed: distance < 0, nearness: distance / usualChange(of, bound) };
}

/** What counts as one step of a quantity: own judgement, decides the order in which limits are told and nothing else. */
function usualChange(of: LimitedQuantity, bound: number): number {
  switch (of) {
    case 'superheat':
      return 5;
    case 'pressureRatio':
      return 2;
    case 'suctionPressure':
    case 'current':
    case 'motorLoad':
      return 0.25 * bound;
    default:
      return 10;
  }
}
