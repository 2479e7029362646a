// The ranges of a machine's numbers as independent normal distributions in the coordinates of the identification. A number
// that is known exactly has no spread and stays what it is.

import { InputError } from '../../../numerics/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import { type HermeticCompressor, hermeticParameters, requireSupply, type Supply } from '../hermetic/parameters.ts';
import { dimensions, fromScale, onScale, parameterScales, type Scale } from './coordinates.ts';
import type { MachineDescription } from './evidence.ts';

/** Standard deviations between the likely value and an end that is passed one time in ten in all (normal distribution). */
export const endsAt = 1.6448536269514722;

/** σ of an estimate on its scale: its ends are passed one time in ten in all. */
export function spreadOf(estimate: Estimate, scale: Scale, path: string): number {
  if (estimate.low === estimate.high) return 0;
  return (onScale(scale, estimate.high, path) - onScale(scale, estimate.low, path)) / (2 * endsAt);
}

export interface Prior {
  readonly ratedSupply: Supply;
  /** The numbers at their likely values, in the order of `hermeticParameters`. */
  readonly values: readonly number[];
  /** Of each on its scale; 0 where it has no spread. */
  readonly centre: readonly number[];
  /** σ of each there. */
  readonly spread: readonly number[];
  /** From the likely value to either end, in σ; 0 where there is no spread. */
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** @throws InputError at the path of a range that is not one of its number. */
export function priorOf({ prior, ratedSupply }: Pick<MachineDescription, 'prior' | 'ratedSupply'>): Prior {
  requireSupply('machine.supply', ratedSupply);
  const columns = hermeticParameters.map((name) => {
    const { path, estimate } = prior[name];
    const { low, likely, high } = estimate;
    if (!(low <= likely && likely <= high)) throw new InputError(path, likely, `a value within ${low} and ${high}`);
    const scale = parameterScales[name];
    const spread = spreadOf(estimate, scale, path);
    if (spread === 0) return { value: exactly(name, likely, path), centre: 0, spread, low: 0, high: 0 };
    const centre = onScale(scale, likely, path);
    return {
      value: likely,
      centre,
      spread,
      low: (onScale(scale, low, path) - centre) / spread,
      high: (onScale(scale, high, path) - centre) / spread,
    };
  });
  return {
    ratedSupply,
    values: columns.map(({ value }) => value),
    centre: columns.map(({ centre }) => centre),
    spread: columns.map(({ spread }) => spread),
    low: columns.map(({ low }) => low),
    high: columns.map(({ high }) => high),
  };
}

/** Numbers that may be exactly 0: an absent opening, heating, leakage or loss. */
const mayBeZero: ReadonlySet<string> = new Set([
  'clearanceRatio',
  'suctionVelocity',
  'dischargeVelocity',
  'suctionHeatingUnits',
  'dischargeCoolingUnits',
  'leakageRatio',
  'proportionalLoss',
  'frictionPressure',
  'slip',
]);

function exactly(name: (typeof hermeticParameters)[number], value: number, path: string): number {
  if (value === 0 && mayBeZero.has(name)) return value;
  const scale = parameterScales[name];
  if (scale.kind === 'logit' && value === scale.top) return value;
  onScale(scale, value, path);
  return value;
}

/** The machine at so many σ from the likely values of the prior. */
export function machineAt(prior: Prior, deviations: ArrayLike<number>): HermeticCompressor {
  const numbers: Record<string, number> = {};
  for (let index = 0; index < dimensions; index++) {
    const name = hermeticParameters[index]!;
    const spread = prior.spread[index]!;
    numbers[name] =
      spread === 0
        ? prior.values[index]!
        : fromScale(parameterScales[name], prior.centre[index]! + spread * deviations[index]!);
  }
  return { ...(numbers as unknown as Omit<HermeticCompressor, 'ratedSupply'>), ratedSupply: prior.ratedSupply };
}

/** How many σ a machine's numbers lie from the likely values of the prior; 0 for numbers without spread. */
export function deviationsOf(prior: Prior, compressor: HermeticCompressor): Float64Array {
  const deviations = new Float64Array(dimensions);
  for (let index = 0; index < dimensions; index++) {
    const spread = prior.spread[index]!;
    if (spread === 0) continue;
    const name = hermeticParameters[index]!;
    deviations[index] = (onScale(parameterScales[name], compressor[name], name) - prior.centre[index]!) / spread;
  }
  return deviations;
}
