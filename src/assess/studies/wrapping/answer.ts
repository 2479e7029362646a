// What the study of wrapping answers, as plain data in base SI: each measure alone, the next best one in turn, what a heat
// pump makes of them, prices, and what the last inch of a board earns. Sentences are made in ../../wording/wrapping.ts.

import type { Finding, WorkingStep } from '../../../quantities/index.ts';
import type { AssumptionLeft, BandWithUnit } from '../../assessment/assessment.ts';
import type { UnansweredEnd } from '../../doubt/doubt.ts';
import type { Refusal } from '../../from-design.ts';

/** A range of years after which something has paid for itself; null: never. A null low end: not even at its best. */
export interface PaybackRange {
  readonly low: number | null;
  readonly likely: number | null;
  readonly high: number | null;
}

/** What a measure costs, once, in the currency of the design. */
export interface MeasureCost {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly origin: 'typed' | 'assumed';
  /** 'as given', or what the assumed price is made of. */
  readonly source: string;
}

/** What a measure does to the tank: one part of it, as it is now and as it would be; words for people. */
export interface MeasureChange {
  /** The part of the tank: 'lid', 'back', 'left', 'bottom', 'waterTemperature', 'surface'. */
  readonly part: string;
  readonly words: string;
}

/** One measure of the list. */
export interface WrappingMeasure {
  /** 'own.0': the first of the design's list; 'usual.twinWallLid': one that is offered where the design has no list. */
  readonly id: string;
  readonly kind: MeasureKind;
  readonly name: string;
  readonly origin: 'design' | 'usual';
  /** Where it stands in the design: 'wrapping.measures.0'; null for one that is offered. */
  readonly path: string | null;
  readonly changes: readonly MeasureChange[];
  /** Area that it covers [m²]; null for one that covers nothing. */
  readonly area: number | null;
  readonly cost: MeasureCost;
  /**
   * As it stands in the design's list, or would once it is taken into it: the texts of its fields by their names there,
   * { kind: 'board', name: 'Boards behind and below', where: 'hidden', material: 'extrudedPolystyrene', thickness: '30 mm', cost: '90 (60 to 140)' }.
   */
  readonly item: Readonly<Record<string, string>>;
}

export type MeasureKind = 'lid' | 'board' | 'mat' | 'doubleGlazing' | 'cooler' | 'nightCover' | 'calmerSurface';

/** Why a measure, or a part of one, changes nothing here. */
export type NotAppliedReason =
  /** What covers the water already keeps it at least as well: a lid where a better one lies. */
  | 'noBetterThanPresent'
  /** The tank has no such part: no hidden side, no sump. */
  | 'noSuchPart'
  /** The surface is as calm already. */
  | 'alreadyCalm'
  /** The tank is known by its meter alone: its parts are unknown. */
  | 'sizesUnknown';

export interface MeasureNotApplied {
  readonly id: string;
  readonly name: string;
  readonly part: string;
  readonly reason: NotAppliedReason;
  readonly words: string;
}

/** What one measure saves beside the tank without it; sums of money a year in the currency of the design. */
export interface WrappingGain {
  /** Heat the tank needs less at the coldest spell [W]. */
  readonly loadSaved: BandWithUnit;
  /** Heat that need not be brought in a year [J]. */
  readonly heatSaved: BandWithUnit;
  /** Water that evaporates less in a year [m³, liquid]. */
  readonly waterSaved: BandWithUnit;
  /** Electricity not paid: of the heater, and of a dehumidifier that has less to do. */
  readonly electricitySaved: BandWithUnit;
  /** Change of what the room is credited in its heated months: below 0 where the room gets less from the tank. */
  readonly roomCreditChange: BandWithUnit;
  /** Cooling of the room in summer not paid; 0 in a room that is not cooled. */
  readonly coolingSaved: BandWithUnit;
  /** All three together: electricity saved, plus the change of the room's credit, plus cooling saved. */
  readonly netSaving: BandWithUnit;
  /** Cost over net saving [years, interest left out]. */
  readonly payback: PaybackRange;
  /** The same with interest: when the discounted savings have added up to the cost. */
  readonly discountedPayback: PaybackRange;
  /** Present value of the net savings over `basis.years`, less the cost. */
  readonly netValue: BandWithUnit;
  /** netValue above 0 at the likely values. */
  readonly pays: boolean;
  /** Whether both ends of netValue agree with `pays`. */
  readonly settled: boolean;
}

