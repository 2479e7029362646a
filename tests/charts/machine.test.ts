// The machine over the evaporating temperature: what is drawn is what the study says, in both views, and the table says the same.

import { describe, expect, test } from 'vitest';
import {
  chartSvg,
  type Drawn,
  machineMapChart,
  mapLimitTable,
  nearestFamily,
  sayMachineMap,
  wordsOnChart,
} from '../../src/charts/index.ts';
import { toView } from '../../src/quantities/index.ts';
import { inventedMachine, valuesAt } from './invented-machine.ts';
import { readSvg } from './svg-reading.ts';

const needed = { low: 300, likely: 400, high: 500 };
const study = inventedMachine;

function chart(of: Drawn, chosen = 1, view: 'metric' | 'us' = 'metric', load = needed) {
  return machineMapChart(study, { of, chosen, needed: load, view });
}

describe.each(['metric', 'us'] as const)('%s', (view) => {
  test.each([
    ['heat', 'power'],
    ['power', 'electricPower'],
    ['cop', 'ratio'],
  ] as const)(
    'every point of %s is drawn on its line, once at each end of a piece, and told in the table',
    (of, quantity) => {
      const { series, table, y } = chart(of, 1, view);
      for (const [column, { condensing, points }] of study.map.entries()) {
        const lines = series.filter(
          ({ kind, label }) => kind === 'line' && label === `${series.filter(isLine)[2 * column]!.label}`,
        );
        const drawn = new Map(lines.flatMap((line) => line.x.map((x, index) => [Number(x), line.y[index]!] as const)));
        expect(drawn.size).toBe(points.length);
        for (const [row, { evaporating, values }] of points.entries()) {
          const x = toView(evaporating, 'temperature', view);
          expect(drawn.get(x)).toBeCloseTo(toView(values![of].likely, quantity, view), 9);
          expect(drawn.get(x)).toBeLessThan(y.range![1]);
          expect(table.rows[row]![column + 1]).toMatch(/\d.*\(.* to .*\)/);
        }
        expect(table.columns[column + 1]!.label).toContain(String(Math.round(toView(condensing, 'temperature', view))));
      }
    },
  );

  test('the range is that of the chosen line and encloses it', () => {
    const { series } = chart('heat', 2, view);
    const range = series.find(({ kind }) => kind === 'range')!;
    const count = study.map[2]!.points.length;
    const [low, high] = [range.y.slice(0, count), range.y.slice(count).toReversed()];
    for (const [index, { values }] of study.map[2]!.points.entries()) {
      expect(low[index]).toBeCloseTo(toView(values!.heat.low, 'power', view), 9);
      expect(high[index]).toBeCloseTo(toView(values!.heat.high, 'power', view), 9);
    }
    expect(range.x.slice(0, count)).toEqual(range.x.slice(count).toReversed());
  });

  test.each([0, 1, 2])('legible as a still picture, line %i chosen', (chosen) => {
    for (const of of ['heat', 'power', 'cop'] as const) {
      const drawn = chart(of, chosen, view);
      const svg = chartSvg(drawn, { width: 720, height: 460 });
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      const texts = readSvg(svg).words.map(({ text }) => text);
      for (const { text } of drawn.notes) expect(texts).toContain(text);
      for (const { label } of drawn.limits) expect(texts).toContain(label);
      // Each condensing temperature stands on its line.
      for (const { written } of drawn.series) if (written !== undefined) expect(texts).toContain(written.text);
    }
  });
});

function isLine({ kind, width }: { readonly kind: string; readonly width?: number }): boolean {
  return kind === 'line' && width !== 2;
}

test('a line is thick up to the end of its data and thin beyond', () => {
  const lines = chart('heat').series.filter(({ label, kind }) => kind === 'line' && label.startsWith('30'));
  expect(lines.map(({ x }) => x)).toEqual([
    [-30, -20, -10],
    [-10, 0, 10],
  ]);
  expect(lines[0]!.width!).toBeGreaterThan(lines[1]!.width!);
});

