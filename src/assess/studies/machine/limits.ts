// The limits that the machine of a design meets by how it is loaded, and how far any of its running points is from each.

import type { OperatingPoint } from '../../../loop/index.ts';
import type { EnvelopeLimit } from '../../../parts/compressor/index.ts';
import { limitMargins, machineEnvelope, reachesOf } from '../../answers/limits.ts';
import type { LimitMargin } from '../../assessment/assessment.ts';
import { hardestAllowed } from '../../machine-point.ts';
import type { LoopRun, MachineSubject } from './subject.ts';

export interface LimitsOfMachine {
  readonly limits: readonly EnvelopeLimit[];
  /** Margins at a running point, the nearest first. */
  readonly margins: (point: OperatingPoint) => readonly LimitMargin[];
  /** The nearest of them, and how near: distance over what is a usual change of its quantity. */
  readonly nearest: (point: OperatingPoint) => { readonly margin: LimitMargin; readonly nearness: number };
  /** Names of the limits passed there by the machine, or by one alike of so many times its size. */
  readonly passed: (point: OperatingPoint, size?: number) => readonly string[];
}

/** The limits of a machine; those of its motor at the hardest point it was built for, on the fluid it was made for. */
export function limitsOfMachine(
  { design, results }: Pick<MachineSubject, 'design' | 'results'>,
  likely: LoopRun,
): LimitsOfMachine {
  const { machine, states } = design;
  const own = states.fluid(machine.compressor.madeFor);
  const hardest = hardestAllowed(likely.machine, own, machine.application, likely.superheat);
  const limits = machineEnvelope(design, results.compressor, hardest?.motor.load ?? null);
  const margins = (point: OperatingPoint) => limitMargins(reachesOf(limits, point));
  return {
    limits,
    margins,
    nearest: (point) => {
      const [margin] = margins(point);
      const reach = reachesOf(limits, point).find(({ limit }) => limit.name === margin!.limit)!;
      return { margin: margin!, nearness: reach.nearness };
    },
    passed: (point, size = 1) =>
      limitMargins(reachesOf(ofSize(limits, size), point)).flatMap(({ limit, passed }) => (passed ? [limit] : [])),
  };
}

/** Limits of a machine alike of another size: a current goes with the size, everything else is an intensity. */
function ofSize(limits: readonly EnvelopeLimit[], size: number): readonly EnvelopeLimit[] {
  if (size === 1) return limits;
  return limits.map((limit) => (limit.of === 'current' ? { ...limit, bound: size * limit.bound } : limit));
}
