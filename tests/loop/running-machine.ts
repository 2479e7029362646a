// A small hermetic machine on its mains in a room, for tests of the loop; invented.

import { refrigerant } from '../../src/matter/refrigerants/index.ts';
import {
  type EvidencePoint,
  type HermeticCompressor,
  hermeticParameters,
  identifyMachine,
  type MachineDescription,
  type RunningMachine,
} from '../../src/parts/compressor/index.ts';
import type { Estimate } from '../../src/quantities/index.ts';
import { levelsOf } from './levels-of.ts';

const compressor: HermeticCompressor = {
  displacement: 8e-6,
  clearanceRatio: 0.025,
  suctionVelocity: 14,
  dischargeVelocity: 60,
  suctionHeatingUnits: 0.5,
  dischargeCoolingUnits: 0.4,
  leakageRatio: 4e-5,
  proportionalLoss: 0.08,
  frictionPressure: 25e3,
  motorEfficiency: 0.76,
  motorPressure: 3.5e5,
  slip: 0.03,
  powerFactor: 0.75,
  shellConductance: 1.8,
  ratedSupply: { frequency: 50, voltage: 230 },
};

/** The machine with some of its numbers changed, and nothing known of it but them. */
export function runningMachine(changes: Partial<HermeticCompressor> = {}): RunningMachine {
  return {
    compressor: { ...compressor, ...changes },
    surroundings: 293.15,
    supply: { frequency: 50, voltage: 230 },
    known: null,
  };
}

/** The same with a motor and bearings for a fluid: in proportion to its pressures. */
export function machineFor(fluid: string, changes: Partial<HermeticCompressor> = {}): RunningMachine {
  const pressure = levelsOf(fluid).pressureAt(299.15);
  return runningMachine({ motorPressure: 0.5 * pressure, frictionPressure: 0.04 * pressure, ...changes });
}

/** The same as a machine without openings, heating, leakage, clearance and losses but those of its motor at its best load. */
export function perfectMachine(
  swept: number,
  motorEfficiency: number,
  shaftPower: number,
  frequency: number,
): RunningMachine {
  return {
    ...runningMachine({
      displacement: swept,
      clearanceRatio: 0,
      suctionVelocity: 0,
      dischargeVelocity: 0,
      suctionHeatingUnits: 0,
      dischargeCoolingUnits: 0,
      leakageRatio: 0,
      proportionalLoss: 0,
      frictionPressure: 0,
      motorEfficiency,
      motorPressure: shaftPower / (swept * frequency),
      slip: 0,
      ratedSupply: { frequency, voltage: 230 },
    }),
    supply: { frequency, voltage: 230 },
  };
}

/** A machine for a fluid with one measured point known of it, taken to stand off the likely within the model's doubt. */
export function machineWithPoint(fluid: string): RunningMachine {
  const machine = machineFor(fluid);
  const about = (value: number, share: number): Estimate => ({
    low: (1 - share) * value,
    likely: value,
    high: (1 + share) * value,
    origin: 'measured',
  });
  const prior = Object.fromEntries(
    hermeticParameters.map((name) => {
      const path = `machine.compressor.${name}`;
      return [name, { path, label: name, estimate: about(machine.compressor[name], 0.1) }];
    }),
  ) as MachineDescription['prior'];
  const point: EvidencePoint = {
    path: 'machine.compressor.bench.0',
    label: 'bench',
    evaporating: 268.15,
    condensing: 308.15,
    returnGas: 288.15,
    liquid: 303.15,
    surroundings: 293.15,
    supply: machine.supply,
    given: { power: about(150, 0.02) },
  };
  const identified = identifyMachine({
    fluid: refrigerant(fluid),
    ratedSupply: machine.compressor.ratedSupply,
    prior,
    points: [point],
    series: [],
  });
  return { ...machine, compressor: identified.compressor, known: { identified, flow: 0.5, power: -0.3 } };
}
