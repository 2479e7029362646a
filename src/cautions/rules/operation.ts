// Rules about where the loop settles, against what its compressor was built for. Each looks at every state it is given
// and speaks of the worst. The limits are typical application guides, from memory: they can warn, and nothing here ever
// says that a machine is within them. A data sheet of the very compressor goes before all of them.

import type { CautionFinding } from '../fact.ts';
import {
  electricPower,
  highestBy,
  lowestBy,
  pressure,
  ratio,
  temperature,
  temperatureDifference,
  word,
} from '../fact.ts';
import type { CautionFacts, OperatingFacts } from '../facts.ts';

export type OperationFacts = Pick<
  CautionFacts,
  'operating' | 'limits' | 'application' | 'atmosphericPressure' | 'hardestAllowedPower'
>;

/**
 * Power over that of the hardest point an application allows, above which the motor is taken to be overloaded [-].
 * Own judgement: model and application limits together are doubtful by some 20 %, so what is beyond 25 % is beyond doubt.
 */
export const overloadedPowerRatio = 1.25;

/** Pressure ratio below which capillary or valve may starve the evaporator: common practice, no source. */
export const lowestUsualPressureRatio = 2;

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
    remedy:
      'Choose a compressor built for warmer evaporation, or a colder source; or let the maker’s data sheet show that this very motor may run there.',
    needsLicensedPerson: false,
  };
}

/** In some state the evaporating temperature is above the application: the motor may be overloaded. */
export function evaporatingAboveApplication(facts: OperationFacts): CautionFinding | undefined {
  if (motorOverloaded(facts) !== undefined) return undefined;
  const state = highestBy(facts.operating, evaporating);
  const { highest } = facts.limits.evaporating;
  if (state.evaporatingTemperature <= highest) return undefined;
  return {
    code: 'evaporatingAboveApplication',
    severity: 'look',
    subject: 'machine',
    facts: evaporatingFacts(facts, state, highest),
    source: facts.limits.source,
    remedy:
      'Only the data sheet of this very compressor can say whether its motor bears it. A compressor for warmer evaporation, or a smaller evaporator that runs colder, keeps it within what it was built for; every start after a long pause is harder than the steady run.',
    needsLicensedPerson: false,
  };
}

/** In some state the evaporating temperature is below the application: little flow to cool the motor. */
export function evaporatingBelowApplication(facts: OperationFacts): CautionFinding | undefined {
  const state = lowestBy(facts.operating, evaporating);
  const { lowest } = facts.limits.evaporating;
  if (state.evaporatingTemperature >= lowest) return undefined;
  return {
    code: 'evaporatingBelowApplication',
    severity: 'look',
    subject: 'machine',
    facts: evaporatingFacts(facts, state, lowest),
    source: facts.limits.source,
    remedy:
      'Thin gas cools the motor badly. A warmer source, a larger evaporator, or a compressor built for colder work.',
    needsLicensedPerson: false,
  };
}

/** The discharge line is hotter than oil and valves are said to bear. */
export function dischargeAboveHighest(facts: OperationFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, (each) => each.dischargeTemperature);
  if (state.dischargeTemperature <= facts.limits.discharge.highest) return undefined;
  return dischargeFinding('dischargeAboveHighest', facts, state, facts.limits.discharge.highest);
}

/** The discharge line is close to that limit; at the valve the gas is hotter by some 15 to 30 K. */
export function dischargeNearHighest(facts: OperationFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, (each) => each.dischargeTemperature);
  const { caution, highest } = facts.limits.discharge;
  if (state.dischargeTemperature <= caution || state.dischargeTemperature > highest) return undefined;
  return dischargeFinding('dischargeNearHighest', facts, state, caution);
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
    remedy:
      'A larger condenser or a closer approach to the water; the pressure at this temperature is not for this machine.',
    needsLicensedPerson: false,
  };
}

/** Condensing above what the machine bears continuously. */
export function condensingAboveContinuous(facts: OperationFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, condensing);
  const { continuous, peak } = facts.limits.condensing;
  if (state.condensingTemperature <= continuous || state.condensingTemperature > peak) return undefined;
  return {
    code: 'condensingAboveContinuous',
    severity: 'look',
    subject: 'machine',
    facts: condensingFacts(facts, state, continuous),
    source: facts.limits.source,
    remedy: 'A larger condenser or more water flow brings the condensing temperature nearer to the tank.',
    needsLicensedPerson: false,
  };
}

