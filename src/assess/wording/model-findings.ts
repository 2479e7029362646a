// Words for what the models leave out or doubt, by code. The remedy is printed after the text and not repeated in it. Those that only
// tanks known by their sizes and machines with points can need are handed over with what reckons these (model-words/).

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
import { type ModelWords, modelWordsOf } from './model-words/handed-over.ts';
import type { MachinePointsCode } from './model-words/machine-points.ts';
import type { SizedTankCode } from './model-words/sized-tank.ts';
import { messageInView } from './si-text.ts';

type Code = Exclude<
  TankFindingCode | TankAnswerFindingCode | RoomFindingCode | WrappingFindingCode | ModelFindingCode,
  SizedTankCode | MachinePointsCode
>;

const words: Readonly<Record<Code, ModelWords>> = {
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
  nameplateContradictsItself: {
    title: 'The numbers on the plate do not fit each other',
    text: (tell) =>
      `${plateWords[tell('of')]} would be ${tell('value')}; usual are ${tell('usualLow')} to ${tell('usualHigh')}.`,
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

/** Title and one sentence of a finding about the models; undefined where there are no words here for its code. */
export function modelFindingWords(finding: Finding, view: UnitView): FindingWords | undefined {
  const found =
    modelWordsOf(finding.code) ?? (Object.hasOwn(words, finding.code) ? words[finding.code as Code] : undefined);
  return found && { title: found.title, text: found.text((fact) => tellFact(finding, fact, view)) };
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
