// Loads data/compressors.json: checks every range, name and reference to a source once, when the module loads,
// and gives the rest of the folder plain typed records. A broken file is a DataError that names the place.

import shipped from '../../../data/compressors.json';
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

/** What is assumed of a machine whose make and size are unknown, each a range. Units as in CompressorModel. */
export interface MechanismRanges {
  readonly speed: SourcedEstimate;
  readonly clearanceRatio: SourcedEstimate;
  readonly reexpansionExponent: SourcedEstimate;
  readonly fillingFactor: SourcedEstimate;
  readonly compressionEfficiency: SourcedEstimate;
  readonly shellHeatShare: SourcedEstimate;
}

export interface Mechanism extends MechanismRanges {
  readonly title: string;
  /** Friction mean effective pressure [Pa] by the fluid the machine was made for. */
  readonly frictionPressure: ReadonlyMap<string, SourcedEstimate>;
}

function mechanismsFrom(file: CompressorFile): ReadonlyMap<string, Mechanism> {
  const result = new Map<string, Mechanism>();
  for (const [key, raw] of Object.entries(file.mechanisms)) {
    const path = `mechanisms.${key}`;
    const friction = new Map<string, SourcedEstimate>();
    for (const [fluid, range] of Object.entries(raw.frictionPressure)) {
      friction.set(fluid, rangeFrom(file, `${path}.frictionPressure.${fluid}`, range, [0, 1e6]));
    }
    result.set(key, {
      title: raw.title,
      speed: rangeFrom(file, `${path}.speed`, raw.speed, [1, 200]),
      clearanceRatio: rangeFrom(file, `${path}.clearanceRatio`, raw.clearanceRatio, [0, 0.5]),
      reexpansionExponent: rangeFrom(file, `${path}.reexpansionExponent`, raw.reexpansionExponent, [1, 2]),
      fillingFactor: rangeFrom(file, `${path}.fillingFactor`, raw.fillingFactor, [0.1, 1]),
      compressionEfficiency: rangeFrom(file, `${path}.compressionEfficiency`, raw.compressionEfficiency, [0.1, 1]),
      shellHeatShare: rangeFrom(file, `${path}.shellHeatShare`, raw.shellHeatShare, [0, 0.95]),
      frictionPressure: friction,
    });
  }
  return result;
}

function mechanismNamed(mechanisms: ReadonlyMap<string, Mechanism>, path: string, key: string): Mechanism {
  const found = mechanisms.get(key);
  if (found === undefined) throw new DataError(fileName, path, `mechanism "${key}" does not exist`);
  return found;
}

/** What differs with the fluid a machine was made for. */
export interface MadeForRanges {
  /** Displacement per revolution [m³]. */
  readonly displacement: SourcedEstimate;
  /** Charge of the whole appliance [kg], as built by its maker. */
  readonly charge: SourcedEstimate;
  readonly oil: string;
  readonly oilSource: string;
}

export interface ApplianceRecord {
  readonly name: string;
  readonly title: string;
  readonly note: string;
  readonly application: Application;
  readonly mechanism: Mechanism;
  readonly madeFor: ReadonlyMap<string, MadeForRanges>;
}

interface RawMadeFor {
  readonly displacement: RawRange;
  readonly charge: RawRange;
  readonly oil: string;
  readonly oilSource: string;
}

function appliancesFrom(file: CompressorFile, mechanisms: ReadonlyMap<string, Mechanism>): readonly ApplianceRecord[] {
  return file.appliances.map((raw, index) => {
    const path = `appliances.${index}`;
    const madeFor = new Map<string, MadeForRanges>();
    for (const [fluid, entry] of Object.entries(raw.madeFor) as [string, RawMadeFor | undefined][]) {
      if (entry === undefined) continue;
      const place = `${path}.madeFor.${fluid}`;
      madeFor.set(fluid, {
        displacement: rangeFrom(file, `${place}.displacement`, entry.displacement, [1e-6, 1e-4]),
        charge: rangeFrom(file, `${place}.charge`, entry.charge, [0.005, 2]),
        oil: entry.oil,
        oilSource: sourceWords(file, place, entry.oilSource),
      });
    }
    if (madeFor.size === 0) throw new DataError(fileName, path, 'needs at least one fluid it was made for');
    return {
      name: raw.name,
      title: raw.title,
      note: raw.note,
      application: applicationFrom(`${path}.application`, raw.application),
      mechanism: mechanismNamed(mechanisms, `${path}.mechanism`, raw.mechanism),
      madeFor,
    };
  });
}

function genericFrom(
  file: CompressorFile,
  mechanisms: ReadonlyMap<string, Mechanism>,
): ReadonlyMap<Application, Mechanism> {
  const result = new Map<Application, Mechanism>();
  for (const [index, raw] of file.generic.entries()) {
    const path = `generic.${index}`;
    result.set(applicationFrom(path, raw.application), mechanismNamed(mechanisms, path, raw.mechanism));
  }
  for (const application of applications) {
    if (!result.has(application)) throw new DataError(fileName, 'generic', `has no entry for ${application}`);
  }
  return result;
}

export interface LimitRecord {
  readonly application: Application;
  readonly evaporating: { readonly lowest: number; readonly highest: number };
  readonly condensing: { readonly continuous: number; readonly peak: number };
  readonly discharge: { readonly caution: number; readonly highest: number };
  readonly pressureRatio: { readonly caution: number; readonly highest: number };
  readonly source: string;
}

function limitsFrom(file: CompressorFile): readonly LimitRecord[] {
  return file.applicationLimits.map((raw, index) => {
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
    return {
      ...raw,
      application: applicationFrom(`${path}.application`, raw.application),
      source: sourceWords(file, path, raw.source),
    };
  });
}

export interface CompressorData {
  readonly appliances: readonly ApplianceRecord[];
  readonly generic: ReadonlyMap<Application, Mechanism>;
  /** Speed [1/s] of a two-pole induction motor by mains frequency [Hz]. */
  readonly speedsByMains: { readonly 50: SourcedEstimate; readonly 60: SourcedEstimate };
  readonly limits: readonly LimitRecord[];
}

/** The whole file as checked records. @throws DataError that names the place and the rule it breaks. */
export function readCompressors(file: CompressorFile): CompressorData {
  const mechanisms = mechanismsFrom(file);
  const data: CompressorData = {
    appliances: appliancesFrom(file, mechanisms),
    generic: genericFrom(file, mechanisms),
    speedsByMains: {
      50: rangeFrom(file, 'speedByMains.50', file.speedByMains['50'], [1, 50]),
      60: rangeFrom(file, 'speedByMains.60', file.speedByMains['60'], [1, 60]),
    },
    limits: limitsFrom(file),
  };
  requireUnique(
    'appliances',
    data.appliances.map((record) => record.name),
  );
  return data;
}

function requireUnique(path: string, names: readonly string[]): void {
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) throw new DataError(fileName, path, `"${twice}" stands twice`);
}

/** The file that ships with the project, checked once. */
export const compressorData: CompressorData = readCompressors(shipped);
