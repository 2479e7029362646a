// The Assessment: everything Kettlefin says about one design, as plain data in base SI.
// The command line prints it, `--json` serialises it, the workbench draws it. No sentence is made here but `sentence`,
// which the edge that asked for it has chosen the unit view of.

import type { Band, Finding, WorkingStep } from '../quantities/index.ts';

/** The first that applies, judged at the coldest spell. */
export type Standing = 'doNotBuild' | 'fallsShort' | 'uncertain' | 'notWorthIt' | 'carriesLoad';

/** A band with the SI unit it is in, as `--json` gives it. */
export interface BandWithUnit extends Band {
  readonly unit: string;
  /** Name of this result; a step of `workings` of the same name shows how it was computed. */
  readonly result: string;
}

/** One way heat leaves the tank. */
export interface LossPath {
  /** 'evaporation', 'surfaceConvection', 'surfaceRadiation', 'lid', 'front', 'back', 'sides', 'bottom', 'wallsAndSurface', … */
  readonly path: string;
  readonly label: string;
  readonly kind: 'sensible' | 'latent';
  readonly heat: BandWithUnit;
}

export interface TankAnswer {
  readonly waterTemperature: number;
  readonly roomTemperature: number;
  readonly paths: readonly LossPath[];
  readonly loss: BandWithUnit;
  readonly gains: { readonly pump: number; readonly light: number };
  /** Net heating needed at the coldest spell; what the machine must carry. */
  readonly load: BandWithUnit;
  /** Water that evaporates [kg/s]. */
  readonly evaporation: BandWithUnit;
  readonly heatCapacity: number;
  /** Time for the water to fall 1 K with no heat at the coldest spell [s]; null where it needs no heat. */
  readonly timePerKelvin: number | null;
}

/** One state point of the loop, likely values. */
export interface LoopPoint {
  readonly name: string;
  readonly temperature: number;
  readonly pressure: number;
  readonly enthalpy: number;
  readonly entropy: number;
  readonly density: number;
  readonly quality: number | null;
}

/** How far the operating point is from one limit of the machine, at the coldest spell. */
export interface LimitMargin {
  /** 'evaporatingHighest', 'evaporatingLowest', 'condensingContinuous', 'dischargeHighest', 'pressureRatioHighest', … */
  readonly limit: string;
  readonly label: string;
  readonly quantity: string;
  readonly value: number;
  readonly bound: number;
  /** Distance left, in the quantity's own difference (K, or ratio); negative once passed. */
  readonly margin: number;
  readonly passed: boolean;
}

export interface OperatingAnswer {
  readonly refrigerant: string;
  readonly sourceTemperature: number;
  readonly waterTemperature: number;
  /** Air pressure of the place, from which gauge pressures count. */
  readonly atmosphericPressure: BandWithUnit;
  readonly evaporatingTemperature: BandWithUnit;
  readonly condensingTemperature: BandWithUnit;
  readonly evaporatingPressure: BandWithUnit;
  readonly condensingPressure: BandWithUnit;
  readonly dischargeTemperature: BandWithUnit;
  readonly pressureRatio: BandWithUnit;
  readonly massFlow: BandWithUnit;
  readonly volumetricEfficiency: BandWithUnit;
  readonly overallEfficiency: BandWithUnit;
  readonly points: readonly LoopPoint[];
  /** Every limit of the machine with its margin, the one met first (smallest margin) at the front. */
  readonly limits: readonly LimitMargin[];
}

/** The loop at rest under one set of conditions, likely values in base SI. */
export interface OperatingMomentAnswer {
  /** The warmest month is the one in which the machine still has something to do. */
  readonly when: 'coldestSpell' | 'usual' | 'warmestMonth';
  readonly sourceTemperature: number;
  /** Dew temperatures. */
  readonly evaporatingTemperature: number;
  readonly condensingTemperature: number;
  /** Absolute pressures. */
  readonly evaporatingPressure: number;
  readonly condensingPressure: number;
  readonly dischargeTemperature: number;
  readonly compressorPower: number;
  /** Heat that reaches the water while the machine runs. */
  readonly heatDelivered: number;
  /** Heat the tank needs. */
  readonly load: number;
}

