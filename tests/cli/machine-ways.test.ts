// One machine described in each of the six ways alone: origin, plate, ratings, ten coefficients, a pasted table, measurements on the
// bench. Each is answered by machine, settle, fit and check, with ranges that are ranges of a machine.

import { describe, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { alone, type Part } from '../assess/studies/machine/machines.ts';
import { changedDesign, demoTexts } from '../designs.ts';
import { collected } from './streams.ts';

const reef = demoTexts['reef-in-the-study.json']!;

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

const ways: Readonly<Record<string, Part>> = {
  'a: where it came from': {
    appliance: 'chestFreezer',
    year: '1998 to 2006',
    domeHeight: '17 cm',
    domeDiameter: '15 cm',
  },
  'b: its plate': {
    madeFor: 'R134a',
    displacement: '7 cm3',
    nameplate: {
      voltage: '230 V',
      frequency: '50 Hz',
      ratedCurrent: '0.9 A',
      lockedRotorCurrent: '6 A',
      power: '130 W',
      horsepower: '1/5 hp',
      oil: 'polyolester',
      startType: 'relay',
    },
  },
  'c: ratings by name': {
    madeFor: 'R134a',
    ratings: [
      { at: { kind: 'named', point: 'ashraeLow' }, capacity: '180 W', power: '135 W', frequency: '50 Hz' },
      { at: { kind: 'named', point: 'cecomafLow' }, capacity: '130 W', power: '130 W', frequency: '50 Hz' },
    ],
  },
  'd: ten coefficients': {
    madeFor: 'R134a',
    coefficients: [
      { of: 'massFlow', values: '9 0.35 -0.03 0.005 -0.0005 -0.0001 0.00003 0 0 0', unit: 'kg/h', ...held },
      { of: 'power', values: '95 1.2 0.3 0 0.006 0 0 0 0 0', unit: 'W', ...held },
    ],
  },
  'e: a pasted table': {
    madeFor: 'R134a',
    tables: [
      {
        table:
          'Te [°C]\tTc [°C]\tQ [W]\tP [W]\n-30\t45\t118\t105\n-25\t45\t165\t124\n-20\t45\t220\t143\n-10\t45\t358\t181',
        basis: held.basis,
        frequency: '50 Hz',
      },
    ],
  },
  'f: on the bench': {
    madeFor: 'R134a',
    bench: [
      {
        evaporating: '-25 °C',
        condensing: '42 °C',
        suction: '18 °C',
        discharge: '75 °C',
        liquid: '35 °C',
        surroundings: '22 °C',
        meter: { kind: 'ampsAndVolts', current: '0.8 A' },
        voltage: '230 V',
      },
    ],
  },
};

async function json(args: readonly string[], input: string) {
  const { streams, output, errors } = collected(input);
  const code = await main([...args, '--json'], streams);
  return { code, told: JSON.parse(output()), errors: errors() };
}

interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly unit: string;
}

function isRange({ low, likely, high, unit }: Range, wanted: string): void {
  expect(unit).toBe(wanted);
  expect(low).toBeGreaterThan(0);
  expect(low).toBeLessThanOrEqual(likely);
  expect(likely).toBeLessThanOrEqual(high);
  expect(Number.isFinite(high)).toBe(true);
}

const units = {
  capacity: 'W',
  power: 'W',
  massFlow: 'kg/s',
  current: 'A',
  dischargeTemperature: 'K',
  heat: 'W',
  compressorCop: '1',
} as const;

describe.each(Object.entries(ways))('%s', (_, compressor) => {
  test('machine answers each point with value, ends and unit', async () => {
    const args = ['machine', '-', '--at', '-10 °F, 110 °F', '--at', '-20, 45', '--units', 'us'];
    const { code, told } = await json(args, alone(compressor));
    expect(code).toBe(0);
    expect(told.points).toHaveLength(2);
    for (const point of told.points) {
      for (const [name, unit] of Object.entries(units)) isRange(point[name], unit);
      expect(point.compressorCop.likely).toBeCloseTo(point.heat.likely / point.power.likely, 9);
      expect(point.overallEfficiency.high).toBeLessThan(1);
    }
    expect(told.points[0].at.evaporating).toBeCloseTo(249.8167, 4);
  });

  test('settle, fit and check accept it', async () => {
    const settled = await json(['settle', '-', '--source', '10 °C', '--water', '25 °C'], alone(compressor));
    expect(settled.code).toBe(0);
    for (const name of ['heat', 'power', 'massFlow', 'current'] as const) isRange(settled.told[name], units[name]);
    expect((await json(['fit', '-'], alone(compressor))).code).toBe(0);
    const checked = await json(['check', '-'], changedDesign(reef, { 'machine.compressor': compressor }));
    expect([0, 1, 4]).toContain(checked.code);
    expect(checked.told.machine.heat.likely).toBeGreaterThan(0);
  });
});

test('a point far outside what the machine is for is answered, with the limits that it passes', async () => {
  const { code, told } = await json(['machine', '-', '--at', '10, 68'], alone(ways['c: ratings by name']!));
  expect(code).toBe(0);
  expect(told.insideData).toBe(false);
  expect(told.limits.some(({ margin }: { readonly margin: number | null }) => margin !== null && margin < 0)).toBe(
    true,
  );
});
