// What the rules of caution look at: plain data, in base SI, gathered by whoever has assessed a design.
// Words are the words of the design document.

import {
  type CatalogueEntry,
  type FieldSource,
  type StudyOnlyReason,
  unconfirmedOf,
} from '../matter/refrigerants/index.ts';
import type { Band } from '../quantities/index.ts';
import type { Grounds } from './fact.ts';
import type { MachineFacts, MachineStateFacts } from './machine-facts.ts';
import type { StandingTank } from './standing-tank.ts';

/** What the catalogue says of a fluid. */
export interface CautionFluid {
  readonly name: string;
  /** Class of ISO 817 and ASHRAE 34: 'A1', 'A2L', 'A2', 'A3', 'B1', … */
  readonly safetyClass: string;
  /** Lower flammability limit [kg/m³]; null for a fluid without one. Where sources differ, the lower. */
  readonly lowerFlammabilityLimit: number | null;
  /** Practical limit of EN 378 [kg/m³]; null where unknown. */
  readonly practicalLimit: number | null;
  /** Where that limit was read; some are from memory. */
  readonly practicalLimitGrounds: Grounds;
  /** Concentration that can be breathed for a while, ATEL/ODL of EN 378 [kg/m³]; null where unknown. */
  readonly toxicityLimit: number | null;
  readonly toxicityLimitGrounds: Grounds;
  /** R11 = 1; null where unknown. */
  readonly ozoneDepletionPotential: number | null;
  /** Relative to carbon dioxide over 100 years; null where unknown. */
  readonly globalWarmingPotential: number | null;
  readonly usualOils: readonly string[];
  /** Metals of a circuit that it attacks: 'copper'; empty where nothing of the kind is known. */
  readonly metalsAttacked: readonly string[];
  /** What no source that was read confirms; empty for a fluid that is more than an object of study. */
  readonly unconfirmed: readonly StudyOnlyReason[];
}

export type OperatingMoment = 'coldestSpell' | 'usual' | 'warmestMonth';

/** Results of the loop that carry a range. */
export type RangedFact =
  | 'evaporatingTemperature'
  | 'condensingTemperature'
  | 'evaporatingPressure'
  | 'condensingPressure'
  | 'dischargeTemperature'
  | 'pressureRatio';

/** The ends of a range. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/** The loop at rest under one set of conditions; likely values, with the ranges of those that carry one. */
export interface OperatingFacts {
  readonly when: OperatingMoment;
  readonly sourceTemperature: number;
  /** Of the tank's room [K]. */
  readonly roomTemperature: number;
  /** Dew point of the source air [K]; null where it is not known. */
  readonly sourceDewPoint: number | null;
  /** Dew temperatures [K]. */
  readonly evaporatingTemperature: number;
  readonly condensingTemperature: number;
  /** Absolute pressures [Pa]. */
  readonly evaporatingPressure: number;
  readonly condensingPressure: number;
  readonly dischargeTemperature: number;
  /** Electricity of the compressor [W]. */
  readonly compressorPower: number;
  /** Heat reaching the water while the machine runs [W]. */
  readonly heatDelivered: number;
  /** Heat the tank needs [W]. */
  readonly load: number;
  /** Refrigerant round the loop [kg/s]. */
  readonly massFlow: number;
  readonly ranges: Readonly<Partial<Record<RangedFact, Span>>>;
  /** The machine itself in this state; absent where nobody asked. */
  readonly machine?: MachineStateFacts;
}

/** Where the dome was built to run; from its application or its own data sheet. */
export interface MachineLimits {
  readonly evaporating: { readonly lowest: number; readonly highest: number };
  readonly condensing: { readonly continuous: number; readonly peak: number };
  readonly discharge: { readonly caution: number; readonly highest: number };
  readonly pressureRatio: { readonly caution: number; readonly highest: number };
  /** Where these limits were read: decides nothing, is shown. */
  readonly source: string;
}

export type Enclosure =
  | { readonly kind: 'openRoom' }
  | { readonly kind: 'closedCabinet'; readonly volume: number }
  | { readonly kind: 'hood'; readonly volume: number };

/** A place below the floor near the machine. */
export type SunkenPlace =
  | { readonly kind: 'unknown' }
  | { readonly kind: 'none' }
  | { readonly kind: 'pit'; readonly volume: number };

/** Saturation pressures that parts are usually built for, and what stands in them at rest [Pa, absolute]. */
export interface PressureFacts {
  /** Of the fluid it would run on, at the design temperature of the high side; null above its critical point. */
  readonly highSide: number | null;
  /** Of the fluid its parts were built for, at the design temperatures of high and low side. */
  readonly builtHighSide: number | null;
  readonly builtLowSide: number | null;
  /** Warmest any part of the circuit stands at rest, upper end [K], and the fluid's saturation pressure there. */
  readonly warmest: number;
  readonly standing: number | null;
}

/** The machine running on with its thermostat stuck, at likely values. */
export interface StuckOn {
  readonly when: OperatingMoment;
  /** Time for the first kelvin [s]. */
  readonly timePerKelvin: number;
  /** Where the water would come to rest [K]; null where that is beyond `searchedUpTo`. */
  readonly settlesAt: number | null;
  /** Highest water temperature that was tried, or up to which the models have an answer [K]. */
  readonly searchedUpTo: number;
}

