// Formula records of what leads to the states of a loop without an equation of state: numbers taken over as given, what a
// part of the loop leaves as it is, superheat and subcooling.

import type { Formula, FormulaSymbol, FormulaValues } from '../../quantities/index.ts';
import { subcoolingBelow, superheatAbove, takenOver } from '../states.ts';

const file = 'src/loop/states.ts';

type Counted = Pick<FormulaSymbol, 'unit' | 'quantity'>;

const level: Counted = { unit: 'K', quantity: 'temperature' };
const difference: Counted = { unit: 'K', quantity: 'temperatureDifference' };
const pressure: Counted = { unit: 'Pa', quantity: 'pressure' };
const enthalpy: Counted = { unit: 'J/kg', quantity: 'enthalpy' };
const entropy: Counted = { unit: 'J/(kg K)', quantity: 'entropy' };
const share: Counted = { unit: '1', quantity: 'fraction' };
const massFlow: Counted = { unit: 'kg/s', quantity: 'massFlow' };
const heat: Counted = { unit: 'W', quantity: 'power' };
const shaftPower: Counted = { unit: 'W', quantity: 'electricPower' };
const volumeFlow: Counted = { unit: 'm³/s', quantity: 'volumeFlow' };

const asGiven = 'as it was given';

export const stateFormulas: readonly Formula[] = [
  taken('loop.temperatureGiven', 'Temperature, given', ['T', 'temperature'], ['T_given', asGiven], level),
  taken('loop.pressureGiven', 'Pressure, given', ['p', 'pressure, absolute'], ['p_given', asGiven], pressure),
  taken(
    'loop.differenceGiven',
    'Temperature difference, given',
    ['dT', 'difference'],
    ['dT_given', asGiven],
    difference,
  ),
  taken('loop.shareGiven', 'Share of a whole, given', ['x', 'share'], ['x_given', asGiven], share),
  taken('loop.massFlowGiven', 'Mass flow, given', ['m', 'mass flow of refrigerant'], ['m_given', asGiven], massFlow),
  taken('loop.heatGiven', 'Heat per second, given', ['Q', 'heat per second'], ['Q_given', asGiven], heat),
  taken(
    'loop.shaftPowerGiven',
    'Power of the shaft, given',
    ['W', 'power of the shaft into the gas, not electricity'],
    ['W_given', asGiven],
    shaftPower,
  ),
  taken(
    'loop.volumeFlowGiven',
    'Displacement, given',
    ['V', 'volume swept per second'],
    ['V_given', asGiven],
    volumeFlow,
  ),
  taken(
    'loop.temperatureKept',
    'Temperature of one state under two names',
    ['T', 'temperature'],
    ['T_same', 'temperature of the same state'],
    level,
  ),
  taken(
    'loop.pressureKept',
    'Pressure along a part of the loop that loses none',
    ['p_out', 'pressure where the refrigerant leaves'],
    ['p_in', 'pressure where it enters'],
    pressure,
  ),
  taken(
    'loop.entropyKept',
    'Entropy after a compression without losses',
    ['s_2s', 'entropy at the outlet of a compressor without losses'],
    ['s_1', 'entropy at the compressor inlet'],
    entropy,
  ),
  taken(
    'loop.enthalpyKept',
    'Enthalpy after a part that exchanges neither heat nor work, as an expansion valve',
    ['h_out', 'enthalpy where the refrigerant leaves'],
    ['h_in', 'enthalpy where it enters'],
    enthalpy,
  ),
  {
    id: 'loop.superheat',
    title: 'Superheat',
    result: { symbol: 'dT_sh', meaning: 'superheat', ...difference },
    expression: 'T - T_dew',
    symbols: {
      T: { meaning: 'temperature of the gas', ...level },
      T_dew: { meaning: 'dew temperature at its pressure', ...level },
    },
    source: 'definition of superheat',
    validity: 'gas at or above its dew temperature',
    file,
    compute: ({ T, T_dew }) => superheatAbove(T_dew!, T!),
    examples: [
      { T: 281.15, T_dew: 276.15 },
      { T: 269.4, T_dew: 258.3 },
    ],
  },
  {
    id: 'loop.subcooling',
    title: 'Subcooling',
    result: { symbol: 'dT_sc', meaning: 'subcooling', ...difference },
    expression: 'T_b - T',
    symbols: {
      T_b: { meaning: 'bubble temperature at its pressure', ...level },
      T: { meaning: 'temperature of the liquid', ...level },
    },
    source: 'definition of subcooling',
    validity: 'liquid at or below its bubble temperature',
    file,
    compute: ({ T_b, T }) => subcoolingBelow(T_b!, T!),
    examples: [
      { T_b: 313.15, T: 308.15 },
      { T_b: 320.7, T: 318.2 },
    ],
  },
];

/** Record of a number taken over: symbol and meaning where it arrives, and where it comes from. */
function taken(
  id: string,
  title: string,
  [symbol, meaning]: readonly [string, string],
  [origin, originMeaning]: readonly [string, string],
  counted: Counted,
): Formula {
  const examples: readonly FormulaValues[] = [{ [origin]: 0.73 }, { [origin]: 291.4 }];
  return {
    id,
    title,
    result: { symbol, meaning, ...counted },
    expression: origin,
    symbols: { [origin]: { meaning: originMeaning, ...counted } },
    source: 'definition',
    validity: 'any',
    file,
    compute: (values) => takenOver(values[origin]!),
    examples,
  };
}
