// The data file: the shipped one is accepted, agrees with the fluids of the engine, and uses each of its sources; and each rule
// refuses a copy that breaks it, naming the place.

import { describe, expect, test } from 'vitest';
import shipped from '../../../data/compressors.json';
import { refrigerant, saturationAtDewTemperature } from '../../../src/matter/refrigerants/index.ts';
import { readAppliances } from '../../../src/parts/compressor/classes/appliances.ts';
import { readFluidHistories } from '../../../src/parts/compressor/classes/fluids-by-year.ts';
import { readMachines } from '../../../src/parts/compressor/classes/machine-data.ts';
import type { CompressorFile } from '../../../src/parts/compressor/data.ts';
import { readEnvelope } from '../../../src/parts/compressor/envelope/envelope-data.ts';
import { readApplicationLimits } from '../../../src/parts/compressor/envelope/limits.ts';

function readAll(file: CompressorFile): void {
  readAppliances(file);
  readMachines(file);
  readFluidHistories(file);
  readApplicationLimits(file);
  readEnvelope(file);
}

describe('the shipped file', () => {
  test('is accepted', () => {
    readAll(shipped);
    expect(readAppliances(shipped).length).toBeGreaterThanOrEqual(10);
  });

  test('knows machines of every fluid an appliance was made for, with its pressure at 40 °C as the engine gives it', () => {
    const { referencePressures } = readMachines(shipped);
    const builtFor = new Set(readAppliances(shipped).flatMap(({ fluids }) => fluids));
    expect([...referencePressures.keys()].sort()).toEqual([...builtFor].sort());
    for (const [fluid, pressure] of referencePressures) {
      const exact = saturationAtDewTemperature(refrigerant(fluid), 313.15).vapour.pressure;
      expect(Math.abs(pressure / exact - 1)).toBeLessThan(1e-6);
    }
  });

  test('uses every source it lists, and every range has one', () => {
    const { sources, ...rest } = shipped;
    const text = JSON.stringify(rest);
    for (const key of Object.keys(sources)) expect(text).toContain(`"source":"${key}"`);
    const ranges = text.match(/"likely":/g)!.length;
    expect(text.match(/"high":[^,}]+,"source":"/g)).toHaveLength(ranges);
  });
});

describe('refusals', () => {
  const size = { low: 2, likely: 3, high: 4, source: 'domeSizes' };
  const cases: [string, (copy: CompressorFile) => void][] = [
    // ranges
    ['mechanisms.rotary.clearanceRatio', (copy) => Object.assign(copy.mechanisms.rotary.clearanceRatio, { low: 0.02 })],
    [
      'mechanisms.rotary.proportionalLoss',
      (copy) => Object.assign(copy.mechanisms.rotary.proportionalLoss, { high: 2 }),
    ],
    ['mechanisms.rotary.motorShare', (copy) => Object.assign(copy.mechanisms.rotary, { motorShare: undefined })],
    ['mechanisms.rotary.shellFilm', (copy) => Object.assign(copy.mechanisms.rotary.shellFilm, { likely: '9' })],
    ['mechanisms.rotary.shellFilm', (copy) => Object.assign(copy.mechanisms.rotary.shellFilm, { source: 'hearsay' })],
    ['slip.50', (copy) => Object.assign(copy.slip['50'], { high: 0.3 })],
    ['referencePressures.R12', (copy) => Object.assign(copy.referencePressures, { R12: 0 })],
    ['startTypes', (copy) => Object.assign(copy.startTypes[0]!, { name: 'crank' })],
    ['startTypes.0.lowTorque', (copy) => Object.assign(copy.startTypes[0]!, { lowTorque: 'perhaps' })],
    ['startTypes.0.minimumOffTime', (copy) => Object.assign(copy.startTypes[0]!, { minimumOffTime: undefined })],
    ['dome.displacementShare.rotary', (copy) => Object.assign(copy.dome.displacementShare.rotary, { high: 1 })],
    // years
    ['unknownMotorByYear.1.until', (copy) => Object.assign(copy.unknownMotorByYear[1]!, { until: 1950 })],
    ['fluidsByYear.any.1.until', (copy) => Object.assign(copy.fluidsByYear.any[1]!, { until: 1900 })],
    ['fluidsByYear.any.0', (copy) => Object.assign(copy.fluidsByYear.any[0]!, { fluid: 'R11' })],
    ['fluidsByYear.any', (copy) => Object.assign(copy.fluidsByYear, { any: [] })],
    [
      'appliances.0.fluidsByYear.0',
      ({ appliances }) => Object.assign(appliances[0]!.fluidsByYear[0]!, { fluid: 'R410A' }),
    ],
    // appliances
    [
      'appliances.0.dome.height',
      (copy) => Object.assign(copy.appliances[0]!, { dome: { height: size, diameter: size } }),
    ],
    ['appliances.0.mechanisms', (copy) => Object.assign(copy.appliances[0]!, { mechanisms: ['steam'] })],
    ['appliances.0.mechanisms', (copy) => Object.assign(copy.appliances[0]!, { mechanisms: [] })],
    ['mechanismsByApplication.low', (copy) => Object.assign(copy.mechanismsByApplication, { low: ['steam'] })],
    ['appliances.0.application', (copy) => Object.assign(copy.appliances[0]!, { application: 'middling' })],
    ['appliances.0', (copy) => Object.assign(copy.appliances[0]!, { madeFor: {} })],
    ['appliances', (copy) => Object.assign(copy.appliances[1]!, { name: copy.appliances[0]!.name })],
    // limits
    ['applicationLimits.0', (copy) => Object.assign(copy.applicationLimits[0]!.condensing, { peak: 300 })],
    ['applicationLimits', (copy) => copy.applicationLimits.splice(0, 1)],
    ['envelope.pressureRatio.lowest', (copy) => Object.assign(copy.envelope.pressureRatio, { lowest: 0.5 })],
    ['envelope.returnGas.highest', (copy) => Object.assign(copy.envelope.returnGas, { highest: 35 })],
    ['envelope.superheat.lowest', (copy) => Object.assign(copy.envelope.superheat, { lowest: 6 })],
    ['envelope.wall.caution', (copy) => Object.assign(copy.envelope.wall, { caution: 500 })],
    [
      'envelope.lockedRotorOverRatedCurrent',
      (copy) => Object.assign(copy.envelope.lockedRotorOverRatedCurrent, { high: 50 }),
    ],
    ['starting.equalisation', (copy) => Object.assign(copy.starting.equalisation, { low: 0 })],
  ];

  test.each(cases)('%s, case %#', (path, change) => {
    const copy = structuredClone(shipped);
    change(copy);
    expect(() => readAll(copy)).toThrow(
      expect.objectContaining({ name: 'DataError', file: 'data/compressors.json', path }),
    );
  });
});
