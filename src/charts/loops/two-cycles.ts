// One or two textbook cycles in one p-h or T-s picture. Of two, A is drawn whole and B broken and thinner, each state
// carries its letter, and one table says both. Cycles of one refrigerant share its dome and lines; of two refrigerants only
// the domes are drawn, and enthalpy and entropy of each count from a zero of its own. Levels and limits are left out of two.

import { toView, type UnitView } from '../../quantities/index.ts';
import type { ChartNote, ChartSeries, ChartSpecification, ChartTable } from '../specification.ts';
import type { Diagram, DiagramState } from './loop-diagram.ts';
import { type Plane, pictureTitle } from './plane-titles.ts';
import {
  axesOf,
  type Frame,
  familySeries,
  frameOf,
  isDome,
  type LoopLook,
  notePlace,
  planeQuantities,
  pointSeries,
  pressureEnthalpyChart,
  processSeries,
  temperatureEntropyChart,
  valueOn,
} from './property-diagrams.ts';
import { sayReferenceState } from './reference-state.ts';
import { pointNumbers, stateTable } from './state-table.ts';

/** What is drawn: one cycle, or two of them. */
export type Cycles = readonly [Diagram] | readonly [Diagram, Diagram];

const letters = ['A', 'B'] as const;

const looks: readonly [LoopLook, LoopLook] = [
  { dash: 'solid', width: 3, prefix: 'A, ', inLegend: true },
  { dash: 'dash', width: 2, prefix: 'B, ', inLegend: true },
];

/**
 * The picture of one cycle or of two.
 * @param cycles  made by makeDiagram; two of the same refrigerant are drawn from the zero of the first
 * @param plane   which axes
 * @param view    units
 */
export function cyclesChart(cycles: Cycles, plane: Plane, view: UnitView): ChartSpecification {
  const [first, given] = cycles;
  if (given === undefined) {
    return plane === 'pressureEnthalpy' ? pressureEnthalpyChart(first, view) : temperatureEntropyChart(first, view);
  }
  const isOneFluid = first.refrigerant === given.refrigerant;
  const second = isOneFluid ? onZeroOf(first, given) : given;
  const both = [first, second] as const;
  const isPressure = plane === 'pressureEnthalpy';
  const frame = frameOf(both, plane, view);
  return {
    title: pictureTitle(plane, named(first, second)),
    description: descriptionOf(both, isPressure, isOneFluid, view),
    ...axesOf(plane, frame, view),
    series: [...(isOneFluid ? sharedLines(both, plane, view) : domes(both, plane, view)), ...loops(both, plane, view)],
    limits: [],
    levels: [],
    notes: [...stateNotes(both, frame, plane, view), ...(isOneFluid ? [] : domeNotes(both, plane, view))],
    table: tableOf(both, isOneFluid, view),
    proportion: 0.64,
  };
}

function named(first: Diagram, second: Diagram): string {
  return first.refrigerant === second.refrigerant
    ? `${first.refrigerant}, cycle A whole and B broken`
    : `A, ${first.refrigerant} (whole), and B, ${second.refrigerant} (broken)`;
}

/** The same diagram with enthalpies and entropies counted from the zero of another of the same refrigerant. */
function onZeroOf(other: Diagram, diagram: Diagram): Diagram {
  const enthalpy = other.offset.enthalpy - diagram.offset.enthalpy;
  const entropy = other.offset.entropy - diagram.offset.entropy;
  if (enthalpy === 0 && entropy === 0) return diagram;
  const moved = <State extends { readonly enthalpy: number; readonly entropy: number }>(state: State): State => ({
    ...state,
    enthalpy: state.enthalpy + enthalpy,
    entropy: state.entropy + entropy,
  });
  const along = (plane: Plane, shift: number) => ({
    ...diagram[plane],
    lines: diagram[plane].lines.map((line) => ({
      ...line,
      value: line.kind === 'isentrope' ? line.value + entropy : line.value,
      x: line.x.map((x) => x + shift),
    })),
    criticalPoint: { ...diagram[plane].criticalPoint, x: diagram[plane].criticalPoint.x + shift },
  });
  return {
    ...diagram,
    referenceState: other.referenceState,
    offset: other.offset,
    pressureEnthalpy: along('pressureEnthalpy', enthalpy),
    temperatureEntropy: along('temperatureEntropy', entropy),
    path: diagram.path.map(moved),
    points: diagram.points.map(moved),
  };
}

/** Each process stands in the key once, as A draws it, or B where A has none. */
function loops(both: readonly [Diagram, Diagram], plane: Plane, view: UnitView): ChartSeries[] {
  const [ofA, ofB] = both.map((cycle, index) => processSeries(cycle, plane, view, looks[index]!));
  const [statesA, statesB] = both.map((cycle, index) =>
    pointSeries(shownStates(cycle), plane, view, looks[index]!.prefix),
  );
  const inKey = new Set(ofA!.filter(({ inLegend }) => inLegend).map(({ label }) => label));
  return [
    ...ofA!,
    statesA!,
    ...ofB!.map((series) => ({ ...series, inLegend: (series.inLegend ?? false) && !inKey.has(series.label) })),
    statesB!,
  ];
}

/** Lines of the one refrigerant, from the diagram that reaches to the lower pressures. */
function sharedLines(both: readonly [Diagram, Diagram], plane: Plane, view: UnitView): ChartSeries[] {
  const lowest = ({ path }: Diagram) => Math.min(...path.map(({ pressure }) => pressure));
  const [first, second] = both;
  const wider = lowest(second) < lowest(first) ? second : first;
  return wider[plane].lines.map((line) => familySeries(line, plane, view));
}

