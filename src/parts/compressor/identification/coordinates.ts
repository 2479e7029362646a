// The coordinates a machine is identified in. Sizes, velocities and pressures are known by factors, so their logarithms are
// taken; numbers between 0 and a bound by their logits. A spread in them is a percentage that never leaves what is possible.

import { InputError } from '../../../numerics/index.ts';
import { type HermeticParameter, hermeticParameters } from '../hermetic/parameters.ts';

/** How a number is laid out: as it is, by its logarithm, or by ln(x/(top − x)). */
export type Scale =
  | { readonly kind: 'linear' }
  | { readonly kind: 'logarithm' }
  | { readonly kind: 'logit'; readonly top: number };

const logarithm: Scale = { kind: 'logarithm' };

/** Tops of the logits are those of requireHermeticCompressor. */
export const parameterScales: Readonly<Record<HermeticParameter, Scale>> = {
  displacement: logarithm,
  clearanceRatio: { kind: 'logit', top: 0.5 },
  suctionVelocity: logarithm,
  dischargeVelocity: logarithm,
  suctionHeatingUnits: logarithm,
  dischargeCoolingUnits: logarithm,
  leakageRatio: logarithm,
  proportionalLoss: logarithm,
  frictionPressure: logarithm,
  motorEfficiency: { kind: 'logit', top: 1 },
  motorPressure: logarithm,
  slip: { kind: 'logit', top: 0.25 },
  powerFactor: { kind: 'logit', top: 1 },
  shellConductance: logarithm,
};

/** How many numbers a machine is identified by. */
export const dimensions = hermeticParameters.length;

/** @throws InputError at that path where the number has no place on the scale. */
export function onScale(scale: Scale, value: number, path: string): number {
  if (scale.kind === 'linear') return value;
  if (scale.kind === 'logarithm') {
    if (!(value > 0 && Number.isFinite(value))) throw new InputError(path, value, 'a finite number above 0');
    return Math.log(value);
  }
  if (!(value > 0 && value < scale.top)) throw new InputError(path, value, `a number above 0 and below ${scale.top}`);
  return Math.log(value / (scale.top - value));
}

/** The number that stands there on the scale. */
export function fromScale(scale: Scale, coordinate: number): number {
  if (scale.kind === 'linear') return coordinate;
  if (scale.kind === 'logarithm') return Math.exp(coordinate);
  return scale.top / (1 + Math.exp(-coordinate));
}
