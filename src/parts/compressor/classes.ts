// What is assumed of a compressor known only by the appliance it came out of, or only by the suction pressure level
// it was made for: ranges, each with the words of its source. Nothing here is a data sheet: a rating plate or a measurement
// replaces any of it. Public: applianceNames, applianceClasses, applianceClass, applianceRanges, compressorFluids,
// genericRanges, speedForMains.

import { InputError } from '../../numerics/index.ts';
import type { ApplianceRecord, Application, Mechanism, MechanismRanges, SourcedEstimate } from './data.ts';
import { applications, compressorData } from './data.ts';

/** A kind of appliance whose compressor people salvage. */
export interface ApplianceClass {
  readonly name: string;
  readonly title: string;
  readonly application: Application;
  /** How its compressor usually works: 'hermetic reciprocating, made for low back pressure'. */
  readonly mechanism: string;
  /** One sentence worth knowing about machines of this kind. */
  readonly note: string;
  /** Refrigerants this kind of appliance was made for, of those this engine knows. */
  readonly fluids: readonly string[];
}

/** Ranges for every parameter of CompressorModel except displacement; units as there. */
export interface CompressorRanges extends MechanismRanges {
  readonly frictionPressure: SourcedEstimate;
}

/** Ranges of an appliance class for one fluid it was made for. */
export interface ApplianceRanges extends CompressorRanges {
  /** Displacement per revolution [m³]. */
  readonly displacement: SourcedEstimate;
  /** Charge of the whole appliance as built [kg]. */
  readonly charge: SourcedEstimate;
  /** Oil usually found in it, in words. */
  readonly oil: string;
  readonly oilSource: string;
}

export const applianceNames: readonly string[] = compressorData.appliances.map((record) => record.name);

export const applianceClasses: readonly ApplianceClass[] = compressorData.appliances.map((record) => ({
  name: record.name,
  title: record.title,
  application: record.application,
  mechanism: record.mechanism.title,
  note: record.note,
  fluids: [...record.madeFor.keys()],
}));

/** Refrigerants that a machine may have been made for, so that genericRanges answers for any application. */
export const compressorFluids: readonly string[] = [
  ...(compressorData.generic.get(applications[0]!)?.frictionPressure.keys() ?? []),
].filter((fluid) => [...compressorData.generic.values()].every(({ frictionPressure }) => frictionPressure.has(fluid)));

/** The appliance class of that name. @throws InputError code 'unknownAppliance' that lists the names accepted. */
export function applianceClass(name: string): ApplianceClass {
  const found = applianceClasses.find((entry) => entry.name === name);
  if (found === undefined) throw unknownAppliance(name);
  return found;
}

/**
 * Ranges assumed of the compressor of an appliance.
 * @param name     appliance class, one of applianceNames
 * @param madeFor  refrigerant the appliance was built for, such as 'R600a'; decides displacement, charge, oil and friction
 * @returns        ranges in base SI, origin 'assumed', each with the words of its source
 * @throws InputError 'unknownAppliance', or 'fluidNotOfThisClass' where such appliances were not built for that fluid
 */
export function applianceRanges(name: string, madeFor: string): ApplianceRanges {
  const record = recordNamed(name);
  const byFluid = record.madeFor.get(madeFor);
  if (byFluid === undefined) {
    const accepted = [...record.madeFor.keys()].join(', ');
    throw new InputError(
      'madeFor',
      madeFor,
      `a fluid a ${record.title} was made for: ${accepted}`,
      'fluidNotOfThisClass',
    );
  }
  return { ...rangesOf(record.mechanism, madeFor), ...byFluid };
}

/**
 * Ranges assumed of any small hermetic machine made for that suction pressure level; no displacement and no charge,
 * because without the appliance nothing is known of its size.
 * @throws InputError for an unknown application, or a fluid without data (code 'fluidWithoutFriction')
 */
export function genericRanges(application: Application, madeFor: string): CompressorRanges {
  const mechanism = compressorData.generic.get(application);
  if (mechanism === undefined) throw new InputError('application', application, applications.join(', '));
  return rangesOf(mechanism, madeFor);
}

/** Speed [1/s] of a two-pole induction motor under load on 50 Hz or 60 Hz mains. Inverter machines differ. */
export function speedForMains(frequency: 50 | 60): SourcedEstimate {
  const found = compressorData.speedsByMains[frequency];
  if (found === undefined) throw new InputError('frequency', frequency, '50 or 60');
  return found;
}

function rangesOf(mechanism: Mechanism, madeFor: string): CompressorRanges {
  const frictionPressure = mechanism.frictionPressure.get(madeFor);
  if (frictionPressure === undefined) {
    const accepted = [...mechanism.frictionPressure.keys()].join(', ');
    throw new InputError('madeFor', madeFor, `one of ${accepted}`, 'fluidWithoutFriction');
  }
  const { speed, clearanceRatio, reexpansionExponent, fillingFactor, compressionEfficiency, shellHeatShare } =
    mechanism;
  return {
    speed,
    clearanceRatio,
    reexpansionExponent,
    fillingFactor,
    compressionEfficiency,
    shellHeatShare,
    frictionPressure,
  };
}

function recordNamed(name: string): ApplianceRecord {
  const found = compressorData.appliances.find((record) => record.name === name);
  if (found === undefined) throw unknownAppliance(name);
  return found;
}

function unknownAppliance(name: string): InputError {
  return new InputError('appliance', name, `one of ${applianceNames.join(', ')}`, 'unknownAppliance');
}
