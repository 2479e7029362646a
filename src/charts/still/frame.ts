// Around the plot of a still picture: title and legend above, numbers and names of the axes, the caution under it. First
// everything gets its room, what is left is the plot.

import { caution } from '../../cautions/index.ts';
import { InputError } from '../../numerics/index.ts';
import type { ChartAxis } from '../specification.ts';
import { type Legend, legendOf } from './legend.ts';
import { paper, paperInks, sizes } from './paper.ts';
import { across, down, type PlacedChart, type Plot } from './plane.ts';
import { inLines, short, textElement, textWidth } from './text.ts';
import { linearTicks, logarithmicTicks, type Tick } from './ticks.ts';

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

export interface Frame {
  readonly plot: Plot;
  readonly title: readonly string[];
  readonly caution: readonly string[];
  readonly legend: Legend;
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  /** Names along the axis: in lines where they fit side by side, else read from below. */
  readonly names: { readonly lines: readonly (readonly string[])[]; readonly upright: boolean };
}

const edge = 10;
/** How much wider bold letters are. */
const boldness = 1.08;
const line = 1.3;
const tickLength = 4;

/** A plot below this shows nothing [units]. */
const smallestPlot = 80;

export function frameOf(chart: PlacedChart, title: string, size: PictureSize): Frame {
  const inner = size.width - 2 * edge;
  const titles = inLines(title, inner, sizes.title * boldness);
  const cautionLines = inLines(caution, inner, sizes.caution);
  const legend = legendOf(chart, inner);
  const top = edge + titles.length * sizes.title * line + legend.height + 6;
  const yTicks = ticksOf(chart.y, Math.max(2, Math.floor(size.height / 55)));
  const widest = Math.max(0, ...yTicks.map(({ label }) => textWidth(label, sizes.axis)));
  const left = edge + sizes.axis * line + 4 + widest + tickLength + 3;
  const right = size.width - edge - 12;
  const width = right - left;
  const names = nameLines(chart.nameTicks, width);
  const under =
    edge + cautionLines.length * sizes.caution * line + 4 + sizes.axis * line + 4 + heightOf(names) + tickLength + 2;
  const height = size.height - under - top;
  if (width < smallestPlot || height < smallestPlot) {
    throw new InputError('options', `${size.width} by ${size.height}`, 'a picture with room for its axes and words');
  }
  const plot = { left, top, width, height };
  const xTicks = chart.nameTicks.length > 0 ? [] : fittingTicks(chart, plot);
  return { plot, title: titles, caution: cautionLines, legend, xTicks, yTicks, names };
}

function ticksOf(axis: PlacedChart['x'], most: number): readonly Tick[] {
  const [low, high] = axis.range;
  return axis.logarithmic ? logarithmicTicks(low, high, 2 * most) : linearTicks(low, high, most);
}

/** As many numbers along the horizontal axis as stand clear of each other. */
function fittingTicks(chart: PlacedChart, plot: Plot): readonly Tick[] {
  for (let most = Math.max(2, Math.floor(plot.width / 60)); most > 1; most -= 1) {
    const ticks = ticksOf(chart.x, most);
    const isClear = ticks.every((tick, index) => {
      const next = ticks[index + 1];
      if (next === undefined) return true;
      const room = across(next.value, chart, plot) - across(tick.value, chart, plot);
      return room > (textWidth(tick.label, sizes.axis) + textWidth(next.label, sizes.axis)) / 2 + 6;
    });
    if (isClear) return ticks;
  }
  return ticksOf(chart.x, 1);
}

function nameLines(names: readonly string[], width: number): Frame['names'] {
  const room = width / Math.max(1, names.length) - 4;
  const lines = names.map((name) => inLines(name, room, sizes.axis));
  const upright = lines.some((one) => one.some((text) => textWidth(text, sizes.axis) > room));
  return { lines: upright ? names.map((name) => [name]) : lines, upright };
}

function heightOf({ lines, upright }: Frame['names']): number {
  if (upright) return Math.max(...lines.flat().map((name) => textWidth(name, sizes.axis)));
  return Math.max(1, ...lines.map((one) => one.length)) * sizes.axis * line;
}

