// Formula records of the accounts, and the steps behind one account.

import type { Formula, FormulaSymbol, FormulaValues, WorkingStep } from '../quantities/index.ts';
import {
  type Account,
  type AccountPrices,
  annualisedCost,
  energyCost,
  roomCoolingCost,
  yearlyRunningCost,
} from './account.ts';
import { electricityAtCop, heatTakenAtCop } from './energies.ts';
import { annuityFactor, capitalRecoveryFactor, discountedPayback, netPresentValue } from './present-value.ts';

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
    id: 'accounts.netPresentValue',
    title: 'Net present value of a saving',
    result: { symbol: 'NPV', ...money('net present value') },
    expression: '-C + S * (1 - (1 + r)^(-n)) / r',
    symbols: { C: money('purchase'), S: perYear('saving'), r: rate, n: years },
    source: economics,
    validity: 'equal savings at the end of each year; r above 0',
    file: valueFile,
    compute: (v) => netPresentValue(v.C!, v.S!, v.r!, v.n!),
    examples: [
      { C: 600, S: 120, r: 0.05, n: 10 },
      { C: 310, S: 95, r: 0.028, n: 6.5 },
    ],
  },
  {
    id: 'accounts.discountedPayback',
    title: 'Discounted payback time',
    result: { symbol: 't', meaning: 'years until the savings have paid the purchase', unit: 'year' },
    expression: '-log(1 - r * C / S) / log(1 + r)',
    symbols: { C: money('purchase'), S: perYear('saving'), r: rate },
    source: economics,
    validity: 'r above 0 and r C below S',
    file: valueFile,
    compute: (v) => discountedPayback(v.C!, v.S!, v.r!),
    examples: [
      { C: 600, S: 120, r: 0.05 },
      { C: 310, S: 95, r: 0.028 },
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
    result: { symbol: 'K', ...perYear('cost or worth') },
    expression: 'E * p',
    symbols: {
      E: { meaning: 'energy in a year; negative where heat is taken away', unit: 'J' },
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
    result: { symbol: 'K_cool', ...perYear('cooling cost') },
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
    id: 'accounts.runningCost',
    title: 'Running cost of a year, tank and room',
    result: { symbol: 'R', ...perYear('running cost') },
    expression: 'K_el - K_room + K_cool',
    symbols: {
      K_el: perYear('electricity'),
      K_room: perYear('worth of the heat given to the room in its heated months'),
      K_cool: perYear('cooling of the room in summer'),
    },
    source: 'definition of this project; zero point: the same room without a tank',
    validity: 'sensible heat only',
    file: accountFile,
    compute: (v) => yearlyRunningCost(v.K_el!, v.K_room!, v.K_cool!),
    examples: [
      { K_el: 312, K_room: 61, K_cool: 11 },
      { K_el: 148, K_room: -39, K_cool: -4 },
    ],
  },
  {
    id: 'accounts.annualCost',
    title: 'Cost per year with the purchase spread over its life',
    result: { symbol: 'A', ...perYear('cost per year') },
    expression: 'R + C * r / (1 - (1 + r)^(-n))',
    symbols: { R: perYear('running cost'), C: money('purchase'), r: rate, n: years },
    source: economics,
    validity: 'r above 0; at r = 0 the purchase is divided by n',
    file: accountFile,
    compute: (v) => annualisedCost(v.R!, v.C!, v.r!, v.n!),
    examples: [
      { R: 121, C: 600, r: 0.05, n: 10 },
      { R: 262, C: 45, r: 0.028, n: 7.5 },
    ],
  },
];

/** The steps behind one account; results are named after its scenario: 'accounts.thisLoop.annualCost'. */
export function accountWorking(result: Account, prices: AccountPrices): readonly WorkingStep[] {
  const prefix = `accounts.${result.scenario}`;
  const { energies } = result;
  const step = (
    name: string,
    formula: string,
    inputs: FormulaValues,
    from: Readonly<Record<string, string>>,
    value: number,
  ): WorkingStep => ({ result: `${prefix}.${name}`, formula, inputs, from, value });
  const steps = [
    step(
      'electricityCost',
      'accounts.energyCost',
      { E: energies.electricity, p: prices.electricity },
      { p: 'prices.electricity' },
      result.electricityCost,
    ),
    step(
      'roomHeatCredit',
      'accounts.energyCost',
      { E: energies.roomHeatHeated, p: prices.houseHeat },
      { p: 'room.houseHeatPrice' },
      result.roomHeatCredit,
    ),
  ];
  if (prices.roomCooledInSummer) {
    steps.push(
      step(
        'coolingCost',
        'accounts.roomCoolingCost',
        { Q: energies.roomHeatSummer, COP_cool: prices.roomCoolingCop, p: prices.electricity },
        { p: 'prices.electricity' },
        result.coolingCost,
      ),
    );
  }
  const costsFrom: Record<string, string> = {
    K_el: `${prefix}.electricityCost`,
    K_room: `${prefix}.roomHeatCredit`,
  };
  if (prices.roomCooledInSummer) costsFrom.K_cool = `${prefix}.coolingCost`;
  steps.push(
    step(
      'runningCost',
      'accounts.runningCost',
      { K_el: result.electricityCost, K_room: result.roomHeatCredit, K_cool: result.coolingCost },
      costsFrom,
      result.runningCost,
    ),
  );
  if (prices.discountRate > 0) {
    steps.push(
      step(
        'annualCost',
        'accounts.annualCost',
        { R: result.runningCost, C: result.purchase, r: prices.discountRate, n: prices.years },
        { R: `${prefix}.runningCost`, C: purchasePath[result.scenario], r: 'prices.discountRate', n: 'prices.life' },
        result.annualCost,
      ),
    );
  }
  return steps;
}

const purchasePath = {
  plainHeater: 'prices.heater',
  thisLoop: 'prices.loopParts',
  certifiedHeatPump: 'prices.certifiedHeatPump',
} as const;
