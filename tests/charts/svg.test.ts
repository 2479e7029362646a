// Still pictures: well formed, with every word inside and clear of the others, in both views and in several sizes. How wide
// letters really are is measured in a browser in tests/browser/brief.test.ts.

import { describe, expect, test } from 'vitest';
import { caution } from '../../src/cautions/index.ts';
import {
  type ChartSeries,
  type ChartSpecification,
  chartSvg,
  monthsChart,
  pressureEnthalpyChart,
  temperatureEntropyChart,
} from '../../src/charts/index.ts';
import { escapeMarkup } from '../../src/charts/still/text.ts';
import { linearTicks, logarithmicTicks, roundStep } from '../../src/charts/still/ticks.ts';
import { InputError } from '../../src/numerics/index.ts';
import { answerTo, diagramOf, exampleFiles } from '../app/answers.ts';
import { readSvg, type SvgReading } from './svg-reading.ts';

const sizes = { 'printed across the page': [720, 460], small: [420, 360] } as const;

function expectLegible({ words, width, height }: SvgReading): void {
  for (const { text, left, right, top, bottom } of words) {
    expect(left, text).toBeGreaterThanOrEqual(0);
    expect(top, text).toBeGreaterThanOrEqual(0);
    expect(right, text).toBeLessThanOrEqual(width);
    expect(bottom, text).toBeLessThanOrEqual(height);
  }
  for (const [index, a] of words.entries()) {
    for (const b of words.slice(index + 1)) {
      const apart = a.right <= b.left + 1 || b.right <= a.left + 1 || a.bottom <= b.top + 1 || b.bottom <= a.top + 1;
      expect(apart, `${a.text} and ${b.text}`).toBe(true);
    }
  }
}

describe.each(exampleFiles)('pictures of %s', (file) => {
  const answer = answerTo(file);
  const diagram = diagramOf(answer);
  const cases = (['metric', 'us'] as const).flatMap((view) =>
    Object.entries({
      'p-h': pressureEnthalpyChart(diagram, view),
      'T-s': temperatureEntropyChart(diagram, view),
      months: monthsChart(answer.assessment.year, view),
    }).flatMap(([name, chart]) =>
      (Object.keys(sizes) as (keyof typeof sizes)[]).map((size) => [`${name}, ${view}, ${size}`, chart, size] as const),
    ),
  );

  test.each(cases)('%s', (_name, chart, size) => {
    const [width, height] = sizes[size];
    const svg = chartSvg(chart, { width, height });
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    const reading = readSvg(svg);
    expect(reading).toMatchObject({ width, height });
    expectLegible(reading);
    const texts = reading.words.map(({ text }) => text);
    expect(texts.join(' ')).toContain(chart.title);
    expect(texts.join(' ')).toContain(caution);
    for (const { label, unit } of [chart.x, chart.y])
      expect(texts).toContain(unit === '' ? label : `${label}, ${unit}`);
    for (const { label } of chart.limits) expect(texts).toContain(label);
    for (const { label } of chart.series.filter(({ inLegend }) => inLegend)) expect(texts).toContain(label);
    for (const { text } of chart.notes) expect(texts).toContain(text);
    if (size !== 'small') for (const { label } of chart.levels) expect(texts, label).toContain(label);
  });
});

const plain: ChartSpecification = {
  title: 'Heat',
  description: 'A line.',
  x: { label: 'time', unit: 'h' },
  y: { label: 'heat', unit: 'W' },
  series: [],
  limits: [],
  levels: [],
  notes: [],
  table: { caption: '', columns: [], rows: [] },
};
const line: ChartSeries = { label: 'heat', kind: 'line', ink: 'intoWater', x: [0, 1, 2], y: [10, 30, 20] };

function draw(chart: Partial<ChartSpecification>, width = 600, height = 400): SvgReading {
  return readSvg(chartSvg({ ...plain, series: [line], ...chart }, { width, height }));
}

test('what people wrote is shown, not obeyed', () => {
  const odd = '<script>alert("1")</script> & \u0007 \'x\'';
  const svg = chartSvg(
    {
      ...plain,
      title: odd,
      description: odd,
      x: { label: odd, unit: odd },
      series: [{ ...line, label: odd, inLegend: true }],
    },
    { width: 900, height: 400, title: odd },
  );
  expect(svg).not.toContain('<script');
  expect(readSvg(svg).words.map(({ text }) => text)).toContain('<script>alert("1")</script> & \u0020 \'x\'');
  expect(escapeMarkup('\ud800a')).toBe(' a');
  // Overrides of the direction of writing would turn what follows them.
  expect(escapeMarkup('a\u202eb\u2066c')).toBe('a b c');
});

test('an axis without a range takes that of its numbers, round, and zero where bars stand on it', () => {
  const { words } = draw({ series: [{ ...line, kind: 'bar', y: [10, 31, 20] }] });
  const numbers = words.map(({ text }) => text);
  expect(numbers).toContain('0');
  expect(numbers).toContain('30');
  expect(numbers).not.toContain('−10');
});

