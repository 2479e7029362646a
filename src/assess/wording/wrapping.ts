// The study of wrapping in words of the view: what to wrap first, what it saves, when it has paid for itself, where to stop,
// and why tank and room are two accounts.

import {
  type Band,
  insideSentence,
  listed,
  sayBand,
  sayQuantity,
  sayRange,
  sentenceStart,
  type UnitView,
} from '../../quantities/index.ts';
import type {
  LastInchCurve,
  PaybackRange,
  WithHeatPump,
  WrappingAnswer,
  WrappingGain,
} from '../studies/wrapping/answer.ts';

export interface SaidWrapping {
  /** What to do first, what it brings, when it has paid for itself, and where to stop. */
  readonly headline: string;
  /** Why the room has an account of its own here. */
  readonly twoAccounts: string;
  /** One for each way the heat could be made by a heat pump. */
  readonly withHeatPump: readonly string[];
  /** One for each curve of a board. */
  readonly lastInch: readonly string[];
}

export function sayWrapping(answer: WrappingAnswer, view: UnitView): SaidWrapping {
  return {
    headline: headline(answer, view),
    twoAccounts: twoAccounts(answer),
    withHeatPump: answer.withHeatPump.map((each) => sayWithHeatPump(each, answer, view)),
    lastInch: answer.lastInch.map((curve) => sayLastInch(curve, answer, view)),
  };
}

/** "1.2 to 3.4 years"; "2 to 5 months"; "1.2 years or more, perhaps never"; "never". */
export function sayPayback({ low, likely, high }: PaybackRange): string {
  if (low === null) return 'never';
  if (likely === null) return `likely never, at best ${sayYears(low)}`;
  if (high === null) return `${sayYears(low)} or more, perhaps never`;
  if (high > farOff) return `${sayYears(low)} or more`;
  if (high <= 0) return 'at once';
  if (high < 1.5) return monthsRange(12 * low, 12 * high);
  return number(low) === number(high) ? sayYears(low) : `${number(low)} to ${sayYears(high)}`;
}

/** Nobody reckons further [years]. */
const farOff = 100;

function monthsRange(low: number, high: number): string {
  const [from, to] = [Math.max(1, Math.round(low)), Math.max(1, Math.round(high))];
  if (high < 1) return 'less than a month';
  if (from === to) return `${to} ${to === 1 ? 'month' : 'months'}`;
  return `${from} to ${to} months`;
}

function headline(answer: WrappingAnswer, view: UnitView): string {
  const { inTurn, payingSteps, measures, basis } = answer;
  const [first] = inTurn;
  if (first === undefined) {
    return measures.length === 0 && answer.notApplied.length === 0
      ? 'No measure is on the list.'
      : 'No measure on the list changes anything on this tank.';
  }
  const over = `over ${sayYears(basis.years)}`;
  if (payingSteps === 0) {
    return `Nothing on the list pays ${over}. ${sentenceStart(first.name)} comes nearest: it saves ${savings(first.gain, answer, view)}, for ${cost(first.cost, answer, view)}.`;
  }
  const begin = `${sentenceStart(first.name)} first: that saves ${savings(first.gain, answer, view)}, and has paid for itself ${after(first.gain.payback)}`;
  const further = inTurn.slice(1, payingSteps).map(({ name }) => insideSentence(name));
  const go = further.length === 0 ? '' : `; then ${listed(further)}`;
  return `${begin}${go}; ${whereToStop(answer)}.`;
}

function whereToStop({ inTurn, payingSteps, notApplied, basis }: WrappingAnswer): string {
  const next = inTurn[payingSteps];
  if (next !== undefined) return `stop there: ${insideSentence(next.name)} does not pay over ${sayYears(basis.years)}`;
  if (notApplied.some(({ reason }) => reason === 'sizesUnknown')) {
    return 'what else would pay cannot be said before the tank’s sizes are known';
  }
  return payingSteps === 1 ? 'nothing else is on the list' : 'all of these pay';
}

