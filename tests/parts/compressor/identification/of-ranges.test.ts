// The machine of ranges alone is the one that the whole identification finds without points: number by number, end by end.

import { describe, expect, test } from 'vitest';
import {
  compressorWith,
  identifyMachine,
  machineOfRanges,
  modelDoubt,
} from '../../../../src/parts/compressor/index.ts';
import { described, fluid, kelvin } from './descriptions.ts';

const ranges = described({});
const { displacement } = ranges.prior;
const exactly = { ...displacement.estimate, low: displacement.estimate.likely, high: displacement.estimate.likely };

describe.each([
  ['every number a range', ranges],
  [
    'one known exactly',
    { ...ranges, prior: { ...ranges.prior, displacement: { ...displacement, estimate: exactly } } },
  ],
])('%s', (_name, description) => {
  const short = machineOfRanges(description);
  const whole = identifyMachine(description);

  test('likely machine, influences and scatter are the same', () => {
    const { deviations, influences, ...rest } = short;
    const { deviations: theirs, influences: others, ...restOfWhole } = whole;
    expect(rest).toEqual(restOfWhole);
    expect([...deviations]).toEqual([...theirs].map((value) => value + 0));
    expect(influences.map(({ path }) => path)).toEqual(others.map(({ path }) => path));
    for (const [index, { atLow, atHigh }] of influences.entries()) {
      for (const [number, value] of atLow.entries()) expect(value).toBeCloseTo(others[index]!.atLow[number]!, 12);
      for (const [number, value] of atHigh.entries()) expect(value).toBeCloseTo(others[index]!.atHigh[number]!, 12);
    }
  });

  test('so are the machine with a number at its end, and the doubt of the model', () => {
    const path = short.influences[0]!.path;
    const values = { [path]: short.influences[0]!.estimate.high };
    const [one, other] = [compressorWith(short, values), compressorWith(whole, values)];
    for (const [name, value] of Object.entries(one)) {
      if (typeof value === 'number') expect(value).toBeCloseTo(other[name as 'slip'], 12);
    }
    const at = { fluid: fluid.name, evaporating: kelvin(5), condensing: kelvin(40), supply: description.ratedSupply };
    expect(modelDoubt(short, one, at)).toEqual(modelDoubt(whole, one, at));
  });
});
