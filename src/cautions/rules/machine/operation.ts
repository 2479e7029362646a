// Rules about where the loop settles, against what its compressor was built for. Each looks at every state it is given
// and speaks of the worst. Where the likely value keeps a limit and an end of its range does not, the finding says both.
// The limits are typical application guides, from memory: they can warn, and nothing here ever says that a machine is
// within them. A data sheet of the very compressor goes before all of them.

import type { CautionFinding } from '../../fact.ts';
import {
  electricPower,
  highEnd,
  highestBy,
  likelyOf,
  lowEnd,
  lowestBy,
  pressure,
  quantity,
  ratio,
  temperature,
  temperatureDifference,
  word,
} from '../../fact.ts';
import type { CautionFacts, OperatingFacts, RangedFact } from '../../facts.ts';

export type OperationFacts = Pick<
  CautionFacts,
  'operating' | 'limits' | 'application' | 'atmosphericPressure' | 'hardestAllowedPower'
>;

/**
 * Power over that of the hardest point an application allows, above which the motor is taken to be overloaded [-].
 * Own judgement: model and application limits together are doubtful by some 20 %, so what is beyond 25 % is beyond doubt.
 */
const overloadedPowerRatio = 1.25;

/** Pressure ratio below which capillary or valve may starve the evaporator: common practice, no source. */
const lowestUsualPressureRatio = 2;

/** Evaporating above the application, the motor would take clearly more than at the hardest point it was built for. */
export function motorOverloaded(facts: OperationFacts): CautionFinding | undefined {
  const above = facts.operating.filter((each) => evaporating(each) > facts.limits.evaporating.highest);
  const { hardestAllowedPower: allowed } = facts;
  if (above.length === 0 || allowed === null) return undefined;
  const state = highestBy(above, (each) => each.compressorPower);
  if (state.compressorPower <= overloadedPowerRatio * allowed) return undefined;
  return {
    code: 'motorOverloaded',
    severity: 'stop',
    subject: 'machine',
    facts: evaporatingFacts(facts, state, facts.limits.evaporating.highest),
    source: `${facts.limits.source}; the powers by the same compressor model`,
    certainty: 'memory',
    remedy:
      'Choose a compressor built for warmer evaporation, or a colder source; or let the maker’s data sheet show that this very motor may run there.',
    needsLicensedPerson: false,
  };
}

/** In some state the evaporating temperature is, or may be, above the application: the motor may be overloaded. */
export function evaporatingAboveApplication(facts: OperationFacts): CautionFinding | undefined {
  if (motorOverloaded(facts) !== undefined) return undefined;
  const { highest } = facts.limits.evaporating;
  const state = stateAbove(facts.operating, 'evaporatingTemperature', highest);
  if (state === undefined) return undefined;
  return {
    code: 'evaporatingAboveApplication',
    severity: 'look',
    subject: 'machine',
    facts: { ...evaporatingFacts(facts, state, highest), ...highEndFact(state, 'evaporatingTemperature', highest) },
    source: facts.limits.source,
    certainty: 'memory',
    remedy:
      'Only the data sheet of this very compressor can say whether its motor bears it. A compressor for warmer evaporation, or a smaller evaporator that runs colder, keeps it within what it was built for; every start after a long pause is harder than the steady run.',
    needsLicensedPerson: false,
  };
}

/** In some state the evaporating temperature is, or may be, below the application: little flow to cool the motor. */
export function evaporatingBelowApplication(facts: OperationFacts): CautionFinding | undefined {
  const { lowest } = facts.limits.evaporating;
  const state = stateBelow(facts.operating, 'evaporatingTemperature', lowest);
  if (state === undefined) return undefined;
  return {
    code: 'evaporatingBelowApplication',
    severity: 'look',
    subject: 'machine',
    facts: { ...evaporatingFacts(facts, state, lowest), ...lowEndFact(state, 'evaporatingTemperature', lowest) },
    source: facts.limits.source,
    certainty: 'memory',
    remedy:
      'Thin gas cools the motor badly. A warmer source, a larger evaporator, or a compressor built for colder work.',
    needsLicensedPerson: false,
  };
}

