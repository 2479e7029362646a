// Layers of a named material, of a user's own, and of a bare resistance: what they carry and what is refused.

import { describe, expect, test } from 'vitest';
import {
  layerConductivity,
  material,
  materialLayer,
  materialNames,
  ownMaterialLayer,
} from '../../../src/matter/materials/index.ts';
import { InputError } from '../../../src/numerics/index.ts';

describe('a layer of a named material', () => {
  test('carries thickness, conductivity and the emissivity of its faces', () => {
    expect(materialLayer('glass', 0.01)).toEqual({
      thickness: 0.01,
      conductivity: material('glass').conductivity,
      emissivity: material('glass').emissivity,
    });
  });

  test('a solid keeps its conductivity whatever its thickness', () => {
    expect(layerConductivity('glass', 0.004)).toEqual(material('glass').conductivity);
    for (const name of materialNames) {
      if (material(name).sheets === undefined) {
        expect(layerConductivity(name, 0.03)).toEqual(material(name).conductivity);
      }
    }
  });

  test.each([0, -0.01, 6, Number.NaN, Number.POSITIVE_INFINITY])(
    'a thickness of %d m is refused with its place',
    (d) => {
      expect(() => materialLayer('glass', d, 'tank.load.wall')).toThrow(
        expect.objectContaining({ name: 'InputError', path: 'tank.load.wall.thickness', expected: '0.000001 to 5 m' }),
      );
      expect(() => layerConductivity('glass', d)).toThrow(InputError);
    },
  );
});

describe('twin-wall sheet', () => {
  test('gives back the transmittance it was tabulated with, and interpolates between', () => {
    for (const { thickness, transmittance } of material('polycarbonateTwinWall').sheets!.points) {
      const { likely } = layerConductivity('polycarbonateTwinWall', thickness);
      expect(1 / (thickness / likely + 0.17)).toBeCloseTo(transmittance, 10);
    }
    const { low, likely, high } = layerConductivity('polycarbonateTwinWall', 0.008);
    expect(1 / (0.008 / likely + 0.17)).toBeCloseTo(3.35, 10);
    expect(low).toBeLessThan(likely);
    expect(high).toBeGreaterThan(likely);
  });

  test('that is not made is refused', () => {
    expect(() => layerConductivity('polycarbonateTwinWall', 0.025)).toThrow(
      expect.objectContaining({ code: 'sheetThickness' }),
    );
  });
});

describe('a user’s own material', () => {
  test('keeps what was given; a face nobody described is as paint or wood', () => {
    const layer = ownMaterialLayer({ conductivity: 0.035, thickness: 0.02 });
    expect(layer.thickness / layer.conductivity.likely).toBeCloseTo(0.5714, 4);
    expect(layer.emissivity.likely).toBe(0.9);
    expect(ownMaterialLayer({ conductivity: 0.035, thickness: 0.02, emissivity: 0.05 }).emissivity.likely).toBe(0.05);
  });

  const good = { conductivity: 0.035, thickness: 0.02, emissivity: 0.9 };
  test.each([
    ['conductivity', 0, '0.01 to 450 W/(m K)'],
    ['conductivity', -0.035, '0.01 to 450 W/(m K)'],
    ['conductivity', 0.0035, '0.01 to 450 W/(m K)'],
    ['conductivity', 451, '0.01 to 450 W/(m K)'],
    ['conductivity', Number.NaN, '0.01 to 450 W/(m K)'],
    ['thickness', 0, '0.000001 to 5 m'],
    ['thickness', -0.02, '0.000001 to 5 m'],
    ['emissivity', 0, '0.01 to 1'],
    ['emissivity', -0.1, '0.01 to 1'],
    ['emissivity', 1.01, '0.01 to 1'],
  ])('%s %d is refused: %s', (key, value, expected) => {
    expect(() => ownMaterialLayer({ ...good, [key]: value }, 'tank.load.faces.1.outside.0')).toThrow(
      expect.objectContaining({ path: `tank.load.faces.1.outside.0.${key}`, received: value, expected }),
    );
  });

  test.each([0.01, 450])('conductivity %d W/(m K) is just accepted', (conductivity) => {
    expect(ownMaterialLayer({ ...good, conductivity }).conductivity.likely).toBe(conductivity);
  });
});
