// The values that the person did not give: those of the design's fields and those inside the models, in one list.

import type { Assumption } from '../design/index.ts';
import type { Band } from '../quantities/index.ts';
import type { AssumptionLeft } from './assessment/assessment.ts';
import { engineAssumptions, type StagedDesign } from './stages/engine-assumptions.ts';

/** Assumptions of the design first, in the order of its fields, then those of the engine, whose paths begin with "engine.". */
export function assumptionsLeft(design: StagedDesign, assumptions: readonly Assumption[]): readonly AssumptionLeft[] {
  const engine = engineAssumptions(design).map(
    ({ key, label, quantity, estimate, source }): AssumptionLeft => ({
      path: `engine.${key}`,
      label,
      quantity,
      value: bandOnly(estimate),
      source,
      level: 'expert',
    }),
  );
  const given = assumptions.map(
    ({ path, label, quantity, source, level, ...rest }): AssumptionLeft => ({
      path,
      label,
      quantity: quantity ?? 'choice',
      value: rest.choice ?? bandOnly(rest.estimate!),
      source,
      level,
    }),
  );
  return [...given, ...engine];
}

function bandOnly({ low, likely, high }: Band): Band {
  return { low, likely, high };
}
