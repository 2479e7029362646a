// Words for what is left out or doubtful of a tank that is known by its sizes, by code.

import { listed, sentenceStart } from '../../../quantities/index.ts';
import type { TankFindingCode } from '../../../tank/index.ts';
import type { TankAnswerFindingCode } from '../../findings/tank-findings.ts';
import type { ModelWords } from './handed-over.ts';

/** All but those of a metered tank, of a tank that needs no heat, and of its cooling. */
export type SizedTankCode =
  | Exclude<TankFindingCode, 'measuredLoadScaled' | 'measuredDifferenceSmall' | 'tankNeedsNoHeat'>
  | Exclude<TankAnswerFindingCode, 'coolingSimplified'>;

export const sizedTankWords: Readonly<Record<SizedTankCode, ModelWords>> = {
  tankSimplifications: {
    title: 'How the tank is simplified',
    text: () => 'Each vessel holds water of one temperature behind flat faces, each as warm all over as in its middle.',
  },
  tankBottomFacesRoomAir: {
    title: 'The bottom faces room air',
    text: () => 'The design names nothing closed or solid below the tank.',
  },
  evaporationMethodsDiffer: {
    title: 'Two methods disagree on evaporation',
    text: (tell) =>
      `A ${tell('surface')} surface like this loses ${tell('low')} to ${tell('high')}, depending on the method.`,
  },
  lidCondensateReturns: {
    title: 'What condenses on the lid comes back',
    text: (tell) => `The underside of the lid settles at ${tell('lidTemperature')}.`,
  },
  looseLidAsOpenShare: {
    title: 'A loose lid is a tight one with gaps',
    text: (tell) => `Its gaps are taken to leave ${tell('openShare')} of the surface open.`,
  },
  condensationOnWater: {
    title: 'The room is wetter than the tank',
    text: (tell) => `Vapour of the room would condense on the water: ${tell('condensing')}.`,
  },
  hoodWellMixed: {
    title: 'A hood with a fan',
    text: (tell) => `Its air settles at ${tell('airTemperature')} and carries off ${tell('carried')}.`,
  },
  nightCoverMixed: {
    title: 'Another cover by night',
    text: (tell) => `It lies on the tank for ${tell('share')} of the day.`,
  },
  waterChangeSpread: {
    title: 'Water changes are spread over the days between',
    text: (tell) => `They come to ${tell('flow')} of fresh water to be warmed.`,
  },
  drawnAirSaturated: {
    title: 'Air drawn through the water leaves saturated',
    text: (tell) => `It carries off ${tell('evaporation')}.`,
  },
  surfaceInMovingAir: {
    title: 'The air over the water moves fast',
    text: (tell) => `At ${tell('airSpeed')} it is faster than the methods of evaporation were made for.`,
  },
  surfaceBeyondMethods: {
    title: 'Evaporation outside its data',
    text: (tell) =>
      `Water of ${tell('waterTemperature')} in a room of ${tell('roomTemperature')} and ${tell('relativeHumidity')} relative humidity lies outside what the method for quiet water was measured on.`,
  },
  handbookNearSeaLevel: {
    title: 'Evaporation by constants of the sea level',
    text: (tell) => `Here the air stands at ${tell('pressure')}.`,
  },
  headspaceDeep: {
    title: 'Deep air under the lid',
    text: (tell) => `The ${tell('gap')} of air between water and lid is taken as a wide layer.`,
  },
  wallCloseBy: {
    title: 'A wall close by',
    text: (tell) => `It faces ${listed(tell('panels').split(', '))}.`,
  },
  closedStandStill: {
    title: 'The air of a closed stand',
    text: (tell) => `It surrounds ${listed(tell('panels').split(', '))}.`,
  },
  slabToGround: {
    title: 'A slab on the ground',
    text: (tell) => `It carries ${listed(tell('panels').split(', '))}.`,
  },
  waterGapClosed: {
    title: 'Water standing in a gap',
    text: (tell) => `It stands in ${listed(tell('panels').split(', '))}.`,
  },
  sealedGapThick: {
    title: 'An air gap thicker than the standard knows',
    text: (tell) => `${tell('thickness')} in ${listed(tell('panels').split(', '))}; the standard ends at 300 mm.`,
  },
  jointOfMetal: {
    title: 'Metal bridges a layer',
    text: (tell) => `The method for joints does not cover the metal in ${listed(tell('panels').split(', '))}.`,
  },
  jointLimitsApart: {
    title: 'Joints make a resistance uncertain',
    text: (tell) =>
      `In ${listed(tell('panels').split(', '))} the upper limit of the resistance is ${tell('ratio')} times the lower; the standard stops at 1.5.`,
  },
  surfaceBelowDewPoint: {
    title: 'The tank sweats',
    text: (tell) =>
      `${sentenceStart(tell('when'))} the room’s air leaves water on ${listed(tell('faces').split(', '))}: down to ${tell('coldest')}, below its dew point of ${tell('dewPoint')}.`,
  },
  meterDisagrees: {
    title: 'The meter and the sizes do not agree',
    text: (tell) =>
      `At the measured temperatures the tank lost ${tell('measured')}, the model says ${tell('modelled')}; no range of the inputs given holds both.`,
  },
  meterAdopted: {
    title: 'The losses are as the meter says',
    text: (tell) => `Every loss of the model is multiplied by measured over modelled loss, ${tell('ratio')}.`,
  },
  meterThen: {
    title: 'What is taken of the days of the meter',
    text: () =>
      'Humidity of the room, lid, pumps and lights as the design has them; outdoors, ground and water main as in the usual winter; water as warm at the end as at the start.',
  },
};
