// The machine of an assessment: results of the stages and their bands, beside what it was built for and how it is known.

import type { ResolvedDesign } from '../../design/index.ts';
import {
  applicationLimits,
  evidenceQuantityNames,
  type LimitReach,
  type ModelDoubt,
  modelDoubt,
  type Residual,
} from '../../parts/compressor/index.ts';
import type { OperatingMomentAnswer } from '../assessment/assessment.ts';
import type { MachineAnswer, ResidualAnswer } from '../assessment/machine-answer.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { limitAnswers, limitMargins } from './limits.ts';
import { type Bands, bandOf } from './pieces.ts';

/** What the answer is put together from. */
export interface MachineAnswerInput {
  readonly design: StagedDesign;
  readonly resolved: ResolvedDesign;
  readonly results: StageResults;
  readonly bands: Bands;
  /** Where the loop settles from the coldest spell to the warmest month. */
  readonly moments: readonly OperatingMomentAnswer[];
  readonly reaches: readonly LimitReach[];
}

export function machineAnswer(input: MachineAnswerInput): MachineAnswer {
  const { design, resolved, results, bands, moments, reaches } = input;
  const { compressor, application, count } = design.machine;
  const { flow, power, reasons } = doubtAtSpell(design, results);
  const of = (name: string) => bandOf(bands, `operating.compressor.${name}`);
  const { ratedCurrent } = resolved.machine.compressor.nameplate;
  return {
    count,
    madeFor: compressor.madeFor,
    appliance: compressor.appliance ?? null,
    application,
    builtFor: applicationLimits(application).evaporating,
    wouldRunAt: {
      evaporating: spanOf(moments.map(({ evaporatingTemperature }) => evaporatingTemperature)),
      condensing: spanOf(moments.map(({ condensingTemperature }) => condensingTemperature)),
    },
    heat: bandOf(bands, 'operating.heatDelivered'),
    power: of('power'),
    current: of('current'),
    ratedCurrent: ratedCurrent === undefined ? null : bandOnly(ratedCurrent),
    currentShare: results.compressor.ratedCurrent === null ? null : of('currentShare'),
    motorLoad: of('motor.load'),
    wallTemperature: of('wallTemperature'),
    firstLimit: limitMargins(reaches)[0]!,
    limits: limitAnswers(reaches),
    displacement: bandOf(bands, 'identified.displacement'),
    residuals: results.identified.residuals.map(residualAnswer),
    doubt: { flow, power, reasons },
  };
}

/** How doubtful the model is where the machine runs in the coldest spell. */
function doubtAtSpell(
  { machine }: StagedDesign,
  { compressor: { compressor, identified }, operating }: Pick<StageResults, 'compressor' | 'operating'>,
): ModelDoubt {
  return modelDoubt(identified, compressor, {
    fluid: machine.refrigerant,
    evaporating: operating.evaporating.temperature,
    condensing: operating.condensing.temperature,
    supply: machine.supply,
  });
}

export function residualAnswer({ quantity: of, ...residual }: Residual): ResidualAnswer {
  return { of, ...residual, quantity: evidenceQuantityNames[of] };
}

function spanOf(temperatures: readonly number[]): { readonly lowest: number; readonly highest: number } {
  return { lowest: Math.min(...temperatures), highest: Math.max(...temperatures) };
}

function bandOnly({ low, likely, high }: { low: number; likely: number; high: number }) {
  return { low, likely, high };
}
