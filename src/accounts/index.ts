// Public names of the accounts: energies of each scenario and their money.

export type { Account, AccountPrices } from './account.ts';
export {
  account,
  annualisedCost,
  assumedRoomCoolingCop,
  energyCost,
  netRunningCost,
  purchaseWithHeater,
  roomCoolingCost,
} from './account.ts';
export type { LoopElectricity } from './compare.ts';
export {
  breakEvenCop,
  breakEvenHouseHeat,
  costAtCopOne,
  lifeCostDifference,
  loopElectricity,
} from './compare.ts';
export type { LoopSeason } from './compare-working.ts';
export { compareWorking, costAtCopOneWorking } from './compare-working.ts';
export type { ScenarioEnergies, ScenarioId } from './energies.ts';
export {
  certifiedHeatPumpEnergies,
  electricityAtCop,
  heatTakenAtCop,
  insulationOnlyEnergies,
  plainHeaterEnergies,
  thisLoopEnergies,
} from './energies.ts';
export { accountsFormulas } from './formulas.ts';
export { monthAccountsWorking } from './month-working.ts';
export type { CertifiedPerformance, MonthAccount } from './months.ts';
export { monthAccounts } from './months.ts';
export {
  annuityFactor,
  capitalRecoveryFactor,
} from './present-value.ts';
export type { CertifiedHeatPump } from './working.ts';
export { accountWorking, scenarioWorking } from './working.ts';
export {
  bestInTurn,
  type Candidate,
  eachAlone,
  inThisOrder,
  payingSteps,
  type RunningCostWith,
  type TurnStep,
  type Worth,
} from './wrapping/in-turn.ts';
export { lessThanBefore, netSaving, type RunningLines, type Saving, savingOf } from './wrapping/saving.ts';
export type { Terms } from './wrapping/terms.ts';
export {
  type CostRange,
  type CostRates,
  costOf,
  costTogether,
  measureCost,
  readMeasures,
  type UsualMeasure,
  type UsualMeasures,
  type UsualWork,
  usualMeasures,
} from './wrapping/usual.ts';
export {
  discountedPayback,
  discountedPaybackOrNever,
  netValue,
  paybackOrNever,
  simplePayback,
} from './wrapping/worth.ts';
