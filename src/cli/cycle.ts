// The textbook cycle at the edge: one line of JSON in and out for programs, a page of text for people. No input or
// output happens here.

import { type CycleWarning, type TextbookCycle, type TextbookCycleRequest, textbookCycle } from '../loop/index.ts';
import { formatNumber, sayQuantity, type UnitView } from '../quantities/index.ts';
import { columns, paragraph, section } from './report/text-table.ts';
import { answerLine } from './request-line.ts';

const pointTitles: Readonly<Record<string, string>> = {
  compressorInlet: '1   compressor inlet',
  compressorOutletIsentropic: '2s  compressor outlet without losses',
  compressorOutlet: '2   compressor outlet',
  condenserOutlet: '3   condenser outlet',
  evaporatorInlet: '4   evaporator inlet',
};

const warningSentences: Readonly<Record<CycleWarning['code'], (part: string) => string>> = {
  wetCompression: () => 'The gas is compressed into the dome: with or without losses the compressor would see liquid.',
  wetSuction: () => 'Liquid enters the compressor with the gas. Textbooks allow it; it breaks a real one.',
  negativeExergyDestruction: (part) =>
    `The ${part} would exchange heat with a body at the dead state against the fall of temperature; name the body's own temperature to judge it.`,
};

/**
 * Answers one request of `kettlefin cycle --batch`.
 * @param line  a JSON object with the keys of a TextbookCycleRequest, base SI
 * @returns     the cycle as one line of JSON, full precision; or `{"error":{"code":…,"message":…}}` for whatever is wrong
 *              with the line: not JSON, not an object, unknown or missing keys, values no cycle can have
 */
export function answerCycleLine(line: string): string {
  // Whatever the line holds; the cycle checks it at its own door.
  return answerLine(line, (request) => JSON.stringify(textbookCycle(request as TextbookCycleRequest)));
}

/**
 * The cycle for people: states, results and where the work goes, in the units of a view.
 * @param cycle  an answered cycle
 * @param view   'metric' or 'us'
 */
export function sayCycle(cycle: TextbookCycle, view: UnitView): string {
  const say = (value: number, quantity: Parameters<typeof sayQuantity>[1], digits?: number) =>
    sayQuantity(value, quantity, view, digits);
  const { refrigerant, evaporating, condensing } = cycle;
  const states = cycle.points.map((point) => [
    pointTitles[point.name] ?? point.name,
    say(point.temperature, 'temperature', 3),
    say(point.pressure, 'pressure', 4),
    say(point.enthalpy, 'enthalpy'),
    say(point.entropy, 'entropy'),
    say(point.density, 'density', 4),
    point.quality === null ? point.phase : `quality ${formatNumber(point.quality, 3)}`,
  ]);
  const results = [
    ['heating COP', formatNumber(cycle.heatingCop, 4)],
    ['cooling COP', formatNumber(cycle.coolingCop, 4)],
    ['reversible heating COP between both temperatures', formatNumber(cycle.carnotHeatingCop, 4)],
    ['pressure ratio', formatNumber(cycle.pressureRatio, 4)],
    ['isentropic efficiency', formatNumber(cycle.isentropicEfficiency, 4)],
    ['work on the gas', say(cycle.specificWork, 'enthalpy')],
    ['heat delivered', say(cycle.heatDelivered, 'enthalpy')],
    ['heat taken', say(cycle.heatTaken, 'enthalpy')],
    ['heat delivered per volume of gas drawn in', say(cycle.volumetricHeatingCapacity, 'volumetricCapacity', 4)],
  ];
  const lost = (['compressor', 'condenser', 'expansion', 'evaporator', 'total'] as const).map((part) => [
    part,
    say(cycle.exergyDestruction[part], 'enthalpy'),
    `${formatNumber((100 * cycle.exergyDestruction[part]) / cycle.specificWork, 3)} % of the work`,
  ]);
  const levels = `${refrigerant}, evaporating at ${say(evaporating.temperature, 'temperature', 3)}, condensing at ${say(condensing.temperature, 'temperature', 3)}`;
  const superheat = `${say(cycle.superheat, 'temperatureDifference')} superheat, ${say(cycle.subcooling, 'temperatureDifference')} subcooling`;
  return [
    paragraph(`Textbook cycle, not electricity: ${levels}; ${superheat}.`),
    '',
    section('States', columns(states)),
    section('Results', columns(results)),
    section('Work lost (exergy destroyed)', columns(lost)),
    paragraph(sayExergyBasis(cycle, view)),
    paragraph(`Enthalpy and entropy: ${cycle.referenceState}.`),
    ...cycle.warnings.map((warning) => paragraph(warningSentences[warning.code](warning.part))),
  ].join('\n');
}

function sayExergyBasis({ exergyBasis }: TextbookCycle, view: UnitView): string {
  const { deadState, sinkTemperature, sourceTemperature } = exergyBasis;
  const say = (value: number) => sayQuantity(value, 'temperature', view, 3);
  const body = (value: number) => (value === deadState ? 'a body at the dead state' : `a body at ${say(value)}`);
  const basis = `Heat is given to ${body(sinkTemperature)} and taken from ${body(sourceTemperature)}; dead state ${say(deadState)}.`;
  if (exergyBasis.minimumWork === 0) return `${basis} Such heat is worth no work: all the work is lost.`;
  const least = sayQuantity(exergyBasis.minimumWork, 'enthalpy', view);
  const share = formatNumber(100 * exergyBasis.secondLawEfficiency, 3);
  return `${basis} The least work for it is ${least}, ${share} % of the work put in.`;
}
