// What a comparison of refrigerants answers, as plain data in base SI: one column a fluid, on one stated basis. Sentences
// and the table are made in ../../wording/refrigerant-comparison.ts.

import type { StudyOnlyReason } from '../../../matter/refrigerants/index.ts';
import type { Finding, QuantityName, WorkingStep } from '../../../quantities/index.ts';
import type { BandWithUnit, LoopPoint } from '../../assessment/assessment.ts';
import type { UnansweredEnd } from '../../doubt/doubt.ts';
import type { EngineError } from '../../from-design.ts';

/** What is held the same for every fluid, in the machine of a design. */
export const comparisonBases = ['sameDome', 'sameHeat', 'sameParts'] as const;

/**
 * `sameDome`: displacement and both dew temperatures. `sameHeat`: heat out of the condenser, by scaled displacement.
 * `sameParts`: source, water, approaches and every part, as the design describes them.
 */
export type MachineBasis = (typeof comparisonBases)[number];

/** `textbook`: no machine; both dew temperatures and the isentropic efficiency. */
export type ComparisonBasis = MachineBasis | 'textbook';

export type RowGroup = 'law' | 'pressures' | 'lift' | 'heat' | 'environment';

/** One row of numbers: its name in `values`, what it is, and what it is called. */
export interface ComparisonRow {
  readonly name: string;
  readonly label: string;
  readonly quantity: QuantityName;
  readonly group: RowGroup;
}

/** A fact of the catalogue with where it was read. */
export interface SourcedFact<Value> {
  readonly value: Value;
  readonly source: string;
  /** False: from memory or common practice; such a figure may warn and never clears. */
  readonly confirmed: boolean;
  readonly note: string | null;
}

/** What is known of a fluid apart from its thermodynamics; limits in kg/m³. */
export interface ComparedFacts {
  /** What no source that was read confirms; a fluid with any of it is for study only, whatever the machine. */
  readonly unconfirmed: readonly StudyOnlyReason[];
  readonly legalStatus: SourcedFact<string>;
  readonly safetyClass: SourcedFact<string>;
  /** Null where the fluid does not burn in air. */
  readonly lowerFlammabilityLimit: SourcedFact<number | null>;
  /** Concentration a leak should stay below; null where no limit is known. */
  readonly leakLimit: SourcedFact<number | null>;
  readonly usualOils: SourcedFact<readonly string[]>;
  /** Whether one of them is usual in this compressor too; null without a machine. */
  readonly oilSuitsMachine: boolean | null;
  readonly ozoneDepletionPotential: SourcedFact<number | null>;
  readonly globalWarmingPotential: SourcedFact<number | null>;
  readonly laterGlobalWarmingPotential: SourcedFact<number | null>;
}

/** Fixed amounts of a product standard [kg]; for comparison, they allow nothing. */
export interface StandardAmounts {
  readonly m1: BandWithUnit;
  readonly m2: BandWithUnit;
  readonly m3: BandWithUnit;
}

/**
 * What follows from a charge. `withheld`: something here must not be built, so no figure of charge is given. `unknown`: the
 * design's charge is that of another fluid, or there is no design. `shown`: for the charge of this design.
 */
export type ChargeFigures =
  | { readonly kind: 'withheld' }
  | { readonly kind: 'unknown'; readonly chargeOf: string | null; readonly amounts: StandardAmounts | null }
  | {
      readonly kind: 'shown';
      readonly amounts: StandardAmounts | null;
      readonly charge: BandWithUnit;
      /** Null where the fluid does not burn. */
      readonly smallestFloorArea: BandWithUnit | null;
      /** Null where no limit of concentration is known. */
      readonly smallestRoomVolume: BandWithUnit | null;
    };

/** The loop on one fluid, or why there is none. One fluid's failure leaves the others alone. */
export type ComparedCycle =
  | {
      readonly ok: true;
      /** By the names of `rows`. */
      readonly values: Readonly<Record<string, BandWithUnit>>;
      /** The five states, likely values. */
      readonly points: readonly LoopPoint[];
      /** Ends of inputs at which there is no answer: the ranges are too narrow there. */
      readonly unanswered: readonly UnansweredEnd[];
    }
  | { readonly ok: false; readonly error: EngineError };

export type MachineStanding = 'forThisMachine' | 'notForThisMachine' | 'noMachine';

export interface ComparisonColumn {
  readonly fluid: string;
  readonly standing: MachineStanding;
  /** Why it is not for this machine; null where it is, or where there is none. */
  readonly reason: Finding | null;
  /** Everything that says: do not build this machine with this fluid. */
  readonly stops: readonly Finding[];
  readonly facts: ComparedFacts;
  readonly charge: ChargeFigures;
  readonly cycle: ComparedCycle;
  /** Steps behind `values` and the charge, likely values. */
  readonly workings: readonly WorkingStep[];
}

/** How far one fluid's number lies from another's, with the doubt that both share moving both at once. */
export interface RowDifference {
  readonly row: string;
  /** The number of `fluid` minus that of `beside`. */
  readonly difference: BandWithUnit;
  /** The range of the difference does not hold 0. */
  readonly beyondRange: boolean;
}

export interface PairDifference {
  readonly fluid: string;
  readonly beside: string;
  /** False where one of the two is not for this machine: shown for study, not ranked. */
  readonly mayBeRanked: boolean;
  readonly rows: readonly RowDifference[];
}

/** What was held; null where the basis holds no such thing. Likely values. */
export interface ComparisonConditions {
  readonly sourceTemperature: number | null;
  readonly waterTemperature: number | null;
  readonly evaporatingTemperature: number;
  readonly condensingTemperature: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly atmosphericPressure: number;
  readonly displacement: number | null;
  readonly isentropicEfficiency: number | null;
  /** Heat that every fluid is brought to; null on the other bases, and where the design's own fluid gives none. */
  readonly heat: BandWithUnit | null;
}

export interface RefrigerantComparison {
  readonly comparisonVersion: 1;
  readonly caution: string;
  readonly basis: ComparisonBasis;
  readonly designName: string | null;
  /** The fluid the design runs on, and the one its compressor was made for. */
  readonly designFluid: string | null;
  readonly madeFor: string | null;
  readonly conditions: ComparisonConditions;
  /** Rows of numbers in the order they are shown. */
  readonly rows: readonly ComparisonRow[];
  /** Fluids for this machine first, then the others; within each in the order asked. */
  readonly columns: readonly ComparisonColumn[];
  readonly differences: readonly PairDifference[];
}
