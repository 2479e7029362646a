// Rules about the motor of the machine: its current against what is printed on it, the pressure it was matched to, its
// warmth, and liquid that comes back to it. Conventions and guides are from memory; they warn, and silence clears nothing.

import type { CautionFinding } from '../../fact.ts';
import { current, highestBy, pressure, ratio, temperature, temperatureDifference, word } from '../../fact.ts';
import type { CautionFacts, OperatingFacts } from '../../facts.ts';
import type { MachineStateFacts } from '../../machine-facts.ts';
import { evaporatingAboveApplication, motorOverloaded, type OperationFacts } from './operation.ts';

export type MotorFacts = OperationFacts & Pick<CautionFacts, 'machine' | 'fluid' | 'madeFor'>;

/**
 * Current over the highest that a motor bears for long, above which it is taken to trip without doubt [-].
 * Own judgement: the model's current is doubtful by some 20 %, so what is beyond 25 % is beyond doubt.
 */
const trippingCurrentRatio = 1.25;

/** The motor would trip: by its current against its nameplate, or because it evaporates where its load is too much. */
export function motorWouldTrip(facts: MotorFacts): CautionFinding | undefined {
  return tripByCurrent(facts) ?? tripByEvaporating(facts);
}

function tripByCurrent({ operating, machine }: MotorFacts): CautionFinding | undefined {
  const bears = machine?.continuousCurrent ?? null;
  const state = highestLikely(operating, 'current');
  if (bears === null || state === undefined || state.likely <= trippingCurrentRatio * bears) return undefined;
  return {
    code: 'motorWouldTrip',
    severity: 'stop',
    subject: 'machine',
    facts: {
      when: word(state.when),
      current: current(state.likely),
      limit: current(bears),
      ...(machine?.trip ? { tripsAt: temperature(machine.trip.evaporating) } : {}),
    },
    source: 'conventions of rated and maximum continuous current, from memory; the current by the compressor model',
    certainty: 'memory',
    remedy:
      'Limit the suction pressure, condense colder, or choose a machine whose motor is made for this. Its protector is never bridged.',
    needsLicensedPerson: false,
  };
}

/** Silent where the power alone says so already. */
function tripByEvaporating(facts: MotorFacts): CautionFinding | undefined {
  const trip = facts.machine?.trip ?? null;
  if (trip === null || motorOverloaded(facts) !== undefined) return undefined;
  const state = highestBy(facts.operating, (each) => each.evaporatingTemperature);
  if (state.evaporatingTemperature < trip.evaporating) return undefined;
  return {
    code: 'motorWouldTrip',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      evaporatingTemperature: temperature(state.evaporatingTemperature),
      tripsAt: temperature(trip.evaporating),
    },
    source:
      'the compressor model at the hardest point its application allows, and conventions of currents, from memory',
    certainty: 'memory',
    remedy:
      'Limit the suction pressure, condense colder, or choose a machine made for warmer evaporation. Its protector is never bridged.',
    needsLicensedPerson: false,
  };
}

/** It takes, or may take, more current than is printed on it. */
export function currentAboveRated(facts: MotorFacts): CautionFinding | undefined {
  const rated = facts.machine?.ratedCurrent ?? null;
  if (rated === null || tripByCurrent(facts) !== undefined) return undefined;
  const state = likelyOrEndAbove(facts.operating, 'current', rated);
  if (state === undefined) return undefined;
  const bears = facts.machine?.continuousCurrent ?? null;
  return {
    code: 'currentAboveRated',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      current: current(state.likely),
      ...(state.likely > rated ? {} : { endOfRange: current(state.high) }),
      limit: current(rated),
      share: ratio((state.likely > rated ? state.likely : state.high) / rated),
      ...(bears !== null && state.high > bears ? { bears: current(bears) } : {}),
    },
    source: 'the nameplate; the current by the compressor model; conventions of currents, from memory',
    certainty: 'memory',
    remedy:
      'Nameplates mean different things by it, and only a measurement tells. Less suction pressure, colder condensing or a machine for warmer evaporation brings it down.',
    needsLicensedPerson: false,
  };
}

/** Gas denser than the motor was matched to, where the evaporating temperature alone does not say so: another fluid. */
export function suctionAboveMotor(facts: MotorFacts): CautionFinding | undefined {
  const highest = facts.machine?.highestSuctionPressure ?? null;
  if (highest === null || motorOverloaded(facts) !== undefined) return undefined;
  if (evaporatingAboveApplication(facts) !== undefined) return undefined;
  const state = highestBy(facts.operating, (each) => each.evaporatingPressure);
  if (state.evaporatingPressure <= highest) return undefined;
  return {
    code: 'suctionAboveMotor',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      fluid: word(facts.fluid.name),
      madeFor: word(facts.madeFor.name),
      evaporatingPressure: pressure(state.evaporatingPressure),
      limit: pressure(highest),
    },
    source: `${facts.limits.source}; saturation pressure of the fluid it was made for at the highest evaporating temperature`,
    certainty: 'memory',
    remedy: 'Keep to the fluid on the rating plate, or limit the suction pressure to what the motor was matched to.',
    needsLicensedPerson: false,
  };
}

