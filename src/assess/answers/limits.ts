// How far the operating point at the coldest spell is from each limit of the machine, the nearest first, and the working of it.

import type { OperatingPoint } from '../../loop/index.ts';
import {
  type EnvelopeLimit,
  envelopeOf,
  type LimitedQuantity,
  type LimitName,
  type LimitReach,
  limitsReached,
} from '../../parts/compressor/index.ts';
import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { LimitMargin, LimitQuantity } from '../assessment/assessment.ts';
import type { LimitAnswer } from '../assessment/machine-answer.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { CompressorResult } from '../stages/machine.ts';
import { limitLabel } from '../wording/limits.ts';

/** What a limit is a number of, and the result that it holds. */
interface Limited {
  readonly quantity: LimitQuantity;
  readonly result: string;
  /** Formulas of the distance below and above it; a quantity that has limits on one side only has one of them. */
  readonly below?: string;
  readonly above?: string;
}

const temperature = {
  quantity: 'temperature',
  below: 'compressor.temperatureBelow',
  above: 'compressor.temperatureAbove',
} as const;

const limited: Readonly<Record<LimitedQuantity, Limited>> = {
  evaporating: { ...temperature, result: 'operating.evaporatingTemperature' },
  condensing: { ...temperature, result: 'operating.condensingTemperature' },
  discharge: { ...temperature, result: 'operating.dischargeTemperature' },
  pressureRatio: {
    quantity: 'ratio',
    result: 'operating.compressor.pressureRatio',
    below: 'compressor.ratioBelow',
    above: 'compressor.ratioAbove',
  },
  suctionPressure: {
    quantity: 'pressure',
    result: 'operating.points.compressorInlet.pressure',
    below: 'compressor.suctionPressureBelow',
  },
  returnGas: { ...temperature, result: 'operating.points.compressorInlet.temperature' },
  superheat: {
    quantity: 'temperatureDifference',
    result: 'exchangers.superheat',
    above: 'compressor.superheatAbove',
  },
  wall: { ...temperature, result: 'operating.compressor.wallTemperature' },
  current: {
    quantity: 'current',
    result: 'operating.compressor.current',
    below: 'compressor.currentBelow',
  },
  motorLoad: {
    quantity: 'fraction',
    result: 'operating.compressor.motor.load',
    below: 'compressor.motorLoadBelow',
  },
};

/** The limits of the machine of a design; `hardestLoad` of its motor where its application is hardest for long. */
export function machineEnvelope(
  { machine, states }: StagedDesign,
  { ratedCurrent }: CompressorResult,
  hardestLoad: number | null,
): readonly EnvelopeLimit[] {
  const madeFor = states.fluid(machine.compressor.madeFor);
  return envelopeOf({ application: machine.application, madeFor, ratedCurrent, hardestLoad });
}

/** A running point against every limit, the nearest first. */
export function reachesOf(limits: readonly EnvelopeLimit[], operating: OperatingPoint): readonly LimitReach[] {
  const { evaporating, condensing, compressor, dischargeTemperature } = operating;
  const { suction } = compressor;
  return limitsReached(limits, {
    evaporating: evaporating.temperature,
    condensing: condensing.temperature,
    discharge: dischargeTemperature,
    pressureRatio: compressor.pressureRatio,
    suctionPressure: suction.pressure,
    returnGas: suction.temperature,
    superheat: suction.temperature - evaporating.temperature,
    wall: compressor.wallTemperature,
    current: compressor.current,
    motorLoad: compressor.motor.load,
  });
}

/**
 * Limits that the machine meets by how it is loaded, not to be passed for long. Superheat and return gas are set by what meters
 * the refrigerant; they and the beginnings of doubt are told by the rules of caution.
 */
export function limitMargins(reaches: readonly LimitReach[]): readonly LimitMargin[] {
  return reaches.filter(({ limit }) => isMet(limit)).map(marginOf);
}

function isMet({ name, of, weight }: EnvelopeLimit): boolean {
  if (of === 'superheat' || of === 'returnGas') return false;
  return weight === 'highest' || name === 'condensingContinuous';
}

function marginOf({ limit: { name, of, bound }, value, distance, passed }: LimitReach): LimitMargin {
  return {
    limit: name,
    label: limitLabel(name),
    quantity: limited[of].quantity,
    value,
    bound,
    margin: distance,
    passed,
  };
}

/** Every limit of the machine with where it was read, the nearest first. */
export function limitAnswers(reaches: readonly LimitReach[]): readonly LimitAnswer[] {
  return reaches.map((reach) => {
    const { weight, stays, source } = reach.limit;
    return { ...marginOf(reach), weight, stays, source };
  });
}

/** What the distance to a limit of that quantity is a number of. */
export function distanceQuantity(quantity: LimitQuantity): 'pressureDifference' | LimitQuantity {
  if (quantity === 'temperature') return 'temperatureDifference';
  return quantity === 'pressure' ? 'pressureDifference' : quantity;
}

/** Which step, or field of the design, gives the value that a limit holds. */
export function limitedResult(name: LimitName): string {
  return limited[quantityOf(name)].result;
}

/** Names of limits begin with what they are of. */
function quantityOf(name: LimitName): LimitedQuantity {
  return (Object.keys(limited) as LimitedQuantity[]).find((of) => name.startsWith(of))!;
}

/** The field of the design that decides where a limit lies. */
export function limitDecidedBy(name: LimitName): string {
  return quantityOf(name) === 'current' ? 'machine.compressor.nameplate.ratedCurrent' : 'machine.application';
}

/** Steps `operating.limits.<limit>`. */
export function limitSteps(reaches: readonly LimitReach[]): readonly WorkingStep[] {
  return reaches
    .filter(({ limit }) => isMet(limit))
    .map(({ limit: { name, of, stays, bound }, value, distance }) =>
      workingStep(`operating.limits.${name}`, limited[of][stays]!, distance, {
        y: [value, limited[of].result],
        y_limit: [bound, limitDecidedBy(name)],
      }),
    );
}
