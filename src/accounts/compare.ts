// This loop against one other scenario: the difference of the two accounts, and the price of house heat or the season
// coefficient of performance at which the two would cost the same. Exact, since a year's cost is linear in that price, and
// in the electricity per heat as long as the heat to the water and the losses stay as they are.
// Left out: that another price or another machine might change what the person does.

import { InputError, requireFinite, requirePositive } from '../numerics/index.ts';
import { shareOfEnergy, sumOfMonths, type Year, type YearPart } from '../year/index.ts';
import type { AccountPrices } from './account.ts';

/**
 * Difference of the cost per year of two scenarios.
 *     ΔA = A_loop − A_other
 * @param loop   A_loop [money/year]
 * @param other  A_other [money/year]
 * @returns      ΔA [money/year]; above 0 the loop costs more
 * Source: definition. Worked value: 197.70, 512.40 → −314.70.
 */
export function lifeCostDifference(loop: number, other: number): number {
  return loop - other;
}

/**
 * Price of house heat at which two scenarios cost the same.
 *     p* = p + ΔA / (Q_loop − Q_other)
 * @param price      p [money/J], at which ΔA was found
 * @param costMore   ΔA [money/year]
 * @param roomLoop   Q_loop [J/year], net sensible heat into the room in its heated months
 * @param roomOther  Q_other [J/year]
 * @returns          p* [money/J]; below 0 where no price makes them equal
 * @throws InputError where both give the room the same heat: then the price decides nothing
 * Source: the accounts are linear in this price. Worked value: 0.12/3.6e6, −90, −1.8e9, 5.4e9 → (0.12 + 0.045)/3.6e6.
 */
export function breakEvenHouseHeat(price: number, costMore: number, roomLoop: number, roomOther: number): number {
  requireFinite('costMore', costMore);
  if (roomLoop === roomOther) throw new InputError('roomLoop', roomLoop, 'another room heat than that of the other');
  return price + costMore / (roomLoop - roomOther);
}

/**
 * What this loop's electricity would cost a year at a coefficient of performance of 1, less what the room would gain by it.
 *     G = COP (p E − s (p_h E_h − c E_s p / COP_cool))
 * Where the source is the tank's own room (s = 1), every joule of electricity more is a joule less taken from that room.
 * @param seasonCop  COP [-], season coefficient of performance the energies were found with, > 0
 * @param energies   E, E_h, E_s [J/year]: electricity in all, in the heated and in the summer part of the year
 * @param prices     p, p_h [money/J], c whether the room is cooled, COP_cool
 * @param fromRoom   s: whether the source is the tank's own room
 * @returns          G [money/year]
 * @throws InputError for a coefficient of performance that is not above 0
 * Source: energy balance with the heat to the water and all losses as they are, and the accounts' own lines.
 * Worked value: 3, 3.6e9 J (1000 kWh) at 0.30 per kWh, source elsewhere → 900.
 */
export function costAtCopOne(
  seasonCop: number,
  energies: LoopElectricity,
  prices: Pick<AccountPrices, 'electricity' | 'houseHeat' | 'roomCooledInSummer' | 'roomCoolingCop'>,
  fromRoom: boolean,
): number {
  requirePositive('seasonCop', seasonCop);
  const cooling = prices.roomCooledInSummer ? (energies.inSummer * prices.electricity) / prices.roomCoolingCop : 0;
  const room = fromRoom ? prices.houseHeat * energies.whileHeated - cooling : 0;
  return seasonCop * (prices.electricity * energies.total - room);
}

/**
 * Season coefficient of performance at which this loop would cost as much as another scenario.
 *     COP* = G / (G / COP − ΔA)
 * @param atCopOne   G [money/year], see costAtCopOne
 * @param seasonCop  COP [-], at which ΔA was found
 * @param costMore   ΔA [money/year]
 * @returns          COP* [-]; not above 0 where no coefficient makes them equal
 * @throws InputError where no finite coefficient makes them equal
 * Source: the account is linear in 1/COP. Worked value: 900, 3, 100 → 4.5.
 */
export function breakEvenCop(atCopOne: number, seasonCop: number, costMore: number): number {
  requirePositive('seasonCop', seasonCop);
  requireFinite('costMore', costMore);
  const left = atCopOne / seasonCop - costMore;
  if (left === 0) throw new InputError('costMore', costMore, 'another difference than the whole cost of electricity');
  return atCopOne / left;
}

/** This loop's electricity of a year [J], and its parts while the room is heated and in summer. */
export interface LoopElectricity {
  readonly total: number;
  readonly whileHeated: number;
  readonly inSummer: number;
}

export function loopElectricity({ months, energies }: Year): LoopElectricity {
  const inPart = (part: YearPart) =>
    sumOfMonths(months.map((month) => shareOfEnergy(month.conditions[part], month.energies.electricity.total)));
  return { total: energies.electricity.total, whileHeated: inPart('heatedShare'), inSummer: inPart('summerShare') };
}