/** The discharge line is likely hotter than oil and valves are said to bear. */
export function dischargeAboveHighest(facts: OperationFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, discharge);
  if (discharge(state) <= facts.limits.discharge.highest) return undefined;
  return dischargeFinding('dischargeAboveHighest', facts, state, facts.limits.discharge.highest);
}

/** The discharge line is, or may be, close to that limit; at the valve the gas is hotter by some 15 to 30 K. */
export function dischargeNearHighest(facts: OperationFacts): CautionFinding | undefined {
  const { caution, highest } = facts.limits.discharge;
  if (discharge(highestBy(facts.operating, discharge)) > highest) return undefined;
  const state = stateAbove(facts.operating, 'dischargeTemperature', caution);
  return state === undefined ? undefined : dischargeFinding('dischargeNearHighest', facts, state, caution);
}

/** Condensing above what the machine bears even for a short time. It would do so all the time here. */
export function condensingAbovePeak(facts: OperationFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, condensing);
  const { peak } = facts.limits.condensing;
  if (state.condensingTemperature <= peak) return undefined;
  return {
    code: 'condensingAbovePeak',
    severity: 'stop',
    subject: 'machine',
    facts: condensingFacts(facts, state, peak),
    source: facts.limits.source,
    certainty: 'memory',
    remedy:
      'A larger condenser or a closer approach to the water; the pressure at this temperature is not for this machine.',
    needsLicensedPerson: false,
  };
}

/** Condensing likely, or at the end of its range, above what the machine bears continuously. */
export function condensingAboveContinuous(facts: OperationFacts): CautionFinding | undefined {
  const { continuous, peak } = facts.limits.condensing;
  if (condensing(highestBy(facts.operating, condensing)) > peak) return undefined;
  const state = stateAbove(facts.operating, 'condensingTemperature', continuous);
  if (state === undefined) return undefined;
  return {
    code: 'condensingAboveContinuous',
    severity: 'look',
    subject: 'machine',
    facts: {
      ...condensingFacts(facts, state, continuous),
      ...highEndFact(state, 'condensingTemperature', continuous),
    },
    source: facts.limits.source,
    certainty: 'memory',
    remedy: 'A larger condenser or more water flow brings the condensing temperature nearer to the tank.',
    needsLicensedPerson: false,
  };
}

/** So little lift, likely or at the end of its range, that the flow may not pass and the oil may not come round. */
export function pressureRatioTooLow(facts: OperationFacts): CautionFinding | undefined {
  const state = stateBelow(facts.operating, 'pressureRatio', lowestUsualPressureRatio);
  if (state === undefined) return undefined;
  return {
    code: 'pressureRatioTooLow',
    severity: 'look',
    subject: 'machine',
    facts: {
      ...ratioFacts(state, lowestUsualPressureRatio),
      ...lowEndFact(state, 'pressureRatio', lowestUsualPressureRatio),
      lift: temperatureDifference(state.condensingTemperature - state.evaporatingTemperature),
    },
    source: 'common practice, no source',
    certainty: 'practice',
    remedy:
      'A capillary made for a larger difference starves the evaporator here. Reckon with a machine that does not settle where this result says.',
    needsLicensedPerson: false,
  };
}

/** A pressure ratio, likely or at the end of its range, that small machines do not do in one stage. */
export function pressureRatioAboveHighest(facts: OperationFacts): CautionFinding | undefined {
  const { highest } = facts.limits.pressureRatio;
  const state = stateAbove(facts.operating, 'pressureRatio', highest);
  if (state === undefined) return undefined;
  return {
    code: 'pressureRatioAboveHighest',
    severity: 'look',
    subject: 'machine',
    facts: { ...ratioFacts(state, highest), ...highEndFact(state, 'pressureRatio', highest) },
    source: facts.limits.source,
    certainty: 'memory',
    remedy: 'A warmer source or a closer approach; at this ratio little gas is pumped and it leaves very hot.',
    needsLicensedPerson: false,
  };
}

