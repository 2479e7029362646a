// The working of the accounts: energies of each scenario from those of the year, purchases, and the money.

import {
  type Account,
  accountWorking,
  compareWorking,
  costAtCopOneWorking,
  monthAccounts,
  monthAccountsWorking,
  scenarioWorking,
} from '../../accounts/index.ts';
import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { Year } from '../../year/index.ts';
import type { AccountsResult } from '../stages/accounts/accounts.ts';
import type { HeaterAccount } from '../stages/accounts/heater.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { sourceIsTankRoom } from '../stages/plant.ts';
import { wrappedSteps } from './wrapped.ts';

/** Where the price of each heat pump stands in the design. */
const devices = { thisLoop: 'loopParts', certifiedHeatPump: 'certifiedHeatPump' } as const;

export function accountSteps(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  const { accounts, year: asItIs, wrapped } = results;
  const certified = {
    cop: design.prices.certifiedCop,
    sourceIsTankRoom: sourceIsTankRoom(design.source),
    from: { cop: 'prices.certifiedCop', sourceIsTankRoom: 'source.kind' },
  };
  const { prices } = accounts;
  const each = accounts.accounts.flatMap((account) => {
    const { scenario } = account;
    const year = scenario === 'insulationOnly' && wrapped !== null ? wrapped.year : asItIs;
    const purchase = purchaseSteps(design, account);
    const months = monthAccounts(scenario, year, certified, prices);
    return [
      ...scenarioWorking(account.energies, year, certified),
      ...purchase,
      ...accountWorking(
        account,
        prices,
        scenario === 'plainHeater' ? 'prices.heater' : `accounts.${scenario}.purchase`,
      ),
      ...monthAccountsWorking(scenario, months, year, certified, prices),
    ];
  });
  return [...wrappedSteps(design, results), ...each, ...comparisonSteps(accounts, asItIs)];
}

/** A plain heater's account alone, of a year in which no machine runs. */
export function heaterAccountSteps({ account, prices }: HeaterAccount, year: Year): readonly WorkingStep[] {
  return [
    ...scenarioWorking(account.energies, year, noHeatPump),
    ...accountWorking(account, prices, 'prices.heater'),
    ...monthAccountsWorking(
      account.scenario,
      monthAccounts(account.scenario, year, noHeatPump, prices),
      year,
      noHeatPump,
      prices,
    ),
  ];
}

/** Read for a certified heat pump only, which is none of a plain heater. */
const noHeatPump = { cop: 1, sourceIsTankRoom: false, from: { cop: '', sourceIsTankRoom: '' } } as const;

/** This loop against each other way. */
function comparisonSteps({ accounts, prices, season }: AccountsResult, year: Year): readonly WorkingStep[] {
  const loop = accounts.find(({ scenario }) => scenario === 'thisLoop')!;
  const others = accounts.filter((account) => account !== loop);
  return [
    ...(season === null ? [] : costAtCopOneWorking(season, year, prices)),
    ...others.flatMap((other) => compareWorking(loop, other, prices, season ?? undefined)),
  ];
}

/** A heat pump and the plain heater beside it; the heater alone is a price of the design, that of the wrapped tank stands in wrapped.ts. */
function purchaseSteps({ prices }: StagedDesign, { scenario, purchase }: Account): readonly WorkingStep[] {
  if (scenario === 'plainHeater' || scenario === 'insulationOnly') return [];
  const device = devices[scenario];
  return [
    workingStep(`accounts.${scenario}.purchase`, 'accounts.purchase', purchase, {
      C_device: [prices[device], `prices.${device}`],
      C_heater: [prices.heater, 'prices.heater'],
    }),
  ];
}
