// The stages of an Assessment in the order they run, each with what it reads of the design and the results it needs.

import type { OperatingPoint } from '../../loop/index.ts';
import {
  type IdentifiedMachine,
  type MachineDescription,
  machineOfRanges,
  machineReading,
} from '../../parts/compressor/index.ts';
import type { PlantState } from '../../plant/index.ts';
import { secondsPerYear } from '../../quantities/index.ts';
import type { TankLoad } from '../../tank/index.ts';
import type { Year } from '../../year/index.ts';
import { type Stage, stageOf } from '../stage.ts';
import { type AccountsResult, accountPrices, accountsOf } from './accounts/accounts.ts';
import type { EngineValues, SizingValues, StagedDesign } from './engine-assumptions.ts';
import { type CompressorResult, compressorOf, type LoopSlice, operatingAt } from './machine.ts';
import { describedMachine } from './machine-description.ts';
import {
  dryingEnergyOf,
  monthLoads,
  monthOperating,
  type PlantParts,
  plantAtSpell,
  plantHardware,
  yearOf,
} from './plant.ts';
import { type SizingResult, sizingOf } from './sizing.ts';
import { ventilationOf } from './surroundings/room-air.ts';
import { type SurroundingsResult, surroundingsOf, surroundingsSlice } from './surroundings/surroundings.ts';
import { carriedBy, type MeterResult, meterOf } from './tank/meter.ts';
import { type TankSlice, tankLoadAt } from './tank/tank.ts';
import { standardTankFactors, type TankFactors } from './tank/tank-assumptions.ts';
import { chosenWraps } from './wrapping/choice.ts';
import type { OfferedMeasure } from './wrapping/offered.ts';
import { type HeaterPrices, WrappedStates, type WrappedYear, type WrappingSubject } from './wrapping/states.ts';

export interface StageResults {
  readonly surroundings: SurroundingsResult;
  /** What a meter on the heater says of a tank that is known by its sizes; null without one. */
  readonly meter: MeterResult | null;
  /** The tank at the coldest spell. */
  readonly tank: TankLoad;
  /** The machine as everything known of it tells, its likely values; not found anew while inputs are varied. */
  readonly identified: IdentifiedMachine;
  /** The same as the inputs move it. */
  readonly compressor: CompressorResult;
  /** The loop at the coldest spell. */
  readonly operating: OperatingPoint;
  readonly sizing: SizingResult;
  readonly hardware: PlantParts;
  /** Tank, room and loop at the coldest spell. */
  readonly plant: PlantState;
  readonly monthLoads: readonly TankLoad[];
  /** Null in a month in which the loop has no operating point. */
  readonly monthOperating: readonly (OperatingPoint | null)[];
  readonly year: Year;
  /** What "insulation only" stands for, decided at the likely values; empty where nothing pays. */
  readonly wrappingChoice: readonly OfferedMeasure[];
  /** The tank so wrapped, with a plain heater; null where nothing pays. */
  readonly wrapped: WrappedYear | null;
  readonly accounts: AccountsResult;
}

const stage = stageOf<StageResults>();

const surroundings = stage('surroundings', surroundingsSlice, [], surroundingsOf);

/** The engine's values that the tank reads, and those that the sizes read: neither runs again for the other's. */
function tankFactors(engine: EngineValues): TankFactors {
  const keys = Object.keys(standardTankFactors) as (keyof TankFactors)[];
  return Object.fromEntries(keys.map((key) => [key, engine[key]])) as unknown as TankFactors;
}

function sizingValues(engine: EngineValues): SizingValues {
  const { fouling, refrigerantFilm, loopSideFilm, tankCoilShare, loopTemperatureChange } = engine;
  const { airEffectiveness, finnedCoefficient, wallThickness, wallConductivity } = engine;
  return {
    fouling,
    refrigerantFilm,
    loopSideFilm,
    tankCoilShare,
    loopTemperatureChange,
    airEffectiveness,
    finnedCoefficient,
    wallThickness,
    wallConductivity,
  };
}

