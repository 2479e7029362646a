// What reckons a tank from how it is built: most of what is known of tanks, and nothing that one known by the meter on its heater
// asks for. The command line, the library and the tests hand it over at once (assess/every-tank/); the workbench when a design
// first needs it. Only types are imported here.

import type { builtEvaporation, builtLoad, builtLosses } from './built/built-load.ts';
import type { checkBuilt } from './built/checks.ts';
import type { applyToBuilt } from './measures/apply-built.ts';

export interface BuiltTankModel {
  readonly checkBuilt: typeof checkBuilt;
  readonly builtLoad: typeof builtLoad;
  readonly builtLosses: typeof builtLosses;
  readonly builtEvaporation: typeof builtEvaporation;
  readonly applyToBuilt: typeof applyToBuilt;
}

let model: BuiltTankModel | undefined;

export function addBuiltTankModel(added: BuiltTankModel): void {
  model = added;
}

/** @throws Error where it was not handed over: a fault of the program that asks, not of the design */
export function builtTankModel(): BuiltTankModel {
  if (model === undefined) throw new Error('the model of built tanks was not handed over: addBuiltTankModel');
  return model;
}
