// Rules about the water and what lives in it: metals, one wall between refrigerant and tank, too warm, too cold, and
// what happens when the machine sticks on or fails. Livestock temperatures and copper criteria are from memory of usual
// advice: they can warn and never clear.

import type { CautionFinding } from '../fact.ts';
import { duration, highestBy, power, temperature, word } from '../fact.ts';
import type { CautionFacts, Livestock, WettedMetal } from '../facts.ts';

export type WaterFacts = Pick<
  CautionFacts,
  | 'fluid'
  | 'water'
  | 'livestock'
  | 'wettedMetal'
  | 'condenserArrangement'
  | 'waterTemperature'
  | 'tankHeatCapacity'
  | 'overTemperatureCutOut'
  | 'operating'
>;

/** Water temperature above which usual advice is alarm [K], by livestock; from memory. */
export const highestUsualWater: Readonly<Record<Livestock, number>> = {
  fish: 303.15,
  invertebrates: 302.15,
  plantsOnly: 303.15,
  unknown: 302.15,
};

/** Water temperature below which tropical fish and reef animals are in trouble [K]; from memory. */
export const lowestUsualWater = 293.15;

const copperSource =
  'copper harms larvae of a coral from 16 to 22 µg/L on (Reichelt-Brushett & Harrison 2004); water-quality criteria of 1.3 to 4.8 µg/L (ANZECC, US EPA), from memory';

/** Copper or an alloy of it in sea water, or in water with invertebrates. */
export function copperInWater(facts: WaterFacts): CautionFinding | undefined {
  if (!isCopper(facts.wettedMetal) || !(facts.water === 'sea' || facts.livestock === 'invertebrates')) return undefined;
  return {
    code: 'copperInWater',
    severity: 'stop',
    subject: 'livestock',
    facts: { metal: word(facts.wettedMetal), water: word(facts.water), livestock: word(facts.livestock) },
    source: copperSource,
    remedy: 'Nothing but titanium or a suitable polymer may touch this water, with an intermediate loop behind it.',
    needsLicensedPerson: false,
  };
}

/** Copper in fresh water with fish, or with animals nobody has named. */
export function copperInFreshWater(facts: WaterFacts): CautionFinding | undefined {
  const mild = facts.water === 'fresh' && (facts.livestock === 'fish' || facts.livestock === 'unknown');
  if (!isCopper(facts.wettedMetal) || !mild) return undefined;
  return {
    code: 'copperInFreshWater',
    severity: 'look',
    subject: 'livestock',
    facts: { metal: word(facts.wettedMetal), livestock: word(facts.livestock) },
    source: 'freshwater criteria of 9 to 13 µg/L at 100 mg/L hardness (US EPA, older form), from memory',
    remedy:
      'Soft or acid water dissolves copper, and shrimps and snails die of little. Titanium, stainless steel or a polymer is the better choice.',
    needsLicensedPerson: false,
  };
}

/** Nobody knows what metal touches the water. */
export function metalInWaterUnknown(facts: WaterFacts): CautionFinding | undefined {
  if (facts.wettedMetal !== 'unknown') return undefined;
  if (facts.water === 'fresh' && facts.livestock === 'plantsOnly') return undefined;
  return {
    code: 'metalInWaterUnknown',
    severity: 'look',
    subject: 'livestock',
    facts: { water: word(facts.water), livestock: word(facts.livestock) },
    source: copperSource,
    remedy: 'Find out what the coil is made of before it touches the water; salvaged coils are mostly copper.',
    needsLicensedPerson: false,
  };
}

/** Stainless steel in warm sea water pits. */
export function stainlessInSeaWater(facts: WaterFacts): CautionFinding | undefined {
  if (facts.wettedMetal !== 'stainless316' || facts.water !== 'sea') return undefined;
  return {
    code: 'stainlessInSeaWater',
    severity: 'look',
    subject: 'machine',
    facts: { metal: word(facts.wettedMetal) },
    source: 'stainless steel 316L pits in warm aerated sea water; corrosion handbooks, from memory',
    remedy: 'Titanium or a suitable polymer in sea water; a pitted coil lets refrigerant and oil into the tank.',
    needsLicensedPerson: false,
  };
}

/** Refrigerant and tank water with one wall between them. */
export function coilInTankSingleWall(facts: WaterFacts): CautionFinding | undefined {
  if (facts.condenserArrangement !== 'coilInTank') return undefined;
  return {
    code: 'coilInTankSingleWall',
    severity: 'look',
    subject: 'livestock',
    facts: { fluid: word(facts.fluid.name), metal: word(facts.wettedMetal) },
    source:
      'physics: the condenser stands at a higher pressure than the water; two walls are common practice, no source',
    remedy:
      'An intermediate water loop, or a coil with two walls and a vented gap, keeps refrigerant and oil out of the tank.',
    needsLicensedPerson: true,
  };
}

