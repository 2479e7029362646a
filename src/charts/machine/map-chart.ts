// How a machine runs over the evaporating temperature, a line for each condensing temperature: the heat it gives, the electricity it
// takes, or their ratio. One line has its range and its limits drawn; the table has them all.

import type { MapFamily } from '../../assess/index.ts';
import type { Band } from '../../quantities/index.ts';
import { quantityUnit, sayBand, sayQuantity, toView, type UnitView } from '../../quantities/index.ts';
import type { ChartSeries, ChartSpecification, Dash, LevelLine } from '../specification.ts';
import { limitsAt } from './map-limits.ts';
import { markNotes, markSeries } from './map-marks.ts';
import { type Drawn, drawnQuantities, type MachineMap, type PlacedPoint, placedPoints, runs } from './map-points.ts';
import { mapTable } from './map-table.ts';

export interface MapView {
  /** What is drawn. */
  readonly of: Drawn;
  /** Of the map, the line with its range and its limits. */
  readonly chosen: number;
  /** Heat the tank needs in the coldest spell [W], drawn with the heat where there is room for it. */
  readonly needed: Band;
  readonly view: UnitView;
}

/** Told apart on paper, where ink alone would not do. */
const dashes: readonly Dash[] = ['solid', 'dash', 'dot', 'dashdot', 'longdash'];

/** Above the highest number, for the name of its mark and that of a limit over it [share of it]. */
const headroom = 0.25;

/** Right of the lines, for the temperatures that they are for [share of them]. */
const besideRoom = 0.13;

/** A level is shown where it leaves the lines at least this share of the picture. */
const leastLines = 0.6;

export function machineMapChart(study: MachineMap, { of, chosen, needed, view }: MapView): ChartSpecification {
  const { quantity, label, title, ink } = drawnQuantities[of];
  const shown = study.map[chosen] ?? study.map[0]!;
  const lines = study.map.map((family) => placedPoints(family, of, view));
  const marks = markSeries(study.marks, of, view);
  const highest = Math.max(
    ...lines.flatMap((points) => points.map(({ y }) => y)),
    ...placedPoints(shown, of, view).map(({ high }) => high),
    ...marks.flatMap(({ y }) => y),
  );
  const levels = of === 'heat' ? neededLevel(needed, highest, view) : [];
  const top = (1 + headroom) * Math.max(highest, ...levels.map(({ y }) => y));
  const range = rangeOfMap(study, view);
  const { limits } = limitsAt(study.limits, shown.condensing, range, view);
  return {
    title,
    description: [describe(study, shown, limits.length > 0, view), ...neededWords(of, needed, levels, view)].join(' '),
    x: { label: 'evaporating temperature', unit: quantityUnit('temperature', view), range },
    y: { label, unit: quantityUnit(quantity, view), range: [0, top] },
    series: [
      ...runs(shown.points, (point) => point.values !== null).map((run) => rangeOf(run, shown, of, view)),
      ...study.map.flatMap((family, index) =>
        familySeries(family, { of, view, ink, dash: dashes[index % dashes.length]!, isChosen: family === shown }),
      ),
      ...marks,
    ],
    limits,
    levels,
    notes: markNotes(study.marks, of, range, view),
    proportion: 0.5,
    table: mapTable(study, of, view),
  };
}

function rangeOf(run: MapFamily['points'], { condensing }: MapFamily, of: Drawn, view: UnitView): ChartSeries {
  const points = placedPoints({ condensing, points: run }, of, view);
  const back = points.toReversed();
  return {
    label: `range at ${sayQuantity(condensing, 'temperature', view)} condensing`,
    kind: 'range',
    ink: drawnQuantities[of].ink,
    x: [...points.map(({ x }) => x), ...back.map(({ x }) => x)],
    y: [...points.map(({ low }) => low), ...back.map(({ high }) => high)],
    silent: true,
  };
}

interface LineLook {
  readonly of: Drawn;
  readonly view: UnitView;
  readonly ink: ChartSeries['ink'];
  readonly dash: Dash;
  readonly isChosen: boolean;
}

