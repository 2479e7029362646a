// The formula records of how the water cools when nothing heats it.

import type { Formula } from '../../quantities/index.ts';
import { fallTime, fallTimeLinear, timeConstant } from '../cooling.ts';
import { lossPerKelvin } from '../totals.ts';

const file = 'src/tank/cooling.ts';
const C = { meaning: 'heat capacity of the water', unit: 'J/K', quantity: 'heatCapacity' } as const;
const UA = {
  meaning: 'change of the loss per kelvin of water temperature',
  unit: 'W/K',
  quantity: 'thermalConductance',
} as const;
const dT = { meaning: 'how far the water cools', unit: 'K', quantity: 'temperatureDifference' } as const;
const time = { unit: 's', quantity: 'duration' } as const;

export const coolingFormulas: readonly Formula[] = [
  {
    id: 'tank.lossPerKelvin',
    title: 'Change of the loss per kelvin of water temperature',
    result: { symbol: 'UA', ...UA },
    expression: '(Q_warmer - Q_cooler) / dT',
    symbols: {
      Q_warmer: { meaning: 'loss with the water a quarter of a kelvin warmer', unit: 'W', quantity: 'power' },
      Q_cooler: { meaning: 'loss with the water a quarter of a kelvin cooler', unit: 'W', quantity: 'power' },
      dT: { ...dT, meaning: 'between the two' },
    },
    source: 'definition of a derivative; the load is computed anew at both temperatures',
    validity: 'near this water temperature',
    file: 'src/tank/totals.ts',
    compute: (v) => lossPerKelvin(v.Q_warmer!, v.Q_cooler!, v.dT!),
    examples: [
      { Q_warmer: 340, Q_cooler: 320, dT: 0.5 },
      { Q_warmer: 126.4, Q_cooler: 121.9, dT: 0.4 },
    ],
  },
  {
    id: 'tank.timeConstant',
    title: 'Time constant of the tank',
    result: { symbol: 'tau', meaning: 'time constant', ...time },
    expression: 'C / UA',
    symbols: { C, UA },
    source: 'lumped heat capacity, any textbook of heat transfer',
    validity: 'a loss linear in the water temperature; water alone stores heat',
    file,
    compute: (v) => timeConstant(v.C!, v.UA!),
    examples: [
      { C: 200 * 4182, UA: 8 },
      { C: 1.79e6, UA: 46.5 },
    ],
  },
  {
    id: 'tank.fallTime',
    title: 'Time for the water to fall with heater, pumps and lights off',
    result: { symbol: 't', meaning: 'time', ...time },
    expression: 'C * dT / Q_m',
    symbols: {
      C,
      dT,
      Q_m: { meaning: 'harmonic mean of the loss over the temperatures passed', unit: 'W', quantity: 'power' },
    },
    source: 'energy balance; the loss is computed anew at each temperature on the way',
    validity: 'room, outdoors and ground as they are; water alone stores heat',
    file,
    compute: (v) => fallTime(v.C!, v.dT!, v.Q_m!),
    examples: [
      { C: 200 * 4182, dT: 2, Q_m: 55.6 },
      { C: 1.79e6, dT: 5, Q_m: 241 },
    ],
  },
  {
    id: 'tank.fallTimeLinear',
    title: 'Time for the water to fall where the loss is linear in its temperature',
    result: { symbol: 't', meaning: 'time', ...time },
    expression: '-C / UA * log(1 - UA * dT / Q)',
    symbols: { C, UA, dT, Q: { meaning: 'loss at the start', unit: 'W', quantity: 'power' } },
    source: 'lumped heat capacity, any textbook of heat transfer; used for the range of the time only',
    validity: 'UA dT below Q: the water comes to rest where the loss is 0',
    file,
    compute: (v) => fallTimeLinear(v.C!, v.UA!, v.Q!, v.dT!)!,
    examples: [
      { C: 200 * 4182, UA: 8, dT: 2, Q: 64 },
      { C: 1.79e6, UA: 46.5, dT: 5, Q: 334 },
    ],
  },
];
