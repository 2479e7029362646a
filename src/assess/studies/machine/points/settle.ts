// Where the loop of a machine settles: at the coldest spell of its design, or at a source and a water temperature that are asked for.
// Every number has its range from each input that the loop reads.

import { caution, worstFirst } from '../../../../cautions/index.ts';
import { type OperatingPoint, operatingPoint } from '../../../../loop/index.ts';
import { InputError } from '../../../../numerics/index.ts';
import { modelDoubt } from '../../../../parts/compressor/index.ts';
import { type Finding, type QuantityName, quantityRecord } from '../../../../quantities/index.ts';
import { loopPoints } from '../../../answers/pieces.ts';
import type { LimitMargin, LoopPoint } from '../../../assessment/assessment.ts';
import { coefficientFindings } from '../../../findings/coefficient-findings.ts';
import {
  disagreementFindings,
  glideFindings,
  nameplateFindings,
  operatingFindings,
  unansweredFinding,
} from '../../../findings/model-findings.ts';
import { fromDesign, type Refusal } from '../../../from-design.ts';
import { aroundShell } from '../../../stages/machine.ts';
import { exactStates, type StatesFrom } from '../../../stages/states.ts';
import { fluidFindings } from '../../fluid-findings.ts';
import { readMachine } from '../alone.ts';
import { limitsOfMachine } from '../limits.ts';
import { isOfLoop, type LoopRun, loopVariants, type MachineSubject, machineSubject, placeOf } from '../subject.ts';
import { variedNumbers } from '../variants.ts';
import type { UnitBand } from './point-answer.ts';

/** In place of the design's; levels in K. */
export interface AskedPlace {
  readonly source?: number;
  readonly water?: number;
  /** Air around the shell. */
  readonly surroundings?: number;
}

/** A temperature in force [K], and where it is from. */
export interface PlaceValue {
  readonly value: number;
  readonly from: 'asked' | 'coldestSpell' | 'design' | 'source';
}

const numbers = {
  heat: ['power', ({ heatDelivered }) => heatDelivered],
  power: ['electricPower', ({ compressorPower }) => compressorPower],
  compressorCop: ['ratio', ({ compressorCop }) => compressorCop],
  current: ['current', ({ compressor }) => compressor.current],
  heatTaken: ['power', ({ heatTaken }) => heatTaken],
  shellHeat: ['power', ({ shellHeat }) => shellHeat],
  massFlow: ['massFlow', ({ massFlow }) => massFlow],
  evaporatingTemperature: ['temperature', ({ evaporating }) => evaporating.temperature],
  condensingTemperature: ['temperature', ({ condensing }) => condensing.temperature],
  evaporatingPressure: ['pressure', ({ evaporating }) => evaporating.pressure],
  condensingPressure: ['pressure', ({ condensing }) => condensing.pressure],
  pressureRatio: ['ratio', ({ pressureRatio }) => pressureRatio],
  dischargeTemperature: ['temperature', ({ dischargeTemperature }) => dischargeTemperature],
  wallTemperature: ['temperature', ({ compressor }) => compressor.wallTemperature],
  motorLoad: ['fraction', ({ compressor }) => compressor.motor.load],
  volumetricEfficiency: ['fraction', ({ volumetricEfficiency }) => volumetricEfficiency],
  overallEfficiency: ['fraction', ({ overallEfficiency }) => overallEfficiency],
} as const satisfies Readonly<Record<string, readonly [QuantityName, (point: OperatingPoint) => number]>>;

export type SettledNumber = keyof typeof numbers;

export interface SettleAnswer extends Readonly<Record<SettledNumber, UnitBand>> {
  readonly settleVersion: 1;
  readonly caution: string;
  /** Null of a machine alone. */
  readonly designName: string | null;
  readonly refrigerant: string;
  readonly source: PlaceValue;
  readonly water: PlaceValue;
  readonly surroundings: PlaceValue;
  /** What the loop holds, likely values [K]; the limit of the suction pressure [Pa], null where there is no such valve. */
  readonly exchangers: {
    readonly evaporatorApproach: number;
    readonly condenserApproach: number;
    readonly superheat: number;
    readonly subcooling: number;
    readonly suctionPressureLimit: number | null;
  };
  readonly supply: { readonly frequency: number; readonly voltage: number };
  /** The states of the loop, likely values. */
  readonly points: readonly LoopPoint[];
  readonly insideData: boolean;
  readonly doubt: readonly string[];
  readonly limits: readonly LimitMargin[];
  readonly findings: readonly Finding[];
}

export type SettleOutcome = { readonly ok: true; readonly answer: SettleAnswer } | Refusal;

