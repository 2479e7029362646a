// The limits of a machine and how far a running point is from each: of its application, of the gas that comes back, of its motor at
// the hardest point it was built for.

import type { OperatingPoint } from '../../../loop/index.ts';
import { KettlefinError } from '../../../numerics/index.ts';
import {
  applicationLimits,
  type EnvelopeLimit,
  envelopeOf,
  type LimitedQuantity,
  type LimitReach,
  limitsReached,
} from '../../../parts/compressor/index.ts';
import type { LimitMargin, LimitQuantity } from '../../assessment.ts';
import { limitLabel } from '../../wording/limits.ts';
import { type Run, runningAt } from './running.ts';
import type { LoopRun, MachineSubject } from './subject.ts';

export interface MachineEnvelope {
  readonly limits: readonly EnvelopeLimit[];
  /** Every limit with its margin at a running point, the nearest first. */
  readonly margins: (point: OperatingPoint) => readonly LimitMargin[];
  /** The nearest of them, and how near: distance over what is a usual change of its quantity. */
  readonly nearest: (point: OperatingPoint) => { readonly margin: LimitMargin; readonly nearness: number };
  /** Names of the limits passed there. */
  readonly passed: (point: OperatingPoint) => readonly string[];
}

/** What each limit is a number of. */
export const limitQuantity: Readonly<Record<LimitedQuantity, LimitQuantity>> = {
  evaporating: 'temperature',
  condensing: 'temperature',
  discharge: 'temperature',
  pressureRatio: 'ratio',
  suctionPressure: 'pressure',
  returnGas: 'temperature',
  superheat: 'temperatureDifference',
  wall: 'temperature',
  current: 'current',
  motorLoad: 'fraction',
};

/** The limits of the machine of a design, with those of its motor on the fluid it was made for. */
export function machineEnvelope(
  { design, results }: Pick<MachineSubject, 'design' | 'results'>,
  likely: LoopRun,
): MachineEnvelope {
  const { machine, states } = design;
  const madeFor = states.fluid(machine.compressor.madeFor);
  const limits = envelopeOf({
    application: machine.application,
    madeFor,
    ratedCurrent: results.compressor.ratedCurrent,
    hardestLoad: hardestLoad({ ...likely, fluid: madeFor }, machine.application),
  });
  const reached = (point: OperatingPoint) => limitsReached(limits, limitedValues(point));
  return {
    limits,
    margins: (point) => reached(point).map(marginOf),
    nearest: (point) => {
      const first = reached(point)[0]!;
      return { margin: marginOf(first), nearness: first.nearness };
    },
    passed: (point) => reached(point).flatMap((reach) => (reach.passed ? [reach.limit.name] : [])),
  };
}

/** Motor load at the hardest point the application allows for long; null where the machine has no running point there. */
function hardestLoad(run: Run, application: Parameters<typeof applicationLimits>[0]): number | null {
  const { evaporating, condensing } = applicationLimits(application);
  try {
    const levels = { evaporating: evaporating.highest, condensing: condensing.continuous };
    return runningAt(run, levels).compressor.motor.load;
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return null;
  }
}

function limitedValues({ evaporating, condensing, compressor, dischargeTemperature }: OperatingPoint) {
  const { suction } = compressor;
  return {
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
  } satisfies Readonly<Record<LimitedQuantity, number>>;
}

function marginOf({ limit, value, distance, passed }: LimitReach): LimitMargin {
  const quantity = limitQuantity[limit.of];
  return {
    limit: limit.name,
    label: limitLabel(limit.name),
    quantity,
    value,
    bound: limit.bound,
    margin: distance,
    passed,
  };
}
