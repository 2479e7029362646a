// From any supported pair of properties to the state: (h,s) and (T,s) beside the pairs of flash.ts.

import type { LoopPair, Refrigerant, State, StateInput } from '../../types.ts';
import { checkedPair, pairs, requireTemperature, stateOfPair } from '../flash.ts';
import { requireMolten } from '../melting-line.ts';
import { stateAtEnthalpyAndEntropy } from './enthalpy-and-entropy.ts';
import { stateAtTemperatureAndEntropy } from './entropy-at-temperature.ts';

const everyPair = [...pairs, ['enthalpy', 'entropy'], ['temperature', 'entropy']] as const;
/** The pairs in words, for messages. */
export const supportedPairs: readonly string[] = everyPair.map(([first, second]) => `${first} and ${second}`);

/**
 * The state of a fluid from two properties.
 * @param fluid  the fluid, from refrigerant(name)
 * @param given  one supported pair, base SI: T [K], p [Pa], ρ [kg/m³], h [J/kg], s [J/(kg K)], x [-]; h and s count from
 *               200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 °C
 * @returns      the complete stable state
 * Validity: the limits of the fluid's equation. Accuracy: that of the equation; the solution is exact to rounding.
 * @throws InputError: not a supported pair ('unsupportedPair'), not finite, (T,p) on the saturation line
 *         ('saturatedPair'), (T,s) of cold water that belongs to several states ('severalStates'); OutOfModelError naming the
 *         limit passed: temperature, pressure, density, enthalpy, entropy, the ends of the dome ('noSaturation'), the melting
 *         temperature ('frozen')
 * Source: the equation in fluid.citations.
 * Worked value: R134a, 265 K and 0.2 MPa → 9.9171 kg/m³ (Tillner-Roth & Baehr 1994, Table 9).
 */
export function stateAt(fluid: Refrigerant, given: StateInput): State {
  const fromTable = fluid.table?.stateAt(given);
  if (fromTable !== undefined) return fromTable;
  const values = checkedPair(given, everyPair);
  if (!isOfEntropy(values)) return stateOfPair(fluid, values);
  const state =
    'temperature' in values
      ? stateAtTemperatureAndEntropy(fluid, temperatureOf(fluid, values), values.entropy)
      : stateAtEnthalpyAndEntropy(fluid, values.enthalpy, values.entropy);
  if (state.quality === null) requireMolten(fluid, state.temperature, state.pressure);
  return state;
}

type EntropyPair = Exclude<StateInput, LoopPair>;

function isOfEntropy(values: StateInput): values is EntropyPair {
  return 'entropy' in values && !('pressure' in values);
}

function temperatureOf(fluid: Refrigerant, { temperature }: { readonly temperature: number }): number {
  requireTemperature(fluid, temperature);
  return temperature;
}
