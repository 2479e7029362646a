// How many machines the tank needs, as a person reads it in a terminal.

import { type HowMany, type StagedMonth, sayStartsAndFailure } from '../../../assess/index.ts';
import { sayBand, sayQuantity, sayRange, sentenceStart, type UnitView } from '../../../quantities/index.ts';
import { columns, paragraph, section } from '../text-table.ts';

const carries = {
  yes: 'carries the load',
  perhaps: 'nobody can know',
  no: 'falls short',
} as const;

export function howManySections(answer: HowMany, view: UnitView): readonly string[] {
  const { rows, months, chargePerCircuit, planned, needed } = answer;
  const table = rows.map(({ machines, coldestSpell, power, share, carries: verdict }) => [
    machines === planned ? `${machines} (planned)` : String(machines),
    sayBand(coldestSpell, 'power', view),
    sayBand(power, 'electricPower', view),
    `running ${sayQuantity(share, 'fraction', view)}`,
    carries[verdict],
  ]);
  const several = rows.filter(({ machines }) => machines === Math.max(planned, needed.likely ?? planned));
  const charge = `Each has a circuit of its own: the charge of a circuit stays ${sayRange(chargePerCircuit, 'mass', view)}, however many there are.`;
  return [
    section(
      'How many such machines, in the coldest spell',
      [
        paragraph(neededWords(answer, view), '  '),
        columns([['machines', 'heat', 'electricity, all of it'], ...table]),
        paragraph(charge, '  '),
        ...several.map((row) => paragraph(sayStartsAndFailure(row, view), '  ')),
      ].join('\n'),
    ),
    section('How many run in which month, likely values', columns(months.map((month) => monthRow(month, view)))),
  ];
}

function neededWords({ needed, load }: HowMany, view: UnitView): string {
  const heat = `The tank needs ${sayBand(load, 'power', view)}.`;
  const { low, likely, high } = needed;
  if (likely === null) return `${heat} One machine gives no heat there, so no number of them would do.`;
  const several = (count: number) => (count === 1 ? 'one machine' : `${count} machines`);
  if (likely === 0) return `${heat} It needs no machine.`;
  if (low === high) return `${heat} ${sentenceStart(several(likely))} would do.`;
  const most = high === null ? 'more than can be told' : String(high);
  return `${heat} Likely ${several(likely)}; from ${low ?? 0} to ${most} within the ranges.`;
}

function monthRow({ month, load, running, shareOfLast }: StagedMonth, view: UnitView): readonly string[] {
  const needs = load <= 0 ? 'needs no heat' : `needs ${sayQuantity(load, 'power', view)}`;
  if (running === null) return [sentenceStart(month), needs, 'no running point: a backup heater does it'];
  if (running === 0 || shareOfLast === null) return [sentenceStart(month), needs, 'none runs'];
  const share =
    shareOfLast >= 1 ? 'all the time' : `the last of them ${sayQuantity(shareOfLast, 'fraction', view)} of the time`;
  const one =
    shareOfLast >= 1 ? 'one runs all the time' : `one runs ${sayQuantity(shareOfLast, 'fraction', view)} of the time`;
  return [sentenceStart(month), needs, running === 1 ? one : `${running} run, ${share}`];
}
