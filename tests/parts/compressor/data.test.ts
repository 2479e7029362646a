// The data file: the shipped one is accepted, and each rule refuses a copy that breaks it, naming the place.

import { describe, expect, test } from 'vitest';
import shipped from '../../../data/compressors.json';
import { type CompressorFile, readCompressors } from '../../../src/parts/compressor/data.ts';

function broken(change: (copy: CompressorFile) => void): () => unknown {
  const copy = structuredClone(shipped);
  change(copy);
  return () => readCompressors(copy);
}

test('the shipped file is accepted', () => {
  expect(readCompressors(shipped).appliances.length).toBeGreaterThan(0);
});

describe('refusals', () => {
  const cases: [string, (copy: CompressorFile) => void][] = [
    ['mechanisms.rotary.speed', (copy) => Object.assign(copy.mechanisms.rotary.speed, { low: 60 })],
    ['mechanisms.rotary.fillingFactor', (copy) => Object.assign(copy.mechanisms.rotary.fillingFactor, { high: 1.2 })],
    ['mechanisms.rotary.speed', (copy) => Object.assign(copy.mechanisms.rotary, { speed: undefined })],
    ['mechanisms.rotary.speed', (copy) => Object.assign(copy.mechanisms.rotary.speed, { likely: '49' })],
    ['mechanisms.rotary.speed', (copy) => Object.assign(copy.mechanisms.rotary.speed, { source: 'hearsay' })],
    ['appliances.0.mechanism', (copy) => Object.assign(copy.appliances[0]!, { mechanism: 'steam' })],
    ['appliances.0.application', (copy) => Object.assign(copy.appliances[0]!, { application: 'middling' })],
    ['appliances.0', (copy) => Object.assign(copy.appliances[0]!, { madeFor: {} })],
    ['appliances', (copy) => Object.assign(copy.appliances[1]!, { name: copy.appliances[0]!.name })],
    ['generic', (copy) => copy.generic.splice(0, 1)],
    ['applicationLimits.0', (copy) => Object.assign(copy.applicationLimits[0]!.condensing, { peak: 300 })],
    ['speedByMains.50', (copy) => Object.assign(copy.speedByMains['50'], { high: 51 })],
  ];

  test.each(cases)('%s, case %#', (path, change) => {
    expect(broken(change)).toThrow(expect.objectContaining({ name: 'DataError', path }));
  });
});
