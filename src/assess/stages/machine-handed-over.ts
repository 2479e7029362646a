// What reads the points that were printed or measured of a machine out of its description, and says what is odd about them:
// nothing of it is asked for where ranges alone are known. The command line, the library and the tests hand it over at once
// (../every-machine/), with the readers themselves; the workbench when a design first needs it. Only types are imported here.

import type { coefficientFindings } from '../findings/coefficient-findings.ts';
import type { givenEvidence } from './machine-ratings.ts';

export interface MachineParts {
  readonly givenEvidence: typeof givenEvidence;
  readonly coefficientFindings: typeof coefficientFindings;
}

let parts: MachineParts | undefined;

export function addMachineParts(added: MachineParts): void {
  parts = added;
}

export function hasMachineParts(): boolean {
  return parts !== undefined;
}

/** @throws Error where they were not handed over: a fault of the program that asks, not of the design */
export function machineParts(): MachineParts {
  if (parts === undefined)
    throw new Error('what reads points of a described machine was not handed over: assess/every-machine');
  return parts;
}
