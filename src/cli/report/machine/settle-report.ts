// Where a loop settles, as a person reads it in a terminal.

import { doubtWords, type PlaceValue, type SettleAnswer, type SettledNumber } from '../../../assess/index.ts';
import {
  listed,
  type QuantityName,
  sayBand,
  sayQuantity,
  sentenceStart,
  type UnitView,
} from '../../../quantities/index.ts';
import { printableLine } from '../printable.ts';
import { findingsSection } from '../report-sections.ts';
import { columnAndText, columns, paragraph, section } from '../text-table.ts';
import { limitsRows } from './limits-rows.ts';

/**
 * @param answer  the loop
 * @param bare    options whose number had no unit
 * @param view    units of the numbers
 */
export function settleReport(answer: SettleAnswer, bare: readonly string[], view: UnitView): string {
  return [
    ...(answer.designName === null ? [] : [printableLine(answer.designName)]),
    placeSection(answer, bare, view),
    numbersSection(answer, view),
    statesSection(answer, view),
    section('Limits usual for such a machine, the nearest first', columns(limitsRows(answer.limits, view))),
    findingsSection('What to know beside these numbers', answer.findings, view),
    paragraph(answer.caution),
  ].join('\n');
}

const fromWords: Readonly<Record<PlaceValue['from'], string>> = {
  asked: 'as asked',
  coldestSpell: 'in the coldest spell',
  design: 'as the design has it',
  source: 'as where the heat is taken from',
};

function placeSection(answer: SettleAnswer, bare: readonly string[], view: UnitView): string {
  const { source, water, surroundings, exchangers, supply, refrigerant } = answer;
  const said = ({ value, from }: PlaceValue) => `${sayQuantity(value, 'temperature', view)}, ${fromWords[from]}`;
  const apart = (value: number) => sayQuantity(value, 'temperatureDifference', view);
  const { evaporatorApproach, condenserApproach, superheat, subcooling, suctionPressureLimit: limit } = exchangers;
  const valve = limit === null ? '' : `; a valve lets through ${sayQuantity(limit, 'pressure', view)} at most`;
  const rows: readonly (readonly [string, string])[] = [
    ['source', said(source)],
    ['water', said(water)],
    ['air around the shell', said(surroundings)],
    ['approaches', `${apart(evaporatorApproach)} below the source, ${apart(condenserApproach)} above the water`],
    ['superheat and subcooling', `${apart(superheat)} and ${apart(subcooling)}${valve}`],
    [
      'mains',
      `${sayQuantity(supply.frequency, 'mainsFrequency', view)}, ${sayQuantity(supply.voltage, 'voltage', view)}`,
    ],
  ];
  const taken = bare.length === 0 ? [] : [paragraph(`Numbers without a unit are taken in °C: ${listed(bare)}.`, '  ')];
  return section(`One machine on ${refrigerant}`, [columnAndText(rows), ...taken].join('\n'));
}

const rows = [
  ['heat', 'heat out of the condenser', 'power'],
  ['power', 'electricity of the compressor', 'electricPower'],
  ['compressorCop', 'COP of the compressor', 'ratio'],
  ['current', 'current', 'current'],
  ['heatTaken', 'heat taken from the source', 'power'],
  ['shellHeat', 'heat from the shell', 'power'],
  ['massFlow', 'flow', 'massFlow'],
  ['evaporatingTemperature', 'evaporating (dew)', 'temperature'],
  ['evaporatingPressure', '  pressure, absolute', 'pressure'],
  ['condensingTemperature', 'condensing (dew)', 'temperature'],
  ['condensingPressure', '  pressure, absolute', 'pressure'],
  ['pressureRatio', 'pressure ratio', 'ratio'],
  ['dischargeTemperature', 'discharge gas', 'temperature'],
  ['wallTemperature', 'motor and shell', 'temperature'],
  ['motorLoad', 'load of the motor, over its best load', 'fraction'],
  ['volumetricEfficiency', 'volumetric efficiency', 'fraction'],
  ['overallEfficiency', 'overall efficiency', 'fraction'],
] as const satisfies readonly (readonly [SettledNumber, string, QuantityName])[];

function numbersSection(answer: SettleAnswer, view: UnitView): string {
  const known = answer.insideData
    ? 'Inside what was printed or measured of the machine.'
    : `${sentenceStart(listed(answer.doubt.map((reason) => doubtWords[reason] ?? reason)))}: the ranges are wider for it.`;
  const told = rows.map(([name, label, quantity]) => [label, sayBand(answer[name], quantity, view)]);
  return section('Where it settles', `${columns(told)}\n${paragraph(known, '  ')}`);
}

const pointWords: Readonly<Record<string, string>> = {
  compressorInlet: 'compressor inlet',
  compressorOutletIsentropic: 'outlet without losses',
  compressorOutlet: 'compressor outlet',
  condenserOutlet: 'condenser outlet',
  evaporatorInlet: 'evaporator inlet',
};

function statesSection({ points }: SettleAnswer, view: UnitView): string {
  const told = points.map(({ name, temperature, pressure, enthalpy, quality }) => [
    pointWords[name] ?? name,
    sayQuantity(temperature, 'temperature', view, 3),
    sayQuantity(pressure, 'pressure', view, 4),
    sayQuantity(enthalpy, 'enthalpy', view),
    quality === null ? '' : `${sayQuantity(quality, 'fraction', view, 3)} vapour`,
  ]);
  return section('States, likely values', columns(told));
}
