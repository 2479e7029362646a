// Coefficient files and catalogue: the shipped ones pass their checks, and each way a file can be broken is refused with the
// file, the path inside it and the rule.

import { describe, expect, test } from 'vitest';
import catalogue from '../../../data/refrigerants/catalogue.json';
import r12 from '../../../data/refrigerants/R12.json';
import r290 from '../../../data/refrigerants/R290.json';
import r410a from '../../../data/refrigerants/R410A.json';
import r507a from '../../../data/refrigerants/R507A.json';
import { checkedEntry } from '../../../src/matter/refrigerants/catalogue/catalogue.ts';
import { checkedFluidData } from '../../../src/matter/refrigerants/equation/fluid-data.ts';
import {
  catalogueEntry,
  isStudyOnly,
  refrigerant,
  refrigerantNames,
  saturationAtPressure,
  studyOnlyReasons,
  unconfirmedOf,
} from '../../../src/matter/refrigerants/index.ts';
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

  // Each of these numbers passes the check of its own; with it the fluid has no saturation line, or no enthalpy.
  test.each([
    ['a first guess of the liquid', 'fluid', r12, (f: Loose) => (f.firstGuess.liquidMolarDensity.n[2] = 1e308)],
    ['a power of temperature', 'fluid', r410a, (f: Loose) => (f.residual[0].t[3] = 1e308)],
    ['a bubble line', 'fluid', r507a, (f: Loose) => (f.bubbleAndDew.bubblePressure.n[0] = 5e-324)],
    ['a heat capacity', 'fluid.ideal', r12, (f: Loose) => (f.ideal[2].n[0] = 1e308)],
  ])('%s that no fluid can have is refused when the fluid is made', (_, path, file, change) => {
    const copy = structuredClone(file) as Loose;
    change(copy);
    expect(() => loadRefrigerant(copy, 'x.json')).toThrow(
      expect.objectContaining({ name: 'DataError', file: 'x.json', path }),
    );
  });

  // Molar mass, critical and triple point as the papers state them (see the citation in each file): printed digits.
  test.each([
    ['R134a', 102.032, 374.21, 4.0593, 511.95, 169.85],
    ['R600a', 58.1222, 407.81, 3.629, 225.5, 113.73],
    ['R290', 44.0956, 369.89, 4.2512, 220.48, 85.53],
    ['R12', 120.913, 385.12, 4.1361, 565.0, 116.1],
    ['R22', 86.468, 369.295, 4.99, 523.84, 115.73],
    ['R600', 58.1222, 425.125, 3.796, 228.0, 134.9],
    ['R1270', 42.0797, 364.211, 4.555, 229.63, 87.95],
    ['R32', 52.024, 351.255, 5.782, 424.0, 136.34, 1e-3],
    ['R143a', 84.041, 345.857, 3.761, 431.0, 161.34, 1e-3],
    ['R152a', 66.051, 386.411, 4.5168, 368.0, 154.56],
    ['R1234yf', 114.0416, 367.85, 3.3844, 476.7, 121.6],
    ['R744', 44.0098, 304.128, 7.3773, 467.6, 216.59],
    ['R717', 17.0305, 405.56, 11.363, 233.25, 195.49, 1e-3],
  ])('%s: constants of the fluid', (name, molarMass, temperature, pressure, density, triple, lastDigit = 1e-4) => {
    const fluid = refrigerant(name);
    expect(fluid.molarMass * 1e3).toBeCloseTo(molarMass, 3);
    expect(Math.abs(fluid.critical.temperature - temperature)).toBeLessThan(0.003);
    expect(Math.abs(fluid.critical.pressure / 1e6 - pressure)).toBeLessThan(1.01 * lastDigit);
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

  // Class, LFL, PL and ATEL/ODL [kg/m³]: EN 378-1:2016+A1:2020, Annex E, from open transcriptions; R600a 0.038 by ASHRAE 34, the
  // lower of two; R12, R22, R124 by Table 1103.1 of the International Mechanical Code (ASHRAE 34). GWP100: IPCC AR4, what EU
  // law keeps (2024/573, Annex I), or the annexes of 517/2014 for what AR4 leaves out.
  test.each([
    ['R134a', 'A1', null, 0.25, 0.21, 1430],
    ['R600a', 'A3', 0.038, 0.011, 0.059, 3],
    ['R290', 'A3', 0.038, 0.008, 0.09, 3],
    ['R1270', 'A3', 0.046, 0.008, 0.0017, 2],
    ['R12', 'A1', null, 0.5, 0.09, 10900],
    ['R22', 'A1', null, 0.3, 0.21, 1810],
    ['R32', 'A2L', 0.307, 0.061, 0.3, 675],
    ['R152a', 'A2', 0.13, 0.027, 0.14, 124],
    ['R1234yf', 'A2L', 0.289, 0.058, 0.28, 4],
    ['R1234ze(E)', 'A2L', 0.303, 0.061, 0.28, 7],
    ['R744', 'A1', null, 0.1, 0.072, 1],
    ['R717', 'B2L', 0.116, 0.00035, 0.00022, 0],
    ['R404A', 'A1', null, 0.52, 0.52, 3922],
    ['R407C', 'A1', null, 0.31, 0.29, 1774],
    ['R410A', 'A1', null, 0.44, 0.42, 2088],
    ['R507A', 'A1', null, 0.53, 0.53, 3985],
    ['R600', 'A3', 0.038, 0.008, 0.0024, 4],
    ['R125', 'A1', null, 0.39, 0.37, 3500],
    ['R143a', 'A2L', 0.282, 0.056, 0.58, 4470],
    ['R124', 'A1', null, null, 0.056, 609],
  ])('%s is %s', (name, safetyClass, flammability, practical, toxicity, warming) => {
    const entry = catalogueEntry(name);
    expect(entry.safetyClass).toBe(safetyClass);
    expect(entry.lowerFlammabilityLimit).toBe(flammability);
    expect(entry.practicalLimit).toBe(practical);
    expect(entry.toxicityLimit).toBe(toxicity);
    expect(entry.globalWarmingPotential.value).toBe(warming);
    expect(entry.globalWarmingPotential.report).toMatch(/AR4|517\/2014|unit of the scale/);
    for (const field of ['safetyClass', 'lowerFlammabilityLimit', 'legalStatus'] as const) {
      expect(entry.sources[field].confirmed, field).toBe(true);
    }
    expect(isStudyOnly(name)).toBe(false);
  });

  test('fluids of which class or limits were not read are for study only, and each says what is missing', () => {
    expect(refrigerantNames.filter(isStudyOnly)).toEqual(['R245fa', 'R142b', 'R227ea', 'R236fa', 'R718']);
    expect(studyOnlyReasons('R227ea')).toEqual(['safetyClass', 'flammability']);
    expect(studyOnlyReasons('R718')).toEqual(['safetyClass', 'flammability', 'leakLimit']);
    expect(studyOnlyReasons('propane')).toEqual([]);
  });

  test('each field decides by itself whether a fluid is for study only', () => {
    for (const [field, reason] of [
      ['safetyClass', 'safetyClass'],
      ['lowerFlammabilityLimit', 'flammability'],
      ['legalStatus', 'law'],
    ] as const) {
      const copy = structuredClone(catalogue) as Loose;
      copy.fluids.R32[field][1] = 'ashrae34memory';
      expect(unconfirmedOf(checkedEntry(copy, 'R32'))).toEqual([reason]);
    }
    const copy = structuredClone(catalogue) as Loose;
    copy.fluids.R32.practicalLimit[1] = 'en378memory';
    expect(unconfirmedOf(checkedEntry(copy, 'R32'))).toEqual([]);
    copy.fluids.R32.toxicityLimit[1] = 'en378memory';
    expect(unconfirmedOf(checkedEntry(copy, 'R32'))).toEqual(['leakLimit']);
  });

  // ISO 817: class 3 where the limit is at or below 0.10 kg/m³ (or the heat of combustion high), else 2 or 2L.
  test.each(refrigerantNames)('%s: class and flammability limit agree', (name) => {
    const { safetyClass, lowerFlammabilityLimit: limit } = catalogueEntry(name);
    if (safetyClass.endsWith('3')) expect(limit).toBeLessThanOrEqual(0.1);
    else if (!safetyClass.endsWith('1')) expect(limit).toBeGreaterThan(0.1);
  });

  // Lower flammability limits in air by volume (EN 378-1 and ASHRAE 34) times molar mass over 24.465 L/mol, the molar volume at
  // 25 °C and 1 atm; printed to 0.1 %, so up to 0.05 % by volume off. R1234yf and R1234ze(E) are tested warmer (to 6 %).
  test.each([
    ['R32', 14.4, 0.02],
    ['R152a', 4.8, 0.02],
    ['R290', 2.1, 0.03],
    ['R600a', 1.6, 0.04],
    ['R1270', 2.7, 0.02],
    ['R717', 16.7, 0.02],
    ['R1234yf', 6.2, 0.06],
    ['R1234ze(E)', 6.5, 0.06],
    ['R142b', 8.0, 0.02],
  ])('%s burns from %f %% of the air on', (name, percent, tolerance) => {
    const inAir = ((percent / 100) * refrigerant(name).molarMass) / 24.465e-3;
    expect(Math.abs(catalogueEntry(name).lowerFlammabilityLimit! / inAir - 1)).toBeLessThan(tolerance);
  });

  // ATEL/ODL in parts per million, ASHRAE 34 as printed in Table 1103.1 of the International Mechanical Code.
  test.each([
    ['R12', 18_000],
    ['R22', 59_000],
    ['R124', 10_000],
    ['R134a', 50_000],
    ['R125', 75_000],
  ])('%s can be breathed up to %i ppm for a while', (name, partsPerMillion) => {
    const inAir = (partsPerMillion * 1e-6 * refrigerant(name).molarMass) / 24.465e-3;
    expect(Math.abs(catalogueEntry(name).toxicityLimit! / inAir - 1)).toBeLessThan(0.02);
  });

  // EN 378-1: of a fluid that burns the practical limit is a fifth of its flammability limit, or what harms, if that is less.
  test.each(['R32', 'R143a', 'R152a', 'R290', 'R600', 'R1234yf', 'R1234ze(E)'])(
    '%s: the practical limit is a fifth of the flammability limit',
    (name) => {
      const { practicalLimit, lowerFlammabilityLimit } = catalogueEntry(name);
      expect(Math.abs(practicalLimit! - 0.2 * lowerFlammabilityLimit!)).toBeLessThanOrEqual(0.0011);
    },
  );

  // The listed values of the blends (EU 517/2014 and 2024/573 Annex I components, AR4), and by AR6, out of their components.
  test.each(['R404A', 'R407C', 'R410A', 'R507A'])('%s: warming by mass from its components', (name) => {
    const { composition, globalWarmingPotential, laterGlobalWarmingPotential } = catalogueEntry(name);
    const sum = (read: (entry: ReturnType<typeof catalogueEntry>) => number) =>
      Object.entries(composition!).reduce((total, [part, share]) => total + share * read(catalogueEntry(part)), 0);
    expect(sum((entry) => entry.globalWarmingPotential.value!)).toBeCloseTo(globalWarmingPotential.value!, -0.31);
    expect(sum((entry) => entry.laterGlobalWarmingPotential.value!)).toBeCloseTo(
      laterGlobalWarmingPotential.value!,
      -0.31,
    );
    // A blend depletes no ozone if no part does, and its class is no sign of a part that burns.
    expect(sum((entry) => entry.ozoneDepletionPotential!)).toBe(0);
  });

  test('molar mass of a blend follows from its composition (Lemmon 2003: 97.60, 86.20, 72.59, 98.86 g/mol)', () => {
    for (const [name, molarMass] of [
      ['R404A', 97.6],
      ['R407C', 86.2],
      ['R410A', 72.59],
      ['R507A', 98.86],
    ] as const) {
      const moles = Object.entries(catalogueEntry(name).composition!).reduce(
        (sum, [part, share]) => sum + share / refrigerant(part).molarMass,
        0,
      );
      expect(Math.abs(1e3 / moles - molarMass), name).toBeLessThan(0.01);
    }
  });
});

