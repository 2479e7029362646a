// Rules about refrigerant where it is not wanted: more flow than the appliance's own capillary passes, liquid that gathers
// in the coldest part while the machine rests, oil that takes up water. Common practice and physics; they warn only.

import type { CautionFinding } from '../../fact.ts';
import { electricPower, highestBy, lowestBy, massFlow, ratio, temperature, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';

export type RestAndFlowFacts = Pick<
  CautionFacts,
  | 'fluid'
  | 'madeFor'
  | 'operating'
  | 'ratedMassFlow'
  | 'application'
  | 'shellSurroundings'
  | 'otherRoomVolume'
  | 'machine'
>;

/** Flow over that of the usual rating point, above which the appliance's own capillary is likely too tight: own judgement. */
const capillaryFlowRatio = 1.5;

/** Colder by this than the other parts, a resting part draws the refrigerant to itself [K]: own judgement. */
const migrationDifference = 2;

/** Oils that take up water from the air. */
const thirstyOils: readonly string[] = ['polyolester', 'polyvinylether', 'polyalkyleneglycol'];

/** Warm evaporation moves far more refrigerant than the capillary of a colder appliance lets through. */
export function capillaryTooTight(facts: RestAndFlowFacts): CautionFinding | undefined {
  const { ratedMassFlow: rated } = facts;
  if (rated === null) return undefined;
  const state = highestBy(facts.operating, (each) => each.massFlow);
  if (state.massFlow <= capillaryFlowRatio * rated) return undefined;
  return {
    code: 'capillaryTooTight',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      application: word(facts.application),
      massFlow: massFlow(state.massFlow),
      ratedMassFlow: massFlow(rated),
      times: ratio(state.massFlow / rated),
    },
    source: 'own judgement: flows by the same compressor model, here and at the rating point usual for its application',
    certainty: 'practice',
    remedy:
      'Do not count on the capillary the machine came with: it would starve the evaporator, which then settles colder and gives less heat. What meters the refrigerant is for a licensed technician to choose.',
    needsLicensedPerson: true,
  };
}

/** The compressor rests colder than the rest of the circuit: liquid gathers in its oil, and the next start foams. */
export function migrationToCompressor(facts: RestAndFlowFacts): CautionFinding | undefined {
  const { shellSurroundings: shell } = facts;
  const state = lowestBy(facts.operating, (each) => each.sourceTemperature);
  const outdoors = shell === null;
  if (!outdoors && shell > state.sourceTemperature - migrationDifference && !isWithColdEvaporator(facts)) {
    return undefined;
  }
  return {
    code: 'migrationToCompressor',
    severity: isHeated(facts) ? 'note' : 'look',
    subject: 'machine',
    facts: {
      ...(outdoors ? {} : { shell: temperature(shell) }),
      room: temperature(state.roomTemperature),
      ...heaterFacts(facts),
    },
    source: 'physics: at rest, refrigerant condenses in the coldest part of the circuit',
    certainty: 'physics',
    remedy:
      'Stand the compressor in a place warmer than the evaporator. A heater for its oil is for a licensed technician to fit.',
    needsLicensedPerson: true,
  };
}

/** The evaporator rests colder than the compressor: liquid gathers there and comes back at the next start. */
export function migrationToEvaporator(facts: RestAndFlowFacts): CautionFinding | undefined {
  const { shellSurroundings: shell } = facts;
  const state = lowestBy(facts.operating, (each) => each.sourceTemperature);
  if (shell === null || shell <= state.sourceTemperature + migrationDifference) return undefined;
  return {
    code: 'migrationToEvaporator',
    severity: 'note',
    subject: 'machine',
    facts: { source: temperature(state.sourceTemperature), shell: temperature(shell) },
    source: 'physics: at rest, refrigerant condenses in the coldest part of the circuit',
    certainty: 'physics',
    remedy:
      'Long pauses make it worse, and so do long tubes between two rooms, which hold more refrigerant. A licensed technician can judge whether the suction line needs a place to catch the liquid.',
    needsLicensedPerson: true,
  };
}

/** The usual oil of this fluid takes up water from the air. */
export function oilTakesUpWater({ fluid }: RestAndFlowFacts): CautionFinding | undefined {
  if (!fluid.usualOils.every((oil) => thirstyOils.includes(oil)) || fluid.usualOils.length === 0) return undefined;
  return {
    code: 'oilTakesUpWater',
    severity: 'note',
    subject: 'machine',
    facts: { fluid: word(fluid.name), oils: word(fluid.usualOils.join(' or ')) },
    source: 'refrigeration handbooks, from memory',
    certainty: 'memory',
    remedy:
      'A circuit that has stood open is dried and evacuated by a licensed technician before it runs again; water in it freezes in the capillary and turns the oil acid.',
    needsLicensedPerson: true,
  };
}

/** A heater on the resting dome takes at least what is likely to keep it warmer than the rest of the circuit. */
function isHeated({ machine }: RestAndFlowFacts): boolean {
  const heater = machine?.crankcaseHeater ?? null;
  const wanted = machine?.starting?.crankcaseHeater ?? null;
  return heater !== null && wanted !== null && heater >= wanted.likely;
}

/** The heater it has, and what one would take. */
function heaterFacts({ machine }: RestAndFlowFacts): CautionFinding['facts'] {
  const heater = machine?.crankcaseHeater ?? null;
  const wanted = machine?.starting?.crankcaseHeater ?? null;
  return {
    ...(heater === null || heater === 0 ? {} : { heater: electricPower(heater) }),
    ...(wanted === null ? {} : { heaterLow: electricPower(wanted.low), heaterHigh: electricPower(wanted.high) }),
  };
}

/** Compressor and evaporator stand together in a place clearly colder than the tank's room. */
function isWithColdEvaporator({ operating, shellSurroundings: shell, otherRoomVolume }: RestAndFlowFacts): boolean {
  if (shell === null || otherRoomVolume === null) return false;
  const state = lowestBy(operating, (each) => each.sourceTemperature);
  const isTogether = Math.abs(shell - state.sourceTemperature) <= migrationDifference;
  return isTogether && shell < state.roomTemperature - coldPlaceDifference;
}

/** Colder by this than the tank's room, a place is taken to draw refrigerant out of the warm side [K]: own judgement. */
const coldPlaceDifference = 5;
