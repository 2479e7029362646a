// The state contract for programs: one JSON line in, one JSON line out, whatever the line holds.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerStateLine } from '../../src/cli/state.ts';
import { refrigerant, stateAt } from '../../src/matter/refrigerants/index.ts';

const ask = (given: unknown, name: unknown = 'R134a') =>
  JSON.parse(answerStateLine(JSON.stringify({ refrigerant: name, given })));

describe('a state', () => {
  test('has the keys of the contract, in order', () => {
    expect(Object.keys(ask({ temperature: 300, pressure: 1e5 }))).toEqual([
      'temperature',
      'pressure',
      'density',
      'enthalpy',
      'entropy',
      'internalEnergy',
      'cp',
      'cv',
      'soundSpeed',
      'viscosity',
      'conductivity',
      'surfaceTension',
      'quality',
      'phase',
    ]);
  });

  // R. Tillner-Roth, H. D. Baehr (1994), J. Phys. Chem. Ref. Data 23, 657, Table 9.
  test('R134a at 265 K and 0.2 MPa', () => {
    const state = ask({ temperature: 265, pressure: 2e5 });
    expect(state.density).toBeCloseTo(9.9171, 4);
    expect(state.enthalpy / 1e3).toBeCloseTo(394.26, 2);
    expect(state).toMatchObject({ phase: 'vapour', quality: null, surfaceTension: null });
  });

  test('keeps full precision', () => {
    const state = stateAt(refrigerant('R134a'), { temperature: 300, pressure: 1e5 });
    expect(ask({ temperature: 300, pressure: 1e5 })).toMatchObject(state);
  });

  test('inside the dome: no cp, cv, speed of sound; surface tension given', () => {
    const state = ask({ temperature: 300, quality: 0.4 });
    expect(state).toMatchObject({ phase: 'twoPhase', quality: 0.4, cp: null, cv: null, soundSpeed: null });
    expect(state.surfaceTension).toBeGreaterThan(0);
  });

  test.each([0, 1])('at quality %d: two-phase with the values of that side', (quality) => {
    const state = ask({ temperature: 300, quality });
    expect(state).toMatchObject({ phase: 'twoPhase', quality });
    expect(state.cp).toBeGreaterThan(0);
    expect(state.soundSpeed).toBeGreaterThan(0);
  });
});

describe('an error', () => {
  test.each([
    ['', 'notJson'],
    ['{', 'notJson'],
    ['[]', 'badRequest'],
    ['null', 'badRequest'],
    ['7', 'badRequest'],
    ['{}', 'badRequest'],
    ['{"refrigerant":"R134a"}', 'badRequest'],
    ['{"refrigerant":"R134a","given":[300,1e5]}', 'badRequest'],
    ['{"refrigerant":7,"given":{"temperature":300,"quality":0}}', 'badRequest'],
    ['{"refrigerant":"R134a","given":{"temperature":300,"quality":0},"extra":1}', 'unknownKey'],
    ['{"refrigerant":"R999","given":{"temperature":300,"quality":0}}', 'unknownRefrigerant'],
    ['{"refrigerant":"R134a","given":{"temperature":300}}', 'unsupportedPair'],
    ['{"refrigerant":"R134a","given":{"temperature":null,"pressure":1e5}}', 'badInput'],
    ['{"refrigerant":"R134a","given":{"temperature":1e999,"pressure":1e5}}', 'badInput'],
    ['{"refrigerant":"R134a","given":{"temperature":600,"pressure":1e5}}', 'outOfModel'],
    ['{"refrigerant":"R134a","given":{"temperature":380,"quality":0.5}}', 'noSaturation'],
  ])('%s: %s', (line, code) => {
    const { error } = JSON.parse(answerStateLine(line));
    expect(error.code).toBe(code);
    expect(error.message.length).toBeGreaterThan(10);
  });

  test('saturated temperature and pressure', () => {
    const { pressure } = ask({ temperature: 300, quality: 0 });
    expect(ask({ temperature: 300, pressure }).error.code).toBe('saturatedPair');
  });

  test('any line answers one line of JSON (seed 7)', () => {
    const line = fc.oneof(
      fc.string(),
      fc.json(),
      fc.json().map((given) => `{"refrigerant":"R290","given":${given}}`),
    );
    fc.assert(
      fc.property(line, (text) => {
        const answer = answerStateLine(text);
        expect(answer).not.toContain('\n');
        JSON.parse(answer);
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});
