// Public names of the plant: tank, room and loop as one steady state.

export { accountTolerance, closeAccount, EnergyAccountError } from './account.ts';
export {
  backupHeat,
  heatReachingWater,
  ofAllMachines,
  perMachine,
  roomNetHeat,
  runFraction,
  systemCop,
  systemPower,
} from './delivery.ts';
export { plantFormulas } from './formulas.ts';
export type {
  MachineState,
  PlantElectricity,
  PlantHardware,
  PlantState,
  RoomHeat,
  ShellPlace,
  TankHeat,
} from './state.ts';
export { plantState, severalMachines } from './state.ts';
export type { PlantOrigins } from './working.ts';
export { plantWorking, severalMachinesWorking } from './working.ts';