test('hatched is what lies beyond the nearest limit at the chosen condensing temperature, from both sides', () => {
  const limits = (chosen: number) => chart('heat', chosen).limits;
  const [first, last] = chart('heat').x.range!;
  expect(limits(0)).toEqual([{ label: 'highest evaporating temperature', axis: 'x', from: 0, to: last }]);
  expect(limits(1)).toEqual([
    { label: 'highest pressure ratio', axis: 'x', from: first, to: -28 },
    { label: 'highest evaporating temperature', axis: 'x', from: 0, to: last },
  ]);
  expect(limits(2)).toEqual([{ label: 'rated current', axis: 'x', from: first, to: last }]);
  // The one that lies within is named in words.
  expect(sayMachineMap(study, 1, 'metric').join(' ')).toContain('Further in, these are passed too: rated current.');
  expect(sayMachineMap(study, 0, 'metric').join(' ')).not.toContain('Further in');
});

test('each condensing temperature is named right of its line, in the order of the lines', () => {
  for (const of of ['heat', 'power', 'cop'] as const) {
    const drawn = chart(of);
    const plot = { width: 330, height: 260, x: drawn.x.range!, y: drawn.y.range!, fontSize: 11 };
    const words = wordsOnChart(drawn, plot, (text, size) => 0.6 * size * text.length);
    const lines = drawn.series.filter(({ written }) => written !== undefined);
    const placed = lines.map(({ written, x, y }) => ({
      end: { x: Number(x.at(-1)), y: y.at(-1)! },
      word: words.find(({ text }) => text === written!.text)!,
    }));
    expect(placed).toHaveLength(study.map.length);
    const mark = Math.max(...study.marks.map(({ evaporating }) => evaporating - 273.15));
    for (const { end, word } of placed) expect(word.x).toBeGreaterThan(Math.max(end.x, mark));
    const order = (value: (one: (typeof placed)[number]) => number) =>
      placed.toSorted((a, b) => value(a) - value(b)).map(({ word }) => word.text);
    expect(order(({ word }) => word.y)).toEqual(order(({ end }) => end.y));
  }
});

test('the marks stand where the loop settles, with their range', () => {
  const { series, notes } = chart('power');
  const points = series.filter(({ kind }) => kind === 'points');
  expect(points.map(({ label }) => label)).toEqual(['coldest spell', 'mild day']);
  expect(points[0]!.y[0]).toBeCloseTo(valuesAt(2, 38).power.likely, 9);
  expect(notes.map(({ text }) => text)).toEqual(['coldest spell', 'mild day']);
});

test('two marks in one place are one, with both names', () => {
  const [first] = study.marks;
  const marks = [first!, { ...first!, when: 'mildDay' as const }];
  const { notes } = machineMapChart({ ...study, marks }, { of: 'heat', chosen: 1, needed, view: 'metric' });
  expect(notes.map(({ text }) => text)).toEqual(['coldest spell and mild day']);
});

test('what the tank needs is a level of the heat alone, and words where it lies far above', () => {
  expect(chart('heat').levels.map(({ y }) => y)).toEqual([400]);
  expect(chart('power').levels).toEqual([]);
  const far = chart('heat', 1, 'metric', { low: 2000, likely: 3000, high: 4000 });
  expect(far.levels).toEqual([]);
  expect(far.description).toContain('3000\u00a0W');
});

test('a point without an answer leaves a gap in its line and an empty cell', () => {
  const [first, ...others] = study.map;
  const points = first!.points.map((point, index) =>
    index === 2 ? { ...point, values: null, reason: 'no running point' } : point,
  );
  const { series, table } = machineMapChart(
    { ...study, map: [{ ...first!, points }, ...others] },
    { of: 'heat', chosen: 0, needed, view: 'metric' },
  );
  expect(series.filter(({ kind }) => kind === 'range')).toHaveLength(2);
  expect(series.filter(({ label }) => label.startsWith('30')).some(({ x }) => x.includes(-10))).toBe(false);
  expect(table.rows[2]![1]).toBe('');
});

test('the line nearest to the coldest spell is chosen at first, else the one nearest to the wish', () => {
  expect(nearestFamily(study)).toBe(1);
  expect(nearestFamily(study, 273.15 + 52)).toBe(2);
});

test('the table of limits says for every condensing temperature what the hatching says for one', () => {
  const { rows, columns } = mapLimitTable(study, 'metric');
  expect(columns.at(-1)!.label).toBe('Source of the bound');
  expect(rows.map((row) => row.slice(2, 5))).toEqual([
    ['above 0\u00a0°C', 'above 0\u00a0°C', 'above 0\u00a0°C'],
    ['nowhere here', 'above 5\u00a0°C', 'everywhere'],
    ['nowhere here', 'below −28\u00a0°C', 'below −25\u00a0°C'],
  ]);
});
