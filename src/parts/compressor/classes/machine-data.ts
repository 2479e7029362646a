// Reads what data/compressors.json says of machines by mechanism, motor and dome: every range and name is checked once, when
// the module loads. A broken file is a DataError that names the place.

import shipped from '../../../../data/compressors.json';
import { DataError } from '../../../numerics/index.ts';
import { applications, type CompressorFile, fileName, rangeFrom, type SourcedEstimate } from '../data.ts';
import { type Era, requireRising } from './eras.ts';

/** Numbers of a mechanism that have one range for every size, fluid and mains. */
const mechanismNumbers = [
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

/** Outside of a dome without its feet [m]. */
export interface DomeSize {
  readonly height: SourcedEstimate;
  readonly diameter: SourcedEstimate;
}

export interface MachineData {
  readonly mechanisms: ReadonlyMap<string, MachineMechanism>;
  /** Those that may stand behind an appliance or, without one, behind an application. */
  readonly mechanismsOf: ReadonlyMap<string, readonly MachineMechanism[]>;
  /** Saturation pressure at 40 °C, dew, of each fluid that machines were made for [Pa]. */
  readonly referencePressures: ReadonlyMap<string, number>;
  readonly slip: Readonly<Record<'50' | '60' | 'inverter', SourcedEstimate>>;
  readonly motors: ReadonlyMap<StartType, MotorRanges & { readonly title: string }>;
  /** Motors whose start type is not known, by the last year of their making. */
  readonly unknownMotors: readonly (Era & { readonly motorEfficiency: SourcedEstimate })[];
  /** Swept volume over the room a dome takes up [-]. */
  readonly dome: Readonly<Record<'reciprocating' | 'rotary', SourcedEstimate>>;
  /** Domes of classes that differ from what is usual for their mechanism. */
  readonly domes: ReadonlyMap<string, DomeSize>;
}

/** These parts of the file as checked records. @throws DataError that names the place and the rule it breaks. */
export function readMachines(file: CompressorFile): MachineData {
  const mechanisms = mechanismsFrom(file);
  const slip = (key: keyof MachineData['slip']) => rangeFrom(file, `slip.${key}`, file.slip[key], slipEnds);
  const share = (key: keyof MachineData['dome']) =>
    rangeFrom(file, `dome.displacementShare.${key}`, file.dome.displacementShare[key], [1e-5, 0.1]);
  return {
    mechanisms,
    mechanismsOf: mechanismsByUse(file, mechanisms),
    referencePressures: referencePressuresFrom(file),
    slip: { 50: slip('50'), 60: slip('60'), inverter: slip('inverter') },
    motors: motorsFrom(file),
    unknownMotors: unknownMotorsFrom(file),
    dome: { reciprocating: share('reciprocating'), rotary: share('rotary') },
    domes: domesFrom(file),
  };
}

const slipEnds = [1e-5, 0.2] as const;
const motorEnds = [0.1, 0.99] as const;

function mechanismsFrom(file: CompressorFile): ReadonlyMap<string, MachineMechanism> {
  return new Map(
    Object.entries(file.mechanisms).map(([name, entry]) => {
      const number = (key: MechanismNumber) => rangeFrom(file, `mechanisms.${name}.${key}`, entry[key], possible[key]);
      const numbers = Object.fromEntries(
        [...mechanismNumbers, ...scaledNumbers].map((key) => [key, number(key)]),
      ) as Record<MechanismNumber, SourcedEstimate>;
      return [name, { name, title: entry.title, ...numbers }];
    }),
  );
}

function mechanismsByUse(
  file: CompressorFile,
  mechanisms: ReadonlyMap<string, MachineMechanism>,
): ReadonlyMap<string, readonly MachineMechanism[]> {
  const named = (path: string, keys: readonly string[]) => {
    if (keys.length === 0) throw new DataError(fileName, path, 'needs at least one mechanism');
    return keys.map((key) => {
      const found = mechanisms.get(key);
      if (found === undefined) throw new DataError(fileName, path, `mechanism "${key}" does not exist`);
      return found;
    });
  };
  return new Map([
    ...file.appliances.map(
      ({ name, mechanisms: keys }, index) => [name, named(`appliances.${index}.mechanisms`, keys)] as const,
    ),
    ...applications.map(
      (application) =>
        [
          application,
          named(`mechanismsByApplication.${application}`, file.mechanismsByApplication[application]),
        ] as const,
    ),
  ]);
}

function referencePressuresFrom({ referencePressures }: CompressorFile): ReadonlyMap<string, number> {
  const result = new Map<string, number>();
  for (const [fluid, pressure] of Object.entries(referencePressures)) {
    if (fluid === 'source') continue;
    if (typeof pressure !== 'number' || !(pressure > 0)) {
      throw new DataError(fileName, `referencePressures.${fluid}`, 'needs a positive pressure');
    }
    result.set(fluid, pressure);
  }
  return result;
}

function motorsFrom(file: CompressorFile): MachineData['motors'] {
  const result = new Map<StartType, MotorRanges & { readonly title: string }>();
  for (const name of startTypes) {
    const index = file.startTypes.findIndex((entry) => entry.name === name);
    const entry = file.startTypes[index];
    if (entry === undefined) throw new DataError(fileName, 'startTypes', `has no entry for ${name}`);
    const range = (key: keyof MotorRanges) => rangeFrom(file, `startTypes.${index}.${key}`, entry[key], motorEnds);
    result.set(name, {
      title: entry.title,
      motorEfficiency: range('motorEfficiency'),
      powerFactor: range('powerFactor'),
    });
  }
  return result;
}

function unknownMotorsFrom(file: CompressorFile): MachineData['unknownMotors'] {
  const path = 'unknownMotorByYear';
  requireRising(path, file.unknownMotorByYear);
  return file.unknownMotorByYear.map(({ until, motorEfficiency }, index) => ({
    until,
    motorEfficiency: rangeFrom(file, `${path}.${index}.motorEfficiency`, motorEfficiency, motorEnds),
  }));
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

/** The file that ships with the project, checked once. */
export const machineData: MachineData = readMachines(shipped);
