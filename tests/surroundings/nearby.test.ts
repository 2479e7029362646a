// Outdoor air, ground and the water main: the ground against its published formula, the months against the cosine they follow.

import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/numerics/index.ts';
import {
  groundTemperature,
  monthNames,
  type NearbyClimates,
  nearbyInMonth,
  nearbyInSpell,
  nearbyWorking,
  seasonalTemperature,
  surroundingsFormulas,
  yearlyMean,
} from '../../src/surroundings/index.ts';
import { expectTraced } from '../traced-steps.ts';

const nearby: NearbyClimates = {
  outdoors: { winter: 274.15, coldest: 263.15, summer: 292.15 },
  mains: { winter: 279.15, summer: 289.15 },
};
const day = 86_400;

describe('ground', () => {
  // Kusuda & Achenbach 1965, by hand: mean 10 °C, amplitude 12 K, 0.05 m²/day, coldest on day 35.
  it.each([
    [0, 35, -2.0],
    [1, 35, 2.7475],
    [2, 35, 6.46717],
    [2, 200, 12.22802],
  ])('at %d m on day %d stands at %d °C', (depth, date, celsius) => {
    const ours = groundTemperature(283.15, 12, depth, 0.05 / day, (date - 35) * day);
    expect(ours - 273.15).toBeCloseTo(celsius, 5);
  });

  // The same source: amplitude 5.23364 K and lag 48.204 days at 2 m.
  it('has its coldest day at 2 m 48.204 days later, 5.23364 K below the mean', () => {
    const coldest = groundTemperature(283.15, 12, 2, 0.05 / day, 48.204 * day);
    expect(283.15 - coldest).toBeCloseTo(5.23364, 4);
  });

  it('is the yearly mean far down', () => {
    expect(groundTemperature(283.15, 12, 60, 0.05 / day, 1e7)).toBeCloseTo(283.15, 8);
    expect(yearlyMean(274.15, 292.15)).toBeCloseTo(283.15, 12);
  });

  it('refuses ground above the surface and ground that conducts nothing', () => {
    expect(() => groundTemperature(283.15, 12, -1, 1e-6, 0)).toThrow(/ground\.depth/);
    expect(() => groundTemperature(283.15, 12, 1, 0, 0)).toThrow(/ground\.diffusivity/);
    expect(() => groundTemperature(283.15, 12, 1, 1e-6, Number.NaN)).toThrow(InputError);
  });
});

const months = (nearbyClimates: NearbyClimates) =>
  monthNames.map((month) => nearbyInMonth(nearbyClimates, month, 'january'));

describe('months around the house', () => {
  it('follow the cosine of an unheated place; the ground keeps the yearly mean', () => {
    for (const [index, month] of months(nearby).entries()) {
      const distance = Math.min(index, 12 - index);
      expect(month.outdoorTemperature).toBe(seasonalTemperature(274.15, 292.15, distance));
      expect(month.mainsTemperature).toBe(seasonalTemperature(279.15, 289.15, distance));
      expect(month.groundTemperature).toBeCloseTo(283.15, 12);
    }
    expect(months(nearby)[6]?.outdoorTemperature).toBeCloseTo(292.15, 12);
  });

  it('at a depth the ground lags: coldest in February or March, warmest in August or September', () => {
    const ground = { depth: 1, diffusivity: 0.05 / day };
    const temperatures = months({ ...nearby, ground }).map((month) => month.groundTemperature);
    const coldest = monthNames[temperatures.indexOf(Math.min(...temperatures))];
    const warmest = monthNames[temperatures.indexOf(Math.max(...temperatures))];
    expect(['february', 'march']).toContain(coldest);
    expect(['august', 'september']).toContain(warmest);
    expect(temperatures.reduce((sum, each) => sum + each, 0) / 12).toBeCloseTo(283.15, 1);
  });

  it('in the coldest spell: outdoors its lowest, ground and main as in the coldest month', () => {
    expect(nearbyInSpell(nearby, 'january')).toEqual({
      outdoorTemperature: 263.15,
      groundTemperature: 283.15,
      mainsTemperature: 279.15,
    });
  });

  it('name the temperature that is impossible', () => {
    const outdoors = { winter: 274, coldest: -3, summer: 290 };
    expect(() => nearbyInMonth({ ...nearby, outdoors }, 'may', 'january')).toThrow(/place\.outdoors\.coldest/);
    expect(() => nearbyInSpell({ ...nearby, mains: { winter: 0, summer: 280 } }, 'january')).toThrow(
      /place\.mains\.winter/,
    );
  });

  it('show how they were found', () => {
    const origins = {
      outdoorWinter: 'given.outdoorWinter',
      outdoorSummer: 'given.outdoorSummer',
      mainsWinter: 'given.mainsWinter',
      mainsSummer: 'given.mainsSummer',
    };
    for (const [index, month] of months(nearby).entries()) {
      const distance = Math.min(index, 12 - index);
      const steps = nearbyWorking(nearby, { ...month, distance }, origins, 'given.coldestMonth', 'm');
      const values = expectTraced(steps, surroundingsFormulas, (origin) => origin.startsWith('given.'));
      expect(values.get('m.outdoorTemperature')).toBe(month.outdoorTemperature);
      expect(values.get('m.groundTemperature')).toBe(month.groundTemperature);
      expect(values.get('m.mainsTemperature')).toBe(month.mainsTemperature);
    }
  });
});
