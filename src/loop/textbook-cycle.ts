// The textbook vapour-compression cycle: adiabatic compressor of given isentropic efficiency, no motor, isenthalpic
// expansion; pressure lost in evaporator and condenser and a liquid-to-suction heat exchanger where they are given. States,
// work and heats per kilogram, COPs, the exergy each part wastes, and all of it per second where a flow is given. Leaves
// out transcritical cycles: condensing at or above the critical point is refused.

import {
  glideOf,
  type ReferenceStateName,
  type Refrigerant,
  referenceOffset,
  referenceStates,
  refrigerant,
  type Saturation,
  type State,
} from '../matter/refrigerants/index.ts';
import { InputError } from '../numerics/index.ts';
import { perSecond } from './cycle-flow.ts';
import { type CheckedCycleRequest, checkTextbookCycleRequest, type TextbookCycleRequest } from './cycle-request.ts';
import type {
  CycleLevel,
  CyclePoint,
  CyclePointName,
  CyclePoints,
  CycleWarning,
  ExergyBasis,
  TextbookCycle,
} from './cycle-result.ts';
import { type CycleLevels, type CycleStates, cycleLevels, cycleStates } from './cycle-states.ts';
import {
  carnotHeatingCop,
  coefficientOfPerformance,
  enthalpyDifference,
  pressureLoss,
  pressureRatio,
  volumetricHeatingCapacity,
} from './energy.ts';
import { type ExergyDestruction, exergyAccount, secondLawEfficiency } from './exergy.ts';
import { subcoolingBelow, superheatAbove } from './states.ts';

/**
 * Computes the textbook cycle.
 * @param request  see TextbookCycleRequest; checked here, so that a parsed line of JSON may be passed as it is
 * @returns        states, work, heats, COPs and exergy destruction, per second too where a flow is given; h, s and u on the
 *                 reference state asked for
 * @throws InputError naming the key for impossible, missing, doubled, unknown or contradictory input, the codes of
 *         checkTextbookCycleRequest among them;
 *         OutOfModelError (code 'condensingAboveCritical') for condensing at or above the critical point;
 *         OutOfModelError naming the point where a state leaves the equation's limits.
 * Validity: subcritical. Pitfall: the COPs are of the work on the gas; no motor, fan or pump is in them.
 * Source: Çengel & Boles, Thermodynamics, 8th ed., chapter 11 (from memory of the source).
 * Worked value: R134a, 0.14 to 0.8 MPa, no superheat or subcooling, efficiency 1 → cooling COP 3.97.
 */
export function textbookCycle(request: TextbookCycleRequest): TextbookCycle {
  const asked = checkTextbookCycleRequest(request);
  const fluid = refrigerant(asked.refrigerant);
  const levels = cycleLevels(fluid, asked);
  const states = cycleStates(fluid, asked, levels);
  return withResults(fluid, asked, levels, states);
}

/** Work and heats of one kilogram [J/kg]. */
interface Heats {
  readonly specificWork: number;
  readonly heatDelivered: number;
  readonly heatTaken: number;
}

function withResults(
  fluid: Refrigerant,
  asked: CheckedCycleRequest,
  levels: CycleLevels,
  states: CycleStates,
): TextbookCycle {
  const { evaporating, condensing, suction } = levels;
  const { inlet, liquid, exchange, efficiency } = states;
  const heats = heatsOf(asked, states);
  const exergy = exergyOf(asked, states, heats);
  const dew = exchange === undefined ? suction.vapour : evaporating.vapour;
  // A plain cycle is written out without spreads, which cost a tenth of its time.
  const plain: TextbookCycle = {
    refrigerant: fluid.name,
    points: namedPoints(fluid, asked.referenceState, states),
    evaporating: levelOf(fluid, evaporating),
    condensing: levelOf(fluid, condensing),
    superheat: superheatOf(exchange?.evaporatorOutlet ?? inlet, dew),
    subcooling:
      liquid === levels.liquid.liquid ? 0 : subcoolingBelow(levels.liquid.liquid.temperature, liquid.temperature),
    isentropicEfficiency: efficiency,
    compressionGiven: asked.compression.key,
    pressureRatio: pressureRatio(condensing.vapour.pressure, suction.vapour.pressure),
    specificWork: heats.specificWork,
    heatDelivered: heats.heatDelivered,
    heatTaken: heats.heatTaken,
    heatingCop: coefficientOfPerformance(heats.heatDelivered, heats.specificWork),
    coolingCop: coefficientOfPerformance(heats.heatTaken, heats.specificWork),
    carnotHeatingCop: carnotHeatingCop(condensing.vapour.temperature, evaporating.vapour.temperature),
    volumetricHeatingCapacity: volumetricHeatingCapacity(heats.heatDelivered, inlet.density),
    exergyDestruction: exergy.destruction,
    exergyBasis: exergy.basis,
    referenceState: referenceWords(asked.referenceState),
    basis: 'textbook cycle, not electricity',
    warnings: [...wetWarnings(states), ...exergy.warnings],
  };
  const isPlain = asked.suctionPressure === undefined && asked.liquidPressure === undefined && exchange === undefined;
  if (isPlain && asked.flow === undefined) return plain;
  return {
    ...plain,
    ...lossesOf(asked, levels),
    ...exchangerOf(fluid, asked, states),
    ...ratesOf(asked, plain, states),
  };
}

