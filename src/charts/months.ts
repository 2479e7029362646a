// The year by months: heat the water gets and the electricity paid for it, as a chart specification with its table.

import type { MonthAnswer } from '../assess/index.ts';
import { fixedDecimals, quantityUnit, sentenceStart, toView, type UnitView } from '../quantities/index.ts';
import type { ChartSpecification } from './specification.ts';

export function monthsChart(year: readonly MonthAnswer[], view: UnitView): ChartSpecification {
  const energy = (value: number) => toView(value, 'energy', view);
  const said = (value: number) => fixedDecimals(energy(value), 1);
  const temperature = (value: number) => fixedDecimals(toView(value, 'temperature', view), 1);
  const names = year.map((month) => shortName(month.month));
  const unit = quantityUnit('energy', view);
  const degrees = quantityUnit('temperature', view);
  const hover = (label: string, values: readonly number[]) =>
    values.map((value, index) => `<b>${year[index]?.month ?? ''}</b><br>${label} ${said(value)} ${unit}`);
  const bars = [
    {
      label: 'heat from the machine',
      ink: 'intoWater',
      values: year.map((month) => month.heatDelivered),
      dash: 'solid',
    },
    { label: 'its electricity', ink: 'electricity', values: year.map((month) => month.electricity), dash: 'solid' },
    {
      label: 'plain electric heat still added',
      ink: 'electricity',
      values: year.map((month) => month.backup),
      dash: 'dash',
    },
  ] as const;
  const needed = year.map((month) => month.heatNeeded);
  return {
    title: 'The year by months',
    description:
      'The line is the heat the tank needs. Beside each other stand the heat the machine gives, the electricity it takes, and the plain electric heat still added.',
    x: { label: 'month', unit: '', names },
    y: {
      label: 'energy in the month',
      unit,
      range: [0, 1.08 * energy(Math.max(...needed, ...bars.flatMap((bar) => bar.values)))],
    },
    series: [
      ...bars
        .filter((bar) => bar.dash === 'solid' || bar.values.some((value) => value > 0))
        .map((bar) => ({
          label: bar.label,
          kind: 'bar' as const,
          ink: bar.ink,
          dash: bar.dash,
          x: names,
          y: bar.values.map(energy),
          hover: hover(bar.label, bar.values),
          inLegend: true,
        })),
      {
        label: 'heat the tank needs',
        kind: 'line' as const,
        ink: 'ink' as const,
        width: 2,
        x: names,
        y: needed.map(energy),
        hover: hover('heat the tank needs', needed),
        inLegend: true,
      },
    ],
    limits: [],
    levels: [],
    notes: [],
    proportion: 0.5,
    table: {
      caption: 'Each month as a steady state at its own room and source temperature.',
      columns: [
        { label: 'Month' },
        { label: 'Room', unit: degrees, numeric: true },
        { label: 'Source', unit: degrees, numeric: true },
        { label: 'Heat needed', unit, numeric: true },
        { label: 'From the machine', unit, numeric: true },
        { label: 'Electricity', unit, numeric: true },
        { label: 'Plain heat added', unit, numeric: true },
        { label: 'Running', unit: '%', numeric: true },
      ],
      rows: year.map((month) => [
        month.month,
        temperature(month.roomTemperature),
        temperature(month.sourceTemperature),
        said(month.heatNeeded),
        said(month.heatDelivered),
        said(month.electricity),
        said(month.backup),
        (100 * month.runFraction).toFixed(0),
      ]),
      results: year.map(({ month }) => monthResults.map((name) => name && `year.${month}.${name}`)),
    },
  };
}

/** Results behind the columns of the table. */
const monthResults: readonly (string | undefined)[] = [
  undefined,
  'roomTemperature',
  'sourceTemperature',
  'energies.heatNeeded',
  'energies.heatFromMachine',
  'energies.electricity',
  'energies.backupHeat',
  'runFraction',
];

function shortName(month: string): string {
  return sentenceStart(month).slice(0, 3);
}
