// Draws a chart specification with plotly.js. The only file that knows that library; loaded when a chart comes into view.
// Inks are read from the page's custom properties at the moment of drawing, so that light and dark both fit.
// Only kinds that need no WebGL are used, and every way to send a chart elsewhere is switched off.

import Plotly, { type Annotation, type Config, type Data, type Layout } from 'plotly.js-dist-min';
import { caution } from '../../cautions/index.ts';
import type { ChartAxis, ChartSeries, ChartSpecification, InkRole } from '../../charts/index.ts';
import { type DrawnPlot, wordsOnChart } from '../../charts/index.ts';

const config: Partial<Config> = {
  displaylogo: false,
  // Zoom by dragging, back by double click; the picture itself is hidden from the keyboard, which has the table.
  displayModeBar: false,
  showSendToCloud: false,
  responsive: true,
  scrollZoom: false,
  doubleClick: 'reset',
} as Partial<Config>;

/** Custom property that holds each ink for areas, where it differs from that for lines and words. */
const fillProperty: Partial<Record<InkRole, string>> = {
  intoWater: '--into-water-fill',
  fromSource: '--from-source-fill',
  electricity: '--electricity-fill',
  leaving: '--leaving-fill',
};

/** Custom property that holds each ink for lines and words. */
const inkProperty: Record<InkRole, string> = {
  intoWater: '--into-water',
  fromSource: '--from-source',
  electricity: '--electricity',
  leaving: '--leaving',
  neutral: '--neutral',
  faint: '--faint',
  ink: '--ink',
  doubt: '--doubt',
  stop: '--stop',
};

interface Palette {
  ink(role: InkRole): string;
  fill(role: InkRole): string;
  readonly sheet: string;
  readonly grid: string;
  readonly rule: string;
  readonly soft: string;
  readonly family: string;
  readonly fontSize: number;
}

function readPalette(host: HTMLElement): Palette {
  const probe = document.createElement('span');
  probe.hidden = true;
  host.append(probe);
  const resolve = (property: string) => {
    probe.style.color = `var(${property})`;
    return getComputedStyle(probe).color;
  };
  const resolved = (properties: Partial<Record<InkRole, string>>) =>
    Object.fromEntries(Object.entries(properties).map(([role, property]) => [role, resolve(property)]));
  const inks = resolved(inkProperty);
  const fills = resolved(fillProperty);
  const palette: Palette = {
    ink: (role) => inks[role] ?? 'currentColor',
    fill: (role) => fills[role] ?? inks[role] ?? 'currentColor',
    sheet: resolve('--sheet'),
    grid: resolve('--grid'),
    rule: resolve('--rule-strong'),
    soft: resolve('--ink-soft'),
    family: getComputedStyle(host).fontFamily,
    fontSize: host.clientWidth < 560 ? 11 : 12.5,
  };
  probe.remove();
  return palette;
}

/**
 * Draws, or redraws, a chart.
 * @param host        the element it is drawn into
 * @param chart       what is drawn
 * @param paperWidth  given while the page is put on paper, which is light and has a width of its own [px]
 */
export async function drawChart(host: HTMLElement, chart: ChartSpecification, paperWidth?: number): Promise<void> {
  const isPaper = paperWidth !== undefined;
  const palette = isPaper ? inTheLight(() => readPalette(host)) : readPalette(host);
  const narrow = !isPaper && host.clientWidth < 560;
  const drawn = narrow ? withFewerWords(chart) : chart;
  const size = isPaper
    ? { autosize: false, width: paperWidth, height: 0.9 * paperWidth * (chart.proportion ?? 0.62) }
    : {};
  await Plotly.react(host, traces(drawn, palette), { ...layout(chart, palette, narrow), ...size }, config);
  const write = () => writeWords(host as DrawnHost, drawn, palette);
  await write();
  // Another size or another part of the plane: the words find other places.
  const drawnHost = host as DrawnHost;
  drawnHost.removeAllListeners('plotly_relayout');
  drawnHost.on('plotly_relayout', (change) => {
    if (!Object.keys(change).some((key) => key.startsWith('annotations'))) void write();
  });
}

/** Inks as they are in the light, whatever light the page is in. */
function inTheLight(read: () => Palette): Palette {
  const { dataset } = document.documentElement;
  const before = dataset.light;
  dataset.light = 'light';
  const palette = read();
  if (before === undefined) delete dataset.light;
  else dataset.light = before;
  return palette;
}

