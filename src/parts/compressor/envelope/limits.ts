// Where a hermetic machine may run by the suction pressure level it was made for: typical application guides, from
// memory. Such a limit can warn; it never clears anything, and a data sheet of the very machine goes before it.

import shipped from '../../../../data/compressors.json';
import { DataError, InputError } from '../../../numerics/index.ts';
import {
  type Application,
  applicationFrom,
  applications,
  type CompressorFile,
  fileName,
  sourceWords,
} from '../data.ts';

/** Limits of one application; temperatures [K] are dew temperatures, discharge is the gas in the discharge line. */
export interface ApplicationLimits {
  readonly application: Application;
  readonly evaporating: { readonly lowest: number; readonly highest: number };
  readonly condensing: { readonly continuous: number; readonly peak: number };
  readonly discharge: { readonly caution: number; readonly highest: number };
  readonly pressureRatio: { readonly caution: number; readonly highest: number };
  readonly source: string;
}

/** The limits of the file as checked records. @throws DataError that names the place and the rule it breaks. */
export function readApplicationLimits(file: CompressorFile): ReadonlyMap<Application, ApplicationLimits> {
  const records = file.applicationLimits.map((raw, index) => {
    const path = `applicationLimits.${index}`;
    const pairs = [
      [raw.evaporating.lowest, raw.evaporating.highest],
      [raw.condensing.continuous, raw.condensing.peak],
      [raw.discharge.caution, raw.discharge.highest],
      [raw.pressureRatio.caution, raw.pressureRatio.highest],
    ] as const;
    if (pairs.some(([low, high]) => !(low > 0 && low < high))) {
      throw new DataError(fileName, path, 'needs positive limits, the lower one first');
    }
    const application = applicationFrom(`${path}.application`, raw.application);
    return [application, { ...raw, application, source: sourceWords(file, path, raw.source) }] as const;
  });
  const missing = applications.find((application) => !records.some(([name]) => name === application));
  if (missing !== undefined) throw new DataError(fileName, 'applicationLimits', `has no entry for ${missing}`);
  return new Map(records);
}

const limits = readApplicationLimits(shipped);

/**
 * Evaporating range, condensing temperature (continuous and peak), discharge line temperature and pressure ratio
 * of machines made for low, medium or high back pressure.
 * @throws InputError for any other word
 */
export function applicationLimits(application: Application): ApplicationLimits {
  const found = limits.get(application);
  if (found === undefined) throw new InputError('application', application, applications.join(', '));
  return found;
}
