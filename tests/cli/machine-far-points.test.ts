// `kettlefin machine` with what an outside table may hold: points down to where hardly anything flows, several questions of which one
// has no answer, values that contradict each other.
// Source of the table: as tests/parts/compressor/identification/set-aside.test.ts.

import { describe, expect, test } from 'vitest';
import type { MachinePoint, UnansweredPoint } from '../../src/assess/index.ts';
import { main } from '../../src/cli/main.ts';
import { alone } from '../assess/studies/machine/machines.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

const table = [
  'te [°C]\ttc [°C]\tm [kg/h]\tP [W]',
  ...[
    '-35 40 1.285 58.5',
    '-30 40 2.059 78.3',
    '-25 40 3.001 97.9',
    '-20 40 4.138 120',
    '-35 45 1.074 53',
    '-30 45 1.847 77.7',
    '-25 45 2.788 99.1',
    '-20 45 3.924 119.7',
    '-35 50 0.842 46',
    '-30 50 1.614 73',
    '-25 50 2.554 98.8',
    '-20 50 3.689 122.4',
    '-35 55 0.586 35.7',
    '-30 55 1.358 67.3',
    '-25 55 2.297 96.2',
    '-20 55 3.43 123.4',
  ].map((line) => line.replaceAll(' ', '\t')),
].join('\n');

const suction = { kind: 'returnGas', returnGas: '32.2 °C' };
const liquid = { kind: 'temperature', temperature: '32.2 °C' };
const cold = alone({
  madeFor: 'R134a',
  displacement: '7.4 cm3',
  // A tight machine, as far as its owner knows: one with more clearance would meet every line.
  clearanceRatio: '0.018 (0.005 to 0.038)',
  tables: [{ table, basis: { suction, liquid }, frequency: '50 Hz' }],
});

async function answer(input: string, ...args: readonly string[]) {
  const { streams, output, errors } = collected(input);
  const code = await main(['machine', '-', ...args], streams);
  return { code, output: plain(output()), errors: plain(errors()) };
}

describe('a table down to where hardly anything flows', () => {
  test('the others are met, what was left out is named, and a point without an answer takes no other with it', async () => {
    const { code, output } = await answer(cold, '--json', '--at', '-25,45', '--at', '-10,45', '--at', '-35,55');
    expect(code).toBe(0);
    const { points } = JSON.parse(output) as { points: [MachinePoint, MachinePoint, UnansweredPoint] };
    const [within, beyond, without] = points;
    // Beyond: 6.908 kg/h by the same independent relations, without scatter.
    expect(Math.abs((within.massFlow.likely * 3600) / 2.788 - 1)).toBeLessThan(0.03);
    expect(beyond.massFlow.low * 3600).toBeLessThan(6.908);
    expect(beyond.massFlow.high * 3600).toBeGreaterThan(6.908);
    expect(within.findings.map((finding) => finding.code)).toContain('machinePointsSetAside');
    expect(without.error.code).toBe('dischargeTooHot');
    expect(without.error.message).toMatch(/R134a/);
  });

  test('people read the same', async () => {
    const { code, output } = await answer(cold, '--at', '-25,45', '--at', '-35,55');
    expect(code).toBe(0);
    const said = output.replaceAll(/\s+/g, ' ');
    expect(said).toMatch(/Left out: Table, line 14\. What was given there fills 1\d % of the stroke or less/);
    expect(said).toMatch(/evaporating at −35 °C, condensing at 55 °C \(dew\) No answer: The gas out of the compressor/);
    expect(output).not.toMatch(/undefined|NaN|Infinity|\[object/);
  });

  test('where no point has an answer, that is a refusal', async () => {
    const { code, errors } = await answer(cold, '--at', '-35,55');
    expect(code).toBe(3);
    expect(errors).toMatch(/hotter than the equation of R134a reaches/);
  });
});

describe('ratings alone', () => {
  const at = { kind: 'named', point: 'ashraeLow' };
  const rated = (capacity: string, power: string) => ({ at, capacity, power });
  const pointOf = async (ratings: readonly object[]): Promise<MachinePoint> => {
    const { code, output } = await answer(alone({ madeFor: 'R134a', ratings }), '--json', '--at', '-23.3,54.4');
    expect(code).toBe(0);
    return JSON.parse(output) as MachinePoint;
  };

  test('two that contradict each other are named, and the range reaches both', async () => {
    const { findings, capacity, power } = await pointOf([rated('180 W', '150 W'), rated('300 W', '250 W')]);
    expect(findings.map(({ code }) => code)).toContain('machineValueDisagrees');
    for (const [{ low, high }, one, other] of [
      [capacity, 180, 300],
      [power, 150, 250],
    ] as const) {
      expect(low).toBeLessThan(one);
      expect(high).toBeGreaterThan(0.98 * other);
      expect(low).toBeGreaterThan(0.7 * one);
      expect(high).toBeLessThan(1.3 * other);
    }
  });

  test('a single one is met within its tolerance', async () => {
    const { capacity, power } = await pointOf([rated('180 W ± 5 %', '150 W ± 5 %')]);
    for (const [{ low, likely, high }, given] of [
      [capacity, 180],
      [power, 150],
    ] as const) {
      expect(Math.abs(likely / given - 1)).toBeLessThan(0.02);
      expect(low).toBeGreaterThan(0.9 * given);
      expect(high).toBeLessThan(1.1 * given);
    }
  });
});
