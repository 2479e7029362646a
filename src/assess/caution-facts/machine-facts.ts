// The facts that the rules of caution look at about the machine itself: its motor against its plate and its limits, and what its
// start asks for. What meters the refrigerant and how the control rests it are no part of a design: nothing is known of them.

import type { MachineFacts, MachineStateFacts, StepsOfLimit } from '../../cautions/index.ts';
import type { ResolvedDesign } from '../../design/index.ts';
import type { OperatingPoint } from '../../loop/index.ts';
import {
  type EnvelopeLimit,
  type LimitName,
  type RunningPoint,
  startingNumbers,
  type TripFound,
  tripAt,
} from '../../parts/compressor/index.ts';
import { machineBandsAt } from '../answers/moments.ts';
import type { Bands } from '../answers/pieces.ts';
import { answerOrNull } from '../machine-point.ts';

/** What the facts are gathered from. */
export interface MachineFactsInput {
  readonly resolved: ResolvedDesign;
  readonly ratedCurrent: number | null;
  readonly limits: readonly EnvelopeLimit[];
  /** Where the loop settles in the coldest spell. */
  readonly operating: OperatingPoint;
  /** The machine at another evaporating temperature [K], condensing as there. */
  readonly pointAt: (evaporating: number) => RunningPoint;
}

export function machineFacts(input: MachineFactsInput): MachineFacts {
  const { resolved, ratedCurrent, limits } = input;
  const { compressor } = resolved.machine;
  const boundOf = (name: LimitName) => limits.find((each) => each.name === name)?.bound ?? null;
  const steps = (caution: LimitName, beyond: LimitName): StepsOfLimit => ({
    caution: boundOf(caution)!,
    beyond: boundOf(beyond)!,
    source: limits.find((each) => each.name === beyond)!.source,
  });
  return {
    ratedCurrent,
    continuousCurrent: boundOf('currentContinuous'),
    trip: tripOf(input, boundOf('motorLoadHighest'), boundOf('currentContinuous')),
    highestSuctionPressure: boundOf('suctionPressureHighest'),
    wall: steps('wallCaution', 'wallHighest'),
    superheat: steps('superheatCaution', 'superheatLowest'),
    starting: startingNumbers({
      startType: compressor.startType,
      meter: 'unknown',
      shellConductance: compressor.shellConductance,
    }),
    shortestOffTime: null,
    crankcaseHeater: resolved.power.crankcaseHeater.likely,
    oil: compressor.oil === 'unknown' ? null : compressor.oil,
  };
}

/** The machine at one moment. */
export function machineStateFacts(
  when: Parameters<typeof machineBandsAt>[0],
  point: OperatingPoint,
  bands: Pick<Bands, 'bands'>,
  { exchangers: { superheat } }: Pick<ResolvedDesign, 'exchangers'>,
): MachineStateFacts {
  const { low, likely, high } = superheat;
  return { ...machineBandsAt(when, point, bands), superheat: { low, likely, high } };
}

/** Least lift that is searched up to [K]: above it hardly anything is pumped. */
const leastLift = 5;

function tripOf(
  { operating, pointAt }: MachineFactsInput,
  highestLoad: number | null,
  highestCurrent: number | null,
): TripFound['trip'] {
  const from = operating.evaporating.temperature;
  const to = operating.condensing.temperature - leastLift;
  if (!(from < to)) return null;
  return answerOrNull(() => tripAt({ pointAt, from, to, highestLoad, highestCurrent }).trip);
}
