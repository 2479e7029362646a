// The block `transport` of a coefficient file and its complete check: every key known, every number of the right sign, every
// kind of model one that the program has.

import {
  broken,
  byType,
  type Check,
  columns,
  finite,
  listOf,
  oneOf,
  positive,
  type Shape,
  shaped,
  wholeFrom,
  words,
} from '../equation/data-checks.ts';
import { refrigerantNames } from '../names.ts';

/** Where the source of a model says that it was made [K, Pa]. */
export interface SourceRange {
  readonly temperatureMin: number;
  readonly temperatureMax: number;
  readonly pressureMax: number;
}

interface Sourced {
  readonly source: string;
  readonly range?: SourceRange;
}

/** Pair potential of Lennard and Jones: diameter σ [m], depth ε/k [K]. */
export interface LennardJonesData {
  readonly diameter: number;
  readonly depth: number;
  /** The rule they are guessed by, where the viscosity model brings none of its own. */
  readonly estimatedFrom?: string;
}

/** Σ a δ^d τ^t. */
export interface PowerSumData {
  readonly a: readonly number[];
  readonly d: readonly number[];
  readonly t: readonly number[];
}

/** Σ n τ^t. */
export interface TauSumData {
  readonly n: readonly number[];
  readonly t: readonly number[];
}

export type DiluteViscosityData =
  /** factor √(M T) / (σ² exp Σ c (ln T*)^k); M in g/mol, σ in nm, as printed. */
  | {
      readonly type: 'collisionIntegral';
      readonly factor: number;
      readonly molarMass: number;
      readonly c: readonly number[];
    }
  | { readonly type: 'lennardJones' }
  /** Σ c T^k [Pa s]. */
  | { readonly type: 'polynomial'; readonly c: readonly number[] }
  | { readonly type: 'carbonDioxide' };

/** B* = Σ b (T*)^(−quarters/4). */
export interface InitialDensityData {
  readonly b: readonly number[];
  readonly quarters: readonly number[];
}

export interface FreeVolumeData {
  readonly factor: number;
  readonly densityPower: number;
  readonly numerator: TauSumData;
  readonly denominator: TauSumData;
}

export interface BatschinskiHildebrandData extends PowerSumData {
  readonly reducingTemperature: number;
  readonly reducingMolarDensity: number;
  readonly freeVolume?: FreeVolumeData;
}

export type ResidualViscosityData =
  | ({ readonly type: 'batschinskiHildebrand' } & BatschinskiHildebrandData)
  | { readonly type: 'carbonDioxide' };

export interface ViscosityCorrelationData extends Sourced {
  readonly type: 'correlation';
  readonly dilute: DiluteViscosityData;
  readonly initialDensity?: InitialDensityData;
  readonly residual: ResidualViscosityData;
}

export interface ResidualEntropyData extends Sourced {
  readonly type: 'residualEntropy';
  /** C. */
  readonly factor: number;
  /** (ρ s^r) at the critical point [J/(m³ K)], negative. */
  readonly criticalEntropyDensity: number;
  readonly liquid: readonly number[];
  readonly vapour: readonly number[];
}

/** ψ = Σ c (ρ/ρ_r)^k, ρ molar. */
export interface DensityFactorData {
  readonly reducingMolarDensity: number;
  readonly c: readonly number[];
}

export interface ViscosityStatesData extends Sourced {
  readonly type: 'correspondingStates';
  /** Own name of another refrigerant, which must have correlations. */
  readonly referenceFluid: string;
  readonly densityFactor: DensityFactorData;
}

export type ViscosityData =
  | ViscosityCorrelationData
  | ResidualEntropyData
  | ViscosityStatesData
  | ({ readonly type: 'water' } & Sourced);

/** Names and units as in the simplified form of Olchowy and Sengers. */
export interface OlchowySengersData {
  /** T_ref [K], where no enhancement is left. */
  readonly referenceTemperature: number;
  /** p_c of the reduced susceptibility [Pa]. */
  readonly criticalPressure: number;
  /** R0. */
  readonly amplitude: number;
  /** Γ. */
  readonly susceptibility: number;
  /** ξ0 [m]. */
  readonly correlationLength: number;
  /** q_D [1/m]. */
  readonly cutoff: number;
}

export type CriticalPartData =
  | ({ readonly type: 'olchowySengers' } & OlchowySengersData)
  | { readonly type: 'ammonia' }
  | { readonly type: 'none' };

export type DiluteConductivityData =
  /** Σ c (T/T_r)^k [W/(m K)]. */
  | { readonly type: 'polynomial'; readonly reducingTemperature: number; readonly c: readonly number[] }
  | { readonly type: 'carbonDioxide' };