/** A pressure ratio, likely or at the end of its range, near that limit. */
export function pressureRatioHigh(facts: OperationFacts): CautionFinding | undefined {
  if (pressureRatioAboveHighest(facts) !== undefined) return undefined;
  const { caution } = facts.limits.pressureRatio;
  const state = stateAbove(facts.operating, 'pressureRatio', caution);
  if (state === undefined) return undefined;
  return {
    code: 'pressureRatioHigh',
    severity: 'note',
    subject: 'machine',
    facts: { ...ratioFacts(state, caution), ...highEndFact(state, 'pressureRatio', caution) },
    source: facts.limits.source,
    certainty: 'memory',
    remedy: 'A warmer source or a closer approach gives more heat for less electricity.',
    needsLicensedPerson: false,
  };
}

/** The low side works, or may work, below the pressure of the air: a leak there draws air and moisture in. */
export function suctionBelowAtmosphere(facts: OperationFacts): CautionFinding | undefined {
  const state = stateBelow(facts.operating, 'evaporatingPressure', facts.atmosphericPressure);
  if (state === undefined) return undefined;
  return {
    code: 'suctionBelowAtmosphere',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      evaporatingPressure: pressure(state.evaporatingPressure),
      ...lowEndFact(state, 'evaporatingPressure', facts.atmosphericPressure),
      atmosphericPressure: pressure(facts.atmosphericPressure),
    },
    source: 'physics: gas flows from the higher pressure to the lower',
    certainty: 'physics',
    remedy:
      'A leak on the low side would draw in air and moisture unseen, with a flammable fluid a mixture that burns. A warmer source or a larger evaporator raises the pressure.',
    needsLicensedPerson: true,
  };
}

/** The evaporator freezes, or may freeze, the moisture of the air onto itself. */
export function frostOnEvaporator(facts: OperationFacts): CautionFinding | undefined {
  const state = stateBelow(facts.operating, 'evaporatingTemperature', freezing);
  if (state === undefined) return undefined;
  return {
    code: 'frostOnEvaporator',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      evaporatingTemperature: temperature(state.evaporatingTemperature),
      ...lowEndFact(state, 'evaporatingTemperature', freezing),
      sourceTemperature: temperature(state.sourceTemperature),
    },
    source: 'physics: moisture freezes on a surface below 0 °C',
    certainty: 'physics',
    remedy:
      'Frost blocks the air and the heat falls; defrosting costs time and energy that this result does not count. A larger evaporator or a warmer source keeps it above freezing.',
    needsLicensedPerson: false,
  };
}

/** The evaporator is colder than the dew point of the air: it drips. */
export function condensateOnEvaporator(facts: OperationFacts): CautionFinding | undefined {
  const wet = facts.operating.filter(isWet);
  if (wet.length === 0) return undefined;
  const state = wet.reduce((worst, each) => (belowDewPoint(each) > belowDewPoint(worst) ? each : worst));
  return {
    code: 'condensateOnEvaporator',
    severity: 'note',
    subject: 'house',
    facts: {
      when: word(state.when),
      evaporatingTemperature: temperature(state.evaporatingTemperature),
      dewPoint: temperature(state.sourceDewPoint),
    },
    source: 'physics: vapour condenses on a surface below the dew point of the air',
    certainty: 'physics',
    remedy:
      'Catch the water in a tray with a drain, away from electrical parts, and never lead it into the tank: it carries metal from the fins.',
    needsLicensedPerson: false,
  };
}

const freezing = 273.15;

const evaporating = (state: OperatingFacts) => state.evaporatingTemperature;
const condensing = (state: OperatingFacts) => state.condensingTemperature;
const discharge = (state: OperatingFacts) => state.dischargeTemperature;

