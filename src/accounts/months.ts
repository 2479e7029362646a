// The account of one scenario month by month: the same lines as the year's account, each from that month's energies.
// The lines of the twelve months add up to those of the year. The purchase has no month and is not in them.

import { type MonthResult, shareOfEnergy, type Year } from '../year/index.ts';
import { type AccountPrices, costOrNull, energyCost, netRunningCost, summerCoolingCost } from './account.ts';
import { certifiedRoomHeat, electricityAtCop, heaterCop, heaterRoomHeat, type ScenarioId } from './energies.ts';

/** One month of one scenario; energies in J, money in the currency of the prices. */
export interface MonthAccount {
  readonly month: string;
  /** Share of the month in which the room is heated. */
  readonly heatedShare: number;
  readonly electricity: number;
  readonly electricityCost: number;
  /** Net sensible heat into the tank's room in the heated part of the month; negative is heat taken out of it. */
  readonly roomHeat: number;
  /** The same in the summer part. */
  readonly roomHeatSummer: number;
  readonly roomHeatCredit: number;
  readonly coolingCost: number;
  /** Null in a room without a dehumidifier. */
  readonly dehumidifierElectricity: number | null;
  readonly dehumidifierCost: number | null;
  readonly runningCost: number;
}

/** What a month of the certified heat pump is reckoned with. */
export interface CertifiedPerformance {
  readonly cop: number;
  readonly sourceIsTankRoom: boolean;
}

/**
 * The months of one scenario, in the order of the year's.
 * @param scenario   which
 * @param year       the months with their energies; of the wrapped tank for insulationOnly
 * @param certified  read for the certified heat pump only
 * @param prices     as the year's account was made with
 * @throws InputError for an impossible price or coefficient of performance
 * Worked value: 100 kWh at 0.30, of which 60 kWh of sensible heat in a heated month at 0.12 → 30 − 7.20 = 22.80.
 */
export function monthAccounts(
  scenario: ScenarioId,
  year: Year,
  certified: CertifiedPerformance,
  prices: AccountPrices,
): readonly MonthAccount[] {
  return year.months.map((month) => {
    const { conditions } = month;
    const electricity = electricityOfMonth(scenario, month, certified);
    const roomHeatOfMonth = netRoomHeat(scenario, month, certified);
    const roomHeat = shareOfEnergy(conditions.heatedShare, roomHeatOfMonth);
    const roomHeatSummer = shareOfEnergy(conditions.summerShare, roomHeatOfMonth);
    const electricityCost = energyCost(electricity, prices.electricity);
    const roomHeatCredit = energyCost(roomHeat, prices.houseHeat);
    const { roomCooledInSummer, roomCoolingCop } = prices;
    const coolingCost = summerCoolingCost(roomCooledInSummer, roomHeatSummer, roomCoolingCop, prices.electricity);
    const dehumidifierElectricity = month.dehumidifier === null ? null : month.energies.dehumidifierElectricity;
    const dehumidifierCost = costOrNull(dehumidifierElectricity, prices.electricity);
    return {
      month: conditions.month,
      heatedShare: conditions.heatedShare,
      electricity,
      electricityCost,
      roomHeat,
      roomHeatSummer,
      roomHeatCredit,
      coolingCost,
      dehumidifierElectricity,
      dehumidifierCost,
      runningCost: netRunningCost(electricityCost, roomHeatCredit, coolingCost, dehumidifierCost ?? 0),
    };
  });
}

function electricityOfMonth(scenario: ScenarioId, { energies }: MonthResult, certified: CertifiedPerformance): number {
  switch (scenario) {
    case 'plainHeater':
    case 'insulationOnly':
      return electricityAtCop(energies.heatNeeded, heaterCop);
    case 'thisLoop':
      return energies.electricity.total;
    case 'certifiedHeatPump':
      return electricityAtCop(energies.heatNeeded, certified.cop);
  }
}

function netRoomHeat(scenario: ScenarioId, month: MonthResult, certified: CertifiedPerformance): number {
  switch (scenario) {
    case 'plainHeater':
    case 'insulationOnly':
      return heaterRoomHeat(month);
    case 'thisLoop':
      return month.energies.roomHeat;
    case 'certifiedHeatPump':
      return certifiedRoomHeat(month, certified.cop, certified.sourceIsTankRoom);
  }
}
