// Words of the findings about the water, what lives in it, and mains electricity beside it.

import { listed, sentenceStart } from '../../../quantities/index.ts';
import type { Phrase, Told } from '../phrase.ts';

export const tankPhrases = {
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
  coilBurnsAnimals: {
    title: 'The coil may burn an animal that rests on it',
    text: (t) =>
      `${coilSurface(t)}Skin burns from about ${t('limit')} on; snails, sucking fish and anemones settle on tubes.`,
  },
  coilWarmerThanUsual: {
    title: 'The coil is warmer than the water',
    text: (t) => `${coilSurface(t)}Usual advice for these animals is alarm above ${t('limit')}.`,
  },
  overTemperatureCutOutMissing: {
    title: 'No independent over-temperature cut-out',
    text: (t) => `A relay that sticks would cook the tank.${stuckOn(t)}`,
  },
  overTemperatureCutOutUnknown: {
    title: 'Is there an independent over-temperature cut-out?',
    text: (t) => `Nobody has said so; without one, a relay that sticks would cook the tank.${stuckOn(t)}`,
  },
  heatsWaterFast: {
    title: 'Stuck on, the machine would heat fast',
    text: (t) => `The over-temperature cut-out would have to stop it.${stuckOn(t)}`,
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
      `${sentenceStart(t('when'))} the tank needs ${t('load')} and the machine gives ${t('heatDelivered')}: ${t('missing')} must come from something else.`,
  },
  machineFailureCoolsTank: {
    title: 'When the machine stops, the tank cools',
    text: (t) => `${sentenceStart(t('when'))} the water loses its first ${t.kelvin} within ${t('timePerKelvin')}.`,
  },
  machineFailureCoolsFast: {
    title: 'When the machine stops, the tank cools fast',
    text: (t) =>
      `${sentenceStart(t('when'))} the water loses its first ${t.kelvin} within ${t('timePerKelvin')}; usual advice is to let that take ${t('usualTime')} or more.`,
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
  mainsNearWater: {
    title: 'Mains electricity stands badly to the water',
    text: (t) => `As the design has it, ${listed(named(t, wrongWords))}.`,
  },
  mainsNearWaterUnknown: {
    title: 'How does mains electricity stand to the water?',
    text: (t) => `Nobody has said ${listed(named(t, unknownWords))}.`,
  },
} satisfies Readonly<Record<string, Phrase>>;

function stuckOn(told: Told): string {
  if (!told.has('timePerKelvin')) return '';
  const atFirst = ` Stuck on ${told('when')}, the machine would at first warm the water by ${told.kelvin} every ${told('timePerKelvin')}; usual advice is to let that take ${told('usualTime')} or more.`;
  const end = told.has('settlesAt')
    ? ` If nothing stopped it, the water would come to rest at about ${told('settlesAt')}.`
    : ` If nothing stopped it, the water would go beyond ${told('beyondWater')}.`;
  return `${atFirst}${end}`;
}

/** Refrigerant inside is the upper bound of the surface; the likely surface stands beside it. */
function coilSurface(told: Told): string {
  const likely = told.has('surface') ? `, with the films and walls assumed about ${told('surface')}` : '';
  return `Its surface is at most as hot as the refrigerant that condenses inside, up to ${told('hottest')} ${told('when')}${likely}. `;
}

type MainsWords = Readonly<Record<'sockets' | 'dripLoops' | 'machineLevel' | 'metalEarthed', string>>;

const wrongWords: MainsWords = {
  sockets: 'sockets or plugs are below the water or under the tank',
  dripLoops: 'not every cable hangs in a drip loop',
  machineLevel: 'the machine stands below the water level, where a hose that slips off floods it',
  metalEarthed: 'metal that touches the water is not earthed',
};

const unknownWords: MainsWords = {
  sockets: 'whether sockets and plugs are above the rim of the tank',
  dripLoops: 'whether every cable hangs in a drip loop',
  machineLevel: 'whether the machine stands above the water level',
  metalEarthed: 'whether metal that touches the water is earthed',
};

function named(told: Told, words: MainsWords): readonly string[] {
  return Object.entries(words).flatMap(([name, said]) => (told.has(name) ? [said] : []));
}
