// How well a machine is known, as a person reads it in a terminal.

import { type CoefficientFit, evidenceWords, type FitAnswer } from '../../../assess/index.ts';
import {
  type Band,
  formatNumber,
  isQuantityName,
  type QuantityName,
  sayBand,
  sayQuantity,
  sayRange,
  type UnitView,
} from '../../../quantities/index.ts';
import { printableLine } from '../printable.ts';
import { findingsSection } from '../report-sections.ts';
import { columns, paragraph, section } from '../text-table.ts';

export function fitReport(answer: FitAnswer, view: UnitView): string {
  return [
    ...(answer.designName === null ? [] : [printableLine(answer.designName)]),
    paragraph(headline(answer)),
    '',
    residualSection(answer, view),
    numbersSection(answer, view),
    ...answer.coefficients.map((fit) => coefficientSection(fit, view)),
    findingsSection('What to know beside these numbers', answer.findings, view),
    paragraph(answer.caution),
  ].join('\n');
}

function headline({ madeFor, residuals }: FitAnswer): string {
  const count = residuals.length;
  if (count === 0) {
    return `A machine made for ${madeFor}. Nothing was printed or measured of it: its numbers are the ranges of such machines.`;
  }
  const off = residuals.filter(({ disagrees }) => disagrees).length;
  const fits =
    off === 0
      ? 'None of them disagrees with the rest.'
      : off === 1
        ? 'One of them does not fit the rest.'
        : `${off} of them do not fit the rest.`;
  return `A machine made for ${madeFor}, found from ${count === 1 ? 'one value' : `${count} values`} given of it. ${fits}`;
}

function residualSection({ residuals }: FitAnswer, view: UnitView): string {
  const title = 'What is left at each value';
  if (residuals.length === 0) return section(title, '  No value was given.');
  const rows = residuals.map(({ label, of, quantity, given, modelled, deviation, disagrees }) => {
    const name = isQuantityName(quantity) ? quantity : 'ratio';
    const say = (value: number) => sayQuantity(value, name, view, 3);
    return [
      printableLine(label),
      evidenceWords[of],
      say(given),
      say(modelled),
      of === 'dischargeTemperature'
        ? signed(sayQuantity(deviation, 'temperatureDifference', view), deviation)
        : percent(deviation),
      disagrees ? 'does not fit the rest' : '',
    ];
  });
  return section(title, columns([['', '', 'given', 'modelled', 'off by', ''], ...rows]));
}

function percent(deviation: number): string {
  return signed(`${formatNumber(100 * deviation, 2)} %`, deviation);
}

function signed(text: string, value: number): string {
  return value > 0 ? `+${text}` : text;
}

function numbersSection({ numbers }: FitAnswer, view: UnitView): string {
  const rows = numbers.map(({ label, quantity, before, after }) => {
    const name = isQuantityName(quantity) ? quantity : 'ratio';
    return [label, sayRange(before, name, view), sayBand(after, name, view)];
  });
  return section('Its numbers', columns([['', 'before', 'after'], ...rows]));
}

const quantities: Readonly<Record<CoefficientFit['of'], QuantityName>> = {
  massFlow: 'massFlow',
  capacity: 'power',
  power: 'electricPower',
  current: 'current',
  dischargeTemperature: 'temperature',
};

function coefficientSection(fit: CoefficientFit, view: UnitView): string {
  const title = `Ten coefficients of ${evidenceWords[fit.of]}, ${fit.path}`;
  if (!fit.ok) return section(title, paragraph(fit.error.message, '  '));
  const level = ({ low, high }: { readonly low: number; readonly high: number }) =>
    sayRange({ low, likely: (low + high) / 2, high } satisfies Band, 'temperature', view);
  const head = `C1 to C10 for dew temperatures in °C and values in ${fit.unit}, in the order of AHRI 540; they hold from ${level(fit.evaporatingRange)} evaporating and ${level(fit.condensingRange)} condensing, and mean nothing beyond. Scatter ${formatNumber(100 * fit.scatter, 2)} %.`;
  const say = (value: number) => sayQuantity(value, quantities[fit.of], view, 3);
  const off = fit.residuals
    .filter(({ disagrees }) => disagrees)
    .map(({ label, given, byTheOthers }) => {
      const others = byTheOthers === null ? '' : `; the others have ${say(byTheOthers)} there`;
      return `${printableLine(label)} does not fit the other points: ${say(given)} given${others}.`;
    });
  return section(
    title,
    [
      paragraph(head, '  '),
      columns(fit.coefficients.map((value, index) => [`C${index + 1}`, formatNumber(value, 8)])),
      ...off.map((each) => paragraph(each, '  ')),
    ].join('\n'),
  );
}
