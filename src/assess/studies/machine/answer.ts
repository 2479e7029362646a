// What the study of a machine answers, as plain data in base SI: how it runs over evaporating temperatures for a family of
// condensing temperatures, what would help where it is loaded too hard, how many of them the tank needs, other fluids in it, and
// what its start asks for. Sentences are made in ../../wording/machine.ts.

import type { Band, Finding } from '../../../quantities/index.ts';
import type { BandWithUnit, LimitMargin } from '../../assessment/assessment.ts';
import type { MachineAnswer } from '../../assessment/machine-answer.ts';
import type { Refusal } from '../../from-design.ts';

/** What the map tells of one running point, in the order it is told. */
const mapQuantities = ['heat', 'power', 'cop', 'current', 'dischargeTemperature', 'massFlow', 'motorLoad'] as const;

/** heat [W] out of the condenser, power [W], cop [-], current [A], dischargeTemperature [K], massFlow [kg/s], motorLoad [-]. */
export type MapQuantity = (typeof mapQuantities)[number];

/** One running point of the map. */
export interface MapPoint {
  /** Dew temperature [K]. */
  readonly evaporating: number;
  /** Null where the machine has no running point there. */
  readonly values: Readonly<Record<MapQuantity, Band>> | null;
  /** Why there is none; null where there is one. */
  readonly reason: string | null;
  /** True inside what was measured or printed of the machine. */
  readonly insideData: boolean;
  /** Names of the limits of `limits` that are passed here, likely values. */
  readonly passed: readonly string[];
}

/** The machine at one condensing temperature. */
export interface MapFamily {
  /** Dew temperature [K]. */
  readonly condensing: number;
  /** By rising evaporating temperature, the same ones in every family. */
  readonly points: readonly MapPoint[];
}

/** What holds over the whole map; likely values. */
export interface MapBasis {
  readonly refrigerant: string;
  /** Gas above the evaporating dew temperature, liquid below the condensing bubble temperature [K]. */
  readonly superheat: number;
  readonly subcooling: number;
  /** Air around the shell [K]. */
  readonly surroundings: number;
  readonly frequency: number;
  readonly voltage: number;
}

/** A limit as the map can show it: the machine may not be beyond the bound. */
export interface MapLimit {
  /** 'evaporatingHighest', 'condensingContinuous', 'dischargeHighest', … */
  readonly limit: string;
  readonly label: string;
  /** What the bound is of: the name of a quantity. */
  readonly quantity: string;
  readonly bound: number;
  readonly source: string;
  /**
   * Where the map is hatched: evaporating temperatures beyond which the limit is passed at that condensing temperature [K]. An
   * edge is null where the map is within the limit, 'all' where all of it is beyond.
   */
  readonly edges: readonly {
    readonly condensing: number;
    readonly beyond: 'above' | 'below';
    readonly at: number | 'all' | null;
  }[];
}

/** Where the motor would trip as the evaporating temperature rises, likely values. */
export interface MapTrip {
  readonly condensing: number;
  /** Lowest evaporating temperature at which it happens [K]; null where none was found up to `searchedUpTo`. */
  readonly evaporating: number | null;
  /** Load above what its application asks of it, current above what it bears for long, or the motor stalls. */
  readonly by: 'motorLoad' | 'current' | 'stall' | null;
  /** Null where the machine has no running point to search from. */
  readonly searchedUpTo: number | null;
}

/** Where the loop of the design settles, on the map; likely values [K]. */
export interface MapMark {
  /** The mild day is the warmest month in which the machine still has something to do. */
  readonly when: 'coldestSpell' | 'mildDay';
  readonly evaporating: number;
  readonly condensing: number;
  readonly sourceTemperature: number;
  readonly values: Readonly<Record<MapQuantity, Band>>;
  readonly passed: readonly string[];
}

/** The numbers of a remedy, before and after it; likely values. */
export interface RemedyState {
  /** Dew temperatures of the exchangers, and pressure at the inlet of the shell. */
  readonly evaporating: number;
  readonly condensing: number;
  readonly suctionPressure: number;
  /** Heat out of the condenser while it runs, and averaged over the time [W]. */
  readonly heat: number;
  readonly meanHeat: number;
  readonly power: number;
  readonly meanPower: number;
  readonly current: number;
  /** Over the rated current, which goes with the size of a smaller machine; null where none is known. */
  readonly currentShare: number | null;
  /** Torque over the torque of the motor's best load. */
  readonly motorLoad: number;
  readonly dischargeTemperature: number;
  /** Share of the time it runs. */
  readonly share: number;
  readonly passed: readonly string[];
}

const remedyNames = ['suctionPressureLimit', 'lowerCondensing', 'smallerMachine', 'intermittent'] as const;

export type RemedyName = (typeof remedyNames)[number];

/** One remedy, simulated at the state of the year in which the motor is loaded most. */
export interface Remedy {
  readonly name: RemedyName;
  readonly when: MapMark['when'];
  /** What is set: the pressure of the valve [Pa], the condensing temperature [K], the size over the present one, the share of the time. */
  readonly setting: { readonly value: number; readonly quantity: string };
  readonly before: RemedyState;
  /** Null where it changes nothing or cannot be: `reason` says why. */
  readonly after: RemedyState | null;
  readonly reason: RemedyReason | null;
  /** Limits passed before and no longer after. */
  readonly cures: readonly string[];
}

export type RemedyReason =
  /** The inlet is below that pressure anyway. */
  | 'belowLimitAnyway'
  /** A smaller machine would no longer carry the tank in the coldest spell. */
  | 'wouldFallShort'
  /** The machine has to run all the time, so it has no time to rest. */
  | 'noTimeToRest'
  /** The tank needs no heat then. */
  | 'noHeatNeeded'
  /** The machine has no running point with it. */
  | 'noRunningPoint';

