// The working of a textbook cycle as it is handed in: what was given, then every state and every result step by step.

import { pointNumbers } from '../../charts/index.ts';
import { textbookCycleWorking } from '../../loop/index.ts';
import { formatNumber, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { columns, section } from '../report/text-table.ts';
import { printedSteps, stepsReport } from '../report/working-report.ts';
import { type AskedCycle, quantityOptions, type RequestTexts } from './options.ts';
import { pointTitles } from './say.ts';

const prefix = 'request.';

/**
 * The hand-in for people.
 * @param asked  the cycle and its request
 * @param texts  the options as they were typed
 * @param view   units beside those of SI
 */
export function cycleHandIn(asked: AskedCycle, texts: RequestTexts, view: UnitView): string {
  const { request, cycle } = asked;
  const steps = printedSteps(textbookCycleWorking(request, cycle), view);
  const given = quantityOptions.flatMap(({ option, key, quantity }) => {
    const value = request[key];
    return value === undefined
      ? []
      : [
          [
            `--${option}`,
            `"${texts[option]}"`,
            `${formatNumber(value, 6)} in SI, ${sayQuantity(value, quantity, view)}`,
          ],
        ];
  });
  return [
    section(`Given: ${cycle.refrigerant}, enthalpy and entropy from ${cycle.referenceState}`, columns(given)),
    stepsReport(steps, sayRequested, ({ result }) => headingOf(result, cycle.heatExchanger !== undefined)),
  ].join('\n');
}

const furtherProperties = ['stiffness', 'thermalPush', 'cp', 'cv', 'soundSpeed', 'surfaceTension'];

/** What a step belongs to: a level, a state, the results, the exergy account. */
function headingOf(result: string, hasExchanger: boolean): string {
  const [, part = '', point = '', property = ''] = result.split('.');
  if (part.startsWith('exergy')) return 'EXERGY';
  if (part === 'perSecond') return 'PER SECOND';
  if (part === 'heatExchanger') return 'HEAT EXCHANGER';
  if (part === 'pressureLosses') return 'PRESSURE LOST';
  if (part === 'points') {
    if (furtherProperties.includes(property)) return 'HEAT CAPACITIES AND SPEEDS OF SOUND';
    return stateHeading(point);
  }
  if (part === 'superheat') return stateHeading(hasExchanger ? 'evaporatorOutlet' : 'compressorInlet');
  if (part === 'isentropicEfficiency') return stateHeading('compressorOutlet');
  if (part === 'subcooling') return stateHeading('condenserOutlet');
  return point === '' ? 'WORK, HEATS, COEFFICIENTS OF PERFORMANCE' : 'LEVELS';
}

function stateHeading(point: string): string {
  return `STATE ${pointNumbers[point] ?? point}: ${pointTitles[point] ?? point}`;
}

/** A key of the request by its option; one that was not given has its usual value. */
function sayRequested(origin: string): string {
  const key = origin.startsWith(prefix) ? origin.slice(prefix.length) : undefined;
  const option = quantityOptions.find((each) => each.key === key)?.option;
  return option === undefined ? origin : `--${option}`;
}
