// Reads what data/compressors.json says of machines by mechanism, motor, dome and year: every range, name and order of years
// is checked once, when the module loads. A broken file is a DataError that names the place.

import shipped from '../../../../data/compressors.json';
import { DataError } from '../../../numerics/index.ts';
import {
  applicationFrom,
  type CompressorFile,
  fileName,
  type RawRange,
  rangeFrom,
  type SourcedEstimate,
  sourceWords,
} from '../data.ts';
import type { Era } from './eras.ts';

/** Numbers of a mechanism that have one range for every size, fluid and mains. */
export const mechanismNumbers = [
  'clearanceRatio',
  'suctionHeatingUnits',
  'dischargeCoolingUnits',
  'leakageRatio',
  'proportionalLoss',
] as const;

/** Numbers of a mechanism from which the machine's own follow: velocities at 50 Hz [m/s], pressures over the reference pressure of the fluid [-], the dome [m], heat transfer on its outside [W/(m² K)]. */
const scaledNumbers = [
  'suctionVelocity',
  'dischargeVelocity',
  'frictionShare',
  'motorShare',
  'domeHeight',
  'domeDiameter',
  'shellFilm',
] as const;

export type MechanismNumber = (typeof mechanismNumbers)[number] | (typeof scaledNumbers)[number];

export interface MachineMechanism extends Readonly<Record<MechanismNumber, SourcedEstimate>> {
  readonly name: string;
  readonly title: string;
}

/** Ends that no machine leaves, by number; a slip of the pen in the file is caught by them. */
const possible: Readonly<Record<MechanismNumber, readonly [number, number]>> = {
  clearanceRatio: [1e-3, 0.2],
  suctionHeatingUnits: [1e-3, 10],
  dischargeCoolingUnits: [1e-3, 10],
  leakageRatio: [1e-8, 1e-2],
  proportionalLoss: [1e-3, 1],
  suctionVelocity: [1, 500],
  dischargeVelocity: [1, 2000],
  frictionShare: [1e-3, 1],
  motorShare: [1e-2, 3],
  domeHeight: [0.05, 1],
  domeDiameter: [0.05, 0.5],
  shellFilm: [1, 100],
};

/** How a single-phase motor is started and run. */
export const startTypes = [
  'unknown',
  'relay',
  'startCapacitor',
  'runCapacitor',
  'startAndRunCapacitor',
  'inverter',
] as const;

export type StartType = (typeof startTypes)[number];

export interface MotorRanges {
  readonly motorEfficiency: SourcedEstimate;
  readonly powerFactor: SourcedEstimate;
}

/** The fluid usual until a year, and those met beside it. */
export interface FluidEra extends Era {
  readonly fluid: string;
  readonly also: readonly string[];
}

export interface FluidHistory {
  readonly eras: readonly FluidEra[];
  readonly erasUnitedStates: readonly FluidEra[];
}

/** Outside of a dome without its feet [m]. */
export interface DomeSize {
  readonly height: SourcedEstimate;
  readonly diameter: SourcedEstimate;
}

export interface MachineData {
  readonly mechanisms: ReadonlyMap<string, MachineMechanism>;
  readonly referencePressures: ReadonlyMap<string, number>;
  readonly slip: Readonly<Record<'50' | '60' | 'inverter', SourcedEstimate>>;
  readonly motors: ReadonlyMap<StartType, MotorRanges & { readonly title: string }>;
  /** Motors whose start type is not known, by the last year of their making. */
  readonly unknownMotors: readonly { readonly until: number; readonly motorEfficiency: SourcedEstimate }[];
  readonly dome: {
    readonly reciprocating: SourcedEstimate;
    readonly rotary: SourcedEstimate;
  };
  /** Domes of classes that differ from what is usual for their mechanism. */
  readonly domes: ReadonlyMap<string, DomeSize>;
  readonly histories: ReadonlyMap<string, FluidHistory>;
  readonly anyHistory: FluidHistory;
  readonly historySource: string;
  /** Year taken where none is told. */
  readonly unknownYear: number;
  /** By appliance and by application. */
  readonly mechanismsOf: ReadonlyMap<string, readonly MachineMechanism[]>;
}

