// The state contract for programs: one JSON line in, one JSON line out, whatever the line holds.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsedRequest } from '../../src/cli/request-line.ts';
import { answerStateLine } from '../../src/cli/state.ts';
import { readJson } from '../../src/design/index.ts';
import { refrigerant, refrigerantNames, stateAt, supportedPairs } from '../../src/matter/refrigerants/index.ts';
import type { InputError } from '../../src/numerics/index.ts';

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

  test('inside the dome of a blend one key more, at the end', () => {
    const keys = Object.keys(ask({ pressure: 5e5, quality: 0.5 }, 'R407C'));
    expect(keys.length).toBe(15);
    expect(keys.slice(-2)).toEqual(['phase', 'glideApproximation']);
    expect(ask({ pressure: 5e5, quality: 1 }, 'R407C')).not.toHaveProperty('glideApproximation');
  });

  test('every pair leads to the same answer, of every refrigerant', () => {
    for (const name of refrigerantNames) {
      const { critical } = refrigerant(name);
      const first = ask({ temperature: 0.85 * critical.temperature, pressure: 0.1 * critical.pressure }, name);
      for (const pair of supportedPairs.map((words) => words.split(' and '))) {
        if (pair.includes('quality')) continue;
        const again = ask(Object.fromEntries(pair.map((key) => [key, first[key]])), name);
        for (const [key, value] of Object.entries(first)) {
          if (typeof value !== 'number') expect(again[key], `${name} ${pair} ${key}`).toBe(value);
          else
            expect(Math.abs(again[key] - value), `${name} ${pair} ${key}`).toBeLessThan(1e-8 * Math.abs(value) + 1e-12);
        }
      }
    }
  });

  test('viscosity and conductivity of one phase and of both sides of the dome', () => {
    for (const name of refrigerantNames) {
      const { critical } = refrigerant(name);
      const pressure = 0.3 * critical.pressure;
      for (const quality of [0, 1]) {
        const { viscosity, conductivity } = ask({ pressure, quality }, name);
        expect(viscosity).toBeGreaterThan(1e-6);
        expect(conductivity).toBeGreaterThan(1e-3);
      }
      expect(ask({ pressure, quality: 0.5 }, name)).toMatchObject({ viscosity: null, conductivity: null });
    }
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
    ['{"refrigerant":"R134a","given":{"temperature":-3,"pressure":1e5}}', 'badInput'],
    ['{"refrigerant":"R134a","given":{"temperature":300,"quality":1.5}}', 'badInput'],
    ['{"refrigerant":"R134a","given":{"temperature":"300","quality":1}}', 'badInput'],
    ['{"refrigerant":"R134a","given":{"temperature":300,"temperature":310,"quality":1}}', 'duplicateKey'],
    ['{"refrigerant":"R134a","refrigerant":"R22","given":{"temperature":300,"quality":1}}', 'duplicateKey'],
    ['{"refrigerant":"R:134a:","refrigerant":"R22","given":{"temperature":300,"quality":1}}', 'duplicateKey'],
    ['{"refrigerant":"R134a","given":{"temperature":300,"enthalpy":4e5}}', 'unsupportedPair'],
    ['{"refrigerant":"R134a","given":{"temperature":300,"colour":4e5}}', 'unsupportedPair'],
    ['{"refrigerant":"R134a","given":{"temperature":300,"entropy":1e300}}', 'outOfModel'],
    ['{"refrigerant":"R134a","given":{"enthalpy":-1e300,"entropy":1700}}', 'outOfModel'],
    ['{"refrigerant":"R744","given":{"temperature":217,"pressure":5e7}}', 'frozen'],
    ['{"refrigerant":"water","given":{"temperature":274.15,"entropy":1015.45}}', 'severalStates'],
    ['{"refrigerant":"R407C","given":{"temperature":300,"quality":0.5}}', 'unsupportedPair'],
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

// The short way of reading a line must say what the long way says, in every case.
describe('plain lines are read in a shorter way', () => {
  const slow = (text: string) => {
    const read = readJson(text);
    return read.ok ? read.value : read.problem.code;
  };
  const fast = (text: string) => {
    try {
      return parsedRequest(text);
    } catch (error) {
      return (error as InputError).code;
    }
  };

  test('any text and any JSON (seed 11)', () => {
    const key = fc.constantFrom('a', 'b', ':', 'a:b', '__proto__', '"', '\\');
    const value = fc.oneof(
      fc.jsonValue(),
      fc.dictionary(key, fc.oneof(fc.constantFrom(':', '1:2', ''), fc.jsonValue())),
    );
    const text = fc.oneof(
      fc.string(),
      value.map((each) => JSON.stringify(each)),
      // Twice the same members: keys given twice.
      fc.array(fc.tuple(key, fc.jsonValue()), { maxLength: 4 }).map((members) => {
        const written = members.map(([name, each]) => `${JSON.stringify(name)}:${JSON.stringify(each)}`);
        return `{${written.join(',')}}`;
      }),
    );
    fc.assert(
      fc.property(text, (each) => {
        const [long, short] = [slow(each), fast(each)];
        if (long === 'truncated') expect(short).toBe('notJson');
        else expect(short).toEqual(long);
      }),
      { seed: 11, numRuns: 3000 },
    );
  });

  test('keys given twice, also where a colon in a text would make up for it', () => {
    for (const text of [
      '{"a":1,"a":2}',
      '{"a":":","a":2}',
      '{"a":{"b":1,"b":2}}',
      '[{"a":1,"a":1}]',
      '{"__proto__":1,"__proto__":2}',
    ]) {
      expect(fast(text)).toBe('duplicateKey');
    }
    expect(fast('{"a":"1:2","b":2}')).toEqual({ a: '1:2', b: 2 });
  });
});
