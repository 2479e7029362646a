// The working of given values that were read and not typed: a value of ten coefficients at a point of the grid on which they are
// read, and where the others stand in the design.

import {
  type CoefficientGroup,
  coefficientGroups,
  type GridLevel,
  gridLevels,
  type PolynomialQuantity,
  polynomialWorking,
  type Residual,
} from '../../parts/compressor/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { valueAt } from '../stages/machine.ts';
import { coefficientSets } from '../stages/machine-points.ts';

export interface GivenSteps {
  /** `identified.given.<index>` of the residuals that ten coefficients gave, and the levels they were read at. */
  readonly steps: readonly WorkingStep[];
  /** The given value of each residual with the step or field it came from; without one where the design has no such number. */
  readonly values: readonly StepInput[];
}

/**
 * Where every given value came from.
 * @param design     names the fields
 * @param residuals  of the machine, in their order
 */
export function givenSteps(design: StagedDesign, residuals: readonly Residual[]): GivenSteps {
  const read = coefficientPoints(design);
  const steps: WorkingStep[] = [];
  const levels = new Map<string, WorkingStep>();
  const values = residuals.map(({ path, given }, index): StepInput => {
    const point = read.get(path);
    if (point === undefined) return [given, fieldOf(design, path, given)];
    const name = `identified.given.${index}`;
    const [evaporating, condensing] = (['evaporating', 'condensing'] as const).map((which): StepInput => {
      const step = levelStep(point, which);
      levels.set(step.result, step);
      return [step.value, step.result];
    }) as [StepInput, StepInput];
    steps.push(...polynomialWorking(point.group.sets[point.of]!, evaporating, condensing, given, name));
    return [given, name];
  });
  return { steps: [...levels.values(), ...steps], values };
}

/** A number typed at the very place, or the field of the table that it is a cell of. */
function fieldOf({ machine }: StagedDesign, path: string, given: number): string | undefined {
  if (valueAt(machine.compressor, path) === given) return path;
  const [table] = /^machine\.compressor\.tables\.\d+/.exec(path) ?? [];
  return table === undefined ? undefined : `${table}.table`;
}

/** A point of the grid, and what is read there. */
interface CoefficientPoint {
  readonly group: CoefficientGroup;
  /** Of the group among all. */
  readonly number: number;
  readonly of: PolynomialQuantity;
  readonly evaporating: GridLevel;
  readonly condensing: GridLevel;
}

/** By path of the given value. */
function coefficientPoints({ described }: StagedDesign): ReadonlyMap<string, CoefficientPoint> {
  const points = new Map<string, CoefficientPoint>();
  if (described.coefficients.length === 0) return points;
  coefficientGroups(coefficientSets(described)).forEach((group, number) => {
    gridLevels(group).forEach((levels, index) => {
      for (const of of Object.keys(group.sets) as PolynomialQuantity[]) {
        points.set(`${group.path}.points.${index}.${of}`, { group, number, of, ...levels });
      }
    });
  });
  return points;
}

/** Steps `identified.levels.<group>.evaporating.<level>`. */
function levelStep({ group, number, ...point }: CoefficientPoint, which: 'evaporating' | 'condensing'): WorkingStep {
  const { value, index, steps } = point[which];
  const range = `${which}Range` as const;
  const { low, high } = group[range];
  const setWith = (end: 'low' | 'high') =>
    Object.values(group.sets).find((set) => set[range][end] === group[range][end]);
  return workingStep(`identified.levels.${number}.${which}.${index}`, 'compressor.levelOfGrid', value, {
    T_low: [low, `${setWith('low')!.path}.${range}`],
    T_high: [high, `${setWith('high')!.path}.${range}`],
    i: [index],
    n: [steps],
  });
}
