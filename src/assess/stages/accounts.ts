// Stage: the complete accounts, tank and room, of every scenario.

import {
  type Account,
  type AccountPrices,
  account,
  assumedRoomCoolingCop,
  certifiedHeatPumpEnergies,
  plainHeaterEnergies,
  purchaseWithHeater,
  thisLoopEnergies,
} from '../../accounts/index.ts';
import { secondsPerYear } from '../../quantities/index.ts';
import type { Year } from '../../year/index.ts';
import type { StagedDesign } from './engine-assumptions.ts';
import { sourceIsTankRoom } from './plant.ts';

export interface AccountsResult {
  readonly prices: AccountPrices;
  readonly accounts: readonly Account[];
}

/** What the accounts need of the design beside the year's energies. */
export interface AccountsSlice {
  readonly prices: StagedDesign['prices'];
  readonly houseHeatPrice: number;
  readonly cooledInSummer: StagedDesign['room']['cooledInSummer'];
  readonly source: Pick<StagedDesign['source'], 'kind'>;
}

export function accountsOf(
  { prices: given, houseHeatPrice, cooledInSummer, source }: AccountsSlice,
  year: Year,
): AccountsResult {
  const prices: AccountPrices = {
    electricity: given.electricity,
    houseHeat: houseHeatPrice,
    roomCooledInSummer: cooledInSummer === 'yes',
    roomCoolingCop: assumedRoomCoolingCop,
    years: given.life / secondsPerYear,
    discountRate: given.discountRate,
  };
  const accounts = [
    account(plainHeaterEnergies(year), given.heater, prices),
    // Either heat pump keeps a plain heater beside it: it makes up what is missing and takes over when the machine fails.
    account(thisLoopEnergies(year), purchaseWithHeater(given.loopParts, given.heater), prices),
    account(
      certifiedHeatPumpEnergies(year, given.certifiedCop, sourceIsTankRoom(source)),
      purchaseWithHeater(given.certifiedHeatPump, given.heater),
      prices,
    ),
  ];
  return { prices, accounts };
}
