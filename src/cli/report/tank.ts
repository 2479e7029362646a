// The tank as a person reads it in a terminal: what leaves it by path and vessel, its panels, its year, how it cools without
// heat, what a meter says of it.

import type { FallAnswer, LossPath, MeterAnswer, MeterExplanation, TankAnswer } from '../../assess/index.ts';
import {
  type Band,
  isQuantityName,
  sayBand,
  sayQuantity,
  sayRange,
  sentenceStart,
  type UnitView,
} from '../../quantities/index.ts';
import { columns, paragraph, section } from './text-table.ts';

/** What leaves the tank at the coldest spell, and what it needs. */
export function tankSection(tank: TankAnswer, view: UnitView): string {
  const water = sayQuantity(tank.waterTemperature, 'temperature', view);
  const room = sayQuantity(tank.roomTemperature, 'temperature', view);
  const { load, gains, falls } = tank;
  const kelvin = sayQuantity(1, 'temperatureDifference', view);
  return section(
    `What leaves the tank in the coldest spell (water ${water}, room ${room})`,
    columns([
      ...pathRows(tank, view),
      ['less: heat of pumps and lights', sayQuantity(gains.pump + gains.light + gains.ultraviolet, 'power', view)],
      ['heat needed', sayBand(load, 'power', view)],
      ['water lost', sayBand(tank.evaporation, 'evaporation', view)],
      ...falls
        .filter(({ by }) => by === 1)
        .map((fall) => [`without heat it cools by ${kelvin} in`, sayFall(fall, view)]),
    ]),
  );
}

/** Paths under the vessel they leave, where there are several; then those of the whole tank. */
function pathRows({ paths, vessels }: TankAnswer, view: UnitView): readonly (readonly string[])[] {
  const row = ({ label, heat }: LossPath, indent = '') => [`${indent}${label}`, sayBand(heat, 'power', view)];
  if (vessels.length < 2) return paths.map((path) => row(path));
  const ofWhole = paths.filter(({ vessel }) => vessel === null);
  return [
    ...vessels.flatMap(({ vessel, label, loss }) => [
      [label, sayBand(loss, 'power', view)],
      ...paths
        .filter((path) => path.vessel === vessel)
        .map((path) => row({ ...path, label: path.label.replace(`, ${label}`, '') }, '  ')),
    ]),
    ...ofWhole.map((path) => row(path)),
  ];
}

/** Heat per area of each panel, lid and hood, and how warm it is outside; empty for a measured tank. */
export function panelsSection({ panels }: TankAnswer, view: UnitView): string {
  if (panels.length === 0) return '';
  const rows = panels.map(({ label, area, heat, transmittance, outerTemperature, condenses }) => [
    label,
    sayQuantity(area, 'area', view, 2),
    area > 0 ? sayQuantity(heat.likely / area, 'heatFlux', view, 2) : '',
    sayQuantity(transmittance, 'heatTransferCoefficient', view, 2),
    sayQuantity(outerTemperature, 'temperature', view),
    condenses ? 'sweats' : '',
  ]);
  const heads = ['', 'area', 'heat by area', 'U', 'outside', ''];
  return section('Panels in the coldest spell, likely values', columns([heads, ...rows]));
}

/** Each month: room, heat needed as power and as energy, water. */
export function monthsSection({ months, yearHeatNeeded }: TankAnswer, view: UnitView): string {
  const rows = months.map(({ month, roomTemperature, load, heatNeeded, evaporation }) => [
    sentenceStart(month),
    sayQuantity(roomTemperature, 'temperature', view),
    load.high > 0 ? inTable(sayBand(load, 'power', view)) : 'none',
    inTable(sayBand(heatNeeded, 'energy', view)),
    inTable(sayBand(evaporation, 'evaporation', view)),
  ]);
  const heads = ['', 'room', 'heat needed', 'in the month', 'water lost'];
  return section(
    `Through the year the tank needs ${sayBand(yearHeatNeeded, 'energy', view)} of heat`,
    columns([heads, ...rows]),
  );
}

/** "560 W (480 to 650)": a table is of numbers that are all about so. */
function inTable(band: string): string {
  return band.replace(/^about /, '');
}

/** How the water cools with heater, pumps and lights off. */
export function coolingSection({ falls, heatCapacity, timeConstant }: TankAnswer, view: UnitView): string {
  return section(
    'How the water cools with heater, pumps and lights off, from the coldest spell',
    columns([
      ...falls.map((fall) => [`by ${sayQuantity(fall.by, 'temperatureDifference', view)} in`, sayFall(fall, view)]),
      ['heat capacity of the water alone', sayQuantity(heatCapacity, 'heatCapacity', view)],
      ['time constant', sayBand(timeConstant, 'duration', view)],
    ]),
  );
}

/** "about 3.1 h (2.4 to 4 h)"; "never; at the fastest 8 h". */
export function sayFall({ time, range }: Pick<FallAnswer, 'time' | 'range'>, view: UnitView): string {
  const said = (seconds: number) => sayQuantity(seconds, 'duration', view, 2);
  if (range === null) return 'never';
  const { low, high } = range;
  if (time === null) return `never; at the fastest in ${said(low)}`;
  if (high === null) return `about ${said(time)} (${said(low)} or more)`;
  return sayBand({ low, likely: time, high }, 'duration', view);
}

/** What the meter says; empty without one. */
export function meterSection({ meter }: TankAnswer, view: UnitView): string {
  if (meter === null) return '';
  const { explanations } = meter;
  const within = explanations.filter(({ isWithin }) => isWithin);
  const others = explanations.filter(({ isWithin, value }) => !isWithin && value !== null);
  return section(
    'The meter against the sizes',
    [
      paragraph(meterWords(meter, view), '  '),
      ...explanationLines('Any one of these alone could explain it, within its range:', within, view),
      ...explanationLines('These could only beyond their range:', others.slice(0, mostBeyond), view),
    ].join('\n'),
  );
}

/** So many inputs that would have to lie beyond their range are told. */
const mostBeyond = 3;

function meterWords(meter: MeterAnswer, view: UnitView): string {
  const { measuredLoss, modelledLoss, ratio, agrees, adopted } = meter;
  const at = `With the water at ${sayQuantity(meter.waterTemperature, 'temperature', view)} and the room at ${sayQuantity(meter.roomTemperature, 'temperature', view)}`;
  const verdict = agrees
    ? 'The ranges of the inputs can explain the difference.'
    : 'The ranges of the inputs together do not explain the difference: something is not told.';
  const use = adopted
    ? 'The measurement is the load here: every loss of the model is multiplied by that ratio.'
    : 'The load here is that of the model; to take the measurement instead, set tank.load.meter.adopt to yes.';
  return `${at} the tank lost ${sayBand(measuredLoss, 'power', view)} by the meter and ${sayBand(modelledLoss, 'power', view)} by the model: ${sayBand(ratio, 'fraction', view)} of the model. ${verdict} ${use}`;
}

function explanationLines(title: string, explained: readonly MeterExplanation[], view: UnitView): readonly string[] {
  if (explained.length === 0) return [];
  const said = (band: Band, quantity: string) => (isQuantityName(quantity) ? sayRange(band, quantity, view) : '');
  return [
    `  ${title}`,
    ...explained.map(({ label, value, quantity, input, measure }) => {
      const closing = said({ low: value!, likely: value!, high: value! }, quantity);
      return paragraph(`${label}: ${closing} (given as ${said(input, quantity)}). To check it, ${measure}.`, '    ');
    }),
  ];
}
