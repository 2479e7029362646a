// Ten coefficients told in a unit that gives an unusual efficiency but no impossible one: said, with the unit that would be usual.

import { expect, test } from 'vitest';
import { assessMachinePoints, sayFinding } from '../../../src/assess/index.ts';

/** An invented machine: flow over the lowest evaporating temperature, power near 80 W. */
function machineWith(unitOfFlow: 'kg/h' | 'lb/h', power = '95 1.2 0.3 0 0.006 0 0 0 0 0'): string {
  const held = {
    temperatureUnit: 'celsius',
    basis: {
      suction: { kind: 'returnGas', returnGas: '32.2 °C' },
      liquid: { kind: 'temperature', temperature: '32.2 °C' },
    },
    evaporatingRange: '-30 to -10 °C',
    condensingRange: '40 to 55 °C',
    frequency: '50 Hz',
  };
  const coefficients = [
    { of: 'massFlow', values: '9 0.35 -0.03 0.005 -0.0005 -0.0001 0.00003 0 0 0', unit: unitOfFlow, ...held },
    { of: 'power', values: power, unit: 'W', ...held },
  ];
  return JSON.stringify({ formatVersion: 2, machine: { compressor: { madeFor: 'R134a', coefficients } } });
}

function findingsOf(text: string) {
  const outcome = assessMachinePoints(text, { at: [{ evaporating: 253.15, condensing: 318.15 }], basis: {} });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const [point] = outcome.points;
  if (point === undefined || !('findings' in point)) throw new Error('no findings');
  return point.findings;
}

test('pounds in place of kilograms halve the efficiency: no such machine is known, and the unit that would be usual is named', () => {
  const outcome = assessMachinePoints(machineWith('lb/h'), {
    at: [{ evaporating: 253.15, condensing: 318.15 }],
    basis: {},
  });
  expect(JSON.stringify(outcome)).toMatch(
    /would make sense with machine\.compressor\.coefficients\.0 in kg\/h over °C/,
  );
  expect(outcome.ok).toBe(false);
});

test('a poor efficiency that no single unit explains is told', () => {
  const found = findingsOf(machineWith('kg/h', '209 2.6 0.66 0 0.0132 0 0 0 0 0')).find(
    ({ code }) => code === 'coefficientsUnusual',
  );
  expect(found).toMatchObject({ severity: 'look', subject: 'model' });
  expect(sayFinding(found!, 'metric').text).toMatch(/coefficients\.0 .* is 25.%; .* usual with /);
});

test('nothing is said where the efficiency is usual', () => {
  expect(findingsOf(machineWith('kg/h')).map(({ code }) => code)).not.toContain('coefficientsUnusual');
});
