// The textbook vapour-compression cycle: adiabatic compressor of given isentropic efficiency, no pressure drop anywhere,
// no motor, all superheat gained in the evaporator, isenthalpic expansion. Five states, work and heats per kilogram, COPs
// and the exergy each part wastes. Leaves out transcritical cycles: condensing at or above the critical point is refused.

import {
  type ReferenceStateName,
  type Refrigerant,
  referenceOffset,
  referenceStates,
  refrigerant,
  type Saturation,
  type State,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
} from '../matter/refrigerants/index.ts';
import { InputError, OutOfModelError } from '../numerics/index.ts';
import { type CheckedCycleRequest, checkTextbookCycleRequest, type TextbookCycleRequest } from './cycle-request.ts';
import type { CyclePoint, CycleWarning, ExergyBasis, PlainPointName, TextbookCycle } from './cycle-result.ts';
import {
  carnotHeatingCop,
  coefficientOfPerformance,
  enthalpyDifference,
  isentropicEfficiency,
  outletEnthalpyFromEfficiency,
  pressureRatio,
  volumetricHeatingCapacity,
} from './energy.ts';
import { type ExergyDestruction, exergyAccount, secondLawEfficiency } from './exergy.ts';

/** Nearer than this to the saturation line [K], temperature and pressure cannot tell the phases apart: it is on the line. */
export const onTheLine = 1e-6;

/**
 * Computes the textbook cycle.
 * @param request  see TextbookCycleRequest; checked here, so that a parsed line of JSON may be passed as it is
 * @returns        states, work, heats, COPs and exergy destruction; h, s and u on the reference state asked for
 * @throws InputError naming the key for impossible, missing, doubled, unknown or contradictory input;
 *         OutOfModelError (code 'condensingAboveCritical') for condensing at or above the critical point;
 *         OutOfModelError naming the point where a state leaves the equation's limits.
 * Validity: subcritical. Pitfall: the COPs are of the work on the gas; no motor, fan or pump is in them.
 * Source: Çengel & Boles, Thermodynamics, 8th ed., chapter 11 (from memory of the source).
 * Worked value: R134a, 0.14 to 0.8 MPa, no superheat or subcooling, efficiency 1 → cooling COP 3.97.
 */
export function textbookCycle(request: TextbookCycleRequest): TextbookCycle {
  const asked = checkTextbookCycleRequest(request);
  const fluid = refrigerant(asked.refrigerant);
  const levels = pressureLevels(fluid, asked);
  const points = statePoints(fluid, asked, levels);
  return withResults(fluid, asked, levels, points);
}

interface Levels {
  readonly evaporating: Saturation;
  readonly condensing: Saturation;
}

function pressureLevels(fluid: Refrigerant, asked: CheckedCycleRequest): Levels {
  const { evaporating, condensing } = asked;
  const { critical, limits } = fluid;
  if (condensing.key === 'condensing' && condensing.value >= critical.temperature) {
    const low = limits.temperatureMin;
    throw new OutOfModelError(
      'condensing',
      condensing.value,
      'K',
      low,
      critical.temperature,
      'condensingAboveCritical',
    );
  }
  if (condensing.key === 'condensingPressure' && condensing.value >= critical.pressure) {
    const { value } = condensing;
    throw new OutOfModelError('condensingPressure', value, 'Pa', 0, critical.pressure, 'condensingAboveCritical');
  }
  if (evaporating.key === 'evaporating' && evaporating.value >= critical.temperature) {
    const expected = `below the critical temperature, ${critical.temperature} K`;
    throw new InputError('evaporating', evaporating.value, expected);
  }
  if (evaporating.key === 'evaporatingPressure' && evaporating.value >= critical.pressure) {
    const expected = `below the critical pressure, ${critical.pressure} Pa`;
    throw new InputError('evaporatingPressure', evaporating.value, expected);
  }
  const low = naming(evaporating.key, () =>
    evaporating.key === 'evaporating'
      ? saturationAtTemperature(fluid, evaporating.value)
      : saturationAtPressure(fluid, evaporating.value),
  );
  const high = naming(condensing.key, () =>
    condensing.key === 'condensing'
      ? saturationAtTemperature(fluid, condensing.value)
      : saturationAtPressure(fluid, condensing.value),
  );
  if (!(high.pressure > low.pressure)) {
    const expected = `above the evaporator's ${low.vapour.temperature} K, ${low.pressure} Pa`;
    throw new InputError(condensing.key, condensing.value, expected, 'condensingBelowEvaporating');
  }
  return { evaporating: low, condensing: high };
}