describe('boiling point, glide and critical point of the catalogue', () => {
  test.each(refrigerantNames)('%s: those of its equation', (name) => {
    const { normalBoilingPoint, glide, criticalPoint } = catalogueEntry(name);
    const fluid = refrigerant(name);
    expect(Math.abs(criticalPoint.temperature - fluid.critical.temperature)).toBeLessThan(1e-3);
    expect(Math.abs(criticalPoint.pressure - fluid.critical.pressure)).toBeLessThanOrEqual(50);
    if (normalBoilingPoint === null || glide === null) {
      expect(() => saturationAtPressure(fluid, 101325)).toThrow(expect.objectContaining({ name: 'OutOfModelError' }));
      expect(glide).toBeNull();
      return;
    }
    const { liquid, vapour } = saturationAtPressure(fluid, 101325);
    expect(Math.abs(normalBoilingPoint - liquid.temperature)).toBeLessThan(1e-3);
    expect(Math.abs(glide - (vapour.temperature - liquid.temperature))).toBeLessThan(1e-3);
    if (catalogueEntry(name).composition === null) expect(glide).toBe(0);
  });

  // Normal boiling points [°C] as a general-purpose library has them, and for the blends bubble and dew (CoolProp 8.0.0).
  test.each([
    ['R134a', -26.07],
    ['R600a', -11.75],
    ['R600', -0.49],
    ['R290', -42.11],
    ['R1270', -47.62],
    ['R12', -29.75],
    ['R22', -40.81],
    ['R32', -51.65],
    ['R125', -48.09],
    ['R143a', -47.24],
    ['R152a', -24.02],
    ['R1234yf', -29.46],
    ['R1234ze(E)', -18.97],
    ['R717', -33.32],
    ['R245fa', 15.05],
    ['R142b', -9.12],
    ['R124', -11.96],
    ['R227ea', -16.34],
    ['R236fa', -1.49],
    ['R718', 99.97],
    ['R404A', -46.22, -45.47],
    ['R407C', -43.63, -36.63],
    ['R410A', -51.44, -51.36],
    ['R507A', -46.74, -46.74],
  ])('%s boils at %f °C', (name, bubble, dew = bubble) => {
    const { normalBoilingPoint, glide } = catalogueEntry(name);
    expect(Math.abs(normalBoilingPoint! - 273.15 - bubble)).toBeLessThan(0.0055);
    expect(Math.abs(normalBoilingPoint! + glide! - 273.15 - dew)).toBeLessThan(0.0055);
  });
});

describe('a broken catalogue', () => {
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
