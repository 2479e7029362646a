// Coefficient files and catalogue: the shipped ones pass their checks, and each way a file can be broken is refused with the
// file, the path inside it and the rule.

import { describe, expect, test } from 'vitest';
import catalogue from '../../../data/refrigerants/catalogue.json';
import r290 from '../../../data/refrigerants/R290.json';
import { checkedEntry } from '../../../src/matter/refrigerants/catalogue.ts';
import { checkedFluidData } from '../../../src/matter/refrigerants/equation/fluid-data.ts';
import { catalogueEntry, refrigerant, refrigerantNames } from '../../../src/matter/refrigerants/index.ts';
import { loadRefrigerant } from '../../../src/matter/refrigerants/load.ts';

// biome-ignore lint/suspicious/noExplicitAny: files are broken here on purpose, in ways their type forbids.
type Loose = any;

function broken(change: (file: Loose) => void): unknown {
  const copy = structuredClone(r290) as Loose;
  change(copy);
  return copy;
}

describe('coefficient files', () => {
  test('the whole file passes', () => {
    expect(checkedFluidData(r290, 'R290.json').name).toBe('R290');
  });

  test.each<[string, (file: Loose) => void]>([
    ['fluid.molarMass', (f) => delete f.molarMass],
    ['fluid.molarMass', (f) => (f.molarMass = -1)],
    ['fluid.gasConstant', (f) => (f.gasConstant = 'eight')],
    ['fluid.colour', (f) => (f.colour = 'green')],
    ['fluid.limits.pressureMax', (f) => (f.limits.pressureMax = Number.NaN)],
    ['fluid.limits.temperatureMin', (f) => (f.limits.temperatureMin = 400)],
    ['fluid.limits.temperatureMax', (f) => (f.limits.temperatureMax = 300)],
    ['fluid.reducing.temperature', (f) => (f.reducing.temperature = 220)],
    ['fluid.ideal', (f) => (f.ideal = [])],
    ['fluid.ideal[1].type', (f) => (f.ideal[1].type = 'guessed')],
    ['fluid.ideal[1].extra', (f) => (f.ideal[1].extra = 1)],
    ['fluid.residual[0].type', (f) => (f.residual[0].type = 'toString')],
    ['fluid.residual[0]', (f) => f.residual[0].n.pop()],
    ['fluid.residual[0].d[2]', (f) => (f.residual[0].d[2] = 1.5)],
    ['fluid.residual[0].l[0]', (f) => (f.residual[0].l[0] = -1)],
    ['fluid.residual[1].eta[0]', (f) => (f.residual[1].eta[0] = null)],
    ['fluid.residual[1].gamma', (f) => delete f.residual[1].gamma],
    ['fluid.firstGuess.pressure.form', (f) => (f.firstGuess.pressure.form = 'spline')],
    ['fluid.surfaceTension', (f) => f.surfaceTension.a.push(1)],
    ['fluid.citations.equation', (f) => (f.citations.equation = ' ')],
  ])('broken at %s', (path, change) => {
    expect(() => checkedFluidData(broken(change), 'R290.json')).toThrow(
      expect.objectContaining({ name: 'DataError', code: 'brokenData', file: 'R290.json', path }),
    );
  });

  test.each([null, 3, [], 'R290'])('%j is no file', (content) => {
    expect(() => checkedFluidData(content, 'x.json')).toThrow(
      expect.objectContaining({ name: 'DataError', path: 'fluid' }),
    );
  });

  test('a critical point that is not the equation’s own is refused', () => {
    const wrongPressure = broken((f) => (f.critical.pressure *= 1 + 1e-6));
    expect(() => loadRefrigerant(wrongPressure, 'x.json')).toThrow(
      expect.objectContaining({ name: 'DataError', path: 'fluid.critical.pressure' }),
    );
    const wrongDigit = broken((f) => (f.residual[0].n[3] *= 1 + 1e-6));
    expect(() => loadRefrigerant(wrongDigit, 'x.json')).toThrow(expect.objectContaining({ name: 'DataError' }));
  });

  // Molar mass, critical and triple point as the papers state them (see the citation in each file): printed digits.
  test.each([
    ['R134a', 102.032, 374.21, 4.0593, 511.95, 169.85],
    ['R600a', 58.1222, 407.81, 3.629, 225.5, 113.73],
    ['R290', 44.0956, 369.89, 4.2512, 220.48, 85.53],
    ['R12', 120.913, 385.12, 4.1361, 565.0, 116.1],
    ['R22', 86.468, 369.295, 4.99, 523.84, 115.73],
  ])('%s: constants of the fluid', (name, molarMass, temperature, pressure, density, triple) => {
    const fluid = refrigerant(name);
    expect(fluid.molarMass * 1e3).toBeCloseTo(molarMass, 3);
    expect(Math.abs(fluid.critical.temperature - temperature)).toBeLessThan(0.003);
    expect(Math.abs(fluid.critical.pressure / 1e6 - pressure)).toBeLessThan(1.01e-4);
    expect(Math.abs(fluid.critical.density - density)).toBeLessThan(0.011);
    expect(Math.abs(fluid.triplePoint.temperature - triple)).toBeLessThan(0.006);
  });
});

