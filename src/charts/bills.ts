// The bill of one way of keeping the tank warm, month by month: what is paid stands above zero, what is credited below, and
// the line is what is left. The scale is the same for every way, so that one can be held against another.

import type { MonthOfAccount, ScenarioAccount } from '../assess/index.ts';
import { fixedDecimals, quantityUnit, sayQuantity, sentenceStart, toView, type UnitView } from '../quantities/index.ts';
import type { ChartSeries, ChartSpecification } from './specification.ts';

/** How many digits after the point a table of months needs, by the largest amount of a month. */
function decimalsFor(largest: number): number {
  return largest >= 30 ? 0 : largest >= 3 ? 1 : 2;
}

/**
 * @param accounts  all ways, for the common scale
 * @param scenario  the way that is drawn
 * @param currency  three letters
 * @param view      units of the energies
 */
export function billsByMonthChart(
  accounts: readonly ScenarioAccount[],
  scenario: ScenarioAccount['scenario'],
  currency: string,
  view: UnitView,
): ChartSpecification {
  const { label, months } = accounts.find((account) => account.scenario === scenario)!;
  const names = months.map(({ month }) => shortName(month));
  const money = (value: number) => sayQuantity(value, 'money', view, 2, { currency });
  const [low, high] = commonRange(accounts);
  const decimals = decimalsFor(Math.max(high, -low));
  const fixed = (value: number) => fixedDecimals(value, decimals);
  const energyUnit = quantityUnit('energy', view);
  const energy = (value: number) => fixedDecimals(toView(value, 'energy', view), 1);
  const isCooled = months.some(({ coolingCost }) => coolingCost !== 0);
  const isDried = months.some(({ dehumidifierCost }) => dehumidifierCost !== null);
  const bars = [
    {
      label: 'electricity',
      ink: 'electricity' as const,
      dash: 'solid' as const,
      values: months.map((month) => month.electricityCost),
    },
    {
      label: months.some(({ roomCredit }) => roomCredit < 0)
        ? 'room heat, owed above zero, credited below'
        : 'heat to the heated room, credited below zero',
      ink: 'leaving' as const,
      dash: 'dash' as const,
      values: months.map((month) => -month.roomCredit),
    },
    ...(isCooled
      ? [
          {
            label: 'summer cooling',
            ink: 'fromSource' as const,
            dash: 'solid' as const,
            values: months.map((month) => month.coolingCost),
          },
        ]
      : []),
    ...(isDried
      ? [
          {
            label: 'dehumidifier',
            ink: 'electricity' as const,
            dash: 'dash' as const,
            values: months.map((month) => month.dehumidifierCost ?? 0),
          },
        ]
      : []),
  ];
  return {
    title: `Month by month: ${label}`,
    description: `What ${label} costs in each month. Above zero stands what is paid; below zero, what is credited. The line is what is left. Likely values; the purchase is not in it.`,
    x: { label: 'month', unit: '', names },
    y: { label: 'in the month', unit: currency, range: [low, high] },
    series: [
      ...bars.map(
        (bar): ChartSeries => ({
          label: bar.label,
          kind: 'bar',
          ink: bar.ink,
          dash: bar.dash,
          x: names,
          y: bar.values,
          stacked: true,
          hover: bar.values.map((value, index) => `<b>${months[index]!.month}</b><br>${bar.label} ${money(value)}`),
          inLegend: true,
        }),
      ),
      { label: 'zero', kind: 'line', ink: 'neutral', width: 1, x: names, y: names.map(() => 0), silent: true },
      {
        label: 'what is left to pay',
        kind: 'line',
        ink: 'ink',
        width: 2,
        x: names,
        y: months.map((month) => month.runningCost),
        hover: months.map((month) => `<b>${month.month}</b><br>left to pay ${money(month.runningCost)}`),
        inLegend: true,
      },
    ],
    limits: [],
    levels: [],
    notes: [],
    proportion: 0.5,
    table: {
      caption: `Each month of ${label}, likely values. ${creditCaption(months)}`,
      columns: [
        { label: 'Month' },
        { label: 'Electricity', unit: energyUnit, numeric: true },
        { label: 'it costs', unit: currency, numeric: true },
        { label: 'Room heated', unit: '% of the month', numeric: true },
        { label: 'Heat to the room then', unit: energyUnit, numeric: true },
        { label: 'credited', unit: currency, numeric: true },
        ...(isCooled ? [{ label: 'Cooling', unit: currency, numeric: true }] : []),
        ...(isDried ? [{ label: 'Dehumidifier', unit: currency, numeric: true }] : []),
        { label: 'Left to pay', unit: currency, numeric: true },
      ],
      rows: months.map((month) => [
        month.month,
        energy(month.electricity),
        fixed(month.electricityCost),
        (100 * month.heated).toFixed(0),
        energy(month.roomHeat),
        fixed(month.roomCredit),
        ...(isCooled ? [fixed(month.coolingCost)] : []),
        ...(isDried ? [fixed(month.dehumidifierCost ?? 0)] : []),
        fixed(month.runningCost),
      ]),
      results: months.map(({ month }) => columnResults(scenario, month, isCooled, isDried)),
    },
  };
}

/** Results behind the columns of the table. */
function columnResults(
  scenario: string,
  month: string,
  isCooled: boolean,
  isDried: boolean,
): readonly (string | undefined)[] {
  const of = (part: string) => `accounts.${scenario}.${month}.${part}`;
  // The electricity of this loop is that of the year itself.
  const electricity = scenario === 'thisLoop' ? `year.${month}.energies.electricity` : of('electricity');
  const roomHeat = scenario === 'thisLoop' ? `year.${month}.energies.roomHeatHeated` : of('heatedShareHeat');
  return [
    undefined,
    electricity,
    of('electricityCost'),
    `year.${month}.heatedShare`,
    roomHeat,
    of('roomHeatCredit'),
    ...(isCooled ? [of('coolingCost')] : []),
    ...(isDried ? [of('dehumidifierCost')] : []),
    of('runningCost'),
  ];
}

/** From the lowest credit to the highest payment of any month of any way, with a little room. */
function commonRange(accounts: readonly ScenarioAccount[]): readonly [number, number] {
  const months = accounts.flatMap((account) => account.months);
  const up = (month: MonthOfAccount) =>
    month.electricityCost +
    Math.max(0, -month.roomCredit) +
    Math.max(0, month.coolingCost) +
    (month.dehumidifierCost ?? 0);
  const down = (month: MonthOfAccount) => Math.min(0, -month.roomCredit) + Math.min(0, month.coolingCost);
  const high = Math.max(...months.map(up));
  const low = Math.min(0, ...months.map(down));
  const room = 0.08 * Math.max(high - low, 0.01);
  return [low < 0 ? low - room : 0, high + room];
}

function creditCaption(months: readonly MonthOfAccount[]): string {
  const heated = months.filter((month) => month.heated > 0).length;
  if (heated === 0) return 'Nothing is credited: the room is heated in no month.';
  return heated === months.length
    ? 'The room is heated in every month.'
    : `Nothing is credited in the ${months.length - heated} months in which the room is not heated.`;
}

function shortName(month: string): string {
  return sentenceStart(month).slice(0, 3);
}
