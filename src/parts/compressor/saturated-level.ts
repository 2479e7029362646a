// A level at which a fluid must boil or condense, where somebody wrote it down: refused at its own place, with the temperatures
// between which the fluid has liquid and vapour side by side.

import type { Refrigerant } from '../../matter/refrigerants/index.ts';
import { OutOfModelError, requireFinite } from '../../numerics/index.ts';

/**
 * @param fluid        what boils or condenses
 * @param path         where the level stands: 'machine.compressor.ratings.0.at.condensing'
 * @param temperature  [K]
 * @throws OutOfModelError 'outsideFluid' at the path, with the triple and the critical temperature; InputError where it is no number
 */
export function requireSaturatedLevel(fluid: Refrigerant, path: string, temperature: number): void {
  requireFinite(path, temperature);
  const { triplePoint, critical, name } = fluid;
  if (temperature > triplePoint.temperature && temperature < critical.temperature) return;
  const reason = `where ${name} has liquid and vapour side by side`;
  throw new OutOfModelError(
    path,
    temperature,
    'K',
    triplePoint.temperature,
    critical.temperature,
    'outsideFluid',
    reason,
  );
}
