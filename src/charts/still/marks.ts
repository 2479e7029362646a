// What stands in the plot: hatched limits, lines, areas, bars and points, levels. All in units of the plot, from its upper
// left corner; what lies beyond the plot is cut off by whoever frames it.

import { InputError } from '../../numerics/index.ts';
import type { Dash, LimitBand } from '../specification.ts';
import { paper, paperFill, paperInks } from './paper.ts';
import { across, down, type PlacedChart, type PlacedSeries, type Plot } from './plane.ts';
import { short } from './text.ts';

/** Parts of a broken line in its own width, never of less than three units. */
const dashes: Readonly<Record<Dash, readonly number[]>> = {
  solid: [],
  dot: [1, 1],
  dash: [3, 3],
  longdash: [5, 5],
  dashdot: [3, 1, 1, 1],
};

/** Share of the room of one name that its bars leave free. */
const barGap = 0.28;

/** Lines and words stay legible on the range they run through. */
export const rangeOpacity = 0.22;

/** Distance between the strokes of a hatching. */
const hatchStride = 9;

export function stroke(ink: string, width: number, dash: Dash = 'solid'): string {
  const parts = dashes[dash].map((part) => short(part * Math.max(width, 3)));
  const broken = parts.length === 0 ? '' : ` stroke-dasharray="${parts.join(' ')}"`;
  return `fill="none" stroke="${ink}" stroke-width="${short(width)}"${broken}`;
}

export function limitMark(limit: LimitBand, chart: PlacedChart, plot: Plot): string {
  const [left, right] =
    limit.axis === 'x' ? [across(limit.from, chart, plot), across(limit.to, chart, plot)] : [0, plot.width];
  const [top, bottom] =
    limit.axis === 'y' ? [down(limit.to, chart, plot), down(limit.from, chart, plot)] : [0, plot.height];
  const area = insideThePlot({ left, top, width: right - left, height: bottom - top }, plot);
  if (area === undefined) return '';
  const edge = `<rect x="${short(area.left)}" y="${short(area.top)}" width="${short(area.width)}" height="${short(area.height)}" ${stroke(paperInks.stop, 1, 'dot')}/>`;
  return `${hatching(area, paperInks.stop, 0.7)}${edge}`;
}

function insideThePlot(area: Plot, plot: Plot): Plot | undefined {
  const left = Math.max(0, area.left);
  const top = Math.max(0, area.top);
  const width = Math.min(plot.width, area.left + area.width) - left;
  const height = Math.min(plot.height, area.top + area.height) - top;
  return width > 0 && height > 0 ? { left, top, width, height } : undefined;
}

/** Strokes rising to the right, cut at the edges of their area. */
function hatching({ left, top, width, height }: Plot, ink: string, thickness: number): string {
  const strokes: string[] = [];
  for (let from = hatchStride; from < width + height; from += hatchStride) {
    const x1 = Math.max(0, from - height);
    const x2 = Math.min(width, from);
    strokes.push(`M${short(left + x1)} ${short(top + from - x1)}L${short(left + x2)} ${short(top + from - x2)}`);
  }
  return strokes.length === 0 ? '' : `<path d="${strokes.join('')}" ${stroke(ink, thickness)}/>`;
}

export function seriesMark(series: PlacedSeries, chart: PlacedChart, plot: Plot): string {
  const spots = series.x.map((x, index) => ({ x: across(x, chart, plot), y: down(series.y[index] ?? 0, chart, plot) }));
  if (spots.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) {
    throw new InputError(
      `chart.series "${series.label}"`,
      'a number without a place',
      'numbers above 0 on a logarithmic axis',
    );
  }
  const ink = paperInks[series.ink];
  const line = spots.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join('');
  switch (series.kind) {
    case 'line':
      return `<path d="${line}" ${stroke(ink, series.width ?? 1.5, series.dash)} stroke-linejoin="round"/>`;
    case 'area': {
      const floor = chart.y.logarithmic ? plot.height : down(0, chart, plot);
      const under = `${line}L${short(spots.at(-1)?.x ?? 0)} ${short(floor)}L${short(spots[0]?.x ?? 0)} ${short(floor)}Z`;
      return `<path d="${under}" fill="${paperFill(series.ink)}" fill-opacity="0.5"/><path d="${line}" ${stroke(ink, series.width ?? 1.5, series.dash)}/>`;
    }
    case 'range':
      return `<path d="${line}Z" fill="${paperFill(series.ink)}" fill-opacity="${rangeOpacity}"/>`;
    case 'points':
      return spots
        .map(
          ({ x, y }) =>
            `<circle cx="${short(x)}" cy="${short(y)}" r="4" fill="${ink}" stroke="${paper.sheet}" stroke-width="1.5"/>`,
        )
        .join('');
    case 'bar':
      return barMarks(series, chart, plot);
  }
}

/** Bars of several series beside each other; stacked ones upon each other, those below zero downwards. */
function barMarks(series: PlacedSeries, chart: PlacedChart, plot: Plot): string {
  const all = chart.series.filter(({ kind }) => kind === 'bar');
  const isStacked = all.some(({ stacked }) => stacked);
  const room = roomOfBars(all) * (1 - barGap);
  const width = isStacked ? room : room / all.length;
  const place = all.indexOf(series);
  return series.x
    .map((x, index) => {
      const y = series.y[index] ?? 0;
      const from = isStacked ? heightBefore(all.slice(0, place), x, y) : 0;
      const start = x - room / 2 + (isStacked ? 0 : place * width);
      const ends = [down(from, chart, plot), down(from + y, chart, plot)];
      const area = {
        left: across(start, chart, plot),
        top: Math.min(...ends),
        width: across(start + width, chart, plot) - across(start, chart, plot),
        height: Math.abs(ends[0]! - ends[1]!),
      };
      return barBox(area, paperFill(series.ink), series.dash === 'dash' ? paper.sheet : undefined);
    })
    .join('');
}

export function barBox(area: Plot, fill: string, hatch: string | undefined): string {
  const box = `<rect x="${short(area.left)}" y="${short(area.top)}" width="${short(area.width)}" height="${short(area.height)}" fill="${fill}"/>`;
  return hatch === undefined ? box : `${box}${hatching(area, hatch, 2)}`;
}

/** The room along the axis that belongs to one number: the smallest distance between two of them. */
function roomOfBars(all: readonly PlacedSeries[]): number {
  const places = [...new Set(all.flatMap(({ x }) => x))].sort((a, b) => a - b);
  const distances = places.slice(1).map((place, index) => place - places[index]!);
  return distances.length === 0 ? 1 : Math.min(...distances);
}

function heightBefore(earlier: readonly PlacedSeries[], x: number, y: number): number {
  return earlier.reduce((sum, one) => {
    const other = one.y[one.x.indexOf(x)] ?? 0;
    return other < 0 === y < 0 ? sum + other : sum;
  }, 0);
}
