// Classes of appliances whose compressors people salvage: what each was made for and how large its machine and its charge
// usually are. Nothing here is a data sheet: a rating plate or a measurement replaces any of it.

import shipped from '../../../../data/compressors.json';
import { DataError, InputError } from '../../../numerics/index.ts';
import {
  type Application,
  applicationFrom,
  type CompressorFile,
  fileName,
  type RawRange,
  rangeFrom,
  type SourcedEstimate,
} from '../data.ts';

/** A kind of appliance. */
export interface ApplianceClass {
  readonly name: string;
  readonly title: string;
  readonly application: Application;
  /** One sentence worth knowing about machines of this kind. */
  readonly note: string;
  /** Refrigerants this kind of appliance was made for, of those this engine knows. */
  readonly fluids: readonly string[];
}

/** What differs with the fluid an appliance was made for. */
export interface ApplianceRanges {
  /** Displacement per revolution [m³]. */
  readonly displacement: SourcedEstimate;
  /** Charge of the whole appliance as built [kg]. */
  readonly charge: SourcedEstimate;
}

export interface ApplianceRecord extends ApplianceClass {
  readonly madeFor: ReadonlyMap<string, ApplianceRanges>;
}

interface RawMadeFor {
  readonly displacement: RawRange;
  readonly charge: RawRange;
}

/** The appliances of the file as checked records. @throws DataError that names the place and the rule it breaks. */
export function readAppliances(file: CompressorFile): readonly ApplianceRecord[] {
  const records = file.appliances.map((raw, index) => {
    const path = `appliances.${index}`;
    const madeFor = new Map<string, ApplianceRanges>();
    for (const [fluid, entry] of Object.entries(raw.madeFor) as [string, RawMadeFor | undefined][]) {
      if (entry === undefined) continue;
      const place = `${path}.madeFor.${fluid}`;
      madeFor.set(fluid, {
        displacement: rangeFrom(file, `${place}.displacement`, entry.displacement, [1e-6, 1e-4]),
        charge: rangeFrom(file, `${place}.charge`, entry.charge, [0.005, 2]),
      });
    }
    if (madeFor.size === 0) throw new DataError(fileName, path, 'needs at least one fluid it was made for');
    return {
      name: raw.name,
      title: raw.title,
      note: raw.note,
      application: applicationFrom(`${path}.application`, raw.application),
      fluids: [...madeFor.keys()],
      madeFor,
    };
  });
  const names = records.map(({ name }) => name);
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) throw new DataError(fileName, 'appliances', `"${twice}" stands twice`);
  return records;
}

/** Those of the file that ships with the project, checked once. */
export const applianceRecords: readonly ApplianceRecord[] = readAppliances(shipped);

export const applianceClasses: readonly ApplianceClass[] = applianceRecords;

export const applianceNames: readonly string[] = applianceRecords.map(({ name }) => name);

/** The appliance class of that name. @throws InputError code 'unknownAppliance' that lists the names accepted. */
export function applianceClass(name: string): ApplianceClass {
  return recordNamed(name);
}

/**
 * Size of the compressor and the charge of an appliance.
 * @param name     appliance class, one of applianceNames
 * @param madeFor  refrigerant the appliance was built for, such as 'R600a'
 * @returns        ranges in base SI, origin 'assumed', each with the words of its source
 * @throws InputError 'unknownAppliance', or 'fluidNotOfThisClass' where such appliances were not built for that fluid
 */
export function applianceRanges(name: string, madeFor: string): ApplianceRanges {
  const record = recordNamed(name);
  const found = record.madeFor.get(madeFor);
  if (found !== undefined) return found;
  const expected = `a fluid a ${record.title} was made for: ${record.fluids.join(', ')}`;
  throw new InputError('madeFor', madeFor, expected, 'fluidNotOfThisClass');
}

function recordNamed(name: string): ApplianceRecord {
  const found = applianceRecords.find((record) => record.name === name);
  if (found !== undefined) return found;
  throw new InputError('appliance', name, `one of ${applianceNames.join(', ')}`, 'unknownAppliance');
}