/** The size that the assumed approach temperatures imply. */
export interface SizingAnswer {
  readonly condenser: {
    readonly approach: number;
    readonly coilLength: BandWithUnit;
    readonly coilArea: BandWithUnit;
    readonly tubeDiameter: number;
    readonly leavesOut: string;
  };
  readonly evaporator: {
    readonly approach: number;
    readonly faceArea: BandWithUnit;
    readonly airFlow: BandWithUnit;
    readonly leavesOut: string;
  };
}

/** Heat and electricity of the coldest spell with the machine running, for the heat path [W, likely]. */
export interface HeatFlows {
  readonly heatTaken: number;
  readonly compressorPower: number;
  readonly fanPower: number;
  readonly loopPumpPower: number;
  readonly controlsPower: number;
  readonly shellHeat: number;
  /** Heat that reaches the tank water from the machine while it runs. */
  readonly delivered: number;
  /** Share of the time the machine would run; 1 means it cannot stop. */
  readonly runFraction: number;
  /** Resistance heat that would be needed on top. */
  readonly backup: number;
  readonly paths: readonly { readonly path: string; readonly label: string; readonly heat: number }[];
}

export interface MonthAnswer {
  readonly month: string;
  readonly roomTemperature: number;
  readonly sourceTemperature: number;
  /** All energies in J for the month. */
  readonly heatNeeded: number;
  readonly heatDelivered: number;
  readonly electricity: number;
  readonly backup: number;
  readonly runFraction: number;
  readonly heatTaken: number;
  /** Net sensible heat into the tank's room; negative is heat taken out of it. */
  readonly roomHeat: number;
  /** Share of the month in which the room is heated. */
  readonly heated: number;
}

/** One complete account, tank and room, for a year. */
export interface ScenarioAccount {
  readonly scenario: 'plainHeater' | 'thisLoop' | 'certifiedHeatPump';
  readonly label: string;
  readonly electricity: BandWithUnit;
  readonly electricityCost: BandWithUnit;
  /** Positive: heat given to the room in heated months, worth money. Negative: heat taken from it. */
  readonly roomHeat: BandWithUnit;
  readonly roomCredit: BandWithUnit;
  /** Cost of cooling the room in summer; zero unless the room is cooled, negative where the scenario cools it itself. */
  readonly coolingCost: BandWithUnit;
  /** Electricity minus room credit plus cooling cost, per year. */
  readonly runningCost: BandWithUnit;
  readonly purchase: number;
  /** Running plus purchase spread over its life, per year. */
  readonly lifeCostPerYear: BandWithUnit;
}

/** How far one uncertain input alone moves the verdict's margin (heat delivered minus load) [W]. */
export interface Influence {
  readonly path: string;
  readonly label: string;
  readonly marginAtLow: number;
  readonly marginAtHigh: number;
  /** Share of the variance of the margin, 0 to 1. */
  readonly share: number;
  /** How one could find out, in words; never an instruction for work that needs a licensed person. */
  readonly measure: string;
}

/** A value the person did not give. */
export interface AssumptionLeft {
  readonly path: string;
  readonly label: string;
  readonly quantity: string;
  /** A band of numbers in SI, or the word assumed. */
  readonly value: Band | string;
  readonly source: string;
  readonly level: 'first' | 'more' | 'expert';
}

export interface Assessment {
  readonly assessmentVersion: 1;
  readonly caution: string;
  readonly designName: string;
  readonly standing: Standing;
  readonly sentence: string;
  readonly tankLoad: BandWithUnit;
  readonly heatDelivered: BandWithUnit;
  readonly compressorPower: BandWithUnit;
  readonly systemPower: BandWithUnit;
  readonly compressorCop: BandWithUnit;
  readonly systemCop: BandWithUnit;
  /** Null where no month needs heat, or none uses electricity. */
  readonly seasonCop: BandWithUnit | null;
  readonly tank: TankAnswer;
  readonly operating: OperatingAnswer;
  /** The coldest spell, and as far as the machine has an operating point there the usual winter and the warmest month. */
  readonly operatingRange: readonly OperatingMomentAnswer[];
  readonly sizing: SizingAnswer;
  readonly flows: HeatFlows;
  readonly year: readonly MonthAnswer[];
  readonly accounts: readonly ScenarioAccount[];
  readonly currency: string;
  readonly influences: readonly Influence[];
  readonly assumptions: readonly AssumptionLeft[];
  /** Machine limits and model doubts. */
  readonly findings: readonly Finding[];
  /** Person, livestock and house. */
  readonly cautions: readonly Finding[];
  readonly workings: readonly WorkingStep[];
}
