// How data/compressors.json is read: its ranges with the words of their sources, and the names it uses. A broken file is a
// DataError that names the place.

import type shipped from '../../../data/compressors.json';
import { DataError } from '../../numerics/index.ts';
import type { Estimate } from '../../quantities/index.ts';

/** Back pressure a machine is made for: the level of suction pressure its motor and displacement were matched to. */
export type Application = 'low' | 'medium' | 'high';

export const applications: readonly Application[] = ['low', 'medium', 'high'];

/** A range out of the data file with the words of its source. */
export interface SourcedEstimate extends Estimate {
  readonly source: string;
}

export const fileName = 'data/compressors.json';

/** The file's form; tests hand over broken copies. */
export type CompressorFile = typeof shipped;

/** A range as it stands in the file. */
export interface RawRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly source: string;
}

/** The words that stand behind a source key of the file. @throws DataError if the key is not in the bibliography. */
export function sourceWords(file: CompressorFile, path: string, key: string): string {
  const words = (file.sources as Readonly<Record<string, string>>)[key];
  if (words === undefined) throw new DataError(fileName, path, `source "${key}" is not in the list of sources`);
  return words;
}

/** A range of the file as an assumed estimate. @throws DataError unless `low` ≤ `likely` ≤ `high` within `limits`. */
export function rangeFrom(
  file: CompressorFile,
  path: string,
  raw: RawRange | undefined,
  limits: readonly [number, number],
): SourcedEstimate {
  if (raw === undefined) throw new DataError(fileName, path, 'is missing');
  const { low, likely, high } = raw;
  const ordered = [low, likely, high].every(Number.isFinite) && low <= likely && likely <= high;
  if (!ordered) throw new DataError(fileName, path, 'needs finite numbers with low ≤ likely ≤ high');
  if (low < limits[0] || high > limits[1]) {
    throw new DataError(fileName, path, `leaves ${limits[0]} to ${limits[1]}`);
  }
  return { low, likely, high, origin: 'assumed', source: sourceWords(file, path, raw.source) };
}

/** An application's name from the file. @throws DataError for any other word. */
export function applicationFrom(path: string, word: string): Application {
  const found = applications.find((application) => application === word);
  if (found === undefined) throw new DataError(fileName, path, `"${word}" is not low, medium or high`);
  return found;
}
