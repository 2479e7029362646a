// Words for what is odd about printed and measured points of a machine, and for a machine that would run beyond them, by code.

import { listed, sentenceStart } from '../../../quantities/index.ts';
import type { ModelFindingCode } from '../../findings/model-findings.ts';
import type { ModelWords } from './handed-over.ts';

export type MachinePointsCode = Extract<
  ModelFindingCode,
  | 'machineBeyondItsPoints'
  | 'machineValueDisagrees'
  | 'machinePointsSetAside'
  | 'coefficientsUnusual'
  | 'numbersUnusual'
>;

export const machinePointsWords: Readonly<Record<MachinePointsCode, ModelWords>> = {
  machineBeyondItsPoints: {
    title: 'The machine would run beyond what is known of it',
    text: (tell) =>
      `At ${tell('evaporating')} evaporating and ${tell('condensing')} condensing the model stands alone: ${reasonsOf(tell('reasons'))}. There it is taken to be right to within ${tell('flow')} in flow and ${tell('power')} in power.`,
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
