// How far the operating point at the coldest spell is from each limit of the machine, the nearest first, and the working
// of it.

import type { MachineLimits } from '../../cautions/index.ts';
import type { OperatingPoint } from '../../loop/index.ts';
import { distanceAbove, distanceBelow } from '../../parts/compressor/index.ts';
import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { LimitMargin } from '../assessment.ts';

/**
 * Margins to every limit: of temperatures in K, of the pressure ratio as its own distance in ratio.
 * Sorted by margin over the usual spread of its quantity (10 K, 2 in ratio: own judgement), so that the limit met first
 * stands first.
 */
export function limitMargins(operating: OperatingPoint, limits: MachineLimits): readonly LimitMargin[] {
  const { evaporating, condensing, dischargeTemperature, pressureRatio } = operating;
  const margins = [
    below('evaporatingHighest', 'highest evaporating temperature', evaporating.temperature, limits.evaporating.highest),
    above('evaporatingLowest', 'lowest evaporating temperature', evaporating.temperature, limits.evaporating.lowest),
    below(
      'condensingContinuous',
      'continuous condensing temperature',
      condensing.temperature,
      limits.condensing.continuous,
    ),
    below('dischargeHighest', 'discharge temperature', dischargeTemperature, limits.discharge.highest),
    {
      ...below('pressureRatioHighest', 'pressure ratio', pressureRatio, limits.pressureRatio.highest),
      quantity: 'ratio',
    },
  ];
  return margins.sort((left, right) => inSpreads(left) - inSpreads(right));
}

function below(limit: string, label: string, value: number, bound: number): LimitMargin {
  return margin(limit, label, value, bound, distanceBelow(value, bound));
}

function above(limit: string, label: string, value: number, bound: number): LimitMargin {
  return margin(limit, label, value, bound, distanceAbove(value, bound));
}

function margin(limit: string, label: string, value: number, bound: number, distance: number): LimitMargin {
  return { limit, label, quantity: 'temperature', value, bound, margin: distance, passed: distance < 0 };
}

function inSpreads({ quantity, margin: distance }: LimitMargin): number {
  return distance / (quantity === 'ratio' ? 2 : 10);
}

/** Which step gives the value that a limit holds. */
export const limitedResults: Readonly<Record<string, string>> = {
  evaporatingHighest: 'operating.evaporatingTemperature',
  evaporatingLowest: 'operating.evaporatingTemperature',
  condensingContinuous: 'operating.condensingTemperature',
  dischargeHighest: 'operating.dischargeTemperature',
  pressureRatioHighest: 'operating.compressor.pressureRatio',
};

/** Steps `operating.limits.<limit>`; the limits follow from what the machine was made for, the design path `application`. */
export function limitSteps(margins: readonly LimitMargin[], application: string): readonly WorkingStep[] {
  return margins.map(({ limit, quantity, value, bound, margin: distance }) => {
    const ofTemperature = limit === 'evaporatingLowest' ? 'compressor.temperatureAbove' : 'compressor.temperatureBelow';
    const formula = quantity === 'ratio' ? 'compressor.ratioBelow' : ofTemperature;
    return workingStep(`operating.limits.${limit}`, formula, distance, {
      y: [value, limitedResults[limit]],
      y_limit: [bound, application],
    });
  });
}
