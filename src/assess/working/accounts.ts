// The working of the accounts: energies of each scenario from those of the year, purchases, and the money.

import { type Account, accountWorking, scenarioWorking } from '../../accounts/index.ts';
import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { sourceIsTankRoom } from '../stages/plant.ts';

/** Where the price of each heat pump stands in the design. */
const devices = { thisLoop: 'loopParts', certifiedHeatPump: 'certifiedHeatPump' } as const;

export function accountSteps(design: StagedDesign, { accounts, year }: StageResults): readonly WorkingStep[] {
  const certified = {
    cop: design.prices.certifiedCop,
    sourceIsTankRoom: sourceIsTankRoom(design.source),
    from: { cop: 'prices.certifiedCop', sourceIsTankRoom: 'source.kind' },
  };
  return accounts.accounts.flatMap((account) => {
    const purchase = purchaseSteps(design, account);
    return [
      ...scenarioWorking(account.energies, year, certified),
      ...purchase,
      ...accountWorking(account, accounts.prices, purchase[0]?.result ?? 'prices.heater'),
    ];
  });
}

/** A heat pump and the plain heater beside it; the plain heater alone is a price of the design. */
function purchaseSteps({ prices }: StagedDesign, { scenario, purchase }: Account): readonly WorkingStep[] {
  if (scenario === 'plainHeater') return [];
  const device = devices[scenario];
  return [
    workingStep(`accounts.${scenario}.purchase`, 'accounts.purchase', purchase, {
      C_device: [prices[device], `prices.${device}`],
      C_heater: [prices.heater, 'prices.heater'],
    }),
  ];
}
