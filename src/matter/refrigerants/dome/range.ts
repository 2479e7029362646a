// The ends of the dome: what lies beyond them has no saturation.

import { OutOfModelError } from '../../../numerics/index.ts';
import type { Refrigerant } from '../types.ts';

/** @throws OutOfModelError ('noSaturation') unless T [K] lies between the lowest temperature and below the critical one */
export function requireDomeTemperature({ critical, limits }: Refrigerant, temperature: number): void {
  const { temperatureMin } = limits;
  if (!(temperature >= temperatureMin && temperature < critical.temperature)) {
    throw new OutOfModelError('temperature', temperature, 'K', temperatureMin, critical.temperature, 'noSaturation');
  }
}

/** @throws OutOfModelError ('noSaturation') unless p [Pa] lies between that of the triple point and below the critical one */
export function requireDomePressure({ critical, triplePoint }: Refrigerant, pressure: number): void {
  if (!(pressure >= triplePoint.pressure && pressure < critical.pressure)) {
    throw new OutOfModelError('pressure', pressure, 'Pa', triplePoint.pressure, critical.pressure, 'noSaturation');
  }
}