/** A line in pieces: thick where something is known of the machine, thin beyond; the last piece bears the temperature. */
function familySeries(family: MapFamily, { of, view, ink, dash, isChosen }: LineLook): readonly ChartSeries[] {
  const name = sayQuantity(family.condensing, 'temperature', view);
  const pieces = runs(family.points, (point) => point.values !== null).flatMap((run) => inAndOut(run));
  return pieces.map(({ points, isInside }, index): ChartSeries => {
    const placed = placedPoints({ ...family, points }, of, view);
    return {
      label: `${name} condensing`,
      kind: 'line',
      ink: isChosen ? ink : 'neutral',
      dash,
      width: (isInside ? 2.75 : 1.25) + (isChosen ? 0.5 : 0),
      x: placed.map(({ x }) => x),
      y: placed.map(({ y }) => y),
      hover: placed.map((point) => hoverOf(point, name, of, view)),
      ...(index === pieces.length - 1 ? { written: { text: name, from: 'beyond' } } : {}),
    };
  });
}

/** Pieces that share their ends, each all inside or all outside what is known. */
function inAndOut(
  points: MapFamily['points'],
): readonly { readonly points: MapFamily['points']; readonly isInside: boolean }[] {
  const pieces: { points: MapFamily['points'][number][]; isInside: boolean }[] = [];
  points.forEach((point, index) => {
    const before = points[index - 1];
    if (before === undefined) return;
    const isInside = before.insideData && point.insideData;
    const last = pieces.at(-1);
    if (last?.isInside === isInside) last.points.push(point);
    else pieces.push({ points: [before, point], isInside });
  });
  return pieces;
}

function hoverOf({ of: point, band }: PlacedPoint, condensing: string, of: Drawn, view: UnitView): string {
  const at = sayQuantity(point.evaporating, 'temperature', view);
  const passed = point.passed.length === 0 ? '' : '<br>a limit is passed here';
  const beyond = point.insideData ? '' : '<br>beyond what is known of it';
  const { quantity, short } = drawnQuantities[of];
  return `<b>${at} → ${condensing}</b><br>${short}: ${sayBand(band, quantity, view)}${passed}${beyond}`;
}

function neededLevel({ likely }: Band, highest: number, view: UnitView): readonly LevelLine[] {
  const y = toView(likely, 'power', view);
  if (y <= 0 || y * leastLines > highest) return [];
  return [{ label: 'the tank needs', y, ink: 'leaving' }];
}

function neededWords(of: Drawn, { likely }: Band, levels: readonly LevelLine[], view: UnitView): readonly string[] {
  if (of !== 'heat' || likely <= 0) return [];
  const where = levels.length > 0 ? 'the level drawn across' : 'above this picture';
  return [`In the coldest spell the tank needs ${sayQuantity(likely, 'power', view)}, ${where}.`];
}

function describe({ basis }: MachineMap, { condensing }: MapFamily, isHatched: boolean, view: UnitView): string {
  const hatched = isHatched ? ', what lies beyond a limit there is hatched' : '';
  return `One machine on ${basis.refrigerant}, a line for each condensing temperature. The range at ${sayQuantity(condensing, 'temperature', view)} is shaded${hatched}.`;
}

/** Evaporating temperatures of the pictures, in the units of the view, with room for the names of the lines. */
function rangeOfMap({ map, marks }: MachineMap, view: UnitView): readonly [number, number] {
  const points = [...map.flatMap((family) => family.points), ...marks];
  const ends = points.map(({ evaporating }) => toView(evaporating, 'temperature', view));
  const [first, last] = [Math.min(...ends), Math.max(...ends)];
  return [first, last + besideRoom * (last - first)];
}

/**
 * What holds for all pictures of one map, in sentences: what is known of the lines, under what they are reckoned, which limits are
 * passed further in.
 * @param study   the map, its limits and the conditions it holds under
 * @param chosen  index of the line with its range and its limits
 * @param view    units
 */
export function sayMachineMap(study: MachineMap, chosen: number, view: UnitView): readonly string[] {
  const { basis, map, limits } = study;
  const shown = map[chosen] ?? map[0]!;
  const difference = (value: number) => sayQuantity(value, 'temperatureDifference', view);
  const isKnown = map.some(({ points }) => points.some(({ insideData }) => insideData));
  return [
    isKnown
      ? 'A line is thick inside what was printed or measured of this machine, and thin beyond, where the model carries it.'
      : 'None of this lies among what was printed or measured of the machine, so every line is thin: the model carries all of it.',
    `Gas ${difference(basis.superheat)} above and liquid ${difference(basis.subcooling)} below their saturation, air around the shell at ${sayQuantity(basis.surroundings, 'temperature', view)}.`,
    limitsAt(limits, shown.condensing, rangeOfMap(study, view), view).words,
  ];
}
