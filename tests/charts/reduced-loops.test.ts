// Loops over one another on reduced axes: what the coordinates mean, that the critical point is 1, that every fluid has its
// own dash and its name, and that the table says the same as the picture.

import { describe, expect, test } from 'vitest';
import { makeReducedLoops, reducedLoopsChart } from '../../src/charts/index.ts';
import { textbookCycle } from '../../src/loop/index.ts';

const fluids = ['R134a', 'R600a', 'R290', 'R12', 'R22'];
const loops = makeReducedLoops(
  fluids.map((refrigerant) => ({
    refrigerant,
    points: textbookCycle({
      refrigerant,
      evaporating: 263.15,
      condensing: 318.15,
      superheat: 0,
      subcooling: 0,
      isentropicEfficiency: 0.7,
    }).points,
  })),
);

describe.each(loops.map((loop) => [loop.refrigerant, loop] as const))('%s', (_, loop) => {
  const at = (name: string) => loop.points.find((point) => point.name === name)!;

  test('dry vapour at the evaporating pressure is 1, and what leaves the valve shows its share of vapour', () => {
    expect(at('compressorInlet').x).toBeCloseTo(1, 9);
    const cycle = textbookCycle({
      refrigerant: loop.refrigerant,
      evaporating: 263.15,
      condensing: 318.15,
      superheat: 0,
      subcooling: 0,
      isentropicEfficiency: 0.7,
    });
    expect(at('evaporatorInlet').x).toBeCloseTo(cycle.points[4].quality!, 9);
  });

  test('the dome ends at the critical pressure and the loop stays below it', () => {
    expect(Math.max(...loop.dome.y)).toBeLessThanOrEqual(1);
    expect(Math.max(...loop.dome.y)).toBeGreaterThan(0.98);
    expect(Math.max(...loop.loop.y)).toBeCloseTo(at('compressorOutlet').y, 9);
  });
});

test('every fluid has a dash of its own, shared by its dome and its loop, and its name beside its discharge', () => {
  const chart = reducedLoopsChart(loops, 'metric');
  const dashOf = (label: string) => chart.series.find((series) => series.label === label)!.dash;
  expect(new Set(fluids.map(dashOf)).size).toBe(fluids.length);
  for (const fluid of fluids) expect(dashOf(`dome of ${fluid}`)).toBe(dashOf(fluid));
  expect(chart.notes.map(({ text }) => text).sort()).toEqual([...fluids].sort());
  const heights = chart.notes.map(({ y }) => Math.log10(y)).sort((a, b) => a - b);
  for (let index = 1; index < heights.length; index++) {
    expect(heights[index]! - heights[index - 1]!).toBeGreaterThan(0.089);
  }
});

test('table and view: the critical pressure of R134a is 40.6 bar', () => {
  // Tillner-Roth & Baehr 1994: 4.05928 MPa.
  expect(reducedLoopsChart(loops, 'metric').table.rows[0]!.slice(0, 2)).toEqual(['R134a', '40.59']);
  expect(reducedLoopsChart(loops, 'us').table.rows[0]![1]).toBe('588.7');
  expect(JSON.stringify(reducedLoopsChart(loops, 'us'))).not.toMatch(/NaN|undefined|null/);
});
