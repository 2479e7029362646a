// How well a machine is known: each of its numbers before and after what was printed and measured of it was looked at, what is left at
// each given value, which of them do not fit the rest; and ten coefficients fitted to tables of ten points and more.

import { caution, worstFirst } from '../../../../cautions/index.ts';
import { fieldRecord } from '../../../../design/index.ts';
import { KettlefinError } from '../../../../numerics/index.ts';
import {
  type EvidencePoint,
  type EvidenceQuantity,
  type FitPoint,
  fitTenCoefficients,
  type HermeticParameter,
  hermeticParameters,
  polynomialUnitsInSi,
} from '../../../../parts/compressor/index.ts';
import type { Band, Finding } from '../../../../quantities/index.ts';
import { residualAnswer } from '../../../answers/machine.ts';
import type { ResidualAnswer } from '../../../assessment/machine-answer.ts';
import { coefficientFindings } from '../../../findings/coefficient-findings.ts';
import { disagreementFindings, nameplateFindings, unansweredFinding } from '../../../findings/model-findings.ts';
import { type EngineError, fromDesign, type Refusal, refusalOf } from '../../../from-design.ts';
import { compressorPath } from '../../../stages/machine.ts';
import { describedMachine } from '../../../stages/machine-description.ts';
import { exactStates, type StatesFrom } from '../../../stages/states.ts';
import { readMachine } from '../alone.ts';
import { isOfMachine, loopVariants, type MachineSubject, machineSubject } from '../subject.ts';
import { variedNumbers } from '../variants.ts';

/** One number of the machine. */
export interface FittedNumber {
  readonly name: HermeticParameter;
  readonly label: string;
  /** Name of the quantity it is of. */
  readonly quantity: string;
  /** Range before the points were looked at: typed, or of such machines. */
  readonly before: Band;
  readonly after: Band;
}

/** A point of a fit of ten coefficients. */
export interface CoefficientResidual {
  /** "Table, line 4" */
  readonly label: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly given: number;
  readonly fitted: number;
  /** Fitted over given, less 1. */
  readonly deviation: number;
  /** What the others have there, of a point that disagrees; null of any other. */
  readonly byTheOthers: number | null;
  readonly disagrees: boolean;
}

/** Ten coefficients of one quantity fitted to one series of points, or why there are none. */
export type CoefficientFit = { readonly path: string; readonly of: EvidenceQuantity } & (
  | {
      readonly ok: true;
      /** C1 to C10 in the order of AHRI 540, for dew temperatures in °C and values in `unit`. */
      readonly coefficients: readonly number[];
      readonly unit: string;
      /** Root mean square of the deviations, relative. */
      readonly scatter: number;
      /** Where they hold [K]; beyond it ten coefficients mean nothing. */
      readonly evaporatingRange: { readonly low: number; readonly high: number };
      readonly condensingRange: { readonly low: number; readonly high: number };
      readonly residuals: readonly CoefficientResidual[];
    }
  | { readonly ok: false; readonly error: EngineError }
);

export interface FitAnswer {
  readonly fitVersion: 1;
  readonly caution: string;
  /** Null of a machine alone. */
  readonly designName: string | null;
  readonly madeFor: string;
  readonly numbers: readonly FittedNumber[];
  readonly residuals: readonly ResidualAnswer[];
  /** Deviation usual between points and model, relative. */
  readonly scatter: { readonly flow: number; readonly power: number };
  readonly coefficients: readonly CoefficientFit[];
  readonly findings: readonly Finding[];
}

export type FitOutcome = { readonly ok: true; readonly answer: FitAnswer } | Refusal;

/**
 * @param text    the text of a design file, or of a file that holds a machine alone
 * @param states  where the states of refrigerants come from
 */
export function assessFit(text: string, states: StatesFrom = exactStates): FitOutcome {
  const read = readMachine(text);
  if (!read.ok) return read;
  const { document, isAlone } = read;
  return fromDesign(document, () => ({ answer: answerFor(machineSubject(document, states), isAlone) }));
}

function answerFor(subject: MachineSubject, isAlone: boolean): FitAnswer {
  const { design, results, document } = subject;
  const { identified } = results;
  const { described, states, machine } = design;
  const description = describedMachine({ described, application: machine.application, states });
  const variants = loopVariants(subject, isOfMachine);
  const { bands, unanswered } = variedNumbers(variants, ({ machine: { compressor } }) => numbersOf(compressor));
  return {
    fitVersion: 1,
    caution,
    designName: isAlone ? null : document.name,
    madeFor: identified.madeFor,
    numbers: hermeticParameters.map((name) => {
      const { label, quantity } = fieldRecord(`${compressorPath}.${name}`)!;
      const { low, likely, high } = description.prior[name].estimate;
      return { name, label, quantity: quantity ?? 'ratio', before: { low, likely, high }, after: bands[name] };
    }),
    residuals: identified.residuals.map(residualAnswer),
    scatter: identified.scatter,
    coefficients: seriesOf(description.points).flatMap(([path, points]) => fitsOf(path, points)),
    findings: worstFirst([
      ...nameplateFindings(described.nameplate),
      ...coefficientFindings(design),
      ...disagreementFindings(identified),
      ...[...variants.unanswered, ...unanswered].map(unansweredFinding),
    ]),
  };
}

function numbersOf(
  compressor: Readonly<Record<HermeticParameter, number>>,
): Readonly<Record<HermeticParameter, number>> {
  return Object.fromEntries(hermeticParameters.map((name) => [name, compressor[name]])) as Readonly<
    Record<HermeticParameter, number>
  >;
}

/** Points of pasted tables, by table. */
function seriesOf(points: readonly EvidencePoint[]): readonly (readonly [string, readonly EvidencePoint[]])[] {
  const tables = points.filter(({ series }) => series?.startsWith(`${compressorPath}.tables.`));
  const paths = [...new Set(tables.map(({ series }) => series!))];
  return paths.map((path) => [path, tables.filter(({ series }) => series === path)] as const);
}

/** What ten coefficients are printed for. */
const fittedQuantities = ['massFlow', 'capacity', 'power', 'current'] as const;

function fitsOf(path: string, points: readonly EvidencePoint[]): readonly CoefficientFit[] {
  return fittedQuantities.flatMap((of): readonly CoefficientFit[] => {
    const given = points.flatMap((point): readonly FitPoint[] => {
      const estimate = point.given[of];
      const { label, evaporating, condensing } = point;
      return estimate === undefined ? [] : [{ name: label, evaporating, condensing, value: estimate.likely }];
    });
    return given.length === 0 ? [] : [fitOf(path, of, given)];
  });
}

function fitOf(path: string, of: (typeof fittedQuantities)[number], points: readonly FitPoint[]): CoefficientFit {
  try {
    const { coefficients, residuals, scatter, evaporatingRange, condensingRange } = fitTenCoefficients(points);
    return {
      ok: true,
      path,
      of,
      coefficients,
      unit: polynomialUnitsInSi[of],
      scatter,
      evaporatingRange,
      condensingRange,
      residuals: residuals.map(({ name, ...residual }, index) => {
        const { evaporating, condensing } = points[index]!;
        const { given, fitted, deviation, byTheOthers, disagrees } = residual;
        return { label: name, evaporating, condensing, given, fitted, deviation, byTheOthers, disagrees };
      }),
    };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return { ok: false, path, of, error: refusalOf(error).error };
  }
}
