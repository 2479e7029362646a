// One running point of a machine as a person reads it in a terminal: on which basis it stands, its numbers, what coefficients say
// themselves, how near its limits it is, and what does not fit.

import {
  doubtWords,
  evidenceWords,
  type MachinePoint,
  sayNoLoop,
  type UnansweredPoint,
} from '../../../assess/index.ts';
import {
  type Band,
  formatNumber,
  isQuantityName,
  listed,
  type QuantityName,
  sayBand,
  sayQuantity,
  sentenceStart,
  type UnitView,
} from '../../../quantities/index.ts';
import { findingsSection } from '../report-sections.ts';
import { columnAndText, columns, paragraph, section } from '../text-table.ts';
import { printedSteps, stepsReport } from '../working-report.ts';
import { limitsRows } from './limits-rows.ts';

/** What the person typed, as far as the report tells of it. */
export interface PointNotes {
  /** Options whose number had no unit. */
  readonly bare: readonly string[];
}

export function machinePointReport(point: MachinePoint, notes: PointNotes, view: UnitView): string {
  return [
    basisSection(point, notes, view),
    numbersSection(point, view),
    coefficientSection(point, view),
    section('Limits usual for such a machine, the nearest first', columns(limitsRows(point.limits, view))),
    residualSection(point, view),
    findingsSection('What to know beside these numbers', point.findings, view),
    workingSection(point, view),
    paragraph(point.caution),
  ]
    .filter((part) => part !== '')
    .join('\n');
}

const workingHeadings = {
  identified: 'HOW THE MACHINE IS KNOWN',
  point: 'THE MACHINE AT THIS POINT',
  polynomial: 'WHAT ITS COEFFICIENTS SAY THEMSELVES',
} as const;

/** Step by step, where that was asked. */
function workingSection({ workings, correction }: MachinePoint, view: UnitView): string {
  if (workings === undefined) return '';
  const headingOf = (result: string) => workingHeadings[result.split('.')[0] as keyof typeof workingHeadings];
  const sayGiven = (origin: string) => (/^asked(\.|$)/.test(origin) ? 'the basis above' : origin);
  const steps = stepsReport(printedSteps(workings, view), sayGiven, ({ result }) => headingOf(result));
  return [...correctionSection(correction), steps].join('\n');
}

const correctionDigits = 4;

/** What each given value adds to the correction of the model; none without given values. */
function correctionSection({ parts, ...corrections }: MachinePoint['correction']): readonly string[] {
  return (['flow', 'power'] as const).flatMap((kind) => {
    const own = parts.filter(({ of }) => of === kind);
    if (own.length === 0) return [];
    const say = (value: number) => formatNumber(value, correctionDigits);
    const rows = own.map(({ label, weight, miss, contribution }) => [label, say(weight), say(miss), say(contribution)]);
    const sum = own.reduce((total, { contribution }) => total + contribution, 0);
    const table = columns([['given', 'weight', 'miss', 'weight × miss'], ...rows, ['together', '', '', say(sum)]]);
    const words = `A miss is the logarithm of given over modelled value; the model’s ${kind === 'flow' ? 'flow' : 'electricity'} is multiplied by e to the sum, ${say(1 + corrections[kind])}.`;
    return [
      section(
        `How the given values correct the ${kind === 'flow' ? 'flow' : 'electricity'} here`,
        `${table}\n${paragraph(words, '  ')}`,
      ),
    ];
  });
}

/** Why one of several points has no answer. */
export function unansweredReport({ at, error, caution }: UnansweredPoint, view: UnitView): string {
  const level = (value: number) => sayQuantity(value, 'temperature', view, 3);
  const title = `${at.refrigerant}, evaporating at ${level(at.evaporating)}, condensing at ${level(at.condensing)} (dew)`;
  return [
    section(title, paragraph(`No answer: ${sayNoLoop(error, at.refrigerant, view)}`, '  ')),
    paragraph(caution),
  ].join('\n');
}

