// The steps behind the months of an account: 'accounts.thisLoop.january.runningCost' and what it is made of. The energies of
// the months, 'year.<month>.…', and their heated and summer parts are taken to exist: the year's working and
// `scenarioWorking` give them.

import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import type { Year } from '../year/index.ts';
import type { AccountPrices } from './account.ts';
import { heaterCop, type ScenarioId } from './energies.ts';
import type { MonthAccount } from './months.ts';
import { type CertifiedHeatPump, dehumidifierCostInput, dehumidifierCostStep, yearPrefix } from './working.ts';

/**
 * The steps of the months of one scenario.
 * @param scenario   which
 * @param months     its months
 * @param year       those they were made from
 * @param certified  read for the certified heat pump only
 * @param prices     as the months were made with
 */
export function monthAccountsWorking(
  scenario: ScenarioId,
  months: readonly MonthAccount[],
  year: Year,
  certified: CertifiedHeatPump,
  prices: AccountPrices,
): readonly WorkingStep[] {
  const p: StepInput = [prices.electricity, 'prices.electricity'];
  return months.flatMap((result, index) => {
    const own = (name: string) => `accounts.${scenario}.${result.month}.${name}`;
    const from = namesOfEnergies(scenario, result.month);
    return [
      ...electricityStep(scenario, result, year.months[index]!.energies.heatNeeded, certified),
      workingStep(own('electricityCost'), 'accounts.energyCost', result.electricityCost, {
        E: [result.electricity, from.electricity],
        p,
      }),
      workingStep(own('roomHeatCredit'), 'accounts.energyCost', result.roomHeatCredit, {
        E: [result.roomHeat, from.roomHeat],
        p: [prices.houseHeat, 'room.houseHeatPrice'],
      }),
      workingStep(own('coolingCost'), 'accounts.summerCoolingCost', result.coolingCost, {
        cooled: [prices.roomCooledInSummer ? 1 : 0, 'room.cooledInSummer'],
        Q: [result.roomHeatSummer, from.roomHeatSummer],
        COP_cool: [prices.roomCoolingCop],
        p,
      }),
      ...dehumidifierCostStep(
        own,
        result.dehumidifierElectricity,
        result.dehumidifierCost,
        p,
        `${yearPrefix(scenario)}.${result.month}.energies.dehumidifierElectricity`,
      ),
      workingStep(own('runningCost'), 'accounts.runningCost', result.runningCost, {
        K_el: [result.electricityCost, own('electricityCost')],
        K_room: [result.roomHeatCredit, own('roomHeatCredit')],
        K_cool: [result.coolingCost, own('coolingCost')],
        K_dry: dehumidifierCostInput(own, result.dehumidifierCost),
      }),
    ];
  });
}

/** This loop's electricity is the year's own. */
function electricityStep(
  scenario: ScenarioId,
  { month, electricity }: MonthAccount,
  heatNeeded: number,
  certified: CertifiedHeatPump,
): readonly WorkingStep[] {
  if (scenario === 'thisLoop') return [];
  const COP: StepInput = scenario === 'certifiedHeatPump' ? [certified.cop, certified.from.cop] : [heaterCop];
  return [
    workingStep(`accounts.${scenario}.${month}.electricity`, 'accounts.electricityAtCop', electricity, {
      Q: [heatNeeded, `${yearPrefix(scenario)}.${month}.energies.heatNeeded`],
      COP,
    }),
  ];
}

function namesOfEnergies(scenario: ScenarioId, month: string) {
  const year = (name: string) => `year.${month}.energies.${name}`;
  if (scenario === 'thisLoop') {
    return {
      electricity: year('electricity'),
      roomHeat: year('roomHeatHeated'),
      roomHeatSummer: year('roomHeatSummer'),
    };
  }
  const own = (name: string) => `accounts.${scenario}.${month}.${name}`;
  return { electricity: own('electricity'), roomHeat: own('heatedShareHeat'), roomHeatSummer: own('summerShareHeat') };
}
