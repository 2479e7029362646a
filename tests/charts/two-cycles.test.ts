// Two cycles in one picture: told apart by letter, dash and weight, on one zero where the refrigerant is one, each on its own
// where they differ, and both in one table.

import { describe, expect, test } from 'vitest';
import { cyclesChart, type Diagram, isobarsFor, isothermsFor, makeDiagram } from '../../src/charts/index.ts';
import type { ChartSpecification } from '../../src/charts/specification.ts';
import { type TextbookCycleRequest, textbookCycle } from '../../src/loop/index.ts';

const base = {
  refrigerant: 'R134a',
  evaporating: 263.15,
  condensing: 313.15,
  superheat: 5,
  subcooling: 3,
  isentropicEfficiency: 0.7,
};

function diagram(others: Partial<TextbookCycleRequest> = {}): Diagram {
  const request = { ...base, ...others };
  return makeDiagram({
    refrigerant: request.refrigerant,
    points: textbookCycle(request).points,
    levels: [],
    limits: [],
    isotherms: isothermsFor('metric'),
    isobars: isobarsFor('metric'),
    ...(others.referenceState === undefined ? {} : { referenceState: others.referenceState }),
  });
}

const planes = ['pressureEnthalpy', 'temperatureEntropy'] as const;
const notesOf = (chart: ChartSpecification, letter: string) =>
  chart.notes.filter(({ text }) => text.startsWith(letter) && !text.includes(' '));

describe.each(planes)('%s', (plane) => {
  test('one cycle is the picture of that cycle, with the exchanger in it', () => {
    const chart = cyclesChart([diagram({ heatExchangerEffectiveness: 0.6 })], plane, 'metric');
    expect(chart.notes.map(({ text }) => text).sort()).toEqual(['1', '2', '2s', '3', '3′', '4', '4′']);
    const key = chart.series.filter(({ inLegend }) => inLegend).map(({ label }) => label);
    expect(key).toEqual(['compression', 'condensation', 'heat exchanger', 'expansion', 'evaporation']);
    expect(chart.description).toContain('3′');
    expect(chart.table.rows.map(([title]) => title!.split(' ')[0])).toEqual(['1', '2s', '2', '3', '3′', '4', '4′']);
  });

  test('two of one refrigerant share dome and zero; B keeps its distance from A whatever its own zero', () => {
    const a = diagram();
    const charts = (['iir', 'ashrae'] as const).map((referenceState) =>
      cyclesChart([a, diagram({ evaporating: 258.15, referenceState })], plane, 'metric'),
    );
    const [first, second] = charts.map((chart) => notesOf(chart, 'B'));
    for (const [index, note] of first!.entries()) {
      expect(second![index]!.x).toBeCloseTo(note.x, 9);
      expect(second![index]!.y).toBeCloseTo(note.y, 9);
    }
    expect(charts[0]!.series.filter(({ label }) => label === 'boiling liquid')).toHaveLength(1);
    expect(charts[1]!.table.rows).toEqual(charts[0]!.table.rows);
    expect(charts[1]!.description).toContain('share one dome');
  });

  test('two refrigerants: both domes, no lines inside them, and the zeros are told', () => {
    const chart = cyclesChart([diagram(), diagram({ refrigerant: 'R290', referenceState: 'ashrae' })], plane, 'us');
    const background = chart.series.filter(({ silent }) => silent);
    expect(background.map(({ label }) => label)).toEqual([
      'boiling liquid',
      'dry vapour',
      'boiling liquid',
      'dry vapour',
    ]);
    expect(background.map(({ dash }) => dash)).toEqual(['solid', 'solid', 'dash', 'dash']);
    expect(chart.notes.map(({ text }) => text)).toEqual(expect.arrayContaining(['A R134a', 'B R290']));
    for (const words of [chart.description, chart.table.caption]) {
      expect(words).toContain('zero of its own');
      expect(words).toMatch(/−40\s°F/);
    }
  });

  test('A is whole and B broken and thinner; each process stands in the key once', () => {
    const chart = cyclesChart([diagram(), diagram({ heatExchangerEffectiveness: 0.5 })], plane, 'metric');
    const loops = chart.series.filter(({ kind, silent }) => kind === 'line' && !silent);
    const dashes = loops.map(({ dash, width }) => `${dash} ${width}`);
    expect(dashes).toEqual([...Array(4).fill('solid 3'), ...Array(6).fill('dash 2')]);
    const key = chart.series.filter(({ inLegend }) => inLegend).map(({ label }) => label);
    expect(key).toEqual(['compression', 'condensation', 'expansion', 'evaporation', 'heat exchanger']);
    expect(loops.flatMap(({ hover }) => hover ?? []).filter((words) => words.startsWith('<b>B, '))).not.toHaveLength(0);
  });

  test('states of both that lie on one another have their numbers on different sides', () => {
    const chart = cyclesChart([diagram(), diagram({ isentropicEfficiency: 0.69 })], plane, 'metric');
    for (const note of notesOf(chart, 'A')) {
      const twin = notesOf(chart, 'B').find(({ text }) => text.slice(1) === note.text.slice(1))!;
      expect(twin.place, note.text).not.toBe(note.place);
    }
  });

  test('every number is finite, inside the picture where it is a state, and each row of the table whole', () => {
    const chart = cyclesChart([diagram(), diagram({ refrigerant: 'R600a' })], plane, 'us');
    for (const { x, y } of chart.notes) {
      expect(x).toBeGreaterThan(chart.x.range![0]);
      expect(x).toBeLessThan(chart.x.range![1]);
      expect(y).toBeGreaterThan(chart.y.range![0]);
      expect(y).toBeLessThan(chart.y.range![1]);
    }
    for (const series of chart.series) for (const y of series.y) expect(Number.isFinite(y)).toBe(true);
    expect(chart.table.rows).toHaveLength(10);
    for (const row of chart.table.rows) expect(row).toHaveLength(chart.table.columns.length);
    expect(chart.table.rows[0]![0]).toBe('A, R134a');
    expect(chart.table.rows[9]![0]).toBe('B, R600a');
  });
});
