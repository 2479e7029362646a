// What an assessment says of its machine: what it is, how it would run in the coldest spell, how far that is from what it was
// built for, and how well it is known. Every number is of one machine; plain data in base SI.

import type { EvidenceQuantity, ModelDoubtReason } from '../../parts/compressor/index.ts';
import type { Band } from '../../quantities/index.ts';
import type { BandWithUnit, LimitMargin } from './assessment.ts';

/** How well the likely machine meets one value that was printed or measured of it. */
export interface ResidualAnswer {
  /** Where it was given: 'machine.compressor.ratings.0.capacity'. */
  readonly path: string;
  readonly label: string;
  readonly of: EvidenceQuantity;
  readonly quantity: string;
  readonly given: number;
  readonly modelled: number;
  /** Modelled over given, less 1; of a temperature the difference [K]. */
  readonly deviation: number;
  /** How far the value lies from what everything else known predicts for it, in standard deviations of that. */
  readonly score: number;
  /** True where it does not fit the rest. */
  readonly disagrees: boolean;
}

/** Correction of the model by the points nearby, and what is left in doubt of it, relative. */
export interface ModelCorrection {
  readonly correction: number;
  readonly halfWidth: number;
}

/** A limit of the machine: how far it is, and where it was read. */
export interface LimitAnswer extends LimitMargin {
  readonly stays: 'below' | 'above';
  /** `caution`: doubt begins here; `highest`: not to be passed. */
  readonly weight: 'caution' | 'highest';
  readonly source: string;
}

export interface MachineAnswer {
  /** Machines alike, each with a circuit of its own. */
  readonly count: number;
  readonly madeFor: string;
  /** What it came out of; null where nobody knows. */
  readonly appliance: string | null;
  readonly application: 'low' | 'medium' | 'high';
  /** Evaporating range of its application [K]. */
  readonly builtFor: { readonly lowest: number; readonly highest: number };
  /** Where it would run from the coldest spell to the mild day, likely dew temperatures [K]. */
  readonly wouldRunAt: {
    readonly evaporating: { readonly lowest: number; readonly highest: number };
    readonly condensing: { readonly lowest: number; readonly highest: number };
  };
  /** In the coldest spell: out of the condenser, into the motor. */
  readonly heat: BandWithUnit;
  readonly power: BandWithUnit;
  readonly current: BandWithUnit;
  /** As printed on it; null where that is not known. */
  readonly ratedCurrent: Band | null;
  readonly currentShare: BandWithUnit | null;
  /** Torque over the torque of the motor's best load. */
  readonly motorLoad: BandWithUnit;
  /** Shell, motor and pump, taken as one temperature. */
  readonly wallTemperature: BandWithUnit;
  /** The limit that is met first; the nearest of `operating.limits`. */
  readonly firstLimit: LimitMargin;
  /** Every limit known of it, beginnings of doubt and the gas that comes back among them, the nearest first. */
  readonly limits: readonly LimitAnswer[];
  readonly displacement: BandWithUnit;
  readonly residuals: readonly ResidualAnswer[];
  /** How far the model itself is off there, beside its numbers. */
  readonly doubt: {
    readonly flow: ModelCorrection;
    readonly power: ModelCorrection;
    readonly reasons: readonly ModelDoubtReason[];
  };
}
