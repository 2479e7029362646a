// Stages of the tank alone: a year in which a plain heater does everything, and its account. What the tank needs and gives its
// room is that of its own stages; no machine is computed, so none can fail.

import { type Account, type AccountPrices, account, plainHeaterEnergies } from '../../../accounts/index.ts';
import type { Year } from '../../../year/index.ts';
import { type Stage, stageOf } from '../../stage.ts';
import { type StageResults, stages } from '../index.ts';
import { dryingEnergyOf, yearOf } from '../plant.ts';
import { accountPrices } from './accounts.ts';

export interface HeaterAccount {
  readonly prices: AccountPrices;
  readonly account: Account;
}

/** What the tank alone is told from. */
export interface TankAloneResults
  extends Pick<StageResults, 'surroundings' | 'meter' | 'tank' | 'monthLoads' | 'hardware'> {
  /** No machine runs in it. */
  readonly heaterYear: Year;
  readonly heaterAccount: HeaterAccount;
}

const stage = stageOf<TankAloneResults>();

const heaterYear = stage(
  'heaterYear',
  ({ room }) => ({ dryingEnergy: dryingEnergyOf(room) }),
  ['surroundings', 'monthLoads', 'hardware'],
  ({ dryingEnergy }, { surroundings: { months }, monthLoads, hardware }) =>
    yearOf(
      months,
      monthLoads,
      months.map(() => null),
      hardware,
      dryingEnergy,
    ),
);

const heaterAccount = stage(
  'heaterAccount',
  ({ prices, room }) => ({ prices, houseHeatPrice: room.houseHeatPrice, cooledInSummer: room.cooledInSummer }),
  ['heaterYear'],
  (slice, results): HeaterAccount => {
    const prices = accountPrices(slice);
    return { prices, account: account(plainHeaterEnergies(results.heaterYear), slice.prices.heater, prices) };
  },
);

const ownNames: readonly string[] = ['surroundings', 'meter', 'tank', 'hardware', 'monthLoads'];

/** Those of the whole assessment that need no machine, and the heater's; each after those it needs. */
export const tankAloneStages: readonly Stage<TankAloneResults, keyof TankAloneResults>[] = [
  // They need nothing but one another, which the names above say.
  ...(stages.filter(({ name }) => ownNames.includes(name)) as unknown as Stage<
    TankAloneResults,
    keyof TankAloneResults
  >[]),
  heaterYear,
  heaterAccount,
];
