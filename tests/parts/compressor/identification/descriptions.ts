// Descriptions for the tests of the identification: plausible ranges of a household machine, and points that a machine of known
// numbers gives, with noise from a seed.

import { type Refrigerant, refrigerant, tabulated } from '../../../../src/matter/refrigerants/index.ts';
import type {
  EvidencePoint,
  EvidenceSeries,
  HermeticCompressor,
  HermeticParameter,
  MachineDescription,
} from '../../../../src/parts/compressor/index.ts';
import { hermeticParameters } from '../../../../src/parts/compressor/index.ts';
import type { Estimate } from '../../../../src/quantities/index.ts';

export const kelvin = (celsius: number) => celsius + 273.15;
export const fluid: Refrigerant = tabulated(refrigerant('R600a'));
export const supply = { frequency: 50, voltage: 230 };

export type Ranges = Readonly<Record<HermeticParameter, readonly [number, number, number]>>;

/** Of a small household machine for R600a, of any size from 5 to 20 cm³; plausible, no source. */
export const householdRanges: Ranges = {
  displacement: [5e-6, 10e-6, 20e-6],
  clearanceRatio: [0.01, 0.022, 0.05],
  suctionVelocity: [25, 42, 70],
  dischargeVelocity: [150, 260, 450],
  suctionHeatingUnits: [0.25, 0.55, 1.2],
  dischargeCoolingUnits: [0.05, 0.12, 0.3],
  leakageRatio: [1e-6, 4.5e-6, 2e-5],
  proportionalLoss: [0.04, 0.1, 0.25],
  frictionPressure: [8e3, 18e3, 40e3],
  motorEfficiency: [0.6, 0.73, 0.85],
  motorPressure: [80e3, 120e3, 180e3],
  slip: [0.02, 0.032, 0.05],
  powerFactor: [0.5, 0.72, 0.9],
  shellConductance: [0.8, 1.4, 2.5],
};

export function estimate(low: number, likely: number, high: number): Estimate {
  return { low, likely, high, origin: 'assumed' };
}

/** Likely ± so many parts of it. */
export function about(likely: number, share: number): Estimate {
  return { low: likely * (1 - share), likely, high: likely * (1 + share), origin: 'measured' };
}

export function described(given: {
  readonly fluid?: Refrigerant;
  readonly ranges?: Partial<Ranges>;
  readonly points?: readonly EvidencePoint[];
  readonly series?: readonly EvidenceSeries[];
  readonly ratedSupply?: { readonly frequency: number; readonly voltage: number };
}): MachineDescription {
  const ranges = { ...householdRanges, ...given.ranges };
  const prior = Object.fromEntries(
    hermeticParameters.map((name) => [
      name,
      { path: `machine.compressor.${name}`, label: name, estimate: estimate(...ranges[name]) },
    ]),
  ) as MachineDescription['prior'];
  return {
    fluid: given.fluid ?? fluid,
    ratedSupply: given.ratedSupply ?? supply,
    prior,
    points: given.points ?? [],
    series: given.series ?? [],
  };
}

/** A point in °C with what is given of it. */
export function pointAt(
  index: number,
  evaporatingCelsius: number,
  condensingCelsius: number,
  given: EvidencePoint['given'],
  more: Partial<EvidencePoint> = {},
): EvidencePoint {
  return {
    path: `machine.compressor.ratings.${index}`,
    label: `rating ${index + 1}`,
    evaporating: kelvin(evaporatingCelsius),
    condensing: kelvin(condensingCelsius),
    returnGas: kelvin(32.2),
    liquid: kelvin(Math.min(32.2, condensingCelsius)),
    surroundings: kelvin(32.2),
    supply,
    given,
    ...more,
  };
}

export function machineOf(ranges: Ranges): HermeticCompressor {
  const numbers = Object.fromEntries(hermeticParameters.map((name) => [name, ranges[name][1]]));
  return { ...(numbers as unknown as Omit<HermeticCompressor, 'ratedSupply'>), ratedSupply: supply };
}
