// p-h and T-s pictures of a loop as chart specifications: dome, isotherms or isobars, isentropes, quality lines in
// neutral greys told apart by dash and written on, the loop in the inks of its heat, source and water as levels.

import type { ReferenceStateName } from '../matter/refrigerants/index.ts';
import { type QuantityName, quantityUnit, sayQuantity, toView, type UnitView } from '../quantities/index.ts';
import type { Diagram, DiagramState } from './loop-diagram.ts';
import { sayReferenceState } from './reference-state.ts';
import type {
  ChartNote,
  ChartSeries,
  ChartSpecification,
  Dash,
  InkRole,
  LevelLine,
  LimitBand,
} from './specification.ts';

type Line = Diagram['pressureEnthalpy']['lines'][number];
type Plane = 'pressureEnthalpy' | 'temperatureEntropy';

interface LineLook {
  readonly label: string;
  readonly dash: Dash;
  readonly ink: InkRole;
  readonly width: number;
}

const lineLooks: Record<Line['kind'], LineLook> = {
  bubble: { label: 'boiling liquid', dash: 'solid', ink: 'neutral', width: 2 },
  dew: { label: 'dry vapour', dash: 'solid', ink: 'neutral', width: 2 },
  isotherm: { label: 'constant temperature', dash: 'dash', ink: 'faint', width: 1 },
  isobar: { label: 'constant pressure', dash: 'dash', ink: 'faint', width: 1 },
  isentrope: { label: 'constant entropy', dash: 'dot', ink: 'faint', width: 1 },
  quality: { label: 'constant quality', dash: 'longdash', ink: 'faint', width: 0.75 },
};

/** Which ink each process of the loop is drawn in: by where its energy comes from or goes. */
const processInks = {
  compression: 'electricity',
  condensation: 'intoWater',
  expansion: 'ink',
  evaporation: 'fromSource',
} as const;

type ProcessWords = Readonly<Record<keyof typeof processInks, string>>;

/** A loop of the workbench stands between a source and the water; a textbook cycle between nothing in particular. */
function processWords({ levels }: Diagram): ProcessWords {
  return levels.length > 0
    ? {
        compression: 'compression',
        condensation: 'heat into the water',
        expansion: 'expansion',
        evaporation: 'heat from the source',
      }
    : {
        compression: 'compression',
        condensation: 'condensation',
        expansion: 'expansion',
        evaporation: 'evaporation',
      };
}

const pointWords: Readonly<Record<string, string>> = {
  compressorInlet: 'into the compressor',
  compressorOutletIsentropic: 'out of a loss-free compressor',
  compressorOutlet: 'out of the compressor',
  condenserOutlet: 'out of the condenser',
  evaporatorInlet: 'into the evaporator',
};

/** States in order of flow, numbered as in the picture; the loss-free outlet is numbered 2s. */
const pointNumbers: Readonly<Record<string, string>> = {
  compressorInlet: '1',
  compressorOutletIsentropic: '2s',
  compressorOutlet: '2',
  condenserOutlet: '3',
  evaporatorInlet: '4',
};

export function pressureEnthalpyChart(diagram: Diagram, view: UnitView): ChartSpecification {
  return propertyChart(diagram, 'pressureEnthalpy', view);
}

export function temperatureEntropyChart(diagram: Diagram, view: UnitView): ChartSpecification {
  return propertyChart(diagram, 'temperatureEntropy', view);
}

function propertyChart(diagram: Diagram, plane: Plane, view: UnitView): ChartSpecification {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const isPressure = plane === 'pressureEnthalpy';
  const frame = frameOf(diagram, plane, view);
  const families = diagram[plane].lines.map((line) => familySeries(line, xQuantity, yQuantity, view));
  return {
    title: `${isPressure ? 'Pressure and enthalpy' : 'Temperature and entropy'} of ${diagram.refrigerant}`,
    description: descriptionOf(diagram, isPressure, view),
    x: {
      label: isPressure ? 'specific enthalpy' : 'specific entropy',
      unit: quantityUnit(xQuantity, view),
      range: frame.x,
    },
    y: {
      label: isPressure ? 'pressure, absolute' : 'temperature',
      unit: quantityUnit(yQuantity, view),
      range: frame.y,
      logarithmic: isPressure,
    },
    series: [...families, ...processSeries(diagram, plane, view), pointSeries(diagram, plane, view)],
    limits: limitBands(diagram, plane, frame, view),
    levels: levelLines(diagram, plane, view),
    notes: diagram.points.map((point) => ({
      text: pointNumbers[point.name] ?? point.name,
      x: toView(valueOn(point, plane, 'x'), xQuantity, view),
      y: toView(valueOn(point, plane, 'y'), yQuantity, view),
      ink: 'ink',
      place: notePlace(point.name, plane),
    })),
    table: stateTable(diagram.points, view, diagram.referenceState),
    proportion: 0.64,
  };
}

