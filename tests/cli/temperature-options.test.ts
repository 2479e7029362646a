// Temperatures behind --at and its companions: separators, units, either minus sign, bare numbers, and what is refused.

import { expect, test } from 'vitest';
import { temperatureOption, temperaturePair } from '../../src/cli/temperature-options.ts';
import { InputError } from '../../src/numerics/index.ts';

const zero = 273.15;
const fahrenheit = (value: number) => (value - 32) / 1.8 + zero;

test.each([
  ['-23.3,54.4', -23.3 + zero, 54.4 + zero, true],
  ['-23.3, 54.4', -23.3 + zero, 54.4 + zero, true],
  ['−10 °C; 45 °C', -10 + zero, 45 + zero, false],
  ['-23,3; 54,4', -23.3 + zero, 54.4 + zero, true],
  ['-10 F, 110 F', fahrenheit(-10), fahrenheit(110), false],
  ['-10, 110 °F', fahrenheit(-10), fahrenheit(110), false],
  ['-10 °F, 110', fahrenheit(-10), fahrenheit(110), false],
  ['-10°F,45°C', fahrenheit(-10), 45 + zero, false],
  ['-10/45', -10 + zero, 45 + zero, true],
  ['250 K; 320 K', 250, 320, false],
  ['0,35', zero, 35 + zero, true],
])('%s', (text, evaporating, condensing, isBare) => {
  const pair = temperaturePair('--at', text);
  expect(pair.evaporating).toBeCloseTo(evaporating, 9);
  expect(pair.condensing).toBeCloseTo(condensing, 9);
  expect(pair.isBare).toBe(isBare);
});

test.each([
  ['', 'notAPair'],
  ['-23.3', 'notAPair'],
  ['-23.3 54.4', 'notAPair'],
  ['-23,3,54,4', 'notAPair'],
  ['-10; 45; 3', 'notAPair'],
  ['; 45', 'notAPair'],
  ['45, -10', 'condensingBelowEvaporating'],
  ['10, 10', 'condensingBelowEvaporating'],
  ['cold, warm', 'notANumber'],
  ['-10 m, 45 °C', 'wrongUnit'],
  ['-300, 45', 'belowAbsoluteZero'],
  ['-10 to -5 °C; 45 °C', 'rangeNotAccepted'],
])('"%s" is refused as %s', (text, code) => {
  expect(() => temperaturePair('--at', text)).toThrow(InputError);
  expect(codeOf(() => temperaturePair('--at', text))).toBe(code);
});

test('one temperature or difference, bare or not', () => {
  expect(temperatureOption('--return-gas', '32.2')).toEqual({ value: 32.2 + zero, isBare: true });
  expect(temperatureOption('--return-gas', '90 °F').value).toBeCloseTo(fahrenheit(90), 9);
  expect(temperatureOption('--superheat', '11.1', 'temperatureDifference')).toEqual({ value: 11.1, isBare: true });
  expect(temperatureOption('--superheat', '20 °F', 'temperatureDifference').value).toBeCloseTo(20 / 1.8, 9);
  expect(codeOf(() => temperatureOption('--superheat', 'some', 'temperatureDifference'))).toBe('notANumber');
});

function codeOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.code;
    throw error;
  }
  throw new Error('nothing was refused');
}
