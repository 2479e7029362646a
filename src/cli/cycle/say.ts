// The textbook cycle as a page of text for people: states, results, what it gives per second, and where the work goes, in
// the units of a view. No input or output happens here.

import { sayStudyOnly } from '../../assess/index.ts';
import { inOrderOfFlow, pointNumbers } from '../../charts/index.ts';
import type { CycleLevel, CyclePerSecond, CycleWarning, MassFlowKey, TextbookCycle } from '../../loop/index.ts';
import { formatNumber, type QuantityName, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { columns, paragraph, section } from '../report/text-table.ts';

export const pointTitles: Readonly<Record<string, string>> = {
  compressorInlet: 'compressor inlet',
  compressorOutletIsentropic: 'compressor outlet without losses',
  compressorOutlet: 'compressor outlet',
  condenserOutlet: 'condenser outlet',
  expansionInlet: 'expansion inlet',
  evaporatorInlet: 'evaporator inlet',
  evaporatorOutlet: 'evaporator outlet',
};

const warningSentences: Readonly<Record<CycleWarning['code'], (part: string) => string>> = {
  wetSuction: () => 'Liquid enters the compressor with the gas. Textbooks allow it; it breaks a real one.',
  wetCompression: () => 'The gas is compressed into the dome: with or without losses the compressor would see liquid.',
  negativeExergyDestruction: (part) =>
    `The ${part} would exchange heat with a body at the dead state against the fall of temperature; name the body's own temperature to judge it.`,
};

const partTitles = {
  compressor: 'compressor',
  condenser: 'condenser',
  heatExchanger: 'heat exchanger',
  expansion: 'expansion',
  evaporator: 'evaporator',
  total: 'total',
} as const;

/** What the mass flow follows from. */
const flowTitles: Readonly<Record<MassFlowKey, string>> = {
  massFlow: 'given',
  coolingCapacity: 'from the cooling capacity',
  heatingCapacity: 'from the heating capacity',
  compressorPower: 'from the power of the shaft',
  displacement: 'from the displacement',
};

/**
 * The cycle for people.
 * @param cycle  an answered cycle
 * @param view   'metric' or 'us'
 */
export function sayCycle(cycle: TextbookCycle, view: UnitView): string {
  return [
    paragraph(headline(cycle, view)),
    '',
    section('States', columns(stateRows(cycle, view))),
    section('Results', columns(resultRows(cycle, view))),
    ...(cycle.perSecond === undefined ? [] : [section('Per second', columns(flowRows(cycle.perSecond, view)))]),
    section('Work lost (exergy destroyed)', columns(lostRows(cycle, view))),
    ...notes(cycle, view).map((note) => paragraph(note)),
  ].join('\n');
}

function headline(cycle: TextbookCycle, view: UnitView): string {
  const { refrigerant, evaporating, condensing, superheat, subcooling, heatExchanger } = cycle;
  const say = (temperature: number) => sayQuantity(temperature, 'temperature', view, 3);
  const level = ({ temperature, bubbleTemperature }: CycleLevel) =>
    bubbleTemperature === undefined ? say(temperature) : `${say(temperature)} dew, ${say(bubbleTemperature)} bubble`;
  const difference = (kelvin: number) => sayQuantity(kelvin, 'temperatureDifference', view);
  const quality = cycle.points[0].quality;
  const isWet = quality !== null && quality < 1;
  const where = heatExchanger === undefined ? '' : ' out of the evaporator';
  const gas = isWet ? `gas of quality ${formatNumber(quality, 3)}` : `${difference(superheat)} superheat${where}`;
  const levels = `${refrigerant}, evaporating at ${level(evaporating)}, condensing at ${level(condensing)}`;
  return `Textbook cycle, not electricity: ${levels}; ${gas}, ${difference(subcooling)} subcooling.`;
}

function stateRows({ points }: TextbookCycle, view: UnitView): string[][] {
  const say = (value: number, quantity: QuantityName, digits?: number) => sayQuantity(value, quantity, view, digits);
  return inOrderOfFlow(points).map((point) => [
    `${(pointNumbers[point.name] ?? '').padEnd(4)}${pointTitles[point.name] ?? point.name}`,
    say(point.temperature, 'temperature', 3),
    say(point.pressure, 'pressure', 4),
    say(point.enthalpy, 'enthalpy'),
    say(point.entropy, 'entropy'),
    say(point.density, 'density', 4),
    point.quality === null ? point.phase : `quality ${formatNumber(point.quality, 3)}`,
  ]);
}

/** Label and number of each result; also for two cycles side by side. */
export function resultRows(cycle: TextbookCycle, view: UnitView): [label: string, value: string][] {
  const say = (value: number, quantity: QuantityName, digits?: number) => sayQuantity(value, quantity, view, digits);
  const { heatExchanger: exchanger, pressureLosses: losses, exergyBasis } = cycle;
  return [
    ['heating COP', formatNumber(cycle.heatingCop, 4)],
    ['cooling COP', formatNumber(cycle.coolingCop, 4)],
    ['reversible heating COP between both temperatures', formatNumber(cycle.carnotHeatingCop, 4)],
    ...(exergyBasis.minimumWork === 0
      ? []
      : [['second-law efficiency', formatNumber(exergyBasis.secondLawEfficiency, 4)] as [string, string]]),
    ...glideRows(cycle, view),
    ['pressure ratio', formatNumber(cycle.pressureRatio, 4)],
    ['isentropic efficiency', formatNumber(cycle.isentropicEfficiency, 4)],
    ['work on the gas', say(cycle.specificWork, 'enthalpy')],
    ['heat delivered', say(cycle.heatDelivered, 'enthalpy')],
    ['heat taken', say(cycle.heatTaken, 'enthalpy')],
    ...(exchanger === undefined
      ? []
      : ([
          ['heat from the liquid to the suction gas', say(exchanger.heat, 'enthalpy')],
          ['effectiveness of the heat exchanger', formatNumber(exchanger.effectiveness, 4)],
        ] as [string, string][])),
    ...(losses === undefined
      ? []
      : ([
          ['pressure lost before the compressor', say(losses.suction, 'pressureDifference', 4)],
          ['pressure lost in the condenser', say(losses.liquid, 'pressureDifference', 4)],
        ] as [string, string][])),
    ['heat delivered per volume of gas drawn in', say(cycle.volumetricHeatingCapacity, 'volumetricCapacity', 4)],
  ];
}

/** Of a blend: how far it glides at either pressure. */
function glideRows({ evaporating, condensing }: TextbookCycle, view: UnitView): [label: string, value: string][] {
  const rows = [
    ['glide while boiling', evaporating.glide],
    ['glide while condensing', condensing.glide],
  ] as const;
  return rows.flatMap(([label, glide]) =>
    glide === undefined ? [] : [[label, sayQuantity(glide, 'temperatureDifference', view, 3)] as [string, string]],
  );
}

function flowRows(rates: CyclePerSecond, view: UnitView): string[][] {
  const say = (value: number, quantity: QuantityName) => sayQuantity(value, quantity, view, 4);
  const { displacement, volumetricEfficiency, volumetricEfficiencyAssumed } = rates;
  return [
    ['mass flow', say(rates.massFlow, 'massFlow'), flowTitles[rates.given]],
    ['heating capacity', say(rates.heatingCapacity, 'power')],
    ['cooling capacity', say(rates.coolingCapacity, 'power')],
    ['power of the shaft into the gas', say(rates.compressorPower, 'electricPower'), 'not electricity'],
    ...(rates.heatExchangerHeat === undefined
      ? []
      : [['heat in the exchanger', say(rates.heatExchangerHeat, 'power')]]),
    ['gas drawn in, at the compressor inlet', say(rates.inletVolumeFlow, 'volumeFlow')],
    ...(displacement === undefined || volumetricEfficiency === undefined
      ? []
      : [
          ['volume swept', say(displacement, 'volumeFlow')],
          [
            'volumetric efficiency',
            formatNumber(volumetricEfficiency, 4),
            volumetricEfficiencyAssumed ? 'assumed, since none was given: all that is swept is drawn in' : 'given',
          ],
        ]),
  ];
}

function lostRows({ exergyDestruction, specificWork, perSecond }: TextbookCycle, view: UnitView): string[][] {
  return (Object.keys(partTitles) as (keyof typeof partTitles)[]).flatMap((part) => {
    const lost = exergyDestruction[part];
    if (lost === undefined) return [];
    const rate = perSecond?.exergyDestructionRate[part];
    return [
      [
        partTitles[part],
        sayQuantity(lost, 'enthalpy', view),
        ...(rate === undefined ? [] : [sayQuantity(rate, 'electricPower', view, 4)]),
        `${formatNumber((100 * lost) / specificWork, 3)} % of the work`,
      ],
    ];
  });
}

function notes(cycle: TextbookCycle, view: UnitView): string[] {
  const { heatExchanger, pressureLosses } = cycle;
  const studyOnly = sayStudyOnly(cycle.refrigerant);
  return [
    ...(studyOnly === undefined ? [] : [studyOnly]),
    exergyBasis(cycle, view),
    ...(heatExchanger === undefined
      ? []
      : [
          'Effectiveness counts on enthalpy: the heat the suction gas takes up, by what it would take up if it left as warm as the liquid enters. Superheat and heat taken end at the evaporator outlet.',
        ]),
    ...(pressureLosses === undefined
      ? []
      : [
          `What falling pressure costs is counted with the condenser and ${heatExchanger === undefined ? 'the evaporator' : 'the heat exchanger'}.`,
        ]),
    ...(cycle.condensing.glide === undefined
      ? []
      : [
          `${cycle.refrigerant} is a blend: evaporating and condensing are dew temperatures, superheat counts from dew, subcooling from bubble. While it boils and condenses, temperature, enthalpy and entropy are taken as linear in the share of vapour (glide approximation); its error is in the work lost in expansion and evaporator.`,
        ]),
    `Enthalpy and entropy: ${cycle.referenceState}.`,
    ...cycle.warnings.map((warning) => warningSentences[warning.code](warning.part)),
  ];
}

function exergyBasis({ exergyBasis: basis }: TextbookCycle, view: UnitView): string {
  const { deadState, sinkTemperature, sourceTemperature } = basis;
  const say = (value: number) => sayQuantity(value, 'temperature', view, 3);
  const body = (value: number) => (value === deadState ? 'a body at the dead state' : `a body at ${say(value)}`);
  const words = `Heat is given to ${body(sinkTemperature)} and taken from ${body(sourceTemperature)}; dead state ${say(deadState)}.`;
  if (basis.minimumWork === 0) return `${words} Such heat is worth no work: all the work is lost.`;
  const least = sayQuantity(basis.minimumWork, 'enthalpy', view);
  const share = formatNumber(100 * basis.secondLawEfficiency, 3);
  return `${words} The least work for it is ${least}, ${share} % of the work put in.`;
}

/** Two cycles: each on its own, then their results side by side. */
export function sayTwoCycles(first: TextbookCycle, second: TextbookCycle, view: UnitView): string {
  const both = [first, second].map((cycle) => new Map(resultRows(cycle, view)));
  const labels = [...new Set(both.flatMap((rows) => [...rows.keys()]))];
  const heads = ['', `A, ${first.refrigerant}`, `B, ${second.refrigerant}`];
  const rows = labels.map((label) => [label, ...both.map((results) => results.get(label) ?? '–')]);
  return [
    `Cycle A\n${sayCycle(first, view)}\n`,
    `Cycle B\n${sayCycle(second, view)}\n`,
    section('Both side by side', columns([heads, ...rows])),
    ...(first.refrigerant === second.refrigerant && first.referenceState === second.referenceState
      ? []
      : [paragraph('Enthalpy and entropy of A and B count from different zeros: compare differences, not levels.')]),
  ].join('\n');
}