/** What the tank's heat balance reads of the design. */
export function tankSlice({ place, tank, room, engine }: StagedDesign): TankSlice {
  const { waterTemperature, salinity, load } = tank;
  return {
    tank: { waterTemperature, salinity, load },
    windSpeed: place.outdoors.windSpeed,
    factors: tankFactors(engine),
    relativeHumidity: room.relativeHumidity,
    ventilation: ventilationOf(room),
  };
}

const meter = stage('meter', meterSlice, ['surroundings'], ({ slice }, results) =>
  slice === null ? null : meterOf(slice, results.surroundings),
);

/** What the meter reads of the design: nothing without one. */
function meterSlice(design: StagedDesign): { readonly slice: TankSlice | null } {
  const { load } = design.tank;
  return { slice: load.kind === 'measured' || load.meter === undefined ? null : tankSlice(design) };
}

const tank = stage(
  'tank',
  tankSlice,
  ['surroundings', 'meter'],
  (slice, { surroundings: { spell, ...place }, meter }) =>
    tankLoadAt(carriedBy(slice, meter), spell, place.atmosphericPressure),
);

/** A machine of which nothing was printed or measured is that of its ranges. */
function identifiedFrom(description: MachineDescription): IdentifiedMachine {
  return description.points.length === 0 ? machineOfRanges(description) : machineReading().identifyMachine(description);
}

const identified = stage(
  'identified',
  ({ described, machine: { application }, states }) => ({ described, application, states }),
  [],
  (slice) => identifiedFrom(describedMachine(slice)),
  true,
);

const compressor = stage(
  'compressor',
  ({ machine, open }) => ({ compressor: machine.compressor, open }),
  ['identified'],
  (slice, results) => compressorOf(slice, results.identified),
);

/** What the loop reads of the design. */
export function loopSlice({ machine, states, tank, exchangers, engine }: StagedDesign): LoopSlice {
  const { evaporatorApproach, condenserApproach, superheat, subcooling, suctionPressureLimit } = exchangers;
  const { machineFlowDoubt, machinePowerDoubt } = engine;
  return {
    refrigerant: machine.refrigerant,
    states,
    waterTemperature: tank.waterTemperature,
    exchangers: {
      evaporatorApproach,
      condenserApproach,
      superheat,
      subcooling,
      ...(suctionPressureLimit === undefined ? {} : { suctionPressureLimit }),
    },
    machine: {
      shellPlace: machine.shellPlace,
      supply: machine.supply,
      doubt: { machineFlowDoubt, machinePowerDoubt },
    },
  };
}

const operating = stage('operating', loopSlice, ['surroundings', 'compressor'], (slice, results) =>
  operatingAt(slice, results.compressor, results.surroundings.spell),
);

const hardware = stage(
  'hardware',
  ({ source, machine, exchangers, power, engine }) => ({
    source: { kind: source.kind },
    machine: { shellPlace: machine.shellPlace, count: machine.count },
    exchangers: { condenserArrangement: exchangers.condenserArrangement },
    power,
    engine: { loopPumpShareToWater: engine.loopPumpShareToWater },
  }),
  [],
  (slice) => plantHardware(slice),
);

const sizing = stage(
  'sizing',
  ({ tank: { waterTemperature, salinity }, room: { relativeHumidity }, exchangers, engine }) => {
    const { condenserArrangement, tubeDiameter, airSpeed } = exchangers;
    return {
      tank: { waterTemperature, salinity },
      relativeHumidity,
      exchangers: { condenserArrangement, tubeDiameter, airSpeed },
      engine: sizingValues(engine),
    };
  },
  ['surroundings', 'operating', 'hardware'],
  (slice, results) => sizingOf(slice, results.surroundings, results.operating, results.hardware),
);

const plant = stage(
  'plant',
  () => ({}),
  ['tank', 'operating', 'hardware'],
  (_slice, results) => plantAtSpell(results.tank, results.operating, results.hardware),
);

