// The checks that refuse a broken materials file, naming the place.

import { describe, expect, test } from 'vitest';
import data from '../../../data/materials.json';
import { readMaterials } from '../../../src/matter/materials/index.ts';
import { DataError } from '../../../src/numerics/index.ts';

const broken = (change: (glass: Record<string, unknown>) => void) => {
  const copy = structuredClone(data);
  change(copy.materials.glass as unknown as Record<string, unknown>);
  return () => readMaterials(copy);
};

test('the file itself is accepted', () => {
  expect(readMaterials(data).length).toBe(Object.keys(data.materials).length);
});

describe('conductivities outside 0.01 to 450 W/(m K) are misprints', () => {
  test('too much, too little', () => {
    const tooMuch = broken((glass) => Object.assign(glass, { conductivity: [0.9, 1, 650, 'iso'] }));
    expect(tooMuch).toThrow(expect.objectContaining({ path: 'materials.glass.conductivity.2' }));
    const tooLittle = broken((glass) => Object.assign(glass, { conductivity: [0.001, 1, 1.1, 'iso'] }));
    expect(tooLittle).toThrow(expect.objectContaining({ path: 'materials.glass.conductivity.0' }));
  });

  // Cork tile, 0.065 W/(m K), stands in one widely copied open table as 65: some metal has that, no insulation does.
  test.each([
    ['as the likely value of the true range', [0.045, 65, 0.065, 'iso'], 1],
    ['as a range of its own', [60, 65, 70, 'iso'], 0],
  ])('cork of 65 is refused %s', (_, conductivity, place) => {
    const copy = structuredClone(data);
    Object.assign(copy.materials.corkMat, { conductivity });
    expect(() => readMaterials(copy)).toThrow(
      expect.objectContaining({ path: `materials.corkMat.conductivity.${place}`, code: 'brokenData' }),
    );
  });
});

test.each([
  ['low above likely', 'materials.glass.conductivity.1', { conductivity: [1.2, 1, 1.1, 'iso'] }],
  ['a source nobody knows', 'materials.glass.emissivity.3', { emissivity: [0.8, 0.8, 0.9, 'hearsay'] }],
  ['an emissivity above 1', 'materials.glass.emissivity.2', { emissivity: [0.8, 0.8, 1.1, 'iso'] }],
  ['a range without a source', 'materials.glass.emissivity', { emissivity: [0.8, 0.8, 0.9] }],
  ['a text for a number', 'materials.glass.density.0', { density: ['2500', 'iso'] }],
  ['a negative density', 'materials.glass.density.0', { density: [-2500, 'iso'] }],
  ['a value that is no list', 'materials.glass.specificHeat', { specificHeat: 750 }],
  ['an unknown key', 'materials.glass.colour', { colour: 'green' }],
  ['an unknown use', 'materials.glass.uses', { uses: ['door'] }],
  ['no use', 'materials.glass.uses', { uses: [] }],
  ['no label', 'materials.glass.label', { label: '' }],
])('%s is refused, naming %s', (_, path, change) => {
  const read = broken((glass) => Object.assign(glass, change));
  expect(read).toThrow(DataError);
  expect(read).toThrow(expect.objectContaining({ path }));
});

test('a sheet of one thickness, or thinner than the one before it, is refused', () => {
  const sheets = (points: unknown) => {
    const copy = structuredClone(data);
    Object.assign(copy.materials.polycarbonateTwinWall.sheets, { points });
    return () => readMaterials(copy);
  };
  const at = (thickness: number) => ({ thickness, transmittance: 3 });
  expect(sheets([at(0.01)])).toThrow(DataError);
  expect(sheets([at(0.01), at(0.006)])).toThrow(/points\.1\.thickness/);
});

test('no material at all is refused', () => {
  expect(() => readMaterials({ sources: {}, materials: {} })).toThrow(DataError);
  expect(() => readMaterials([])).toThrow(DataError);
});
