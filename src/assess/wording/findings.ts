// Sentences of the findings: a title and one or two sentences for every code, with the numbers of the finding put in as
// the reader's view says them. Words for a person; the finding itself stays data.

import type { CautionCode } from '../../cautions/index.ts';
import { cautionCodes } from '../../cautions/index.ts';
import { InputError } from '../../numerics/index.ts';
import type { Finding } from '../../quantities/index.ts';
import { isQuantityName, type QuantityName, sayQuantity, type UnitView } from '../../quantities/index.ts';

export interface FindingWords {
  readonly title: string;
  /** One or two sentences; the remedy of the finding is not repeated in it. */
  readonly text: string;
}

/** Reads the facts of one finding: numbers as text in the view, words in plain language. */
interface Told {
  (name: string): string;
  has(name: string): boolean;
  /** A difference of 1 K as the view says it. */
  readonly kelvin: string;
}

interface Phrase {
  readonly title: string | ((told: Told) => string);
  readonly text: (told: Told) => string;
}

/**
 * The words for a finding.
 * @param finding  one of `findCautions`
 * @param view     how numbers are shown
 * @throws InputError for a code without words, or a fact its words need and the finding lacks
 */
export function findingSentence(finding: Finding, view: UnitView): FindingWords {
  const phrase = phrases[codeWithWords(finding.code)];
  const told = toldBy(finding, view);
  const title = typeof phrase.title === 'string' ? phrase.title : phrase.title(told);
  return { title, text: phrase.text(told) };
}

/** Whether `findingSentence` has words for this code. */
export function hasFindingWords(code: string): code is CautionCode {
  return (cautionCodes as readonly string[]).includes(code);
}

function codeWithWords(code: string): CautionCode {
  if (!hasFindingWords(code)) throw new InputError('finding.code', code, `one of ${cautionCodes.join(', ')}`);
  return code;
}

function toldBy(finding: Finding, view: UnitView): Told {
  const tell = (name: string): string => {
    const fact = finding.facts[name];
    if (fact === undefined) throw new InputError(`finding.facts.${name}`, undefined, `a fact of ${finding.code}`);
    if ('word' in fact) return plainWord(fact.word);
    if (!isQuantityName(fact.quantity)) {
      throw new InputError(`finding.facts.${name}`, fact.quantity, 'a quantity of the table');
    }
    return sayQuantity(fact.value, fact.quantity, view, digits[fact.quantity]);
  };
  return Object.assign(tell, {
    has: (name: string) => finding.facts[name] !== undefined,
    kelvin: sayQuantity(1, 'temperatureDifference', view),
  });
}

/** Two digits where the table would print more: nothing here is known better. */
const digits: Readonly<Partial<Record<QuantityName, number>>> = { mass: 2, volume: 2, duration: 2 };

const plainWords: Readonly<Record<string, string>> = {
  coldestSpell: 'in the coldest spell',
  usual: 'at usual temperatures',
  warmestMonth: 'in the warmest month',
  low: 'cold work (freezers, refrigerators)',
  medium: 'medium work (bottle coolers)',
  high: 'warm work (dehumidifiers, air conditioners)',
  closedCabinet: 'the closed cabinet',
  hood: 'the hood',
  copper: 'copper',
  cupronickel: 'cupronickel, which is mostly copper',
  stainless316: 'stainless steel',
  titanium: 'titanium',
  polymer: 'polymer',
  unknown: 'unknown',
  fresh: 'fresh water',
  sea: 'sea water',
  fish: 'fish',
  invertebrates: 'invertebrates',
  plantsOnly: 'plants only',
};

/** A word of the design in plain language; names of fluids, classes and oils stay as they are. */
function plainWord(word: string): string {
  return plainWords[word] ?? word;
}