export function axisTitle({ label, unit }: ChartAxis): string {
  return unit === '' ? label : `${label}, ${unit}`;
}

/** Grid, frame, numbers and names of the axes, title, legend and caution. */
export function drawFrame(chart: PlacedChart, frame: Frame, size: PictureSize): string {
  const { plot, legend } = frame;
  const cautionTop = size.height - edge - frame.caution.length * sizes.caution * line;
  return [
    ...titleLines(frame.title),
    legend.draw(edge, plot.top - 6 - legend.height),
    ...frame.xTicks.map((tick) => xTick(tick, chart, plot)),
    ...frame.yTicks.map((tick) => yTick(tick, chart, plot)),
    ...frame.names.lines.flatMap((lines, index) => nameTick(lines, index, chart, frame)),
    `<rect x="${short(plot.left)}" y="${short(plot.top)}" width="${short(plot.width)}" height="${short(plot.height)}" fill="none" stroke="${paper.rule}"/>`,
    ...axisTitles(chart, plot, cautionTop),
    ...frame.caution.map((text, index) => {
      const y = cautionTop + (index + 0.5) * sizes.caution * line;
      return textElement(text, { x: edge, y, size: sizes.caution, ink: paperInks.ink });
    }),
  ].join('');
}

function titleLines(lines: readonly string[]): readonly string[] {
  return lines.map((text, index) => {
    const y = edge + (index + 0.5) * sizes.title * line;
    return textElement(text, { x: edge, y, size: sizes.title, ink: paperInks.ink, bold: true });
  });
}

function axisTitles(chart: PlacedChart, plot: Plot, cautionTop: number): readonly string[] {
  const words = { ink: paper.soft, anchor: 'middle' } as const;
  const x = axisTitle(chart.x);
  const y = axisTitle(chart.y);
  return [
    textElement(x, {
      ...words,
      size: fittingSize(x, plot.width),
      x: plot.left + plot.width / 2,
      y: cautionTop - 4 - (sizes.axis * line) / 2,
    }),
    textElement(y, {
      ...words,
      size: fittingSize(y, plot.height),
      x: edge + 0.65 * sizes.axis,
      y: plot.top + plot.height / 2,
      upright: true,
    }),
  ];
}

/** Letters small enough for a long title to stay beside its axis. */
function fittingSize(text: string, room: number): number {
  return Math.min(sizes.axis, (sizes.axis * room) / textWidth(text, sizes.axis));
}

function xTick({ value, label }: Tick, chart: PlacedChart, plot: Plot): string {
  const x = plot.left + across(value, chart, plot);
  const bottom = plot.top + plot.height;
  const y = bottom + tickLength + 2 + (sizes.axis * line) / 2;
  return [
    `<path d="M${short(x)} ${short(plot.top)}V${short(bottom)}" stroke="${paper.grid}"/>`,
    `<path d="M${short(x)} ${short(bottom)}v${tickLength}" stroke="${paper.rule}"/>`,
    textElement(label, { x, y, size: sizes.axis, ink: paper.soft, anchor: 'middle' }),
  ].join('');
}

function yTick({ value, label }: Tick, chart: PlacedChart, plot: Plot): string {
  const y = plot.top + down(value, chart, plot);
  const x = plot.left - tickLength - 3;
  return [
    `<path d="M${short(plot.left)} ${short(y)}h${short(plot.width)}" stroke="${paper.grid}"/>`,
    `<path d="M${short(plot.left - tickLength)} ${short(y)}h${tickLength}" stroke="${paper.rule}"/>`,
    textElement(label, { x, y, size: sizes.axis, ink: paper.soft, anchor: 'end' }),
  ].join('');
}

function nameTick(
  lines: readonly string[],
  index: number,
  chart: PlacedChart,
  { plot, names }: Frame,
): readonly string[] {
  const x = plot.left + across(index, chart, plot);
  const top = plot.top + plot.height + tickLength + 2;
  const words = { size: sizes.axis, ink: paper.soft } as const;
  if (names.upright)
    return lines.map((text) => textElement(text, { ...words, x, y: top, anchor: 'end', upright: true }));
  return lines.map((text, row) =>
    textElement(text, { ...words, x, y: top + (row + 0.5) * sizes.axis * line, anchor: 'middle' }),
  );
}
