// p-h and T-s pictures of a loop as chart specifications: dome, isotherms or isobars, isentropes, quality lines in
// neutral greys told apart by dash and written on, the loop in the inks of its heat, source and water as levels.

import { fixedDecimals, quantityUnit, sayQuantity, toView, type UnitView } from '../../quantities/index.ts';
import type {
  ChartNote,
  ChartSeries,
  ChartSpecification,
  Dash,
  InkRole,
  LevelLine,
  LimitBand,
} from '../specification.ts';
import type { Diagram, DiagramState } from './loop-diagram.ts';
import { type Plane, pictureTitle } from './plane-titles.ts';
import { pointNumbers, stateTable, stateTitle } from './state-table.ts';

type Line = Diagram['pressureEnthalpy']['lines'][number];

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

/** Which ink each process of the loop is drawn in: by where its energy comes from or goes. In order of flow. */
const processInks = {
  compression: 'electricity',
  condensation: 'intoWater',
  liquidCooling: 'neutral',
  expansion: 'ink',
  evaporation: 'fromSource',
  gasHeating: 'neutral',
} as const;

type ProcessWords = Readonly<Record<keyof typeof processInks, string>>;

/** A loop of the workbench stands between a source and the water; a textbook cycle between nothing in particular. */
function processWords({ levels }: Diagram): ProcessWords {
  const hasBodies = levels.length > 0;
  return {
    compression: 'compression',
    condensation: hasBodies ? 'heat into the water' : 'condensation',
    liquidCooling: 'heat exchanger',
    expansion: 'expansion',
    evaporation: hasBodies ? 'heat from the source' : 'evaporation',
    gasHeating: 'heat exchanger',
  };
}

export function pressureEnthalpyChart(diagram: Diagram, view: UnitView): ChartSpecification {
  return propertyChart(diagram, 'pressureEnthalpy', view);
}

export function temperatureEntropyChart(diagram: Diagram, view: UnitView): ChartSpecification {
  return propertyChart(diagram, 'temperatureEntropy', view);
}

