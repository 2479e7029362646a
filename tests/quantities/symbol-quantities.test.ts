// What each symbol of a formula is a number of: demanded wherever the unit alone does not tell, so that a number put in
// can be said in the units of a view. A level must not be taken for a difference, nor heat for electricity.

import { describe, expect, test } from 'vitest';
import { allFormulas } from '../../src/assess/index.ts';
import { type FormulaSymbol, quantityOf } from '../../src/quantities/index.ts';
import { quantityRecords } from '../../src/quantities/records.ts';

const symbols = allFormulas.flatMap(({ id, symbols, result }) => [
  ...Object.entries(symbols).map(([symbol, about]) => [`${id}: ${symbol}`, symbol, about] as const),
  [`${id}: result ${result.symbol}`, result.symbol, result as FormulaSymbol] as const,
]);

/** A mass of something per mass of something else is a pure number to its quantity. */
const counted = (unit: string) => (unit === 'kg/kg' ? '1' : unit);

const ambiguous = new Set(
  Object.values(quantityRecords)
    .map(({ unit }) => unit)
    .filter((unit, _index, all) => unit !== '1' && all.filter((other) => other === unit).length > 1),
);

test('some units serve several quantities', () => {
  for (const unit of ['K', 'Pa', 'W', 'm', 'm³', 'kg/s', 'kg/m³', 'm³/s', 'm² K/W']) expect(ambiguous).toContain(unit);
});

describe('every symbol', () => {
  test('names its quantity where the unit serves several', () => {
    const silent = symbols.filter(([, , { unit, quantity }]) => {
      return (ambiguous.has(unit) || unit === 'kg/kg') && quantity === undefined;
    });
    expect(silent.map(([place]) => place)).toEqual([]);
  });

  test('has the SI unit of its quantity', () => {
    for (const [place, , about] of symbols) {
      const quantity = quantityOf(about);
      if (quantity !== undefined) expect(counted(about.unit), place).toBe(quantityRecords[quantity].unit);
    }
  });

  test('has one unit of its own', () => {
    for (const [place, , { unit }] of symbols) expect(unit, place).not.toMatch(/\bor\b|\bown\b/);
  });
});

describe('letters of the field tell', () => {
  const withUnit = (unit: string) => symbols.filter(([, , about]) => about.unit === unit);

  test.each(withUnit('K'))('%s', (_place, symbol, { quantity, meaning }) => {
    const isDifference = /^dT|^difference/.test(symbol) || /^how far|\bsuperheat$|\bsubcooling$/.test(meaning);
    expect(quantity).toBe(isDifference ? 'temperatureDifference' : 'temperature');
  });

  test.each(withUnit('W'))('%s', (_place, symbol, { quantity, meaning }) => {
    const isElectric = /^(P|W)(_|$)/.test(symbol) && !/\bheat\b/.test(meaning);
    expect(quantity).toBe(isElectric ? 'electricPower' : 'power');
  });
});
