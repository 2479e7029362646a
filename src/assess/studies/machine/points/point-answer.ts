// What is answered of one running point of a machine between two stated temperatures, without a tank and without exchangers: plain
// data in base SI, as `kettlefin machine --at --json` gives it.

import type { Band, Finding, WorkingStep } from '../../../../quantities/index.ts';
import type { LimitMargin } from '../../../assessment/assessment.ts';
import type { ResidualAnswer } from '../../../assessment/machine-answer.ts';
import type { EngineError, Refusal } from '../../../from-design.ts';

/** A number with its range and the SI unit it is in. */
export interface UnitBand extends Band {
  readonly unit: string;
}

/** Where the four temperatures and the mains of a point are from. */
export type BasisOrigin =
  /** As asked. */
  | 'asked'
  /** Of what is known of the machine: its rating, its coefficients, its table. */
  | 'itsOwnData'
  /** Of the rating point usual for its application. */
  | 'ratingPoint'
  /** Of the design: superheat, subcooling, place of the shell, mains. */
  | 'design';

/** A value in force with where it is from, and in words which data or point that is. */
export interface BasisValue {
  readonly value: number;
  readonly from: BasisOrigin;
  readonly words: string;
}

/** Temperatures in K: dew, dew, gas at the inlet of the shell, liquid before the valve, air around the shell. */
export interface PointBasis {
  readonly refrigerant: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly returnGas: BasisValue;
  /** Gas above the dew temperature [K]. */
  readonly superheat: number;
  readonly liquid: BasisValue;
  /** Liquid below the bubble temperature [K]. */
  readonly subcooling: number;
  readonly surroundings: BasisValue;
  readonly frequency: BasisValue;
  readonly voltage: BasisValue;
}

/** What the ten coefficients of one set themselves say. */
export interface CoefficientValue {
  /** Where the set stands: 'machine.compressor.coefficients.0'. */
  readonly path: string;
  readonly of: 'massFlow' | 'capacity' | 'power' | 'current';
  /** At the superheat or return gas, and liquid, that the set is stated for. */
  readonly own: number;
  /** With the gas asked for after Dabiri and Rice 1981, and of a capacity its liquid; null of a current at another gas. */
  readonly corrected: number | null;
  readonly unit: string;
  /** The gas of the set here, and the liquid that its capacity counts from; null of any other quantity [K]. */
  readonly returnGas: number;
  readonly liquid: number | null;
  /** Mains that the set holds for [Hz]; it is not carried to others. */
  readonly frequency: number | null;
}

/** What one given value adds to the correction of the model at a point: ln of its factor is the sum of all contributions of a kind. */
export interface CorrectionPart {
  readonly of: 'flow' | 'power';
  /** The given value: 'machine.compressor.ratings.0.power'. */
  readonly path: string;
  readonly label: string;
  /** How much it counts here [-], and ln of given over modelled value [-]. */
  readonly weight: number;
  readonly miss: number;
  /** Their product [-]. */
  readonly contribution: number;
}

/** How the given values correct the model at a point, relative: of flow and of power, and what each of them adds. */
export interface CorrectionAnswer {
  readonly flow: number;
  readonly power: number;
  readonly parts: readonly CorrectionPart[];
}

export interface MachinePoint {
  readonly machinePointVersion: 1;
  readonly caution: string;
  readonly at: PointBasis;
  /** ṁ (h(p_e, return gas) − h'(liquid)) [W]. */
  readonly capacity: UnitBand;
  readonly power: UnitBand;
  readonly massFlow: UnitBand;
  readonly current: UnitBand;
  readonly dischargeTemperature: UnitBand;
  /** ṁ (h2 − h'(liquid)), out of the condenser down to the liquid [W]. */
  readonly heat: UnitBand;
  /** Heat out of the condenser over electricity [-]. */
  readonly compressorCop: UnitBand;
  readonly shellHeat: UnitBand;
  readonly volumetricEfficiency: UnitBand;
  readonly overallEfficiency: UnitBand;
  readonly motorLoad: UnitBand;
  readonly evaporatingPressure: UnitBand;
  readonly condensingPressure: UnitBand;
  /** True inside what was measured or printed of the machine. */
  readonly insideData: boolean;
  /** Why the ranges are as wide as they are: 'noPoints', 'beyondEvaporating', 'otherFluid', … */
  readonly doubt: readonly string[];
  readonly correction: CorrectionAnswer;
  /** What the coefficients themselves say; null where there are none, or the point is outside their ranges. */
  readonly polynomial: readonly CoefficientValue[] | null;
  readonly limits: readonly LimitMargin[];
  readonly residuals: readonly ResidualAnswer[];
  readonly findings: readonly Finding[];
  /** How they were computed, likely values: only where that was asked. Origins `asked.…` are those of `at`. */
  readonly workings?: readonly WorkingStep[];
}

/** One of several points at which the machine has no answer. */
export interface UnansweredPoint {
  readonly machinePointVersion: 1;
  readonly caution: string;
  readonly at: Pick<PointBasis, 'refrigerant' | 'evaporating' | 'condensing'>;
  readonly error: EngineError;
}

export type MachinePointsOutcome =
  | { readonly ok: true; readonly points: readonly (MachinePoint | UnansweredPoint)[] }
  | Refusal;
