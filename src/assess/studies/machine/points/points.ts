// Running points of a machine between stated dew temperatures, on a stated basis, each number with its range: what a data sheet
// would say of it, without tank and exchangers.

import { caution } from '../../../../cautions/index.ts';
import type { OperatingPoint } from '../../../../loop/index.ts';
import type { Refrigerant } from '../../../../matter/refrigerants/index.ts';
import { InputError, KettlefinError } from '../../../../numerics/index.ts';
import {
  contributionsOf,
  type EvidencePoint,
  type ModelDoubt,
  modelDoubt,
} from '../../../../parts/compressor/index.ts';
import { listed, type QuantityName, quantityRecord } from '../../../../quantities/index.ts';
import { residualAnswer } from '../../../answers/machine.ts';
import { fromDesign, refusalOf } from '../../../from-design.ts';
import { compressorPath } from '../../../stages/machine.ts';
import { describedMachine } from '../../../stages/machine-description.ts';
import { calorimeterSurroundings } from '../../../stages/machine-evidence.ts';
import { exactStates, type StatesFrom } from '../../../stages/states.ts';
import { usualRating } from '../../../stages/usual-rating.ts';
import { readMachine } from '../alone.ts';
import { limitsOfMachine } from '../limits.ts';
import { bubbleTemperature, type Levels, type Run, runningAt } from '../running.ts';
import { isOfMachine, type LoopRun, loopVariants, type MachineSubject, machineSubject } from '../subject.ts';
import { type Variants, type VariedNumbers, variedNumbers } from '../variants.ts';
import { type AskedBasis, type KnownBasis, pointBasis } from './basis.ts';
import { coefficientValues } from './coefficient-values.ts';
import type {
  CorrectionAnswer,
  MachinePoint,
  MachinePointsOutcome,
  PointBasis,
  UnansweredPoint,
  UnitBand,
} from './point-answer.ts';
import { pointFindings } from './point-findings.ts';
import { pointWorkings } from './point-workings.ts';

export interface AskedPoints {
  /** Dew temperatures [K]. */
  readonly at: readonly Levels[];
  readonly basis: AskedBasis;
  /** In place of the design's. */
  readonly refrigerant?: string;
  /** With the steps behind each number. */
  readonly workings?: boolean;
}

/** Numbers of a point, what they are, and how they are read. */
const numbers = {
  capacity: ['power', ({ heatTaken }) => heatTaken],
  power: ['electricPower', ({ compressorPower }) => compressorPower],
  massFlow: ['massFlow', ({ massFlow }) => massFlow],
  current: ['current', ({ compressor }) => compressor.current],
  dischargeTemperature: ['temperature', ({ dischargeTemperature }) => dischargeTemperature],
  heat: ['power', ({ heatDelivered }) => heatDelivered],
  compressorCop: ['ratio', ({ heatDelivered, compressorPower }) => heatDelivered / compressorPower],
  shellHeat: ['power', ({ shellHeat }) => shellHeat],
  volumetricEfficiency: ['fraction', ({ volumetricEfficiency }) => volumetricEfficiency],
  overallEfficiency: ['fraction', ({ overallEfficiency }) => overallEfficiency],
  motorLoad: ['fraction', ({ compressor }) => compressor.motor.load],
  evaporatingPressure: ['pressure', ({ evaporating }) => evaporating.pressure],
  condensingPressure: ['pressure', ({ condensing }) => condensing.pressure],
} as const satisfies Readonly<Record<string, readonly [QuantityName, (point: OperatingPoint) => number]>>;

type NumberName = keyof typeof numbers;

/**
 * Points of the machine in a design file, or in a file that holds a machine alone.
 * @param text    the text of the file
 * @param asked   where, on which basis, on which refrigerant
 * @param states  where the states of refrigerants come from
 * @returns       one answer a point, in the order asked, or why there is none; where no point has one, a refusal
 * @throws InputError of pointBasis, about what was asked
 */