function savings(gain: WrappingGain, answer: WrappingAnswer, view: UnitView): string {
  return `${sayBand(gain.loadSaved, 'power', view)} in the coldest spell and ${money(gain.netSaving, answer, view)} a year`;
}

function after(payback: PaybackRange): string {
  const said = sayPayback(payback);
  if (said === 'at once') return said;
  if (said.startsWith('less')) return `within ${said.replace('less than ', '')}`;
  return payback.low === null || payback.likely === null ? `(${said})` : `after ${said}`;
}

function twoAccounts({ basis }: WrappingAnswer): string {
  const { monthsHeated, dehumidifier, roomCooledInSummer } = basis;
  const cooled = roomCooledInSummer ? ' In summer the room’s cooling has less to do, which is a saving.' : '';
  if (monthsHeated === 0) {
    return `The room is heated in no month, so the heat that leaves the tank is worth nothing there: what the tank saves is saved.${cooled}`;
  }
  const vapour = dehumidifier
    ? 'Heat that leaves as vapour comes back to the room at the dehumidifier, which is paid for it.'
    : 'Heat that leaves as vapour warms nothing in the room, so a lid takes little from the room and a board takes more.';
  return `What leaves through glass and surface warms the room. In the ${number(monthsHeated)} months in which the room is heated, its heating has to make up for what is wrapped in, at the price of house heat. ${vapour}${cooled}`;
}

function sayWithHeatPump(machine: WithHeatPump, answer: WrappingAnswer, view: UnitView): string {
  const { label, priceOfHeat, stopPaying, steps } = machine;
  const price = (value: number) => sayQuantity(value, 'energyPrice', view, 2, { currency: answer.currency });
  const cheaper = `With ${label}, heat in the water costs ${price(priceOfHeat)} instead of ${price(answer.basis.electricityPrice)}`;
  if (stopPaying.length > 0) {
    const names = listed(stopPaying.map(insideSentence));
    return `${cheaper}, so the same heat saved is worth less: ${names} ${stopPaying.length === 1 ? 'no longer pays' : 'no longer pay'}.`;
  }
  const paying = steps.some(({ pays }) => pays);
  return paying
    ? `${cheaper}. What pays with a plain heater still pays.`
    : `${cheaper}. Nothing on the list pays there.`;
}

const oneInch = 0.0254;

function sayLastInch(curve: LastInchCurve, answer: WrappingAnswer, view: UnitView): string {
  const length = (value: number) => sayQuantity(value, 'length', view, 2);
  const inch = view === 'us' ? 'inch' : `inch (${length(oneInch)})`;
  const where = `${sayQuantity(curve.area, 'area', view, 2)} of ${insideSentence(curve.materialLabel)}`;
  if (curve.worthUpTo === null) {
    return `${where}: not even the first ${inch} brings as much as it costs in ${sayYears(answer.basis.years)}.`;
  }
  if (curve.worthUpTo <= oneInch * (1 + 1e-9)) {
    return `${where}: the first ${inch}, with the gap that it seals, brings what it costs; what is added to it does not. The list has ${length(curve.chosen)}.`;
  }
  const chosen =
    curve.chosen > curve.worthUpTo * (1 + 1e-9)
      ? `The list has ${length(curve.chosen)}: its last inch costs more than it brings.`
      : `The list has ${length(curve.chosen)}.`;
  return `${where}: the last ${inch} still brings what it costs up to ${length(curve.worthUpTo)}. ${chosen}`;
}

function money(band: Band, { currency }: WrappingAnswer, view: UnitView): string {
  return sayBand(band, 'money', view, { currency });
}

function cost(band: Band, { currency }: WrappingAnswer, view: UnitView): string {
  return sayRange(band, 'money', view, { currency });
}

/** "10 years". */
export function sayYears(value: number): string {
  const said = number(value);
  return `${said} ${said === '1' ? 'year' : 'years'}`;
}

function number(value: number): string {
  return String(value < 9.95 ? Number(value.toFixed(1)) : Math.round(value));
}