export interface MeasureAlone extends WrappingMeasure {
  readonly alone: WrappingGain;
}

/** Heat by path, for pictures; likely values [W]. */
export interface PathOfState {
  readonly path: string;
  readonly label: string;
  readonly heat: number;
}

/** The tank with a set of measures. */
export interface WrappedState {
  /** Heat needed at the coldest spell [W], and in a year [J]. */
  readonly load: BandWithUnit;
  readonly heatNeeded: BandWithUnit;
  /** Water that evaporates in a year [m³, liquid]. */
  readonly water: BandWithUnit;
  /** Running cost of a year with a plain heater, tank and room [money]. */
  readonly runningCost: BandWithUnit;
  /** By path, at the coldest spell. */
  readonly paths: readonly PathOfState[];
  readonly waterTemperature: number;
}

/** One step of the best order: the measure with the highest net value beside all before it. */
export interface WrappingStep {
  readonly id: string;
  readonly name: string;
  readonly cost: MeasureCost;
  readonly before: WrappedState;
  readonly after: WrappedState;
  /** What this step adds to the ones before it. */
  readonly gain: WrappingGain;
  /** All steps up to this one together, beside the tank as it is. */
  readonly cumulative: WrappingGain & { readonly cost: MeasureCost };
  /** The first step whose net value is not above 0: from here on none pays, in any order. */
  readonly stopsPayingHere: boolean;
}

/** One bar of the waterfall; likely values. */
export interface WaterfallBar {
  readonly kind: 'asItIs' | 'saves' | 'savesWithoutPaying' | 'left';
  /** Null for the two ends. */
  readonly id: string | null;
  readonly label: string;
  /** From where to where the bar reaches [W, at the coldest spell]; ends start at 0. */
  readonly from: number;
  readonly to: number;
  /** The same for the heat of a year [J]. */
  readonly yearFrom: number;
  readonly yearTo: number;
}

/** The same steps in the same order, with the heat made by a heat pump. Likely values. */
export interface HeatPumpStep {
  readonly id: string;
  readonly name: string;
  /** Money a year, and over the years, less the cost of the measure. */
  readonly netSaving: number;
  readonly payback: number | null;
  readonly netValue: number;
  readonly pays: boolean;
  /** Paid with a plain heater, and does not with this machine. */
  readonly stopsPaying: boolean;
}

export interface WithHeatPump {
  readonly heat: 'thisLoop' | 'certifiedHeatPump';
  readonly label: string;
  /** COP over the year of the tank as it is. */
  readonly seasonCop: number;
  /** What one more unit of heat in the water costs there, electricity alone [money/J]. */
  readonly priceOfHeat: number;
  readonly steps: readonly HeatPumpStep[];
  /** Names of the measures that pay with a heater and not with this machine. */
  readonly stopPaying: readonly string[];
}

/** One cell of the table of prices: the measures in turn, chosen anew at these prices. */
export interface PriceCell {
  readonly electricityPrice: number;
  readonly discountRate: number;
  /** Net value over the years of the measures that pay together [money], and which they are, in turn. */
  readonly netValue: number;
  readonly paying: readonly string[];
  /** Net value of each measure alone, by id. */
  readonly alone: Readonly<Record<string, number>>;
}

