// How much of a board the last inch earns: over its thickness, what the last 25.4 mm save over the years beside what that much
// board costs. Where the one falls below the other the picture is hatched.

import type { BoardPoint, LastInchCurve } from '../../assess/index.ts';
import { fixedDecimals, quantityUnit, sayQuantity, toView, type UnitView } from '../../quantities/index.ts';
import type { ChartSpecification } from '../specification.ts';

type Inch = BoardPoint & { readonly lastInch: NonNullable<BoardPoint['lastInch']> };

/**
 * @param curve     one board of growing thickness
 * @param years     that are counted
 * @param currency  three letters
 * @param view      units of lengths and heat
 */
export function lastInchChart(
  curve: LastInchCurve,
  years: number,
  currency: string,
  view: UnitView,
): ChartSpecification {
  const inches = curve.points.filter((point): point is Inch => point.lastInch !== null);
  // The first inch brings the gap that it seals too, which no other does: it stands in words and in the table.
  const [first, ...points] = inches;
  const length = (value: number) => toView(value, 'length', view);
  const thick = (value: number) => sayQuantity(value, 'length', view, 2);
  const money = (value: number) => sayQuantity(value, 'money', view, 2, { currency });
  const x = points.map(({ thickness }) => length(thickness));
  const worth = points.map(({ lastInch }) => lastInch.worth);
  const cost = points.map(({ lastInch }) => lastInch.cost);
  const end = Math.max(...x);
  const { worthUpTo, chosen } = curve;
  const isBeyond = worthUpTo === null || length(worthUpTo) < end;
  const firstWords =
    first === undefined ? '' : ` The first inch, with the gap that it seals, saves ${money(first.lastInch.worth)}.`;
  const inch = view === 'us' ? 'inch' : 'inch (25.4 mm)';
  return {
    title: `What the last inch brings: ${curve.name}`,
    description: `The line is what the last ${inch} of a board of that thickness saves over ${years} years, tank and room together; the dashed line is what that much board costs. Where the saving falls below the cost, the picture is hatched.${firstWords} Likely values, a plain heater, on the tank as it is.`,
    x: { label: 'thickness of the board', unit: quantityUnit('length', view), range: [Math.min(...x), end] },
    y: { label: `of the last inch, over ${years} years`, unit: currency, range: rangeOf([...worth, ...cost]) },
    series: [
      {
        label: 'what it saves',
        kind: 'line',
        ink: 'intoWater',
        width: 2.5,
        x,
        y: worth,
        hover: points.map(
          ({ thickness, lastInch }) => `<b>${thick(thickness)}</b><br>the last inch saves ${money(lastInch.worth)}`,
        ),
        inLegend: true,
      },
      {
        label: 'what it costs',
        kind: 'line',
        ink: 'ink',
        dash: 'dash',
        width: 2,
        x,
        y: cost,
        hover: points.map(
          ({ thickness, lastInch }) => `<b>${thick(thickness)}</b><br>the last inch costs ${money(lastInch.cost)}`,
        ),
        inLegend: true,
      },
      ...chosenPoint(points, chosen, length, thick),
    ],
    limits: isBeyond
      ? [
          {
            label: 'the last inch costs more than it brings',
            axis: 'x',
            from: Math.max(Math.min(...x), worthUpTo === null ? 0 : length(worthUpTo)),
            to: end,
          },
        ]
      : [],
    levels: [],
    notes: [],
    proportion: 0.5,
    table: tableOf(curve, inches, years, currency, view),
  };
}

/** The point of the list's own thickness on the line, between the two beside it. */
function chosenPoint(
  points: readonly Inch[],
  chosen: number,
  length: (value: number) => number,
  thick: (value: number) => string,
): ChartSpecification['series'] {
  const after = points.findIndex(({ thickness }) => thickness >= chosen);
  const [low, high] = [points[after - 1] ?? points[after], points[after]];
  if (low === undefined || high === undefined || low.thickness > chosen) return [];
  const share = high === low ? 0 : (chosen - low.thickness) / (high.thickness - low.thickness);
  return [
    {
      label: 'on the list',
      kind: 'points',
      ink: 'ink',
      x: [length(chosen)],
      y: [low.lastInch.worth + share * (high.lastInch.worth - low.lastInch.worth)],
      hover: [`<b>${thick(chosen)}</b><br>on the list`],
      written: { text: 'on the list', from: 'end' },
    },
  ];
}

function tableOf(
  curve: LastInchCurve,
  points: readonly Inch[],
  years: number,
  currency: string,
  view: UnitView,
): ChartSpecification['table'] {
  const power = (value: number) => sayQuantity(value, 'power', view, 3);
  const energy = (value: number) => fixedDecimals(toView(value, 'energy', view), 1);
  const money = (value: number) => fixedDecimals(value, 2);
  return {
    caption: `${curve.materialLabel} on ${sayQuantity(curve.area, 'area', view, 2)}, each thickness on the tank as it is. The price of the board: ${curve.costSource}.`,
    columns: [
      { label: 'Thickness' },
      { label: 'Heat still needed', numeric: true },
      { label: 'The last inch saves', numeric: true },
      { label: 'in a year', unit: quantityUnit('energy', view), numeric: true },
      { label: `worth over ${years} years`, unit: currency, numeric: true },
      { label: 'and costs', unit: currency, numeric: true },
    ],
    rows: points.map(({ thickness, load, lastInch }) => [
      sayQuantity(thickness, 'length', view, 3),
      power(load),
      power(lastInch.loadSaved),
      energy(lastInch.heatSaved),
      money(lastInch.worth),
      money(lastInch.cost),
    ]),
  };
}

/** From zero, or from below it where something is negative, with a little room above. */
function rangeOf(values: readonly number[]): readonly [number, number] {
  const [low, high] = [Math.min(0, ...values), Math.max(0, ...values)];
  const room = 0.08 * Math.max(high - low, 0.01);
  return [low < 0 ? low - room : 0, high + room];
}
