// Rules about the water and what lives in it: metals, one wall between refrigerant and tank, a coil that burns, water too
// warm or too cold. Livestock temperatures and copper criteria are from memory of usual advice: they can warn and never
// clear.

import type { CautionFinding } from '../../fact.ts';
import { highEnd, highestBy, temperature, word } from '../../fact.ts';
import type { CautionFacts, OperatingFacts, WettedMetal } from '../../facts.ts';
import { highestUsualWater, lowestUsualWater } from './livestock.ts';

export type WaterFacts = Pick<
  CautionFacts,
  | 'fluid'
  | 'water'
  | 'livestock'
  | 'wettedMetal'
  | 'condenserArrangement'
  | 'waterTemperature'
  | 'operating'
  | 'coilSurface'
>;

/** Surface that burns on long contact [K]; from memory. */
const burningSurface = 316.15;

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
    certainty: 'confirmed',
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
    certainty: 'memory',
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
    certainty: 'confirmed',
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
    certainty: 'memory',
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
    certainty: 'physics',
    remedy:
      'An intermediate water loop, or a coil with two walls and a vented gap, keeps refrigerant and oil out of the tank.',
    needsLicensedPerson: true,
  };
}

/** A coil with refrigerant in it is, or may be, hot enough to burn what rests on it. */
export function coilBurnsAnimals(facts: WaterFacts): CautionFinding | undefined {
  const state = hottestCoil(facts);
  if (state === undefined || highEnd(state, 'condensingTemperature') < burningSurface) return undefined;
  return coilFinding('coilBurnsAnimals', 'look', facts, state, burningSurface);
}

/** The coil is warmer than these animals are usually kept; those that rest on it feel it. */
export function coilWarmerThanUsual(facts: WaterFacts): CautionFinding | undefined {
  const state = hottestCoil(facts);
  const limit = highestUsualWater[facts.livestock];
  if (facts.livestock === 'plantsOnly' || state === undefined) return undefined;
  const hottest = highEnd(state, 'condensingTemperature');
  if (hottest <= limit || hottest >= burningSurface) return undefined;
  return coilFinding('coilWarmerThanUsual', 'note', facts, state, limit);
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
    certainty: 'memory',
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
    certainty: 'memory',
    remedy: 'Right for cool-water species, too cold for tropical ones: check the needs of your animals.',
    needsLicensedPerson: false,
  };
}

/** The state in which a refrigerant coil in the tank may be hottest; undefined without such a coil. */
function hottestCoil(facts: WaterFacts): OperatingFacts | undefined {
  if (facts.condenserArrangement !== 'coilInTank') return undefined;
  return highestBy(facts.operating, (each) => highEnd(each, 'condensingTemperature'));
}

function coilFinding(
  code: 'coilBurnsAnimals' | 'coilWarmerThanUsual',
  severity: 'look' | 'note',
  { coilSurface }: WaterFacts,
  state: OperatingFacts,
  limit: number,
): CautionFinding {
  return {
    code,
    severity,
    subject: 'livestock',
    facts: {
      when: word(state.when),
      hottest: temperature(highEnd(state, 'condensingTemperature')),
      ...(coilSurface === null ? {} : { surface: temperature(coilSurface) }),
      limit: temperature(limit),
    },
    source:
      'physics: no part of the coil is hotter than the refrigerant that condenses in it, but where the hot gas enters; skin burns from about 43 °C on long contact and usual livestock temperatures, from memory',
    certainty: 'memory',
    remedy:
      'A guard around the coil keeps animals off it; a water loop between refrigerant and tank keeps the surface cooler.',
    needsLicensedPerson: false,
  };
}

function isCopper(metal: WettedMetal): boolean {
  return metal === 'copper' || metal === 'cupronickel';
}
