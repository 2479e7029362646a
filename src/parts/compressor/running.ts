// A machine as it runs here: what it is, where its shell stands, which mains feed it, and how far the model is moved within its
// own doubt. The loop asks it for a running point and knows no more of it.

import type { Refrigerant, State } from '../../matter/refrigerants/index.ts';
import type { HermeticCompressor, Supply } from './hermetic/parameters.ts';
import type { HermeticPoint } from './hermetic/point.ts';
import type { IdentifiedMachine } from './identification/identified.ts';

export interface RunningMachine {
  readonly compressor: HermeticCompressor;
  /** T_amb, of the air around the shell [K]. */
  readonly surroundings: number;
  readonly supply: Supply;
  /** How the machine is known, and where within the model's doubt it is taken to stand: −1 to 1, 0 the likely; null for the bare model. */
  readonly known: { readonly identified: IdentifiedMachine; readonly flow: number; readonly power: number } | null;
}

/** Gas at the inlet of the shell, and p_d [Pa]. */
export interface BetweenPressures {
  readonly suction: State;
  readonly dischargePressure: number;
}

export type RunningPointOf = (machine: RunningMachine, fluid: Refrigerant, at: BetweenPressures) => HermeticPoint;
