// Layers of water against values of an open heat-transfer library for the same correlations, against other correlations, and
// against water that stands still.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settlePanel } from '../../../src/tank/stack/panel.ts';
import {
  nusseltFromBelowHollands1984,
  nusseltUprightThess2010,
  waterLayerNusselt,
  waterLayerResistance,
  waterOfLayer,
} from '../../../src/tank/stack/water-gap.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { glass, kelvin, panelOf } from './stacks.ts';

describe('correlations', () => {
  // Values printed in the documentation of the open library ht 1.x, Nu_Nusselt_vertical_Thess, Pr 0.7, Gr 3.21e6.
  test('upright, Thess 2010: 6.11259 where turbulent, 28.7933 with height a tenth of the thickness', () => {
    const rayleigh = 0.7 * 3.21e6;
    expect(deviation(nusseltUprightThess2010(rayleigh, 0.7, 1e6), 6.112587569602785)).toBeLessThan(1e-12);
    expect(deviation(nusseltUprightThess2010(rayleigh, 0.7, 0.1), 28.79328626041646)).toBeLessThan(1e-12);
  });

  // The same library, Nu_Nusselt_Rayleigh_Hollands, Pr 5.54, Gr 3.21e8: 69.02669 with 5803 for 5830.
  test('lying, Hollands 1984: 69.0267 but for the constant 5830', () => {
    const rayleigh = 5.54 * 3.21e8;
    const ours = nusseltFromBelowHollands1984(rayleigh, 5.54);
    const withTheirs = ours + Math.cbrt(rayleigh / 5803) - Math.cbrt(rayleigh / 5830);
    expect(deviation(withTheirs, 69.02668649510164)).toBeLessThan(1e-12);
    expect(deviation(ours, 69.02668649510164)).toBeLessThan(0.0016);
  });

  // MacGregor & Emery 1969: 0.42 Ra^0.25 Pr^0.012 (H/d)^−0.3, H/d 10 to 40, Ra 1e4 to 1e7 (constants from memory of textbooks).
  test('upright: within 20 % of MacGregor & Emery over their range', () => {
    for (const slimness of [10, 20, 40]) {
      for (const rayleigh of [3e4, 1e5, 1e6]) {
        const other = 0.42 * rayleigh ** 0.25 * 6 ** 0.012 * slimness ** -0.3;
        expect(deviation(nusseltUprightThess2010(rayleigh, 6, slimness), other)).toBeLessThan(0.21);
      }
    }
  });

  // Globe & Dropkin 1959: 0.069 Ra^(1/3) Pr^0.074, Ra 3e5 to 7e9 (constants from memory of textbooks).
  // Layers in tanks stay below 1e7; at 1e8 Hollands lies 21 % below, at 1e9 27 %.
  test('lying: within 15 % of Globe & Dropkin up to Ra 1e7', () => {
    for (const rayleigh of [3e5, 1e6, 1e7]) {
      const other = 0.069 * Math.cbrt(rayleigh) * 6 ** 0.074;
      expect(deviation(nusseltFromBelowHollands1984(rayleigh, 6), other)).toBeLessThan(0.15);
    }
  });
});

describe('water in a layer', () => {
  // Fresh water at 26 °C from handbooks: Pr 5.98 at 26 °C; k 0.608.
  test('Prandtl number and conductivity as in handbooks', () => {
    const water = waterOfLayer(kelvin(26));
    expect(deviation(water.prandtl, 5.98)).toBeLessThan(0.015);
    expect(deviation(water.conductivity, 0.608)).toBeLessThan(0.01);
  });

  test('never resists more than standing water, and more difference never makes it stand stiller (seed 52021)', () => {
    const difference = fc.double({ min: 0, max: 20, noNaN: true });
    const flow = fc.constantFrom('up' as const, 'horizontal' as const, 'down' as const);
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        between(274, 318),
        between(0.001, 0.2),
        between(0.1, 1),
        flow,
        difference,
        (t, d, height, way, dT) => {
          const water = waterOfLayer(t);
          const nusselt = waterLayerNusselt(water, d, height, way, dT);
          expect(nusselt).toBeGreaterThanOrEqual(1);
          expect(waterLayerNusselt(water, d, height, way, dT + 0.5)).toBeGreaterThanOrEqual(nusselt);
          expect(waterLayerResistance(d, water.conductivity, nusselt)).toBeLessThanOrEqual(d / water.conductivity);
        },
      ),
      { seed: 52021, numRuns: 500 },
    );
  });

  test('lies still below a warm plate, and turns over above one; near 0 °C the other way round', () => {
    const warm = waterOfLayer(kelvin(26));
    expect(waterLayerNusselt(warm, 0.03, 0.5, 'down', 2)).toBe(1);
    expect(waterLayerNusselt(warm, 0.03, 0.5, 'up', 2)).toBeGreaterThan(3);
    // Water is densest at 4 °C, by the fit of its density at 1.7 °C.
    const cold = waterOfLayer(kelvin(0.5));
    expect(waterLayerNusselt(cold, 0.03, 0.5, 'up', 2)).toBe(1);
    expect(waterLayerNusselt(cold, 0.03, 0.5, 'down', 2)).toBeGreaterThan(1);
  });

  test('behind a background of 30 mm foam a few hundredths of a m² K/W at most; a pane alone loses several times as much', () => {
    const foam = { kind: 'solid', thickness: 0.03, conductivity: 0.035 } as const;
    const behind = settlePanel(panelOf({ stack: [foam, { kind: 'waterGap', thickness: 0.03 }, glass], height: 0.5 }));
    const gap = behind.layers[1]!;
    expect(gap.resistance).toBeGreaterThan(0.005);
    expect(gap.resistance).toBeLessThan(0.03 / 0.6);
    expect(behind.heat).toBeLessThan(settlePanel(panelOf()).heat / 4);
  });
});
