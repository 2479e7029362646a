// The working of a machine found from its description: each of its numbers out of its range and how far the points move it,
// how far every given value is off, and its current against the rated one.

import {
  currentShare,
  type HermeticParameter,
  hermeticParameters,
  parameterScales,
  type Residual,
} from '../../parts/compressor/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { compressorPath, valueAt } from '../stages/machine.ts';

/** Name of the step that gives a number of the likely machine. */
export function identifiedResult(parameter: HermeticParameter): string {
  return `identified.${parameter}`;
}

/** Where a number of the likely machine came from: its step, or its field where it is known exactly. */
export function numberOrigins({
  identified,
}: Pick<StageResults, 'identified'>): Readonly<Record<HermeticParameter, string>> {
  const origins = hermeticParameters.map((name, index) => {
    const isExact = identified.prior.spread[index] === 0 && name !== 'displacement';
    return [name, isExact ? `${compressorPath}.${name}` : identifiedResult(name)];
  });
  return Object.fromEntries(origins);
}

/** Steps `identified.<number>`, and `identified.residuals.<index>` in the order of the given values. */
export function identifiedSteps(
  design: StagedDesign,
  { identified }: Pick<StageResults, 'identified'>,
): readonly WorkingStep[] {
  const { prior, deviations, compressor, residuals } = identified;
  const origins = numberOrigins({ identified });
  const numbers = hermeticParameters.flatMap((name, index) => {
    if (origins[name] !== identifiedResult(name)) return [];
    const scale = parameterScales[name];
    const common = {
      X_0: [prior.values[index]!, `${compressorPath}.${name}`] as StepInput,
      sigma: [prior.spread[index]!] as StepInput,
      z: [deviations[index]!] as StepInput,
    };
    return scale.kind === 'logit'
      ? workingStep(identifiedResult(name), 'compressor.identifiedByShare', compressor[name], {
          ...common,
          X_max: [scale.top],
        })
      : workingStep(identifiedResult(name), 'compressor.identifiedByFactor', compressor[name], common);
  });
  return [...numbers, ...residuals.map((residual, index) => residualStep(design, residual, index))];
}

function residualStep(design: StagedDesign, residual: Residual, index: number): WorkingStep {
  const { path, quantity, given, modelled, deviation } = residual;
  const isField = valueAt(design.machine.compressor, path) === given;
  const value: StepInput = isField ? [given, path] : [given];
  const name = `identified.residuals.${index}`;
  return quantity === 'dischargeTemperature'
    ? workingStep(name, 'compressor.temperatureDeviation', deviation, { T: [modelled], T_given: value })
    : workingStep(name, 'compressor.relativeDeviation', deviation, { X: [modelled], X_given: value });
}

/** Current in the coldest spell over the rated one, where that is known. */
export function currentSteps({ operating, compressor: { ratedCurrent } }: StageResults): readonly WorkingStep[] {
  if (ratedCurrent === null) return [];
  const share = currentShare(operating.compressor.current, ratedCurrent);
  return [
    workingStep('operating.compressor.currentShare', 'compressor.currentShare', share, {
      I: [operating.compressor.current, 'operating.compressor.current'],
      I_r: [ratedCurrent, `${compressorPath}.nameplate.ratedCurrent`],
    }),
  ];
}
