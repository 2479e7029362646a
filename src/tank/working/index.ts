// The working of a tank's load, whichever way the tank is described.

import { InputError } from '../../numerics/index.ts';
import type { WorkingStep } from '../../quantities/index.ts';
import type { TankConditions, TankDescription } from '../description.ts';
import type { TankLoad } from '../load.ts';
import { builtWorking } from './built.ts';
import { measuredWorking } from './measured.ts';
import { type ConditionOrigins, usualOrigins } from './steps.ts';

export { coolingWorking } from './cooling.ts';
export type { ConditionOrigins, LayerPart } from './steps.ts';

/**
 * For each number of a tank's load: the formula, the numbers put in, and where they came from. Results are named
 * 'tank.paths.front', 'tank.loss', 'tank.load' and so on; constants of the model have no origin.
 * @param description  the tank the load was computed for
 * @param conditions   the conditions it was computed at
 * @param load         the load itself
 * @param origins      where the conditions came from; the room as it usually is where absent
 */
export function tankLoadWorking(
  description: TankDescription,
  conditions: TankConditions,
  load: TankLoad,
  origins: ConditionOrigins = usualOrigins,
): readonly WorkingStep[] {
  const known = load.intermediates;
  if (description.kind === 'measured' && known.kind === 'measured') {
    return measuredWorking(description, conditions, load, known, origins);
  }
  if (description.kind === 'built' && known.kind === 'built') {
    return builtWorking(description, conditions, load, known, origins);
  }
  throw new InputError('load.kind', load.kind, `the kind of the tank it was computed for, ${description.kind}`);
}
