// A machine resolved: ranges by its origin, mains of its place, ratings and sheets in SI, what is assumed and from whom.

import { describe, expect, test } from 'vitest';
import { fluidsOf, resolveDesign, uncertainInputs } from '../../src/design/index.ts';
import {
  applianceClasses,
  applianceRanges,
  hermeticParameters,
  machinePrior,
  ratingPoint,
  ratingPointNames,
} from '../../src/parts/compressor/index.ts';
import { documentOf, fullDesign, knownCompressor, type Loose, sizedDesign } from './examples.ts';

const resolved = (value: Loose) => resolveDesign(documentOf(value));

function ofMachine(machine: Loose, place?: Loose) {
  return resolved({ ...sizedDesign(), machine, ...(place === undefined ? {} : { place }) });
}

const ofCompressor = (compressor: Loose) => ofMachine({ compressor }).design.machine;

describe('numbers of the machine', () => {
  test.each(applianceClasses.flatMap(({ name, fluids }) => fluids.map((fluid) => [name, fluid] as const)))(
    'out of a %s made for %s are the ranges of such machines, with the charge of its class',
    (appliance, madeFor) => {
      const { compressor, charge } = ofCompressor({ appliance, madeFor });
      const { application } = applianceClasses.find(({ name }) => name === appliance)!;
      const usual = machinePrior({ appliance, madeFor, application, frequency: 50 });
      for (const name of hermeticParameters) {
        const { low, likely, high } = usual[name];
        expect(compressor[name], name).toEqual({ low, likely, high, origin: 'assumed' });
      }
      expect(charge.likely).toBe(applianceRanges(appliance, madeFor).charge.likely);
    },
  );

  test('are narrower the more is known of where it came from', () => {
    const width = (compressor: Loose) => {
      const { low, high } = ofCompressor(compressor).compressor.displacement;
      return Math.log(high / low);
    };
    const nothing = width({});
    const appliance = width({ appliance: 'chestFreezer', madeFor: 'R600a' });
    const dome = width({ appliance: 'chestFreezer', madeFor: 'R600a', domeHeight: '17 cm', domeDiameter: '15 cm' });
    const typed = width({ appliance: 'chestFreezer', madeFor: 'R600a', displacement: '11 cm3 ± 2 %' });
    expect(nothing).toBeGreaterThan(appliance);
    expect(appliance).toBeGreaterThan(dome);
    expect(dome).toBeGreaterThan(typed);
  });

  test('a fluid its appliance was hardly built for has the ranges of others built for it', () => {
    const { compressor, charge } = ofCompressor({ appliance: 'tumbleDryer', madeFor: 'R600a' });
    expect(compressor.displacement.low).toBeGreaterThan(1e-6);
    expect(charge.low).toBeGreaterThan(0);
  });

  test('of two motors the one on 60 Hz has the slip of 60 Hz', () => {
    const usual = machinePrior({ madeFor: 'R600a', application: 'low', frequency: 60 });
    expect(ofCompressor({ madeFor: 'R600a', nameplate: { frequency: '60 Hz' } }).compressor.slip.likely).toBe(
      usual.slip.likely,
    );
  });
});

describe('its fluid', () => {
  test('is the one most likely for appliance and year while nobody read the plate, and the machine runs on it', () => {
    const { design, assumptions } = ofMachine({ compressor: { appliance: 'chestFreezer', year: '1985' } });
    // Household appliances held R12 until the phase-out of the Montreal Protocol.
    expect(design.machine.compressor.madeFor).toBe('R12');
    expect(design.machine.refrigerant).toBe('R12');
    const madeFor = assumptions.find(({ path }) => path === 'machine.compressor.madeFor')!;
    expect(madeFor).toMatchObject({ kind: 'choice', choice: 'R12' });
    expect(madeFor.source).toMatch(/chest freezer.*plate decides/);
  });

  test('may be asked for before anything is resolved', () => {
    for (const machine of [{}, { refrigerant: 'R290' }, { compressor: { madeFor: 'R22' } }]) {
      const document = documentOf({ ...sizedDesign(), machine });
      const { refrigerant, compressor } = resolveDesign(document).design.machine;
      expect(fluidsOf(document)).toEqual({ refrigerant, madeFor: compressor.madeFor });
    }
  });

  test('wished for is no reason to think that it was made for it', () => {
    const { machine } = ofMachine({ refrigerant: 'R290', compressor: { appliance: 'dehumidifier' } }).design;
    expect(machine.compressor.madeFor).not.toBe('R290');
  });
});

