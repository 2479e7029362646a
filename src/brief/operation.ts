// The numbers of the loop as the brief shows them: duty, states, operating range and limits, each as a table in words.

import { type Assessment, distanceQuantity, type LimitMargin, type OperatingMomentAnswer } from '../assess/index.ts';
import { type ChartTable, stateTable } from '../charts/index.ts';
import { gaugePressureOf, pressureRatio } from '../loop/index.ts';
import {
  type Band,
  fixedDecimals,
  formatNumber,
  type QuantityName,
  quantityUnit,
  sayBand,
  sayQuantity,
  sentenceStart,
  toView,
  type UnitView,
} from '../quantities/index.ts';
import type { BriefValue } from './document.ts';

export function duty(assessment: Assessment, view: UnitView): readonly BriefValue[] {
  const { tank, operating, flows, tankLoad, heatDelivered } = assessment;
  const band = (label: string, value: Band, quantity: QuantityName): BriefValue => ({
    label,
    value: sayBand(value, quantity, view),
  });
  const level = (label: string, kelvin: number): BriefValue => ({
    label,
    value: sayQuantity(kelvin, 'temperature', view),
  });
  return [
    band('Heat the tank needs', tankLoad, 'power'),
    band('Heat brought while running', heatDelivered, 'power'),
    { label: 'Runs', value: `${sayQuantity(flows.runFraction, 'fraction', view)} of the time` },
    {
      label: 'Left to a plain heater',
      value: flows.backup === 0 ? 'nothing' : `about ${sayQuantity(flows.backup, 'power', view)}`,
    },
    level('Water of the tank', tank.waterTemperature),
    level('Source, its air', operating.sourceTemperature),
    level('Room of the tank', tank.roomTemperature),
    {
      label: 'Without heat the water cools',
      value:
        tank.timePerKelvin === null
          ? 'not at all'
          : `${sayQuantity(1, 'temperatureDifference', view)} in about ${sayQuantity(tank.timePerKelvin, 'duration', view, 2)}`,
    },
    band('Electricity of the compressor', assessment.compressorPower, 'electricPower'),
    band('Electricity with fan, pump, controls', assessment.systemPower, 'electricPower'),
    band('COP of the compressor', assessment.compressorCop, 'ratio'),
    band('COP with fan, pump, controls', assessment.systemCop, 'ratio'),
  ];
}

/** The states in the coldest spell, with the pressure as a gauge would show it beside the absolute one. */
export function states({ operating }: Assessment, view: UnitView): ChartTable {
  const { caption, columns, rows } = stateTable(operating.points, view);
  const atmosphere = operating.atmosphericPressure.likely;
  const place = columns.findIndex(({ label }) => label === 'Pressure');
  const gauge = { label: 'Pressure, gauge', unit: quantityUnit('gaugePressure', view), numeric: true };
  const absolute = { label: 'Pressure, absolute', unit: quantityUnit('pressure', view), numeric: true };
  return {
    caption: `${caption} Gauge pressures count from ${sayQuantity(atmosphere, 'pressure', view)}, the air pressure of the place.`,
    columns: [...columns.slice(0, place), absolute, gauge, ...columns.slice(place + 1)],
    rows: rows.map((row, index) => {
      const decimals = decimalsOf(row[place] ?? '');
      const above = toView(gaugePressureOf(operating.points[index]!.pressure, atmosphere), 'gaugePressure', view);
      return [...row.slice(0, place + 1), fixedDecimals(above, decimals), ...row.slice(place + 1)];
    }),
  };
}

const momentTitles: Readonly<Record<OperatingMomentAnswer['when'], string>> = {
  coldestSpell: 'Coldest spell',
  usual: 'Usual winter',
  warmestMonth: 'Mild day',
};

type MomentRow = readonly [string, (moment: OperatingMomentAnswer) => string];

/** One column per moment. The ranges of the coldest spell stand in its column, where they are known. */
export function operatingRange({ operatingRange: moments, operating }: Assessment, view: UnitView): ChartTable {
  const say = (value: number, quantity: QuantityName) => sayQuantity(value, quantity, view);
  const pressures = pressuresIn(view, operating.atmosphericPressure.likely);
  const withRange = (moment: OperatingMomentAnswer, value: number, band: Band) =>
    moment.when === 'coldestSpell' ? sayBand(band, 'temperature', view) : say(value, 'temperature');
  const rows: readonly MomentRow[] = [
    ['Air of the source', (moment) => say(moment.sourceTemperature, 'temperature')],
    ['Evaporating (dew)', (at) => withRange(at, at.evaporatingTemperature, operating.evaporatingTemperature)],
    [`Evaporating pressure, ${pressures.unit}`, (moment) => pressures.say(moment.evaporatingPressure)],
    ['Condensing (dew)', (at) => withRange(at, at.condensingTemperature, operating.condensingTemperature)],
    [`Condensing pressure, ${pressures.unit}`, (moment) => pressures.say(moment.condensingPressure)],
    [
      'Pressure ratio',
      (moment) => fixedDecimals(pressureRatio(moment.condensingPressure, moment.evaporatingPressure), 1),
    ],
    ['Discharge gas', (at) => withRange(at, at.dischargeTemperature, operating.dischargeTemperature)],
    ['Electricity of the compressor', ({ compressorPower }) => say(compressorPower, 'electricPower')],
    ['Heat to the water while running', ({ heatDelivered }) => say(heatDelivered, 'power')],
    ['Heat the tank needs', ({ load }) => say(Math.max(0, load), 'power')],
  ];
  return {
    caption:
      'Where the loop settles from the coldest spell to a mild day, that of the warmest month in which the tank still needs heat.',
    columns: [{ label: '' }, ...moments.map(({ when }) => ({ label: momentTitles[when] }))],
    rows: rows.map(([label, tell]) => [label, ...moments.map(tell)]),
  };
}

/** Absolute and gauge in one cell: "6.19 abs, 5.17 gauge", both with the decimals of the absolute one. */
function pressuresIn(view: UnitView, atmosphere: number) {
  return {
    unit: view === 'us' ? 'psi' : 'bar',
    say(pressure: number): string {
      const absolute = formatNumber(toView(pressure, 'pressure', view), 3);
      const gauge = toView(gaugePressureOf(pressure, atmosphere), 'gaugePressure', view);
      return `${absolute} abs, ${fixedDecimals(gauge, decimalsOf(absolute))} gauge`;
    },
  };
}

function decimalsOf(number: string): number {
  return number.split('.')[1]?.length ?? 0;
}

/** So many of the limits are told, and every one that is passed. */
const nearestLimits = 6;

export function limits(margins: readonly LimitMargin[], view: UnitView): ChartTable {
  const told = margins.filter(({ passed }, index) => passed || index < nearestLimits);
  const others = told.length < margins.length ? ` ${margins.length - told.length} more are farther off.` : '';
  return {
    caption: `Limits usual for such a machine, the nearest first, in the coldest spell. Its own data sheet comes before them.${others}`,
    columns: [{ label: 'Limit' }, { label: 'Usual' }, { label: 'Here' }, { label: 'Margin' }],
    rows: told.map(({ label, quantity, value, bound, margin, passed }) => {
      const level = (number: number) => sayQuantity(number, quantity, view);
      const here = quantity === 'ratio' ? fixedDecimals(value, 1) : level(value);
      const distance = sayQuantity(Math.abs(margin), distanceQuantity(quantity), view);
      return [sentenceStart(label), level(bound), here, passed ? `passed by ${distance}` : `${distance} left`];
    }),
  };
}
