// The Assessment as a person reads it in a terminal: verdict, tank, machine, bills, doubt, findings, caution.

import { type Assessment, type AssumptionLeft, sayFinding, standingTitles } from '../assess/index.ts';
import {
  type Band,
  type Finding,
  isQuantityName,
  type QuantityName,
  sayBand,
  sayQuantity,
  type UnitView,
} from '../quantities/index.ts';
import { columns, paragraph, section } from './text-table.ts';

/** How many of the most telling influences are printed. */
const influencesShown = 6;

export function checkReport(assessment: Assessment, view: UnitView): string {
  return [
    `${assessment.designName}\n${standingTitles[assessment.standing].toUpperCase()}\n${paragraph(assessment.sentence)}\n`,
    `${assessment.assumptions.length} values are assumed, not given; they are listed below.\n`,
    tankSection(assessment, view),
    machineSection(assessment, view),
    sizeSection(assessment, view),
    billsSection(assessment, view),
    influenceSection(assessment, view),
    findingsSection('Cautions', assessment.cautions, view),
    findingsSection('Limits and doubts of the model', assessment.findings, view),
    assumptionsSection(assessment.assumptions, assessment.currency, view),
    paragraph(assessment.caution),
  ].join('\n');
}

function tankSection({ tank }: Assessment, view: UnitView): string {
  const water = sayQuantity(tank.waterTemperature, 'temperature', view);
  const room = sayQuantity(tank.roomTemperature, 'temperature', view);
  const rows = tank.paths.map(({ label, heat }) => [label, sayBand(heat, 'power', view)]);
  return section(
    `What leaves the tank in the coldest spell (water ${water}, room ${room})`,
    columns([
      ...rows,
      ['given by pumps and lights', sayQuantity(tank.gains.pump + tank.gains.light, 'power', view)],
      ['heat needed', sayBand(tank.load, 'power', view)],
      ['water lost', sayBand(tank.evaporation, 'evaporation', view)],
    ]),
  );
}

function machineSection(assessment: Assessment, view: UnitView): string {
  const { operating, flows } = assessment;
  const row = (label: string, band: Band, quantity: QuantityName) => [label, sayBand(band, quantity, view)];
  return section(
    `The machine in the coldest spell (${operating.refrigerant}, source ${sayQuantity(operating.sourceTemperature, 'temperature', view)})`,
    columns([
      row('heat to the water', assessment.heatDelivered, 'power'),
      row('electricity, all of it', assessment.systemPower, 'electricPower'),
      row('compressor alone', assessment.compressorPower, 'electricPower'),
      row('COP of the compressor', assessment.compressorCop, 'ratio'),
      row('COP of the system', assessment.systemCop, 'ratio'),
      ...(assessment.seasonCop === null ? [] : [row('COP over the year', assessment.seasonCop, 'ratio')]),
      row('evaporating', operating.evaporatingTemperature, 'temperature'),
      row('  at', operating.evaporatingPressure, 'pressure'),
      row('condensing', operating.condensingTemperature, 'temperature'),
      row('  at', operating.condensingPressure, 'pressure'),
      row('discharge', operating.dischargeTemperature, 'temperature'),
      row('pressure ratio', operating.pressureRatio, 'ratio'),
      ['running', sayQuantity(flows.runFraction, 'fraction', view)],
      ['missing, for a backup heater', sayQuantity(flows.backup, 'power', view)],
    ]),
  );
}

function sizeSection({ sizing }: Assessment, view: UnitView): string {
  const { condenser, evaporator } = sizing;
  const approach = (kelvin: number) => sayQuantity(kelvin, 'temperatureDifference', view);
  return section(
    'What the assumed approach temperatures imply',
    columns([
      [
        `coil in the tank, ${sayQuantity(condenser.tubeDiameter, 'length', view)} tube, for ${approach(condenser.approach)}`,
        sayBand(condenser.coilLength, 'length', view),
      ],
      [`evaporator face, for ${approach(evaporator.approach)}`, sayBand(evaporator.faceArea, 'area', view)],
      ['  air through it', sayBand(evaporator.airFlow, 'volumeFlow', view)],
    ]),
  );
}

function billsSection({ accounts, currency }: Assessment, view: UnitView): string {
  const money = (band: Band) => sayBand(band, 'money', view, { currency });
  const rows = accounts.flatMap((account) => [
    [account.label, ''],
    ['  electricity a year', `${sayBand(account.electricity, 'energy', view)}, ${money(account.electricityCost)}`],
    ['  room heat, credit or debit', money(account.roomCredit)],
    ...(account.coolingCost.low === 0 && account.coolingCost.high === 0
      ? []
      : [['  cooling the room in summer', money(account.coolingCost)]]),
    ['  running, tank and room', money(account.runningCost)],
    ['  with its purchase spread over its life', money(account.lifeCostPerYear)],
  ]);
  return section('Two bills: tank and room, a year', columns(rows));
}

function influenceSection({ influences }: Assessment, view: UnitView): string {
  const rows = influences
    .slice(0, influencesShown)
    .map(({ label, share, marginAtLow, marginAtHigh, measure }) => [
      `${sayQuantity(share, 'fraction', view)}  ${label}`,
      `margin ${sayQuantity(marginAtLow, 'power', view)} to ${sayQuantity(marginAtHigh, 'power', view)}; ${measure}`,
    ]);
  if (rows.length === 0) return section('What matters most', '  Nothing uncertain moves the margin.');
  return section(
    'What matters most for the margin between heat brought and heat needed',
    rows.map(([head, tail]) => `  ${head}\n${paragraph(tail!, '        ')}`).join('\n'),
  );
}

function findingsSection(title: string, findings: readonly Finding[], view: UnitView): string {
  if (findings.length === 0) return section(title, '  None found by the rules that were applied.');
  const entries = findings.map((finding) => {
    const { title: heading, text } = sayFinding(finding, view);
    const who = finding.needsLicensedPerson ? ' For a licensed person.' : '';
    return `  [${finding.severity}] ${heading}\n${paragraph(`${text} ${finding.remedy}${who}`, '         ')}`;
  });
  return section(title, entries.join('\n'));
}

function assumptionsSection(assumptions: readonly AssumptionLeft[], currency: string, view: UnitView): string {
  const rows = assumptions.map(({ path, value, quantity }) => [
    path,
    typeof value === 'string'
      ? value
      : isQuantityName(quantity)
        ? sayBand(value, quantity, view, { currency })
        : `${value.low} to ${value.high}`,
  ]);
  return section('Assumed, until you give them', columns(rows));
}
