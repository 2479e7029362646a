// Formula records of the year: energies of the months, their sums, and the COP over the year.

import { type Formula, type FormulaSymbol, sentenceStart } from '../quantities/index.ts';
import { monthNames } from '../surroundings/index.ts';
import { energyOver, roomHeatWithDehumidifier, seasonCop, shareOfEnergy, sumOfMonths } from './year.ts';

const joule = (meaning: string) => ({ meaning, unit: 'J' });
const file = 'src/year/year.ts';

/** Symbols of the months in a sum, by month. */
export const monthSymbols = Object.fromEntries(monthNames.map((month) => [month, `E_${month}`]));
const symbols = Object.values(monthSymbols);

export const yearFormulas: readonly Formula[] = [
  energyOf('year.energy', 'Energy of a month', {
    meaning: 'mean heat of the month; negative where heat is taken away',
    unit: 'W',
    quantity: 'power',
  }),
  energyOf('year.electricity', 'Electricity of a month', {
    meaning: 'mean electricity of the month',
    unit: 'W',
    quantity: 'electricPower',
  }),
  {
    id: 'year.share',
    title: 'Part of a month’s energy that falls in the heated, or the summer, part of the year',
    result: { symbol: 'E_part', ...joule('energy of that part') },
    expression: 's * E',
    symbols: {
      s: { meaning: 'share of the month', unit: '1' },
      E: joule('energy of the month'),
    },
    source: 'a definition of this project: spread evenly over the month',
    validity: 'share from 0 to 1',
    file,
    compute: (v) => shareOfEnergy(v.s!, v.E!),
    examples: [
      { s: 0.75, E: 3.2e8 },
      { s: 0.4, E: -1.1e8 },
    ],
  },
  {
    id: 'year.sum',
    title: 'Energy of the year',
    result: { symbol: 'E', ...joule('energy of the year') },
    expression: symbols.join(' + '),
    symbols: Object.fromEntries(
      monthNames.map((month) => [monthSymbols[month]!, joule(`energy of ${sentenceStart(month)}`)]),
    ),
    source: 'energies of the months added up',
    validity: 'a month that is not counted is 0',
    file,
    compute: (v) => sumOfMonths(symbols.map((symbol) => v[symbol]!)),
    examples: [2.3e7, -1.4e7].map((step) =>
      Object.fromEntries(symbols.map((symbol, index) => [symbol, 2.9e8 + step * (index + 1)])),
    ),
  },
  {
    id: 'year.roomHeatWithDehumidifier',
    title: 'Heat into the room of a month, dehumidifier included',
    result: { symbol: 'Q_room', ...joule('sensible heat into the room') },
    expression: 'Q + Q_d',
    symbols: {
      Q: joule('sensible heat of the tank, and of what warms it, into the room'),
      Q_d: joule('heat of the dehumidifier: what it condenses, and its electricity'),
    },
    source: 'energy balance',
    validity: 'steady state of a month',
    file,
    compute: (v) => roomHeatWithDehumidifier(v.Q!, v.Q_d!),
    examples: [
      { Q: 3.1e8, Q_d: 2.3e8 },
      { Q: -1.4e8, Q_d: 0.9e8 },
    ],
  },
  {
    id: 'year.seasonCop',
    title: 'Season coefficient of performance',
    result: { symbol: 'COP_season', meaning: 'all heat to the water over all electricity', unit: '1' },
    expression: '(Q_m + Q_b) / E',
    symbols: {
      Q_m: joule('heat the machine brought to the water'),
      Q_b: joule('resistance heat'),
      E: joule('all electricity: machine, fan, pump, controls, backup'),
    },
    source: 'definition of this project; energies are sums over monthly steady states',
    validity: 'electricity above 0',
    file,
    compute: (v) => seasonCop(v.Q_m!, v.Q_b!, v.E!),
    examples: [
      { Q_m: 1.83e9, Q_b: 0.21e9, E: 0.79e9 },
      { Q_m: 4.4e9, Q_b: 3.1e7, E: 1.9e9 },
    ],
  },
];

/** Mean power times the time it lasts. */
function energyOf(id: string, title: string, P: FormulaSymbol): Formula {
  return {
    id,
    title,
    result: { symbol: 'E', ...joule('energy of the month') },
    expression: 'P * t',
    symbols: { P, t: { meaning: 'duration of the month', unit: 's' } },
    source: 'definition; each month is one steady state',
    validity: 'a year of 365 days',
    file,
    compute: (v) => energyOver(v.P!, v.t!),
    examples: [
      { P: 121.4, t: 2678400 },
      { P: 36.2, t: 2419200 },
    ],
  };
}