describe('its level', () => {
  test('is that of its appliance, of its rating point, or of the cold it is stated for', () => {
    expect(ofCompressor({ appliance: 'dehumidifier' }).application).toBe('high');
    for (const point of ratingPointNames) {
      const ratings = [{ at: { kind: 'named', point }, power: '180 W' }];
      expect(ofCompressor({ ratings }).application).toBe(ratingPoint(point).application);
    }
    const { coefficients } = knownCompressor();
    expect(ofCompressor({ coefficients }).application).toBe('low');
    const warm = { ...coefficients[0], evaporatingRange: '-5 to 15 °C' };
    expect(ofCompressor({ coefficients: [warm] }).application).toBe('high');
  });

  test('is the lowest while nothing is known, and the ranges are those of any level', () => {
    const { application, compressor } = ofCompressor({ madeFor: 'R134a' });
    expect(application).toBe('low');
    const any = machinePrior({ madeFor: 'R134a', frequency: 50 });
    expect(compressor.clearanceRatio.high).toBe(any.clearanceRatio.high);
  });
});

describe('mains', () => {
  // Nominal mains: IEC 60038 (230 V 50 Hz, 120 V 60 Hz); read from memory.
  test.each([
    [undefined, 50, 230],
    ['unknown', 50, 230],
    ['europeanUnion', 50, 230],
    ['unitedKingdom', 50, 230],
    ['elsewhere', 50, 230],
    ['unitedStates', 60, 120],
  ])('in %s are %d Hz and %d V, assumed', (region, frequency, voltage) => {
    const { design, assumptions } = ofMachine({}, region === undefined ? undefined : { region });
    expect(design.machine.supply.frequency.likely).toBe(frequency);
    expect(design.machine.supply.voltage.likely).toBe(voltage);
    expect(design.machine.supply.voltage.low).toBeCloseTo(0.95 * voltage, 9);
    expect(design.machine.compressor.nameplate.voltage.likely).toBe(voltage);
    const paths = assumptions.map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(['machine.supply.frequency', 'machine.supply.voltage']));
  });

  const american = { nameplate: { frequency: '60 Hz', voltage: '115 V' } };

  test('are those of the nameplate where nobody said which country it is, and of the country where somebody did', () => {
    const somewhere = ofMachine({ compressor: american }).design.machine.supply;
    expect([somewhere.frequency.likely, somewhere.voltage.likely]).toEqual([60, 115]);
    const europe = ofMachine({ compressor: american }, { region: 'europeanUnion' }).design.machine.supply;
    expect([europe.frequency.likely, europe.voltage.likely]).toEqual([50, 230]);
  });

  test('that a plate does not name are those its data are stated for', () => {
    const [set] = knownCompressor().coefficients;
    const { compressor } = ofCompressor({ coefficients: [{ ...set, frequency: '60 Hz' }] });
    expect(compressor.nameplate.frequency.likely).toBe(60);
    expect(compressor.coefficients[0]!.voltage.likely).toBe(compressor.nameplate.voltage.likely);
  });
});

