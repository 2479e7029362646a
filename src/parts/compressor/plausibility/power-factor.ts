// Power, current and voltage of one point must be those of a single-phase motor: watts over volts times amperes is its power factor.

import { InputError } from '../../../numerics/index.ts';

/** Rounding of printed amperes, and mains a little off their nominal voltage, above 1; below, no motor of such a machine; from memory. */
const possiblePowerFactor = { lowest: 0.12, highest: 1.1 } as const;

/** Where power and current of one point stand. */
export interface PowerFactorPlaces {
  readonly power: string;
  readonly current: string;
}

/**
 * @param places   of both, for errors
 * @param power    [W]
 * @param current  [A]
 * @param voltage  [V]
 * @throws InputError 'powerAboveVoltAmperes'; 'currentFarAbovePower' where the current is of no motor that takes this power
 */
export function requirePossiblePowerFactor(
  places: PowerFactorPlaces,
  power: number,
  current: number,
  voltage: number,
): void {
  const product = voltage * current;
  const factor = power / product;
  if (factor > possiblePowerFactor.highest) {
    const expected = `power of at most volts times amperes, ${Math.round(product)} W at ${voltage} V: check the voltage, both units, and that the machine is single-phase`;
    throw new InputError(places.power, `${Number(power.toPrecision(4))} W`, expected, 'powerAboveVoltAmperes');
  }
  if (factor < possiblePowerFactor.lowest) {
    const expected = `a current with which ${Number(power.toPrecision(4))} W make a power factor of 0.2 to 1 at ${voltage} V: check both units (mA for A?) and the voltage`;
    throw new InputError(places.current, `${Number(current.toPrecision(4))} A`, expected, 'currentFarAbovePower');
  }
}
