// What leads from a request to the states of a loop and from one state to the next without an equation of state: numbers
// taken over as given, what a part of the loop leaves as it is, superheat and subcooling.

import { requireFinite } from '../numerics/index.ts';

/** A number taken over unchanged; a finite number in its own SI unit. Source: definition. */
export function takenOver(value: number): number {
  requireFinite('value', value);
  return value;
}

/** ΔT_sh = T − T_dew [K], of gas at T [K] above the dew temperature T_dew [K] at its pressure, both finite. Source: definition. */
export function superheatAbove(dew: number, temperature: number): number {
  requireFinite('dew', dew);
  requireFinite('temperature', temperature);
  return temperature - dew;
}

/** ΔT_sc = T_b − T [K], of liquid at T [K] below the bubble temperature T_b [K] at its pressure, both finite. Source: definition. */
export function subcoolingBelow(bubble: number, temperature: number): number {
  requireFinite('bubble', bubble);
  requireFinite('temperature', temperature);
  return bubble - temperature;
}
