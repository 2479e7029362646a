// Public names of the accounts: energies of each scenario and their money.

export type { Account, AccountPrices } from './account.ts';
export {
  account,
  annualisedCost,
  assumedRoomCoolingCop,
  energyCost,
  purchaseWithHeater,
  roomCoolingCost,
  yearlyRunningCost,
} from './account.ts';
export type { ScenarioEnergies, ScenarioId } from './energies.ts';
export {
  certifiedHeatPumpEnergies,
  electricityAtCop,
  heatTakenAtCop,
  plainHeaterEnergies,
  thisLoopEnergies,
} from './energies.ts';
export { accountsFormulas } from './formulas.ts';
export {
  annuityFactor,
  capitalRecoveryFactor,
} from './present-value.ts';
export type { CertifiedHeatPump } from './working.ts';
export { accountWorking, scenarioWorking } from './working.ts';