type RawMachines = CompressorFile['machines'];

/** The section of the file as checked records. @throws DataError that names the place and the rule it breaks. */
export function readMachines(file: CompressorFile): MachineData {
  const raw = file.machines;
  const mechanisms = mechanismsFrom(file, raw);
  const history = (place: string, eras: unknown) => erasFrom(place, eras as readonly FluidEra[], raw);
  return {
    mechanisms,
    referencePressures: referencePressuresFrom(raw),
    slip: {
      50: rangeFrom(file, 'machines.slip.50', raw.slip['50'], slipEnds),
      60: rangeFrom(file, 'machines.slip.60', raw.slip['60'], slipEnds),
      inverter: rangeFrom(file, 'machines.slip.inverter', raw.slip.inverter, slipEnds),
    },
    motors: motorsFrom(file, raw),
    unknownMotors: unknownMotorsFrom(file, raw),
    dome: {
      reciprocating: rangeFrom(
        file,
        'machines.dome.displacementShare.reciprocating',
        raw.dome.displacementShare.reciprocating,
        [1e-5, 0.1],
      ),
      rotary: rangeFrom(file, 'machines.dome.displacementShare.rotary', raw.dome.displacementShare.rotary, [1e-5, 0.1]),
    },
    domes: domesFrom(file),
    histories: new Map(
      file.appliances.map((appliance, index) => {
        const eras = history(`appliances.${index}.fluidsByYear`, appliance.fluidsByYear);
        const there = 'fluidsByYearUnitedStates' in appliance ? appliance.fluidsByYearUnitedStates : undefined;
        const erasUnitedStates =
          there === undefined ? eras : history(`appliances.${index}.fluidsByYearUnitedStates`, there);
        for (const era of [...eras, ...erasUnitedStates]) requireBuiltFor(`appliances.${index}`, appliance, era);
        return [appliance.name, { eras, erasUnitedStates }];
      }),
    ),
    anyHistory: {
      eras: history('machines.fluidsByYear.any', raw.fluidsByYear.any),
      erasUnitedStates: history('machines.fluidsByYear.anyUnitedStates', raw.fluidsByYear.anyUnitedStates),
    },
    historySource: sourceWords(file, 'machines.fluidsByYear.source', raw.fluidsByYear.source),
    unknownYear: raw.fluidsByYear.unknownYear,
    mechanismsOf: mechanismsByUse(file, mechanisms),
  };
}

const slipEnds = [1e-5, 0.2] as const;
const motorEnds = [0.1, 0.99] as const;

function mechanismsFrom(file: CompressorFile, raw: RawMachines): ReadonlyMap<string, MachineMechanism> {
  return new Map(
    Object.entries(raw.mechanisms).map(([name, entry]) => {
      const number = (key: MechanismNumber) =>
        rangeFrom(file, `machines.mechanisms.${name}.${key}`, entry[key], possible[key]);
      const numbers = Object.fromEntries(
        [...mechanismNumbers, ...scaledNumbers].map((key) => [key, number(key)]),
      ) as Record<MechanismNumber, SourcedEstimate>;
      return [name, { name, title: entry.title, ...numbers }];
    }),
  );
}

function referencePressuresFrom({ referencePressures }: RawMachines): ReadonlyMap<string, number> {
  const result = new Map<string, number>();
  for (const [fluid, pressure] of Object.entries(referencePressures)) {
    if (fluid === 'source') continue;
    if (typeof pressure !== 'number' || !(pressure > 0)) {
      throw new DataError(fileName, `machines.referencePressures.${fluid}`, 'needs a positive pressure');
    }
    result.set(fluid, pressure);
  }
  return result;
}

