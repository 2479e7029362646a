// The heat load of a tank: what leaves the water by each path, less what pumps and lights give it.

import { InputError } from '../numerics/index.ts';
import { builtTankModel } from './built-model.ts';
import { checkConditions, checkMeasured, type TankConditions, type TankDescription } from './description.ts';
import type { TankLoad } from './load.ts';
import { measuredLoad } from './measured.ts';

/**
 * Net heating that a tank needs, with its paths.
 *     load = Σ paths − pump − light − ultraviolet
 * @param description  the tank, as it is built or by measurement
 * @param conditions   T_w, T_r [K], RH [-], p [Pa]
 * @returns            watts by path, load, evaporation, what the room receives; negative where the tank gains
 * @throws InputError naming the field that cannot be; OutOfModelError where a condition lies outside `tankValidity`.
 * Accuracy: evaporation ±30 %, bare panes −18 to +22 % by their outer film (outerFilmRange).
 * Source: ISO 6946 (panes), Shah 2014 and ASHRAE (surface), Hollands et al. 1975 (lid).
 */
export function tankLoad(description: TankDescription, conditions: TankConditions): TankLoad {
  checkConditions(conditions);
  switch (description.kind) {
    case 'built':
      builtTankModel().checkBuilt(description);
      return builtTankModel().builtLoad(description, conditions);
    case 'measured':
      checkMeasured(description);
      return measuredLoad(description, conditions);
    default: {
      const never: never = description;
      throw new InputError('tank.load.kind', (never as { kind: unknown }).kind, 'built or measured');
    }
  }
}
