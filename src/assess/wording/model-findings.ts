// Words for what the models leave out or doubt, by code. The remedy is printed after the text and not repeated in it.

import { InputError } from '../../numerics/index.ts';
import {
  type Finding,
  isQuantityName,
  listed,
  type QuantityName,
  sayQuantity,
  sentenceStart,
  type UnitView,
} from '../../quantities/index.ts';
import type { TankFindingCode } from '../../tank/index.ts';
import type { ModelFindingCode } from '../findings/model-findings.ts';
import type { RoomFindingCode } from '../findings/room-findings.ts';
import type { TankAnswerFindingCode } from '../findings/tank-findings.ts';
import type { WrappingFindingCode } from '../studies/wrapping/findings.ts';
import type { FindingWords } from './findings.ts';
import { messageInView } from './si-text.ts';

type Code = TankFindingCode | TankAnswerFindingCode | RoomFindingCode | WrappingFindingCode | ModelFindingCode;
type Tell = (fact: string) => string;

const words: Readonly<Record<Code, { readonly title: string; readonly text: (tell: Tell) => string }>> = {
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
  tankNeedsNoHeat: {
    title: 'This tank needs no heat here',
    text: (tell) => `Pumps and lights give ${tell('surplus')} more than the tank loses.`,
  },
  measuredLoadScaled: {
    title: 'A measurement, carried to other temperatures',
    text: (tell) => `Of the measured loss ${tell('evaporationShare')} is taken to have left as vapour.`,
  },
  measuredDifferenceSmall: {
    title: 'The measurement was made in too warm a room',
    text: (tell) => `Water and room were only ${tell('difference')} apart.`,
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
  coolingSimplified: {
    title: 'How the cooling is simplified',
    text: () =>
      'Only the water stores heat; heater, pumps and lights are off; room, outdoors and ground stay as they are in the coldest spell.',
  },
  wrappingSimplified: {
    title: 'How wrapping is simplified',
    text: (tell) =>
      `Savings stay the same every year, prices do not rise, nothing wears out, and the room keeps its temperature${tell('aired') === 'aired' ? ' and stays as damp as it is without the measures' : ' and its humidity'}. Edges and corners of boards leak nothing, and a lid listed as tight closes tightly: real ones save rather less.`,
  },
  lessAirOverWater: {
    title: 'Less air reaches the water',
    text: () => 'A lid or a calmer surface slows what the water breathes: oxygen in, carbon dioxide out.',
  },
  coolerWaterForAnimals: {
    title: 'Cooler water is another home',
    text: () => 'Cooler water on the list is a change for the animals, not only for the bill.',
  },
  dehumidifierSimplified: {
    title: 'How the dehumidifier is counted',
    text: () =>
      'It takes out all that the tank evaporates and gives the room that heat back, with its own electricity. Fresh air, which carries off part of the vapour in winter, and a cold coil that dries the room by itself are left out: rather too much electricity is charged, and rather too much warmth credited.',
  },
  airingNotCharged: {
    title: 'Airing the room is charged to nobody',
    text: () =>
      'Fresh air carries the vapour of the tank out of the room. The room is taken to be aired as much without the tank, so that this costs nothing more.',
  },
  warmLoopTakenAsIs: {
    title: 'The loop is taken as it is',
    text: () => 'Where the water is kept cooler, this loop is still reckoned at the temperature it has now.',
  },
  wetDischarge: {
    title: 'The gas would condense inside the shell',
    text: (tell) => `With the assumed shell heat the discharge comes out at ${tell('discharge')}, wet.`,
  },
  littleFlow: {
    title: 'Hardly any gas gets through',
    text: (tell) => `Volumetric efficiency is ${tell('volumetricEfficiency')}, below what the model was made for.`,
  },
  smallLift: {
    title: 'The lift is very small',
    text: (tell) => `Condensing is only ${tell('lift')} above evaporating.`,
  },
  glideApproximated: {
    title: 'The refrigerant is a blend',
    text: (tell) =>
      `Its temperature glides by ${tell('evaporatingGlide')} while it boils and by ${tell('condensingGlide')} while it condenses; between bubble and dew it is taken as linear in the share of vapour.`,
  },
  loopVelocityHigh: {
    title: 'The loop water would rush',
    text: (tell) => `In one tube of this width the water would run at ${tell('velocity')}.`,
  },
  dryEvaporatorElsewhere: {
    title: 'The evaporator is sized dry',
    text: (tell) => `It works at ${tell('evaporating')}, and nobody has said how humid the air there is.`,
  },
  surplusHeatUnused: {
    title: 'In some months pumps and lights heat too much',
    text: (tell) =>
      `They give ${tell('surplus')} a year more than the tank loses at its set temperature; this is not followed further.`,
  },
  dryEvaporator: {
    title: 'The evaporator is sized dry',
    text: (tell) => `At ${tell('evaporating')} its surface is below the dew point of the air.`,
  },
  machineWithoutPoints: {
    title: 'Nothing was printed or measured of this machine’s capacity',
    text: (tell) =>
      `It is a guess from machines of its kind. Beside the ranges of its numbers the model itself is taken to be right to within ${tell('flow')} in flow and ${tell('power')} in power.`,
  },
  machineBeyondItsPoints: {
    title: 'The machine would run beyond what is known of it',
    text: (tell) =>
      `At ${tell('evaporating')} evaporating and ${tell('condensing')} condensing the model stands alone: ${reasonsOf(tell('reasons'))}. There it is taken to be right to within ${tell('flow')} in flow and ${tell('power')} in power.`,
  },
  nameplateContradictsItself: {
    title: 'The numbers on the plate do not fit each other',
    text: (tell) =>
      `${plateWords[tell('of')]} would be ${tell('value')}; usual are ${tell('usualLow')} to ${tell('usualHigh')}.`,
  },
  machineValueDisagrees: {
    title: 'A value given for the machine does not fit the rest',
    text: (tell) =>
      `${sentenceStart(tell('label'))}: ${evidenceWords[tell('value')]} of ${tell('given')} was given; a machine that meets everything else has ${tell('modelled')}.`,
  },
  machinePointsSetAside: {
    title: 'Points that cannot be of one machine with the others',
    text: (tell) =>
      `Left out: ${tell('labels')}. What was given there fills ${tell('volumetricEfficiency')} of the stroke or less, which no machine of this kind does that also meets the others.`,
  },
  coefficientsUnusual: {
    title: 'Ten coefficients with an efficiency that such machines seldom have',
    text: (tell) =>
      `By ${tell('path')} and the sets beside it the overall efficiency is ${tell('efficiency')}; usual are ${tell('usualLow')} to ${tell('usualHigh')}. It would be usual with ${tell('readings')}.`,
  },
  numbersUnusual: {
    title: 'Numbers that such a machine seldom has',
    text: (tell) => `By ${tell('path')}: ${tell('numbers')}. It would be usual with ${tell('readings')}.`,
  },
  runsSeldom: {
    title: 'A machine far larger than this tank',
    text: (tell) => `Even in the coldest spell it would run only ${tell('share')} of the time.`,
  },
  surroundingsHeld: {
    title: 'Room and source keep their temperature',
    text: (tell) =>
      `In the coldest spell the machine takes ${tell('heatTaken')} out of ${tell('place')}, its pauses included; that is taken not to cool it. Months without heating follow a smooth curve between the usual and the summer temperature.`,
  },
  statesFromTables: {
    title: 'States of the refrigerant were read from tables',
    text: () =>
      'Temperature, density and entropy are interpolated, and lie within a hundred thousandth of the equation’s own.',
  },
  accountsLeaveOut: {
    title: 'What stands in none of the accounts',
    text: () =>
      'The electricity of the tank’s own pumps and lights is the same in each and counted in none, though the heat that it leaves in the room is credited in all.',
  },
  monthsWithoutMachine: {
    title: 'Months in which the loop has no operating point',
    text: (tell) => `This holds for ${months(tell('months'))}.`,
  },
  rangeEndWithoutAnswer: {
    title: 'A range reaches where the engine has no answer',
    text: (tell) => `At the ${tell('end')} end of “${tell('input')}”: ${tell('reason').replace(/\.$/, '')}.`,
  },
};

const plateWords: Readonly<Record<string, string>> = {
  lockedRotorRatio: 'Locked-rotor over rated current',
  powerFactor: 'Its watts over its volts times amps',
};

const evidenceWords: Readonly<Record<string, string>> = {
  massFlow: 'a flow',
  capacity: 'a capacity',
  power: 'a power',
  current: 'a current',
  dischargeTemperature: 'a discharge temperature',
};

const doubtReasons: Readonly<Record<string, string>> = {
  otherFluid: 'its points are of another refrigerant',
  otherFrequency: 'they are of other mains',
  beyondEvaporating: 'they were taken at other evaporating temperatures',
  beyondCondensing: 'they were taken at other condensing temperatures',
  noPoints: 'nothing was printed or measured of its capacity',
};

/** "otherFluid, beyondCondensing" -> words. */
function reasonsOf(names: string): string {
  return listed(names.split(', ').map((name) => doubtReasons[name] ?? name));
}

/** Whether there are words here for this code. */
export function hasModelWords(code: string): code is Code {
  return Object.hasOwn(words, code);
}

/** Title and one sentence of a finding about the models. The caller has checked `hasModelWords`. */
export function modelFindingWords(finding: Finding, view: UnitView): FindingWords {
  const { title, text } = words[finding.code as Code];
  return { title, text: text((fact) => tellFact(finding, fact, view)) };
}

function tellFact(finding: Finding, name: string, view: UnitView): string {
  const fact = finding.facts[name];
  if (fact === undefined) throw new InputError(`finding.facts.${name}`, undefined, `a fact of ${finding.code}`);
  if ('word' in fact) return messageInView(fact.word, view);
  if (!isQuantityName(fact.quantity)) {
    throw new InputError(`finding.facts.${name}`, fact.quantity, 'a quantity of the table');
  }
  // Fresh water too comes in litres a day; 1000 kg/m³ is a litre counted as a kilogram, as that quantity counts it.
  if (fact.quantity === 'waterFlow') return sayQuantity(1000 * fact.value, 'evaporation', view, 2);
  return sayQuantity(fact.value, waterLost(finding.code, fact.quantity), view, 2);
}

/** Flows of water are said in litres a day, as one tops it up; all others as they are. */
function waterLost(code: string, quantity: QuantityName): QuantityName {
  const isWater = code === 'evaporationMethodsDiffer' || code === 'condensationOnWater';
  return isWater && quantity === 'massFlow' ? 'evaporation' : quantity;
}

/** "june, july" -> "June and July". */
function months(names: string): string {
  return listed(names.split(', ').map(sentenceStart));
}
