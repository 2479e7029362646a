// Formula records of what wrapping is worth.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { lessThanBefore, netSaving } from './saving.ts';
import { costTogether, measureCost } from './usual.ts';
import { discountedPayback, netValue, simplePayback } from './worth.ts';

const economics = 'any engineering-economics text';
const money = (meaning: string): FormulaSymbol => ({ meaning, unit: 'money' });
const perYear = (meaning: string): FormulaSymbol => ({ meaning, unit: 'money/year' });
const cost = money('cost of the measure, once');
const saving = perYear('net saving, tank and room');
const rate: FormulaSymbol = { meaning: 'real discount rate', unit: '1/year' };
const file = 'src/accounts/wrapping/worth.ts';
const savingFile = 'src/accounts/wrapping/saving.ts';

export const wrappingFormulas: readonly Formula[] = [
  {
    id: 'accounts.measureCost',
    title: 'Cost of a usual measure',
    result: { symbol: 'C', ...money('cost of the measure, once') },
    expression: 'f * (C_0 + c_A * A + c_V * A * d)',
    symbols: {
      f: { meaning: 'price here over the usual one', unit: '1' },
      C_0: money('fixed part'),
      c_A: { meaning: 'cost by area', unit: 'money/m²' },
      A: { meaning: 'area that is covered', unit: 'm²' },
      c_V: { meaning: 'cost of a board by its volume', unit: 'money/m³' },
      d: { meaning: 'thickness of the board', unit: 'm', quantity: 'length' },
    },
    source: 'common practice, no source',
    validity: 'prices to be replaced by one’s own',
    file: 'src/accounts/wrapping/usual.ts',
    compute: (v) => measureCost(v.f!, v.C_0!, v.c_A!, v.A!, v.c_V!, v.d!),
    examples: [
      { f: 1.2, C_0: 18, c_A: 8, A: 1.2, c_V: 400, d: 0.025 },
      { f: 0.7, C_0: 5, c_A: 35, A: 0.43, c_V: 0, d: 0.01 },
    ],
  },
  {
    id: 'accounts.costTogether',
    title: 'Two costs together',
    result: { symbol: 'C', ...money('both') },
    expression: 'C_1 + C_2',
    symbols: { C_1: money('one'), C_2: money('the other') },
    source: 'definition',
    validity: 'sums of the same currency',
    file: 'src/accounts/wrapping/usual.ts',
    compute: (v) => costTogether(v.C_1!, v.C_2!),
    examples: [
      { C_1: 40, C_2: 39.6 },
      { C_1: 79.6, C_2: 12.5 },
    ],
  },
  {
    id: 'accounts.lessThanBefore',
    title: 'What a measure makes less',
    result: { symbol: 'S', ...perYear('saved in a year') },
    expression: 'K_before - K_after',
    symbols: { K_before: perYear('without the measure'), K_after: perYear('with it') },
    source: 'definition',
    validity: 'any two sums of the same year',
    file: savingFile,
    compute: (v) => lessThanBefore(v.K_before!, v.K_after!),
    examples: [
      { K_before: 261, K_after: 113 },
      { K_before: 38, K_after: 41.5 },
    ],
  },
  {
    id: 'accounts.netSaving',
    title: 'Net saving of a measure in a year, tank and room',
    result: { symbol: 'S', ...perYear('net saving') },
    expression: 'S_el + D_room + S_cool',
    symbols: {
      S_el: perYear('electricity saved'),
      D_room: perYear('change of the credit for heat to the room'),
      S_cool: perYear('cooling of the room saved'),
    },
    source: 'definition of this project: the running cost is electricity less the credit plus cooling',
    validity: 'sensible heat only, unless something in the room condenses the vapour',
    file: savingFile,
    compute: (v) => netSaving(v.S_el!, v.D_room!, v.S_cool!),
    examples: [
      { S_el: 151, D_room: -38, S_cool: 6 },
      { S_el: 22, D_room: 3.5, S_cool: -1.2 },
    ],
  },
  {
    id: 'accounts.simplePayback',
    title: 'Years until a measure has paid for itself, interest left out',
    result: { symbol: 't', meaning: 'simple payback', unit: 'year' },
    expression: 'C / S',
    symbols: { C: cost, S: saving },
    source: economics,
    validity: 'saving above 0: what saves nothing never pays for itself',
    file,
    compute: (v) => simplePayback(v.C!, v.S!),
    examples: [
      { C: 600, S: 120 },
      { C: 37, S: 52 },
    ],
  },
  {
    id: 'accounts.discountedPayback',
    title: 'Years until a measure has paid for itself, with interest',
    result: { symbol: 't', meaning: 'discounted payback', unit: 'year' },
    expression: 'r > 0 ? -log(1 - r * C / S) / log(1 + r) : C / S',
    symbols: { C: cost, S: saving, r: rate },
    source: economics,
    validity: 'saving above the interest on the cost: less never pays for itself',
    file,
    compute: (v) => discountedPayback(v.C!, v.S!, v.r!),
    examples: [
      { C: 600, S: 120, r: 0.05 },
      { C: 210, S: 47, r: 0.032 },
      { C: 210, S: 47, r: 0 },
    ],
  },
  {
    id: 'accounts.netValue',
    title: 'Net value of a measure over a number of years',
    result: { symbol: 'NPV', ...money('present value of the savings less the cost') },
    expression: 'S * (r > 0 ? (1 - (1 + r)^(-n)) / r : n) - C',
    symbols: { C: cost, S: saving, r: rate, n: { meaning: 'number of yearly savings', unit: '1' } },
    source: economics,
    validity: 'r of 0 or more; savings fall at the end of each year and stay equal',
    file,
    compute: (v) => netValue(v.C!, v.S!, v.r!, v.n!),
    examples: [
      { C: 600, S: 120, r: 0.05, n: 10 },
      { C: 37, S: -4, r: 0.028, n: 7.5 },
      { C: 37, S: 41, r: 0, n: 7.5 },
    ],
  },
];
