// The public types of the refrigerant engine: a fluid, what a state may be given by, and what a state is.
// Base SI on mass basis throughout; enthalpy and entropy count from 200 kJ/kg and 1 kJ/(kg K) in the liquid at 0 °C.

import type { BubbleAndDew } from './dome/bubble-and-dew.ts';
import type { Guess } from './dome/first-guess.ts';
import type { SaturationOverPressure, SaturationOverTemperature } from './dome/saturation-line.ts';
import type { HelmholtzEquation } from './equation/equation.ts';
import type { FluidData } from './equation/fluid-data.ts';
import type { IsobarStarts } from './isobars/starts.ts';
import type { TransportData } from './transport/transport-data.ts';

export interface Refrigerant {
  /** Name by ISO 817 / ASHRAE 34: 'R290'. */
  readonly name: string;
  readonly aliases: readonly string[];
  readonly citations: FluidData['citations'];
  /** M [kg/mol]. */
  readonly molarMass: number;
  /** Specific gas constant R [J/(kg K)], from the molar constant and the molar mass of the paper. */
  readonly gasConstant: number;
  /** Critical point of the equation itself [K, Pa, kg/m³]. */
  readonly critical: { readonly temperature: number; readonly pressure: number; readonly density: number };
  /** The lowest point of the saturation line [K, Pa]. */
  readonly triplePoint: { readonly temperature: number; readonly pressure: number };
  /** The range of the equation [K, Pa, kg/m³]; the largest density is that at the lowest temperature and largest pressure. */
  readonly limits: {
    readonly temperatureMin: number;
    readonly temperatureMax: number;
    readonly pressureMax: number;
    readonly densityMax: number;
  };
  readonly surfaceTension: FluidData['surfaceTension'];
  /** How viscosity and conductivity are come by, as its file has it; transportAt makes models of it. */
  readonly transport: TransportData;
  readonly meltingLine: FluidData['meltingLine'];
  readonly equation: HelmholtzEquation;
  readonly guess: Guess;
  /** Expansions of the dome; undefined only while they are being made. */
  readonly overTemperature: SaturationOverTemperature | undefined;
  readonly overPressure: SaturationOverPressure | undefined;
  /** Where solvers along isobars start. */
  readonly isobarStarts: IsobarStarts;
  /** Bubble and dew line of a blend under one equation; undefined for a pure fluid, whose dome follows from its equation. */
  readonly bubbleAndDew: BubbleAndDew | undefined;
  /** A table that is asked before the equation; only of a fluid from tabulated(). */
  readonly table?: StateTable;
}

/** What a table of states (tables/) is asked for; it answers undefined where the equation is to answer. */
export interface StateTable {
  stateAt(given: StateInput): State | undefined;
  saturationAtTemperature(temperature: number): Saturation | undefined;
  saturationAtPressure(pressure: number): Saturation | undefined;
  /** Both sides at the one pressure whose dew (bubble) temperature is T [K]. */
  saturationAtDewTemperature(temperature: number): Saturation | undefined;
  saturationAtBubbleTemperature(temperature: number): Saturation | undefined;
}

export type Phase = 'liquid' | 'vapour' | 'twoPhase' | 'supercritical';

/**
 * The pairs that loops are solved with: temperature [K], pressure [Pa], density [kg/m³], enthalpy [J/kg], entropy [J/(kg K)],
 * quality [-].
 */
export type LoopPair =
  | { readonly temperature: number; readonly pressure: number }
  | { readonly pressure: number; readonly enthalpy: number }
  | { readonly pressure: number; readonly entropy: number }
  | { readonly temperature: number; readonly quality: number }
  | { readonly pressure: number; readonly quality: number }
  | { readonly density: number; readonly temperature: number };

/** Every supported pair. */
export type StateInput =
  | LoopPair
  | { readonly enthalpy: number; readonly entropy: number }
  | { readonly temperature: number; readonly entropy: number };

export interface State {
  /** T [K]. */
  readonly temperature: number;
  /** p [Pa]. */
  readonly pressure: number;
  /** ρ [kg/m³]. */
  readonly density: number;
  /** h [J/kg]. */
  readonly enthalpy: number;
  /** s [J/(kg K)]. */
  readonly entropy: number;
  /** u [J/kg]. */
  readonly internalEnergy: number;
  /** c_p [J/(kg K)]; null inside the dome and where it has no limit, within rounding of the critical point. */
  readonly cp: number | null;
  /** c_v [J/(kg K)]; null inside the dome. */
  readonly cv: number | null;
  /** w [m/s]; null inside the dome. */
  readonly soundSpeed: number | null;
  /** σ [N/m]; on and inside the dome only. */
  readonly surfaceTension: number | null;
  /** x [-]: mass of vapour by mass; on and inside the dome only. */
  readonly quality: number | null;
  readonly phase: Phase;
  /** Inside a blend's dome: h, s, u, 1/ρ and T are taken as linear in the quality between bubble and dew line. */
  readonly glideApproximation?: true;
}

/**
 * Both sides of the dome, at one temperature or at one pressure. A pure fluid has the same of both on either side; a blend
 * at one temperature has a bubble pressure (liquid) and a lower dew pressure (vapour), and at one pressure a bubble
 * temperature and a higher dew temperature.
 */
export interface Saturation {
  readonly liquid: State;
  readonly vapour: State;
}
