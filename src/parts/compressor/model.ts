// The numbers that describe a positive-displacement hermetic machine, and the check that they are possible.
// Constant plus proportional losses on an isentropic reference process (the published semi-empirical structure);
// valves, leakage, suction heating and the motor's own curve are folded into these eight numbers.

import { requireNonNegative, requirePositive, requireWithin } from '../../numerics/index.ts';

export interface CompressorModel {
  /** V_d, swept volume of all cylinders per revolution [m³]. */
  readonly displacement: number;
  /** N, speed of the shaft under load [1/s]. */
  readonly speed: number;
  /** C, clearance volume over swept volume [-]; 0 to 0.5. */
  readonly clearanceRatio: number;
  /** n, polytropic exponent of re-expansion [-]; 1 to 2. */
  readonly reexpansionExponent: number;
  /** f, what suction heating, valves and leakage leave of the swept flow at pressure ratio 1 [-]; above 0, up to 1. */
  readonly fillingFactor: number;
  /** η_c, isentropic work over the part of the electric power proportional to it [-]; above 0, up to 1. */
  readonly compressionEfficiency: number;
  /** p_f, constant losses (bearings, windage, iron) per swept volume flow [Pa]; 0 or above. */
  readonly frictionPressure: number;
  /** f_s, share of the electric power that leaves through the shell instead of with the refrigerant [-]; 0 to below 1. */
  readonly shellHeatShare: number;
}

/** The largest share of the input that may be said to leave through the shell: some heat always leaves with the gas. */
export const largestShellHeatShare = 0.95;

/** @throws InputError that names the first impossible field, as 'compressor.fillingFactor'. */
export function requireCompressorModel(model: CompressorModel, path = 'compressor'): void {
  requirePositive(`${path}.displacement`, model.displacement);
  requirePositive(`${path}.speed`, model.speed);
  requireWithin(`${path}.clearanceRatio`, model.clearanceRatio, 0, 0.5);
  requireWithin(`${path}.reexpansionExponent`, model.reexpansionExponent, 1, 2);
  requirePositive(`${path}.fillingFactor`, model.fillingFactor);
  requireWithin(`${path}.fillingFactor`, model.fillingFactor, 0, 1);
  requirePositive(`${path}.compressionEfficiency`, model.compressionEfficiency);
  requireWithin(`${path}.compressionEfficiency`, model.compressionEfficiency, 0, 1);
  requireNonNegative(`${path}.frictionPressure`, model.frictionPressure);
  requireWithin(`${path}.shellHeatShare`, model.shellHeatShare, 0, largestShellHeatShare);
}