function motorsFrom(file: CompressorFile, raw: RawMachines): MachineData['motors'] {
  const result = new Map<StartType, MotorRanges & { readonly title: string }>();
  for (const name of startTypes) {
    const index = raw.startTypes.findIndex((entry) => entry.name === name);
    const entry = raw.startTypes[index];
    if (entry === undefined) throw new DataError(fileName, 'machines.startTypes', `has no entry for ${name}`);
    const range = (key: keyof MotorRanges, given: RawRange) =>
      rangeFrom(file, `machines.startTypes.${index}.${key}`, given, motorEnds);
    result.set(name, {
      title: entry.title,
      motorEfficiency: range('motorEfficiency', entry.motorEfficiency),
      powerFactor: range('powerFactor', entry.powerFactor),
    });
  }
  return result;
}

function domesFrom(file: CompressorFile): ReadonlyMap<string, DomeSize> {
  const result = new Map<string, DomeSize>();
  file.appliances.forEach((appliance, index) => {
    if (!('dome' in appliance) || appliance.dome === undefined) return;
    const { height, diameter } = appliance.dome;
    const path = `appliances.${index}.dome`;
    result.set(appliance.name, {
      height: rangeFrom(file, `${path}.height`, height, possible.domeHeight),
      diameter: rangeFrom(file, `${path}.diameter`, diameter, possible.domeDiameter),
    });
  });
  return result;
}

function unknownMotorsFrom(file: CompressorFile, raw: RawMachines): MachineData['unknownMotors'] {
  const path = 'machines.unknownMotorByYear';
  requireRising(path, raw.unknownMotorByYear);
  return raw.unknownMotorByYear.map(({ until, motorEfficiency }, index) => ({
    until,
    motorEfficiency: rangeFrom(file, `${path}.${index}.motorEfficiency`, motorEfficiency, motorEnds),
  }));
}

/** @throws DataError unless there is at least one entry and each ends in a later year than the one before it. */
function requireRising(path: string, entries: readonly { readonly until: number }[]): void {
  if (entries.length === 0) throw new DataError(fileName, path, 'needs at least one entry');
  entries.forEach(({ until }, index) => {
    if (until > (entries[index - 1]?.until ?? 0)) return;
    throw new DataError(fileName, `${path}.${index}.until`, 'needs a later year than the entry before');
  });
}

function erasFrom(path: string, eras: readonly FluidEra[], raw: RawMachines): readonly FluidEra[] {
  requireRising(path, eras);
  eras.forEach((era, index) => {
    const unknown = [era.fluid, ...era.also].find((fluid) => !(fluid in raw.referencePressures));
    if (unknown === undefined) return;
    throw new DataError(fileName, `${path}.${index}`, `"${unknown}" has no reference pressure`);
  });
  return eras;
}

function requireBuiltFor(path: string, appliance: { readonly madeFor: object }, era: FluidEra): void {
  const missing = [era.fluid, ...era.also].find((fluid) => !(fluid in appliance.madeFor));
  if (missing !== undefined) throw new DataError(fileName, path, `names ${missing} by year but not under madeFor`);
}

/** Mechanisms that may stand behind an appliance or, without one, behind an application. */
function mechanismsByUse(
  file: CompressorFile,
  mechanisms: ReadonlyMap<string, MachineMechanism>,
): ReadonlyMap<string, readonly MachineMechanism[]> {
  const named = (path: string, key: string): readonly MachineMechanism[] => {
    const keys = key === 'reciprocatingOrRotary' ? ['reciprocatingHigh', 'rotary'] : [key];
    return keys.map((each) => {
      const found = mechanisms.get(each);
      if (found === undefined) throw new DataError(fileName, path, `mechanism "${each}" does not exist`);
      return found;
    });
  };
  return new Map([
    ...file.appliances.map(
      ({ name, mechanism }, index) => [name, named(`appliances.${index}.mechanism`, mechanism)] as const,
    ),
    ...file.generic.map(
      ({ application, mechanism }, index) =>
        [applicationFrom(`generic.${index}`, application), named(`generic.${index}.mechanism`, mechanism)] as const,
    ),
  ]);
}

/** The file that ships with the project, checked once. */
export const machineData: MachineData = readMachines(shipped);