describe('catalogue', () => {
  test.each(refrigerantNames)('%s is complete, with a source per field', (name) => {
    const entry = catalogueEntry(name);
    expect(entry.name).toBe(name);
    for (const { source } of Object.values(entry.sources)) expect(source.length).toBeGreaterThan(10);
    expect(entry.legalStatus).toMatch(/Check locally\.$/);
    // What was not read in the source itself is marked so: it may warn, never clear.
    for (const { source, confirmed } of Object.values(entry.sources)) {
      if (/from memory|no source/.test(source)) expect(confirmed).toBe(false);
    }
  });

  // EN 378-1:2016+A1:2020, Annex E, from open transcriptions [kg/m³]; R600a 0.038 by ASHRAE 34, the lower of the two.
  test.each([
    ['R134a', 'A1', null, 0.25, 1430],
    ['R600a', 'A3', 0.038, 0.011, 3],
    ['R290', 'A3', 0.038, 0.008, 3],
    ['R12', 'A1', null, 0.5, 10900],
    ['R22', 'A1', null, 0.3, 1810],
  ])('%s is %s', (name, safetyClass, flammability, practical, warming) => {
    const entry = catalogueEntry(name);
    expect(entry.safetyClass).toBe(safetyClass);
    expect(entry.lowerFlammabilityLimit).toBe(flammability);
    expect(entry.practicalLimit).toBe(practical);
    expect(entry.globalWarmingPotential.value).toBe(warming);
    expect(entry.globalWarmingPotential.report).toMatch(/AR4|517\/2014/);
  });

  test.each<[string, (file: Loose) => void]>([
    ['fluids.R290', ({ fluids }) => delete fluids.R290],
    ['fluids.R290.safetyClass[0]', ({ fluids }) => (fluids.R290.safetyClass[0] = 'C4')],
    ['fluids.R290.safetyClass', ({ fluids }) => (fluids.R290.safetyClass = 'A3')],
    ['fluids.R290.glide', ({ fluids }) => delete fluids.R290.glide],
    ['fluids.R290.practicalLimit[1]', ({ fluids }) => (fluids.R290.practicalLimit[1] = 'hearsay')],
    ['fluids.R290.practicalLimit[1]', ({ fluids }) => (fluids.R290.practicalLimit[1] = 'toString')],
    ['fluids.R290.practicalLimit[2]', ({ fluids }) => (fluids.R290.practicalLimit[2] = ' ')],
    ['sources.en378.confirmed', ({ sources }) => delete sources.en378.confirmed],
    ['sources.en378.text', ({ sources }) => (sources.en378.text = '')],
    ['fluids.R290.lowerFlammabilityLimit[0]', ({ fluids }) => (fluids.R290.lowerFlammabilityLimit[0] = null)],
    ['fluids.R290.criticalPoint[0]', ({ fluids }) => (fluids.R290.criticalPoint[0].pressure = Number.NaN)],
    ['fluids.R290.legalStatus[0]', ({ legalTexts }) => delete legalTexts.hydrocarbonRetail],
    ['fluids.R290.colour', ({ fluids }) => (fluids.R290.colour = 1)],
    ['fluids.R290.usualOils[0]', ({ fluids }) => (fluids.R290.usualOils[0] = ['olive'])],
    ['fluids.R290.formula', ({ fluids }) => (fluids.R290.formula = null)],
    ['fluids.R290.composition', ({ fluids }) => (fluids.R290.composition = { R32: 0.5, R125: 0.4 })],
    ['fluids.R290.composition.R32', ({ fluids }) => (fluids.R290.composition = { R32: -0.5, R125: 1.5 })],
  ])('broken at %s', (path, change) => {
    const copy = structuredClone(catalogue) as Loose;
    change(copy);
    expect(() => checkedEntry(copy, 'R290')).toThrow(expect.objectContaining({ name: 'DataError', path }));
  });
});