const phrases: Readonly<Record<CautionCode, Phrase>> = {
  flammableFluidInUnsuitableEquipment: {
    title: (t) => `${t('fluid')} burns, and this equipment was not made for it`,
    text: (t) =>
      `${t('fluid')} is in class ${t('safetyClass')}: a leak can burn or explode. Nothing says that the switches, fan, relay and overload protector here were made for such a fluid, and one arc is enough.`,
  },
  flammableFluidEquipmentUnconfirmed: {
    title: (t) => `${t('fluid')} burns, and part of the equipment is unconfirmed`,
    text: (t) =>
      `The compressor was made for a flammable fluid (class ${t('safetyClass')}), but nobody has confirmed that fan, relay, thermostat and everything else that can spark around it was too.`,
  },
  flammableFluid: {
    title: (t) => `${t('fluid')} burns`,
    text: (t) =>
      `It is in class ${t('safetyClass')}. What leaks cannot be seen, and burns when it meets a spark or a flame.`,
  },
  notForThisMachine: {
    title: 'Not for this machine',
    text: (t) =>
      `The compressor was made for ${t('madeFor')}, not for ${t('fluid')}. Motor, oil, valves and pressures were matched to its own fluid; the figures for the other one are for study only.`,
  },
  oilNotForThisFluid: {
    title: (t) => `The oil in it does not suit ${t('fluid')}`,
    text: (t) =>
      `A compressor for ${t('madeFor')} usually holds ${t('oilsInMachine')} oil; ${t('fluid')} usually wants ${t('oilsForFluid')} oil.`,
  },
  ozoneDepletingFluid: {
    title: (t) => `${t('fluid')} depletes the ozone layer`,
    text: (t) =>
      `Its ozone depletion potential is ${t('ozoneDepletionPotential')}. Making, buying and filling it in is banned or restricted nearly everywhere, and letting it out is an offence.`,
  },
  openingNeedsLicence: {
    title: 'The law has a say before the first cut',
    text: (t) =>
      `In most countries only certified people may open, fill or empty a circuit with ${t('fluid')}, and letting it out on purpose is forbidden. Check locally.`,
  },
  leakFlammableInEnclosure: {
    title: (t) => `A leak would make ${t('enclosure')} explosive`,
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in ${t('volume')} makes up to ${t('concentration')}; it burns from ${t('flammabilityLimit')} on. The compressor, its relay and the fan would be the spark.`,
  },
  leakNearFlammableInEnclosure: {
    title: (t) => `A leak could become flammable in ${t('enclosure')}`,
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in ${t('volume')} makes up to ${t('concentration')} evenly mixed, above the ${t('limit')} that leaves room for uneven mixing.`,
  },
  leakFlammableInRoom: {
    title: 'A leak would make the room explosive',
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in a room of ${t('volume')} makes up to ${t('concentration')}; it burns from ${t('flammabilityLimit')} on.`,
  },
  leakNearFlammableInRoom: {
    title: 'A leak could become flammable in the room',
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in a room of ${t('volume')} makes up to ${t('concentration')} evenly mixed, above the ${t('limit')} that leaves room for gas lying on the floor.`,
  },
  leakAbovePracticalLimitInRoom: {
    title: 'A leak would make the air of the room hard to breathe',
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in a room of ${t('volume')} makes up to ${t('concentration')}, above its practical limit of ${t('limit')}.`,
  },
  flammableFluidInOtherRoom: {
    title: (t) => `${t('fluid')} in another room as well`,
    text: (t) =>
      `Part of the circuit${upToCharge(t)} stands in the room the heat comes from, where a leak collects as well.`,
  },
  flammableChargeLarge: {
    title: 'More flammable fluid than a household appliance holds',
    text: (t) =>
      t.has('chargeHigh')
        ? `The charge may be up to ${t('chargeHigh')}; circuits of household appliances stop at ${t('householdCharge')} of a fluid that burns.`
        : `Circuits of household appliances stop at ${t('householdCharge')} of a fluid that burns; this one may hold more.`,
  },
  motorOverloaded: {
    title: 'The motor would be overloaded',
    text: (t) =>
      `${capital(t('when'))} it would evaporate at ${t('evaporatingTemperature')}, ${t('beyond')} above the ${t('limit')} usual for ${t('application')}, and take about ${t('power')}; the hardest point such a machine is built for takes ${t('hardestAllowedPower')} by the same model. Its overload protector would trip, or the motor burn out.`,
  },
  evaporatingAboveApplication: {
    title: 'Warmer evaporation than it was built for',
    text: (t) =>
      `It would evaporate at ${t('evaporatingTemperature')} ${t('when')}, ${t('beyond')} above the ${t('limit')} usual for ${t('application')}.${t.has('hardestAllowedPower') ? ` By the model it takes ${t('power')} there, against ${t('hardestAllowedPower')} at the hardest point such a machine is built for.` : ''} The motor may be overloaded.`,
  },
  evaporatingBelowApplication: {
    title: 'Colder evaporation than the compressor was built for',
    text: (t) =>
      `It would evaporate at ${t('evaporatingTemperature')} ${t('when')}, ${t('beyond')} below the ${t('limit')} usual for ${t('application')}.`,
  },
  dischargeAboveHighest: {
    title: 'The discharge gas is too hot for oil and valves',
    text: (t) =>
      `The discharge line would reach ${t('dischargeTemperature')} ${t('when')}; typical guides stop at ${t('limit')}, and at the valve it is hotter still.`,
  },
  dischargeNearHighest: {
    title: 'The discharge gas is nearly too hot',
    text: (t) =>
      `The discharge line would reach ${t('dischargeTemperature')} ${t('when')}; typical guides begin to worry at ${t('limit')}.`,
  },
  condensingAbovePeak: {
    title: 'The condensing pressure is not for this machine',
    text: (t) =>
      `It would condense at ${t('condensingTemperature')} (${t('condensingPressure')}) ${t('when')}; typical guides allow ${t('limit')} for moments only.`,
  },
  condensingAboveContinuous: {
    title: 'Condensing hotter than the machine bears for long',
    text: (t) =>
      `It would condense at ${t('condensingTemperature')} (${t('condensingPressure')}) ${t('when')}; typical guides allow ${t('limit')} continuously.`,
  },
  pressureRatioTooLow: {
    title: 'Very little lift',
    text: (t) =>
      `${capital(t('when'))} the pressures differ only by a factor of ${t('pressureRatio')} (a lift of ${t('lift')}), below the ${t('limit')} that capillaries, valves and oil return usually want.`,
  },
  pressureRatioAboveHighest: {
    title: 'More pressure ratio than one stage does',
    text: (t) =>
      `The ratio would be ${t('pressureRatio')} ${t('when')}; small compressors do not go beyond ${t('limit')} in one stage.`,
  },
  pressureRatioHigh: {
    title: 'A high pressure ratio',
    text: (t) =>
      `The ratio would be ${t('pressureRatio')} ${t('when')}; above ${t('limit')} small compressors pump little and run hot.`,
  },
  suctionBelowAtmosphere: {
    title: 'The low side works in a vacuum',
    text: (t) =>
      `It would evaporate at ${t('evaporatingPressure')} ${t('when')}, below the ${t('atmosphericPressure')} of the air around it.`,
  },
  frostOnEvaporator: {
    title: 'The evaporator frosts up',
    text: (t) =>
      `It would evaporate at ${t('evaporatingTemperature')} ${t('when')}, from air at ${t('sourceTemperature')}.`,
  },
  condensateOnEvaporator: {
    title: 'The evaporator drips',
    text: (t) =>
      `${capital(t('when'))} it runs at ${t('evaporatingTemperature')}, below the dew point of the air at ${t('dewPoint')}: water runs off it.`,
  },
  copperInWater: {
    title: 'Copper in water that must hold none',
    text: (t) =>
      `The coil that touches the ${t('water')} is of ${t('metal')}. Dissolved copper harms young invertebrates from some 20 millionths of a gram per litre on, and sea water eats the coil.`,
  },
  copperInFreshWater: {
    title: 'Copper in fresh water',
    text: (t) => `The coil that touches the water is of ${t('metal')}. Hard water may forgive it.`,
  },
  metalInWaterUnknown: {
    title: 'Nobody knows what metal touches the water',
    text: (t) =>
      `Coils out of appliances are mostly copper or aluminium, and neither belongs in ${t('water')} with animals before somebody has found out what it is.`,
  },
  stainlessInSeaWater: {
    title: 'Stainless steel pits in sea water',
    text: () => 'Warm, aerated sea water bores small deep holes into it, and behind the wall is the refrigerant.',
  },
  coilInTankSingleWall: {
    title: 'One wall between refrigerant and tank',
    text: (t) =>
      `If the coil in the tank leaks, ${t('fluid')} and oil go straight into the water, and later the water goes into the compressor.`,
  },
  overTemperatureCutOutMissing: {
    title: 'No independent over-temperature cut-out',
    text: (t) => `A relay that sticks would cook the tank.${stuckOn(t)}`,
  },
  overTemperatureCutOutUnknown: {
    title: 'Is there an independent over-temperature cut-out?',
    text: (t) => `Nobody has said so; without one, a relay that sticks would cook the tank.${stuckOn(t)}`,
  },
  waterAboveUsual: {
    title: 'Very warm water',
    text: (t) => `The water is set to ${t('waterTemperature')}; above ${t('limit')} usual advice is alarm.`,
  },
  waterBelowUsual: {
    title: 'Cool water',
    text: (t) => `The water is set to ${t('waterTemperature')}; below ${t('limit')} tropical animals are in trouble.`,
  },
  reliesOnBackup: {
    title: 'The machine alone does not hold the temperature',
    text: (t) =>
      `${capital(t('when'))} the tank needs ${t('load')} and the machine gives ${t('heatDelivered')}: ${t('missing')} must come from something else.`,
  },
  machineFailureCoolsTank: {
    title: 'When the machine stops, the tank cools',
    text: (t) => `${capital(t('when'))} the water loses its first ${t.kelvin} within ${t('timePerKelvin')}.`,
  },
  residualCurrentProtectionMissing: {
    title: 'No residual-current protection',
    text: () =>
      'A fault in anything electrical at the tank would put mains voltage into the water and into whoever reaches in.',
  },
  residualCurrentProtectionUnknown: {
    title: 'Is there residual-current protection?',
    text: () =>
      'Nobody has said so; without it, a fault at the tank puts mains voltage into the water and into whoever reaches in.',
  },
};

/** The charge is a band, never an amount to fill in; where its figures are withheld, it is a word. */
function charge(told: Told): string {
  if (!told.has('chargeHigh')) return 'The whole charge';
  const [low, high] = [told('chargeLow'), told('chargeHigh')];
  return low === high ? `A charge of about ${high}` : `A charge of ${low} to ${high}`;
}

function upToCharge(told: Told): string {
  return told.has('chargeHigh')
    ? `, with up to ${told('chargeHigh')} of a fluid that burns,`
    : ' and its flammable fluid';
}

function stuckOn(told: Told): string {
  if (!told.has('timePerKelvin')) return '';
  return ` Stuck on ${told('when')}, the machine would at first warm the water by ${told.kelvin} every ${told('timePerKelvin')}.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
