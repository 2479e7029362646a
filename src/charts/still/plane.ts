// The plane of a still picture: where each axis begins and ends, and which place of the plot belongs to which number.
// Names along an axis stand at 0, 1, 2 …, so that bars, lines and words meet one kind of number only.

import { InputError } from '../../numerics/index.ts';
import type { ChartAxis, ChartSeries, ChartSpecification } from '../specification.ts';
import { roundStep } from './ticks.ts';

export type Ends = readonly [number, number];

/** A series with numbers on both axes. */
export interface PlacedSeries extends Omit<ChartSeries, 'x'> {
  readonly x: readonly number[];
}

/** A chart whose axes both have ends, and no names. */
export interface PlacedChart extends Omit<ChartSpecification, 'x' | 'y' | 'series'> {
  readonly x: ChartAxis & { readonly range: Ends };
  readonly y: ChartAxis & { readonly range: Ends };
  readonly series: readonly PlacedSeries[];
  /** Names along the horizontal axis, at 0, 1, 2 …; empty where it counts. */
  readonly nameTicks: readonly string[];
}

export interface Plot {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** @throws InputError for a number that is not finite, a name that is not on the axis, or an axis without an extent */
export function placedChart(chart: ChartSpecification): PlacedChart {
  const { names } = chart.x;
  const series = chart.series.map((one): PlacedSeries => ({ ...one, x: one.x.map((x) => numberOf(x, names, one)) }));
  requireNumbers(chart, series);
  const { names: _names, ...x } = chart.x;
  const placed = {
    ...chart,
    series,
    nameTicks: names ?? [],
    x: {
      ...x,
      range: names
        ? ([-0.5, names.length - 0.5] as const)
        : (x.range ??
          extent(
            series.flatMap((one) => one.x),
            x,
          )),
    },
    y: { ...chart.y, range: chart.y.range ?? extent(heights({ ...chart, series }), chart.y) },
  };
  requireExtent('chart.x.range', placed.x.range, x.logarithmic);
  requireExtent('chart.y.range', placed.y.range, chart.y.logarithmic);
  return placed;
}

function numberOf(x: number | string, names: readonly string[] | undefined, series: ChartSeries): number {
  if (names === undefined) return Number(x);
  const index = names.indexOf(String(x));
  if (index < 0) throw new InputError(`chart.series "${series.label}"`, x, 'a name of the axis');
  return index;
}

function requireNumbers(chart: ChartSpecification, series: readonly PlacedSeries[]): void {
  const numbers = [
    ...series.flatMap((one) => [...one.x, ...one.y]),
    ...chart.levels.map((level) => level.y),
    ...chart.limits.flatMap((limit) => [limit.from, limit.to]),
    ...chart.notes.flatMap((note) => [note.x, note.y]),
  ];
  const odd = numbers.find((number) => !Number.isFinite(number));
  if (odd !== undefined) throw new InputError('chart', odd, 'finite numbers');
}

function requireExtent(path: string, [low, high]: Ends, logarithmic = false): void {
  const isUsable = Number.isFinite(low) && Number.isFinite(high) && high > low && !(logarithmic && low <= 0);
  if (!isUsable) throw new InputError(path, `${low} to ${high}`, 'two ends, the lower first, above 0 if logarithmic');
}

/** Heights that the picture must hold: those of stacked bars as they stand upon one another, and the zero under areas. */
function heights({ series, levels, notes }: Pick<PlacedChart, 'series' | 'levels' | 'notes'>): number[] {
  const stood = series.flatMap((one) => [...one.y, ...(one.kind === 'bar' || one.kind === 'area' ? [0] : [])]);
  const sums = new Map<string, number>();
  for (const one of series.filter(({ kind, stacked }) => kind === 'bar' && stacked)) {
    one.y.forEach((y, index) => {
      const key = `${one.x[index]} ${y < 0}`;
      sums.set(key, (sums.get(key) ?? 0) + y);
    });
  }
  return [...stood, ...sums.values(), ...levels.map(({ y }) => y), ...notes.map(({ y }) => y)];
}

function extent(numbers: readonly number[], { logarithmic = false }: ChartAxis): Ends {
  const low = numbers.reduce((least, number) => Math.min(least, number), Number.POSITIVE_INFINITY);
  const high = numbers.reduce((most, number) => Math.max(most, number), Number.NEGATIVE_INFINITY);
  if (logarithmic) return [low / 1.2, high * 1.2];
  const spread = high > low ? high - low : Math.abs(high) || 1;
  const margin = 0.04 * spread;
  const step = roundStep(spread / 10);
  // Zero stays the edge where nothing lies beyond it.
  return [
    low === 0 ? 0 : Math.floor((low - margin) / step) * step,
    high === 0 ? 0 : Math.ceil((high + margin) / step) * step,
  ];
}

/** Ends as they are drawn: logarithms on a logarithmic axis. */
export function drawnEnds({
  range,
  logarithmic,
}: {
  readonly range: Ends;
  readonly logarithmic?: boolean;
}): [number, number] {
  return logarithmic ? [Math.log10(range[0]), Math.log10(range[1])] : [range[0], range[1]];
}

/** Distance from the left edge of the plot. */
export function across(value: number, chart: PlacedChart, plot: Plot): number {
  return shareOf(value, chart.x) * plot.width;
}

/** Distance from the top edge of the plot. */
export function down(value: number, chart: PlacedChart, plot: Plot): number {
  return (1 - shareOf(value, chart.y)) * plot.height;
}

function shareOf(value: number, axis: PlacedChart['x']): number {
  const [low, high] = drawnEnds(axis);
  const drawn = axis.logarithmic ? Math.log10(value) : value;
  return (drawn - low) / (high - low);
}