function descriptionOf(diagram: Diagram, isPressure: boolean, view: UnitView): string {
  const { condensation, evaporation } = processWords(diagram);
  const turn = isPressure
    ? `The loop runs anticlockwise: up the compression, left along the ${condensation}, straight down the expansion, right along the ${evaporation}.`
    : `The loop runs clockwise: up the compression, left along the ${condensation}, down the expansion, right along the ${evaporation}.`;
  const families = isPressure
    ? `Broken greys are lines of constant temperature, of constant entropy (s, in ${quantityUnit('entropy', view)}) and of constant quality (x, the share of vapour).`
    : 'Broken greys are lines of constant pressure and of constant quality (x, the share of vapour).';
  const levels =
    diagram.levels.length === 0
      ? ''
      : isPressure
        ? ' The broken levels are the pressures at which it would boil as warm as the source and as the tank water.'
        : ' The broken levels are the temperatures of the source and of the tank water.';
  return `${turn} ${families}${levels}`;
}

const planeQuantities = {
  pressureEnthalpy: ['enthalpy', 'pressure'],
  temperatureEntropy: ['entropy', 'temperature'],
} as const;

function valueOn(point: Omit<DiagramState, 'name'>, plane: Plane, axis: 'x' | 'y'): number {
  if (plane === 'pressureEnthalpy') return axis === 'x' ? point.enthalpy : point.pressure;
  return axis === 'x' ? point.entropy : point.temperature;
}

function notePlace(name: string, plane: Plane): ChartNote['place'] {
  if (name === 'compressorInlet') return plane === 'pressureEnthalpy' ? 'below' : 'right';
  if (name === 'compressorOutletIsentropic') return plane === 'pressureEnthalpy' ? 'aboveLeft' : 'left';
  if (name === 'compressorOutlet') return plane === 'pressureEnthalpy' ? 'aboveRight' : 'right';
  if (name === 'condenserOutlet') return plane === 'pressureEnthalpy' ? 'above' : 'aboveLeft';
  return 'below';
}

