// Formula records of sums: heat, vapour and conductance of however many parts a tank has. A sum has a fixed number of places;
// those that a tank does not fill are 0, and what is more than the places is gathered in sums of sums.

import type { Formula, FormulaSymbol, FormulaValues } from '../../quantities/index.ts';
import { sumOfParts } from '../totals.ts';

type Counted = Pick<FormulaSymbol, 'unit' | 'quantity'>;

/** Places of each sum. */
export const placesOfSum = 12;

/** Symbols of a sum's places: Q_1, Q_2, … */
export function placeSymbols(letter: string): readonly string[] {
  return Array.from({ length: placesOfSum }, (_, index) => `${letter}_${index + 1}`);
}

export const sumFormulas: readonly Formula[] = [
  sum('tank.sumOfHeat', 'Heat of several parts together', 'Q', { unit: 'W', quantity: 'power' }, 17.3),
  sum('tank.sumOfVapour', 'Vapour of several parts together', 'm', { unit: 'kg/s', quantity: 'evaporation' }, 1.1e-6),
  sum('tank.sumOfConductance', 'Conductance of several panels together', 'H', { unit: 'W/K' }, 0.31),
  sum('tank.sumOfArea', 'Areas together', 'A', { unit: 'm²', quantity: 'area' }, 0.17),
  sum('tank.sumOfVolume', 'Water of several vessels together', 'V', { unit: 'm³', quantity: 'volume' }, 0.05),
  sum(
    'tank.sumOfResistance',
    'Resistances one behind the other',
    'R',
    { unit: 'm² K/W', quantity: 'thermalResistance' },
    0.13,
  ),
];

function sum(id: string, title: string, letter: string, counted: Counted, step: number): Formula {
  const symbols = placeSymbols(letter);
  const examples = [1, -0.4].map(
    (sign): FormulaValues => Object.fromEntries(symbols.map((symbol, index) => [symbol, sign * step * (index + 1)])),
  );
  return {
    id,
    title,
    result: { symbol: letter, meaning: 'sum', ...counted },
    expression: symbols.join(' + '),
    symbols: Object.fromEntries(symbols.map((symbol, index) => [symbol, { meaning: `part ${index + 1}`, ...counted }])),
    source: 'balance',
    validity: 'parts that are not there count 0',
    file: 'src/tank/totals.ts',
    compute: (values) => sumOfParts(symbols.map((symbol) => values[symbol]!)),
    examples,
  };
}