describe('everything that may be known, in SI', () => {
  const { design, assumptions } = resolved(fullDesign());
  const { compressor } = design.machine;

  test('nameplate, years, count, mains, heater, valve', () => {
    expect(compressor.nameplate).toMatchObject({
      voltage: { likely: 230 },
      ratedCurrent: { likely: 1 },
      lockedRotorCurrent: { likely: 6.5 },
      power: { likely: 140 },
      horsepower: '1/6 hp',
    });
    expect(compressor).toMatchObject({ oil: 'mineral', startType: 'relay', years: { from: 2004, to: 2010 } });
    expect(design.machine.count.likely).toBe(2);
    expect(design.machine.supply.voltage).toMatchObject({ low: 225, high: 235, origin: 'typed' });
    expect(design.power.crankcaseHeater.likely).toBe(12);
    expect(design.exchangers.suctionPressureLimit?.likely).toBeCloseTo(1.1e5, 6);
  });

  test('ratings', () => {
    expect(compressor.ratings).toHaveLength(2);
    expect(compressor.ratings[0]).toMatchObject({
      at: { kind: 'named', point: 'ashraeLow' },
      capacity: { likely: 186, origin: 'typed' },
      current: { likely: 0.78 },
      frequency: { likely: 50, origin: 'assumed' },
    });
    expect(compressor.ratings[1]!.at).toMatchObject({
      kind: 'conditions',
      evaporating: { likely: 263.15 },
      liquid: { likely: expect.closeTo(305.35, 9) },
    });
    expect(compressor.ratings[1]).not.toHaveProperty('current');
  });

  test('coefficients', () => {
    const [flow, power] = compressor.coefficients;
    expect(flow).toMatchObject({
      of: 'massFlow',
      unit: 'kg/h',
      temperatureUnit: 'celsius',
      evaporatingRange: { from: expect.closeTo(238.15, 9), to: expect.closeTo(263.15, 9) },
      condensingRange: { from: expect.closeTo(308.15, 9), to: expect.closeTo(328.15, 9) },
      basis: { suction: { kind: 'returnGas', returnGas: { likely: expect.closeTo(305.35, 9) } }, saturation: 'dew' },
    });
    expect(flow!.values[0]).toBe(7.07429);
    expect(power!.values[9]).toBe(-8.37253e-5);
    expect(power!.basis.liquid).toMatchObject({ kind: 'subcooling', subcooling: { likely: 0 } });
    expect(flow!.basis).not.toHaveProperty('liquid');
  });

  test('tables and measurements', () => {
    expect(compressor.tables[0]).toMatchObject({ flowTolerance: { likely: 0.04 }, powerTolerance: { likely: 0.05 } });
    expect(compressor.bench[0]!.meter).toMatchObject({ kind: 'watts', power: { likely: 115 } });
    expect(compressor.bench[0]!.evaporating).toMatchObject({
      low: expect.closeTo(247.65, 9),
      likely: expect.closeTo(249.15, 9),
    });
    expect(compressor.bench[1]!.meter).toMatchObject({
      kind: 'ampsAndVolts',
      current: { likely: 0.86 },
      powerFactor: { low: 0.45, high: 0.95, origin: 'assumed' },
    });
    expect(compressor.bench[1]!.voltage.likely).toBe(231);
    expect(compressor.bench[1]).not.toHaveProperty('discharge');
  });

  test('what is assumed names its item; whether a blend is meant matters for a blend only', () => {
    const labels = assumptions.map(({ label }) => label);
    expect(labels).toContain('Power factor (measurement 2)');
    expect(labels).toContain('Mains frequency of the rating (rating 1)');
    expect(labels.filter((label) => label.startsWith('Saturation temperatures'))).toEqual([]);
    const blend = fullDesign();
    blend.machine.compressor.madeFor = 'R404A';
    const ofBlend = resolved(blend).assumptions.map(({ label }) => label);
    expect(ofBlend).toContain('Saturation temperatures are (set of coefficients 1)');
  });

  test('years and ranges of validity are no doubt and are not varied; stated values are', () => {
    const paths = uncertainInputs(resolved(fullDesign())).map(({ path }) => path);
    expect(paths).toEqual(
      expect.arrayContaining([
        'machine.compressor.ratings.0.capacity',
        'machine.compressor.bench.0.evaporating',
        'machine.compressor.bench.1.meter.powerFactor',
        'machine.compressor.shellConductance',
      ]),
    );
    for (const path of paths) expect(path).not.toMatch(/year|Range|dome|values|table$/);
  });
});
