// The names of the series with a sample of each, in rows that are as wide as the picture.

import { barBox, rangeOpacity, stroke } from './marks.ts';
import { paper, paperFill, paperInks, sizes } from './paper.ts';
import type { PlacedChart, PlacedSeries } from './plane.ts';
import { short, textElement, textWidth } from './text.ts';

const sample = 22;
const rowHeight = 17;

interface Entry {
  readonly series: PlacedSeries;
  readonly left: number;
  readonly row: number;
}

export interface Legend {
  readonly height: number;
  /** @param top  of the first row */
  draw(left: number, top: number): string;
}

export function legendOf(chart: PlacedChart, width: number): Legend {
  const entries: Entry[] = [];
  let left = 0;
  let row = 0;
  for (const series of chart.series.filter(({ inLegend }) => inLegend)) {
    const wide = sample + 6 + textWidth(series.label, sizes.words) + 14;
    if (left > 0 && left + wide > width) {
      left = 0;
      row += 1;
    }
    entries.push({ series, left, row });
    left += wide;
  }
  return {
    height: entries.length === 0 ? 0 : (row + 1) * rowHeight,
    draw: (x, y) =>
      entries.map((entry) => drawEntry(entry, x + entry.left, y + (entry.row + 0.5) * rowHeight)).join(''),
  };
}

function drawEntry({ series }: Entry, x: number, y: number): string {
  const words = textElement(series.label, { x: x + sample + 6, y, size: sizes.words, ink: paper.soft });
  return `${sampleOf(series, x, y)}${words}`;
}

function sampleOf(series: PlacedSeries, x: number, y: number): string {
  const ink = paperInks[series.ink];
  if (series.kind === 'points') return `<circle cx="${short(x + sample / 2)}" cy="${short(y)}" r="4" fill="${ink}"/>`;
  if (series.kind === 'bar') {
    const area = { left: x + 4, top: y - 5, width: sample - 8, height: 10 };
    return barBox(area, paperFill(series.ink), series.dash === 'dash' ? paper.sheet : undefined);
  }
  if (series.kind === 'range') {
    return `<rect x="${short(x)}" y="${short(y - 5)}" width="${sample}" height="10" fill="${paperFill(series.ink)}" fill-opacity="${rangeOpacity}"/>`;
  }
  const line = `<path d="M${short(x)} ${short(y)}H${short(x + sample)}" ${stroke(ink, series.width ?? 1.5, series.dash)}/>`;
  if (series.kind === 'line') return line;
  return `<rect x="${short(x)}" y="${short(y)}" width="${sample}" height="5" fill="${paperFill(series.ink)}" fill-opacity="0.5"/>${line}`;
}
