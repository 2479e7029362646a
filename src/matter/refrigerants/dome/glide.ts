// The glide of a blend.

import { requireFinite } from '../../../numerics/index.ts';

/** ΔT = T_dew − T_bubble [K] of a blend at one pressure, both finite. Source: definition. */
export function glideOf(dewTemperature: number, bubbleTemperature: number): number {
  requireFinite('dewTemperature', dewTemperature);
  requireFinite('bubbleTemperature', bubbleTemperature);
  return dewTemperature - bubbleTemperature;
}
