// Properties over random origins of machines: ranges that are finite, ordered and possible, with a machine that runs; or a
// refusal with a code. Seeds are fixed.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  refrigerant,
  refrigerantNames,
  saturationAtDewTemperature,
  stateAt,
} from '../../../../src/matter/refrigerants/index.ts';
import { InputError } from '../../../../src/numerics/index.ts';
import {
  applianceNames,
  applications,
  compressorFluids,
  type HermeticCompressor,
  hermeticParameters,
  hermeticPoint,
  likelyFluid,
  type MachinePrior,
  machinePrior,
  requireHermeticCompressor,
  startTypes,
} from '../../../../src/parts/compressor/index.ts';

const bandIn = (low: number, high: number) =>
  fc
    .tuple(fc.double({ min: low, max: high, noNaN: true }), fc.double({ min: 1, max: 1.5, noNaN: true }))
    .map(([likely, spread]) => ({ low: likely / spread, likely, high: likely * spread }));

const origins = fc.record({
  appliance: fc.option(fc.constantFrom(...applianceNames), { nil: undefined }),
  madeFor: fc.constantFrom(...refrigerantNames),
  year: fc.option(
    fc.tuple(fc.integer({ min: 1900, max: 2150 }), fc.nat(30)).map(([likely, spread]) => ({
      low: likely - spread,
      likely,
      high: likely + spread,
    })),
    { nil: undefined },
  ),
  domeHeight: fc.option(bandIn(0.05, 0.8), { nil: undefined }),
  domeDiameter: fc.option(bandIn(0.05, 0.5), { nil: undefined }),
  application: fc.option(fc.constantFrom(...applications), { nil: undefined }),
  startType: fc.option(fc.constantFrom(...startTypes), { nil: undefined }),
  frequency: fc.constantFrom(25, 50, 60, 150),
});

test('seed 11: every origin gives possible ranges, or a refusal of a fluid no such machines are known for', () => {
  fc.assert(
    fc.property(origins, (origin) => {
      let prior: MachinePrior;
      try {
        prior = machinePrior(origin);
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        expect((error as InputError).code).toBe('fluidWithoutMachines');
        expect(compressorFluids).not.toContain(origin.madeFor);
        return;
      }
      for (const end of ['low', 'likely', 'high'] as const)
        requireHermeticCompressor(machineAt(prior, end, origin.frequency));
      for (const name of hermeticParameters) {
        const { low, likely, high, source } = prior[name];
        expect(low, name).toBeLessThanOrEqual(likely);
        expect(likely, name).toBeLessThanOrEqual(high);
        expect(source.length).toBeGreaterThan(10);
      }
    }),
    { seed: 11, numRuns: 400 },
  );
});

test('seed 12: the likely machine of every origin runs at 5 and 40 °C', () => {
  fc.assert(
    fc.property(origins, (origin) => {
      const madeFor = likelyFluid(origin.appliance, origin.year).fluid;
      const machine = machineAt(machinePrior({ ...origin, madeFor }), 'likely', origin.frequency);
      const fluid = refrigerant(madeFor);
      const pressure = saturationAtDewTemperature(fluid, 278.15).vapour.pressure;
      const point = hermeticPoint(machine, fluid, {
        suction: stateAt(fluid, { temperature: 288.15, pressure }),
        dischargePressure: saturationAtDewTemperature(fluid, 313.15).vapour.pressure,
        surroundings: 293.15,
        supply: machine.ratedSupply,
      });
      expect(point.overallEfficiency).toBeGreaterThan(0.2);
      expect(point.overallEfficiency).toBeLessThan(0.85);
      expect(point.volumetricEfficiency).toBeLessThan(1);
    }),
    { seed: 12, numRuns: 150 },
  );
});

function machineAt(prior: MachinePrior, end: 'low' | 'likely' | 'high', frequency: number): HermeticCompressor {
  const numbers = Object.fromEntries(hermeticParameters.map((name) => [name, prior[name][end]]));
  return { ...numbers, ratedSupply: { frequency, voltage: 230 } } as unknown as HermeticCompressor;
}
