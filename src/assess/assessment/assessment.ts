// The Assessment: everything Kettlefin says about one design, as plain data in base SI.
// The command line prints it, `--json` serialises it, the workbench draws it. No sentence is made here but `sentence`,
// which the edge that asked for it has chosen the unit view of.

import type { Band, Certainty, Finding, WorkingStep } from '../../quantities/index.ts';
import type { MachineAnswer } from './machine-answer.ts';
import type { TankAnswer } from './tank-answer.ts';

/** The first that applies, judged at the coldest spell. */
export type Standing = 'doNotBuild' | 'fallsShort' | 'uncertain' | 'notWorthIt' | 'carriesLoad';

/** What can be said of heat delivered against heat needed, whatever it costs. */
export type LoadStanding = Extract<Standing, 'fallsShort' | 'uncertain' | 'carriesLoad'>;

/** A band with the SI unit it is in, as `--json` gives it. */
export interface BandWithUnit extends Band {
  readonly unit: string;
  /** Name of this result; a step of `workings` of the same name shows how it was computed. */
  readonly result: string;
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

/** What limits are numbers of. */
export type LimitQuantity = 'temperature' | 'ratio' | 'pressure' | 'current' | 'fraction' | 'temperatureDifference';

/** How far the operating point is from one limit of the machine, at the coldest spell. */
export interface LimitMargin {
  /** 'evaporatingHighest', 'evaporatingLowest', 'condensingContinuous', 'dischargeHighest', 'pressureRatioHighest', … */
  readonly limit: string;
  readonly label: string;
  /** What value and bound are numbers of. */
  readonly quantity: LimitQuantity;
  readonly value: number;
  readonly bound: number;
  /** Distance left, in the quantity's own difference (K, Pa, A, or ratio); negative once passed. */
  readonly margin: number;
  readonly passed: boolean;
}

/** Of a blend: bubble temperatures at the two pressures of the loop, and the glides up to the dew temperatures there. */
export interface BlendAnswer {
  readonly evaporatingBubbleTemperature: BandWithUnit;
  readonly evaporatingGlide: BandWithUnit;
  readonly condensingBubbleTemperature: BandWithUnit;
  readonly condensingGlide: BandWithUnit;
}

/** Where the loop of one machine settles. */
export interface OperatingAnswer {
  readonly refrigerant: string;
  readonly sourceTemperature: number;
  readonly waterTemperature: number;
  /** Air pressure of the place, from which gauge pressures count. */
  readonly atmosphericPressure: BandWithUnit;
  /** Dew temperatures. */
  readonly evaporatingTemperature: BandWithUnit;
  readonly condensingTemperature: BandWithUnit;
  /** Null for a single substance, which boils and condenses at one temperature. */
  readonly blend: BlendAnswer | null;
  readonly evaporatingPressure: BandWithUnit;
  readonly condensingPressure: BandWithUnit;
  readonly dischargeTemperature: BandWithUnit;
  readonly pressureRatio: BandWithUnit;
  readonly massFlow: BandWithUnit;
  readonly volumetricEfficiency: BandWithUnit;
  readonly overallEfficiency: BandWithUnit;
  /** Heat that the compressor's shell gives off while it runs. */
  readonly shellHeat: BandWithUnit;
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

/** The size that the assumed approach temperatures imply, for one machine. */
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

/** Heat and electricity of the coldest spell with all machines running, for the heat path [W, likely]. */
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
  /** Ranges of what the heat path shows: means over the spell, the machine running its share of the time. */
  readonly ranges: {
    readonly heatTaken: Band;
    /** All from the wall socket: machine, backup heater, and what pumps and lights give the water. */
    readonly electricity: Band;
    readonly delivered: Band;
    readonly backup: Band;
  };
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
  /** Heat that leaves the tank as vapour [J]; it warms nothing that anyone is credited for. */
  readonly vapourHeat: number;
}

/** One month of one account: the same lines, likely values; they add up to the year's. */
export interface MonthOfAccount {
  readonly month: string;
  /** Share of the month in which the room is heated. */
  readonly heated: number;
  readonly electricity: number;
  readonly electricityCost: number;
  /** Net sensible heat into the room while it is heated [J]; negative is heat taken from it. */
  readonly roomHeat: number;
  readonly roomCredit: number;
  readonly coolingCost: number;
  /** Of a dehumidifier that takes out what the tank evaporates [J], and its cost; null in a room without one. */
  readonly dehumidifierElectricity: number | null;
  readonly dehumidifierCost: number | null;
  readonly runningCost: number;
}

/** One complete account, tank and room, for a year. */
export interface ScenarioAccount {
  /** `insulationOnly`: a plain heater on the tank wrapped with what pays; left out where nothing pays or applies. */
  readonly scenario: 'plainHeater' | 'insulationOnly' | 'thisLoop' | 'certifiedHeatPump';
  readonly label: string;
  readonly electricity: BandWithUnit;
  readonly electricityCost: BandWithUnit;
  /** Positive: heat given to the room in heated months, worth money. Negative: heat taken from it. */
  readonly roomHeat: BandWithUnit;
  readonly roomCredit: BandWithUnit;
  /** Cost of cooling the room in summer; zero unless the room is cooled, negative where the scenario cools it itself. */
  readonly coolingCost: BandWithUnit;
  /** Electricity of a dehumidifier that takes out what the tank evaporates, and its cost; null in a room without one. */
  readonly dehumidifierElectricity: BandWithUnit | null;
  readonly dehumidifierCost: BandWithUnit | null;
  /** Electricity minus room credit plus cooling cost plus dehumidifier, per year. */
  readonly runningCost: BandWithUnit;
  readonly purchase: number;
  readonly purchaseRange: Band;
  /** Running plus purchase spread over its life, per year. */
  readonly lifeCostPerYear: BandWithUnit;
  readonly months: readonly MonthOfAccount[];
}

/** Value of a price or of a COP over the year at which this loop and another way cost the same. */
export interface BreakEven {
  /** Where this loop costs less: below or above that value, at every value asked about, or at none. */
  readonly loopCostsLess: 'below' | 'above' | 'always' | 'never';
  /** Null with 'always' and 'never'. An end is null where the range has none on that side. */
  readonly at: {
    readonly low: number | null;
    readonly likely: number;
    readonly high: number | null;
    readonly unit: string;
    readonly result: string;
  } | null;
}

/** This loop against one other way, both accounts varied together. */
export interface LoopAgainst {
  readonly against: Exclude<ScenarioAccount['scenario'], 'thisLoop'>;
  readonly label: string;
  /** Whether this is the cheapest of the other ways over its life, likely values. */
  readonly isCheapest: boolean;
  /** Cost of this loop less that of the other, a year over its life. */
  readonly lifeCost: BandWithUnit;
  /** What a year of the loop would cost more than the other, were the loop built and the unfavourable end true. */
  readonly ifBuilt: number;
  /** What a year would cost more than with the loop, were it not built and the favourable end true. */
  readonly ifNotBuilt: number;
  /** Price of house heat, from 0 up. */
  readonly houseHeatPrice: BreakEven;
  /** Season coefficient of performance of this loop, from 1 up; null where seasonCop is. */
  readonly seasonCop: BreakEven | null;
}

/** How far one uncertain input alone moves the verdict's margin (heat delivered minus load) [W]. */
export interface Influence {
  readonly path: string;
  readonly label: string;
  readonly quantity: string;
  /** The input's own range. */
  readonly input: Band;
  readonly marginAtLow: number;
  readonly marginAtHigh: number;
  /** Share of the variance of the margin, 0 to 1. */
  readonly share: number;
  /** How one could find out, in words; never an instruction for work that needs a licensed person. */
  readonly measure: string;
  /** What would be left of the margin's range were this input known at its likely value. */
  readonly marginIfKnown: Band;
  /** What could then be said of the load with the input known at its low end, where that is something else than now. */
  readonly flipsAtLow: LoadStanding | null;
  readonly flipsAtHigh: LoadStanding | null;
}

/** One measurement that would narrow the verdict. */
export interface MeasureNext {
  /** How, in words; never an instruction for work that needs a licensed person. */
  readonly measure: string;
  /** Inputs it settles. */
  readonly paths: readonly string[];
  readonly labels: readonly string[];
  /** Fields of the design that take its result. */
  readonly enterAt: readonly string[];
  /** Share of the variance of the margin that it settles, 0 to 1. */
  readonly share: number;
  /** What would be left of the margin's range, were the measurement itself without doubt. */
  readonly marginIfKnown: Band;
}

/** One enclosed space, and what the whole charge would make of its air, evenly mixed. */
export interface SpaceAnswer {
  /** 'closedCabinet', 'hood', 'lowPlace', 'tankRoom', 'otherRoom', 'airPumpIntake'. */
  readonly space: string;
  readonly label: string;
  /** The lower end of its size [m³]; null where nobody has said, and for the intake of an air pump. */
  readonly volume: number | null;
  /** From the upper end of the charge [kg/m³]; null where the size is unknown. */
  readonly concentration: number | null;
  /** Concentration a leak should stay below [kg/m³]; null where the catalogue knows none. */
  readonly limit: number | null;
  readonly state: 'belowLimit' | 'aboveLimit' | 'flammable' | 'unknown' | 'noLimit';
  /** The field of the design that could settle it. */
  readonly path: string;
  /** True where its size is an assumption. */
  readonly isAssumed: boolean;
  readonly measure: string;
}

/** The charge beside one figure of a standard that does not apply to a home-made machine; a comparison, nothing more. */
export interface ChargeComparisonAnswer {
  readonly name: string;
  /** What the figure is set for. */
  readonly label: string;
  readonly standard: string;
  /** [kg]. */
  readonly limit: number;
  readonly certainty: Certainty;
  /** `between`: only the upper end of the charge is above the figure. */
  readonly charge: 'below' | 'between' | 'above';
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
  /** Of all machines. */
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
  readonly machine: MachineAnswer;
  readonly sizing: SizingAnswer;
  readonly flows: HeatFlows;
  readonly year: readonly MonthAnswer[];
  readonly accounts: readonly ScenarioAccount[];
  readonly loopAgainst: readonly LoopAgainst[];
  readonly currency: string;
  /** Heat delivered less heat needed. */
  readonly margin: BandWithUnit;
  readonly measureNext: readonly MeasureNext[];
  readonly influences: readonly Influence[];
  readonly assumptions: readonly AssumptionLeft[];
  /** Machine limits and model doubts. */
  readonly findings: readonly Finding[];
  /** Person, livestock, house and law. */
  readonly cautions: readonly Finding[];
  readonly spaces: readonly SpaceAnswer[];
  readonly chargeComparisons: readonly ChargeComparisonAnswer[];
  readonly workings: readonly WorkingStep[];
}
