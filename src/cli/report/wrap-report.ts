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
  const entries = answer.measures.map(
    ({ name, cost, alone }) => `  ${printableLine(name)}\n${gainLines(answer, cost, alone, view)}`,
  );
  const basis = answer.measuresFrom === 'usual' ? 'usual measures, usual prices' : 'measures of the design';
  return section(`Each measure alone (${basis})`, entries.join('\n'));
}

function turnSection(answer: WrappingAnswer, view: UnitView): string {
  const firstToStop = answer.inTurn.findIndex(({ stopsPayingHere }) => stopsPayingHere);
  const entries = answer.inTurn.map(({ name, cost, gain, after }, index) => {
    const stop = index === firstToStop ? '  -- from here on it does not pay --\n' : '';
    const left = sayQuantity(after.load.likely, 'power', view);
    return `${stop}  ${index + 1}. ${printableLine(name)}, which leaves ${left}\n${gainLines(answer, cost, gain, view)}`;
  });
  const start = sayBand(answer.asItIs.load, 'power', view);
  return section(`The next best in turn, from ${start} in the coldest spell`, entries.join('\n'));
}

/** What a measure costs, saves and is worth, in lines of text. */
function gainLines(answer: WrappingAnswer, cost: Band, gain: WrappingGain, view: UnitView): string {
  const watts = sayQuantity(gain.loadSaved.likely, 'power', view);
  const year = sayQuantity(gain.heatSaved.likely, 'energy', view);
  const credit = amount(answer, gain.roomCreditChange.likely, view);
  const net = money(answer, gain.netSaving, view);
  const worth = money(answer, gain.netValue, view);
  return [
    `costs ${money(answer, cost, view)}; saves ${watts} in the coldest spell, ${year} a year`,
    `net ${net} a year, the room’s credit of ${credit} counted in`,
    `paid after: ${sayPayback(gain.payback)}; net value ${worth}`,
  ]
    .map((line) => paragraph(line, '       '))
    .join('\n');
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
