// How the numbers of one running point were computed: the machine out of what was given of it, the model between the levels asked
// for, the correction by the points around, and beside it what its ten coefficients say themselves.

import { type OperatingPoint, operatingPointWorking } from '../../../../loop/index.ts';
import type { Refrigerant } from '../../../../matter/refrigerants/index.ts';
import { type CoefficientSet, coefficientWorking, type RunningMachine } from '../../../../parts/compressor/index.ts';
import type { WorkingStep } from '../../../../quantities/index.ts';
import { doubtSteps } from '../../../working/correction.ts';
import { identifiedSteps, machineOrigins } from '../../../working/identified.ts';
import type { Run } from '../running.ts';
import type { MachineSubject } from '../subject.ts';
import { coefficientsAt } from './coefficient-values.ts';
import type { PointBasis } from './point-answer.ts';

/** Prefix of the steps of the point; what it was asked for has these names with 'asked' in their place. */
const prefix = 'point';

/**
 * Steps `identified.…`, `point.…` and `polynomial.<set>.…`, likely values. What was asked for is named `asked.…`.
 * @param subject  the machine and what is known of it: design and results
 * @param run      as it runs at the point
 * @param basis    of the point
 * @param point    what came of it
 */
export function pointWorkings(
  subject: MachineSubject,
  run: Run,
  basis: PointBasis,
  point: OperatingPoint,
): readonly WorkingStep[] {
  const { design, results } = subject;
  const { fluid } = run;
  return [
    ...identifiedSteps(design, results),
    ...doubtSteps(point.compressor, results.compressor, fluid, prefix),
    ...loopSteps(results, run, point),
    ...coefficientSteps(design.described, basis, fluid),
  ];
}

function loopSteps(results: MachineSubject['results'], run: Run, point: OperatingPoint): readonly WorkingStep[] {
  const { fluid, superheat, subcooling } = run;
  const origins = machineOrigins(results, 'asked.surroundings', prefix);
  const machine: RunningMachine = run.machine;
  // Source, water and approaches are not asked where both levels are given.
  const none = { sourceTemperature: '', waterTemperature: '', evaporatorApproach: '', condenserApproach: '' };
  const steps = operatingPointWorking(
    {
      fluid,
      machine,
      superheat,
      subcooling,
      sourceTemperature: point.evaporating.temperature,
      waterTemperature: point.condensing.bubbleTemperature,
      evaporatorApproach: 0,
      condenserApproach: 0,
    },
    point,
    {
      ...none,
      superheat: 'asked.superheat',
      subcooling: 'asked.subcooling',
      machine: { ...origins, supply: { frequency: 'asked.frequency', voltage: 'asked.voltage' } },
      areLevelsGiven: true,
    },
    prefix,
  );
  return steps.map((step) => ({ ...step, from: askedLevels(step.from) }));
}

/** The two levels have no step: they were asked for. */
function askedLevels(from: WorkingStep['from']): WorkingStep['from'] {
  return Object.fromEntries(
    Object.entries(from).map(([symbol, origin]) => [symbol, askedNames.get(origin) ?? origin] as const),
  );
}

const askedNames = new Map([
  [`${prefix}.evaporatingTemperature`, 'asked.evaporating'],
  [`${prefix}.condensingTemperature`, 'asked.condensing'],
]);

function coefficientSteps(
  described: MachineSubject['design']['described'],
  basis: PointBasis,
  fluid: Refrigerant,
): readonly WorkingStep[] {
  const { evaporating, condensing, returnGas, liquid } = basis;
  const asked = { evaporating, condensing, returnGas: returnGas.value, liquid: liquid.value };
  return coefficientsAt(described, basis, fluid).flatMap(({ set, result }) =>
    coefficientWorking(
      fluid,
      set,
      asked,
      result,
      'asked',
      `polynomial.${set.path.split('.').at(-1)}`,
      basisOrigins(set),
    ),
  );
}

/** Fields of the design; a liquid that nothing states is saturated at the condensing temperature asked for. */
function basisOrigins({ path, basis: { gas, liquid } }: CoefficientSet): {
  readonly gas: string;
  readonly liquid: string;
} {
  const liquidField = liquid?.kind === 'liquid' ? 'temperature' : 'subcooling';
  return {
    gas: `${path}.basis.suction.${gas.kind}`,
    liquid: liquid === null ? 'asked' : `${path}.basis.liquid.${liquidField}`,
  };
}
