// Stage: the complete accounts, tank and room, of every scenario.

import {
  type Account,
  type AccountPrices,
  account,
  assumedRoomCoolingCop,
  type Comparison,
  certifiedHeatPumpEnergies,
  compareAccounts,
  plainHeaterEnergies,
  thisLoopEnergies,
} from '../../accounts/index.ts';
import type { Year } from '../../year/index.ts';
import type { DesignSlice } from '../stage.ts';
import { sourceIsTankRoom } from './plant.ts';

const secondsPerYear = 365 * 86_400;

export interface AccountsResult {
  readonly prices: AccountPrices;
  readonly accounts: readonly Account[];
  readonly comparison: Comparison;
}

export function accountsOf(
  { prices: given, room, source }: DesignSlice<'prices' | 'room' | 'source'>,
  year: Year,
): AccountsResult {
  const prices: AccountPrices = {
    electricity: given.electricity,
    houseHeat: room.houseHeatPrice,
    roomCooledInSummer: room.cooledInSummer === 'yes',
    roomCoolingCop: assumedRoomCoolingCop,
    years: given.life / secondsPerYear,
    discountRate: given.discountRate,
  };
  const accounts = [
    account(plainHeaterEnergies(year), given.heater, prices),
    // Either heat pump keeps a plain heater beside it: it makes up what is missing and takes over when the machine fails.
    account(thisLoopEnergies(year), given.loopParts + given.heater, prices),
    account(
      certifiedHeatPumpEnergies(year, given.certifiedCop, sourceIsTankRoom(source)),
      given.certifiedHeatPump + given.heater,
      prices,
    ),
  ];
  return { prices, accounts, comparison: compareAccounts(accounts, prices) };
}