const loadsOfMonths = stage('monthLoads', tankSlice, ['surroundings', 'meter'], (slice, results) =>
  monthLoads(carriedBy(slice, results.meter), results.surroundings),
);

const operatingOfMonths = stage('monthOperating', loopSlice, ['surroundings', 'compressor'], (slice, results) =>
  monthOperating(slice, results.surroundings, results.compressor),
);

const year = stage(
  'year',
  ({ room }) => ({ dryingEnergy: dryingEnergyOf(room) }),
  ['surroundings', 'monthLoads', 'monthOperating', 'hardware'],
  ({ dryingEnergy }, { surroundings: { months }, monthLoads: loads, monthOperating: points, hardware: parts }) =>
    yearOf(months, loads, points, parts, dryingEnergy),
);

/** What a wrapped tank is reckoned from. */
export function wrappingSlice(design: StagedDesign) {
  const { measureConductivityFactor, measureCostFactor } = design.engine;
  return {
    tank: tankSlice(design),
    dryingEnergy: dryingEnergyOf(design.room),
    measures: design.wrapping.measures,
    measureFactors: { measureConductivityFactor, measureCostFactor },
  };
}

/** The measures and the tank they lie on, as the states of wrapped tanks are reckoned from. */
export function wrappingSubject(
  { tank: bare, dryingEnergy, measures, measureFactors }: ReturnType<typeof wrappingSlice>,
  { surroundings, meter: metered, hardware: parts }: Pick<StageResults, 'surroundings' | 'meter' | 'hardware'>,
): WrappingSubject {
  return {
    tank: carriedBy(bare, metered),
    offer: { measures, factors: bare.factors, measureFactors },
    surroundings,
    hardware: parts,
    dryingEnergy,
  };
}

/** What money is reckoned with: prices of the accounts, of the heater, and over how many years measures are held to save. */
export function heaterPricesOf({ prices, room }: StagedDesign): HeaterPrices {
  const { houseHeatPrice, cooledInSummer } = room;
  return { prices: accountPrices({ prices, houseHeatPrice, cooledInSummer }), heater: prices.heater };
}

const wrappingChoice = stage(
  'wrappingChoice',
  (design) => ({
    wrapping: wrappingSlice(design),
    prices: heaterPricesOf(design),
    terms: { discountRate: design.prices.discountRate, years: design.wrapping.years / secondsPerYear },
  }),
  ['surroundings', 'meter', 'hardware'],
  ({ wrapping, prices, terms }, results): readonly OfferedMeasure[] => {
    const states = new WrappedStates(wrappingSubject(wrapping, results));
    const chosen = chosenWraps(states, prices, terms);
    return states.applicable.filter(({ id }) => chosen.includes(id));
  },
  true,
);

const wrapped = stage(
  'wrapped',
  wrappingSlice,
  ['surroundings', 'meter', 'hardware', 'wrappingChoice'],
  (slice, results) => {
    if (results.wrappingChoice.length === 0) return null;
    const states = new WrappedStates(wrappingSubject(slice, results));
    return states.yearWith(results.wrappingChoice.map(({ id }) => id));
  },
);

const accounts = stage(
  'accounts',
  ({ prices, room, source }) => ({
    prices,
    houseHeatPrice: room.houseHeatPrice,
    cooledInSummer: room.cooledInSummer,
    source: { kind: source.kind },
  }),
  ['year', 'wrapped'],
  (slice, results) => accountsOf(slice, results.year, results.wrapped),
);

/** All stages, each after those it needs. */
export const stages: readonly Stage<StageResults, keyof StageResults>[] = [
  surroundings,
  meter,
  tank,
  identified,
  compressor,
  operating,
  hardware,
  sizing,
  plant,
  loadsOfMonths,
  operatingOfMonths,
  year,
  wrappingChoice,
  wrapped,
  accounts,
];