/**
 * @param text    the text of a design file, or of a file that holds a machine alone
 * @param asked   source and water; both are needed of a machine alone
 * @param states  where the states of refrigerants come from
 * @throws InputError 'missing' where a machine alone is given without source or water
 */
export function assessSettle(text: string, asked: AskedPlace, states: StatesFrom = exactStates): SettleOutcome {
  const read = readMachine(text);
  if (!read.ok) return read;
  const { document, isAlone } = read;
  if (isAlone) requirePlace(asked);
  return fromDesign(document, () => ({ answer: answerFor(machineSubject(document, states), asked, isAlone) }));
}

function requirePlace(asked: AskedPlace): void {
  for (const name of ['source', 'water'] as const) {
    if (asked[name] !== undefined) continue;
    const expected = 'a temperature: the file holds a machine alone, and nothing says where it would stand';
    throw new InputError(name, 'nothing', expected, 'missing');
  }
}

function answerFor(subject: MachineSubject, asked: AskedPlace, isAlone: boolean): SettleAnswer {
  const { design, results, document } = subject;
  const variants = loopVariants(subject, isOfLoop);
  const { likely } = variants;
  const point = settled(likely, asked, isAlone);
  const varied = variedNumbers(variants, (run) => numbersOf(settled(run, asked, isAlone)));
  const envelope = limitsOfMachine(subject, likely);
  const { evaporatorApproach, condenserApproach, superheat, subcooling, suctionPressureLimit } =
    likely.slice.exchangers;
  const { reasons } = modelDoubt(results.identified, likely.machine.compressor, {
    fluid: likely.fluid.name,
    evaporating: point.evaporating.temperature,
    condensing: point.condensing.temperature,
    supply: likely.machine.supply,
  });
  const bands = Object.entries(numbers).map(([name, [quantity]]) => {
    return [name, { ...varied.bands[name as SettledNumber], unit: quantityRecord(quantity).unit }] as const;
  });
  return {
    settleVersion: 1,
    caution,
    designName: isAlone ? null : document.name,
    refrigerant: likely.fluid.name,
    ...places(likely, asked, isAlone),
    exchangers: {
      evaporatorApproach,
      condenserApproach,
      superheat,
      subcooling,
      suctionPressureLimit: suctionPressureLimit ?? null,
    },
    supply: likely.machine.supply,
    ...(Object.fromEntries(bands) as Record<SettledNumber, UnitBand>),
    points: loopPoints(point.points),
    insideData: reasons.length === 0,
    doubt: reasons,
    limits: envelope.margins(point),
    findings: worstFirst([
      ...fluidFindings(design, likely.fluid.name),
      ...nameplateFindings(design.described.nameplate),
      ...coefficientFindings(design),
      ...disagreementFindings(results.identified),
      ...operatingFindings({ operating: point }),
      ...glideFindings({ operating: point }),
      ...[...variants.unanswered, ...varied.unanswered].map(unansweredFinding),
    ]),
  };
}

/** Temperatures in force; of a machine alone the shell stands where the heat is taken from, unless its air is asked for. */
function places(
  { slice, surroundings }: LoopRun,
  asked: AskedPlace,
  isAlone: boolean,
): Pick<SettleAnswer, 'source' | 'water' | 'surroundings'> {
  const spell = placeOf(surroundings, null);
  const source: PlaceValue =
    asked.source === undefined
      ? { value: spell.sourceTemperature, from: 'coldestSpell' }
      : { value: asked.source, from: 'asked' };
  const water: PlaceValue =
    asked.water === undefined
      ? { value: slice.waterTemperature, from: 'design' }
      : { value: asked.water, from: 'asked' };
  if (asked.surroundings !== undefined)
    return { source, water, surroundings: { value: asked.surroundings, from: 'asked' } };
  const standsAtSource = isAlone || slice.machine.shellPlace === 'sourceRoom';
  if (standsAtSource) return { source, water, surroundings: { value: source.value, from: 'source' } };
  return { source, water, surroundings: { value: aroundShell(slice.machine.shellPlace, spell), from: 'coldestSpell' } };
}

function settled(run: LoopRun, asked: AskedPlace, isAlone: boolean): OperatingPoint {
  const { source, water, surroundings } = places(run, asked, isAlone);
  return operatingPoint({
    fluid: run.fluid,
    machine: { ...run.machine, surroundings: surroundings.value },
    sourceTemperature: source.value,
    waterTemperature: water.value,
    ...run.slice.exchangers,
  });
}

function numbersOf(point: OperatingPoint): Readonly<Record<SettledNumber, number>> {
  const values = Object.entries(numbers).map(([name, [, read]]) => [name, read(point)] as const);
  return Object.fromEntries(values) as Readonly<Record<SettledNumber, number>>;
}
