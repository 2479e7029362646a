// The three faces of a design beside its document: resolved (every number an estimate), plain (every number a number in
// base SI, as the stages read it), and the list of uncertain inputs. One tree, written once, for any kind of number.

import { InputError } from '../numerics/index.ts';
import type { Estimate, QuantityName } from '../quantities/index.ts';
import type { MonthName } from '../surroundings/index.ts';
import type { CompressorOf, SupplyOf } from './plain-machine.ts';
import type { LoadOf, WrappingMeasureOf } from './plain-tank.ts';
import type { Level } from './schema/field.ts';

export type YesNo = 'yes' | 'no';
export type YesNoUnknown = 'yes' | 'no' | 'unknown';
export type Region = 'europeanUnion' | 'unitedKingdom' | 'unitedStates' | 'elsewhere' | 'unknown';
export type ApplicationName = 'low' | 'medium' | 'high';

export interface DesignOf<Q> {
  readonly name: string;
  readonly place: {
    readonly altitude: Q;
    readonly region: Region;
    /** Air outdoors: mean of the coldest month, coldest spell, mean at the height of summer, wind. */
    readonly outdoors: { readonly winter: Q; readonly coldest: Q; readonly summer: Q; readonly windSpeed: Q };
    /** Water of the main in the coldest month and at the height of summer. */
    readonly mains: { readonly winter: Q; readonly summer: Q };
  };
  readonly room: {
    readonly temperature: Q;
    readonly coldest: Q;
    readonly warmest: Q;
    readonly relativeHumidity: Q;
    readonly moisture:
      | { readonly kind: 'humidityKnown' }
      /** Air changes with outdoors [1/s], and the relative humidity there. */
      | { readonly kind: 'ventilated'; readonly airChanges: Q; readonly outdoorHumidity: Q }
      /** Electricity for the water taken out of the air [J/kg]. */
      | { readonly kind: 'dehumidifier'; readonly energyPerLitre: Q };
    readonly volume: Q;
    readonly height: Q;
    readonly monthsHeated: Q;
    readonly coldestMonth: MonthName;
    readonly houseHeatPrice: Q;
    readonly cooledInSummer: YesNo;
  };
  readonly tank: {
    readonly waterTemperature: Q;
    readonly water: 'fresh' | 'sea';
    readonly salinity: Q;
    readonly livestock: 'fish' | 'invertebrates' | 'plantsOnly' | 'unknown';
    readonly load: LoadOf<Q>;
  };
  /** `measures` is absent where none were listed: then the usual ones that apply are offered. */
  readonly wrapping: { readonly measures?: readonly WrappingMeasureOf<Q>[]; readonly years: Q };
  readonly source:
    | { readonly kind: 'roomAir' }
    | {
        readonly kind: 'otherRoom';
        readonly temperature: Q;
        readonly coldest: Q;
        readonly warmest: Q;
        readonly volume: Q;
      };
  readonly machine: {
    readonly refrigerant: string;
    readonly compressor: CompressorOf<Q>;
    /** How many such machines there are, all alike. */
    readonly count: Q;
    /** The mains here. */
    readonly supply: SupplyOf<Q>;
    readonly application: ApplicationName;
    readonly shellPlace: 'tankRoom' | 'sourceRoom' | 'outdoors';
    readonly enclosure:
      | { readonly kind: 'openRoom' }
      | { readonly kind: 'closedCabinet'; readonly volume: Q }
      | { readonly kind: 'hood'; readonly volume: Q };
    readonly sunkenPlace:
      | { readonly kind: 'unknown' }
      | { readonly kind: 'none' }
      | { readonly kind: 'pit'; readonly volume: Q };
    readonly charge: Q;
    readonly forFlammables: YesNoUnknown;
  };
  readonly exchangers: {
    readonly evaporatorApproach: Q;
    readonly condenserApproach: Q;
    readonly condenserArrangement: 'intermediateLoop' | 'coilInTank';
    readonly wettedMetal: 'titanium' | 'stainless316' | 'copper' | 'cupronickel' | 'polymer' | 'unknown';
    readonly tubeDiameter: Q;
    readonly superheat: Q;
    readonly subcooling: Q;
    readonly airSpeed: Q;
    /** Pressure that a valve before the compressor lets through at most [Pa, absolute]; absent where there is no such valve. */
    readonly suctionPressureLimit?: Q;
  };
  readonly power: {
    readonly fan: Q;
    readonly loopPump: Q;
    readonly controls: Q;
    readonly crankcaseHeater: Q;
  };
  readonly safeguards: {
    readonly overTemperatureCutOut: 'independent' | 'none' | 'unknown';
    readonly residualCurrentProtection: YesNoUnknown;
    readonly airPumpIntake: 'none' | 'elsewhere' | 'sameRoom' | 'besideMachine' | 'unknown';
    readonly sockets: 'aboveWater' | 'belowWater' | 'unknown';
    readonly dripLoops: YesNoUnknown;
    readonly machineLevel: 'aboveWater' | 'belowWater' | 'unknown';
    readonly metalEarthed: YesNoUnknown;
  };
  readonly prices: {
    readonly currency: string;
    readonly electricity: Q;
    readonly loopParts: Q;
    readonly heater: Q;
    readonly certifiedHeatPump: Q;
    readonly certifiedCop: Q;
    readonly life: Q;
    readonly discountRate: Q;
  };
}

