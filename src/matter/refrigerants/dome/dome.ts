// Both sides of the dome of any fluid: by Maxwell's conditions for a pure fluid, from the published curves for a blend.

import { OutOfModelError } from '../../../numerics/index.ts';
import type { Refrigerant } from '../types.ts';
import { bubbleAndDewAtPressure, bubbleAndDewAtTemperature } from './bubble-and-dew.ts';
import type { Equilibrium } from './equilibrium.ts';
import { maxwellAtPressure, maxwellAtTemperature } from './maxwell.ts';

/** Both sides at T [K]. @throws OutOfModelError ('noSaturation') beyond the ends of the dome; ConvergenceError */
export function equilibriumAtTemperature(fluid: Refrigerant, temperature: number): Equilibrium {
  return fluid.bubbleAndDew === undefined
    ? maxwellAtTemperature(fluid, temperature)
    : bubbleAndDewAtTemperature(fluid, fluid.bubbleAndDew, temperature);
}

/** Both sides at p [Pa]. @throws OutOfModelError ('noSaturation') beyond the ends of the dome; ConvergenceError */
export function equilibriumAtPressure(fluid: Refrigerant, pressure: number): Equilibrium {
  return fluid.bubbleAndDew === undefined
    ? maxwellAtPressure(fluid, pressure)
    : bubbleAndDewAtPressure(fluid, fluid.bubbleAndDew, pressure);
}

/**
 * Both sides at the one pressure whose dew temperature is T [K]: of a pure fluid those at T.
 * @throws OutOfModelError ('noSaturation') beyond the ends of the dome; ConvergenceError
 */
export function equilibriumAtDewTemperature(fluid: Refrigerant, temperature: number): Equilibrium {
  const { bubbleAndDew: lines, critical, triplePoint, limits } = fluid;
  if (lines === undefined) return maxwellAtTemperature(fluid, temperature);
  const pressure = lines.dewPressure(temperature);
  // The bubble line begins at a higher pressure than the dew line; the dew temperature there is still inside, within rounding.
  if (!(temperature < critical.temperature && pressure >= triplePoint.pressure * (1 - 1e-12))) {
    const lowest = lines.dewTemperature(triplePoint.pressure, limits.temperatureMin);
    throw new OutOfModelError('temperature', temperature, 'K', lowest, critical.temperature, 'noSaturation');
  }
  const inside = Math.max(pressure, triplePoint.pressure);
  return { ...bubbleAndDewAtPressure(fluid, lines, inside), dewTemperature: temperature };
}

/**
 * Both sides at the one pressure whose bubble temperature is T [K]: of a pure fluid those at T.
 * @throws OutOfModelError ('noSaturation') beyond the ends of the dome, and where the bubble pressure passes the critical
 *         one; ConvergenceError
 */
export function equilibriumAtBubbleTemperature(fluid: Refrigerant, temperature: number): Equilibrium {
  const { bubbleAndDew: lines, critical, limits } = fluid;
  if (lines === undefined) return maxwellAtTemperature(fluid, temperature);
  const pressure = lines.bubblePressure(temperature);
  if (!(temperature >= limits.temperatureMin && temperature < critical.temperature && pressure < critical.pressure)) {
    const { temperatureMin } = limits;
    throw new OutOfModelError('temperature', temperature, 'K', temperatureMin, critical.temperature, 'noSaturation');
  }
  return { ...bubbleAndDewAtPressure(fluid, lines, pressure), bubbleTemperature: temperature };
}
