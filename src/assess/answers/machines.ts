// What several machines alike do together, by the names that its results have in the working.

import type { MachineState } from '../../plant/index.ts';

/** What is multiplied by their number, in the order it is told. */
export const machineFlows = ['condenserHeat', 'heatTaken', 'compressorPower', 'shellHeat'] as const;

/** Results of one machine. */
export const ofOneMachine: Readonly<Record<keyof MachineState, string>> = {
  condenserHeat: 'heatDelivered',
  heatTaken: 'heatTaken',
  compressorPower: 'compressor.power',
  shellHeat: 'compressor.shellHeat',
};

/** The result of all machines: a step of its own where there are several, else that of the one. */
export function allMachinesResult(count: number, flow: keyof MachineState): string {
  return count === 1 ? `operating.${ofOneMachine[flow]}` : `machines.${flow}`;
}