export type Region = 'europeanUnion' | 'unitedKingdom' | 'unitedStates' | 'elsewhere' | 'unknown';
export type AirPumpIntake = 'none' | 'elsewhere' | 'sameRoom' | 'besideMachine' | 'unknown';
export type LevelOverWater = 'aboveWater' | 'belowWater' | 'unknown';
export type YesNoUnknown = 'yes' | 'no' | 'unknown';
export type CondenserArrangement = 'intermediateLoop' | 'coilInTank';
export type WettedMetal = 'titanium' | 'stainless316' | 'copper' | 'cupronickel' | 'polymer' | 'unknown';
export type Livestock = 'fish' | 'invertebrates' | 'plantsOnly' | 'unknown';
export type OverTemperatureCutOut = 'independent' | 'none' | 'unknown';

export interface CautionFacts {
  /** The fluid it would run on. */
  readonly fluid: CautionFluid;
  /** Molar mass of what the circuit holds [kg/mol]. */
  readonly molarMass: number;
  /** The fluid its compressor was made for. */
  readonly madeFor: CautionFluid;
  readonly application: 'low' | 'medium' | 'high';
  readonly limits: MachineLimits;
  /**
   * Electricity the same compressor model takes at the hardest point the application allows for long: highest evaporating,
   * continuous condensing temperature [W]; null where the model gives no answer there.
   */
  readonly hardestAllowedPower: number | null;
  /** Motor, start and nameplate of the machine; absent where nobody asked. */
  readonly machine?: MachineFacts;
  /** At least one; the coldest spell should be among them. */
  readonly operating: readonly OperatingFacts[];
  readonly forFlammables: YesNoUnknown;
  /** Charge of the circuit [kg]. */
  readonly charge: Band;
  readonly enclosure: Enclosure;
  /** Volume of the tank's room, the lower end of its range [m³]. */
  readonly roomVolume: number;
  /** Smallest floor of the rooms that hold part of the circuit, as volume and height allow [m²]. */
  readonly floorArea: number;
  /** Volume of the room the heat comes from, the lower end of its range [m³]; null where that is the tank's own. */
  readonly otherRoomVolume: number | null;
  readonly sunkenPlace: SunkenPlace;
  readonly airPumpIntake: AirPumpIntake;
  readonly region: Region;
  readonly pressures: PressureFacts;
  /** Where the shell stands in the coldest spell, lower end [K]; null outdoors, which the design does not describe. */
  readonly shellSurroundings: number | null;
  /** Flow of refrigerant at the rating point usual for the application, by the same compressor model [kg/s]; null where it has no answer. */
  readonly ratedMassFlow: number | null;
  /** Null where running on would not warm the water. */
  readonly stuckOn: StuckOn | null;
  /** Surface of a refrigerant coil in the tank in the coldest spell [K], likely; null without one. */
  readonly coilSurface: number | null;
  readonly atmosphericPressure: number;
  readonly condenserArrangement: CondenserArrangement;
  readonly wettedMetal: WettedMetal;
  readonly water: 'fresh' | 'sea';
  readonly livestock: Livestock;
  readonly waterTemperature: number;
  /** Heat capacity of the water [J/K]. */
  readonly tankHeatCapacity: number;
  /** The tank apart from any machine; null where it is not asked about, as where fluids are compared. */
  readonly standing: StandingTank | null;
  readonly overTemperatureCutOut: OverTemperatureCutOut;
  readonly residualCurrentProtection: YesNoUnknown;
  readonly sockets: LevelOverWater;
  readonly dripLoops: YesNoUnknown;
  readonly machineLevel: LevelOverWater;
  readonly metalEarthed: YesNoUnknown;
}

/** What the rules read of a catalogue entry. */
export function cautionFluid(entry: CatalogueEntry): CautionFluid {
  return {
    name: entry.name,
    safetyClass: entry.safetyClass,
    lowerFlammabilityLimit: entry.lowerFlammabilityLimit,
    practicalLimit: entry.practicalLimit,
    practicalLimitGrounds: groundsOf(entry.sources.practicalLimit),
    toxicityLimit: entry.toxicityLimit,
    toxicityLimitGrounds: groundsOf(entry.sources.toxicityLimit),
    ozoneDepletionPotential: entry.ozoneDepletionPotential,
    globalWarmingPotential: entry.globalWarmingPotential.value,
    usualOils: entry.usualOils,
    metalsAttacked: entry.metalsAttacked,
    unconfirmed: unconfirmedOf(entry),
  };
}

function groundsOf({ source, confirmed }: FieldSource): Grounds {
  return { source, certainty: confirmed ? 'confirmed' : 'memory' };
}

/** Molar mass of dry air [kg/mol], ISO 2533. */
const dryAir = 0.028964;

/** Whether the vapour, once as warm as the room, sinks in it; that of ammonia rises. */
export function isHeavierThanAir({ molarMass }: Pick<CautionFacts, 'molarMass'>): boolean {
  return molarMass > dryAir;
}

/** True for every class that ISO 817 calls flammable: 2L, 2 and 3. */
export function isFlammable(fluid: CautionFluid): boolean {
  return /^[AB](2L|2|3)$/.test(fluid.safetyClass);
}

/** True for every class that ISO 817 calls of higher toxicity. */
export function isToxic(fluid: CautionFluid): boolean {
  return fluid.safetyClass.startsWith('B');
}