/** What the library adds to its host. */
interface DrawnHost extends HTMLElement {
  on(event: 'plotly_relayout', listener: (change: object) => void): void;
  removeAllListeners(event: 'plotly_relayout'): void;
  readonly _fullLayout: {
    readonly _size: { readonly w: number; readonly h: number };
    readonly xaxis: { readonly range: [number, number] };
    readonly yaxis: { readonly range: [number, number] };
  };
}

/** Once the picture has its size, its words are placed in it. */
async function writeWords(host: DrawnHost, chart: ChartSpecification, palette: Palette): Promise<void> {
  if (chart.x.names !== undefined) return;
  const { _size, xaxis, yaxis } = host._fullLayout;
  const plot = { width: _size.w, height: _size.h, x: xaxis.range, y: yaxis.range, fontSize: palette.fontSize };
  await Plotly.relayout(host, { annotations: annotations(chart, plot, palette) });
}

function annotations(chart: ChartSpecification, plot: DrawnPlot, palette: Palette): Partial<Annotation>[] {
  const pen = document.createElement('canvas').getContext('2d');
  const measure = (text: string, size: number) => {
    if (pen === null) return 0.55 * size * text.length;
    pen.font = `${size}px ${palette.family}`;
    return pen.measureText(text).width;
  };
  return wordsOnChart(chart, plot, measure).map(({ text, x, y, ink, size, bold }) => ({
    x,
    y,
    xref: 'x',
    yref: 'y',
    text: bold ? `<b>${text}</b>` : text,
    showarrow: false,
    borderpad: 0,
    font: { color: palette.ink(ink), size },
    ...(bold ? {} : { bgcolor: palette.sheet }),
  }));
}

export function eraseChart(host: HTMLElement): void {
  Plotly.purge(host);
}

/** A picture of the chart as a data address, with its title above and the caution under it. */
export async function chartImage(host: HTMLElement, chart: ChartSpecification, format: 'png' | 'svg'): Promise<string> {
  const palette = readPalette(host);
  const width = 1200;
  const height = 820;
  const margin = { l: 70, r: 30, t: 100, b: 130 };
  const plot = {
    width: width - margin.l - margin.r,
    height: height - margin.t - margin.b,
    x: endsOf(chart.x),
    y: endsOf(chart.y),
    fontSize: 12.5,
  };
  const placed = chart.x.names === undefined ? annotations(chart, plot, palette) : [];
  const words = { xref: 'paper', yref: 'paper', x: 0, xanchor: 'left', showarrow: false, align: 'left' };
  const under = {
    ...words,
    y: 0,
    yanchor: 'top',
    yshift: -62,
    text: inLines(caution, 130),
    font: { color: palette.ink('ink'), size: 13 },
  };
  const figure = {
    data: traces(chart, palette),
    layout: {
      ...layout(chart, palette, false),
      width,
      height,
      paper_bgcolor: palette.sheet,
      title: { text: chart.title, font: { color: palette.ink('ink'), size: 18 }, x: 0.04, y: 0.97, yanchor: 'top' },
      margin,
      annotations: [...placed, under],
    },
    config,
  };
  return Plotly.toImage(figure as unknown as Plotly.PlotlyHTMLElement, { format, width, height });
}

function inLines(text: string, length: number): string {
  const lines: string[] = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last.length + word.length > length) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines.join('<br>');
}

/** On a narrow picture every second line of a background family goes without its words. */
function withFewerWords(chart: ChartSpecification): ChartSpecification {
  const seen = new Map<string, number>();
  const series = chart.series.map((one) => {
    if (one.written === undefined || !one.silent) return one;
    const count = (seen.get(one.label) ?? 0) + 1;
    seen.set(one.label, count);
    const { written, ...rest } = one;
    return count % 2 === 1 ? one : rest;
  });
  return { ...chart, series };
}

function traces(chart: ChartSpecification, palette: Palette): Data[] {
  return [
    ...chart.limits.map((limit) => limitTrace(chart, limit, palette)),
    ...chart.series.map((series) => seriesTrace(series, palette)),
  ] as Data[];
}

function seriesTrace(series: ChartSeries, palette: Palette): object {
  const colour = palette.ink(series.ink);
  const hover = series.silent
    ? { hoverinfo: 'skip' }
    : series.hover
      ? { hovertext: series.hover, hoverinfo: 'text' }
      : {};
  const shared = { name: series.label, x: series.x, y: series.y, showlegend: series.inLegend ?? false, ...hover };
  const line = { color: colour, width: series.width ?? 1.5, dash: series.dash ?? 'solid' };
  const own = {
    line: { type: 'scatter', mode: 'lines', line },
    area: { type: 'scatter', mode: 'lines', line, fill: 'tozeroy' },
    range: {
      type: 'scatter',
      mode: 'lines',
      line: { width: 0 },
      fill: 'toself',
      fillcolor: translucent(palette.fill(series.ink)),
    },
    points: {
      type: 'scatter',
      mode: 'markers',
      marker: { color: colour, size: 8, line: { color: palette.sheet, width: 1.5 } },
    },
    bar: {
      type: 'bar',
      marker: {
        color: palette.fill(series.ink),
        pattern:
          series.dash === 'dash'
            ? { shape: '/', fgcolor: palette.fill(series.ink), bgcolor: palette.sheet, solidity: 0.5 }
            : undefined,
      },
    },
  }[series.kind];
  return { ...shared, ...own };
}