interface Frame {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** The part of the plane that shows the dome and the loop, with a margin. */
function frameOf(diagram: Diagram, plane: Plane, view: UnitView): Frame {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const dome = diagram[plane].lines.filter((line) => line.kind === 'bubble' || line.kind === 'dew');
  const xs = [...dome.flatMap((line) => line.x), ...diagram.path.map((point) => valueOn(point, plane, 'x'))];
  const pathYs = diagram.path.map((point) => valueOn(point, plane, 'y'));
  const top = Math.max(diagram[plane].criticalPoint.y, ...pathYs);
  const low = Math.min(...pathYs);
  const [xLow, xHigh] = [Math.min(...xs), Math.max(...xs)].map((x) => toView(x, xQuantity, view)) as [number, number];
  const x: [number, number] = [xLow - 0.02 * (xHigh - xLow), xHigh + 0.12 * (xHigh - xLow)];
  if (plane === 'pressureEnthalpy')
    return { x, y: [toView(low / 1.9, yQuantity, view), toView(top * 1.35, yQuantity, view)] };
  return { x, y: [toView(low - 18, yQuantity, view), toView(top + 14, yQuantity, view)] };
}

function familySeries(line: Line, xQuantity: QuantityName, yQuantity: QuantityName, view: UnitView): ChartSeries {
  const look = lineLooks[line.kind];
  const x = line.x.map((value) => toView(value, xQuantity, view));
  const y = line.y.map((value) => toView(value, yQuantity, view));
  const words = lineWords(line, view);
  return {
    label: look.label,
    kind: 'line',
    ink: look.ink,
    dash: look.dash,
    width: look.width,
    x,
    y,
    silent: true,
    ...(words === undefined ? {} : { written: { text: words, from: line.kind === 'quality' ? 'start' : 'end' } }),
  };
}

/** What stands on a line. Of the quality lines every second one, so that the words keep apart. */
function lineWords(line: Line, view: UnitView): string | undefined {
  if (line.kind === 'isotherm') return sayQuantity(line.value, 'temperature', view, 2);
  if (line.kind === 'isobar') return sayQuantity(line.value, 'pressure', view, 2);
  if (line.kind === 'isentrope') return `s ${toView(line.value, 'entropy', view).toFixed(2)}`;
  if (line.kind === 'quality' && Math.round(line.value * 10) % 2 === 0) return `x ${line.value.toFixed(1)}`;
  return undefined;
}

function processSeries(diagram: Diagram, plane: Plane, view: UnitView): ChartSeries[] {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const words = processWords(diagram);
  return (Object.keys(processInks) as (keyof typeof processInks)[]).map((process) => {
    const points = diagram.path.filter((point) => point.process === process);
    const label = words[process];
    return {
      label,
      kind: 'line',
      ink: processInks[process],
      width: 3,
      inLegend: true,
      x: points.map((point) => toView(valueOn(point, plane, 'x'), xQuantity, view)),
      y: points.map((point) => toView(valueOn(point, plane, 'y'), yQuantity, view)),
      hover: points.map((point) => hoverWords(titleAt(point, diagram) ?? label, point, view)),
    };
  });
}

function pointSeries(diagram: Diagram, plane: Plane, view: UnitView): ChartSeries {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  return {
    label: 'states',
    kind: 'points',
    ink: 'ink',
    x: diagram.points.map((point) => toView(valueOn(point, plane, 'x'), xQuantity, view)),
    y: diagram.points.map((point) => toView(valueOn(point, plane, 'y'), yQuantity, view)),
    hover: diagram.points.map((point) => hoverWords(stateTitle(point.name), point, view)),
  };
}

/** The name of the state where a process begins or ends: its point lies under the same pointer. */
function titleAt(point: Omit<DiagramState, 'name'>, diagram: Diagram): string | undefined {
  const state = diagram.points.find(
    ({ enthalpy, pressure }) =>
      Math.abs(enthalpy - point.enthalpy) < 1 && Math.abs(pressure / point.pressure - 1) < 1e-6,
  );
  return state && stateTitle(state.name);
}

function stateTitle(name: string): string {
  return `${pointNumbers[name] ?? ''} ${pointWords[name] ?? name}`.trim();
}

function hoverWords(title: string, point: Omit<DiagramState, 'name'>, view: UnitView): string {
  return [
    `<b>${title}</b>`,
    `temperature ${sayQuantity(point.temperature, 'temperature', view, 3)}`,
    `pressure ${sayQuantity(point.pressure, 'pressure', view, 3)}`,
    `enthalpy ${sayQuantity(point.enthalpy, 'enthalpy', view, 4)}`,
    `entropy ${sayQuantity(point.entropy, 'entropy', view, 4)}`,
  ].join('<br>');
}

function levelLines(diagram: Diagram, plane: Plane, view: UnitView): LevelLine[] {
  return diagram.levels.flatMap((level): LevelLine[] => {
    const words = `${level.name === 'source' ? 'source' : 'tank water'}, ${sayQuantity(level.temperature, 'temperature', view, 3)}`;
    const ink = level.name === 'source' ? 'fromSource' : 'intoWater';
    if (plane === 'temperatureEntropy')
      return [{ label: words, y: toView(level.temperature, 'temperature', view), ink }];
    if (level.pressure === undefined) return [];
    return [{ label: words, y: toView(level.pressure, 'pressure', view), ink }];
  });
}

/** Hatched from each limit to the edge of the picture; a limit beyond the edge is not drawn. */
function limitBands(diagram: Diagram, plane: Plane, frame: Frame, view: UnitView): LimitBand[] {
  const [bottom, top] = frame.y;
  return diagram.limits.flatMap((limit): LimitBand[] => {
    const value = plane === 'temperatureEntropy' ? limit.temperature : limit.pressure;
    if (value === undefined) return [];
    const edge = toView(value, planeQuantities[plane][1], view);
    if (edge <= bottom || edge >= top) return [];
    const label = `${limit.label}, ${sayQuantity(limit.temperature, 'temperature', view, 2)}`;
    return [
      limit.beyond === 'above'
        ? { label, axis: 'y', from: edge, to: top }
        : { label, axis: 'y', from: bottom, to: edge },
    ];
  });
}

/** States with their properties, in the view's units. */
export function stateTable(
  points: readonly (DiagramState & { readonly density?: number; readonly quality?: number | null })[],
  view: UnitView,
  reference: ReferenceStateName = 'iir',
): ChartSpecification['table'] {
  const hasMore = points.every((point) => point.density !== undefined);
  return {
    caption: `States of the refrigerant, in order of flow. Enthalpy and entropy are counted from ${sayReferenceState(reference, view)}.`,
    columns: [
      { label: 'State' },
      { label: 'Temperature', unit: quantityUnit('temperature', view), numeric: true },
      { label: 'Pressure', unit: quantityUnit('pressure', view), numeric: true },
      { label: 'Enthalpy', unit: quantityUnit('enthalpy', view), numeric: true },
      { label: 'Entropy', unit: quantityUnit('entropy', view), numeric: true },
      ...(hasMore
        ? [
            { label: 'Density', unit: quantityUnit('density', view), numeric: true },
            { label: 'Vapour share', numeric: true },
          ]
        : []),
    ],
    rows: points.map((point) => [
      stateTitle(point.name),
      inCell(toView(point.temperature, 'temperature', view), 1),
      toView(point.pressure, 'pressure', view).toPrecision(4),
      inCell(toView(point.enthalpy, 'enthalpy', view), 1),
      inCell(toView(point.entropy, 'entropy', view), 4),
      ...(hasMore
        ? [
            toView(point.density ?? 0, 'density', view).toPrecision(4),
            point.quality === null || point.quality === undefined ? '–' : inCell(point.quality, 3),
          ]
        : []),
    ]),
  };
}

/** A number with fixed decimals, with a true minus sign and no "−0.0". */
function inCell(value: number, decimals: number): string {
  const said = value.toFixed(decimals);
  return Number(said) === 0 ? said.replace('-', '') : said.replace('-', '−');
}
