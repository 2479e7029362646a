// Facts of a design in which no rule but the standing ones speaks; each test changes what it is about.
// Fluid figures: EN 378-1:2016+A1:2020 Annex E; pressures of R134a rounded from published saturation tables.

import type {
  CautionFacts,
  CautionFluid,
  MachineFacts,
  MachineStateFacts,
  OperatingFacts,
  StandingTank,
} from '../../src/cautions/index.ts';
import {
  type RestingMeter,
  type StartingNumbers,
  type StartType,
  startingNumbers,
} from '../../src/parts/compressor/index.ts';
import type { Band } from '../../src/quantities/index.ts';

export const r134a: CautionFluid = {
  name: 'R134a',
  safetyClass: 'A1',
  lowerFlammabilityLimit: null,
  practicalLimit: 0.25,
  practicalLimitGrounds: { source: 'EN 378-1:2016+A1:2020, Annex E', certainty: 'confirmed' },
  toxicityLimit: 0.21,
  toxicityLimitGrounds: { source: 'EN 378-1:2016+A1:2020, Annex E', certainty: 'confirmed' },
  ozoneDepletionPotential: 0,
  globalWarmingPotential: 1430,
  usualOils: ['polyolester'],
  metalsAttacked: [],
  unconfirmed: [],
};
export const r290: CautionFluid = {
  ...r134a,
  name: 'R290',
  safetyClass: 'A3',
  lowerFlammabilityLimit: 0.038,
  practicalLimit: 0.008,
  toxicityLimit: 0.09,
  globalWarmingPotential: 3,
  usualOils: ['mineral', 'alkylbenzene', 'polyolester'],
};
export const r600a: CautionFluid = {
  ...r290,
  name: 'R600a',
  lowerFlammabilityLimit: 0.038,
  practicalLimit: 0.011,
  toxicityLimit: 0.059,
  usualOils: ['mineral', 'alkylbenzene'],
};
export const r12: CautionFluid = {
  ...r134a,
  name: 'R12',
  practicalLimit: 0.5,
  toxicityLimit: 0.09,
  ozoneDepletionPotential: 1,
  globalWarmingPotential: 10900,
  usualOils: ['mineral', 'alkylbenzene'],
};
export const carbonDioxide: CautionFluid = {
  ...r134a,
  name: 'R744',
  practicalLimit: 0.1,
  toxicityLimit: 0.072,
  globalWarmingPotential: 1,
};
export const ammonia: CautionFluid = {
  ...r134a,
  name: 'R717',
  safetyClass: 'B2L',
  lowerFlammabilityLimit: 0.116,
  practicalLimit: 0.00035,
  toxicityLimit: 0.00022,
  globalWarmingPotential: 0,
  usualOils: ['mineral'],
  metalsAttacked: ['copper', 'zinc'],
};
export const propylene: CautionFluid = {
  ...r290,
  name: 'R1270',
  lowerFlammabilityLimit: 0.046,
  practicalLimit: 0.008,
  toxicityLimit: 0.0017,
};

export const state: OperatingFacts = {
  when: 'coldestSpell',
  sourceTemperature: 291.15,
  roomTemperature: 291.15,
  sourceDewPoint: 280.15,
  evaporatingTemperature: 281.15,
  condensingTemperature: 309.15,
  evaporatingPressure: 3.9e5,
  condensingPressure: 9.1e5,
  dischargeTemperature: 333.15,
  compressorPower: 100,
  heatDelivered: 400,
  load: 250,
  massFlow: 2.4e-3,
  ranges: {},
};

/** An open tank in a large, aired room that stays cool in summer and that no failure chills. */
export const quietTank: StandingTank = {
  summer: {
    roomTemperature: 297.15,
    gains: 60,
    asItIs: { settlesAt: { low: 298, likely: 299, high: 300 }, searchedUpTo: 323.15 },
    wrapped: null,
  },
  cover: 'none',
  openShare: 1,
  isCoverPlanned: false,
  airDrawn: 0,
  lightPower: 60,
  insulation: [],
  isOnBoard: false,
  footing: { waterMass: 280, area: 0.6 },
  dampFaces: null,
  isBoardAtWall: false,
  evaporation: 1e-5,
  airChanges: null,
  isDehumidified: false,
  timeToAlarm: null,
};

