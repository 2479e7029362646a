// Both sides of the dome at one pressure, from a temperature on one of its lines: how evaporating and condensing levels are
// given. Of a pure fluid all of it is saturationAtTemperature.

import { requirePositive } from '../../../numerics/index.ts';
import { saturation } from '../flash/assemble.ts';
import type { Refrigerant, Saturation } from '../types.ts';
import { equilibriumAtBubbleTemperature, equilibriumAtDewTemperature } from './dome.ts';

/**
 * Both sides of the dome at the pressure whose dew temperature is T.
 * @param fluid        the fluid
 * @param temperature  T [K], of the saturated vapour
 * @returns            bubble and dew point at that one pressure; of a blend at two temperatures
 * @throws InputError unless T is a finite number above 0; OutOfModelError ('noSaturation') beyond the ends of the dome
 * Worked value: R407C, dew 45 °C → 1.7535 MPa, bubble 40.11 °C.
 */
export function saturationAtDewTemperature(fluid: Refrigerant, temperature: number): Saturation {
  requirePositive('given.temperature', temperature);
  const fromTable = fluid.table?.saturationAtDewTemperature(temperature);
  return fromTable ?? saturation(fluid, equilibriumAtDewTemperature(fluid, temperature));
}

/** The same at the pressure whose bubble temperature is T [K], of the saturated liquid. Errors as saturationAtDewTemperature. */
export function saturationAtBubbleTemperature(fluid: Refrigerant, temperature: number): Saturation {
  requirePositive('given.temperature', temperature);
  const fromTable = fluid.table?.saturationAtBubbleTemperature(temperature);
  return fromTable ?? saturation(fluid, equilibriumAtBubbleTemperature(fluid, temperature));
}
