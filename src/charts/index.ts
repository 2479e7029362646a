// Pictures as data: what each chart says (axes, lines, words on it, and the table that says the same), made by pure
// functions from results. How it is drawn is the business of whoever draws it.

export { billsByMonthChart } from './bills.ts';
export { csvText, type NamedState, statesCsv } from './csv.ts';
export { loadMapCsv } from './load-map-csv.ts';
export { isobarsFor, isothermsFor } from './loops/families.ts';
export {
  type Diagram,
  type DiagramLevel,
  type DiagramLimit,
  type DiagramRequest,
  type DiagramState,
  type LevelRequest,
  type LimitRequest,
  makeDiagram,
} from './loops/loop-diagram.ts';
export { type Plane, pictureTitle } from './loops/plane-titles.ts';
export { pressureEnthalpyChart, temperatureEntropyChart } from './loops/property-diagrams.ts';
export { makeReducedLoops, type ReducedLoop, type ReducedLoopRequest } from './loops/reduced-loops.ts';
export { reducedLoopsChart } from './loops/reduced-loops-chart.ts';
export { sayReferenceState } from './loops/reference-state.ts';
export { settledLoop } from './loops/settled-loop.ts';
export { inOrderOfFlow, pointNumbers, stateTable, stateTitle } from './loops/state-table.ts';
export { cyclesChart } from './loops/two-cycles.ts';
export { type MapView, machineMapChart, sayMachineMap } from './machine/map-chart.ts';
export { mapLimitTable } from './machine/map-limit-table.ts';
export type { Drawn } from './machine/map-points.ts';
export { nearestFamily } from './machine/nearest-family.ts';
export { monthsChart } from './months.ts';
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
export { escapeMarkup } from './still/text.ts';
export { chartSvg, type SvgOptions } from './svg.ts';
export { type DrawnPlot, type Measure, type PlacedWords, wordsOnChart } from './words.ts';
export { lastInchChart } from './wrapping/last-inch.ts';
