// Sealed air layers against ISO 6946 (2007 annex B, 2017 annex D; constants read in a public copy, the table from memory).

import { describe, expect, test } from 'vitest';
import {
  airLayerConvection,
  airLayerRadiation,
  airLayerResistance,
  narrowAirLayerRadiation,
} from '../../../src/tank/stack/air-gap.ts';
import type { HeatFlow } from '../../../src/tank/stack/films.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { airLayerTable, foilLayerTable } from '../../reference/tank/published.ts';
import { kelvin } from './stacks.ts';

const flows: readonly HeatFlow[] = ['up', 'horizontal', 'down'];

test('the table has every thickness for every direction', () => {
  for (const flow of flows) expect(airLayerTable.filter((row) => row[1] === flow)).toHaveLength(8);
});

test.each(airLayerTable)('sealed layer of %d mm, heat flow %s: %d m² K/W in the table', (thickness, flow, printed) => {
  const ours = airLayerResistance(thickness / 1000, flow, 0.9, 0.9, kelvin(10));
  expect(Math.abs(ours - printed)).toBeLessThanOrEqual(0.0051);
});

test.each(foilLayerTable)('foil-faced layer of %d mm, heat flow %s: %d m² K/W', (thickness, flow, expected) => {
  const ours = airLayerResistance(thickness / 1000, flow, 0.05, 0.9, kelvin(10));
  expect(Math.abs(ours - expected)).toBeLessThanOrEqual(0.00051);
  expect(airLayerResistance(thickness / 1000, flow, 0.9, 0.05, kelvin(10))).toBeCloseTo(ours, 12);
});

describe('more than 5 K across', () => {
  // The second formulas of the annex, worked by hand at 10 K: 0.73 · 10^(1/3), 1.14 · 10^(1/3), 0.09 · 10^0.187 · 0.05^−0.44.
  test.each([
    ['horizontal', 1.5727],
    ['up', 2.456],
    ['down', 0.5172],
  ] as const)('heat flow %s, 50 mm, 10 K: %d W/(m² K)', (flow, expected) => {
    expect(deviation(airLayerConvection(0.05, flow, 10), expected)).toBeLessThan(1e-3);
  });

  // As printed the annex changes formulas at 5 K, with a step.
  const printed = (flow: HeatFlow, thickness: number, difference: number) => {
    const low = { up: 1.95, horizontal: 1.25, down: 0.12 * thickness ** -0.44 }[flow];
    const cube = Math.cbrt(difference);
    const high = { up: 1.14 * cube, horizontal: 0.73 * cube, down: 0.09 * difference ** 0.187 * thickness ** -0.44 }[
      flow
    ];
    return Math.max(difference <= 5 ? low : high, 0.025 / thickness);
  };

  test.each(flows)('heat flow %s: the standard but for its step at 5 K, never less, and without a step', (flow) => {
    for (let difference = 0; difference < 30; difference += 0.01) {
      for (const thickness of [0.005, 0.02, 0.1]) {
        const ours = airLayerConvection(thickness, flow, difference);
        const isAtTheStep = difference > 4.65 && difference < 5.03;
        expect(deviation(ours, printed(flow, thickness, difference))).toBeLessThan(isAtTheStep ? 0.0135 : 1e-12);
        const next = airLayerConvection(thickness, flow, difference + 1e-9);
        expect(next).toBeGreaterThanOrEqual(ours);
        // From standing air to the first bit of difference nothing jumps.
        expect(next - ours).toBeLessThan(1e-8);
      }
    }
  });
});

describe('a narrow layer', () => {
  test('as deep as wide, 0.9 on both faces, 10 °C: 3.146 W/(m² K) by hand', () => {
    // 5.1493 / (2/0.9 − 2 + 2/(1 + √2 − 1)) = 5.1493 / 1.63643
    expect(narrowAirLayerRadiation(0.9, 0.9, kelvin(10), 0.05, 0.05)).toBeCloseTo(3.1465, 3);
  });

  test('a very wide one is the wide layer', () => {
    const wide = airLayerRadiation(0.9, 0.3, kelvin(15));
    expect(deviation(narrowAirLayerRadiation(0.9, 0.3, kelvin(15), 0.02, 2000), wide)).toBeLessThan(1e-5);
  });

  test('resists more than a wide one; from ten thicknesses on the width does not matter', () => {
    const of = (breadth?: number) => airLayerResistance(0.02, 'horizontal', 0.9, 0.9, kelvin(15), 3, breadth);
    expect(of(0.02)).toBeGreaterThan(of(0.05));
    expect(of(0.05)).toBeGreaterThan(of(0.199));
    expect(of(0.199)).toBeGreaterThan(of(0.2));
    expect(of(0.2)).toBe(of());
  });
});
