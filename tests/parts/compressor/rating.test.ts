// A machine from one rating: the round trip returns what went in, impossible ratings are refused with their limit, and only
// confirmed rating points may be used by name.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  refrigerant,
  refrigerantFormulas,
  saturationAtTemperature,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import type { RatingConditions } from '../../../src/parts/compressor/index.ts';
import {
  applicationLimits,
  compressorFormulas,
  compressorPoint,
  modelFromRating,
  ratingConditions,
  ratingPointNames,
  ratingPoints,
  ratingWorking,
} from '../../../src/parts/compressor/index.ts';
import { expectTraced } from '../../traced-steps.ts';

const assumed = {
  speed: 49,
  clearanceRatio: 0.025,
  reexpansionExponent: 1.1,
  fillingFactor: 0.89,
  frictionPressure: 60e3,
  shellHeatShare: 0.45,
};
const r134a = refrigerant('R134a');

function capacityOf(fluid: typeof r134a, conditions: RatingConditions, massFlow: number): number {
  const pressure = saturationAtTemperature(fluid, conditions.evaporating).vapour.pressure;
  const gas = stateAt(fluid, { temperature: conditions.returnGas, pressure });
  return massFlow * (gas.enthalpy - saturationAtTemperature(fluid, conditions.liquid).liquid.enthalpy);
}