function propertyChart(diagram: Diagram, plane: Plane, view: UnitView): ChartSpecification {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const isPressure = plane === 'pressureEnthalpy';
  const frame = frameOf([diagram], plane, view);
  const families = diagram[plane].lines.map((line) => familySeries(line, plane, view));
  return {
    title: pictureTitle(plane, diagram.refrigerant),
    description: descriptionOf(diagram, isPressure, view),
    ...axesOf(plane, frame, view),
    series: [...families, ...processSeries(diagram, plane, view), pointSeries(diagram.points, plane, view)],
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

/** Both axes of a plane over what the frame shows; pressures on a logarithmic scale. */
export function axesOf(plane: Plane, frame: Frame, view: UnitView): Pick<ChartSpecification, 'x' | 'y'> {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const isPressure = plane === 'pressureEnthalpy';
  return {
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
  const exchanger = diagram.path.some(({ process }) => process === 'gasHeating')
    ? ' Between 3 and 3′ the liquid gives heat to the suction gas, which takes it between 4′ and 1.'
    : '';
  return `${turn}${exchanger} ${families}${levels}`;
}

export const planeQuantities = {
  pressureEnthalpy: ['enthalpy', 'pressure'],
  temperatureEntropy: ['entropy', 'temperature'],
} as const;

export function valueOn(point: Omit<DiagramState, 'name'>, plane: Plane, axis: 'x' | 'y'): number {
  if (plane === 'pressureEnthalpy') return axis === 'x' ? point.enthalpy : point.pressure;
  return axis === 'x' ? point.entropy : point.temperature;
}

export function notePlace(name: string, plane: Plane): ChartNote['place'] {
  if (name === 'compressorInlet') return plane === 'pressureEnthalpy' ? 'below' : 'right';
  if (name === 'compressorOutletIsentropic') return plane === 'pressureEnthalpy' ? 'aboveLeft' : 'left';
  if (name === 'compressorOutlet') return plane === 'pressureEnthalpy' ? 'aboveRight' : 'right';
  if (name === 'condenserOutlet') return plane === 'pressureEnthalpy' ? 'above' : 'aboveLeft';
  if (name === 'expansionInlet') return plane === 'pressureEnthalpy' ? 'aboveLeft' : 'left';
  return 'below';
}

export interface Frame {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** The part of the plane that shows domes and loops, with a margin. */
export function frameOf(diagrams: readonly Diagram[], plane: Plane, view: UnitView): Frame {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const path = diagrams.flatMap((diagram) => diagram.path);
  const pathYs = path.map((point) => valueOn(point, plane, 'y'));
  const top = Math.max(...diagrams.map((diagram) => diagram[plane].criticalPoint.y), ...pathYs);
  const low = Math.min(...pathYs);
  const [bottom, above] = plane === 'pressureEnthalpy' ? [low / 1.9, top * 1.35] : [low - 18, top + 14];
  const domes = diagrams.flatMap((diagram) => diagram[plane].lines.filter(isDome));
  const xs = [
    ...domes.flatMap((line) => line.x.filter((_, index) => line.y[index]! >= bottom)),
    ...path.map((point) => valueOn(point, plane, 'x')),
  ];
  const [xLow, xHigh] = [Math.min(...xs), Math.max(...xs)].map((x) => toView(x, xQuantity, view)) as [number, number];
  return {
    x: [xLow - 0.02 * (xHigh - xLow), xHigh + 0.12 * (xHigh - xLow)],
    y: [toView(bottom, yQuantity, view), toView(above, yQuantity, view)],
  };
}

export function isDome({ kind }: Line): boolean {
  return kind === 'bubble' || kind === 'dew';
}

export function familySeries(line: Line, plane: Plane, view: UnitView): ChartSeries {
  const [xQuantity, yQuantity] = planeQuantities[plane];
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
  if (line.kind === 'isentrope') return `s ${fixedDecimals(toView(line.value, 'entropy', view), 2)}`;
  if (line.kind === 'quality' && Math.round(line.value * 10) % 2 === 0) return `x ${line.value.toFixed(1)}`;
  return undefined;
}

/** How one of two loops is told from the other. */
export interface LoopLook {
  readonly dash: Dash;
  readonly width: number;
  /** Before the words shown on hovering. */
  readonly prefix: string;
  readonly inLegend: boolean;
}

const aloneLook: LoopLook = { dash: 'solid', width: 3, prefix: '', inLegend: true };

/** The processes that the loop has, in order of flow. */
export function processSeries(diagram: Diagram, plane: Plane, view: UnitView, look = aloneLook): ChartSeries[] {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  const words = processWords(diagram);
  return (Object.keys(processInks) as (keyof typeof processInks)[]).flatMap((process): ChartSeries[] => {
    const points = diagram.path.filter((point) => point.process === process);
    if (points.length === 0) return [];
    const label = words[process];
    const title = (point: Omit<DiagramState, 'name'>) => `${look.prefix}${titleAt(point, diagram) ?? label}`;
    return [
      {
        label,
        kind: 'line',
        ink: processInks[process],
        dash: look.dash,
        width: look.width,
        // Its two sides look the same and stand in the legend once.
        inLegend: look.inLegend && process !== 'gasHeating',
        x: points.map((point) => toView(valueOn(point, plane, 'x'), xQuantity, view)),
        y: points.map((point) => toView(valueOn(point, plane, 'y'), yQuantity, view)),
        hover: points.map((point) => hoverWords(title(point), point, view)),
      },
    ];
  });
}

export function pointSeries(points: readonly DiagramState[], plane: Plane, view: UnitView, prefix = ''): ChartSeries {
  const [xQuantity, yQuantity] = planeQuantities[plane];
  return {
    label: 'states',
    kind: 'points',
    ink: 'ink',
    x: points.map((point) => toView(valueOn(point, plane, 'x'), xQuantity, view)),
    y: points.map((point) => toView(valueOn(point, plane, 'y'), yQuantity, view)),
    hover: points.map((point) => hoverWords(`${prefix}${stateTitle(point.name)}`, point, view)),
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
