// Formula records of the year, and the steps behind its season figure.

import type { Formula, WorkingStep } from '../quantities/index.ts';
import { seasonCop, type Year } from './year.ts';

const joule = (meaning: string) => ({ meaning, unit: 'J' });

export const yearFormulas: readonly Formula[] = [
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
    file: 'src/year/year.ts',
    compute: (v) => seasonCop(v.Q_m!, v.Q_b!, v.E!),
    examples: [
      { Q_m: 1.83e9, Q_b: 0.21e9, E: 0.79e9 },
      { Q_m: 4.4e9, Q_b: 3.1e7, E: 1.9e9 },
    ],
  },
];

/** The step behind the season figure; empty where no electricity was used. */
export function yearWorking(year: Year, prefix = 'year'): readonly WorkingStep[] {
  if (year.seasonCop === null) return [];
  const { heatFromMachine, backupHeat, electricity } = year.energies;
  return [
    {
      result: `${prefix}.seasonCop`,
      formula: 'year.seasonCop',
      inputs: { Q_m: heatFromMachine, Q_b: backupHeat, E: electricity.total },
      from: {},
      value: year.seasonCop,
    },
  ];
}
