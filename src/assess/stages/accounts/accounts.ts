// Stage: the complete accounts, tank and room, of every scenario.

import {
  type Account,
  type AccountPrices,
  account,
  assumedRoomCoolingCop,
  type CertifiedPerformance,
  certifiedHeatPumpEnergies,
  costAtCopOne,
  type LoopSeason,
  loopElectricity,
  plainHeaterEnergies,
  purchaseWithHeater,
  thisLoopEnergies,
} from '../../../accounts/index.ts';
import { secondsPerYear } from '../../../quantities/index.ts';
import type { Year } from '../../../year/index.ts';
import type { StagedDesign } from '../engine-assumptions.ts';
import { sourceIsTankRoom } from '../plant.ts';
import { type WrappedYear, wrappedAccount } from '../wrapping/states.ts';

export interface AccountsResult {
  readonly prices: AccountPrices;
  readonly accounts: readonly Account[];
  readonly certified: CertifiedPerformance;
  /** Null where no month needs heat, or none uses electricity. */
  readonly season: LoopSeason | null;
}

/** What the accounts need of the design beside the year's energies. */
export interface AccountsSlice {
  readonly prices: StagedDesign['prices'];
  readonly houseHeatPrice: number;
  readonly cooledInSummer: StagedDesign['room']['cooledInSummer'];
  readonly source: Pick<StagedDesign['source'], 'kind'>;
}

/** The prices of all accounts. */
export function accountPrices({
  prices,
  houseHeatPrice,
  cooledInSummer,
}: Omit<AccountsSlice, 'source'>): AccountPrices {
  return {
    electricity: prices.electricity,
    houseHeat: houseHeatPrice,
    roomCooledInSummer: cooledInSummer === 'yes',
    roomCoolingCop: assumedRoomCoolingCop,
    years: prices.life / secondsPerYear,
    discountRate: prices.discountRate,
  };
}

/** Every account; `wrapped`, the tank wrapped with what pays, is null where nothing does. */
export function accountsOf(slice: AccountsSlice, year: Year, wrapped: WrappedYear | null): AccountsResult {
  const { prices: given, source } = slice;
  const prices = accountPrices(slice);
  const certified = { cop: given.certifiedCop, sourceIsTankRoom: sourceIsTankRoom(source) };
  const accounts = [
    account(plainHeaterEnergies(year), given.heater, prices),
    ...(wrapped === null ? [] : [wrappedAccount(wrapped, { prices, heater: given.heater })]),
    // Either heat pump keeps a plain heater beside it: it makes up what is missing and takes over when the machine fails.
    account(thisLoopEnergies(year), purchaseWithHeater(given.loopParts, given.heater), prices),
    account(
      certifiedHeatPumpEnergies(year, certified.cop, certified.sourceIsTankRoom),
      purchaseWithHeater(given.certifiedHeatPump, given.heater),
      prices,
    ),
  ];
  return { prices, accounts, certified, season: seasonOf(year, prices, certified.sourceIsTankRoom) };
}

function seasonOf(year: Year, prices: AccountPrices, fromRoom: boolean): LoopSeason | null {
  if (year.seasonCop === null) return null;
  const electricity = loopElectricity(year);
  return {
    cop: year.seasonCop,
    electricity,
    sourceIsTankRoom: fromRoom,
    costAtCopOne: costAtCopOne(year.seasonCop, electricity, prices, fromRoom),
  };
}
