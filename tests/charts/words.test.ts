// Words on pictures: each found a place inside the plot, none on another, on the loop or on a state; limits are never left
// unnamed, however small the picture.

import { describe, expect, test } from 'vitest';
import { pressureEnthalpyChart, temperatureEntropyChart } from '../../src/charts/loops/property-diagrams.ts';
import { placeWords } from '../../src/charts/place-words.ts';
import type { ChartSpecification } from '../../src/charts/specification.ts';
import { type DrawnPlot, wordsOnChart } from '../../src/charts/words.ts';
import { answerTo, diagramOf, exampleFiles } from '../app/answers.ts';

const measure = (text: string, size: number) => 0.55 * size * text.length;
const sizes = { wide: [880, 510], phone: [300, 260] } as const;

function plotOf(chart: ChartSpecification, size: keyof typeof sizes): DrawnPlot {
  const [width, height] = sizes[size];
  const ends = (axis: ChartSpecification['x']): [number, number] => {
    const [low, high] = axis.range ?? [0, 1];
    return axis.logarithmic ? [Math.log10(low), Math.log10(high)] : [low, high];
  };
  return { width, height, x: ends(chart.x), y: ends(chart.y), fontSize: size === 'phone' ? 11 : 12.5 };
}

describe.each(exampleFiles)('pictures of %s', (file) => {
  const diagram = diagramOf(answerTo(file));
  const charts = { 'p-h': pressureEnthalpyChart(diagram, 'metric'), 'T-s': temperatureEntropyChart(diagram, 'us') };
  const cases = Object.entries(charts).flatMap(([name, chart]) =>
    (['wide', 'phone'] as const).map((size) => [`${name}, ${size}`, chart, size] as const),
  );

  test.each(cases)('%s', (_name, chart, size) => {
    const plot = plotOf(chart, size);
    const words = wordsOnChart(chart, plot, measure);
    const boxes = words.map(({ text, x, y, size: fontSize }) => ({
      text,
      x: ((x - plot.x[0]) / (plot.x[1] - plot.x[0])) * plot.width,
      y: ((plot.y[1] - y) / (plot.y[1] - plot.y[0])) * plot.height,
      width: measure(text, fontSize),
      height: fontSize,
    }));
    for (const limit of chart.limits) expect(words.map(({ text }) => text)).toContain(limit.label);
    for (const note of chart.notes) expect(words.map(({ text }) => text)).toContain(note.text);
    // On a wide picture every line has its words.
    if (size === 'wide') expect(words.length).toBeGreaterThan(chart.notes.length + chart.levels.length + 4);
    for (const [index, a] of boxes.entries()) {
      for (const b of boxes.slice(index + 1)) {
        const apart =
          2 * Math.abs(a.x - b.x) >= a.width + b.width - 1 || 2 * Math.abs(a.y - b.y) >= a.height + b.height - 1;
        expect(apart, `${a.text} and ${b.text}`).toBe(true);
      }
    }
  });
});

test('words without room on their line are left out, the next go on', () => {
  const line = [
    { x: 0, y: 10 },
    { x: 60, y: 10 },
  ];
  const words = { width: 40, height: 10, line, above: 0 };
  const places = placeWords([words, words], [], { width: 100, height: 20 });
  expect(places[0]?.x).toBeGreaterThan(20);
  expect(places[1]).toBeUndefined();
});
