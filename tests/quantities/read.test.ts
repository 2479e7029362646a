// Reading what people write: every accepted form, and every refusal with its code. Law tests on our own reader; the factors
// themselves are held against the outside in units.test.ts.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type QuantityContext, type QuantityName, quantityRecords, readQuantity } from '../../src/quantities/index.ts';

type Case = readonly [text: string, quantity: QuantityName, low: number, likely: number, high: number];

const one = (text: string, quantity: QuantityName, value: number): Case => [text, quantity, value, value, value];

const accepted: readonly Case[] = [
  one('26.5C', 'temperature', 299.65),
  one('26.5 °C', 'temperature', 299.65),
  one('26,5 °C', 'temperature', 299.65),
  one('79 F', 'temperature', (79 + 459.67) / 1.8),
  one('79 ºF', 'temperature', (79 + 459.67) / 1.8),
  one('300 K', 'temperature', 300),
  one('−5 °C', 'temperature', 268.15),
  ['-5 to -2 °C', 'temperature', 268.15, 269.65, 271.15],
  ['26 °C ± 1 K', 'temperature', 298.15, 299.15, 300.15],
  ['26 °C ± 1 °C', 'temperature', 298.15, 299.15, 300.15],
  ['26 ± 1 °C', 'temperature', 298.15, 299.15, 300.15],
  ['77 °F ± 1.8', 'temperature', 297.15, 298.15, 299.15],
  ['70 °F to 26 °C', 'temperature', (70 + 459.67) / 1.8, ((70 + 459.67) / 1.8 + 299.15) / 2, 299.15],
  ['7 to 9 K', 'temperatureDifference', 7, 8, 9],
  ['7-9 K', 'temperatureDifference', 7, 8, 9],
  ['7–9 K', 'temperatureDifference', 7, 8, 9],
  ['7 K … 9 K', 'temperatureDifference', 7, 8, 9],
  one('5/8in', 'length', 0.015875),
  one('1 1/2 in', 'length', 0.0381),
  one('1-1/2 in', 'length', 0.0381),
  one('1½ in', 'length', 0.0381),
  one('¾"', 'length', 0.01905),
  one('16mm', 'length', 0.016),
  one('6 ft 2 in', 'length', 1.8796),
  one(`6' 2"`, 'length', 1.8796),
  one('6′ 2 1/2″', 'length', 1.8923),
  ['1/2 to 5/8 in', 'length', 0.0127, 0.0142875, 0.015875],
  ['90 W ± 10 %', 'electricPower', 81, 90, 99],
  ['90 W +- 9 W', 'electricPower', 81, 90, 99],
  ['90 W +/- 9', 'electricPower', 81, 90, 99],
  ['90±9 W', 'electricPower', 81, 90, 99],
  ['about 350 W (310 to 420)', 'power', 310, 350, 420],
  ['350 W (310 to 420 W)', 'power', 310, 350, 420],
  ['0.35 to 0.5', 'fraction', 0.35, 0.425, 0.5],
  ['0.35…0.5', 'fraction', 0.35, 0.425, 0.5],
  ['35 % to 50 %', 'fraction', 0.35, 0.425, 0.5],
  one('50 %', 'fraction', 0.5),
  one('12 cc', 'displacement', 12e-6),
  one('50Hz', 'mainsFrequency', 50),
  one('60 cycles', 'mainsFrequency', 60),
  one('230 VAC', 'voltage', 230),
  ['220-240 V~', 'voltage', 220, 230, 240],
  one('850 mA', 'current', 0.85),
  one('1.2 amps', 'current', 1.2),
  ['0.6 to 0.9', 'powerFactor', 0.6, 0.75, 0.9],
  one('85 %', 'powerFactor', 0.85),
  ['1995 to 2005', 'calendarYear', 1995, 2000, 2005],
  ['1995-2005', 'calendarYear', 1995, 2000, 2005],
  one('12 cm³', 'displacement', 12e-6),
  one('35 ppt', 'salinity', 0.035),
  one('7', 'count', 7),
  one('250', 'money', 250),
  one('EUR 250', 'money', 250),
  one('€250', 'money', 250),
  one('0.36 EUR/kWh', 'energyPrice', 1e-7),
  one('36 ct/kWh', 'energyPrice', 1e-7),
  one('€0.36/kWh', 'energyPrice', 1e-7),
  one('0.36 per kWh', 'energyPrice', 1e-7),
  ['0.36 to 0.72 EUR/kWh', 'energyPrice', 1e-7, 1.5e-7, 2e-7],
  ['R-6 to R-8', 'thermalResistance', 1.0566611020938352, 1.232771285776141, 1.4088814694584468],
  one('RSI 1.1', 'thermalResistance', 1.1),
  // 1 h ft² °F/BTU = 0.1761102 m² K/W, so R-6 is 1.0566611: NIST Special Publication 811 (2008), appendix B.8.
  one('R-6', 'thermalResistance', 1.0566611020938352),
  one('R 6', 'thermalResistance', 1.0566611020938352),
  one('r6', 'thermalResistance', 1.0566611020938352),
  one('6 h ft2 F/Btu', 'thermalResistance', 1.0566611020938352),
  one('6 ft²·h·°F/Btu', 'thermalResistance', 1.0566611020938352),
  one('1.2 m2K/W', 'thermalResistance', 1.2),
  one('1.2 K m²/W', 'thermalResistance', 1.2),
  one('RSI-1.06', 'thermalResistance', 1.06),
  one('1.06 RSI', 'thermalResistance', 1.06),
  one('0.035 W/mK', 'conductivity', 0.035),
  one('0.035 W/(m·K)', 'conductivity', 0.035),
  one('0 kwh', 'energy', 0),
  one('1e3 W', 'power', 1000),
  one('9e-6 m3', 'displacement', 9e-6),
  one('6E-1', 'fraction', 0.6),
  one('3.6e−1 EUR/kWh', 'energyPrice', 1e-7),
  ['8e-6-1e-5 m3', 'displacement', 8e-6, 9e-6, 1e-5],
  ['5e-2 to 7e-2 kg', 'mass', 0.05, 0.06, 0.07],
  one('10\u202f000 W', 'power', 10000),
];

