// All words on a picture, found their places for one size of it: limits and levels first, then the numbers of the states,
// then what stands on the lines of the families. Pure; how wide a text is the caller tells.

import { type Box, boxesAlong, placeWords, type Spot, type WordsToPlace } from './place-words.ts';
import type { ChartAxis, ChartNote, ChartSeries, ChartSpecification, InkRole } from './specification.ts';

/** The plot as it is drawn: its size [px] and the ends of its axes, logarithms on a logarithmic one. */
export interface DrawnPlot {
  readonly width: number;
  readonly height: number;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** Of the words on levels [px]; those on lines are a little smaller. */
  readonly fontSize: number;
}

/** Words with their middle in coordinates of the axes, logarithms on a logarithmic one. */
export interface PlacedWords extends Spot {
  readonly text: string;
  readonly ink: InkRole;
  readonly size: number;
  readonly bold: boolean;
}

export type Measure = (text: string, fontSize: number) => number;

interface Wanted extends WordsToPlace {
  readonly text: string;
  readonly ink: InkRole;
  readonly size: number;
}

/** Words on the lines of the first of these families find their places first. */
const familyOrder = ['constant temperature', 'constant pressure', 'constant quality', 'constant entropy'];

const lineHeight = 1.25;

export function wordsOnChart(chart: ChartSpecification, plot: DrawnPlot, measure: Measure): readonly PlacedWords[] {
  const spot = (x: number | string, y: number): Spot => ({
    x: share(onAxis(Number(x), chart.x), plot.x) * plot.width,
    y: (1 - share(onAxis(y, chart.y), plot.y)) * plot.height,
  });
  const notes = chart.notes.map((note) => noteWords(note, spot(note.x, note.y), plot.fontSize + 0.5, measure));
  const drawn = chart.series.filter((series) => !series.silent && series.kind === 'line');
  // On a line that bears its own name names may stand; all else keeps clear of it.
  const named = drawn.filter((series) => series.written !== undefined);
  const loop = drawn.filter((series) => series.written === undefined);
  // A line that bears its own name is no edge: its words stand on it.
  // Nor do words stand on the range of a mark.
  const edges = chart.series.filter(
    (series) =>
      series.silent &&
      series.kind === 'line' &&
      (series.ink === 'neutral' || series.ink === 'ink') &&
      series.written === undefined,
  );
  const lineOf = (series: ChartSeries) => series.x.map((x, index) => spot(x, series.y[index] ?? 0));
  const loopAndStates: Box[] = [
    ...notes,
    ...loop.flatMap((series) => boxesAlong(lineOf(series), 5)),
    ...chart.notes.map((note) => ({ ...spot(note.x, note.y), width: 14, height: 14 })),
  ];
  // A limit is named in any case: across the dome if need be, and at the edge of the plot where nothing is free.
  const namedLines = named.flatMap((series) => boxesAlong(lineOf(series), 5));
  const limits = limitWords(chart, spot, plot, measure);
  const limitPlaces = placeWords(limits, [...loopAndStates, ...namedLines], plot).map(
    (place, index) => place ?? atTheEdge(limits[index]!),
  );
  const limitBoxes = limits.map(({ width, height }, index) => ({ ...limitPlaces[index]!, width, height }));
  const edgeBoxes = edges.flatMap((series) => boxesAlong(lineOf(series), 5));
  const taken = [...loopAndStates, ...edgeBoxes, ...limitBoxes];
  const levels = levelWords(chart, spot, plot, measure, [...taken, ...namedLines]);
  const families = familyWords(chart, lineOf, plot, measure);
  const familyPlaces = placeWords(
    families,
    [...taken, ...levels.map(({ place, ...words }) => ({ ...words, ...place }))],
    plot,
  );
  const wanted = [...limits, ...levels, ...families];
  const places = [...limitPlaces, ...levels.map(({ place }) => place), ...familyPlaces];
  const toAxes = ({ x, y }: Spot): Spot => ({
    x: plot.x[0] + (x / plot.width) * (plot.x[1] - plot.x[0]),
    y: plot.y[1] - (y / plot.height) * (plot.y[1] - plot.y[0]),
  });
  return [
    ...wanted.flatMap(({ text, ink, size }, index) => {
      const place = places[index];
      return place === undefined ? [] : [{ ...toAxes(place), text, ink, size, bold: false }];
    }),
    ...notes.map(({ text, ink, size, ...place }) => ({ ...toAxes(place), text, ink, size, bold: true })),
  ];
}

function share(value: number, [low, high]: readonly [number, number]): number {
  return (value - low) / (high - low);
}

function onAxis(value: number, axis: ChartAxis): number {
  return axis.logarithmic ? Math.log10(value) : value;
}

/** For a limit that found no place of its own: at the beginning of its edge. */
function atTheEdge({ width, height, line, above }: Wanted): Spot {
  const [start = { x: 0, y: 0 }, end = start] = line;
  const isUpright = start.x === end.x;
  return isUpright ? { x: start.x, y: height / 2 + 4 } : { x: width / 2 + 4, y: start.y - above };
}

type ToSpot = (x: number, y: number) => Spot;

