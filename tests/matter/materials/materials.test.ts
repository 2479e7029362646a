// The table of materials against published values (tests/reference/tank/materials.ts names each source), and its lists.

import { describe, expect, test } from 'vitest';
import {
  backgroundMaterialNames,
  bedMaterialNames,
  insulationNames,
  jointMaterialNames,
  lidMaterialNames,
  liningMaterialNames,
  material,
  materialNames,
  materialUses,
  pipeMaterialNames,
  standMaterialNames,
  wallMaterialNames,
} from '../../../src/matter/materials/index.ts';
import { publishedMaterials } from '../../reference/tank/materials.ts';

test.each(publishedMaterials.filter((row) => row.quantity === 'conductivity'))(
  '$name: $value W/(m K) of $source lies within its range',
  ({ name, value }) => {
    const { low, high } = material(name).conductivity;
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
  },
);

test.each(publishedMaterials.filter((row) => row.quantity !== 'conductivity'))(
  '$name: $quantity $value of $source',
  ({ name, quantity, value, within }) => {
    const own = material(name)[quantity as 'density' | 'specificHeat']!.value;
    expect(Math.abs(own - value)).toBeLessThanOrEqual(within ?? 0);
  },
);

describe('lists by use', () => {
  const lists = {
    wall: wallMaterialNames,
    lid: lidMaterialNames,
    insulation: insulationNames,
    lining: liningMaterialNames,
    stand: standMaterialNames,
    joint: jointMaterialNames,
    pipe: pipeMaterialNames,
    bed: bedMaterialNames,
    background: backgroundMaterialNames,
  };

  test('there is a list for every use, and each has members', () => {
    expect(Object.keys(lists)).toEqual([...materialUses]);
    for (const [use, names] of Object.entries(lists)) expect(names.length, use).toBeGreaterThan(2);
  });

  test('each lists just the materials of that use; together they name all', () => {
    expect(materialNames.length).toBeGreaterThanOrEqual(45);
    for (const use of materialUses) {
      expect(lists[use]).toEqual(materialNames.filter((name) => material(name).uses.includes(use)));
    }
    expect(new Set(Object.values(lists).flat()).size).toBe(materialNames.length);
  });

  test('a twin-wall sheet covers a tank and is no pane of it', () => {
    expect(lidMaterialNames).toContain('polycarbonateTwinWall');
    expect(wallMaterialNames).not.toContain('polycarbonateTwinWall');
  });

  // One widely copied open table lists cork tile as 65 W/(m K): a factor of 1000.
  test('what tanks are wrapped in insulates', () => {
    for (const name of insulationNames) expect(material(name).conductivity.high, name).toBeLessThan(0.1);
  });
});

test('every value names where it comes from in words, not by a key', () => {
  for (const name of materialNames) {
    const { conductivity, density, specificHeat, emissivity } = material(name);
    for (const value of [conductivity, density, specificHeat, emissivity]) {
      if (value !== undefined) expect(value.source, name).toMatch(/ /);
    }
  }
});

test('labels tell the materials apart', () => {
  expect(new Set(materialNames.map((name) => material(name).label)).size).toBe(materialNames.length);
});

test('only bright metal reflects heat rays', () => {
  for (const name of materialNames) {
    const { emissivity } = material(name);
    if (/foil|copper|stainless|aluminium|titanium/i.test(name))
      expect(emissivity.likely, name).toBeLessThanOrEqual(0.2);
    else expect(emissivity.low, name).toBeGreaterThanOrEqual(0.8);
  }
});

test('an unknown name is refused with the known ones', () => {
  expect(() => material('cardboard')).toThrow(
    expect.objectContaining({ code: 'unknownMaterial', received: 'cardboard' }),
  );
  expect(() => material('cardboard')).toThrow(/glass/);
});
