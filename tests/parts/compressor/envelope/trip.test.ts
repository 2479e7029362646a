// Where a motor gives up: on curves whose crossing is known, and on a modelled machine, whose load there must be the limit.

import { describe, expect, test } from 'vitest';
import { refrigerant, saturationAtDewTemperature, stateAt } from '../../../../src/matter/refrigerants/index.ts';
import { InputError, NoSolutionError, OutOfModelError } from '../../../../src/numerics/index.ts';
import {
  applicationLimits,
  type HermeticCompressor,
  type HermeticPoint,
  hermeticParameters,
  hermeticPoint,
  machinePrior,
  type TripSearch,
  tripAt,
} from '../../../../src/parts/compressor/index.ts';

/** A point of which only load and current are told. */
function pointWith(load: number, current: number): Pick<HermeticPoint, 'motor' | 'current'> {
  return { motor: { load, losses: 1, speed: 49, power: 100, current }, current };
}

const straight: TripSearch = {
  pointAt: (evaporating) => pointWith(1 + (evaporating - 260) / 100, 0.5 + (evaporating - 260) / 50),
  from: 250,
  to: 300,
  highestLoad: null,
  highestCurrent: null,
};
const stalls = () => new NoSolutionError('stalls', 'less load', 'motorStalls');

describe('known curves', () => {
  test('load 1 + (T − 260)/100 passes 1.2 at 280 K', () => {
    const { trip } = tripAt({ ...straight, highestLoad: 1.2 });
    expect(trip?.by).toBe('motorLoad');
    expect(trip?.evaporating).toBeCloseTo(280, 2);
  });

  test('current 0.5 + (T − 260)/50 passes 0.8 at 275 K, before the load passes 1.2', () => {
    const { trip } = tripAt({ ...straight, highestLoad: 1.2, highestCurrent: 0.8 });
    expect(trip?.by).toBe('current');
    expect(trip?.evaporating).toBeCloseTo(275, 2);
  });

  test('of two limits passed in one step the lower temperature counts', () => {
    // Load passes 1.15 at 275 K, current 0.81 at 275.5 K: one step of 2 K holds both.
    const { trip } = tripAt({ ...straight, highestLoad: 1.15, highestCurrent: 0.81 });
    expect(trip?.evaporating).toBeCloseTo(275, 2);
    expect(trip?.by).toBe('motorLoad');
  });

  test('a load that rises and falls again is met where it rises', () => {
    const hump = (evaporating: number) => pointWith(1.5 - ((evaporating - 275) / 25) ** 2, 0);
    const { trip } = tripAt({ ...straight, pointAt: hump, highestLoad: 1.34 });
    expect(trip?.evaporating).toBeCloseTo(265, 2);
  });

  test('without a limit, or with one that is not reached, nothing is found in what was searched', () => {
    expect(tripAt(straight)).toEqual({ trip: null, searchedUpTo: 300 });
    expect(tripAt({ ...straight, highestLoad: 2 })).toEqual({ trip: null, searchedUpTo: 300 });
  });

  test('what is too much from the start is said of the start', () => {
    expect(tripAt({ ...straight, highestLoad: 0.5 })).toMatchObject({ trip: { evaporating: 250, by: 'motorLoad' } });
  });

  test('a motor that stalls trips there, by halving', () => {
    const pointAt = (evaporating: number) => {
      if (evaporating > 283.3) throw stalls();
      return straight.pointAt(evaporating);
    };
    const { trip } = tripAt({ ...straight, pointAt });
    expect(trip?.by).toBe('stall');
    expect(Math.abs(trip!.evaporating - 283.3)).toBeLessThan(0.02);
    const loaded = tripAt({ ...straight, pointAt, highestLoad: 1.23 });
    expect(loaded.trip?.by).toBe('motorLoad');
    expect(Math.abs(loaded.trip!.evaporating - 283)).toBeLessThan(0.02);
  });

  test('the search ends where the model has no answer, and says so', () => {
    const pointAt = (evaporating: number) => {
      if (evaporating > 281) throw new OutOfModelError('pressure', evaporating, 'K', 250, 281);
      return straight.pointAt(evaporating);
    };
    expect(tripAt({ ...straight, pointAt, highestLoad: 1.5 })).toEqual({ trip: null, searchedUpTo: 280 });
  });

  test('a programming error is not taken for an answer', () => {
    const pointAt = () => {
      throw new TypeError('broken');
    };
    expect(() => tripAt({ ...straight, pointAt })).toThrow(TypeError);
  });

  test('a range that ends before it begins is refused', () => {
    expect(() => tripAt({ ...straight, to: 250 })).toThrow(InputError);
  });
});

describe('law: a freezer’s machine', () => {
  const fluid = refrigerant('R134a');
  const prior = machinePrior({ appliance: 'chestFreezer', madeFor: 'R134a', frequency: 50 });
  const supply = { frequency: 50, voltage: 230 };
  const numbers = Object.fromEntries(hermeticParameters.map((key) => [key, prior[key].likely]));
  const machine = { ...numbers, ratedSupply: supply } as unknown as HermeticCompressor;
  const { evaporating, condensing } = applicationLimits('low');
  const pointAt = (cold: number, warm: number) => {
    const pressure = saturationAtDewTemperature(fluid, cold).vapour.pressure;
    const dischargePressure = saturationAtDewTemperature(fluid, warm).vapour.pressure;
    const suction = stateAt(fluid, { temperature: cold + 8, pressure });
    return hermeticPoint(machine, fluid, { suction, dischargePressure, surroundings: 293.15, supply });
  };
  const hardest = pointAt(evaporating.highest, condensing.continuous).motor.load;
  const tripWhen = (warm: number) =>
    tripAt({
      pointAt: (cold) => pointAt(cold, warm),
      from: evaporating.lowest,
      to: warm - 5,
      highestLoad: hardest,
      highestCurrent: null,
    }).trip!;

  test('at the hardest point it was built for it trips there, by definition', () => {
    expect(tripWhen(condensing.continuous).evaporating).toBeCloseTo(evaporating.highest, 1);
  });

  test('condensing colder, it bears warmer evaporation, and its load there is the limit', () => {
    const trips = [318.15, 313.15, 308.15].map((warm) => [warm, tripWhen(warm).evaporating] as const);
    const cold = trips.map(([, each]) => each);
    expect(cold).toEqual([...cold].sort((one, other) => one - other));
    for (const [warm, each] of trips) expect(pointAt(each, warm).motor.load).toBeCloseTo(hardest, 3);
  });
});
