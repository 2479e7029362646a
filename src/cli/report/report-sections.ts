// Sections that the reports of several commands share: what matters most, findings, assumptions.

import { type Assessment, type AssumptionLeft, sayFinding } from '../../assess/index.ts';
import {
  type Band,
  type Finding,
  insideSentence,
  isQuantityName,
  sayBand,
  sayQuantity,
  sayRange,
  sentenceStart,
  subjects,
  subjectTitles,
  type UnitView,
} from '../../quantities/index.ts';
import { columnAndText, columns, paragraph, section } from './text-table.ts';

/** How many influences are printed, and how small a share is still worth a line. */
const mostInfluences = 6;
const smallestShare = 0.01;

/** An influence as both the verdict's margin and the tank's load have them. */
export interface SaidInfluence {
  readonly label: string;
  readonly share: number;
  readonly measure: string;
  /** The result at either end of the input [W]. */
  readonly ends: readonly [number, number];
  /** What knowing it at one of its ends would change; empty where nothing. */
  readonly flips?: string;
}

/**
 * What matters most.
 * @param title       heading of the section
 * @param what        what the inputs move, in words: "the margin"
 * @param influences  the most telling first
 * @param view        units of the numbers
 */
export function influenceSection(
  title: string,
  what: string,
  influences: readonly SaidInfluence[],
  view: UnitView,
): string {
  const shown = influences.filter(({ share }) => share >= smallestShare).slice(0, mostInfluences);
  if (shown.length === 0) return section(title, `  Nothing uncertain moves ${what}.`);
  const shares = shown.map(({ share }) => sayQuantity(share, 'fraction', view, share < 0.1 ? 1 : 2));
  const width = Math.max(...shares.map((share) => share.length));
  const entries = shown.map(({ label, measure, ends, flips = '' }, index) => {
    const [low, high] = [Math.min(...ends), Math.max(...ends)];
    const range = sayRange({ low, likely: (low + high) / 2, high }, 'power', view);
    const head = `  ${shares[index]!.padStart(width)}  ${paragraph(sentenceStart(label), ' '.repeat(width + 4)).trimStart()}`;
    return `${head}\n${paragraph(`This alone moves ${what} from ${range}. ${flips}To know better, ${measure}.`, ' '.repeat(width + 4))}`;
  });
  return section(title, entries.join('\n'));
}

export function findingsSection(title: string, findings: readonly Finding[], view: UnitView): string {
  if (findings.length === 0) return section(title, '  None found by the rules that were applied.');
  const entries = findings.map((finding) => {
    const { title: heading, text, remedy } = sayFinding(finding, view);
    const who =
      finding.needsLicensedPerson && !/licensed/.test(finding.remedy)
        ? ' Any work on the circuit or the mains is for licensed people.'
        : '';
    return `  [${finding.severity}] ${heading}\n${paragraph(`${text} ${remedy}${who}`, '         ')}`;
  });
  return section(title, entries.join('\n'));
}

/** Cautions and findings by whom they are about, as the paper of cautions groups them. */
export function cautionSections(
  { cautions, findings }: Pick<Assessment, 'cautions' | 'findings'>,
  view: UnitView,
): string {
  const all = [...cautions, ...findings];
  return subjects
    .map((subject) => {
      const title = subject === 'model' ? subjectTitles.model : `Cautions: ${insideSentence(subjectTitles[subject])}`;
      return findingsSection(
        title,
        all.filter((finding) => finding.subject === subject),
        view,
      );
    })
    .join('\n');
}

/** Fields of the design and, apart from them, what the models assume by themselves. */
export function assumptionsSection(
  assumptions: readonly AssumptionLeft[],
  currency: string | undefined,
  view: UnitView,
): string {
  const inModels = assumptions.filter(({ path }) => path.startsWith('engine.'));
  const inDesign = assumptions.filter(({ path }) => !path.startsWith('engine.'));
  return [
    ...(inDesign.length === 0
      ? []
      : [
          section(
            'Assumed, until your design says otherwise',
            columns(inDesign.map(({ path, ...rest }) => [path, sayAssumed(rest, currency, view)])),
          ),
        ]),
    ...(inModels.length === 0
      ? []
      : [
          section(
            'Assumed by the models; no field of the design changes these',
            columnAndText(inModels.map(({ label, ...rest }) => [sayAssumed(rest, currency, view), label])),
          ),
        ]),
  ].join('\n');
}

/** "42 values are assumed, not given; they are listed below." */
export function assumptionCount(count: number): string {
  if (count === 0) return 'Nothing is assumed: every value was given.';
  return count === 1
    ? 'One value is assumed, not given; it is listed below.'
    : `${count} values are assumed, not given; they are listed below.`;
}

function sayAssumed(
  { value, quantity }: Pick<AssumptionLeft, 'value' | 'quantity'>,
  currency: string | undefined,
  view: UnitView,
): string {
  if (typeof value === 'string') return value;
  if (!isQuantityName(quantity)) throw new Error(`an assumption of an unknown quantity: ${quantity}`);
  return sayBand(value, quantity, view, currency === undefined ? {} : { currency });
}

/** A pressure as absolute and as gauge. Both ends are moved by the same air pressure. */
export function pressureRows(pressure: Band, atmosphere: number, view: UnitView): readonly (readonly string[])[] {
  const above = {
    low: pressure.low - atmosphere,
    likely: pressure.likely - atmosphere,
    high: pressure.high - atmosphere,
  };
  return [
    ['  pressure, absolute', sayBand(pressure, 'pressure', view)],
    ['  pressure, gauge', sayBand(above, 'gaugePressure', view)],
  ];
}

/** Whether a result is exactly nothing, whatever the inputs. */
export function isZero(band: Band): boolean {
  return band.low === 0 && band.high === 0;
}
