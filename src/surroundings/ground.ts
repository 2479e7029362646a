// Temperature of the ground through the year, below open land: a wave that sinks in, weaker and later with depth.

import { requireFinite, requireNonNegative, requirePositive } from '../numerics/index.ts';

/** A common year [s]. */
const YEAR = 365 * 86_400;

/**
 * Temperature T of undisturbed ground.
 *     T = T_m − A exp(−z √(π/(a Y))) cos((2π/Y) (t − (z/2) √(Y/(π a))))
 * @param mean         T_m [K], yearly mean at the surface
 * @param amplitude    A [K], half the difference between summer and winter at the surface
 * @param depth        z [m], ≥ 0
 * @param diffusivity  a [m²/s], > 0; 0.03 m²/day in dry to 0.08 in wet soil (from memory)
 * @param time         t [s], since the coldest day at the surface; Y is 365 days
 * @returns            T [K]
 * Validity: open land without ground water or snow; under a heated house the ground is warmer.
 * @throws InputError for what is not finite, a depth below 0, a diffusivity or a mean not above 0
 * Source: Kusuda & Achenbach, ASHRAE Transactions 71(1) (1965) 61.
 * Worked value: 10 °C, 12 K, 2 m, 0.05 m²/day, day 200 with the coldest on day 35 → 12.22802 °C.
 */
export function groundTemperature(
  mean: number,
  amplitude: number,
  depth: number,
  diffusivity: number,
  time: number,
): number {
  requirePositive('ground.mean', mean);
  requireFinite('ground.amplitude', amplitude);
  requireNonNegative('ground.depth', depth);
  requirePositive('ground.diffusivity', diffusivity);
  requireFinite('ground.time', time);
  const damping = Math.exp(-depth * Math.sqrt(Math.PI / (diffusivity * YEAR)));
  const lag = (depth / 2) * Math.sqrt(YEAR / (Math.PI * diffusivity));
  return mean - amplitude * damping * Math.cos(((2 * Math.PI) / YEAR) * (time - lag));
}

/**
 * Yearly mean T_m of a place from its winter and its summer level: what deep ground keeps.
 *     T_m = (T_w + T_s) / 2
 * @param winter  T_w [K], level in the coldest month
 * @param summer  T_s [K], level six months later
 * @returns       T_m [K]
 * Validity: a course that is a cosine. @throws InputError for a level not above 0 K
 * Source: mean of a cosine. Worked value: 274, 292 K → 283 K.
 */
export function yearlyMean(winter: number, summer: number): number {
  requirePositive('winter', winter);
  requirePositive('summer', summer);
  return (winter + summer) / 2;
}
