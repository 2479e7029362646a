// The design of a comparison, resolved once, and put on one fluid after another.

import { type DesignDocument, type Resolution, resolveDesign } from '../../../design/index.ts';
import type { DoubtfulInput } from '../../doubt/doubt.ts';
import { doubtfulInputs } from '../../inputs.ts';
import { StageRunner } from '../../stage.ts';
import { type StagedDesign, stagedDesign } from '../../stages/engine-assumptions.ts';
import { type StageResults, stages } from '../../stages/index.ts';
import { isOfMachine } from '../machine/subject.ts';
import type { MachineBasis } from './comparison.ts';
import type { KnownCharge } from './facts.ts';

/** Dew temperatures in place of those of the design's coldest spell [K]. */
export interface ComparedLevels {
  readonly evaporating: number;
  readonly condensing: number;
}

/** A design as every fluid of the comparison meets it. */
export interface Subject {
  readonly document: DesignDocument;
  readonly basis: MachineBasis;
  readonly levels: ComparedLevels | undefined;
  readonly resolution: Resolution;
  /** At its likely values, on its own fluid. */
  readonly design: StagedDesign;
  readonly inputs: readonly DoubtfulInput[];
  readonly charge: KnownCharge;
}

/** The design resolved, with the inputs that the basis leaves uncertain. */
export function subjectOf(document: DesignDocument, basis: MachineBasis, levels: ComparedLevels | undefined): Subject {
  const resolution = resolveDesign(document);
  const design = stagedDesign(resolution.design);
  const { identified } = new StageRunner<StageResults>(stages.filter(({ name }) => name === 'identified')).run(design);
  const { machine } = resolution.design;
  // An assumed charge is that of the appliance as it was built; one that was given is that of the fluid named beside it.
  const isAssumed = resolution.assumptions.some(({ path }) => path === 'machine.charge');
  return {
    document,
    basis,
    levels,
    resolution,
    design,
    inputs: doubtfulInputs(resolution, design, identified).filter(
      ({ path }) => basis === 'sameParts' || isOfTheMachine(path),
    ),
    charge: { fluid: isAssumed ? machine.compressor.madeFor : machine.refrigerant, charge: machine.charge },
  };
}

/** Inputs that may still move where both dew temperatures are held. */
function isOfTheMachine(path: string): boolean {
  return isOfMachine(path) || path === 'place.altitude';
}

/** The same design with another fluid in it. */
export function onFluid(design: StagedDesign, fluid: string): StagedDesign {
  return { ...design, machine: { ...design.machine, refrigerant: fluid } };
}
