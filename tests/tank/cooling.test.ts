// How fast a tank cools without heat: against the closed form of a lumped heat capacity (a reference), against stepping the
// energy balance through time with the tank's own load, and laws.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fallTimeLinear, meanLoss, timeConstant, timesAlong, timeToFall } from '../../src/tank/cooling.ts';
import type { MeasuredTank } from '../../src/tank/index.ts';
import { type TankConditions, tankLoad } from '../../src/tank/index.ts';

const hours = 3600;
const capacity = 200 * 4182;

describe('a tank whose loss is linear in its temperature', () => {
  // Lumped heat capacity (Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, section 5.1; formula from memory of
  // the source), reckoned by hand: 200 kg at 4182 J/(kg K), 8 W/K, room 18 °C, start 26 °C.
  const lossAt = (temperature: number) => 8 * (temperature - 291.15);

  test('time constant 29.042 h', () => {
    expect(timeConstant(capacity, 8) / hours).toBeCloseTo(29.042, 3);
  });

  test('8.355 h to 24 °C, in closed form and by integration', () => {
    expect(fallTimeLinear(capacity, 8, 64, 2)! / hours).toBeCloseTo(8.355, 3);
    const [time] = timesAlong(capacity, lossAt, 299.15, [2]);
    expect(time! / hours).toBeCloseTo(8.355, 3);
  });

  test('seed 1: integration gives the closed form however near it comes to rest', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 40, noNaN: true }),
        fc.double({ min: 1, max: 25, noNaN: true }),
        fc.double({ min: 0.01, max: 0.999, noNaN: true }),
        (conductance, difference, share) => {
          const fall = difference * share;
          const room = 299.15 - difference;
          fc.pre(299.15 - fall >= 273.15);
          const [time] = timesAlong(capacity, (at) => conductance * (at - room), 299.15, [fall]);
          const closed = fallTimeLinear(capacity, conductance, conductance * difference, fall)!;
          expect(Math.abs(time! / closed - 1)).toBeLessThan(1e-5);
        },
      ),
      { seed: 1, numRuns: 300 },
    );
  });

  test('never falls to where it loses nothing, nor below', () => {
    expect(timesAlong(capacity, lossAt, 299.15, [7.9, 8, 9])).toEqual([expect.any(Number), null, null]);
    expect(fallTimeLinear(capacity, 8, 64, 8)).toBeNull();
    expect(fallTimeLinear(capacity, 8, -3, 1)).toBeNull();
  });

  test('is not followed into ice', () => {
    const arctic = (temperature: number) => 8 * (temperature - 250);
    expect(timesAlong(capacity, arctic, 276.15, [2.5, 3.5])).toEqual([expect.any(Number), null]);
  });
});

describe('a measured tank that also evaporates', () => {
  const tank: MeasuredTank = {
    kind: 'measured',
    energy: 38 * 3.6e6,
    duration: 7 * 86400,
    roomTemperature: 291.15,
    waterTemperature: 298.65,
    volume: 0.3,
    salinity: 0,
    evaporationShare: 0.35,
    pumpHeat: 9,
    lightHeat: 4,
  };
  const room: TankConditions = {
    waterTemperature: 298.65,
    roomTemperature: 291.15,
    roomRelativeHumidity: 0.5,
    atmosphericPressure: 99800,
  };

  test('integration agrees with stepping its energy balance through time', () => {
    const step = 20;
    const stored = tankLoad(tank, room).heatCapacity;
    const loss = (waterTemperature: number) => tankLoad(tank, { ...room, waterTemperature }).loss;
    let temperature = room.waterTemperature;
    let time = 0;
    while (temperature > room.waterTemperature - 2) {
      const middle = temperature - (loss(temperature) / stored) * (step / 2);
      temperature -= (loss(middle) / stored) * step;
      time += step;
    }
    // The last step went past the end by less than its own length.
    expect(Math.abs(timeToFall(tank, room, 2)! - time)).toBeLessThan(step);
  });

  test('longer falls take longer than in proportion, as the loss falls on the way', () => {
    const times = [1, 2, 3, 4].map((fall) => timeToFall(tank, room, fall)!);
    const rates = times.map((time, index) => time / (index + 1));
    for (const [index, rate] of rates.entries()) {
      if (index > 0) expect(rate).toBeGreaterThan(rates[index - 1]!);
    }
  });

  test('gains are off: of two tanks that lose the same, the one that pumps heat more cools as fast', () => {
    const moreFromPumps = { ...tank, pumpHeat: tank.pumpHeat + 20, energy: tank.energy - 20 * tank.duration };
    expect(tankLoad(moreFromPumps, room).load).toBeCloseTo(tankLoad(tank, room).load - 20, 9);
    expect(timeToFall(moreFromPumps, room, 3)).toBeCloseTo(timeToFall(tank, room, 3)!, 6);
  });

  test('a fall that is not above 0 is refused', () => {
    expect(() => timeToFall(tank, room, 0)).toThrow(expect.objectContaining({ path: 'fall' }));
  });
});

test('a loss that turns inside the stretch is no way down', () => {
  expect(meanLoss((at) => (at - 290) ** 2 - 0.01, 291, 289)).toBeNull();
});