export function assessMachinePoints(
  text: string,
  asked: AskedPoints,
  states: StatesFrom = exactStates,
): MachinePointsOutcome {
  const read = readMachine(text);
  if (!read.ok) return read;
  const prepared = fromDesign(read.document, (document) => {
    const subject = machineSubject(document, states);
    return { subject, variants: loopVariants(subject, isOfMachine), known: knownBasis(subject) };
  });
  if (!prepared.ok) return prepared;
  const { subject, variants, known } = prepared;
  const fluid = states.fluid(asked.refrigerant ?? subject.design.machine.refrigerant);
  const answers = asked.at.map((levels) => pointOrReason(levels));
  const [first] = answers;
  if (first === undefined || answers.some((answer) => !(answer instanceof KettlefinError))) {
    return { ok: true, points: answers.map((answer, index) => told(answer, asked.at[index]!)) };
  }
  if (first instanceof InputError) throw first;
  return withContradictions(refusalOf(first as KettlefinError), subject);

  function pointOrReason(levels: Levels): MachinePoint | KettlefinError {
    try {
      return machinePoint(
        subject,
        variants,
        pointBasis(fluid, levels, asked.basis, known),
        fluid,
        asked.workings === true,
      );
    } catch (error) {
      if (error instanceof KettlefinError) return error;
      throw error;
    }
  }

  function told(answer: MachinePoint | KettlefinError, levels: Levels): MachinePoint | UnansweredPoint {
    if (!(answer instanceof KettlefinError)) return answer;
    const { error } = withContradictions(refusalOf(answer), subject);
    return { machinePointVersion: 1, caution, at: { refrigerant: fluid.name, ...levels }, error };
  }
}

type NoSolution = ReturnType<typeof refusalOf>;

/** A machine made of values that contradict each other may run nowhere: they are named beside the reason. */
function withContradictions(refusal: NoSolution, { results }: MachineSubject): NoSolution {
  const contradicting = results.identified.residuals.filter(({ disagrees }) => disagrees).map(({ path }) => path);
  if (contradicting.length === 0) return refusal;
  const { message, code, facts } = refusal.error;
  const ended = message.endsWith('.') ? message : `${message}.`;
  const named = `${ended} Given values contradict each other, check them first: ${listed(contradicting.slice(0, mostNamed))}`;
  return { ...refusal, error: { code, message: named, facts: { ...facts, contradicting } } };
}

const mostNamed = 4;

function machinePoint(
  subject: MachineSubject,
  variants: Variants<LoopRun>,
  basis: PointBasis,
  fluid: Refrigerant,
  withWorkings: boolean,
): MachinePoint {
  const { results } = subject;
  const { evaporating, condensing } = basis;
  const levels: Levels = { evaporating, condensing };
  const on = ({ machine }: LoopRun): Run => ({ ...runOn(basis, machine), fluid });
  const run = on(variants.likely);
  const point = runningAt(run, levels);
  const varied = variedNumbers(variants, (run) => numbersOf(runningAt(on(run), levels)));
  const supply = { frequency: basis.frequency.value, voltage: basis.voltage.value };
  const { compressor, identified } = results.compressor;
  const doubt = modelDoubt(identified, compressor, { fluid: fluid.name, ...levels, supply });
  return {
    machinePointVersion: 1,
    caution,
    at: basis,
    ...bandsOf(varied),
    insideData: doubt.reasons.length === 0,
    doubt: doubt.reasons,
    correction: correctionAnswer(results.compressor, doubt, levels),
    polynomial: coefficientValues(subject, basis, fluid),
    limits: limitsOfMachine(subject, variants.likely).margins(point),
    residuals: identified.residuals.map(residualAnswer),
    findings: pointFindings(subject, point, fluid.name, [...variants.unanswered, ...varied.unanswered]),
    ...(withWorkings ? { workings: pointWorkings(subject, run, basis, point) } : {}),
  };
}