/** Lines inside two domes that overlap would say nothing any more. */
function domes(both: readonly [Diagram, Diagram], plane: Plane, view: UnitView): ChartSeries[] {
  return both.flatMap((diagram, index) =>
    diagram[plane].lines
      .filter(isDome)
      .map((line) => ({ ...familySeries(line, plane, view), dash: looks[index]!.dash, width: index === 0 ? 2 : 1.5 })),
  );
}

/** The outlet without losses stands in the table: two more numbers would crowd the picture. */
function shownStates({ points }: Diagram): readonly DiagramState[] {
  return points.filter(({ name }) => name !== 'compressorOutletIsentropic');
}

/** Numbers of states nearer to each other than this share of the picture would stand on one another. */
const near = 0.07;

/** States this near are one: their numbers stand on either side of it. */
const same = 0.005;

/** Both cycles' states by letter and number; of two that would stand on one another each takes the side away from the other. */
function stateNotes(both: readonly [Diagram, Diagram], frame: Frame, plane: Plane, view: UnitView): ChartNote[] {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const notes = both.flatMap((cycle, index) =>
    shownStates(cycle).map(
      (point): ChartNote => ({
        text: `${letters[index]}${pointNumbers[point.name] ?? point.name}`,
        x: toView(valueOn(point, plane, 'x'), xQuantity, view),
        y: toView(valueOn(point, plane, 'y'), yQuantity, view),
        ink: 'ink',
        place: notePlace(point.name, plane),
      }),
    ),
  );
  const shareOf = ({ x, y }: ChartNote): readonly [number, number] => [
    (x - frame.x[0]) / (frame.x[1] - frame.x[0]),
    plane === 'pressureEnthalpy'
      ? Math.log(y / frame.y[0]) / Math.log(frame.y[1] / frame.y[0])
      : (y - frame.y[0]) / (frame.y[1] - frame.y[0]),
  ];
  return notes.map((note) => {
    const crowding = notes.filter(({ text, place }) => text[0] !== note.text[0] && place === note.place);
    const away = crowding.map((other) => sideAway(shareOf(note), shareOf(other), note.text.startsWith('A')));
    return { ...note, place: away.find((side) => side !== undefined) ?? note.place };
  });
}

/** The side of a state away from another; undefined where that is far enough. Of two that are one, A stands below. */
function sideAway(
  [x, y]: readonly [number, number],
  [otherX, otherY]: readonly [number, number],
  isOfA: boolean,
): ChartNote['place'] | undefined {
  const [dx, dy] = [x - otherX, y - otherY];
  const distance = Math.max(Math.abs(dx), Math.abs(dy));
  if (distance >= near) return undefined;
  if (distance < same) return isOfA ? 'below' : 'above';
  if (Math.abs(dx) >= Math.abs(dy)) return dx < 0 ? 'left' : 'right';
  return dy < 0 ? 'below' : 'above';
}

/** The name of each dome, at its top. */
function domeNotes(both: readonly [Diagram, Diagram], plane: Plane, view: UnitView): ChartNote[] {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const [first, second] = both.map((diagram) => diagram[plane].criticalPoint.x);
  return both.map((diagram, index) => ({
    text: `${letters[index]} ${diagram.refrigerant}`,
    x: toView(diagram[plane].criticalPoint.x, xQuantity, view),
    y: toView(diagram[plane].criticalPoint.y, yQuantity, view),
    ink: 'neutral',
    place: (index === 0) === first! <= second! ? 'aboveLeft' : 'aboveRight',
  }));
}

function descriptionOf(
  [first, second]: readonly [Diagram, Diagram],
  isPressure: boolean,
  isOneFluid: boolean,
  view: UnitView,
): string {
  const drawn = `A (${first.refrigerant}) is drawn whole, B (${second.refrigerant}) broken; both ${isPressure ? 'run anticlockwise' : 'run clockwise'} from 1 through 2, 3 and 4, in the inks of one key.`;
  if (isOneFluid) return `${drawn} They share one dome and its lines.`;
  return `${drawn} Each has a dome of its own. ${ownZeros(first, second, isPressure ? 'enthalpy' : 'entropy', view)}`;
}

function ownZeros(first: Diagram, second: Diagram, what: string, view: UnitView): string {
  const [zeroA, zeroB] = [first, second].map(({ referenceState }) => sayReferenceState(referenceState, view));
  const zeros = zeroA === zeroB ? zeroA! : `A: ${zeroA}; B: ${zeroB}`;
  return `The ${what} of each refrigerant counts from a zero of its own (${zeros}): compare widths between the two, not places.`;
}

function tableOf(both: readonly [Diagram, Diagram], isOneFluid: boolean, view: UnitView): ChartTable {
  const [first, second] = both;
  const [tableA, tableB] = both.map(({ points, referenceState }) => stateTable(points, view, referenceState));
  const caption = isOneFluid
    ? tableA!.caption.replace('States of the refrigerant', `States of both cycles, ${first.refrigerant}`)
    : `States of both cycles, in order of flow. ${ownZeros(first, second, 'enthalpy and entropy', view)}`;
  const rows = [tableA!, tableB!].flatMap(({ rows }, index) =>
    rows.map((row) => [`${letters[index]}, ${both[index]!.refrigerant}`, ...row]),
  );
  // One of the two may know less of its states than the other.
  const columns = tableA!.columns.length < tableB!.columns.length ? tableA!.columns : tableB!.columns;
  return {
    caption,
    columns: [{ label: 'Cycle' }, ...columns],
    rows: rows.map((row) => row.slice(0, columns.length + 1)),
  };
}