/** Rows by price of electricity, columns by discount rate; house heat stays at the price of the design. Likely values. */
export interface PriceTable {
  readonly electricityPrices: readonly number[];
  readonly discountRates: readonly number[];
  /** Place of the design's own price and rate in the two lists. */
  readonly ownPrice: number;
  readonly ownRate: number;
  readonly cells: readonly (readonly PriceCell[])[];
}

/** One thickness of a board; likely values, a plain heater. */
export interface BoardPoint {
  readonly thickness: number;
  /** Heat the tank needs at the coldest spell [W], and in a year [J]. */
  readonly load: number;
  readonly heatNeeded: number;
  /** Net saving a year beside no board, tank and room [money]. */
  readonly netSaving: number;
  /** What the last 25.4 mm of this thickness earn; null where the board is thinner than that. */
  readonly lastInch: {
    readonly loadSaved: number;
    readonly heatSaved: number;
    readonly netSaving: number;
    /** Present value of that saving over the years, beside what that much board costs. */
    readonly worth: number;
    readonly cost: number;
  } | null;
}

/** "How much of a board does the last inch earn": a board of growing thickness on the tank as it is. */
export interface LastInchCurve {
  readonly id: string;
  readonly name: string;
  readonly material: string;
  readonly materialLabel: string;
  readonly area: number;
  /** Cost of the board by its volume [money/m³], and where the price is from. */
  readonly costPerVolume: number;
  readonly costSource: string;
  /** From none in steps of a fifth of an inch (5.08 mm). */
  readonly points: readonly BoardPoint[];
  /** The thickest board whose last inch is still worth its cost [m]; null where not even the first is. */
  readonly worthUpTo: number | null;
  /** The thickness that the measure itself has [m]. */
  readonly chosen: number;
}

/** What everything is reckoned with; likely values. */
export interface WrappingBasis {
  readonly years: number;
  readonly discountRate: number;
  /** [money/J] */
  readonly electricityPrice: number;
  readonly houseHeatPrice: number;
  readonly monthsHeated: number;
  readonly roomCooledInSummer: boolean;
  /** Whether a dehumidifier turns vapour into warmth of the room, and is paid for it. */
  readonly dehumidifier: boolean;
  /** At the coldest spell. */
  readonly waterTemperature: number;
  readonly roomTemperature: number;
}

export interface WrappingAnswer {
  readonly wrappingVersion: 1;
  readonly caution: string;
  readonly designName: string;
  readonly currency: string;
  readonly basis: WrappingBasis;
  /** Whether the measures are the design's own or those usually offered. */
  readonly measuresFrom: 'design' | 'usual';
  readonly asItIs: WrappedState;
  /** Best net value alone first. */
  readonly measures: readonly MeasureAlone[];
  /** Measures, or parts of them, that change nothing here, with the reason. */
  readonly notApplied: readonly MeasureNotApplied[];
  /** Every measure that applies, the next best one in turn. */
  readonly inTurn: readonly WrappingStep[];
  /** How many of these steps pay; they come first. */
  readonly payingSteps: number;
  /** All that pay together, beside the tank as it is; null where none does. */
  readonly paying: (WrappingGain & { readonly cost: MeasureCost }) | null;
  readonly waterfall: readonly WaterfallBar[];
  /** This loop where it has an answer, then a certified heat pump. */
  readonly withHeatPump: readonly WithHeatPump[];
  readonly prices: PriceTable;
  /** One for each measure that is a board. */
  readonly lastInch: readonly LastInchCurve[];
  readonly assumptions: readonly AssumptionLeft[];
  readonly findings: readonly Finding[];
  /** Ends of inputs at which there is no answer: the ranges are too narrow there. */
  readonly unanswered: readonly UnansweredEnd[];
  /** Steps behind the likely values, by the names in `result`. */
  readonly workings: readonly WorkingStep[];
}

/** An answer, or why there is none. */
export type WrappingOutcome = { readonly ok: true; readonly answer: WrappingAnswer } | Refusal;
