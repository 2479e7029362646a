// One complete account, tank and room, of one scenario: electricity, what the room gains or loses in its heated months,
// what cooling the room costs in summer, what a dehumidifier draws for the tank's vapour, and the purchase spread over its life.
// Left out: repairs, standing charges, tariffs by the hour, inflation, what a machine is worth at the end.

import { requireFinite, requireNonNegative, requirePositive } from '../numerics/index.ts';
import type { ScenarioEnergies, ScenarioId } from './energies.ts';
import { annuityFactor, capitalRecoveryFactor } from './present-value.ts';

/**
 * Coefficient of performance assumed of what cools the room in summer: common practice, no source.
 * Shown wherever the cooling line is not zero.
 */
export const assumedRoomCoolingCop = 3;

/** Prices; money in one currency, energy in J. */
export interface AccountPrices {
  /** [money/J] */
  readonly electricity: number;
  /** Price of house heat as delivered into the room [money/J]. */
  readonly houseHeat: number;
  readonly roomCooledInSummer: boolean;
  readonly roomCoolingCop: number;
  /** Number of yearly payments the purchase is spread over: its life in years. */
  readonly years: number;
  /** Real discount rate [1/year]. */
  readonly discountRate: number;
}

/** All sums per year in the currency of the prices, except purchase and costOverLife. */
export interface Account {
  readonly scenario: ScenarioId;
  readonly energies: ScenarioEnergies;
  readonly electricityCost: number;
  /** Worth of the sensible heat given to the room in its heated months: positive is a credit, negative a debit. */
  readonly roomHeatCredit: number;
  /** Cost of cooling the same heat away in summer; negative where the scenario cools the room itself. */
  readonly coolingCost: number;
  /** Electricity of a dehumidifier that takes out what the tank evaporates; null in a room without one. */
  readonly dehumidifierCost: number | null;
  /** electricityCost − roomHeatCredit + coolingCost + dehumidifierCost. */
  readonly runningCost: number;
  readonly purchase: number;
  readonly annualisedPurchase: number;
  /** runningCost + annualisedPurchase. */
  readonly annualCost: number;
  /** Purchase plus present value of all running costs. */
  readonly costOverLife: number;
}

/**
 * The account of one scenario.
 * @throws InputError naming the impossible price
 * Worked value: 3.6e9 J (1000 kWh) at 0.30 per kWh, room heat 1.8e9 J at 0.12 per kWh, no cooling → 300 − 60 = 240 a year.
 */
export function account(energies: ScenarioEnergies, purchase: number, prices: AccountPrices): Account {
  requireNonNegative('purchase', purchase);
  requirePrices(prices);
  const electricityCost = energyCost(energies.electricity, prices.electricity);
  const roomHeatCredit = energyCost(energies.roomHeatHeated, prices.houseHeat);
  const { roomCooledInSummer, roomCoolingCop } = prices;
  const coolingCost = summerCoolingCost(
    roomCooledInSummer,
    energies.roomHeatSummer,
    roomCoolingCop,
    prices.electricity,
  );
  const dehumidifierCost = costOrNull(energies.dehumidifierElectricity, prices.electricity);
  const runningCost = netRunningCost(electricityCost, roomHeatCredit, coolingCost, dehumidifierCost ?? 0);
  const annualisedPurchase = purchase * capitalRecoveryFactor(prices.discountRate, prices.years);
  return {
    scenario: energies.scenario,
    energies,
    electricityCost,
    roomHeatCredit,
    coolingCost,
    dehumidifierCost,
    runningCost,
    purchase,
    annualisedPurchase,
    annualCost: annualisedCost(runningCost, purchase, prices.discountRate, prices.years),
    costOverLife: purchase + runningCost * annuityFactor(prices.discountRate, prices.years),
  };
}

/**
 * Cost or worth of an energy.
 *     K = E · p
 * @param energy  E [J]; negative for heat taken away
 * @param price   p [money/J], ≥ 0
 * @returns       K [money]
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 3.6e6 J (1 kWh) at 0.30/3.6e6 → 0.30.
 */
export function energyCost(energy: number, price: number): number {
  requireFinite('energy', energy);
  requireNonNegative('price', price);
  return energy * price;
}

/**
 * Cost of carrying heat out of a cooled room.
 *     K = Q / COP_cool · p
 * @param heat        Q [J], sensible heat brought into the room; negative where it is taken out
 * @param coolingCop  COP_cool [-], heat carried out over electricity used, > 0
 * @param price       p [money/J], electricity, ≥ 0
 * @returns           K [money]; negative is cooling saved
 * Leaves out: vapour, which such a machine must condense as well; it is the same in every scenario that holds the same water.
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 3.6e8 J, 3, 0.30/3.6e6 → 10.
 */
export function roomCoolingCost(heat: number, coolingCop: number, price: number): number {
  requireFinite('heat', heat);
  requirePositive('coolingCop', coolingCop);
  requireNonNegative('price', price);
  return (heat / coolingCop) * price;
}

/**
 * Cooling cost of a summer: that of `roomCoolingCost` in a room that is cooled, none in any other.
 * @throws InputError as `roomCoolingCost`
 */
export function summerCoolingCost(isCooled: boolean, heat: number, coolingCop: number, price: number): number {
  return isCooled ? roomCoolingCost(heat, coolingCop, price) : 0;
}

/** Purchase [money] of a device and of the plain heater that stays beside it: C = C_device + C_heater. */
export function purchaseWithHeater(device: number, heater: number): number {
  requireNonNegative('device', device);
  requireNonNegative('heater', heater);
  return device + heater;
}

/**
 * Running cost of a year or of one of its months, tank and room.
 *     R = K_el − K_room + K_cool + K_dry
 * @param electricityCost  K_el [money]
 * @param roomHeatCredit   K_room [money], negative is a debit
 * @param coolingCost      K_cool [money]
 * @param dehumidifierCost K_dry [money], 0 in a room without a dehumidifier
 * @returns                R [money], of the same time; zero point: the same room without a tank
 * Source: definition of this project. Worked value: 300, 60, 10, 20 → 270.
 */
export function netRunningCost(
  electricityCost: number,
  roomHeatCredit: number,
  coolingCost: number,
  dehumidifierCost: number,
): number {
  return electricityCost - roomHeatCredit + coolingCost + dehumidifierCost;
}

/** Cost of an energy as `energyCost`; null where there is none to pay for. */
export function costOrNull(energy: number | null, price: number): number | null {
  return energy === null ? null : energyCost(energy, price);
}

/**
 * Cost per year with the purchase spread over its life.
 *     A = R + C · r/(1 − (1 + r)^(−n))
 * @param runningCost  R [money/year]
 * @param purchase     C [money]
 * @param rate         r [1/year], ≥ 0
 * @param years        n [-], > 0
 * @returns            A [money/year]
 * Source: any engineering-economics text. Worked value: 120, 600, 5 %, 10 → 197.7027.
 */
export function annualisedCost(runningCost: number, purchase: number, rate: number, years: number): number {
  requireFinite('runningCost', runningCost);
  requireFinite('purchase', purchase);
  return runningCost + purchase * capitalRecoveryFactor(rate, years);
}

function requirePrices(prices: AccountPrices): void {
  requireNonNegative('prices.electricity', prices.electricity);
  requireNonNegative('prices.houseHeat', prices.houseHeat);
  requirePositive('prices.roomCoolingCop', prices.roomCoolingCop);
  requirePositive('prices.years', prices.years);
  requireNonNegative('prices.discountRate', prices.discountRate);
}