/** Quantity of each ranged fact, as the finding carries it. */
const quantities: Readonly<Record<RangedFact, string>> = {
  evaporatingTemperature: 'temperature',
  condensingTemperature: 'temperature',
  evaporatingPressure: 'pressure',
  condensingPressure: 'pressure',
  dischargeTemperature: 'temperature',
  pressureRatio: 'ratio',
};

/** The state whose likely value is furthest above the limit; failing that, the one whose range reaches furthest above. */
function stateAbove(states: readonly OperatingFacts[], name: RangedFact, limit: number): OperatingFacts | undefined {
  const likely = highestBy(states, (each) => likelyOf(each, name));
  if (likelyOf(likely, name) > limit) return likely;
  const reaching = highestBy(states, (each) => highEnd(each, name));
  return highEnd(reaching, name) > limit ? reaching : undefined;
}

/** The same below a limit. */
function stateBelow(states: readonly OperatingFacts[], name: RangedFact, limit: number): OperatingFacts | undefined {
  const likely = lowestBy(states, (each) => likelyOf(each, name));
  if (likelyOf(likely, name) < limit) return likely;
  const reaching = lowestBy(states, (each) => lowEnd(each, name));
  return lowEnd(reaching, name) < limit ? reaching : undefined;
}

/** The end of the range, where only that passes the limit. */
function highEndFact(state: OperatingFacts, name: RangedFact, limit: number): CautionFinding['facts'] {
  return likelyOf(state, name) > limit ? {} : { endOfRange: quantity(highEnd(state, name), quantities[name]) };
}

function lowEndFact(state: OperatingFacts, name: RangedFact, limit: number): CautionFinding['facts'] {
  return likelyOf(state, name) < limit ? {} : { endOfRange: quantity(lowEnd(state, name), quantities[name]) };
}

/** A state whose evaporator is wet, and not frozen; its air's dew point is known. */
type WetFacts = OperatingFacts & { readonly sourceDewPoint: number };

function isWet(state: OperatingFacts): state is WetFacts {
  const { sourceDewPoint, evaporatingTemperature } = state;
  return sourceDewPoint !== null && evaporatingTemperature >= freezing && evaporatingTemperature < sourceDewPoint;
}

function belowDewPoint({ sourceDewPoint, evaporatingTemperature }: WetFacts): number {
  return sourceDewPoint - evaporatingTemperature;
}

function ratioFacts(state: OperatingFacts, limit: number): CautionFinding['facts'] {
  return { when: word(state.when), pressureRatio: ratio(likelyOf(state, 'pressureRatio')), limit: ratio(limit) };
}

function evaporatingFacts(facts: OperationFacts, state: OperatingFacts, limit: number): CautionFinding['facts'] {
  return {
    when: word(state.when),
    application: word(facts.application),
    evaporatingTemperature: temperature(state.evaporatingTemperature),
    limit: temperature(limit),
    beyond: temperatureDifference(Math.abs(state.evaporatingTemperature - limit)),
    power: electricPower(state.compressorPower),
    ...(facts.hardestAllowedPower === null ? {} : { hardestAllowedPower: electricPower(facts.hardestAllowedPower) }),
  };
}

function condensingFacts(facts: OperationFacts, state: OperatingFacts, limit: number): CautionFinding['facts'] {
  return {
    when: word(state.when),
    application: word(facts.application),
    condensingTemperature: temperature(state.condensingTemperature),
    condensingPressure: pressure(state.condensingPressure),
    limit: temperature(limit),
  };
}

function dischargeFinding(
  code: 'dischargeAboveHighest' | 'dischargeNearHighest',
  facts: OperationFacts,
  state: OperatingFacts,
  limit: number,
): CautionFinding {
  return {
    code,
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      dischargeTemperature: temperature(state.dischargeTemperature),
      ...highEndFact(state, 'dischargeTemperature', limit),
      limit: temperature(limit),
    },
    source: facts.limits.source,
    certainty: 'memory',
    remedy:
      'Oil chars and valves leak when the gas leaves this hot. A smaller lift, less superheat at the compressor or another fluid brings it down.',
    needsLicensedPerson: false,
  };
}