/** Lines and words stay legible on the range they run through. */
function translucent(colour: string): string {
  const parts = /^rgb\((.*)\)$/.exec(colour)?.[1];
  return parts === undefined ? colour : `rgba(${parts}, 0.22)`;
}

/** The part of the picture beyond a limit, hatched. */
function limitTrace(chart: ChartSpecification, limit: ChartSpecification['limits'][number], palette: Palette): object {
  const [x0, x1] = limit.axis === 'x' ? [limit.from, limit.to] : (chart.x.range ?? [0, 1]);
  const [y0, y1] = limit.axis === 'y' ? [limit.from, limit.to] : (chart.y.range ?? [0, 1]);
  return {
    type: 'scatter',
    mode: 'lines',
    x: [x0, x1, x1, x0, x0],
    y: [y0, y0, y1, y1, y0],
    fill: 'toself',
    fillcolor: 'rgba(0,0,0,0)',
    fillpattern: { shape: '/', fgcolor: palette.ink('stop'), bgcolor: 'rgba(0,0,0,0)', size: 10, solidity: 0.08 },
    line: { color: palette.ink('stop'), width: 1, dash: 'dot' },
    name: limit.label,
    hoverinfo: 'skip',
    showlegend: false,
  };
}

function layout(chart: ChartSpecification, palette: Palette, narrow: boolean): Partial<Layout> {
  const levels = chart.levels.map((level) => ({
    type: 'line',
    xref: 'paper',
    yref: 'y',
    x0: 0,
    x1: 1,
    y0: level.y,
    y1: level.y,
    line: { color: palette.ink(level.ink), width: 1.5, dash: 'longdash' },
  }));
  return {
    autosize: true,
    height: undefined,
    paper_bgcolor: 'rgba(0,0,0,0)',
    plot_bgcolor: 'rgba(0,0,0,0)',
    font: { family: palette.family, size: palette.fontSize, color: palette.soft },
    margin: narrow ? { l: 48, r: 10, t: 14, b: 44 } : { l: 64, r: 18, t: 18, b: 52 },
    xaxis: axis(chart.x, palette, narrow),
    yaxis: axis(chart.y, palette, narrow),
    shapes: levels,
    hovermode: 'closest',
    hoverlabel: {
      bgcolor: palette.sheet,
      bordercolor: palette.rule,
      align: 'left',
      font: { family: palette.family, size: palette.fontSize, color: palette.ink('ink') },
    },
    showlegend: chart.series.some((series) => series.inLegend),
    legend: { orientation: 'h', x: 0, y: 1.02, yanchor: 'bottom', font: { size: palette.fontSize } },
    barmode: chart.series.some((series) => series.stacked) ? 'relative' : 'group',
    bargap: 0.28,
    dragmode: narrow ? false : 'zoom',
  } as unknown as Partial<Layout>;
}

/** Ends of an axis as the library counts them. */
function endsOf({ range, logarithmic }: ChartAxis): [number, number] {
  const [low, high] = range ?? [0, 1];
  return logarithmic ? [Math.log10(low), Math.log10(high)] : [low, high];
}

function axis(spec: ChartAxis, palette: Palette, narrow: boolean): object {
  const range = spec.range && endsOf(spec);
  return {
    title: { text: spec.unit === '' ? spec.label : `${spec.label}, ${spec.unit}`, standoff: narrow ? 6 : 10 },
    type: spec.names ? 'category' : spec.logarithmic ? 'log' : 'linear',
    ...(spec.names ? { categoryorder: 'array', categoryarray: spec.names } : {}),
    ...(range ? { range } : {}),
    ...(spec.logarithmic ? { dtick: 'D2', tickformat: '~r' } : {}),
    gridcolor: palette.grid,
    linecolor: palette.rule,
    tickcolor: palette.rule,
    ticks: 'outside',
    ticklen: 4,
    zeroline: false,
    showline: true,
    fixedrange: narrow,
    automargin: true,
  };
}
