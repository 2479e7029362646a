// Pictures as data: what each chart says (axes, lines, words on it, and the table that says the same), made by pure
// functions from results. How it is drawn is the business of whoever draws it.

export { billsByMonthChart } from './bills.ts';
export { csvText, type NamedState, statesCsv } from './csv.ts';
export { isobarsFor, isothermsFor } from './families.ts';
export {
  type Diagram,
  type DiagramLevel,
  type DiagramLimit,
  type DiagramRequest,
  type DiagramState,
  type LevelRequest,
  type LimitRequest,
  makeDiagram,
} from './loop-diagram.ts';
export { monthsChart } from './months.ts';
export { type Plane, pressureEnthalpyChart, temperatureEntropyChart } from './property-diagrams.ts';
export { makeReducedLoops, type ReducedLoop, type ReducedLoopRequest } from './reduced-loops.ts';
export { reducedLoopsChart } from './reduced-loops-chart.ts';
export { sayReferenceState } from './reference-state.ts';
export { settledLoop } from './settled-loop.ts';
export type {
  ChartAxis,
  ChartNote,
  ChartSeries,
  ChartSpecification,
  ChartTable,
  Dash,
  InkRole,
  LevelLine,
  LimitBand,
} from './specification.ts';
export { inOrderOfFlow, pointNumbers, stateTable } from './state-table.ts';
export { escapeMarkup } from './still/text.ts';
export { chartSvg, type SvgOptions } from './svg.ts';
export { cyclesChart } from './two-cycles.ts';
export { type DrawnPlot, type Measure, type PlacedWords, wordsOnChart } from './words.ts';
