// What a tank needs and gives away, without what is only told beside it: no findings, no conductance, no ranges. For the many
// states of a ranking or a map; the numbers are those of `tankLoad`.

import { builtTankModel } from './built-model.ts';
import { checkConditions, checkMeasured, type TankConditions, type TankDescription } from './description.ts';
import type { HeatPath } from './load.ts';
import { measuredLoad } from './measured.ts';
import { latentToRoom, netLoad, sensibleToRoom, sumOfPaths } from './totals.ts';

/** Heat by path, and its sums [W]; water lost as vapour [kg/s]. */
export interface BareTankHeat {
  readonly loss: number;
  readonly load: number;
  readonly paths: readonly HeatPath[];
  readonly sensibleToRoom: number;
  readonly latentToRoom: number;
  readonly evaporation: number;
}

/**
 * Heat of a tank at many conditions: checked once, answered as often as asked.
 * @param description  the tank
 * @returns            a function of the conditions; it throws as `tankLoad` does for conditions that cannot be used
 * @throws InputError naming the field of the tank that cannot be
 */
export function tankHeatOf(description: TankDescription): (conditions: TankConditions) => BareTankHeat {
  if (description.kind === 'measured') {
    checkMeasured(description);
    return (conditions) => {
      checkConditions(conditions);
      return measuredLoad(description, conditions);
    };
  }
  const { checkBuilt, builtLosses } = builtTankModel();
  checkBuilt(description);
  const { pumpHeat, lightHeat, ultravioletHeat } = description;
  return (conditions) => {
    checkConditions(conditions);
    const { paths, evaporation } = builtLosses(description, conditions);
    const loss = sumOfPaths(paths);
    return {
      loss,
      load: netLoad(loss, pumpHeat, lightHeat, ultravioletHeat),
      paths,
      sensibleToRoom: sensibleToRoom(paths),
      latentToRoom: latentToRoom(paths),
      evaporation,
    };
  };
}

/**
 * Water that a tank loses as vapour at many conditions: the numbers of `tankLoad`, without its panels and lids.
 * @param description  the tank
 * @returns            a function of the conditions [kg/s]; it throws as `tankLoad` does for conditions that cannot be used
 * @throws InputError naming the field of the tank that cannot be
 */
export function tankEvaporationOf(description: TankDescription): (conditions: TankConditions) => number {
  if (description.kind === 'measured') {
    const heat = tankHeatOf(description);
    return (conditions) => heat(conditions).evaporation;
  }
  const { checkBuilt, builtEvaporation } = builtTankModel();
  checkBuilt(description);
  return (conditions) => {
    checkConditions(conditions);
    return builtEvaporation(description, conditions);
  };
}