describe('law: identification returns the machine', () => {
  test('any machine, rated at any confirmed point, is found again from capacity and power (seed 540)', () => {
    const machines = fc.record({
      fluid: fc.constantFrom('R134a', 'R600a', 'R290', 'R12', 'R22'),
      point: fc.constantFrom(...ratingPointNames),
      displacement: fc.double({ min: 2e-6, max: 5e-5, noNaN: true }),
      compressionEfficiency: fc.double({ min: 0.35, max: 0.95, noNaN: true }),
      frictionPressure: fc.double({ min: 0, max: 1.5e5, noNaN: true }),
      fillingFactor: fc.double({ min: 0.7, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(machines, (machine) => {
        const fluid = refrigerant(machine.fluid);
        const conditions = ratingConditions(machine.point);
        const { displacement, compressionEfficiency, frictionPressure, fillingFactor } = machine;
        const others = { ...assumed, frictionPressure, fillingFactor };
        const suction = stateAt(fluid, {
          temperature: conditions.returnGas,
          pressure: saturationAtTemperature(fluid, conditions.evaporating).vapour.pressure,
        });
        const dischargePressure = saturationAtTemperature(fluid, conditions.condensing).vapour.pressure;
        const point = compressorPoint({ ...others, displacement, compressionEfficiency }, fluid, {
          suction,
          dischargePressure,
        });
        const capacity = capacityOf(fluid, conditions, point.massFlow);
        const rated = modelFromRating({
          fluid,
          capacity,
          power: point.power,
          ratingPoint: machine.point,
          assumed: others,
        });
        expect(rated.model.displacement / displacement).toBeCloseTo(1, 10);
        expect(rated.model.compressionEfficiency / compressionEfficiency).toBeCloseTo(1, 10);
        expect(rated.point.power / point.power).toBeCloseTo(1, 10);
      }),
      { seed: 540, numRuns: 60 },
    );
  });

  test('the model gives back capacity and power at its own rating', () => {
    const rated = modelFromRating({ fluid: r134a, capacity: 165, power: 140, ratingPoint: 'ashraeLow', assumed });
    expect(capacityOf(r134a, rated.conditions, rated.point.massFlow)).toBeCloseTo(165, 9);
    expect(rated.point.power).toBeCloseTo(140, 9);
    expect(rated.warnings).toEqual([]);
  });

  test('stated temperatures do the same as a confirmed name', () => {
    const byName = modelFromRating({ fluid: r134a, capacity: 165, power: 140, ratingPoint: 'cecomafLow', assumed });
    const conditions = ratingConditions('cecomafLow');
    const byValue = modelFromRating({ fluid: r134a, capacity: 165, power: 140, ratingPoint: conditions, assumed });
    expect(byValue).toEqual(byName);
  });
});

describe('refusals', () => {
  const request = { fluid: r134a, capacity: 165, power: 140, ratingPoint: 'ashraeLow', assumed } as const;

  test('power below isentropic: the limit names the largest capacity and the smallest power', () => {
    const error = caught(() => modelFromRating({ ...request, power: 30 }));
    expect(error).toMatchObject({ name: 'NoSolutionError', code: 'ratingImpossible' });
    expect((error as { limit: string }).limit).toMatch(/no machine gives more than \d+(\.\d+)? W/);
  });

  test('capacity in another unit than watts is above what is possible', () => {
    expect(caught(() => modelFromRating({ ...request, capacity: 1650 }))).toMatchObject({ code: 'ratingImpossible' });
  });

  test('assumed constant losses that leave too little: the limit says how much would fit', () => {
    const error = caught(() =>
      modelFromRating({ ...request, power: 90, assumed: { ...assumed, frictionPressure: 2e5 } }),
    );
    expect(error).toMatchObject({ name: 'NoSolutionError', code: 'ratingBelowFriction' });
  });

  test('a rating so poor that the gas would leave hotter than the equation describes', () => {
    expect(caught(() => modelFromRating({ ...request, power: 400 }))).toMatchObject({
      name: 'OutOfModelError',
      code: 'dischargeTooHot',
    });
  });

  test('a size that no small hermetic machine has', () => {
    expect(caught(() => modelFromRating({ ...request, capacity: 3e4, power: 3e4 }))).toMatchObject({
      name: 'OutOfModelError',
      code: 'ratingSizeOutOfModel',
    });
  });

  test.each(ratingPoints.filter((point) => !point.confirmed).map((point) => point.name))(
    '%s is unsure: refused by name with the reason',
    (name) => {
      const error = caught(() => modelFromRating({ ...request, ratingPoint: name }));
      expect(error).toMatchObject({ name: 'InputError', code: 'unsureRatingPoint' });
      expect((error as { expected: string }).expected).toContain('unsure');
    },
  );

  test('unknown name, return gas below dew, liquid above condensing, nonsense numbers', () => {
    const conditions = ratingConditions('ashraeLow');
    expect(caught(() => modelFromRating({ ...request, ratingPoint: 'somewhere' }))).toMatchObject({
      code: 'unknownRatingPoint',
    });
    for (const change of [{ returnGas: 240 }, { liquid: 340 }, { evaporating: 335 }, { condensing: Number.NaN }]) {
      expect(caught(() => modelFromRating({ ...request, ratingPoint: { ...conditions, ...change } }))).toMatchObject({
        name: 'InputError',
      });
    }
    expect(caught(() => modelFromRating({ ...request, capacity: -5 }))).toMatchObject({ path: 'capacity' });
    expect(caught(() => modelFromRating({ ...request, assumed: { ...assumed, fillingFactor: 2 } }))).toMatchObject({
      path: 'assumed.fillingFactor',
    });
  });

  test('unusual efficiency is warned of, not refused', () => {
    const wasteful = { ...request, power: 290, assumed: { ...assumed, shellHeatShare: 0.6 } };
    expect(modelFromRating(wasteful).warnings).toEqual(['efficiencyUnusuallyLow']);
    const efficient = { ...request, power: 78, assumed: { ...assumed, frictionPressure: 0 } };
    expect(modelFromRating(efficient).warnings).toEqual(['efficiencyUnusuallyHigh']);
  });
});

describe('rating points and application limits', () => {
  test('the confirmed ones are those whose four temperatures two sources give', () => {
    expect([...ratingPointNames].sort()).toEqual(['ashraeHigh', 'ashraeLow', 'cecomafLow', 'cecomafMedium']);
  });

  test('reference: ASHRAE high back pressure is 27.8 K superheat and 8.3 K subcooling (open compilations of data sheets)', () => {
    const { evaporating, condensing, returnGas, liquid } = ratingConditions('ashraeHigh');
    expect(returnGas - evaporating).toBeCloseTo(27.8, 6);
    expect(condensing - liquid).toBeCloseTo(8.3, 6);
  });

  test('each rating point lies inside the evaporating range of its application', () => {
    expect(ratingPoints.length).toBeGreaterThan(0);
    for (const point of ratingPoints) {
      const { evaporating } = applicationLimits(point.application);
      expect(point.evaporating).toBeGreaterThanOrEqual(evaporating.lowest);
      expect(point.evaporating).toBeLessThanOrEqual(evaporating.highest);
    }
  });
});

function caught(attempt: () => unknown): unknown {
  try {
    attempt();
  } catch (error) {
    return error;
  }
  throw new Error('expected an error');
}

test('law: the working repeats the identified numbers, each input from the sheet, an assumption or another step', () => {
  const formulas = [...compressorFormulas, ...refrigerantFormulas];
  // What the fluid's equation gives at the rated states.
  const ofTheEquation = [
    ...['R', 'phi_d', 'phi_t', 'phi_s', 'rho_c', 'h_zero', 's_zero'],
    ...['phi_liquid', 'phi_vapour', 'rho_liquid', 'rho_vapour'],
  ];
  const paths = Object.fromEntries(Object.keys(assumed).map((key) => [key, `sheet.${key}`]));
  for (const ratingPoint of ratingPointNames) {
    const request = { fluid: r134a, capacity: 170, power: 160, ratingPoint, assumed };
    const rated = modelFromRating(request);
    const steps = ratingWorking(request, rated, {
      capacity: 'sheet.capacity',
      power: 'sheet.power',
      ratingPoint: 'sheet.point',
      assumed: paths as Record<keyof typeof assumed, string>,
    });
    const values = expectTraced(steps, formulas, (origin) => origin.startsWith('sheet.'), ofTheEquation);
    expect(values.get('compressor.displacement')).toBe(rated.model.displacement);
    expect(values.get('compressor.compressionEfficiency')).toBe(rated.model.compressionEfficiency);
  }
});
