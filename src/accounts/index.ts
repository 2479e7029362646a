// Public names of the accounts: energies of each scenario, their money, and the comparison.

export type { Account, AccountPrices, Comparison, ComparisonRow } from './account.ts';
export {
  account,
  annualisedCost,
  assumedRoomCoolingCop,
  compareAccounts,
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
  discountedPayback,
  isPaidBack,
  netPresentValue,
} from './present-value.ts';
export type { CertifiedHeatPump } from './working.ts';
export { accountWorking, scenarioWorking } from './working.ts';