function levelOf(fluid: Refrigerant, { liquid, vapour }: Saturation): CycleLevel {
  const { temperature, pressure } = vapour;
  if (fluid.bubbleAndDew === undefined) return { temperature, pressure };
  const bubbleTemperature = liquid.temperature;
  return { temperature, pressure, bubbleTemperature, glide: glideOf(temperature, bubbleTemperature) };
}

function ratesOf(
  asked: CheckedCycleRequest,
  { heatDelivered, heatTaken, specificWork, exergyDestruction }: TextbookCycle,
  { inlet, exchange }: CycleStates,
): Pick<TextbookCycle, 'perSecond'> {
  const rates = perSecond(asked, {
    heatDelivered,
    heatTaken,
    specificWork,
    exchangedHeat: exchange?.heat,
    exergyDestruction,
    inletDensity: inlet.density,
  });
  return rates === undefined ? {} : { perSecond: rates };
}

function heatsOf(asked: CheckedCycleRequest, { inlet, outlet, liquid, exchange }: CycleStates): Heats {
  // The valve is isenthalpic: h4 is the enthalpy before it, not what a flash gives back of it.
  const gas = exchange?.evaporatorOutlet ?? inlet;
  const heatTaken = enthalpyDifference(gas.enthalpy, (exchange?.expansionInlet ?? liquid).enthalpy);
  if (!(heatTaken > 0)) {
    const expected = 'a liquid whose enthalpy is below that of the gas at the compressor inlet';
    throw new InputError(asked.liquid.key, asked.liquid.value, expected, 'noCooling');
  }
  return {
    specificWork: enthalpyDifference(outlet.enthalpy, inlet.enthalpy),
    heatDelivered: enthalpyDifference(outlet.enthalpy, liquid.enthalpy),
    heatTaken,
  };
}

function namedPoints(fluid: Refrigerant, reference: ReferenceStateName, states: CycleStates): CyclePoints {
  const offset = referenceOffset(fluid, reference);
  const named = (name: CyclePointName, state: State): CyclePoint => ({
    name,
    ...state,
    enthalpy: state.enthalpy + offset.enthalpy,
    internalEnergy: state.internalEnergy + offset.enthalpy,
    entropy: state.entropy + offset.entropy,
  });
  const { inlet, isentropic, outlet, liquid, expanded, exchange } = states;
  return [
    named('compressorInlet', inlet),
    named('compressorOutletIsentropic', isentropic),
    named('compressorOutlet', outlet),
    named('condenserOutlet', liquid),
    named('evaporatorInlet', { ...expanded, enthalpy: (exchange?.expansionInlet ?? liquid).enthalpy }),
    ...(exchange === undefined
      ? []
      : [named('evaporatorOutlet', exchange.evaporatorOutlet), named('expansionInlet', exchange.expansionInlet)]),
  ];
}

/** 0 on the line and where the gas is wet. */
function superheatOf(gas: State, dew: State): number {
  return gas === dew || gas.quality !== null ? 0 : superheatAbove(dew.temperature, gas.temperature);
}

