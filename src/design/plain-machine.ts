// The machine of a design beside its document, for any kind of number: its compressor by whatever is known of it, the mains
// that feed it. A value that may stay open without a default is absent.

import type { Oil } from '../matter/refrigerants/index.ts';
import type { HermeticParameter, StartType } from '../parts/compressor/index.ts';

export type StartTypeName = StartType;
export type OilName = 'unknown' | Oil;

/** From where to where something holds, in base SI or in years: no doubt about one value, so it is never varied. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Mains: frequency [Hz] and voltage [V]. */
export interface SupplyOf<Q> {
  readonly frequency: Q;
  readonly voltage: Q;
}

/** What is printed on the dome. Frequency and voltage are taken from the mains where they are not known. */
export interface NameplateOf<Q> extends SupplyOf<Q> {
  readonly ratedCurrent?: Q;
  readonly lockedRotorCurrent?: Q;
  readonly power?: Q;
  /** As printed: a name, never converted to watts. */
  readonly horsepower?: string;
}

/** The gas that comes back, under which points are stated. */
export type SuctionBasisOf<Q> =
  | { readonly kind: 'superheat'; readonly superheat: Q }
  | { readonly kind: 'returnGas'; readonly returnGas: Q };

/** The liquid before the valve, without which a capacity is no flow. */
export type LiquidBasisOf<Q> =
  | { readonly kind: 'subcooling'; readonly subcooling: Q }
  | { readonly kind: 'temperature'; readonly temperature: Q };

/** One stated running point. */
export interface RatingOf<Q> extends SupplyOf<Q> {
  readonly at:
    | { readonly kind: 'named'; readonly point: string }
    | {
        readonly kind: 'conditions';
        readonly evaporating: Q;
        readonly condensing: Q;
        readonly returnGas: Q;
        readonly liquid: Q;
      };
  readonly capacity?: Q;
  readonly power?: Q;
  readonly current?: Q;
}

/** What the saturation temperatures of a blend mean. */
export type SaturationName = 'dew' | 'midPoint';

export type CoefficientQuantityName = 'massFlow' | 'capacity' | 'power' | 'current';

/** Ten coefficients of one quantity, in the units of their sheet. */
export interface CoefficientSetOf<Q> extends SupplyOf<Q> {
  readonly of: CoefficientQuantityName;
  /** C1 to C10. */
  readonly values: readonly number[];
  readonly temperatureUnit: 'celsius' | 'fahrenheit';
  /** As people write it: 'kg/h', 'lb/h', 'W', 'BTU/h', 'A'. */
  readonly unit: string;
  /** Only a capacity needs the liquid. */
  readonly basis: {
    readonly suction: SuctionBasisOf<Q>;
    readonly liquid?: LiquidBasisOf<Q>;
    readonly saturation: SaturationName;
  };
  /** Saturation temperatures between which the set holds [K]. */
  readonly evaporatingRange: Span;
  readonly condensingRange: Span;
}

/** Points of one sheet or stand, as they were pasted. */
export interface PointTableOf<Q> extends SupplyOf<Q> {
  readonly table: string;
  /** What holds for the columns that the table lacks. */
  readonly basis: {
    readonly suction?: SuctionBasisOf<Q>;
    readonly liquid?: LiquidBasisOf<Q>;
    readonly saturation: SaturationName;
  };
  /** How far all its flows and capacities, all its powers and currents may be off together: relative, half width. */
  readonly flowTolerance: Q;
  readonly powerTolerance: Q;
}

/** One state measured with a meter in the socket and thermometers on the pipes; pipe temperatures as they were read. */
export interface BenchOf<Q> extends SupplyOf<Q> {
  readonly evaporating: Q;
  readonly condensing: Q;
  readonly suction: Q;
  readonly discharge?: Q;
  readonly liquid: Q;
  readonly surroundings: Q;
  readonly meter:
    | { readonly kind: 'watts'; readonly power: Q }
    | { readonly kind: 'ampsAndVolts'; readonly current: Q; readonly powerFactor: Q };
}

/**
 * A compressor by whatever is known of it. The fourteen numbers of the machine are ranges before any point was looked at:
 * typed, or those of such machines.
 */
export type CompressorOf<Q> = Readonly<Record<HermeticParameter, Q>> & {
  readonly madeFor: string;
  /** Absent where nobody knows what it came out of. */
  readonly appliance?: string;
  /** Calendar years it may have been made in. */
  readonly years?: Span;
  readonly startType: StartTypeName;
  readonly oil: OilName;
  readonly nameplate: NameplateOf<Q>;
  readonly ratings: readonly RatingOf<Q>[];
  readonly coefficients: readonly CoefficientSetOf<Q>[];
  readonly tables: readonly PointTableOf<Q>[];
  readonly bench: readonly BenchOf<Q>[];
};
