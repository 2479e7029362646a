// Words of the findings about the fluid itself and the law.

import type { StudyOnlyReason } from '../../../matter/refrigerants/index.ts';
import type { Phrase } from '../phrase.ts';
import { studyOnlySentence } from '../study-only.ts';

export const fluidPhrases = {
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
      `${t.has('oilPrinted') ? `Its plate names ${t('oilPrinted')} oil` : `A compressor for ${t('madeFor')} usually holds ${t('oilsInMachine')} oil`}; ${t('fluid')} usually wants ${t('oilsForFluid')} oil.`,
  },
  materialsForOtherFluid: {
    title: (t) => `Its materials were chosen for ${t('madeFor')}`,
    text: (t) =>
      `Seals, varnish of the windings and drier of a machine for ${t('madeFor')} need not bear ${t('fluid')}: they may swell, soften or crumble.`,
  },
  fluidForStudyOnly: {
    title: (t) => `${t('fluid')} is for study only`,
    text: (t) => studyOnlySentence(t('fluid'), t('unconfirmed').split(' ') as StudyOnlyReason[]),
  },
  fluidAttacksCopper: {
    title: (t) => `${t('fluid')} attacks copper`,
    text: (t) =>
      `With a trace of water ${t('fluid')} dissolves copper and brass. The tubes of a small machine are copper, and so are the windings of a hermetic motor, which lie in the fluid.`,
  },
  ozoneDepletingFluid: {
    title: (t) => `${t('fluid')} depletes the ozone layer`,
    text: (t) =>
      `Its ozone depletion potential is ${t('ozoneDepletionPotential')}. Making, buying and filling it in is banned or restricted nearly everywhere, and letting it out is an offence.`,
  },
  highWarmingFluid: {
    title: (t) => `${t('fluid')} may no longer be serviced everywhere`,
    text: (t) =>
      `Its global warming potential is ${t('globalWarmingPotential')}. In the European Union servicing refrigeration equipment with a fluid of ${t('limit')} or more is forbidden, with few exceptions.`,
  },
  openingNeedsLicence: {
    title: 'The law has a say before the first cut',
    text: (t) =>
      `${laws[t('region')] ?? laws.unknown} Check locally before anybody opens a circuit with ${t('fluid')}.`,
  },
} satisfies Readonly<Record<string, Phrase>>;

/** General words on the law, by the word that stands for the region. */
const laws: Readonly<Record<string, string>> = {
  europeanUnion:
    'In the European Union only certified people may open, fill or empty a circuit with fluorinated gas, letting refrigerant out on purpose is forbidden, and towns and insurers add rules for fluids that burn.',
  unitedKingdom:
    'In the United Kingdom only certified people may open, fill or empty a circuit with fluorinated gas, and letting it out on purpose is forbidden.',
  unitedStates:
    'In the United States letting refrigerant out knowingly is forbidden with few exceptions, and opening a circuit or buying refrigerant needs certification.',
  elsewhere:
    'Nearly every country has rules on who may open, fill or empty a circuit, and forbids letting most refrigerants out on purpose.',
  unknown:
    'In most countries only certified people may open, fill or empty a circuit, and letting it out on purpose is forbidden.',
};