test('bars stand beside each other, or upon each other', () => {
  const bars = [1, 2].map(
    (number): ChartSeries => ({ ...line, kind: 'bar', label: `bar ${number}`, x: ['a', 'b'], y: [number, -number] }),
  );
  const named = { label: 'place', unit: '', names: ['a', 'b'] };
  const boxes = (series: readonly ChartSeries[]) =>
    draw({ x: named, series })
      .tags.filter(({ name, attributes }) => name === 'rect' && attributes.fill === '#d9663a')
      .map(({ attributes }) => ({
        x: Number(attributes.x),
        y: Number(attributes.y),
        height: Number(attributes.height),
        width: Number(attributes.width),
      }));
  const beside = boxes(bars);
  expect(beside).toHaveLength(4);
  expect(beside[2]!.x).toBeCloseTo(beside[0]!.x + beside[0]!.width, 1);
  const upon = boxes(bars.map((bar) => ({ ...bar, stacked: true })));
  expect(upon[2]!.x).toBe(upon[0]!.x);
  expect(upon[2]!.y + upon[2]!.height).toBeCloseTo(upon[0]!.y, 1);
  expect(upon[3]!.y).toBeCloseTo(upon[1]!.y + upon[1]!.height, 1);
});

test('long names of bars are broken into lines, and stand upright where even that is too wide', () => {
  const names = ['front pane', 'a complete certified heat pump', 'evaporation', 'warming make-up water'];
  const series = [{ ...line, kind: 'bar', x: names, y: [1, 2, 3, 4] } as const];
  expectLegible(draw({ x: { label: 'where', unit: '', names }, series }));
  const upright = draw({ x: { label: 'where', unit: '', names }, series }, 320, 500);
  expectLegible(upright);
  expect(upright.words.map(({ text }) => text)).toEqual(expect.arrayContaining(names));
});

test('a range is filled between its two lines, and named with a sample', () => {
  const range: ChartSeries = {
    ...line,
    kind: 'range',
    label: 'its range',
    x: [0, 1, 2, 2, 1, 0],
    y: [8, 25, 15, 25, 35, 12],
    inLegend: true,
  };
  const { tags, words } = draw({ series: [range, line] });
  const filled = tags.filter(({ attributes }) => attributes['fill-opacity'] !== undefined);
  expect(filled.map(({ name }) => name)).toEqual(['rect', 'path']);
  expect(filled[1]!.attributes.d).toMatch(/^M[^M]+Z$/);
  expect(words.map(({ text }) => text)).toContain('its range');
});

test('limits are named on either axis, and levels under their line where there is no room above', () => {
  const reading = draw({
    y: { label: 'heat', unit: 'W', range: [0, 50] },
    x: { label: 'time', unit: 'h', range: [0, 2] },
    limits: [
      { label: 'too late', axis: 'x', from: 1.8, to: 2 },
      { label: 'too much', axis: 'y', from: 45, to: 50 },
    ],
    levels: [{ label: 'usual', y: 49.5, ink: 'fromSource' }],
  });
  expectLegible(reading);
  const texts = reading.words.map(({ text }) => text);
  expect(texts).toEqual(expect.arrayContaining(['too late', 'too much', 'usual']));
});

test.each([
  ['a number that is not one', { series: [{ ...line, y: [1, Number.NaN, 2] }] }],
  [
    'a name that is not on the axis',
    { x: { label: 'x', unit: '', names: ['a'] }, series: [{ ...line, x: ['a', 'b', 'a'] }] },
  ],
  ['nothing to draw', { series: [] }],
  ['an axis upside down', { y: { label: 'y', unit: '', range: [2, 1] as const } }],
  [
    'zero on a logarithmic axis',
    { y: { label: 'y', unit: '', logarithmic: true }, series: [{ ...line, y: [0, 1, 2] }] },
  ],
])('%s is refused', (_name, chart) => {
  expect(() => draw(chart)).toThrow(InputError);
});

test('a picture without room for its words is refused', () => {
  expect(() => draw({}, 150, 100)).toThrow(InputError);
  expect(() => draw({}, Number.NaN, 100)).toThrow(InputError);
});

test('numbers along axes are round', () => {
  expect(linearTicks(0.3, 9.7, 5).map(({ value }) => value)).toEqual([2, 4, 6, 8]);
  expect(linearTicks(-0.25, 0.25, 6).map(({ label }) => label)).toEqual(['−0.2', '−0.1', '0.0', '0.1', '0.2']);
  expect(linearTicks(0, 20_000, 2).map(({ label }) => label)).toEqual(['0', '10\u202f000', '20\u202f000']);
  expect(logarithmicTicks(0.8, 60, 10).map(({ value }) => value)).toEqual([1, 2, 5, 10, 20, 50]);
  expect(logarithmicTicks(0.01, 1e4, 7).map(({ label }) => label)).toEqual([
    '0.01',
    '0.1',
    '1',
    '10',
    '100',
    '1000',
    '10\u202f000',
  ]);
  expect(logarithmicTicks(10, 20, 5).map(({ value }) => value)).toEqual([10, 12, 14, 16, 18, 20]);
  for (const [atLeast, step] of [
    [0.3, 0.5],
    [1, 1],
    [6, 10],
    [0.0011, 0.002],
  ] as const) {
    expect(roundStep(atLeast)).toBeCloseTo(step, 12);
  }
});