/** So little lift that capillary or valve may not pass the flow, and the oil may not come round. */
export function pressureRatioTooLow(facts: OperationFacts): CautionFinding | undefined {
  const state = lowestBy(facts.operating, pressureRatio);
  if (pressureRatio(state) >= lowestUsualPressureRatio) return undefined;
  return {
    code: 'pressureRatioTooLow',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      pressureRatio: ratio(pressureRatio(state)),
      limit: ratio(lowestUsualPressureRatio),
      lift: temperatureDifference(state.condensingTemperature - state.evaporatingTemperature),
    },
    source: 'common practice, no source',
    remedy:
      'A capillary made for a larger difference starves the evaporator here. Reckon with a machine that does not settle where this result says.',
    needsLicensedPerson: false,
  };
}

/** A pressure ratio that small machines do not do in one stage. */
export function pressureRatioAboveHighest(facts: OperationFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, pressureRatio);
  const { highest } = facts.limits.pressureRatio;
  if (pressureRatio(state) <= highest) return undefined;
  return {
    code: 'pressureRatioAboveHighest',
    severity: 'look',
    subject: 'machine',
    facts: { when: word(state.when), pressureRatio: ratio(pressureRatio(state)), limit: ratio(highest) },
    source: facts.limits.source,
    remedy: 'A warmer source or a closer approach; at this ratio little gas is pumped and it leaves very hot.',
    needsLicensedPerson: false,
  };
}

/** A pressure ratio near that limit. */
export function pressureRatioHigh(facts: OperationFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, pressureRatio);
  const { caution, highest } = facts.limits.pressureRatio;
  if (pressureRatio(state) <= caution || pressureRatio(state) > highest) return undefined;
  return {
    code: 'pressureRatioHigh',
    severity: 'note',
    subject: 'machine',
    facts: { when: word(state.when), pressureRatio: ratio(pressureRatio(state)), limit: ratio(caution) },
    source: facts.limits.source,
    remedy: 'A warmer source or a closer approach gives more heat for less electricity.',
    needsLicensedPerson: false,
  };
}

/** The low side works below the pressure of the air: a leak there draws air and moisture in. */
export function suctionBelowAtmosphere(facts: OperationFacts): CautionFinding | undefined {
  const state = lowestBy(facts.operating, (each) => each.evaporatingPressure);
  if (state.evaporatingPressure >= facts.atmosphericPressure) return undefined;
  return {
    code: 'suctionBelowAtmosphere',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      evaporatingPressure: pressure(state.evaporatingPressure),
      atmosphericPressure: pressure(facts.atmosphericPressure),
    },
    source: 'physics: gas flows from the higher pressure to the lower',
    remedy:
      'A leak on the low side would draw in air and moisture unseen, with a flammable fluid a mixture that burns. A warmer source or a larger evaporator raises the pressure.',
    needsLicensedPerson: true,
  };
}

/** The evaporator freezes the moisture of the air onto itself. */
export function frostOnEvaporator(facts: OperationFacts): CautionFinding | undefined {
  const state = lowestBy(facts.operating, evaporating);
  if (state.evaporatingTemperature >= freezing) return undefined;
  return {
    code: 'frostOnEvaporator',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      evaporatingTemperature: temperature(state.evaporatingTemperature),
      sourceTemperature: temperature(state.sourceTemperature),
    },
    source: 'physics: moisture freezes on a surface below 0 °C',
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
    remedy:
      'Catch the water in a tray with a drain, away from electrical parts, and never lead it into the tank: it carries metal from the fins.',
    needsLicensedPerson: false,
  };
}

const freezing = 273.15;

const evaporating = (state: OperatingFacts) => state.evaporatingTemperature;
const condensing = (state: OperatingFacts) => state.condensingTemperature;
const pressureRatio = (state: OperatingFacts) => state.condensingPressure / state.evaporatingPressure;

/** A state whose evaporator is wet, and not frozen; its air's dew point is known. */
type WetFacts = OperatingFacts & { readonly sourceDewPoint: number };

function isWet(state: OperatingFacts): state is WetFacts {
  const { sourceDewPoint, evaporatingTemperature } = state;
  return sourceDewPoint !== null && evaporatingTemperature >= freezing && evaporatingTemperature < sourceDewPoint;
}

function belowDewPoint({ sourceDewPoint, evaporatingTemperature }: WetFacts): number {
  return sourceDewPoint - evaporatingTemperature;
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
      limit: temperature(limit),
    },
    source: facts.limits.source,
    remedy:
      'Oil chars and valves leak when the gas leaves this hot. A smaller lift, less superheat at the compressor or another fluid brings it down.',
    needsLicensedPerson: false,
  };
}
