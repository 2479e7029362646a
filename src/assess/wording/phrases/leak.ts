// Words of the findings about leaks and charge. The charge is a band, never an amount; where its figures are withheld,
// it is a word.

import type { Phrase, Told } from '../phrase.ts';

export const leakPhrases = {
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
    title: (t) => `A leak would make ${t('room')} explosive`,
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in ${t('volume')} makes up to ${t('concentration')}; it burns from ${t('flammabilityLimit')} on.`,
  },
  leakNearFlammableInRoom: {
    title: (t) => `A leak could become flammable in ${t('room')}`,
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in ${t('volume')} makes up to ${t('concentration')} evenly mixed, above the ${t('limit')} that a leak should stay below: it mixes unevenly.`,
  },
  leakAbovePracticalLimitInRoom: {
    title: (t) => `A leak would make the air hard to breathe in ${t('room')}`,
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in ${t('volume')} makes up to ${t('concentration')}, above its practical limit of ${t('limit')}.`,
  },
  leakAboveBreathingLimitInRoom: {
    title: (t) => `A leak would not be fit to breathe in ${t('room')}`,
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in ${t('volume')} makes up to ${t('concentration')}, above the ${t('limit')} that can be breathed for a while.`,
  },
  toxicFluid: {
    title: (t) => `${t('fluid')} is toxic`,
    text: (t) =>
      `It is in class ${t('safetyClass')}, of higher toxicity: far less of it harms than of usual refrigerants, people and animals alike.`,
  },
  leakToxicInRoom: {
    title: (t) => `A leak would make the air of ${t('room')} toxic`,
    text: (t) =>
      `${charge(t)} of ${t('fluid')} in ${t('volume')} makes up to ${t('concentration')}; more than ${t('limit')} harms whoever breathes it.`,
  },
  flammableFluidInOtherRoom: {
    title: (t) => `${t('fluid')} in another room as well`,
    text: (t) =>
      `Part of the circuit${upToCharge(t)} stands in the room the heat comes from, where a leak collects as well.`,
  },
  leakGathersInLowPlace: {
    title: 'A leak would gather in the low place',
    text: (t) =>
      `${t.has('rises') ? `The cold mist of leaking ${t('fluid')} flows into whatever lies below the floor, before it warms and rises.` : `${t('fluid')} is heavier than air and flows into whatever lies below the floor.`} ${charge(t)} in ${t('volume')} makes up to ${t('concentration')}, above the ${t('limit')} that a leak should stay below.`,
  },
  lowPlaceUnknown: {
    title: 'Is there a place lower than the floor?',
    text: (t) =>
      t.has('rises')
        ? `Nobody has said so. The cold mist of leaking ${t('fluid')} flows into a pit, a sunken stand or an open drain, before it warms and rises.`
        : `Nobody has said so. ${t('fluid')} is heavier than air: it flows into a pit, a sunken stand or an open drain, and stays there.`,
  },
  airPumpDrawsLeak: {
    title: 'The air pump would blow a leak through the water',
    text: (t) =>
      `It draws from ${t('intake')}, where the whole charge of ${t('fluid')} makes up to ${t('concentration')}, evenly mixed. The gas goes through the water into the room of the tank, and takes the place of oxygen on its way.`,
  },
  airPumpIntakeUnknown: {
    title: 'Where does the air pump draw its air?',
    text: (t) =>
      `Nobody has said so. From where a leak of ${t('fluid')} would flow, it blows the gas through the water.`,
  },
  flammableChargeAboveFloorArea: {
    title: 'More flammable fluid than a standard sets for such a floor',
    text: (t) =>
      `For a machine on a floor of ${t('floorArea')} the figure of the standard is ${t('limit')} of ${t('fluid')}; ${t.has('chargeHigh') ? `the charge may be up to ${t('chargeHigh')}` : 'this circuit may hold more'}. The standard does not apply to a home-made machine.`,
  },
  flammableChargeLarge: {
    title: 'More flammable fluid than a household appliance holds',
    text: (t) =>
      t.has('chargeHigh')
        ? `The charge may be up to ${t('chargeHigh')}; circuits of household appliances stop at ${t('householdCharge')} of a fluid that burns.`
        : `Circuits of household appliances stop at ${t('householdCharge')} of a fluid that burns; this one may hold more.`,
  },
} satisfies Readonly<Record<string, Phrase>>;

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