interface StatePoints {
  readonly inlet: State;
  readonly isentropic: State;
  readonly outlet: State;
  readonly liquid: State;
  readonly expanded: State;
  readonly efficiency: number;
}

function statePoints(fluid: Refrigerant, asked: CheckedCycleRequest, levels: Levels): StatePoints {
  const inlet = compressorInlet(fluid, asked, levels.evaporating);
  const liquid = condenserOutlet(fluid, asked, levels.condensing);
  const pressure = levels.condensing.pressure;
  const isentropic = naming('compressorOutletIsentropic', () => stateAt(fluid, { pressure, entropy: inlet.entropy }));
  const { compression } = asked;
  let outlet: State;
  let efficiency: number;
  if (compression.key === 'isentropicEfficiency') {
    efficiency = compression.value;
    const enthalpy = outletEnthalpyFromEfficiency(inlet.enthalpy, isentropic.enthalpy, efficiency);
    outlet = efficiency === 1 ? isentropic : naming('compressorOutlet', () => stateAt(fluid, { pressure, enthalpy }));
  } else {
    outlet = outletFromTemperature(fluid, compression.value, levels.condensing, isentropic);
    efficiency = isentropicEfficiency(inlet.enthalpy, isentropic.enthalpy, outlet.enthalpy);
  }
  const evaporatorGiven = { pressure: levels.evaporating.pressure, enthalpy: liquid.enthalpy };
  const expanded = naming('evaporatorInlet', () => stateAt(fluid, evaporatorGiven));
  return { inlet, isentropic, outlet, liquid, expanded, efficiency };
}

function compressorInlet(fluid: Refrigerant, { suction }: CheckedCycleRequest, evaporating: Saturation): State {
  const dew = evaporating.vapour.temperature;
  const temperature = suction.key === 'superheat' ? dew + suction.value : suction.value;
  if (Math.abs(temperature - dew) <= onTheLine) return evaporating.vapour;
  if (temperature < dew) {
    const expected = `at least the evaporating dew temperature, ${dew} K`;
    throw new InputError(suction.key, suction.value, expected, 'suctionBelowEvaporating');
  }
  return naming(suction.key, () => stateAt(fluid, { temperature, pressure: evaporating.pressure }));
}

function condenserOutlet(fluid: Refrigerant, { liquid }: CheckedCycleRequest, condensing: Saturation): State {
  const bubble = condensing.liquid.temperature;
  const temperature = liquid.key === 'subcooling' ? bubble - liquid.value : liquid.value;
  if (Math.abs(temperature - bubble) <= onTheLine) return condensing.liquid;
  if (temperature > bubble) {
    const expected = `at most the condensing bubble temperature, ${bubble} K`;
    throw new InputError(liquid.key, liquid.value, expected, 'liquidAboveCondensing');
  }
  if (!(temperature >= fluid.limits.temperatureMin)) {
    const { temperatureMin } = fluid.limits;
    throw new InputError(liquid.key, liquid.value, `a liquid of at least ${temperatureMin} K, here ${temperature} K`);
  }
  return naming(liquid.key, () => stateAt(fluid, { temperature, pressure: condensing.pressure }));
}

function outletFromTemperature(
  fluid: Refrigerant,
  temperature: number,
  condensing: Saturation,
  isentropic: State,
): State {
  const expected = `a gas at least as hot as without losses, ${isentropic.temperature} K`;
  const refuse = () => new InputError('dischargeTemperature', temperature, expected, 'dischargeBelowIsentropic');
  if (temperature < isentropic.temperature - onTheLine) throw refuse();
  if (Math.abs(temperature - condensing.vapour.temperature) <= onTheLine) {
    // Wet without losses: the temperature alone does not say how wet the real gas is, unless it is on the line itself.
    throw new InputError('dischargeTemperature', temperature, 'a temperature above the dew line', 'saturatedPair');
  }
  if (Math.abs(temperature - isentropic.temperature) <= onTheLine) return isentropic;
  const outlet = naming('dischargeTemperature', () => stateAt(fluid, { temperature, pressure: condensing.pressure }));
  if (outlet.enthalpy < isentropic.enthalpy) throw refuse();
  return outlet;
}

