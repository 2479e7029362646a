// The working of one column: the loop on its fluid, the plant where the whole machine is compared, the loop on the design's
// own fluid where heat is matched, and the numbers made for the comparison.

import type { OperatingPoint } from '../../../loop/index.ts';
import type { WorkingStep } from '../../../quantities/index.ts';
import type { StagedDesign } from '../../stages/engine-assumptions.ts';
import type { StageResults } from '../../stages/index.ts';
import { identifiedSteps } from '../../working/identified.ts';
import { type LoopOptions, operatingSteps, plantSteps, spellPlace } from '../../working/machine.ts';
import { placeSteps } from '../../working/tank.ts';
import type { MachineBasis } from './comparison.ts';
import { type ComparedRun, comparedSteps, sizedNumbers } from './values.ts';

/** What the comparison was asked. */
interface Asked {
  readonly basis: MachineBasis;
  /** Present where both dew temperatures were given. */
  readonly levels: object | undefined;
}

/**
 * Steps behind the numbers of one column, likely values.
 * @param design     with the column's fluid in it
 * @param ownDesign  with its own fluid
 * @param run        what was computed
 * @param asked      basis and levels
 */
export function machineWorkings(
  design: StagedDesign,
  ownDesign: StagedDesign,
  run: ComparedRun,
  asked: Asked,
): readonly WorkingStep[] {
  const results = run.results as StageResults;
  const source = spellPlace(design, results);
  const areLevelsGiven = asked.levels !== undefined;
  const sized = run.own === undefined ? {} : { sized: { size: run.size, results: sizedNumbers } };
  const loop = (of: StagedDesign, point: OperatingPoint, prefix: string, more: LoopOptions = {}) =>
    operatingSteps(of, results, point, source, prefix, { areLevelsGiven, ...more });
  return [
    ...placeSteps(design, results),
    ...identifiedSteps(design, results),
    ...loop(design, results.operating, 'operating', sized),
    ...(asked.basis === 'sameParts' ? plantSteps(design, results) : []),
    ...(run.own === undefined ? [] : loop(ownDesign, run.own, 'own')),
    ...comparedSteps(asked.basis, run),
  ];
}
