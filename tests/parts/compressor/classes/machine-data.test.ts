// The machines of the data file: the shipped ones are accepted and agree with the fluids of the engine, and each rule refuses a
// copy that breaks it, naming the place.

import { describe, expect, test } from 'vitest';
import shipped from '../../../../data/compressors.json';
import { refrigerant, saturationAtDewTemperature } from '../../../../src/matter/refrigerants/index.ts';
import { machineData, readMachines } from '../../../../src/parts/compressor/classes/machine-data.ts';
import type { CompressorFile } from '../../../../src/parts/compressor/data.ts';
import { compressorFluids } from '../../../../src/parts/compressor/index.ts';

test('every fluid that machines were made for has its pressure at 40 °C, as the engine gives it', () => {
  expect([...machineData.referencePressures.keys()].sort()).toEqual([...compressorFluids].sort());
  for (const [fluid, pressure] of machineData.referencePressures) {
    const exact = saturationAtDewTemperature(refrigerant(fluid), 313.15).vapour.pressure;
    expect(Math.abs(pressure / exact - 1)).toBeLessThan(1e-6);
  }
});

describe('refusals', () => {
  const cases: [string, (copy: CompressorFile) => void][] = [
    [
      'machines.mechanisms.rotary.clearanceRatio',
      ({ machines }) => Object.assign(machines.mechanisms.rotary.clearanceRatio, { low: 0.02 }),
    ],
    [
      'machines.mechanisms.rotary.motorShare',
      ({ machines }) => Object.assign(machines.mechanisms.rotary, { motorShare: undefined }),
    ],
    ['machines.slip.50', ({ machines }) => Object.assign(machines.slip['50'], { high: 0.3 })],
    ['machines.referencePressures.R12', ({ machines }) => Object.assign(machines.referencePressures, { R12: 0 })],
    ['machines.startTypes', ({ machines }) => Object.assign(machines.startTypes[0]!, { name: 'crank' })],
    [
      'machines.unknownMotorByYear.1.until',
      ({ machines }) => Object.assign(machines.unknownMotorByYear[1]!, { until: 1950 }),
    ],
    [
      'machines.fluidsByYear.any.1.until',
      ({ machines }) => Object.assign(machines.fluidsByYear.any[1]!, { until: 1900 }),
    ],
    ['machines.fluidsByYear.any.0', ({ machines }) => Object.assign(machines.fluidsByYear.any[0]!, { fluid: 'R11' })],
    ['machines.fluidsByYear.any', ({ machines }) => Object.assign(machines.fluidsByYear, { any: [] })],
    ['appliances.0', ({ appliances }) => Object.assign(appliances[0]!.fluidsByYear[0]!, { fluid: 'R410A' })],
    ['appliances.0.dome.height', ({ appliances }) => Object.assign(appliances[0]!, { dome: tallDome })],
    ['appliances.0.mechanism', ({ appliances }) => Object.assign(appliances[0]!, { mechanism: 'steam' })],
  ];
  test.each(cases.map(([place, change]) => [place, change] as const))('%s', (place, change) => {
    const copy = structuredClone(shipped);
    change(copy);
    expect(() => readMachines(copy)).toThrow(
      expect.objectContaining({ code: 'brokenData', file: 'data/compressors.json', path: place }),
    );
  });
});

const size = { low: 2, likely: 3, high: 4, source: 'domeSizes' };
const tallDome = { height: size, diameter: size };