function basisSection({ at }: MachinePoint, { bare }: PointNotes, view: UnitView): string {
  const level = (value: number) => sayQuantity(value, 'temperature', view, 3);
  const apart = (value: number) => sayQuantity(value, 'temperatureDifference', view, 3);
  const title = `${at.refrigerant}, evaporating at ${level(at.evaporating)}, condensing at ${level(at.condensing)} (dew)`;
  const rows: readonly (readonly [string, string])[] = [
    ['gas at the inlet', `${level(at.returnGas.value)}, ${apart(at.superheat)} superheat; ${at.returnGas.words}`],
    ['liquid', `${level(at.liquid.value)}, ${apart(at.subcooling)} subcooling; ${at.liquid.words}`],
    ['air around the shell', `${level(at.surroundings.value)}; ${at.surroundings.words}`],
    ['mains', mainsWords(at, view)],
  ];
  const taken =
    bare.length === 0 ? [] : [paragraph(`Numbers without a unit are taken in °C and K: ${listed(bare)}.`, '  ')];
  return section(title, [columnAndText(rows), ...taken].join('\n'));
}

function mainsWords({ frequency, voltage }: MachinePoint['at'], view: UnitView): string {
  const said = [sayQuantity(frequency.value, 'mainsFrequency', view), sayQuantity(voltage.value, 'voltage', view)];
  if (frequency.words === voltage.words) return `${said.join(', ')}; ${frequency.words}`;
  return `${said[0]}, ${frequency.words}; ${said[1]}, ${voltage.words}`;
}

const rows = [
  ['capacity', 'capacity, inlet gas less liquid', 'power'],
  ['power', 'electricity', 'electricPower'],
  ['massFlow', 'flow', 'massFlow'],
  ['current', 'current', 'current'],
  ['dischargeTemperature', 'discharge gas', 'temperature'],
  ['heat', 'heat out of the condenser', 'power'],
  ['compressorCop', 'heat over electricity', 'ratio'],
  ['shellHeat', 'heat from the shell', 'power'],
  ['volumetricEfficiency', 'volumetric efficiency', 'fraction'],
  ['overallEfficiency', 'overall efficiency', 'fraction'],
  ['motorLoad', 'load of the motor, over its best load', 'fraction'],
  ['evaporatingPressure', 'evaporating pressure', 'pressure'],
  ['condensingPressure', 'condensing pressure', 'pressure'],
] as const satisfies readonly (readonly [keyof MachinePoint, string, QuantityName])[];

function numbersSection(point: MachinePoint, view: UnitView): string {
  const told = rows.map(([name, label, quantity]) => [label, sayBand(point[name] as Band, quantity, view)]);
  const known = point.insideData
    ? 'Inside what was printed or measured of it.'
    : `${sentenceStart(listed(point.doubt.map((reason) => doubtWords[reason] ?? reason)))}: the ranges are wider for it.`;
  return section('The machine there', `${columns(told)}\n${paragraph(known, '  ')}`);
}

const coefficientQuantities: Readonly<Record<string, QuantityName>> = {
  massFlow: 'massFlow',
  capacity: 'power',
  power: 'electricPower',
  current: 'current',
};

const digitsOfCoefficients = 4;

function coefficientSection({ polynomial }: MachinePoint, view: UnitView): string {
  if (polynomial === null) return '';
  const told = polynomial.map(
    ({ path, of, own, corrected, returnGas, liquid, frequency }): readonly [string, string] => {
      const say = (value: number) => sayQuantity(value, coefficientQuantities[of]!, view, digitsOfCoefficients);
      const gas = sayQuantity(returnGas, 'temperature', view, 3);
      const cold = liquid === null ? '' : `, liquid at ${sayQuantity(liquid, 'temperature', view, 3)}`;
      const mains = frequency === null ? '' : `, ${sayQuantity(frequency, 'mainsFrequency', view)}`;
      const carried =
        corrected === null || corrected === own ? '' : `; carried to the gas and liquid here ${say(corrected)}`;
      return [path, `${say(own)} with gas at ${gas}${cold}${mains}${carried}`];
    },
  );
  const words = 'Another gas after Dabiri and Rice 1981, three quarters of the change of density.';
  return section('What its coefficients say themselves', `${columnAndText(told)}\n${paragraph(words, '  ')}`);
}

function residualSection({ residuals }: MachinePoint, view: UnitView): string {
  if (residuals.length === 0) return '';
  const told = residuals.map(({ label, of, quantity, given, modelled, disagrees }) => {
    const name = isQuantityName(quantity) ? quantity : 'ratio';
    const say = (value: number) => sayQuantity(value, name, view, 3);
    return [label, evidenceWords[of], say(given), `here ${say(modelled)}`, disagrees ? 'does not fit the rest' : ''];
  });
  return section('How the likely machine meets what was given of it', columns(told));
}