function wetWarnings({ inlet, isentropic, outlet }: CycleStates): CycleWarning[] {
  const warnings: CycleWarning[] = [];
  if (isWet(inlet)) warnings.push({ code: 'wetSuction', part: 'compressor' });
  if (isWet(isentropic) || isWet(outlet)) warnings.push({ code: 'wetCompression', part: 'compressor' });
  return warnings;
}

function lossesOf(asked: CheckedCycleRequest, levels: CycleLevels): Pick<TextbookCycle, 'pressureLosses'> {
  if (asked.suctionPressure === undefined && asked.liquidPressure === undefined) return {};
  const { evaporating, suction, condensing, liquid } = levels;
  return {
    pressureLosses: {
      suction: pressureLoss(evaporating.vapour.pressure, suction.vapour.pressure),
      liquid: pressureLoss(condensing.vapour.pressure, liquid.vapour.pressure),
    },
  };
}

function exchangerOf(
  fluid: Refrigerant,
  { exchanger, referenceState }: CheckedCycleRequest,
  { exchange }: CycleStates,
): Pick<TextbookCycle, 'heatExchanger'> {
  if (exchanger === undefined || exchange === undefined) return {};
  const { effectiveness, heat } = exchange;
  const warmestGas = onReference(exchange.warmestGas, referenceOffset(fluid, referenceState));
  return { heatExchanger: { effectiveness, given: exchanger.key, heat, warmestGas } };
}

/** The state with h, u and s counted from the zero that was asked for. */
function onReference(state: State, offset: ReturnType<typeof referenceOffset>): State {
  return {
    ...state,
    enthalpy: state.enthalpy + offset.enthalpy,
    internalEnergy: state.internalEnergy + offset.enthalpy,
    entropy: state.entropy + offset.entropy,
  };
}

function exergyOf(
  asked: CheckedCycleRequest,
  { inlet, outlet, liquid, expanded, exchange }: CycleStates,
  { specificWork, heatDelivered, heatTaken }: Heats,
): { destruction: ExergyDestruction; basis: ExergyBasis; warnings: readonly CycleWarning[] } {
  const { deadState } = asked;
  const sinkTemperature = asked.sinkTemperature ?? deadState;
  const sourceTemperature = asked.sourceTemperature ?? deadState;
  const { destruction, minimumWork } = exergyAccount({
    entropies: [inlet.entropy, outlet.entropy, liquid.entropy, expanded.entropy],
    exchangerEntropies: exchange && [exchange.evaporatorOutlet.entropy, exchange.expansionInlet.entropy],
    heatDelivered,
    heatTaken,
    work: specificWork,
    deadState,
    sinkTemperature,
    sourceTemperature,
  });
  const rounding = -1e-9 * specificWork;
  const warnings: CycleWarning[] = [];
  for (const part of ['condenser', 'evaporator'] as const) {
    if (destruction[part] >= rounding) continue;
    const key = part === 'condenser' ? 'sinkTemperature' : 'sourceTemperature';
    const given = asked[key];
    if (given !== undefined) {
      const expected =
        part === 'condenser' ? 'a body colder than the refrigerant that heats it' : 'a body warmer than the evaporator';
      throw new InputError(key, given, expected, 'heatFlowsUphill');
    }
    warnings.push({ code: 'negativeExergyDestruction', part });
  }
  const basis: ExergyBasis = {
    deadState,
    sinkTemperature,
    sourceTemperature,
    minimumWork,
    secondLawEfficiency: secondLawEfficiency(minimumWork, specificWork),
    words: exergyWords(asked),
  };
  return { destruction, basis, warnings };
}

function exergyWords({ deadState, sinkTemperature, sourceTemperature }: CheckedCycleRequest): string {
  const body = (given: number | undefined) =>
    given === undefined ? 'a body at the dead state' : `a body at ${given} K`;
  const words = `Heat is given to ${body(sinkTemperature)} and taken from ${body(sourceTemperature)}; dead state ${deadState} K.`;
  const noUse = sinkTemperature === undefined && sourceTemperature === undefined;
  return noUse ? `${words} Such heat is worth no work, so the parts add up to all the work put in.` : words;
}

function referenceWords(name: ReferenceStateName): string {
  return referenceStates.find((state) => state.name === name)?.words ?? name;
}

function isWet(state: State): boolean {
  return state.quality !== null && state.quality < 1 - 1e-9;
}
