// The limits that the machine of a design meets by how it is loaded, and how far any of its running points is from each.

import type { OperatingPoint } from '../../../loop/index.ts';
import { KettlefinError } from '../../../numerics/index.ts';
import { type Application, applicationLimits, type EnvelopeLimit } from '../../../parts/compressor/index.ts';
import { limitMargins, machineEnvelope, reachesOf } from '../../answers/limits.ts';
import type { LimitMargin } from '../../assessment.ts';
import { type Run, runningAt } from './running.ts';
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
  const onOwn = { ...likely, fluid: states.fluid(machine.compressor.madeFor) };
  const limits = machineEnvelope(design, results.compressor, hardestLoad(onOwn, machine.application));
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

/** Motor load at the hardest point the application allows for long; null where the machine has no running point there. */
function hardestLoad(run: Run, application: Application): number | null {
  const { evaporating, condensing } = applicationLimits(application);
  try {
    const levels = { evaporating: evaporating.highest, condensing: condensing.continuous };
    return runningAt(run, levels).compressor.motor.load;
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return null;
  }
}
