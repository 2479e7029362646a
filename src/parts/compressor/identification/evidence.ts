// What is known of a machine, as the identification reads it: ranges of its numbers before anything was measured, and points
// that were printed or measured, each with its own doubt. Base SI; who described the machine how is the caller's affair.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import type { HermeticParameter, Supply } from '../hermetic/parameters.ts';

/** What may be known of one running point. */
export const evidenceQuantities = ['massFlow', 'capacity', 'power', 'current', 'dischargeTemperature'] as const;

export type EvidenceQuantity = (typeof evidenceQuantities)[number];

/** One running point, printed or measured. Temperatures in K; saturation temperatures are dew temperatures. */
export interface EvidencePoint {
  /** Where it stands: 'machine.compressor.ratings.0'. */
  readonly path: string;
  readonly label: string;
  readonly evaporating: number;
  readonly condensing: number;
  /** Gas at the inlet of the shell. */
  readonly returnGas: number;
  /** Liquid before the valve; decides what flow a capacity stands for. */
  readonly liquid: number;
  /** Of the air around the shell. */
  readonly surroundings: number;
  readonly supply: Supply;
  /** kg/s, W, W, A, K; the ends are the doubt of this one value apart from that of its whole series. */
  readonly given: Readonly<Partial<Record<EvidenceQuantity, Estimate>>>;
  /** Path of the series it belongs to; absent for a point that stands alone. */
  readonly series?: string;
  /** Its temperatures were not stated with its values but are usual for such machines. */
  readonly isSupposed?: true;
}

/** Points from one stand or one sheet: a common error moves all of them alike. */
export interface EvidenceSeries {
  readonly path: string;
  readonly label: string;
  /** Factors about 1 on flow and capacity, on power and current. */
  readonly flowFactor: Estimate;
  readonly powerFactor: Estimate;
}

export interface MachineDescription {
  /** The fluid its points are of. */
  readonly fluid: Refrigerant;
  readonly ratedSupply: Supply;
  /** Range of each number before the points are looked at: of its class, or typed. Paths name the inputs. */
  readonly prior: Readonly<Record<HermeticParameter, PriorRange>>;
  readonly points: readonly EvidencePoint[];
  readonly series: readonly EvidenceSeries[];
}

export interface PriorRange {
  /** 'machine.compressor.clearanceRatio' */
  readonly path: string;
  readonly label: string;
  readonly estimate: Estimate;
}