/** No independent cut-out: a relay that sticks cooks the tank. */
export function overTemperatureCutOutMissing(facts: WaterFacts): CautionFinding | undefined {
  if (facts.overTemperatureCutOut !== 'none') return undefined;
  return cutOutFinding('overTemperatureCutOutMissing', facts);
}

/** Nobody has said whether there is one. */
export function overTemperatureCutOutUnknown(facts: WaterFacts): CautionFinding | undefined {
  if (facts.overTemperatureCutOut !== 'unknown') return undefined;
  return cutOutFinding('overTemperatureCutOutUnknown', facts);
}

/** The set temperature itself is above what is usual for these animals. */
export function waterAboveUsual(facts: WaterFacts): CautionFinding | undefined {
  const limit = highestUsualWater[facts.livestock];
  if (facts.waterTemperature <= limit) return undefined;
  return {
    code: 'waterAboveUsual',
    severity: 'look',
    subject: 'livestock',
    facts: {
      waterTemperature: temperature(facts.waterTemperature),
      limit: temperature(limit),
      livestock: word(facts.livestock),
    },
    source: 'usual advice for tropical fish, shrimps and corals, from memory',
    remedy: 'Few species want it warmer, and warm water holds little oxygen: check the needs of your animals.',
    needsLicensedPerson: false,
  };
}

/** The set temperature is below what tropical animals want. */
export function waterBelowUsual(facts: WaterFacts): CautionFinding | undefined {
  if (facts.livestock === 'plantsOnly' || facts.waterTemperature >= lowestUsualWater) return undefined;
  return {
    code: 'waterBelowUsual',
    severity: 'note',
    subject: 'livestock',
    facts: {
      waterTemperature: temperature(facts.waterTemperature),
      limit: temperature(lowestUsualWater),
      livestock: word(facts.livestock),
    },
    source: 'usual advice for tropical fish, from memory; cool-water species want it so',
    remedy: 'Right for cool-water species, too cold for tropical ones: check the needs of your animals.',
    needsLicensedPerson: false,
  };
}

/** In some state the machine gives less than the tank needs: something else must give the rest. */
export function reliesOnBackup(facts: WaterFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, (each) => each.load - each.heatDelivered);
  const missing = state.load - state.heatDelivered;
  if (!(missing > 0)) return undefined;
  return {
    code: 'reliesOnBackup',
    severity: 'look',
    subject: 'livestock',
    facts: {
      when: word(state.when),
      missing: power(missing),
      load: power(state.load),
      heatDelivered: power(state.heatDelivered),
    },
    source: 'energy balance of the tank at likely values',
    remedy: 'A heater that carries the whole load by itself, on its own thermostat, or less loss from the tank.',
    needsLicensedPerson: false,
  };
}

/** How fast the tank cools when the machine stops. */
export function machineFailureCoolsTank(facts: WaterFacts): CautionFinding | undefined {
  const state = highestBy(facts.operating, (each) => each.load);
  if (!(state.load > 0)) return undefined;
  return {
    code: 'machineFailureCoolsTank',
    severity: 'note',
    subject: 'livestock',
    facts: { when: word(state.when), timePerKelvin: duration(facts.tankHeatCapacity / state.load) },
    source: 'energy balance of the tank: time for the first kelvin = heat capacity / load',
    remedy: 'An ordinary heater standing by and an alarm that somebody hears.',
    needsLicensedPerson: false,
  };
}

function cutOutFinding(
  code: 'overTemperatureCutOutMissing' | 'overTemperatureCutOutUnknown',
  facts: WaterFacts,
): CautionFinding {
  const state = highestBy(facts.operating, (each) => each.heatDelivered - each.load);
  const surplus = state.heatDelivered - state.load;
  return {
    code,
    severity: code === 'overTemperatureCutOutMissing' ? 'stop' : 'look',
    subject: 'livestock',
    facts: surplus > 0 ? { when: word(state.when), timePerKelvin: duration(facts.tankHeatCapacity / surplus) } : {},
    source: 'common practice, no source: an independent mechanical cut-out set at 29 to 31 °C',
    remedy:
      'An independent mechanical over-temperature cut-out in the water, not part of the controller, wired by a licensed electrician to open the supply of every heat source.',
    needsLicensedPerson: true,
  };
}

function isCopper(metal: WettedMetal): boolean {
  return metal === 'copper' || metal === 'cupronickel';
}