export interface ResidualConductivityData extends PowerSumData {
  readonly reducingTemperature: number;
  /** [kg/m³] */
  readonly reducingDensity: number;
}

export interface ConductivityCorrelationData extends Sourced {
  readonly type: 'correlation';
  readonly dilute: DiluteConductivityData;
  readonly residual: ResidualConductivityData;
  readonly critical: CriticalPartData;
}

export interface ConductivityStatesData extends Sourced {
  readonly type: 'correspondingStates';
  readonly referenceFluid: string;
  readonly densityFactor: DensityFactorData;
  /** f_int = Σ c T^k. */
  readonly internalFactor: readonly number[];
  readonly critical: CriticalPartData;
}

export type ConductivityData =
  | ConductivityCorrelationData
  | ConductivityStatesData
  | ({ readonly type: 'water' } & Sourced);

export interface TransportData {
  readonly lennardJones?: LennardJonesData;
  readonly viscosity: ViscosityData;
  readonly conductivity: ConductivityData;
  /** What is known of how far values lie from the truth, in words. */
  readonly truth?: { readonly viscosity?: string; readonly conductivity?: string; readonly surfaceTension?: string };
}

/** A fluid the program knows. */
const knownName = oneOf(...refrigerantNames);
const numbers = listOf(finite);
const powers = listOf(wholeFrom(0));
const cubic = listOf(finite, 4);
const powerSum: Shape = { a: numbers, d: powers, t: numbers };
const tauSum = columns({ n: numbers, t: numbers });
const densityFactor = shaped({ reducingMolarDensity: positive, c: numbers });
const sourced: Shape = {
  source: words,
  range: { maybe: shaped({ temperatureMin: positive, temperatureMax: positive, pressureMax: positive }) },
};

const diluteViscosity = byType({
  collisionIntegral: { factor: positive, molarMass: positive, c: numbers },
  lennardJones: {},
  polynomial: { c: numbers },
  carbonDioxide: {},
});
const freeVolume = shaped({
  factor: positive,
  densityPower: wholeFrom(0),
  numerator: tauSum,
  denominator: tauSum,
});
const residualViscosity = byType({
  batschinskiHildebrand: {
    reducingTemperature: positive,
    reducingMolarDensity: positive,
    ...powerSum,
    freeVolume: { maybe: freeVolume },
  },
  carbonDioxide: {},
});
const viscosity = byType({
  correlation: {
    ...sourced,
    dilute: diluteViscosity,
    initialDensity: { maybe: columns({ b: numbers, quarters: powers }) },
    residual: residualViscosity,
  },
  residualEntropy: { ...sourced, factor: positive, criticalEntropyDensity: finite, liquid: cubic, vapour: cubic },
  correspondingStates: { ...sourced, referenceFluid: knownName, densityFactor },
  water: sourced,
});
const criticalPart = byType({
  olchowySengers: {
    referenceTemperature: positive,
    criticalPressure: positive,
    amplitude: positive,
    susceptibility: positive,
    correlationLength: positive,
    cutoff: positive,
  },
  ammonia: {},
  none: {},
});
const diluteConductivity = byType({
  polynomial: { reducingTemperature: positive, c: numbers },
  carbonDioxide: {},
});
const conductivity = byType({
  correlation: {
    ...sourced,
    dilute: diluteConductivity,
    residual: columns({ reducingTemperature: positive, reducingDensity: positive, ...powerSum }),
    critical: criticalPart,
  },
  correspondingStates: {
    ...sourced,
    referenceFluid: knownName,
    densityFactor,
    internalFactor: numbers,
    critical: criticalPart,
  },
  water: sourced,
});
const block = shaped({
  lennardJones: { maybe: shaped({ diameter: positive, depth: positive, estimatedFrom: { maybe: words } }) },
  viscosity,
  conductivity,
  truth: {
    maybe: shaped({ viscosity: { maybe: words }, conductivity: { maybe: words }, surfaceTension: { maybe: words } }),
  },
});

/** Models that reckon with molecules as Lennard and Jones describe them. */
function needsMolecules({ viscosity: model, conductivity: other }: TransportData): boolean {
  if (model.type === 'residualEntropy' || model.type === 'correspondingStates') return true;
  if (other.type === 'correspondingStates') return true;
  if (model.type !== 'correlation') return false;
  const { dilute, initialDensity } = model;
  return dilute.type === 'collisionIntegral' || dilute.type === 'lennardJones' || initialDensity !== undefined;
}

/** The block as a whole: its parts, and that the molecules are described where a model asks for them. */
export const transportBlock: Check = (value, path, file) => {
  block(value, path, file);
  const data = value as TransportData;
  if (needsMolecules(data) && data.lennardJones === undefined) {
    broken(file, `${path}.lennardJones`, 'is missing: a model of this fluid reckons with it');
  }
};
