// One running point of the machine of a design between dew temperatures that are asked for, beside those the loop settles at.

import { type Refrigerant, saturationAtTemperature, stateInLoop } from '../matter/refrigerants/index.ts';
import { KettlefinError } from '../numerics/index.ts';
import {
  type Application,
  applicationLimits,
  type RunningMachine,
  type RunningPoint,
  runningPoint,
} from '../parts/compressor/index.ts';

/** Dew temperatures, and the gas at the inlet of the shell [K]. */
export interface MachineLevels {
  readonly evaporating: number;
  readonly condensing: number;
  readonly suctionTemperature: number;
}

/** The machine there, its gas unthrottled. @throws what runningPoint and the fluid's equation throw */
export function machinePointAt(machine: RunningMachine, fluid: Refrigerant, at: MachineLevels): RunningPoint {
  const low = saturationAtTemperature(fluid, at.evaporating);
  const superheated = { temperature: at.suctionTemperature, pressure: low.vapour.pressure };
  const suction = at.suctionTemperature > at.evaporating ? stateInLoop(fluid, superheated) : low.vapour;
  const dischargePressure = saturationAtTemperature(fluid, at.condensing).vapour.pressure;
  return runningPoint(machine, fluid, { suction, dischargePressure });
}

/**
 * The machine where its application is hardest for long: highest evaporating, continuous condensing temperature.
 * @returns null where it has no answer there
 */
export function hardestAllowed(
  machine: RunningMachine,
  fluid: Refrigerant,
  application: Application,
  superheat: number,
): RunningPoint | null {
  const limits = applicationLimits(application);
  const evaporating = limits.evaporating.highest;
  return answerOrNull(() =>
    machinePointAt(machine, fluid, {
      evaporating,
      condensing: limits.condensing.continuous,
      suctionTemperature: evaporating + superheat,
    }),
  );
}

/** The answer, or null where physics or the models give none. */
export function answerOrNull<Answer>(compute: () => Answer): Answer | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof KettlefinError) return null;
    throw error;
  }
}