function correctionAnswer(
  { compressor, identified }: MachineSubject['results']['compressor'],
  doubt: ModelDoubt,
  levels: Levels,
): CorrectionAnswer {
  const parts = (['flow', 'power'] as const).flatMap((of) =>
    contributionsOf(identified, compressor, of, levels).map(({ residual, weight, miss, contribution }) => {
      const { path, label } = identified.residuals[residual]!;
      return { of, path, label, weight, miss, contribution };
    }),
  );
  return { flow: doubt.flow.correction, power: doubt.power.correction, parts };
}

/** The machine on the basis of the point; where the design's own mains hold, their range moves it. */
function runOn(basis: PointBasis, machine: LoopRun['machine']): Omit<Run, 'fluid'> {
  const { superheat, subcooling, surroundings, frequency, voltage } = basis;
  const supply = {
    frequency: frequency.from === 'design' ? machine.supply.frequency : frequency.value,
    voltage: voltage.from === 'design' ? machine.supply.voltage : voltage.value,
  };
  return { machine: { ...machine, surroundings: surroundings.value, supply }, superheat, subcooling };
}

function numbersOf(point: OperatingPoint): Readonly<Record<NumberName, number>> {
  return Object.fromEntries(Object.entries(numbers).map(([name, [, read]]) => [name, read(point)])) as Readonly<
    Record<NumberName, number>
  >;
}

function bandsOf({ bands }: VariedNumbers<NumberName>): Readonly<Record<NumberName, UnitBand>> {
  return Object.fromEntries(
    Object.entries(numbers).map(([name, [quantity]]) => {
      return [name, { ...bands[name as NumberName], unit: quantityRecord(quantity).unit }];
    }),
  ) as Readonly<Record<NumberName, UnitBand>>;
}

const ratingWords = {
  low: 'at the rating point of machines for low evaporating temperatures',
  medium: 'at the rating point of machines for medium evaporating temperatures',
  high: 'at the rating point of machines for high evaporating temperatures',
} as const;

/** What is known of the machine's own conditions, for what was not asked. */
function knownBasis({ design, resolution }: MachineSubject): KnownBasis {
  const { machine, described, states } = design;
  const { application, supply } = machine;
  const isAssumed = (path: string) => resolution.assumptions.some((assumption) => assumption.path === path);
  const { points, fluid } = describedMachine({ described, application, states });
  return {
    fluid,
    points: points.map((point) => withStatedLiquid(point, described, fluid)),
    rating: { ...usualRating(application), surroundings: calorimeterSurroundings, words: ratingWords[application] },
    supply,
    given: { frequency: !isAssumed('machine.supply.frequency'), voltage: !isAssumed('machine.supply.voltage') },
    isStated: ({ path }, name) => !isAssumed(`${partOf(path)}.${name}`),
  };
}

/** The part of the description that a point was read from: 'machine.compressor.tables.0'. */
function partOf(path: string): string {
  return /^machine\.compressor\.(?:nameplate|[a-z]+\.\d+)/.exec(path)?.[0] ?? path;
}

/** A flow or power needs no liquid, so that points of such coefficients have none of their own; what their sheet states holds here. */
function withStatedLiquid(
  point: EvidencePoint,
  { coefficients }: MachineSubject['design']['described'],
  fluid: Refrigerant,
): EvidencePoint {
  if (!point.path.startsWith(`${compressorPath}.coefficients.`)) return point;
  const stated = coefficients.find(({ basis }) => basis.liquid !== undefined)?.basis.liquid;
  if (stated === undefined) return point;
  const bubble = bubbleTemperature(fluid, point.condensing);
  const liquid =
    stated.kind === 'subcooling' ? bubble - stated.subcooling.likely : Math.min(bubble, stated.temperature.likely);
  return { ...point, liquid };
}
