// The tank's load as a person reads it in a terminal.

import type { TankLoadAnswer } from '../../assess/index.ts';
import { type Band, sayBand, type UnitView } from '../../quantities/index.ts';
import { printableLine } from './printable.ts';
import { assumptionCount, assumptionsSection, findingsSection, influenceSection, isZero } from './report-sections.ts';
import { coolingSection, meterSection, monthsSection, panelsSection, tankSection } from './tank.ts';
import { columns, paragraph, section } from './text-table.ts';

export function loadReport(answer: TankLoadAnswer, view: UnitView): string {
  const { designName, tankLoad, tank, atmosphericPressure, assumptions, currency } = answer;
  const sentence =
    tank.load.high < 0
      ? 'In the coldest spell the tank needs no heat: its pumps and lights give more than it loses.'
      : `In the coldest spell the tank needs ${sayBand(tankLoad, 'power', view)}, at an air pressure of ${sayBand(atmosphericPressure, 'pressure', view)}.`;
  const head = [printableLine(designName), paragraph(sentence), '', assumptionCount(assumptions.length), ''];
  const sections = [
    tankSection(tank, view),
    panelsSection(tank, view),
    meterSection(tank, view),
    monthsSection(tank, view),
    heaterSection(answer, view),
    coolingSection(tank, view),
    influenceSection(
      'What matters most for the heat needed',
      'the heat needed',
      answer.influences.map(({ loadAtLow, loadAtHigh, ...rest }) => ({ ...rest, ends: [loadAtLow, loadAtHigh] })),
      view,
    ),
    findingsSection('What the model of the tank leaves out', answer.findings, view),
    assumptionsSection(assumptions, currency, view),
    paragraph(answer.caution),
  ];
  return [...head, ...sections.filter((each) => each !== '')].join('\n');
}

/** The two accounts of the tank alone: electricity, and what its room gains or has to be rid of. */
function heaterSection({ heaterAccount: account, currency }: TankLoadAnswer, view: UnitView): string {
  const money = (band: Band) => sayBand(band, 'money', view, { currency });
  return section(
    'What a plain heater costs in a year, tank and room',
    columns([
      ['electricity', sayBand(account.electricity, 'energy', view)],
      ['  costs', money(account.electricityCost)],
      ['heat to the heated room, credited', money(account.roomCredit)],
      ...(isZero(account.coolingCost) ? [] : [['cooling the room in summer', money(account.coolingCost)]]),
      ...(account.dehumidifierCost === null || account.dehumidifierElectricity === null
        ? []
        : [
            ['dehumidifier, for what the tank evaporates', sayBand(account.dehumidifierElectricity, 'energy', view)],
            ['  costs', money(account.dehumidifierCost)],
          ]),
      ['left to pay', money(account.runningCost)],
    ]),
  );
}
