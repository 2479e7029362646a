// Both sides of the dome of any fluid: by Maxwell's conditions for a pure fluid, from the published curves for a blend.

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
