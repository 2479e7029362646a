// Words of the findings about a wrapped or covered tank: summer, covers, boards, damp, and a night without electricity.

import { material, materialNames } from '../../../matter/materials/index.ts';
import { insideSentence, listed, sentenceStart } from '../../../quantities/index.ts';
import type { Phrase, Told } from '../phrase.ts';

export const standingTankPhrases = {
  summerOverheating: {
    title: (t) => `In summer the water ${t.has('endOfRange') ? 'may get' : 'gets'} too warm`,
    text: (t) =>
      `${restsAt(t)}; above ${t('limit')} usual advice for these animals is alarm.${wrapped(t)} A hot spell goes further.`,
  },
  summerOverheatingWrapped: {
    title: (t) => `Wrapped like this, the water ${t.has('endOfRange') ? 'may get' : 'gets'} too warm in summer`,
    text: (t) => {
      const bare = t.has('bare') ? ` Without the measures it would rest at about ${t('bare')}.` : '';
      return `With the measures that are to be taken: ${insideSentence(restsAt(t))}; above ${t('limit')} usual advice for these animals is alarm.${bare} A hot spell goes further.`;
    },
  },
  coverHoldsGases: {
    title: 'A cover keeps air from the water',
    text: (t) =>
      `${coverOf(t)} lets little oxygen in and little carbon dioxide out, and no air is said to be drawn through the water.`,
  },
  lightsUnderCover: {
    title: 'Lamps, plugs and damp under a cover',
    text: (t) =>
      `Lamps of ${t('lights')} share the place with ${insideSentence(coverOf(t))}: it is wet there, sooner or later water drips on lamps and plugs, and under a hood their heat stays with the water.`,
  },
  insulationBurns: {
    title: 'What insulates the tank may burn',
    text: (t) => `${materials(t('materials'))} on the tank: most foams burn, with thick and poisonous smoke.`,
  },
  glueAndFibres: {
    title: 'Glue, solvent and dust harm fish',
    text: (t) => {
      const fibres = t.has('fibrous') ? ` ${materials(t('fibrous'))} sheds fibres.` : '';
      return `Vapour of glue and solvent goes into the water with the air, and crumbs of boards are eaten.${fibres}`;
    },
  },
  boardUnderTank: {
    title: 'What lies underneath bears the tank',
    text: (t) => {
      const weight = t.has('waterMass')
        ? `The water of this tank alone weighs ${t('waterMass')} on ${t('footprint')}; glass, sand and rock come on top. `
        : '';
      return `${weight}A soft, uneven or crushed board breaks the bottom pane.`;
    },
  },
  wallBehindBoard: {
    title: 'The wall behind the board stays colder',
    text: () =>
      'A board between tank and wall keeps the warmth of the tank from that wall. Where it is an outer wall it may stay damp behind the board, and mould grows.',
  },
  hiddenFacesSweat: {
    title: 'Wet faces where nobody looks',
    text: (t) =>
      `${sentenceStart(t('when'))} the room’s air leaves water on ${listed(t('faces').split(', '))}: down to ${t('coldest')}, below its dew point of ${t('dewPoint')}.`,
  },
  roomTakesWater: {
    title: 'The tank makes its room damp',
    text: (t) =>
      `In the coldest spell it gives ${t('evaporation')} to a room that may be as small as ${t('room')}, aired ${t('airChanges')}${t('aired') === 'assumed' ? ', which is assumed' : ''}. That alone makes a humid room: water on cold panes and corners, and mould.`,
  },
  powerFailureChillsFast: {
    title: 'One night without electricity chills the tank',
    text: (t) =>
      `In the coldest spell, with heater, pumps and lights off, the water is down to ${t('limit')} within ${t('timeToAlarm')}: a failure in the evening may go unnoticed for ${t('unnoticed')}.`,
  },
  powerFailureChillsTank: {
    title: 'How long the tank holds without electricity',
    text: (t) =>
      `In the coldest spell, with heater, pumps and lights off, the water is down to ${t('limit')} after about ${t('timeToAlarm')}.`,
  },
} satisfies Readonly<Record<string, Phrase>>;

function restsAt(told: Told): string {
  const begin = `In its warmest month the room has ${told('room')}, and pumps and lights give ${told('gains')}. Without cooling the water then`;
  if (!told.has('settlesAt')) return `${begin} goes beyond ${told('beyondWater')}`;
  return `${begin} rests at about ${told('settlesAt')} (${told('restLow')} to ${told('restHigh')})`;
}

function wrapped(told: Told): string {
  if (told.has('beyondWrapped'))
    return ` With the measures that are to be taken it would go beyond ${told('beyondWrapped')}.`;
  return told.has('wrapped') ? ` With the measures that are to be taken it would be ${told('wrapped')}.` : '';
}

function coverOf(told: Told): string {
  if (told.has('openShare')) return `A lid that leaves ${told('openShare')} of the surface open`;
  return covers[told('cover') as keyof typeof covers];
}

const covers = {
  planned: 'The cover on the list of measures',
  lid: 'A lid',
  'the hood': 'A hood',
} as const;

/** "extrudedPolystyrene, own" -> "Extruded polystyrene (XPS), aged, and a material without a name". */
function materials(names: string): string {
  const labels = names
    .split(', ')
    .map((name) => (materialNames.includes(name) ? material(name).label : 'a material without a name'));
  return sentenceStart(listed(labels.map(insideSentence)));
}
