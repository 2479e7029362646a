// What the pictures of a loop are made of, for a blend and for the widest dome: the levels of source and water at the pressures
// that meet them, isotherms that glide, and line families that a picture can bear.

import { expect, test } from 'vitest';
import { isobarsFor, isothermsFor, makeDiagram } from '../../src/charts/index.ts';
import { linesWithin } from '../../src/charts/loops/families.ts';
import { textbookCycle } from '../../src/loop/index.ts';
import { refrigerant, saturationAtTemperature } from '../../src/matter/refrigerants/index.ts';

function diagramOf(name: string, evaporating: number) {
  const conditions = { evaporating, condensing: 318.15, superheat: 5, subcooling: 5, isentropicEfficiency: 0.6 };
  const { points } = textbookCycle({ refrigerant: name, ...conditions });
  return makeDiagram({
    refrigerant: name,
    points,
    levels: [
      { name: 'source', temperature: 285.15 },
      { name: 'water', temperature: 299.15 },
    ],
    limits: [{ label: 'limit', temperature: 333.15, beyond: 'above' }],
    isotherms: isothermsFor('metric'),
    isobars: isobarsFor('metric'),
  });
}

test('a blend meets the source with its dew line and the water with its bubble line; limits are dew temperatures', () => {
  const fluid = refrigerant('R407C');
  const { levels, limits } = diagramOf('R407C', 263.15);
  expect(levels.map(({ pressure }) => pressure)).toEqual([
    saturationAtTemperature(fluid, 285.15).vapour.pressure,
    saturationAtTemperature(fluid, 299.15).liquid.pressure,
  ]);
  expect(limits[0]!.pressure).toBe(saturationAtTemperature(fluid, 333.15).vapour.pressure);
});

test('through the dome of a blend an isotherm falls in pressure and an isobar rises in temperature', () => {
  const { pressureEnthalpy, temperatureEntropy } = diagramOf('R407C', 263.15);
  const fluid = refrigerant('R407C');
  const isotherm = pressureEnthalpy.lines.find((line) => line.kind === 'isotherm' && line.value === 293.15)!;
  const { liquid, vapour } = saturationAtTemperature(fluid, 293.15);
  const inside = isotherm.y.filter((pressure) => pressure < liquid.pressure && pressure > vapour.pressure);
  expect(inside.length).toBeGreaterThan(5);
  expect(inside).toEqual([...inside].sort((a, b) => b - a));
  const isobar = temperatureEntropy.lines.find((line) => line.kind === 'isobar' && line.value === 1e6)!;
  expect(isobar.y).toEqual([...isobar.y].sort((a, b) => a - b));
});

test('water: lines up to its critical point and down to its pressures, no more of a family than a picture bears', () => {
  const { pressureEnthalpy, temperatureEntropy } = diagramOf('R718', 283.15);
  const values = (lines: typeof pressureEnthalpy.lines, kind: string) =>
    lines.filter((line) => line.kind === kind).map((line) => line.value);
  const isotherms = values(pressureEnthalpy.lines, 'isotherm');
  const isobars = values(temperatureEntropy.lines, 'isobar');
  expect(Math.max(...isotherms)).toBeGreaterThan(600);
  expect(Math.min(...isobars)).toBeLessThan(2e3);
  for (const family of [isotherms, isobars]) expect(family.length).toBeLessThanOrEqual(13);
});

test('too many lines are thinned evenly, few are left as they are', () => {
  const many = Array.from({ length: 40 }, (_, index) => index);
  expect(linesWithin(many, 0, 39)).toEqual([0, 4, 8, 12, 16, 20, 24, 28, 32, 36]);
  expect(linesWithin(many, 10, 15)).toEqual([10, 11, 12, 13, 14, 15]);
});
