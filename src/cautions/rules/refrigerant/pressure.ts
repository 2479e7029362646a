// Rules about the pressures in the circuit against what its parts are usually built for: the saturation pressure of the
// fluid they were made for at the design temperatures of EN 378-2, from memory. Real ratings stand on the parts. What
// stands in the circuit at rest is an upper end: with little refrigerant all of it is vapour and the pressure stays lower.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { highEnd, highestBy, pressure, temperature, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';

export type PressureRuleFacts = Pick<CautionFacts, 'fluid' | 'madeFor' | 'operating' | 'pressures'>;

/** Design temperature of the high side in a moderate climate [K]; EN 378-2, from memory. */
export const highSideDesignTemperature = 328.15;

/** Design temperature of the low side [K]; EN 378-2, from memory. */
export const lowSideDesignTemperature = 305.15;

const ratings: Grounds = {
  source: 'EN 378-2, design temperatures of 55 °C for the high side and 32 °C for the low side, from memory',
  certainty: 'memory',
};

/** Running, the high side stands, or may stand, above what its parts were usually built for. */
export function highSideAboveUsualRating(facts: PressureRuleFacts): CautionFinding | undefined {
  const { builtHighSide } = facts.pressures;
  if (builtHighSide === null) return undefined;
  const state = highestBy(facts.operating, (each) => highEnd(each, 'condensingPressure'));
  const highest = highEnd(state, 'condensingPressure');
  if (highest <= builtHighSide) return undefined;
  return {
    code: 'highSideAboveUsualRating',
    severity: 'look',
    subject: 'machine',
    facts: {
      when: word(state.when),
      madeFor: word(facts.madeFor.name),
      condensingPressure: pressure(state.condensingPressure),
      ...(state.condensingPressure > builtHighSide ? {} : { endOfRange: pressure(highest) }),
      limit: pressure(builtHighSide),
      designTemperature: temperature(highSideDesignTemperature),
    },
    ...ratings,
    remedy:
      'Have a licensed technician compare it with the ratings printed on compressor, condenser and every joint, and see to a high-pressure cut-out below the lowest of them.',
    needsLicensedPerson: true,
  };
}

/** The fluid at the usual design temperature of the high side has more pressure than the parts' own fluid. */
export function fluidAbovePartsPressure(facts: PressureRuleFacts): CautionFinding | undefined {
  const { highSide, builtHighSide } = facts.pressures;
  if (facts.fluid.name === facts.madeFor.name || builtHighSide === null) return undefined;
  if (highSide !== null && highSide <= builtHighSide) return undefined;
  return {
    code: 'fluidAbovePartsPressure',
    severity: 'look',
    subject: 'machine',
    facts: {
      fluid: word(facts.fluid.name),
      madeFor: word(facts.madeFor.name),
      ...(highSide === null ? {} : { highSide: pressure(highSide) }),
      limit: pressure(builtHighSide),
      designTemperature: temperature(highSideDesignTemperature),
    },
    ...ratings,
    remedy: 'Parts of a scrapped appliance were built for its own fluid; keep to the one on the rating plate.',
    needsLicensedPerson: true,
  };
}

/** At rest in the warmest room the whole circuit stands above what low-side parts are usually built for. */
export function standingPressureAboveLowSide(facts: PressureRuleFacts): CautionFinding | undefined {
  const { standing, builtLowSide, warmest } = facts.pressures;
  if (builtLowSide === null || (standing !== null && standing <= builtLowSide)) return undefined;
  return {
    code: 'standingPressureAboveLowSide',
    severity: 'look',
    subject: 'machine',
    facts: {
      madeFor: word(facts.madeFor.name),
      warmest: temperature(warmest),
      ...(standing === null ? {} : { standing: pressure(standing) }),
      limit: pressure(builtLowSide),
      designTemperature: temperature(lowSideDesignTemperature),
    },
    ...ratings,
    remedy:
      'Have a licensed technician compare it with the ratings printed on evaporator and shell; keep the machine out of hot rooms and the sun.',
    needsLicensedPerson: true,
  };
}
