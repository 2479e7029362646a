// Formula records of what is known of a machine moving its model's running point.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { displacementOfSize, shellConductanceOfSize } from './another-size.ts';
import { symbols } from './hermetic/formulas/symbols.ts';
import { factorWithin, movedBy, movedCurrent, wallAtShellHeat } from './running.ts';

const file = 'src/parts/compressor/running.ts';
/** Identifier, title and symbol of a result that is moved, its symbol by the model alone, what it is, and an example of it. */
const movedResults: readonly (readonly [string, string, string, string, FormulaSymbol, number])[] = [
  ['compressor.movedFlow', 'Mass flow, moved within the doubt of the model', 'm', 'm_0', symbols.massFlow, 1.2e-3],
  ['compressor.movedPower', 'Electric power, moved within the doubt of the model', 'W', 'W_0', symbols.power, 165],
  ['compressor.movedShellHeat', 'Heat of the shell, moved as the power is', 'Q_s', 'Q_0', symbols.shellHeat, 61],
  ['compressor.movedLoad', 'Load of the motor, moved as the power is', 'x', 'x_0', symbols.load, 0.9],
];
const sizeFile = 'src/parts/compressor/another-size.ts';
const sizeOfMachine: FormulaSymbol = {
  meaning: 'size over that of the machine there is, found so that the heat is met',
  unit: '1',
};
const factor: FormulaSymbol = { meaning: 'factor on what the model gives', unit: '1' };

export const runningFormulas: readonly Formula[] = [
  {
    id: 'compressor.factorWithin',
    title: 'Factor on flow or power within the doubt of the model',
    result: { symbol: 'k', ...factor },
    expression: '1 + c + z * H',
    symbols: {
      c: { meaning: 'correction that the points around tell, relative', unit: '1' },
      z: { meaning: 'where in its range the machine is taken to stand, −1 to 1', unit: '1' },
      H: { meaning: 'half width of the range, relative', unit: '1' },
    },
    source: 'definition',
    validity: 'above 0',
    file,
    compute: ({ c, z, H }) => factorWithin(c!, H!, z!),
    examples: [
      { c: 0.02, z: 0.4, H: 0.06 },
      { c: -0.03, z: -1, H: 0.05 },
    ],
  },
  ...movedResults.map(
    ([id, title, symbol, alone, of, example]): Formula => ({
      id,
      title,
      result: { symbol, ...of },
      expression: `k * ${alone}`,
      symbols: { k: factor, [alone]: { ...of, meaning: `${of.meaning}, by the model alone` } },
      source: 'definition of the factor',
      validity: 'factor near 1',
      file,
      compute: (values) => movedBy(values.k!, values[alone]!),
      examples: [
        { k: 1.03, [alone]: example },
        { k: 0.96, [alone]: 0.8 * example },
      ],
    }),
  ),
  {
    id: 'compressor.movedCurrent',
    title: 'Current at the moved power',
    result: { symbol: 'I', ...symbols.current },
    expression: 'sqrt(I_m^2 + (W^2 - W_m^2) / V^2)',
    symbols: {
      I_m: { ...symbols.current, meaning: 'current by the model alone' },
      W: symbols.power,
      W_m: { ...symbols.power, meaning: 'electric power by the model alone' },
      V: symbols.voltage,
    },
    source: 'the active part of the current follows the power, the magnetising part stays',
    validity: 'sines',
    file,
    compute: ({ I_m, W, W_m, V }) => movedCurrent(I_m!, W_m!, W!, V!),
    examples: [
      { I_m: 1.087, W: 220, W_m: 200, V: 230 },
      { I_m: 1.4, W: 95, W_m: 101, V: 115 },
    ],
  },
  {
    id: 'compressor.wallAtShellHeat',
    title: 'Wall temperature at a heat of the shell',
    result: { symbol: 'T_w', ...symbols.wall },
    expression: 'T_amb + Q_s / UA',
    symbols: { T_amb: symbols.surroundings, Q_s: symbols.shellHeat, UA: symbols.shellConductance },
    source: 'definition of the conductance',
    validity: 'steady running',
    file,
    compute: ({ T_amb, Q_s, UA }) => wallAtShellHeat(T_amb!, Q_s!, UA!),
    examples: [
      { T_amb: 295, Q_s: 61, UA: 2 },
      { T_amb: 288, Q_s: 40, UA: 1.3 },
    ],
  },
  {
    id: 'compressor.displacementOfSize',
    title: 'Displacement of a machine alike of another size',
    result: { symbol: 'V', ...symbols.displacement },
    expression: 'n * V_d',
    symbols: { n: sizeOfMachine, V_d: { ...symbols.displacement, meaning: 'swept volume of the machine there is' } },
    source: 'definition of the size',
    validity: 'machines of one kind',
    file: sizeFile,
    compute: ({ n, V_d }) => displacementOfSize(n!, V_d!),
    examples: [
      { n: 1.4, V_d: 6.5e-6 },
      { n: 0.62, V_d: 11.2e-6 },
    ],
  },
  {
    id: 'compressor.shellConductanceOfSize',
    title: 'Conductance of the shell of a machine alike of another size',
    result: { symbol: 'UA_n', ...symbols.shellConductance },
    expression: 'n^(2 / 3) * UA',
    symbols: { n: sizeOfMachine, UA: { ...symbols.shellConductance, meaning: 'of the machine there is' } },
    source: 'surface of bodies alike, own judgement',
    validity: 'machines of one kind',
    file: sizeFile,
    compute: ({ n, UA }) => shellConductanceOfSize(n!, UA!),
    examples: [
      { n: 1.2, UA: 1.4 },
      { n: 0.62, UA: 2.1 },
    ],
  },
];