export const quiet: CautionFacts = {
  fluid: r134a,
  molarMass: 0.10203,
  madeFor: r134a,
  application: 'high',
  limits: {
    evaporating: { lowest: 258.15, highest: 288.15 },
    condensing: { continuous: 338.15, peak: 343.15 },
    discharge: { caution: 393.15, highest: 403.15 },
    pressureRatio: { caution: 10, highest: 12 },
    source: 'typical application guides, from memory',
  },
  hardestAllowedPower: 110,
  operating: [state],
  forFlammables: 'no',
  charge: { low: 0.1, likely: 0.15, high: 0.2 },
  enclosure: { kind: 'openRoom' },
  roomVolume: 40,
  floorArea: 16,
  otherRoomVolume: null,
  sunkenPlace: { kind: 'none' },
  airPumpIntake: 'none',
  region: 'unknown',
  pressures: { highSide: 14.9e5, builtHighSide: 14.9e5, builtLowSide: 8.15e5, warmest: 301.15, standing: 7.27e5 },
  shellSurroundings: 291.15,
  ratedMassFlow: 2.2e-3,
  stuckOn: { when: 'coldestSpell', timePerKelvin: 8000, settlesAt: 309, searchedUpTo: 315 },
  coilSurface: null,
  atmosphericPressure: 101325,
  condenserArrangement: 'intermediateLoop',
  wettedMetal: 'titanium',
  water: 'fresh',
  livestock: 'fish',
  waterTemperature: 299.15,
  tankHeatCapacity: 1.2e6,
  standing: quietTank,
  overTemperatureCutOut: 'independent',
  residualCurrentProtection: 'yes',
  sockets: 'aboveWater',
  dripLoops: 'yes',
  machineLevel: 'aboveWater',
  metalEarthed: 'yes',
};

/** A fluid usual with mineral oil. */
export const mineral: CautionFluid = { ...r134a, name: 'R-mineral', usualOils: ['mineral', 'alkylbenzene'] };

/** The quiet facts with one state changed. */
export function running(change: Partial<OperatingFacts>): CautionFacts {
  return { ...quiet, operating: [{ ...state, ...change }] };
}

/** The quiet facts with something changed about the tank itself. */
export function standing(change: Partial<StandingTank>): CautionFacts {
  return { ...quiet, standing: { ...quietTank, ...change } };
}

/** Water that comes to rest at these temperatures [K], as it is and wrapped. */
export function resting(asItIs: number, wrapped: number | null = null, reach = 0.5): CautionFacts {
  const at = (likely: number) => ({
    settlesAt: { low: likely - reach, likely, high: likely + reach },
    searchedUpTo: 323.15,
  });
  return standing({
    summer: { roomTemperature: 300.15, gains: 90, asItIs: at(asItIs), wrapped: wrapped === null ? null : at(wrapped) },
  });
}

/** A machine of which nothing speaks: 0.8 A printed, and bears 1.56 times that. */
export const quietMachine: MachineFacts = {
  ratedCurrent: 0.8,
  continuousCurrent: 1.248,
  trip: null,
  highestSuctionPressure: 4.9e5,
  wall: { caution: 383.15, beyond: 403.15, source: 'insulation of class 130, from memory' },
  superheat: { caution: 5, beyond: 2, source: 'typical application guides, from memory' },
  starting: null,
  shortestOffTime: null,
  crankcaseHeater: 0,
  oil: null,
};

/** The quiet design with its machine in one state. */
export function machineIn(at: Partial<MachineStateFacts>, machine: Partial<MachineFacts> = {}): CautionFacts {
  const unknown = { current: null, wallTemperature: null, superheat: null };
  return {
    ...quiet,
    machine: { ...quietMachine, ...machine },
    operating: [{ ...state, machine: { ...unknown, ...at } }],
  };
}

/** A narrow range. */
export function about(likely: number): Band {
  return { low: likely * 0.999, likely, high: likely * 1.001 };
}

export function startingWith(startType: StartType, meter: RestingMeter): StartingNumbers {
  return startingNumbers({ startType, meter, shellConductance: about(1.2) });
}
