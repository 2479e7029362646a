// The materials file: values against EN ISO 10456:2007 table 3 and the ASHRAE Handbook (as read in public
// transcriptions), and the checks that refuse a broken file.

import { describe, expect, test } from 'vitest';
import data from '../../../data/materials.json';
import {
  insulationNames,
  layerConductivity,
  lidMaterialNames,
  material,
  materialNames,
  readMaterials,
  wallMaterialNames,
} from '../../../src/matter/materials/index.ts';
import { DataError, InputError } from '../../../src/numerics/index.ts';

describe('tabulated design conductivities', () => {
  // EN ISO 10456:2007 table 3, W/(m K).
  test.each([
    ['glass', 1.0],
    ['acrylic', 0.18],
    ['polycarbonate', 0.2],
    ['plywood', 0.13],
    ['concrete', 1.65],
    ['rigidPvc', 0.17],
    ['polyethylene', 0.5],
  ])('%s: %d W/(m K) lies in its range and is the likely value', (name, conductivity) => {
    expect(material(name).conductivity.likely).toBe(conductivity);
  });

  // ASHRAE Handbook Fundamentals, mid-temperature values, W/(m K).
  test.each([
    ['expandedPolystyrene', 0.0355],
    ['extrudedPolystyrene', 0.026],
    ['polyisocyanurate', 0.019],
    ['polyisocyanurate', 0.0235],
    ['plywood', 0.091],
  ])('%s: the handbook’s %d W/(m K) lies within the range', (name, conductivity) => {
    const { low, high } = material(name).conductivity;
    expect(conductivity).toBeGreaterThanOrEqual(low);
    expect(conductivity).toBeLessThanOrEqual(high);
  });
});

test('twin-wall sheet gives back the transmittance it was tabulated with, and interpolates between', () => {
  for (const { thickness, transmittance } of material('polycarbonateTwinWall').sheets!.points) {
    const { likely } = layerConductivity('polycarbonateTwinWall', thickness);
    expect(1 / (thickness / likely + 0.17)).toBeCloseTo(transmittance, 10);
  }
  const { low, likely, high } = layerConductivity('polycarbonateTwinWall', 0.008);
  expect(1 / (0.008 / likely + 0.17)).toBeCloseTo(3.35, 10);
  expect(low).toBeLessThan(likely);
  expect(high).toBeGreaterThan(likely);
});

test('a solid keeps its conductivity whatever its thickness', () => {
  expect(layerConductivity('glass', 0.004)).toEqual(material('glass').conductivity);
});

test('every material has a use and the lists together name all of them', () => {
  expect(materialNames.length).toBeGreaterThan(10);
  const listed = new Set([...wallMaterialNames, ...lidMaterialNames, ...insulationNames]);
  expect([...listed].sort()).toEqual([...materialNames].sort());
});

test('an unknown name is refused with the known ones; a sheet that is not made too', () => {
  expect(() => material('cardboard')).toThrow(
    expect.objectContaining({ code: 'unknownMaterial', received: 'cardboard' }),
  );
  expect(() => material('cardboard')).toThrow(/glass/);
  expect(() => layerConductivity('polycarbonateTwinWall', 0.025)).toThrow(
    expect.objectContaining({ code: 'sheetThickness' }),
  );
  expect(() => layerConductivity('glass', -0.01)).toThrow(InputError);
});

describe('a broken file', () => {
  const broken = (change: (glass: Record<string, object>) => void) => {
    const copy = structuredClone(data);
    change(copy.materials.glass as unknown as Record<string, object>);
    return () => readMaterials(copy);
  };

  test('conductivities outside 0.01 to 450 W/(m K) are misprints', () => {
    const tooMuch = broken((glass) => Object.assign(glass.conductivity!, { high: 650 }));
    expect(tooMuch).toThrow(expect.objectContaining({ path: 'materials.glass.conductivity.high' }));
    const tooLittle = broken((glass) => Object.assign(glass.conductivity!, { low: 0.001 }));
    expect(tooLittle).toThrow(expect.objectContaining({ path: 'materials.glass.conductivity.low' }));
  });

  test.each([
    [
      'low above likely',
      'materials.glass.conductivity.likely',
      { conductivity: { low: 1.2, likely: 1, high: 1.1, source: 'iso10456' } },
    ],
    [
      'a source nobody knows',
      'materials.glass.emissivity.source',
      { emissivity: { low: 0.8, likely: 0.8, high: 0.9, source: 'hearsay' } },
    ],
    ['a text for a number', 'materials.glass.density.value', { density: { value: '2500', source: 'iso10456' } }],
    ['an unknown key', 'materials.glass.colour', { colour: 'green' }],
    ['an unknown use', 'materials.glass.uses', { uses: ['door'] }],
    ['no label', 'materials.glass.label', { label: '' }],
  ])('%s is refused, naming %s', (_, path, change) => {
    const read = broken((glass) => Object.assign(glass, change));
    expect(read).toThrow(DataError);
    expect(read).toThrow(expect.objectContaining({ path }));
  });

  test('no material at all is refused', () => {
    expect(() => readMaterials({ sources: {}, materials: {} })).toThrow(DataError);
    expect(() => readMaterials([])).toThrow(DataError);
  });
});

// One widely copied open table lists cork as 65 W/(m K): a factor of 1000.
test('what tanks are wrapped in insulates', () => {
  for (const name of insulationNames) expect(material(name).conductivity.high, name).toBeLessThan(0.1);
});