/** A number of machines of this kind, each with a circuit of its own. */
export interface CountRow {
  readonly machines: number;
  /** Heat reaching the water with all of them running [W]. */
  readonly coldestSpell: BandWithUnit;
  readonly mildDay: BandWithUnit | null;
  /** Electricity of all of them with fan, pump and controls [W]. */
  readonly power: BandWithUnit;
  /** Share of the time all of them run in the coldest spell, 1: they cannot stop; likely. */
  readonly share: number;
  readonly carries: Carries;
  /** What is left in the coldest spell when one of them fails. */
  readonly withoutOne: { readonly heat: BandWithUnit; readonly carries: Carries };
  /** Highest current of their compressors while they start [A]; null where the plate tells neither locked-rotor nor rated current. */
  readonly starting: { readonly oneAfterAnother: BandWithUnit; readonly allAtOnce: BandWithUnit } | null;
}

/** Whether heat carries the load, by their ranges. */
export type Carries = 'yes' | 'perhaps' | 'no';

export interface StagedMonth {
  readonly month: string;
  /** Mean heat the tank needs [W] and heat of one machine [W]; null where it has no running point. */
  readonly load: number;
  readonly heatOfOne: number | null;
  /** Machines that must run at the same time, the last of them a share of the time; null where one gives no heat. */
  readonly running: number | null;
  /** Share of the time the last of them runs. */
  readonly shareOfLast: number | null;
}

export interface HowMany {
  /** Whole numbers for the load of the coldest spell; null where no number of them would do. */
  readonly needed: { readonly low: number | null; readonly likely: number | null; readonly high: number | null };
  /** As the design plans it. */
  readonly planned: number;
  readonly load: BandWithUnit;
  readonly rows: readonly CountRow[];
  /** How many run in each month, likely values, with the number that is likely needed. */
  readonly months: readonly StagedMonth[];
  /** Refrigerant in each circuit [kg]; the circuits stay apart, so that more machines make no circuit larger. */
  readonly chargePerCircuit: Band;
  readonly chargeOfAll: Band;
}

/** A sourced word on oil or materials of another fluid in this machine. */
export interface CompatibilityFact {
  readonly suits: 'yes' | 'no' | 'unknown';
  readonly words: string;
  readonly source: string;
}

/** The same machine with another fluid in it at the coldest spell, for study only unless it is the one it was made for. */
export interface OtherFluid {
  readonly fluid: string;
  readonly safetyClass: string;
  readonly isMadeFor: boolean;
  readonly forStudyOnly: boolean;
  /** Everything that says not to; empty for the fluid of the machine in equipment made for it. */
  readonly stops: readonly Finding[];
  readonly oil: CompatibilityFact;
  readonly materials: CompatibilityFact;
  readonly point:
    | {
        readonly ok: true;
        readonly capacity: BandWithUnit;
        readonly heat: BandWithUnit;
        readonly power: BandWithUnit;
        readonly cop: BandWithUnit;
        readonly current: BandWithUnit;
        readonly motorLoad: BandWithUnit;
        readonly dischargeTemperature: BandWithUnit;
        readonly massFlow: BandWithUnit;
        readonly evaporatingPressure: BandWithUnit;
        readonly condensingPressure: BandWithUnit;
        readonly pressureRatio: BandWithUnit;
        readonly passed: readonly string[];
        /** Why the band is as wide as it is: 'otherFluid', 'noPoints', … */
        readonly doubt: readonly string[];
      }
    | { readonly ok: false; readonly code: string; readonly message: string };
}

/** One fact about starting, with where it is from. */
export interface StartingFact {
  /** 'equalisation', 'minimumOffTime', 'lowTorqueStart', 'migration', 'floodedStart', 'crankcaseHeater', … */
  readonly name: string;
  readonly label: string;
  /** A number with its range, where there is one. */
  readonly band: (Band & { readonly quantity: string }) | null;
  readonly words: string;
  readonly source: string;
}

/** The plain sentence in pieces: "Built for …, you would run it at …: expect between … and … W of heat from … W …". One machine. */
export interface MachineSentence
  extends Pick<MachineAnswer, 'count' | 'madeFor' | 'application' | 'builtFor' | 'wouldRunAt'> {
  readonly refrigerant: string;
  /** In the coldest spell. */
  readonly heat: Band;
  readonly power: Band;
  readonly current: Band;
  /** Of the rated current; null where that is not known. */
  readonly currentShare: Band | null;
  /** The limit nearest to it over the year. */
  readonly firstLimit: LimitMargin & { readonly when: MapMark['when'] };
}

export interface MachineStudy {
  readonly machineVersion: 1;
  readonly caution: string;
  readonly designName: string;
  readonly sentence: MachineSentence;
  readonly basis: MapBasis;
  readonly map: readonly MapFamily[];
  readonly limits: readonly MapLimit[];
  /** One for each condensing temperature of the map. */
  readonly trips: readonly MapTrip[];
  /** The mild day is absent where the machine has nothing to do in any month. */
  readonly marks: readonly MapMark[];
  readonly remedies: readonly Remedy[];
  readonly howMany: HowMany;
  /** The fluid it was made for first. */
  readonly otherFluids: readonly OtherFluid[];
  readonly starting: readonly StartingFact[];
  readonly findings: readonly Finding[];
}

/** A study, or why there is none. */
export type MachineOutcome = { readonly ok: true; readonly study: MachineStudy } | Refusal;