test.each(accepted)('"%s" is read as a %s', (text, quantity, low, likely, high) => {
  const read = readQuantity(text, quantity, { currency: 'EUR' });
  expect(read).toMatchObject({ ok: true, estimate: { origin: 'typed' } });
  if (!read.ok) return;
  for (const [end, value] of Object.entries({ low, likely, high })) {
    const received = read.estimate[end as 'low' | 'likely' | 'high'];
    expect(Math.abs(received - value), end).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(value)) * 300);
  }
});

test('a gauge pressure needs the atmosphere of the place', () => {
  const read = readQuantity('13 psig', 'pressure', { atmosphericPressure: 98000 });
  expect(read).toMatchObject({ ok: true, unit: 'psig' });
  if (read.ok) expect(read.estimate.likely).toBeCloseTo(98000 + 13 * 6894.757293168, 6);
  const spread = readQuantity('13 psig ± 1 psi', 'pressure', { atmosphericPressure: 98000 });
  expect(spread.ok && spread.estimate.high - spread.estimate.low).toBeCloseTo(2 * 6894.757293168, 6);
  expect(readQuantity('1.2 bar', 'gaugePressure')).toMatchObject({ ok: true, estimate: { likely: 120000 } });
});

type Refusal = readonly [text: string, quantity: QuantityName, code: string, context: QuantityContext];

const nowhere: QuantityContext = {};

