// Chart specifications say what the results say: points where the table has them, units of the view, levels and limits.

import { describe, expect, test } from 'vitest';
import { answerCycle } from '../../src/app/worker/cycle.ts';
import { pressureEnthalpyChart, temperatureEntropyChart } from '../../src/charts/loops/property-diagrams.ts';
import { monthsChart } from '../../src/charts/months.ts';
import type { ChartSpecification } from '../../src/charts/specification.ts';
import { answerTo, diagramOf, exampleFiles } from '../app/answers.ts';

function everyNumber(chart: ChartSpecification): number[] {
  return [
    ...chart.series.flatMap((series) => [...series.x.filter((x) => typeof x === 'number'), ...series.y]),
    ...chart.levels.map((level) => level.y),
    ...chart.notes.flatMap((note) => [note.x, note.y]),
    ...chart.limits.flatMap((limit) => [limit.from, limit.to]),
  ];
}

describe.each(exampleFiles)('pictures of %s', (file) => {
  const answer = answerTo(file);
  const diagram = diagramOf(answer);
  const charts = {
    'p-h': pressureEnthalpyChart(diagram, 'metric'),
    'T-s': temperatureEntropyChart(diagram, 'metric'),
    'p-h, US': pressureEnthalpyChart(diagram, 'us'),
    months: monthsChart(answer.assessment.year, 'metric'),
  };

  test.each(Object.entries(charts))(
    '%s holds finite numbers only, and a table with as many cells as columns',
    (_name, chart) => {
      const numbers = everyNumber(chart);
      expect(numbers.length).toBeGreaterThan(20);
      for (const number of numbers) expect(Number.isFinite(number)).toBe(true);
      expect(chart.table.rows.length).toBeGreaterThan(3);
      for (const row of chart.table.rows) expect(row.length).toBe(chart.table.columns.length);
      expect(chart.description.length).toBeGreaterThan(40);
    },
  );

  test('p-h: the loop is drawn between the pressures of the Assessment', () => {
    const { operating } = answer.assessment;
    const loop = charts['p-h'].series.filter((series) => series.inLegend);
    expect(loop.map((series) => series.label)).toEqual([
      'compression',
      'heat into the water',
      'expansion',
      'heat from the source',
    ]);
    const ys = loop.flatMap((series) => [...series.y]);
    expect(Math.min(...ys)).toBeCloseTo(operating.evaporatingPressure.likely / 1e5, 6);
    expect(Math.max(...ys)).toBeCloseTo(operating.condensingPressure.likely / 1e5, 6);
    for (const point of operating.points) {
      const note = charts['p-h'].notes.find((candidate) => Math.abs(candidate.x - point.enthalpy / 1000) < 1e-9);
      expect(note, point.name).toBeDefined();
    }
  });

  test('the loop closes', () => {
    const loop = charts['T-s'].series.filter((series) => series.inLegend);
    const first = loop[0];
    const last = loop.at(-1);
    expect(last?.x.at(-1)).toBeCloseTo(Number(first?.x[0]), 9);
    expect(last?.y.at(-1)).toBeCloseTo(Number(first?.y[0]), 9);
  });

  test('levels of source and water lie between evaporating and condensing, and the limit is hatched upwards', () => {
    const chart = charts['T-s'];
    const { operating } = answer.assessment;
    const celsius = [operating.sourceTemperature, operating.waterTemperature].map((kelvin) => kelvin - 273.15);
    expect(chart.levels.map((level) => level.y)).toEqual(celsius.map((value) => expect.closeTo(value, 9)));
    expect(chart.limits[0]?.from).toBeCloseTo(60, 9);
    expect(chart.limits[0]?.to).toBe(chart.y.range?.[1]);
  });

  test('line families are greys with a dash of their own each', () => {
    const families = charts['p-h'].series.filter((series) => series.silent);
    expect(new Set(families.map((series) => series.label)).size).toBe(5);
    for (const family of families) expect(['neutral', 'faint']).toContain(family.ink);
    const broken = new Map(
      families.filter((family) => family.ink === 'faint').map((family) => [family.label, family.dash]),
    );
    expect(new Set(broken.values()).size).toBe(broken.size);
  });

  test('months: the energies of the chart are those of the year', () => {
    const needed = charts.months.series.find((series) => series.label === 'heat the tank needs');
    const total = (needed?.y ?? []).reduce((sum, value) => sum + value, 0);
    const year = answer.assessment.year.reduce((sum, month) => sum + month.heatNeeded, 0);
    expect(total).toBeCloseTo(year / 3.6e6, 6);
  });
});

test('US view: the same points in psi and BTU/lb', () => {
  const { diagram } = answerCycle('cycle', {
    request: {
      refrigerant: 'R134a',
      evaporating: 273.15,
      condensing: 313.15,
      superheat: 5,
      subcooling: 3,
      isentropicEfficiency: 0.7,
    },
    isotherms: [],
    isobars: [],
  });
  const metric = pressureEnthalpyChart(diagram, 'metric');
  const us = pressureEnthalpyChart(diagram, 'us');
  expect(us.y.unit).toContain('psi');
  // 1 bar = 14.5038 psi and 1 kJ/kg = 0.429923 BTU/lb: NIST Special Publication 811, appendix B.8.
  for (const [index, note] of metric.notes.entries()) {
    expect((us.notes[index]?.y ?? 0) / note.y).toBeCloseTo(14.5038, 3);
    expect((us.notes[index]?.x ?? 0) / note.x).toBeCloseTo(0.429923, 5);
  }
});
