// Loops of several refrigerants over one another in one p-h picture on axes without units. Domes and loops are told apart by
// dash and name, thin and thick; what the coordinates mean stands above the picture.

import { fixedDecimals, quantityUnit, toView, type UnitView } from '../../quantities/index.ts';
import type { ChartNote, ChartSeries, ChartSpecification, Dash } from '../specification.ts';
import type { ReducedLoop } from './reduced-loops.ts';

const dashes: readonly Dash[] = ['solid', 'dash', 'dot', 'dashdot', 'longdash'];

/** Least distance between the names of two loops, in decades of pressure. */
const nameSpacing = 0.09;

/** The picture of the loops, and the table that says the same. */
export function reducedLoopsChart(loops: readonly ReducedLoop[], view: UnitView): ChartSpecification {
  const series = loops.flatMap((loop, index): ChartSeries[] => {
    const dash = dashes[index % dashes.length]!;
    const { refrigerant: name } = loop;
    return [
      {
        label: `dome of ${name}`,
        kind: 'line',
        ink: 'neutral',
        dash,
        width: 1.25,
        x: loop.dome.x,
        y: loop.dome.y,
        silent: true,
        written: { text: name, from: 'start' },
      },
      {
        label: name,
        kind: 'line',
        ink: 'ink',
        dash,
        width: 2.25,
        x: loop.loop.x,
        y: loop.loop.y,
        hover: loop.loop.x.map(() => `loop of ${name}`),
        inLegend: true,
      },
    ];
  });
  const ys = loops.flatMap(({ loop }) => loop.y);
  const xs = loops.flatMap(({ loop, dome }) => [...loop.x, Math.max(...dome.x)]);
  return {
    title: 'The loops over one another',
    description:
      'Pressure is counted in critical pressures, enthalpy from boiling liquid at the loop’s own evaporating pressure in parts of the latent heat there: along an evaporating line 0 is boiling liquid and 1 dry vapour, whatever the fluid. So unlike fluids fit one picture: how near each works to its critical point, and how much of its latent heat it uses, can be compared; watts cannot. Thick lines are loops, thin ones domes, told apart by their dashes and names.',
    x: {
      label: 'enthalpy above boiling liquid, in latent heats',
      unit: '',
      range: [Math.min(-0.35, ...xs) - 0.05, Math.max(...xs) + 0.22],
    },
    y: {
      label: 'pressure over critical pressure',
      unit: '',
      logarithmic: true,
      range: [Math.min(...ys) / 2, 1.3],
    },
    series,
    limits: [],
    levels: [],
    notes: namesOfLoops(loops),
    table: reducedTable(loops, view),
    proportion: 0.64,
  };
}

/** The name of each loop beside its discharge, moved up where two would stand on one another. */
function namesOfLoops(loops: readonly ReducedLoop[]): readonly ChartNote[] {
  let last = Number.NEGATIVE_INFINITY;
  return loops
    .map(({ refrigerant: text, points }) => ({ text, ...points.find(({ name }) => name === 'compressorOutlet')! }))
    .sort((left, right) => left.y - right.y)
    .map(({ text, x, y }) => {
      last = Math.max(Math.log10(y), last + nameSpacing);
      return { text, x, y: 10 ** last, ink: 'ink', place: 'right' };
    });
}

function reducedTable(loops: readonly ReducedLoop[], view: UnitView): ChartSpecification['table'] {
  const at = (loop: ReducedLoop, name: string) => loop.points.find((point) => point.name === name)!;
  const inCell = (value: number) => fixedDecimals(value, 3);
  return {
    caption:
      'The loops in reduced coordinates: pressures over the critical pressure, enthalpies above boiling liquid at the evaporating pressure in parts of the latent heat there.',
    columns: [
      { label: 'Fluid' },
      { label: 'Critical pressure', unit: quantityUnit('pressure', view), numeric: true },
      { label: 'Evaporating', numeric: true },
      { label: 'Condensing', numeric: true },
      { label: 'Enthalpy into the compressor', numeric: true },
      { label: 'out of it', numeric: true },
      { label: 'out of the condenser', numeric: true },
    ],
    rows: loops.map((loop) => [
      loop.refrigerant,
      toView(loop.criticalPressure, 'pressure', view).toPrecision(4),
      inCell(at(loop, 'compressorInlet').y),
      inCell(at(loop, 'compressorOutlet').y),
      inCell(at(loop, 'compressorInlet').x),
      inCell(at(loop, 'compressorOutlet').x),
      inCell(at(loop, 'condenserOutlet').x),
    ]),
  };
}