const refused: readonly Refusal[] = [
  ['', 'length', 'empty', nowhere],
  ['   ', 'length', 'empty', nowhere],
  ['1'.repeat(300), 'length', 'tooLong', nowhere],
  ['wide', 'length', 'notANumber', nowhere],
  ['NaN mm', 'length', 'notANumber', nowhere],
  ['Infinity mm', 'length', 'notANumber', nowhere],
  ['mm', 'length', 'notANumber', nowhere],
  ['to 3 mm', 'length', 'notANumber', nowhere],
  ['1,234 W', 'power', 'ambiguousNumber', nowhere],
  ['1,234.5 W', 'power', 'ambiguousNumber', nowhere],
  ['1.234,5 W', 'power', 'ambiguousNumber', nowhere],
  ['1 234 W', 'power', 'ambiguousNumber', nowhere],
  ['1e999 W', 'power', 'notFinite', nowhere],
  ['1/0 in', 'length', 'notFinite', nowhere],
  ['26', 'temperature', 'unitMissing', nowhere],
  ['0.3', 'energyPrice', 'unitMissing', nowhere],
  ['0.3 EUR', 'energyPrice', 'unitMissing', nowhere],
  ['3 furlong', 'length', 'unknownUnit', nowhere],
  ['3 W', 'length', 'wrongUnit', nowhere],
  ['12 mm', 'temperature', 'wrongUnit', nowhere],
  ['13 psi', 'pressure', 'gaugeOrAbsolute', nowhere],
  ['13 psig', 'pressure', 'atmosphereMissing', nowhere],
  ['$0.18/kWh', 'energyPrice', 'otherCurrency', { currency: 'EUR' }],
  ['250 usd', 'money', 'otherCurrency', { currency: 'EUR' }],
  ['20 p/kWh', 'energyPrice', 'otherCurrency', { currency: 'USD' }],
  ['5 to 3 m', 'length', 'lowAboveHigh', nowhere],
  ['500 W (310 to 420)', 'power', 'likelyOutsideRange', nowhere],
  ['about 350 W', 'power', 'spreadUnclear', nowhere],
  ['26 °C ± 10 %', 'temperature', 'spreadUnclear', nowhere],
  ['50 % ± 10 %', 'fraction', 'spreadUnclear', nowhere],
  ['90 W ± -5 W', 'power', 'spreadUnclear', nowhere],
  ['90 W ± some', 'power', 'spreadUnclear', nowhere],
  ['-300 °C', 'temperature', 'belowAbsoluteZero', nowhere],
  ['0 K', 'temperature', 'belowAbsoluteZero', nowhere],
  ['-3 m', 'length', 'negative', nowhere],
  ['-1 m2K/W', 'thermalResistance', 'negative', nowhere],
  ['R--6', 'thermalResistance', 'notANumber', nowhere],
  ['6', 'thermalResistance', 'unitMissing', nowhere],
  ['3 m ± 5 m', 'length', 'negative', nowhere],
  ['0 bar', 'pressure', 'notPositive', nowhere],
  ['3 mpa', 'pressure', 'unknownUnit', nowhere],
];

test.each(refused)('"%s" is refused as a %s: %s', (text, quantity, code, context) => {
  const read = readQuantity(text, quantity, context);
  expect(read).toMatchObject({ ok: false, problem: { code } });
  if (!read.ok) expect(read.problem.expected.length).toBeGreaterThan(5);
});

test('a missing unit names units and an example; a misspelt one names the nearest', () => {
  const missing = readQuantity('12', 'length');
  expect(!missing.ok && missing.problem.expected).toMatch(/mm.*in.*12 mm or 5\/8 in/);
  expect(readQuantity('5 celcius', 'temperature')).toMatchObject({ problem: { nearest: 'celsius' } });
  expect(readQuantity('5 galons', 'volume')).toMatchObject({ problem: { nearest: 'gallons' } });
  const far = readQuantity('5 xyzzyqq', 'volume');
  expect(!far.ok && far.problem.nearest).toBe(undefined);
});

test('a quantity that has to be above 0 is named with its article', () => {
  expect(readQuantity('0 bar', 'pressure')).toMatchObject({ problem: { expected: 'an absolute pressure above 0' } });
});

describe('any text', () => {
  const names = Object.keys(quantityRecords) as QuantityName[];
  const characters = [...'0123456789.,+-± /eE%°CFKWinmtRtoab()$€…½"\' '];

  test('gives an ordered finite estimate or a problem, never an exception (seed 7)', () => {
    const texts = fc.string({ unit: fc.constantFrom(...characters), maxLength: 24 });
    fc.assert(
      fc.property(texts, fc.constantFrom(...names), (text, name) => {
        const read = readQuantity(text, name);
        if (!read.ok) return read.problem.expected !== '';
        const { low, likely, high } = read.estimate;
        return [low, likely, high].every(Number.isFinite) && low <= likely && likely <= high;
      }),
      { seed: 7, numRuns: 4000 },
    );
  });
});
