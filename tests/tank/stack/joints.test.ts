// Joints against the combined method of ISO 6946 worked by hand, and its limits.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { combinedResistance, stackLimits } from '../../../src/tank/stack/joints.ts';
import type { StackLayer } from '../../../src/tank/stack/layers.ts';
import { settlePanel } from '../../../src/tank/stack/panel.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { anyPanel, glass, panelOf } from './stacks.ts';

const board = (share: number, conductivity = 0.13): StackLayer => ({
  kind: 'solid',
  thickness: 0.05,
  conductivity: 0.029,
  bridge: { share, conductivity },
});

test('50 mm of 0.029 with 10 % of timber 0.13 between films of 0.13: 1.6428, 1.5388, together 1.5908 m² K/W', () => {
  const { upper, lower } = stackLimits([board(0.1)], [0.05 / 0.029], 0.26);
  expect(upper).toBeCloseTo(1.6428, 4);
  expect(lower).toBeCloseTo(1.5388, 4);
  expect(combinedResistance(upper, lower)).toBeCloseTo(1.5908, 4);
});

test('two jointed layers with their joints one behind the other: sections added up by hand', () => {
  const layers = [board(0.1), board(0.3)];
  const main = 0.05 / 0.029;
  const timber = 0.05 / 0.13;
  const { upper, lower } = stackLimits(layers, [main, main], 0.26);
  const sections = 0.1 / (0.26 + 2 * timber) + 0.2 / (0.26 + main + timber) + 0.7 / (0.26 + 2 * main);
  expect(deviation(upper, 1 / sections)).toBeLessThan(1e-12);
  expect(deviation(lower, 0.26 + 1 / (0.9 / main + 0.1 / timber) + 1 / (0.7 / main + 0.3 / timber))).toBeLessThan(
    1e-12,
  );
});

describe('in a panel', () => {
  test('its resistance is the mean of both limits at the films it settles at', () => {
    const state = settlePanel(panelOf({ stack: [glass, board(0.1)] }));
    const rest = state.waterFilmResistance + state.outer.resistance;
    const { upper, lower } = stackLimits([glass, board(0.1)], [0.01, 0.05 / 0.029], rest);
    expect(deviation(1 / state.transmittance, (upper + lower) / 2)).toBeLessThan(1e-9);
  });

  test('a joint of no share, and one of the same material, change nothing', () => {
    const plain = settlePanel(
      panelOf({ stack: [glass, { kind: 'solid', thickness: 0.05, conductivity: 0.029 }] }),
    ).heat;
    expect(settlePanel(panelOf({ stack: [glass, board(0)] })).heat).toBe(plain);
    expect(deviation(settlePanel(panelOf({ stack: [glass, board(0.4, 0.029)] })).heat, plain)).toBeLessThan(1e-9);
  });

  test('a wider joint of a better conductor never holds heat better, and a full one is that material (seed 52011)', () => {
    const shares = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(shares, (pair) => {
        const [less, more] = pair.toSorted((a, b) => a - b) as [number, number];
        const heat = (share: number) => settlePanel(panelOf({ stack: [glass, board(share)] })).heat;
        expect(heat(more)).toBeGreaterThanOrEqual(heat(less) * (1 - 1e-9));
      }),
      { seed: 52011, numRuns: 300 },
    );
    const timber = settlePanel(
      panelOf({ stack: [glass, { kind: 'solid', thickness: 0.05, conductivity: 0.13 }] }),
    ).heat;
    expect(deviation(settlePanel(panelOf({ stack: [glass, board(1)] })).heat, timber)).toBeLessThan(1e-9);
  });

  test('the upper limit is never below the lower (seed 52012)', () => {
    fc.assert(
      fc.property(anyPanel, ({ stack }) => {
        const resistances = stack.map((layer) => (layer.kind === 'solid' ? layer.thickness / layer.conductivity : 0.2));
        const { upper, lower } = stackLimits(stack, resistances, 0.17);
        expect(upper).toBeGreaterThanOrEqual(lower * (1 - 1e-12));
      }),
      { seed: 52012, numRuns: 500 },
    );
  });
});
