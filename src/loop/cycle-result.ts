// What a textbook cycle answers: its states by name, work, heats and COPs per kilogram, the exergy account, and, where a
// mass flow follows from the request, the same per second. Keys beyond those of the plain cycle are there only where the
// request asked for what they tell.

import type { State } from '../matter/refrigerants/index.ts';
import type { ExergyDestruction } from './exergy.ts';

/** The five states of every cycle, in order of flow. */
export type PlainPointName =
  | 'compressorInlet'
  | 'compressorOutletIsentropic'
  | 'compressorOutlet'
  | 'condenserOutlet'
  | 'evaporatorInlet';

/** The two states that only a cycle with a liquid-to-suction heat exchanger has. */
export type ExchangerPointName = 'evaporatorOutlet' | 'expansionInlet';

export type CyclePointName = PlainPointName | ExchangerPointName;

/** A state of the cycle under its name. */
export interface CyclePoint extends State {
  readonly name: CyclePointName;
}

/**
 * compressorInlet (after the exchanger where there is one), compressorOutletIsentropic, compressorOutlet, condenserOutlet
 * (before the exchanger), evaporatorInlet (after the expansion); with an exchanger then evaporatorOutlet and expansionInlet.
 */
export type CyclePoints = readonly [CyclePoint, CyclePoint, CyclePoint, CyclePoint, CyclePoint, ...CyclePoint[]];

/** Bodies the exergy account was made with, and the choice in words. */
export interface ExergyBasis {
  /** T0 [K]. */
  readonly deadState: number;
  /** T_H, of the body heated [K]. */
  readonly sinkTemperature: number;
  /** T_L, of the body cooled [K]. */
  readonly sourceTemperature: number;
  /** Least work that could do the same [J/kg]. */
  readonly minimumWork: number;
  /** Minimum work over work [-]. */
  readonly secondLawEfficiency: number;
  readonly words: string;
}

/**
 * `negativeExergyDestruction`: a body at the dead state would have to give heat to something warmer; name the body's
 * temperature to judge that part. `wetCompression`: the gas that leaves, or would leave without losses, holds liquid.
 * `wetSuction`: the gas that enters the compressor holds liquid.
 */
export interface CycleWarning {
  readonly code: 'negativeExergyDestruction' | 'wetCompression' | 'wetSuction';
  readonly part: 'condenser' | 'evaporator' | 'compressor';
}

/** The liquid-to-suction heat exchanger: liquid out of the condenser warms the gas out of the evaporator. */
export interface LiquidSuctionExchange {
  /** ε [-], on enthalpy: q by what the gas would take up if it left as warm as the liquid enters. */
  readonly effectiveness: number;
  /** Which of the two was given; the other follows. */
  readonly given: 'heatExchangerEffectiveness' | 'suctionTemperatureAfterExchanger';
  /** q [J/kg], from the liquid to the gas. */
  readonly heat: number;
  /** Gas at the evaporator's pressure, as warm as the liquid enters: more it could not take up. */
  readonly warmestGas: State;
}

export type MassFlowKey = 'massFlow' | 'coolingCapacity' | 'heatingCapacity' | 'compressorPower' | 'displacement';

/** The cycle per second, where one of its flows was given. */
export interface CyclePerSecond {
  /** What the mass flow follows from. */
  readonly given: MassFlowKey;
  /** ṁ [kg/s]. */
  readonly massFlow: number;
  /** Q_H = ṁ q_H, Q_L = ṁ q_L, W = ṁ w (power of the shaft into the gas, not electricity) [W]. */
  readonly heatingCapacity: number;
  readonly coolingCapacity: number;
  readonly compressorPower: number;
  /** From the liquid to the gas, with an exchanger [W]. */
  readonly heatExchangerHeat?: number;
  /** By part [W]. */
  readonly exergyDestructionRate: ExergyDestruction;
  /** Gas drawn in at the state of the compressor inlet [m³/s]. */
  readonly inletVolumeFlow: number;
  /** Where the displacement was given: swept volume rate [m³/s], and the volumetric efficiency [-] it was taken at. */
  readonly displacement?: number;
  readonly volumetricEfficiency?: number;
  /** True where no volumetric efficiency was given and 1 was assumed. */
  readonly volumetricEfficiencyAssumed?: boolean;
}

/** Pressure lost between the two ends of the evaporator or the condenser and its line [Pa]. */
export interface PressureLosses {
  /** Evaporator inlet minus compressor inlet. */
  readonly suction: number;
  /** Compressor outlet minus condenser outlet. */
  readonly liquid: number;
}

/**
 * One end of a cycle: dew temperature [K] and pressure [Pa]. Of a blend also its bubble temperature [K] at that pressure, and
 * the glide between the two [K].
 */
export interface CycleLevel {
  readonly temperature: number;
  readonly pressure: number;
  readonly bubbleTemperature?: number;
  readonly glide?: number;
}

export interface TextbookCycle {
  readonly refrigerant: string;
  readonly points: CyclePoints;
  /** Of the evaporator at its inlet, and of the condenser at the compressor outlet. */
  readonly evaporating: CycleLevel;
  readonly condensing: CycleLevel;
  /**
   * Superheat from dew, at the compressor inlet and its pressure; with an exchanger at the evaporator outlet. 0 where the
   * gas is wet. Subcooling from bubble, at the condenser outlet and its pressure [K].
   */
  readonly superheat: number;
  readonly subcooling: number;
  readonly isentropicEfficiency: number;
  /** Which of the two was given; the other follows. */
  readonly compressionGiven: 'isentropicEfficiency' | 'dischargeTemperature';
  /** Compressor outlet by compressor inlet. */
  readonly pressureRatio: number;
  /** w = h2 − h1, q_H = h2 − h3, q_L = h1 − h4; with an exchanger q_L from evaporator inlet to outlet [J/kg]. */
  readonly specificWork: number;
  readonly heatDelivered: number;
  readonly heatTaken: number;
  readonly heatingCop: number;
  readonly coolingCop: number;
  /** Of a reversible cycle between the two dew temperatures; no bound where much heat leaves subcooled liquid or a gliding blend. */
  readonly carnotHeatingCop: number;
  /** q_H · ρ1 [J/m³]. */
  readonly volumetricHeatingCapacity: number;
  /** [J/kg]. */
  readonly exergyDestruction: ExergyDestruction;
  readonly exergyBasis: ExergyBasis;
  /** The zero of enthalpy and entropy, in words. */
  readonly referenceState: string;
  readonly basis: 'textbook cycle, not electricity';
  readonly warnings: readonly CycleWarning[];
  /** Where a suction or a liquid pressure was given. */
  readonly pressureLosses?: PressureLosses;
  readonly heatExchanger?: LiquidSuctionExchange;
  readonly perSecond?: CyclePerSecond;
}
