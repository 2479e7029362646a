// The bills as a person reads them in a terminal: each way for a year, month by month what is left to pay, and this loop
// against each other way: what it would cost to be wrong, and where both would cost the same.

import { type Assessment, type ScenarioAccount, sayLoopAgainst } from '../../assess/index.ts';
import { type Band, fixedDecimals, sayBand, type UnitView } from '../../quantities/index.ts';
import { isZero } from './report-sections.ts';
import { columns, paragraph, section } from './text-table.ts';

/**
 * @param assessment         with its accounts
 * @param notForThisMachine  the loop's figures are then for study only
 * @param view               units of the numbers
 */
export function billsSections(assessment: Assessment, notForThisMachine: boolean, view: UnitView): string {
  return [
    yearSection(assessment, notForThisMachine, view),
    monthsSection(assessment),
    againstSection(assessment, view),
  ].join('\n');
}

function yearSection({ accounts, currency }: Assessment, notForThisMachine: boolean, view: UnitView): string {
  const money = (band: Band) => sayBand(band, 'money', view, { currency });
  const rows = accounts.flatMap((account) => [
    [
      account.scenario === 'thisLoop' && notForThisMachine
        ? `${account.label} (not for this machine, for study only)`
        : account.label,
      '',
    ],
    ['  electricity', sayBand(account.electricity, 'energy', view)],
    ['    costs', money(account.electricityCost)],
    ['  heat to the room, credited', money(account.roomCredit)],
    ...(isZero(account.coolingCost) ? [] : [['  cooling the room in summer', money(account.coolingCost)]]),
    ...(account.dehumidifierCost === null || account.dehumidifierElectricity === null
      ? []
      : [
          ['  dehumidifier, for what the tank evaporates', sayBand(account.dehumidifierElectricity, 'energy', view)],
          ['    costs', money(account.dehumidifierCost)],
        ]),
    ['  running, tank and room', money(account.runningCost)],
    ['  running and its price, spread over its life', money(account.lifeCostPerYear)],
  ]);
  return section('Complete accounts of a year, tank and room', columns(rows));
}

/** The ways in few words, for a column. */
const columnHeads: Readonly<Record<ScenarioAccount['scenario'], string>> = {
  plainHeater: 'heater, as it is',
  insulationOnly: 'heater, wrapped',
  thisLoop: 'this loop',
  certifiedHeatPump: 'certified heat pump',
};

/** Electricity paid and room heat credited, then what is left to pay, for each way. */
function monthsSection({ accounts, currency }: Assessment): string {
  const largest = Math.max(
    ...accounts.flatMap(({ months }) =>
      months.flatMap(({ electricityCost, roomCredit }) => [Math.abs(electricityCost), Math.abs(roomCredit)]),
    ),
  );
  const decimals = largest >= 30 ? 0 : largest >= 3 ? 1 : 2;
  const amount = (value: number) => fixedDecimals(value, decimals);
  const month = (account: ScenarioAccount, index: number) => {
    const { electricityCost, coolingCost, dehumidifierCost, roomCredit, runningCost } = account.months[index]!;
    const paid = electricityCost + coolingCost + (dehumidifierCost ?? 0);
    return `${amount(paid)} − ${bracketed(amount(roomCredit))} = ${amount(runningCost)}`;
  };
  const rows = accounts[0]!.months.map(({ month: name, heated }, index) => [
    name,
    heated === 0 ? 'not heated' : heated < 1 ? `heated ${(100 * heated).toFixed(0)} %` : 'heated',
    ...accounts.map((account) => month(account, index)),
  ]);
  const heads = ['', 'the room', ...accounts.map(({ scenario }) => columnHeads[scenario])];
  return section(
    `Month by month, likely, in ${currency}: paid − credited for heat to the heated room = left to pay`,
    columns([heads, ...rows]),
  );
}

function bracketed(amount: string): string {
  return amount.startsWith('−') ? `(${amount})` : amount;
}

function againstSection({ loopAgainst, currency, standing }: Assessment, view: UnitView): string {
  const isForStudy = standing === 'doNotBuild';
  const entries = loopAgainst.map((against) => {
    const words = sayLoopAgainst(against, currency, view);
    const wrong = isForStudy ? [] : [words.ifBuilt, words.ifNotBuilt];
    const said = [words.difference, ...wrong, words.houseHeatPrice, words.seasonCop ?? ''];
    return paragraph(said.filter((sentence) => sentence !== '').join(' '), '  ');
  });
  const title = 'What it would cost to be wrong, and where both would cost the same';
  return section(isForStudy ? `For study only: where both would cost the same` : title, entries.join('\n\n'));
}