/** Shell and motor stand, or may stand, so warm that too little gas cools them. */
export function littleFlowToCoolMotor({ operating, machine }: MotorFacts): CautionFinding | undefined {
  const limits = machine?.wall ?? null;
  if (limits === null) return undefined;
  const state = likelyOrEndAbove(operating, 'wallTemperature', limits.caution);
  if (state === undefined) return undefined;
  return {
    code: 'littleFlowToCoolMotor',
    severity: state.likely > limits.beyond ? 'look' : 'note',
    subject: 'machine',
    facts: {
      when: word(state.when),
      wallTemperature: temperature(state.likely),
      ...(state.likely > limits.caution ? {} : { endOfRange: temperature(state.high) }),
      limit: temperature(limits.caution),
      insulation: temperature(limits.beyond),
    },
    source: limits.source,
    certainty: 'memory',
    remedy:
      'More gas cools the motor: a warmer source, less superheat at the shell, colder condensing. A fan on the dome takes heat away that the tank then does not get.',
    needsLicensedPerson: false,
  };
}

/** The gas returns with so little superheat that drops come along. */
export function floodBack({ operating, machine }: MotorFacts): CautionFinding | undefined {
  const limits = machine?.superheat ?? null;
  const state = lowestSuperheat(operating);
  if (limits === null || state === undefined || state.superheat.likely >= limits.beyond) return undefined;
  return superheatFinding('floodBack', 'look', state, limits.beyond, limits.source);
}

/** The gas likely returns with little superheat, or may return nearly wet: drops come along when anything changes. */
export function returnGasTooCold(facts: MotorFacts): CautionFinding | undefined {
  const limits = facts.machine?.superheat ?? null;
  const state = lowestSuperheat(facts.operating);
  if (limits === null || state === undefined || floodBack(facts) !== undefined) return undefined;
  const { likely, low } = state.superheat;
  if (likely < limits.caution)
    return superheatFinding('returnGasTooCold', 'note', state, limits.caution, limits.source);
  if (low >= limits.beyond) return undefined;
  return superheatFinding('returnGasTooCold', 'note', state, limits.beyond, limits.source);
}

interface Superheated {
  readonly when: string;
  readonly superheat: NonNullable<MachineStateFacts['superheat']>;
}

function superheatFinding(
  code: 'floodBack' | 'returnGasTooCold',
  severity: 'look' | 'note',
  { when, superheat }: Superheated,
  limit: number,
  source: string,
): CautionFinding {
  return {
    code,
    severity,
    subject: 'machine',
    facts: {
      when: word(when),
      superheat: temperatureDifference(superheat.likely),
      ...(superheat.likely < limit ? {} : { endOfRange: temperatureDifference(superheat.low) }),
      limit: temperatureDifference(limit),
    },
    source,
    certainty: 'memory',
    remedy:
      'Liquid washes the oil out of the bearings and breaks valves. Superheat at the shell is for a licensed technician to set and to measure; a place that catches liquid before the shell helps.',
    needsLicensedPerson: true,
  };
}

/** The state whose gas may be least superheated. */
function lowestSuperheat(operating: readonly OperatingFacts[]): Superheated | undefined {
  const known = operating.flatMap(({ when, machine }) =>
    machine?.superheat ? [{ when, superheat: machine.superheat }] : [],
  );
  return known.sort((one, other) => one.superheat.low - other.superheat.low)[0];
}

interface Standing {
  readonly when: string;
  readonly likely: number;
  readonly high: number;
}

function standings(operating: readonly OperatingFacts[], name: 'current' | 'wallTemperature'): readonly Standing[] {
  return operating.flatMap(({ when, machine }) => {
    const band = machine?.[name] ?? null;
    return band === null ? [] : [{ when, likely: band.likely, high: band.high }];
  });
}

function highestLikely(operating: readonly OperatingFacts[], name: 'current'): Standing | undefined {
  return [...standings(operating, name)].sort((one, other) => other.likely - one.likely)[0];
}

/** The state whose likely value is furthest above a limit; failing that, the one whose range reaches furthest above. */
function likelyOrEndAbove(
  operating: readonly OperatingFacts[],
  name: 'current' | 'wallTemperature',
  limit: number,
): Standing | undefined {
  const states = [...standings(operating, name)];
  const likely = states.filter((each) => each.likely > limit).sort((one, other) => other.likely - one.likely)[0];
  return likely ?? states.filter((each) => each.high > limit).sort((one, other) => other.high - one.high)[0];
}
