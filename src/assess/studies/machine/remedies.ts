// What would help a machine that is loaded too hard, simulated with its own operating point at the state of the year in which the
// motor is loaded most: a valve that holds the suction pressure, a lower condensing temperature, a smaller machine, rests.
// The exchangers stay those that the design's approaches imply there, and answer each change (exchangers-answer.ts). Leaves out: wear
// and losses of starts.

import type { OperatingPoint } from '../../../loop/index.ts';
import { KettlefinError } from '../../../numerics/index.ts';
import { currentShare } from '../../../parts/compressor/index.ts';
import type { MapMark, Remedy, RemedyReason, RemedyState } from './answer.ts';

/** One state of the year: how the loop settles there, and what the tank needs [W]. */
export interface SettledState {
  readonly when: MapMark['when'];
  readonly load: number;
}

/** What differs from the machine and the loop as they are. */
export interface Changed {
  /** Pressure that a valve before the compressor lets through at most [Pa]. */
  readonly suctionPressureLimit?: number;
  /** Surface of the condenser over the present one. */
  readonly condenserSurface?: number;
  /** Size of the machine over the present one: displacement, motor and shell alike. */
  readonly size?: number;
}

export interface RemediesInput {
  readonly state: SettledState;
  /** The operating point of that state with something changed, between the exchangers there are. @throws what operatingPoint throws */
  readonly settle: (changed: Changed) => OperatingPoint;
  /** The same in the coldest spell, where the tank's need decides how small a machine may be. */
  readonly settleColdest: (changed: Changed) => OperatingPoint;
  /** What the tank needs of this machine in the coldest spell [W]. */
  readonly coldestLoad: number;
  /** Heat that the loop pump adds to the machine's while it runs [W]. */
  readonly pumpHeat: number;
  /** Of the machine as it is [A]; one of another size is rated in proportion. */
  readonly ratedCurrent: number | null;
  /** Highest suction pressure that the motor was built for [Pa]. */
  readonly highestSuctionPressure: number;
  /** Names of the limits that a machine of so many times the present size passes there. */
  readonly passed: (point: OperatingPoint, size: number) => readonly string[];
}

export function remedies(input: RemediesInput): readonly Remedy[] {
  const point = input.settle({});
  const before = stateOf(input, point);
  return [suctionLimit, lowerCondensing, smallerMachine, intermittent].map((remedy) => remedy(input, point, before));
}

type OneRemedy = (input: RemediesInput, point: OperatingPoint, before: RemedyState) => Remedy;

const suctionLimit: OneRemedy = (input, point, before) => {
  const limit = input.highestSuctionPressure;
  const setting = { value: limit, quantity: 'pressure' };
  if (point.evaporating.pressure <= limit) {
    return without(input, 'suctionPressureLimit', setting, before, 'belowLimitAnyway');
  }
  return simulated(input, 'suctionPressureLimit', setting, before, { suctionPressureLimit: limit });
};

/** How much more coil a lower condensing temperature is tried with, over the present one [-]. */
const moreCondenser = 2;

const lowerCondensing: OneRemedy = (input, point, before) => {
  const remedy = simulated(
    input,
    'lowerCondensing',
    { value: point.condensing.temperature, quantity: 'temperature' },
    before,
    {
      condenserSurface: moreCondenser,
    },
  );
  if (remedy.after === null) return remedy;
  return { ...remedy, setting: { ...remedy.setting, value: remedy.after.condensing } };
};

/** Smaller than this share of the present size is another class of machine. */
const smallestSize = 0.25;
/** Sizes are tried in steps of this [-]. */
const sizeStep = 0.05;

/** The smallest machine of the same kind that still carries the tank in the coldest spell, between the same exchangers. */
const smallerMachine: OneRemedy = (input, _point, before) => {
  const carrying = sizesDown().filter((size) => carries(input, size));
  const size = carrying.at(-1);
  if (size === undefined) {
    return without(input, 'smallerMachine', { value: 1, quantity: 'fraction' }, before, 'wouldFallShort');
  }
  return simulated(input, 'smallerMachine', { value: size, quantity: 'fraction' }, before, { size });
};

function sizesDown(): readonly number[] {
  const count = Math.round((1 - smallestSize) / sizeStep);
  return Array.from({ length: count }, (_, index) => Math.round((1 - sizeStep * (index + 1)) * 1000) / 1000);
}

function carries(input: RemediesInput, size: number): boolean {
  try {
    return input.settleColdest({ size }).heatDelivered + input.pumpHeat >= input.coldestLoad;
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return false;
  }
}

const intermittent: OneRemedy = (input, point, before) => {
  const { load } = input.state;
  const share = load / (point.heatDelivered + input.pumpHeat);
  const setting = { value: Math.min(1, Math.max(0, share)), quantity: 'fraction' };
  if (load <= 0) return without(input, 'intermittent', setting, before, 'noHeatNeeded');
  if (share >= 1) return without(input, 'intermittent', setting, before, 'noTimeToRest');
  return told(input, 'intermittent', setting, before, stateOf(input, point, { share }));
};

function simulated(
  input: RemediesInput,
  name: Remedy['name'],
  setting: Remedy['setting'],
  before: RemedyState,
  changed: Changed,
): Remedy {
  try {
    return told(input, name, setting, before, stateOf(input, input.settle(changed), changed));
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return without(input, name, setting, before, 'noRunningPoint');
  }
}

function told(
  { state: { when } }: RemediesInput,
  name: Remedy['name'],
  setting: Remedy['setting'],
  before: RemedyState,
  after: RemedyState,
): Remedy {
  const cures = before.passed.filter((limit) => !after.passed.includes(limit));
  return { name, when, setting, before, after, reason: null, cures };
}

function without(
  { state: { when } }: RemediesInput,
  name: Remedy['name'],
  setting: Remedy['setting'],
  before: RemedyState,
  reason: RemedyReason,
): Remedy {
  return { name, when, setting, before, after: null, reason, cures: [] };
}

function stateOf(
  input: RemediesInput,
  point: OperatingPoint,
  { share = 1, size = 1 }: { readonly share?: number; readonly size?: number } = {},
): RemedyState {
  const { compressor, heatDelivered, compressorPower } = point;
  const { ratedCurrent } = input;
  return {
    evaporating: point.evaporating.temperature,
    condensing: point.condensing.temperature,
    suctionPressure: compressor.suction.pressure,
    heat: heatDelivered,
    meanHeat: share * heatDelivered,
    power: compressorPower,
    meanPower: share * compressorPower,
    current: compressor.current,
    currentShare: ratedCurrent === null ? null : currentShare(compressor.current, size * ratedCurrent),
    motorLoad: compressor.motor.load,
    dischargeTemperature: point.dischargeTemperature,
    share,
    passed: input.passed(point, size),
  };
}