/** Along the edge of the hatched margin, inside it. */
function limitWords(chart: ChartSpecification, spot: ToSpot, plot: DrawnPlot, measure: Measure): Wanted[] {
  return chart.limits.map((limit) => {
    const isUpper = limit.to >= (chart[limit.axis].range?.[1] ?? limit.to);
    const width = measure(limit.label, plot.fontSize);
    const height = plot.fontSize * lineHeight;
    const words = { text: limit.label, ink: 'stop', size: plot.fontSize, width, height } as const;
    const edge = isUpper ? limit.from : limit.to;
    if (limit.axis === 'x') {
      const x = within(spot(edge, chart.y.range?.[0] ?? 1).x + (isUpper ? 1 : -1) * (width / 2 + 6), width, plot);
      return { ...words, line: downThePlot(x, plot), above: 0 };
    }
    return { ...words, line: acrossThePlot(spot(0, edge).y, plot), above: (isUpper ? 1 : -1) * (height / 2 + 3) };
  });
}

/** The middle nearest to the one wished for at which words of that width stay in the plot. */
function within(x: number, width: number, plot: DrawnPlot): number {
  return Math.min(plot.width - width / 2 - 4, Math.max(width / 2 + 4, x));
}

function downThePlot(x: number, plot: DrawnPlot): readonly Spot[] {
  return [
    { x, y: 0 },
    { x, y: plot.height },
  ];
}

type PlacedWanted = Wanted & { readonly place: Spot };

/** Above their line; under it where there is no room above. */
function levelWords(
  chart: ChartSpecification,
  spot: ToSpot,
  plot: DrawnPlot,
  measure: Measure,
  taken: readonly Box[],
): PlacedWanted[] {
  const placed: PlacedWanted[] = [];
  for (const level of chart.levels) {
    const height = plot.fontSize * lineHeight;
    const width = measure(level.label, plot.fontSize);
    const words = { text: level.label, ink: level.ink, size: plot.fontSize, width, height };
    const line = acrossThePlot(spot(0, level.y).y, plot);
    const occupied = [...taken, ...placed.map(({ place, ...other }) => ({ ...other, ...place }))];
    for (const above of [height / 2 + 3, -(height / 2 + 3)]) {
      const wanted = { ...words, line, above };
      const [place] = placeWords([wanted], occupied, plot);
      if (place === undefined) continue;
      placed.push({ ...wanted, place });
      break;
    }
  }
  return placed;
}

function acrossThePlot(y: number, plot: DrawnPlot): readonly Spot[] {
  return [
    { x: 0, y },
    { x: plot.width, y },
  ];
}

function familyWords(
  chart: ChartSpecification,
  lineOf: (series: ChartSeries) => readonly Spot[],
  plot: DrawnPlot,
  measure: Measure,
): Wanted[] {
  const size = plot.fontSize - 1;
  const families = chart.series
    .flatMap((series) => (series.written === undefined ? [] : [{ series, written: series.written }]))
    .sort((a, b) => familyOrder.indexOf(a.series.label) - familyOrder.indexOf(b.series.label))
    .map(({ series, written }): Wanted & { readonly isBeyond: boolean } => {
      const width = measure(written.text, size);
      const line = lineOf(series);
      return {
        text: written.text,
        ink: series.ink === 'faint' ? 'neutral' : series.ink,
        size,
        width,
        height: size * lineHeight,
        line: {
          start: () => line,
          end: () => line.toReversed(),
          beyond: () => besideTheEnd(line, width, plot),
        }[written.from](),
        above: 0,
        isBeyond: written.from === 'beyond',
      };
    });
  // Beside the ends of their lines the names stand in the order of those ends, so that each is found by its line.
  const beside = families.filter(({ isBeyond }) => isBeyond);
  return [
    ...families.filter(({ isBeyond }) => !isBeyond),
    ...beside.toSorted((a, b) => (a.line[0]?.y ?? 0) - (b.line[0]?.y ?? 0)),
  ];
}

/** Right of where a line ends; further down where another name stands there already. */
function besideTheEnd(line: readonly Spot[], width: number, plot: DrawnPlot): readonly Spot[] {
  const end = line.at(-1);
  if (end === undefined) return [];
  const x = within(end.x + width / 2 + besideGap, width, plot);
  return [
    { x, y: end.y },
    { x, y: plot.height },
  ];
}

/** Between the end of a line and the name beside it [px]. */
const besideGap = 6;

type NoteBox = Box & { readonly text: string; readonly ink: InkRole; readonly size: number };

function noteWords(note: ChartNote, at: Spot, size: number, measure: Measure): NoteBox {
  const width = 1.15 * measure(note.text, size);
  const height = size * lineHeight;
  const aside = note.place.endsWith('eft') ? -1 : note.place.endsWith('ight') ? 1 : 0;
  const up = note.place.startsWith('above') ? -1 : note.place.startsWith('below') ? 1 : 0;
  const isDiagonal = aside !== 0 && up !== 0;
  return {
    text: note.text,
    ink: note.ink,
    size,
    width,
    height,
    x: at.x + aside * (width / 2 + (isDiagonal ? 2 : 8)),
    y: at.y + up * (height / 2 + (isDiagonal ? 4 : 6)),
  };
}
