// The working of a machine found from its description: each of its numbers out of its range and how far the points move it,
// how far every given value is off, and its current against the rated one.

import {
  currentShare,
  type HermeticParameter,
  hermeticParameters,
  type MachineOrigins,
  parameterScales,
  type Residual,
} from '../../parts/compressor/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { compressorPath } from '../stages/machine.ts';
import { missSteps, residualResult } from './correction.ts';
import { givenSteps } from './given.ts';

/** Name of the step that gives a number of the likely machine. */
function identifiedResult(parameter: HermeticParameter): string {
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

/**
 * Where a machine that runs came from: the steps of its numbers, its mains, where it stands, and what is in doubt of the model.
 * @param results       which machine was identified
 * @param surroundings  names the temperature of the air around the shell
 * @param prefix        of the steps of the point: 'operating'
 */
export function machineOrigins(
  results: Pick<StageResults, 'identified'>,
  surroundings: string,
  prefix: string,
): MachineOrigins {
  const nameplate = (name: 'frequency' | 'voltage') => `${compressorPath}.nameplate.${name}`;
  const doubt = (kind: 'flow' | 'power') => ({
    correction: `${prefix}.doubt.${kind}.correction`,
    halfWidth: `${prefix}.doubt.${kind}.halfWidth`,
    place: kind === 'flow' ? 'engine.machineFlowDoubt' : 'engine.machinePowerDoubt',
  });
  return {
    parameters: numberOrigins(results),
    ratedSupply: { frequency: nameplate('frequency'), voltage: nameplate('voltage') },
    supply: { frequency: 'machine.supply.frequency', voltage: 'machine.supply.voltage' },
    surroundings,
    doubt: { flow: doubt('flow'), power: doubt('power') },
  };
}

/** Steps `identified.<number>`; `identified.residuals.<index>` in the order of the given values, and what is missed of each. */
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
  const given = givenSteps(design, residuals);
  return [
    ...numbers,
    ...given.steps,
    ...residuals.map((residual, index) => residualStep(residual, given.values[index]!, index)),
    ...missSteps(identified),
  ];
}

function residualStep({ quantity, modelled, deviation }: Residual, given: StepInput, index: number): WorkingStep {
  const name = residualResult(index);
  return quantity === 'dischargeTemperature'
    ? workingStep(name, 'compressor.temperatureDeviation', deviation, { T: [modelled], T_given: given })
    : workingStep(name, 'compressor.relativeDeviation', deviation, { X: [modelled], X_given: given });
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
