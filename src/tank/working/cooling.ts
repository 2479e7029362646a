// The working of how the water cools without heat: change of the loss per kelvin, time constant, times to fall.

import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import { timeConstant, timesToFall } from '../cooling.ts';
import type { TankConditions, TankDescription } from '../description.ts';
import type { TankLoad } from '../load.ts';
import { tankHeatOf } from '../tank-heat.ts';
import { watersBeside } from '../totals.ts';

/**
 * Steps 'tank.conductance', 'tank.timeConstant', and one for each fall ΔT [K], in rising order, that is ever reached; `name` names
 * the step of a fall.
 */
export function coolingWorking(
  tank: TankDescription,
  conditions: TankConditions,
  { heatCapacity, conductance }: TankLoad,
  falls: readonly number[],
  name: (fall: number) => string,
): readonly WorkingStep[] {
  const C = [heatCapacity, 'tank.heatCapacity'] as const;
  const heat = tankHeatOf(tank);
  const { cooler, warmer } = watersBeside(conditions.waterTemperature);
  const lossAt = (water: number) => heat({ ...conditions, waterTemperature: water }).loss;
  const times = timesToFall(tank, conditions, falls);
  return [
    workingStep('tank.conductance', 'tank.lossPerKelvin', conductance, {
      Q_warmer: [lossAt(warmer)],
      Q_cooler: [lossAt(cooler)],
      dT: [warmer - cooler],
    }),
    ...(conductance > 0
      ? [
          workingStep('tank.timeConstant', 'tank.timeConstant', timeConstant(heatCapacity, conductance), {
            C,
            UA: [conductance, 'tank.conductance'],
          }),
        ]
      : []),
    ...falls.flatMap((fall, index) => {
      const time = times[index]!;
      if (time === null) return [];
      return [workingStep(name(fall), 'tank.fallTime', time, { C, dT: [fall], Q_m: [(heatCapacity * fall) / time] })];
    }),
  ];
}
