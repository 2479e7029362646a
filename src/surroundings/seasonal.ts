// The yearly course of what nothing heats: a cosine from its winter to its summer level.

import { requirePositive } from '../numerics/index.ts';
import { requireWholeDistance } from './months.ts';

/**
 * Seasonal temperature T(d) of a place that nothing heats.
 *     T = T_w + (T_s − T_w) · (1 − cos(π d / 6)) / 2
 * @param winter    T_w [K], level in the coldest month
 * @param summer    T_s [K], level six months later
 * @param distance  d [months] from the coldest month, whole, 0 to 6
 * @returns         T [K]
 * Validity: a description of a usual year in temperate climates, not of a real one. Accuracy: some kelvins in spring and autumn.
 * @throws InputError for temperatures that are not finite and above 0 K
 * Source: the first harmonic of a yearly course, as Kusuda & Achenbach (1965) use it for ground surfaces; common practice for rooms, no source.
 * Worked value: 285 K, 297 K, d = 2 → 288 K.
 */
export function seasonalTemperature(winter: number, summer: number, distance: number): number {
  requirePositive('winter', winter);
  requirePositive('summer', summer);
  requireWholeDistance(distance);
  return winter + ((summer - winter) * (1 - Math.cos((Math.PI * distance) / 6))) / 2;
}
