// The liquid-to-suction heat exchanger between the liquid out of the condenser and the gas out of the evaporator, adiabatic
// to the outside: heat by effectiveness and the reverse, and the exergy it destroys. Effectiveness counts on enthalpy, so
// that the changing heat capacity of the gas is in it.

import { InputError, requireFinite, requirePositive } from '../numerics/index.ts';

/**
 * Heat from the liquid to the gas per kilogram, q.
 *     q = ε (h(p_e, T_liquid) − h_in)
 * @param effectiveness  ε [-], above 0, at most 1
 * @param warmestGas     h(p_e, T_liquid) [J/kg]: gas at the evaporator's pressure, as warm as the liquid enters
 * @param gasIn          h_in [J/kg], gas out of the evaporator, below the warmest
 * @returns              q [J/kg]
 * @throws InputError if ε is not in 0 < ε ≤ 1 or the gas is not below the warmest.
 * Validity: steady, no heat to the outside; the gas has the smaller heat capacity, as always here.
 * Pitfall: counted on temperature, (T_out − T_in)/(T_liquid − T_in), the same heat has an effectiveness a little different.
 * Source: definition of effectiveness, W. M. Kays & A. L. London, Compact Heat Exchangers (from memory), on enthalpy.
 * Worked value: 0.6, 435 858, 392 666 → 25 915.2 J/kg.
 */
export function exchangedHeat(effectiveness: number, warmestGas: number, gasIn: number): number {
  requireRange(warmestGas, gasIn);
  if (!(effectiveness > 0 && effectiveness <= 1)) {
    throw new InputError('heatExchangerEffectiveness', effectiveness, 'a number above 0, at most 1');
  }
  return effectiveness * (warmestGas - gasIn);
}

/**
 * Effectiveness ε from the heat the gas took up.
 *     ε = q / (h(p_e, T_liquid) − h_in)
 * @param heat        q [J/kg]
 * @param warmestGas  h(p_e, T_liquid) [J/kg]
 * @param gasIn       h_in [J/kg], below the warmest
 * @returns           ε [-]; above 1 where the gas took up more than it can: callers refuse it
 * @throws InputError if the gas is not below the warmest.
 * Source: as exchangedHeat.
 * Worked value: 25 915.2, 435 858, 392 666 → 0.6.
 */
export function exchangerEffectiveness(heat: number, warmestGas: number, gasIn: number): number {
  requireFinite('heat', heat);
  requireRange(warmestGas, gasIn);
  return heat / (warmestGas - gasIn);
}

/**
 * Enthalpy h_out of a stream after it took up heat.
 *     h_out = h_in + q
 * @param enthalpy  h_in [J/kg]
 * @param heat      q [J/kg]; negative where the stream gives heat
 * @returns         h_out [J/kg]
 * Source: steady-flow energy equation.
 * Worked value: 256 409, −25 915 → 230 494 J/kg.
 */
export function enthalpyAfterHeat(enthalpy: number, heat: number): number {
  requireFinite('enthalpy', enthalpy);
  requireFinite('heat', heat);
  return enthalpy + heat;
}

/**
 * Exergy destroyed between two streams of the same flow that exchange heat with each other alone, x.
 *     x = T0 [(s_g,out − s_g,in) + (s_l,out − s_l,in)]
 * @param deadState  T0 [K]
 * @param gas        entropies of the gas, in and out [J/(kg K)]
 * @param liquid     entropies of the liquid, in and out [J/(kg K)]
 * @returns          x [J/kg]
 * Source: entropy balance of an adiabatic exchanger, Çengel & Boles, Thermodynamics, 8th ed., chapter 8 (from memory).
 * Worked value: 300, 1700 → 1800, 1200 → 1110 → 3000 J/kg.
 */
export function exergyDestroyedBetweenStreams(
  deadState: number,
  gas: readonly [inlet: number, outlet: number],
  liquid: readonly [inlet: number, outlet: number],
): number {
  requirePositive('deadState', deadState);
  for (const entropy of [...gas, ...liquid]) requireFinite('entropy', entropy);
  return deadState * (gas[1] - gas[0] + liquid[1] - liquid[0]);
}

function requireRange(warmestGas: number, gasIn: number): void {
  requireFinite('gasIn', gasIn);
  if (!(Number.isFinite(warmestGas) && warmestGas > gasIn)) {
    throw new InputError('warmestGas', warmestGas, `above the gas out of the evaporator, ${gasIn} J/kg`);
  }
}