function withResults(
  fluid: Refrigerant,
  asked: CheckedCycleRequest,
  { evaporating, condensing }: Levels,
  { inlet, isentropic, outlet, liquid, expanded, efficiency }: StatePoints,
): TextbookCycle {
  const specificWork = enthalpyDifference(outlet.enthalpy, inlet.enthalpy);
  const heatDelivered = enthalpyDifference(outlet.enthalpy, liquid.enthalpy);
  // The valve is isenthalpic: h4 is h3, not what a flash gives back of it.
  const heatTaken = enthalpyDifference(inlet.enthalpy, liquid.enthalpy);
  if (!(heatTaken > 0)) {
    const expected = 'a liquid whose enthalpy is below that of the gas at the compressor inlet';
    throw new InputError(asked.liquid.key, asked.liquid.value, expected, 'noCooling');
  }
  const exergy = exergyOf(asked, [inlet, outlet, liquid, expanded], { specificWork, heatDelivered, heatTaken });
  const offset = referenceOffset(fluid, asked.referenceState);
  const named = (name: PlainPointName, state: State): CyclePoint => ({
    name,
    ...state,
    enthalpy: state.enthalpy + offset.enthalpy,
    internalEnergy: state.internalEnergy + offset.enthalpy,
    entropy: state.entropy + offset.entropy,
  });
  const wet = isWet(isentropic) || isWet(outlet);
  return {
    refrigerant: fluid.name,
    points: [
      named('compressorInlet', inlet),
      named('compressorOutletIsentropic', isentropic),
      named('compressorOutlet', outlet),
      named('condenserOutlet', liquid),
      named('evaporatorInlet', { ...expanded, enthalpy: liquid.enthalpy }),
    ],
    evaporating: { temperature: evaporating.vapour.temperature, pressure: evaporating.pressure },
    condensing: { temperature: condensing.vapour.temperature, pressure: condensing.pressure },
    superheat: inlet === evaporating.vapour ? 0 : inlet.temperature - evaporating.vapour.temperature,
    subcooling: liquid === condensing.liquid ? 0 : condensing.liquid.temperature - liquid.temperature,
    isentropicEfficiency: efficiency,
    compressionGiven: asked.compression.key,
    pressureRatio: pressureRatio(condensing.pressure, evaporating.pressure),
    specificWork,
    heatDelivered,
    heatTaken,
    heatingCop: coefficientOfPerformance(heatDelivered, specificWork),
    coolingCop: coefficientOfPerformance(heatTaken, specificWork),
    carnotHeatingCop: carnotHeatingCop(condensing.vapour.temperature, evaporating.vapour.temperature),
    volumetricHeatingCapacity: volumetricHeatingCapacity(heatDelivered, inlet.density),
    exergyDestruction: exergy.destruction,
    exergyBasis: exergy.basis,
    referenceState: referenceWords(asked.referenceState),
    basis: 'textbook cycle, not electricity',
    warnings: wet ? [{ code: 'wetCompression', part: 'compressor' }, ...exergy.warnings] : exergy.warnings,
  };
}

function exergyOf(
  asked: CheckedCycleRequest,
  [s1, s2, s3, s4]: readonly [State, State, State, State],
  per: { specificWork: number; heatDelivered: number; heatTaken: number },
): { destruction: ExergyDestruction; basis: ExergyBasis; warnings: readonly CycleWarning[] } {
  const { deadState } = asked;
  const sinkTemperature = asked.sinkTemperature ?? deadState;
  const sourceTemperature = asked.sourceTemperature ?? deadState;
  const { destruction, minimumWork } = exergyAccount({
    entropies: [s1.entropy, s2.entropy, s3.entropy, s4.entropy],
    heatDelivered: per.heatDelivered,
    heatTaken: per.heatTaken,
    work: per.specificWork,
    deadState,
    sinkTemperature,
    sourceTemperature,
  });
  const rounding = -1e-9 * per.specificWork;
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
    secondLawEfficiency: secondLawEfficiency(minimumWork, per.specificWork),
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

/** Runs one step of the cycle so that an error of the equation of state names the step it came from. */
function naming<Result>(step: string, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (error instanceof OutOfModelError) {
      const { quantity, value, unit, low, high, code } = error;
      throw new OutOfModelError(`${step}: ${quantity}`, value, unit, low, high, code);
    }
    if (error instanceof InputError) {
      throw new InputError(`${step}: ${error.path}`, error.received, error.expected, error.code);
    }
    throw error;
  }
}