/** Every quantity an estimate: typed, or assumed. */
export type ResolvedDesign = DesignOf<Estimate>;

/** Every quantity a number in base SI: prices per joule, durations in seconds, shares from 0 to 1. */
export type PlainDesign = DesignOf<number>;

/** A value the person did not give. */
export type Assumption = {
  readonly path: string;
  readonly label: string;
  readonly source: string;
  readonly level: Level;
} & (
  | {
      readonly kind: 'quantity';
      readonly quantity: QuantityName;
      readonly estimate: Estimate;
      readonly choice?: undefined;
    }
  | {
      readonly kind: 'choice';
      readonly choice: string;
      readonly choiceLabel: string;
      readonly quantity?: undefined;
      readonly estimate?: undefined;
    }
);

/** The design at its likely values. */
export function plainDesign(resolved: ResolvedDesign): PlainDesign {
  return mapEstimates(resolved, '', (_, estimate) => estimate.likely) as PlainDesign;
}

/** All estimates with their paths, in the order of the document. */
export function estimatesIn(
  resolved: ResolvedDesign,
): readonly { readonly path: string; readonly estimate: Estimate }[] {
  const found: { path: string; estimate: Estimate }[] = [];
  mapEstimates(resolved, '', (path, estimate) => {
    found.push({ path, estimate });
    return estimate.likely;
  });
  return found;
}

/**
 * The same design with one number changed; everything beside the path to it is shared, not copied.
 * @throws InputError 'unknownPath' where no number stands at the path, InputError where the value is not finite
 */
export function withValue(plain: PlainDesign, path: string, value: number): PlainDesign {
  if (!Number.isFinite(value)) throw new InputError(path, value, 'a finite number');
  return replaced(plain, path.split('.'), path, value) as PlainDesign;
}

function replaced(node: unknown, keys: readonly string[], path: string, value: number): unknown {
  const [key, ...rest] = keys;
  const isParent = typeof node === 'object' && node !== null && key !== undefined && Object.hasOwn(node, key);
  if (!isParent) throw new InputError('path', path, 'the path of a number in the design', 'unknownPath');
  const children = node as Readonly<Record<string, unknown>>;
  if (rest.length === 0 && typeof children[key] !== 'number') {
    throw new InputError('path', path, 'the path of a number in the design', 'unknownPath');
  }
  const child = rest.length === 0 ? value : replaced(children[key], rest, path, value);
  return Array.isArray(node) ? node.with(Number(key), child) : { ...children, [key]: child };
}

function mapEstimates(node: unknown, path: string, change: (path: string, estimate: Estimate) => number): unknown {
  if (typeof node !== 'object' || node === null) return node;
  if (isEstimate(node)) return change(path, node);
  if (Array.isArray(node)) return node.map((child, index) => mapEstimates(child, `${path}.${index}`, change));
  return Object.fromEntries(
    Object.entries(node).map(([key, child]) => [
      key,
      mapEstimates(child, path === '' ? key : `${path}.${key}`, change),
    ]),
  );
}

function isEstimate(node: object): node is Estimate {
  return 'low' in node && 'likely' in node && 'high' in node;
}
