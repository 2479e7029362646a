// What to wrap as a person reads it in a terminal: what first and where to stop, each measure alone, the next best in turn, a heat
// pump, other prices, and what the last inch of a board earns.

import { sayPayback, sayWrapping, type WrappingAnswer, type WrappingGain } from '../../assess/index.ts';
import { type Band, formatNumber, sayBand, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { printableLine } from './printable.ts';
import { assumptionCount, assumptionsSection, findingsSection } from './report-sections.ts';
import { columnAndText, columns, paragraph, section } from './text-table.ts';

export function wrapReport(answer: WrappingAnswer, view: UnitView): string {
  const said = sayWrapping(answer, view);
  return [
    printableLine(answer.designName),
    paragraph(said.headline),
    '',
    paragraph(said.twoAccounts),
    '',
    assumptionCount(answer.assumptions.length),
    '',
    ...(answer.measures.length === 0 ? [] : [aloneSection(answer, view), turnSection(answer, view)]),
    notAppliedSection(answer),
    listSection('With the heat made by a heat pump', said.withHeatPump),
    ...(answer.measures.length === 0 ? [] : [pricesSection(answer, view)]),
    listSection('How much of a board the last inch earns', said.lastInch),
    findingsSection('What to know beside these numbers', answer.findings, view),
    assumptionsSection(answer.assumptions, undefined, view),
    paragraph(answer.caution),
  ]
    .filter((part) => part !== undefined)
    .join('\n');
}

function aloneSection(answer: WrappingAnswer, view: UnitView): string {
  const rows = answer.measures.map(({ name, cost, alone }) => [
    printableLine(name),
    money(answer, cost, view),
    ...gainCells(answer, alone, view),
  ]);
  const basis = answer.measuresFrom === 'usual' ? 'usual measures, usual prices' : 'measures of the design';
  return section(`Each measure alone (${basis})`, columns([head, ...rows]));
}

const head = ['', 'costs', 'saves, coldest spell', 'a year', 'room’s credit', 'net a year', 'paid after', 'net value'];

function turnSection(answer: WrappingAnswer, view: UnitView): string {
  const rows = answer.inTurn.flatMap(({ name, cost, gain, after, stopsPayingHere }, index) => [
    ...(stopsPayingHere ? [['-- from here on it does not pay --']] : []),
    [
      `${index + 1}. ${printableLine(name)}`,
      money(answer, cost, view),
      ...gainCells(answer, gain, view),
      sayQuantity(after.load.likely, 'power', view),
    ],
  ]);
  const start = sayBand(answer.asItIs.load, 'power', view);
  return section(`The next best in turn, from ${start} in the coldest spell`, columns([[...head, 'left'], ...rows]));
}

function gainCells(answer: WrappingAnswer, gain: WrappingGain, view: UnitView): readonly string[] {
  return [
    sayQuantity(gain.loadSaved.likely, 'power', view),
    sayQuantity(gain.heatSaved.likely, 'energy', view),
    amount(answer, gain.roomCreditChange.likely, view),
    money(answer, gain.netSaving, view),
    sayPayback(gain.payback),
    money(answer, gain.netValue, view),
  ];
}

function notAppliedSection({ notApplied }: WrappingAnswer): string | undefined {
  if (notApplied.length === 0) return undefined;
  return section(
    'What changes nothing here',
    columnAndText(notApplied.map(({ name, words }) => [printableLine(name), words] as const)),
  );
}

function listSection(title: string, sentences: readonly string[]): string | undefined {
  return sentences.length === 0 ? undefined : section(title, sentences.map((each) => paragraph(each, '  ')).join('\n'));
}

function pricesSection(answer: WrappingAnswer, view: UnitView): string {
  const { electricityPrices, discountRates, cells } = answer.prices;
  const { currency } = answer;
  const rows = cells.map((row, index) => [
    sayQuantity(electricityPrices[index]!, 'energyPrice', view, 2, { currency }),
    ...row.map(({ netValue, paying }) => `${amount(answer, netValue, view)} (${paying.length})`),
  ]);
  const rates = discountRates.map((rate) => `${formatNumber(100 * rate, 2)} %`);
  return section(
    `Net value over ${formatNumber(answer.basis.years, 2)} years of what pays together (how many measures), by price and discount rate`,
    columns([['electricity', ...rates], ...rows]),
  );
}

function money({ currency }: WrappingAnswer, band: Band, view: UnitView): string {
  return sayBand(band, 'money', view, { currency });
}

function amount({ currency }: WrappingAnswer, value: number, view: UnitView): string {
  return sayQuantity(value, 'money', view, 2, { currency });
}
