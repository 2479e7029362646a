// Where a hermetic machine may run by the suction pressure level it was made for: typical application guides, from
// memory. Such a limit can warn; it never clears anything, and a data sheet of the very machine goes before it.

import { InputError } from '../../../numerics/index.ts';
import type { Application, LimitRecord } from '../data.ts';
import { applications, compressorData } from '../data.ts';

/** Limits of one application; temperatures [K] are dew temperatures, discharge is the gas in the discharge line. */
export type ApplicationLimits = LimitRecord;

/**
 * Evaporating range, condensing temperature (continuous and peak), discharge line temperature and pressure ratio
 * of machines made for low, medium or high back pressure.
 * @throws InputError for any other word
 */
export function applicationLimits(application: Application): ApplicationLimits {
  const found = compressorData.limits.find((record) => record.application === application);
  if (found === undefined) throw new InputError('application', application, applications.join(', '));
  return found;
}
