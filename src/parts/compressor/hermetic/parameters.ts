// The numbers that describe a hermetic machine of any size, and the check that they are possible. Openings and heat transfer
// are given as intensities (velocities, transfer units, pressures), so that a class of machines has one range for all sizes.

import { requireNonNegative, requirePositive, requireWithin } from '../../../numerics/index.ts';

/** Mains that feed a machine: frequency [Hz] and voltage [V]. */
export interface Supply {
  readonly frequency: number;
  readonly voltage: number;
}

export interface HermeticCompressor {
  /** V_d, swept volume of all cylinders per revolution [m³]. */
  readonly displacement: number;
  /** C, clearance volume over swept volume [-]; 0 to 0.5. */
  readonly clearanceRatio: number;
  /** u_s, swept volume flow at rated frequency over the equivalent opening of the suction path [m/s]. */
  readonly suctionVelocity: number;
  /** u_d, the same of the discharge path [m/s]; large, since its valve is open for a small part of a turn. */
  readonly dischargeVelocity: number;
  /** NTU_s, transfer units between the suction gas and the wall at `referenceSweptDensity` [-]. */
  readonly suctionHeatingUnits: number;
  /** NTU_d, the same between the discharge gas and the wall [-]. */
  readonly dischargeCoolingUnits: number;
  /** λ, equivalent opening of leakage from discharge to suction over V_d^(2/3) [-]. */
  readonly leakageRatio: number;
  /** α, mechanical losses proportional to the internal work, over that work [-]. */
  readonly proportionalLoss: number;
  /** p_f, constant mechanical losses per swept volume flow [Pa]. */
  readonly frictionPressure: number;
  /** η_m, efficiency of the motor at its best load [-]. */
  readonly motorEfficiency: number;
  /** p_m, shaft power at that load over V_d times rated frequency [Pa]. */
  readonly motorPressure: number;
  /** s, slip of the rotor at that load and rated supply [-]. */
  readonly slip: number;
  /** cos φ of the motor at that load [-]. */
  readonly powerFactor: number;
  /** UA, conductance from the shell to the air around it [W/K]. */
  readonly shellConductance: number;
  /** What its motor was wound for. */
  readonly ratedSupply: Supply;
}

/** Names of the numbers that describe the machine itself, in the order they are told. */
export const hermeticParameters = [
  'displacement',
  'clearanceRatio',
  'suctionVelocity',
  'dischargeVelocity',
  'suctionHeatingUnits',
  'dischargeCoolingUnits',
  'leakageRatio',
  'proportionalLoss',
  'frictionPressure',
  'motorEfficiency',
  'motorPressure',
  'slip',
  'powerFactor',
  'shellConductance',
] as const;

export type HermeticParameter = (typeof hermeticParameters)[number];

/** Mass flow per swept volume flow [kg/m³] at which the transfer units are given. */
export const referenceSweptDensity = 5;

/** @throws InputError that names the first impossible field, as 'compressor.clearanceRatio'. */
export function requireHermeticCompressor(compressor: HermeticCompressor, path = 'compressor'): void {
  requirePositive(`${path}.displacement`, compressor.displacement);
  requireWithin(`${path}.clearanceRatio`, compressor.clearanceRatio, 0, 0.5);
  for (const name of ['suctionVelocity', 'dischargeVelocity', 'leakageRatio'] as const) {
    requireNonNegative(`${path}.${name}`, compressor[name]);
  }
  for (const name of [
    'suctionHeatingUnits',
    'dischargeCoolingUnits',
    'proportionalLoss',
    'frictionPressure',
  ] as const) {
    requireNonNegative(`${path}.${name}`, compressor[name]);
  }
  for (const name of ['motorEfficiency', 'powerFactor'] as const) {
    requirePositive(`${path}.${name}`, compressor[name]);
    requireWithin(`${path}.${name}`, compressor[name], 0, 1);
  }
  requirePositive(`${path}.motorPressure`, compressor.motorPressure);
  requireWithin(`${path}.slip`, compressor.slip, 0, 0.25);
  requirePositive(`${path}.shellConductance`, compressor.shellConductance);
  requireSupply(`${path}.ratedSupply`, compressor.ratedSupply);
}

/** @throws InputError unless frequency and voltage are positive. */
export function requireSupply(path: string, { frequency, voltage }: Supply): void {
  requirePositive(`${path}.frequency`, frequency);
  requirePositive(`${path}.voltage`, voltage);
}
