// Formula records of the comparison of two accounts.

import type { Formula } from '../quantities/index.ts';
import { breakEvenCop, breakEvenHouseHeat, costAtCopOne, lifeCostDifference } from './compare.ts';

const perYear = (meaning: string) => ({ meaning, unit: 'money/year' });
const price = (meaning: string) => ({ meaning, unit: 'money/J' });
const joule = (meaning: string) => ({ meaning, unit: 'J' });
const number = (meaning: string) => ({ meaning, unit: '1' });
const file = 'src/accounts/compare.ts';

export const compareFormulas: readonly Formula[] = [
  {
    id: 'accounts.lifeCostDifference',
    title: 'What this loop costs a year more than another way',
    result: { symbol: 'dA', ...perYear('difference; below 0 the loop costs less') },
    expression: 'A_loop - A_other',
    symbols: {
      A_loop: perYear('cost of this loop, its purchase spread over its life'),
      A_other: perYear('cost of the other way'),
    },
    source: 'definition',
    validity: 'the same tank, room and prices in both',
    file,
    compute: (v) => lifeCostDifference(v.A_loop!, v.A_other!),
    examples: [
      { A_loop: 197.7, A_other: 512.4 },
      { A_loop: 288.1, A_other: 143.9 },
    ],
  },
  {
    id: 'accounts.breakEvenHouseHeat',
    title: 'Price of house heat at which this loop and another way cost the same',
    result: { symbol: 'p_even', ...price('price of house heat') },
    expression: 'p + dA / (Q_loop - Q_other)',
    symbols: {
      p: price('price of house heat that the difference was found at'),
      dA: perYear('what the loop costs more'),
      Q_loop: joule('net sensible heat into the room in its heated months, with this loop'),
      Q_other: joule('the same with the other way'),
    },
    source: 'the accounts are linear in this price',
    validity: 'the two give the room different heat; below 0 no price makes them equal',
    file,
    compute: (v) => breakEvenHouseHeat(v.p!, v.dA!, v.Q_loop!, v.Q_other!),
    examples: [
      { p: 3.3e-8, dA: -91, Q_loop: -1.8e9, Q_other: 5.3e9 },
      { p: 4.1e-8, dA: 64, Q_loop: 3.1e9, Q_other: 2.2e9 },
    ],
  },
  {
    id: 'accounts.costAtCopOne',
    title: 'What this loop’s electricity would cost at a season coefficient of performance of 1',
    result: { symbol: 'G', ...perYear('cost of electricity at a coefficient of 1, less what the room gains by it') },
    expression: 'COP * (p * E - s * (p_h * E_h - (cooled > 0 ? E_s * p / COP_cool : 0)))',
    symbols: {
      COP: number('season coefficient of performance of this loop'),
      p: price('price of electricity'),
      E: joule('electricity of this loop in a year'),
      s: number('1 where the source is the tank’s own room, else 0'),
      p_h: price('price of house heat'),
      E_h: joule('electricity of this loop while the room is heated'),
      cooled: number('1 where the room is cooled in summer, else 0'),
      E_s: joule('electricity of this loop in summer'),
      COP_cool: number('coefficient of performance of the room cooling'),
    },
    source: 'energy balance: every joule of electricity more is one less taken from the source',
    validity: 'heat to the water and all losses as they are',
    file,
    compute: (v) =>
      costAtCopOne(
        v.COP!,
        { total: v.E!, whileHeated: v.E_h!, inSummer: v.E_s! },
        { electricity: v.p!, houseHeat: v.p_h!, roomCooledInSummer: v.cooled! > 0, roomCoolingCop: v.COP_cool! },
        v.s! > 0,
      ),
    examples: [
      { COP: 3.4, p: 8.6e-8, E: 1.7e9, s: 1, p_h: 3.3e-8, E_h: 1.1e9, cooled: 1, E_s: 2.2e8, COP_cool: 2.9 },
      { COP: 2.7, p: 7.2e-8, E: 2.6e9, s: 1, p_h: 4.1e-8, E_h: 1.4e9, cooled: 0, E_s: 3.1e8, COP_cool: 3.2 },
      { COP: 4.3, p: 7.9e-8, E: 1.3e9, s: 0, p_h: 3.6e-8, E_h: 0.8e9, cooled: 1, E_s: 1.6e8, COP_cool: 3.1 },
    ],
  },
  {
    id: 'accounts.breakEvenCop',
    title: 'Season coefficient of performance at which this loop and another way cost the same',
    result: { symbol: 'COP_even', ...number('season coefficient of performance') },
    expression: 'G / (G / COP - dA)',
    symbols: {
      G: perYear('cost of electricity at a coefficient of 1, less what the room gains by it'),
      COP: number('season coefficient of performance of this loop'),
      dA: perYear('what the loop costs more'),
    },
    source: 'the account is linear in electricity per heat',
    validity: 'heat to the water, losses and purchase as they are; not above 0 where no coefficient makes them equal',
    file,
    compute: (v) => breakEvenCop(v.G!, v.COP!, v.dA!),
    examples: [
      { G: 912, COP: 3.1, dA: 104 },
      { G: 655, COP: 4.4, dA: -187 },
    ],
  },
];
