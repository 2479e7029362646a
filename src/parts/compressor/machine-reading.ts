// What reads coefficients, tables and measurements of a machine and finds it from points: a third of all that is known of
// compressors, which most designs never ask for. The command line, the library and the tests hand it over at once
// (../every-machine-reading/); the workbench when a design first needs it. Only types are imported here.

import type { benchPoint } from './bench/point.ts';
import type { identifyMachine } from './identification/identify.ts';
import type { requirePlausibleRating } from './plausibility/rating-plausibility.ts';
import type { evidenceFromCoefficients } from './polynomial/coefficient-evidence.ts';
import type { ratingEvidence } from './polynomial/rating-evidence.ts';
import type { evidenceFromTable } from './polynomial/table/evidence.ts';
import type { readPointTable } from './polynomial/table/point-table.ts';
import type { requireTenCoefficients } from './polynomial/ten-coefficients.ts';

export interface MachineReading {
  readonly benchPoint: typeof benchPoint;
  readonly evidenceFromCoefficients: typeof evidenceFromCoefficients;
  readonly evidenceFromTable: typeof evidenceFromTable;
  readonly identifyMachine: typeof identifyMachine;
  readonly ratingEvidence: typeof ratingEvidence;
  readonly readPointTable: typeof readPointTable;
  readonly requirePlausibleRating: typeof requirePlausibleRating;
  readonly requireTenCoefficients: typeof requireTenCoefficients;
}

let reading: MachineReading | undefined;

export function addMachineReading(added: MachineReading): void {
  reading = added;
}

export function hasMachineReading(): boolean {
  return reading !== undefined;
}

/** @throws Error where it was not handed over: a fault of the program that asks, not of the design */
export function machineReading(): MachineReading {
  if (reading === undefined) throw new Error('what reads points of machines was not handed over: addMachineReading');
  return reading;
}
