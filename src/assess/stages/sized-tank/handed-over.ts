// What turns the sizes of a tank into what its model reads, and says of it panel by panel: nothing of it is asked for where a
// meter on the heater told the load. The command line, the library and the tests hand it over at once (../../every-tank/), with
// the model itself; the workbench when a design first needs it. Only types are imported here.

import type { builtAnswers } from '../../answers/built-tank.ts';
import type { meterAnswer } from '../../answers/meter.ts';
import type { sizedTankAssumptions } from './assumptions.ts';
import type { builtTank } from './description.ts';

export interface SizedTankParts {
  readonly builtTank: typeof builtTank;
  readonly sizedTankAssumptions: typeof sizedTankAssumptions;
  readonly builtAnswers: typeof builtAnswers;
  readonly meterAnswer: typeof meterAnswer;
}

let parts: SizedTankParts | undefined;

export function addSizedTankParts(added: SizedTankParts): void {
  parts = added;
}

export function hasSizedTanks(): boolean {
  return parts !== undefined;
}

/** @throws Error where they were not handed over: a fault of the program that asks, not of the design */
export function sizedTankParts(): SizedTankParts {
  if (parts === undefined) throw new Error('what reads the sizes of tanks was not handed over: assess/every-tank');
  return parts;
}
