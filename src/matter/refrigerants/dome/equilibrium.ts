// Both sides of the dome in plain numbers, of a pure fluid or a blend: what the solvers of this folder hand around.

/**
 * Both sides of the dome in plain numbers: what the solvers work with. Bubble: saturated liquid; dew: saturated vapour. The
 * two temperatures and the two pressures are the same for a pure fluid; for a blend, at a temperature the pressures
 * differ, at a pressure the temperatures.
 */
export interface Equilibrium {
  readonly bubbleTemperature: number;
  readonly dewTemperature: number;
  readonly bubblePressure: number;
  readonly dewPressure: number;
  readonly liquidDensity: number;
  readonly vapourDensity: number;
}

/** Both sides of a pure fluid's dome. */
export function pureEquilibrium(
  temperature: number,
  pressure: number,
  liquidDensity: number,
  vapourDensity: number,
): Equilibrium {
  return {
    bubbleTemperature: temperature,
    dewTemperature: temperature,
    bubblePressure: pressure,
    dewPressure: pressure,
    liquidDensity,
    vapourDensity,
  };
}
