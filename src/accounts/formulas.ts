// Formula records of the accounts.

import type { Formula, FormulaSymbol } from '../quantities/index.ts';
import {
  annualisedCost,
  energyCost,
  netRunningCost,
  purchaseWithHeater,
  roomCoolingCost,
  summerCoolingCost,
} from './account.ts';
import { compareFormulas } from './compare-formulas.ts';
import { electricityAtCop, heatTakenAtCop, roomHeatLessTaken } from './energies.ts';
import { annuityFactor, capitalRecoveryFactor } from './present-value.ts';
import { wrappingFormulas } from './wrapping/formulas.ts';

const economics = 'any engineering-economics text';
const money = (meaning: string): FormulaSymbol => ({ meaning, unit: 'money' });
const perYear = (meaning: string): FormulaSymbol => ({ meaning, unit: 'money/year' });
const rate: FormulaSymbol = { meaning: 'real discount rate', unit: '1/year' };
const years: FormulaSymbol = { meaning: 'number of yearly payments', unit: '1' };
const valueFile = 'src/accounts/present-value.ts';
const accountFile = 'src/accounts/account.ts';
const energiesFile = 'src/accounts/energies.ts';

export const accountsFormulas: readonly Formula[] = [
  {
    id: 'accounts.annuityFactor',
    title: 'Annuity factor',
    result: { symbol: 'a', meaning: 'present value of 1 a year', unit: '1' },
    expression: '(1 - (1 + r)^(-n)) / r',
    symbols: { r: rate, n: years },
    source: economics,
    validity: 'r above 0; at r = 0 the factor is n',
    file: valueFile,
    compute: (v) => annuityFactor(v.r!, v.n!),
    examples: [
      { r: 0.05, n: 10 },
      { r: 0.032, n: 7.5 },
    ],
  },
  {
    id: 'accounts.capitalRecoveryFactor',
    title: 'Capital recovery factor',
    result: { symbol: 'f', meaning: 'yearly payment for 1 spent now', unit: '1/year' },
    expression: 'r / (1 - (1 + r)^(-n))',
    symbols: { r: rate, n: years },
    source: economics,
    validity: 'r above 0; at r = 0 the factor is 1/n',
    file: valueFile,
    compute: (v) => capitalRecoveryFactor(v.r!, v.n!),
    examples: [
      { r: 0.05, n: 10 },
      { r: 0.032, n: 7.5 },
    ],
  },
  {
    id: 'accounts.electricityAtCop',
    title: 'Electricity for a heat at a coefficient of performance',
    result: { symbol: 'E', meaning: 'electricity', unit: 'J' },
    expression: 'Q / COP',
    symbols: {
      Q: { meaning: 'heat delivered', unit: 'J' },
      COP: { meaning: 'season coefficient of performance', unit: '1' },
    },
    source: 'definition',
    validity: 'COP of 1 or more',
    file: energiesFile,
    compute: (v) => electricityAtCop(v.Q!, v.COP!),
    examples: [
      { Q: 6.1e9, COP: 3.9 },
      { Q: 2.4e9, COP: 2.7 },
    ],
  },
  {
    id: 'accounts.heatTakenAtCop',
    title: 'Heat taken from the source at a coefficient of performance',
    result: { symbol: 'Q_src', meaning: 'heat taken', unit: 'J' },
    expression: 'Q * (1 - 1 / COP)',
    symbols: {
      Q: { meaning: 'heat delivered', unit: 'J' },
      COP: { meaning: 'season coefficient of performance', unit: '1' },
    },
    source: 'energy balance; all electricity is taken to end in the heat delivered',
    validity: 'COP of 1 or more',
    file: energiesFile,
    compute: (v) => heatTakenAtCop(v.Q!, v.COP!),
    examples: [
      { Q: 6.1e9, COP: 3.9 },
      { Q: 2.4e9, COP: 2.7 },
    ],
  },
  {
    id: 'accounts.energyCost',
    title: 'Cost or worth of an energy',
    result: { symbol: 'K', ...money('cost or worth') },
    expression: 'E * p',
    symbols: {
      E: { meaning: 'energy of a year, or of a month; negative where heat is taken away', unit: 'J' },
      p: { meaning: 'price', unit: 'money/J' },
    },
    source: 'definition',
    validity: 'price of 0 or more',
    file: accountFile,
    compute: (v) => energyCost(v.E!, v.p!),
    examples: [
      { E: 3.9e9, p: 8.6e-8 },
      { E: -1.2e9, p: 3.3e-8 },
    ],
  },
  {
    id: 'accounts.roomCoolingCost',
    title: 'Cost of carrying heat out of a cooled room',
    result: { symbol: 'K_cool', ...money('cooling cost') },
    expression: 'Q / COP_cool * p',
    symbols: {
      Q: { meaning: 'sensible heat into the room in summer', unit: 'J' },
      COP_cool: { meaning: 'coefficient of performance of the room cooling', unit: '1' },
      p: { meaning: 'price of electricity', unit: 'money/J' },
    },
    source: 'definition; the coefficient itself is common practice, no source',
    validity: 'vapour left out',
    file: accountFile,
    compute: (v) => roomCoolingCost(v.Q!, v.COP_cool!, v.p!),
    examples: [
      { Q: 3.7e8, COP_cool: 2.9, p: 8.6e-8 },
      { Q: -1.1e8, COP_cool: 3.4, p: 7.2e-8 },
    ],
  },
  {
    id: 'accounts.summerCoolingCost',
    title: 'Cooling cost of a summer, or of a month of it',
    result: { symbol: 'K_cool', ...money('cooling cost') },
    expression: 'cooled > 0 ? Q / COP_cool * p : 0',
    symbols: {
      cooled: { meaning: '1 where the room is cooled in summer, else 0', unit: '1' },
      Q: { meaning: 'sensible heat into the room in summer', unit: 'J' },
      COP_cool: { meaning: 'coefficient of performance of the room cooling', unit: '1' },
      p: { meaning: 'price of electricity', unit: 'money/J' },
    },
    source: 'definition; the coefficient itself is common practice, no source',
    validity: 'vapour left out',
    file: accountFile,
    compute: (v) => summerCoolingCost(v.cooled! > 0, v.Q!, v.COP_cool!, v.p!),
    examples: [
      { cooled: 1, Q: 3.7e8, COP_cool: 2.9, p: 8.6e-8 },
      { cooled: 0, Q: 3.7e8, COP_cool: 2.9, p: 8.6e-8 },
    ],
  },
  {
    id: 'accounts.roomHeatLessTaken',
    title: "Net sensible heat into the tank's room in a month",
    result: { symbol: 'Q_room', meaning: 'net sensible heat into the room', unit: 'J' },
    expression: 'Q_tank - Q_src',
    symbols: {
      Q_tank: { meaning: 'sensible loss of the tank', unit: 'J' },
      Q_src: { meaning: "heat taken from the room's air; 0 for another source", unit: 'J' },
    },
    source: 'energy balance; vapour is not counted here',
    validity: 'steady state of a month',
    file: energiesFile,
    compute: (v) => roomHeatLessTaken(v.Q_tank!, v.Q_src!),
    examples: [
      { Q_tank: 3.1e8, Q_src: 4.5e8 },
      { Q_tank: 2.2e8, Q_src: 1.4e8 },
    ],
  },
  {
    id: 'accounts.purchase',
    title: 'Purchase of a device and the plain heater beside it',
    result: { symbol: 'C', ...money('purchase') },
    expression: 'C_device + C_heater',
    symbols: { C_device: money('the device'), C_heater: money('the heater that makes up what is missing') },
    source: 'definition of this project: a heat pump keeps a plain heater beside it',
    validity: 'price of 0 or more',
    file: accountFile,
    compute: (v) => purchaseWithHeater(v.C_device!, v.C_heater!),
    examples: [
      { C_device: 250, C_heater: 40 },
      { C_device: 1400, C_heater: 55 },
    ],
  },
  {
    id: 'accounts.runningCost',
    title: 'Running cost of a year, or of a month, tank and room',
    result: { symbol: 'R', ...money('running cost') },
    expression: 'K_el - K_room + K_cool + K_dry',
    symbols: {
      K_el: money('electricity'),
      K_room: money('worth of the heat given to the room while it is heated'),
      K_cool: money('cooling of the room in summer'),
      K_dry: money('electricity of a dehumidifier for what the tank evaporates; 0 without one'),
    },
    source: 'definition of this project; zero point: the same room without a tank',
    validity: 'sensible heat; vapour only where a dehumidifier condenses it',
    file: accountFile,
    compute: (v) => netRunningCost(v.K_el!, v.K_room!, v.K_cool!, v.K_dry!),
    examples: [
      { K_el: 312, K_room: 61, K_cool: 11, K_dry: 0 },
      { K_el: 148, K_room: -39, K_cool: -4, K_dry: 57 },
    ],
  },
  {
    id: 'accounts.annualCost',
    title: 'Cost per year with the purchase spread over its life',
    result: { symbol: 'A', ...perYear('cost per year') },
    expression: 'R + C * (r > 0 ? r / (1 - (1 + r)^(-n)) : 1 / n)',
    symbols: { R: perYear('running cost'), C: money('purchase'), r: rate, n: years },
    source: economics,
    validity: 'r of 0 or more',
    file: accountFile,
    compute: (v) => annualisedCost(v.R!, v.C!, v.r!, v.n!),
    examples: [
      { R: 121, C: 600, r: 0.05, n: 10 },
      { R: 262, C: 45, r: 0.028, n: 7.5 },
      { R: 262, C: 45, r: 0, n: 7.5 },
    ],
  },
  ...compareFormulas,
  ...wrappingFormulas,
];
