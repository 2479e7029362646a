// Limits and starting numbers of machines in data/compressors.json, checked once when the module loads.

import shipped from '../../../../data/compressors.json';
import { DataError } from '../../../numerics/index.ts';
import { type StartType, startTypes } from '../classes/machine-data.ts';
import { type CompressorFile, fileName, rangeFrom, type SourcedEstimate, sourceWords } from '../data.ts';

/** A single bound with the words of its source. */
export interface SourcedBound {
  readonly bound: number;
  readonly source: string;
}

/** Where doubt begins, and what is not to be passed. */
export interface SourcedSteps {
  readonly caution: number;
  readonly beyond: number;
  readonly source: string;
}

export interface StartNumbers {
  /** Whether it starts only against equalised pressures. */
  readonly lowTorque: 'yes' | 'no' | 'unknown';
  /** Rest between two runs [s]. */
  readonly minimumOffTime: SourcedEstimate;
}

export interface EnvelopeData {
  readonly lowestPressureRatio: SourcedBound;
  /** Warmest gas at the inlet of the shell [K]. */
  readonly highestReturnGas: SourcedBound;
  /** Superheat at the inlet of the shell [K]: below `caution` drops of liquid may come along, below `beyond` they do. */
  readonly superheat: SourcedSteps;
  /** Mean wall temperature of the model [K]. */
  readonly wall: SourcedSteps;
  readonly continuousOverRatedCurrent: SourcedEstimate;
  readonly lockedRotorOverRatedCurrent: SourcedEstimate;
  readonly nameplatePowerFactor: SourcedEstimate;
  /** Time in which a capillary tube makes the pressures alike [s]. */
  readonly equalisation: SourcedEstimate;
  /** How far a heater keeps a resting dome above its surroundings [K]. */
  readonly heaterDifference: SourcedEstimate;
  readonly starts: ReadonlyMap<StartType, StartNumbers>;
}

/** These parts of the file as checked records. @throws DataError that names the place and the rule it breaks */
export function readEnvelope(file: CompressorFile): EnvelopeData {
  const { envelope, starting } = file;
  const source = (key: 'pressureRatio' | 'returnGas' | 'superheat' | 'wall') =>
    sourceWords(file, `${place}.${key}`, envelope[key].source);
  requireBetween(`${place}.pressureRatio.lowest`, envelope.pressureRatio.lowest, [1, 5]);
  requireBetween(`${place}.returnGas.highest`, envelope.returnGas.highest, [273.15, 373.15]);
  requireBetween(`${place}.superheat.lowest`, envelope.superheat.lowest, [0, envelope.superheat.caution]);
  requireBetween(`${place}.wall.caution`, envelope.wall.caution, [323.15, envelope.wall.highest]);
  const ratio = (key: 'continuousOverRatedCurrent' | 'lockedRotorOverRatedCurrent') =>
    rangeFrom(file, `${place}.${key}`, envelope[key], [1, 20]);
  return {
    lowestPressureRatio: { bound: envelope.pressureRatio.lowest, source: source('pressureRatio') },
    highestReturnGas: { bound: envelope.returnGas.highest, source: source('returnGas') },
    superheat: { caution: envelope.superheat.caution, beyond: envelope.superheat.lowest, source: source('superheat') },
    wall: { caution: envelope.wall.caution, beyond: envelope.wall.highest, source: source('wall') },
    continuousOverRatedCurrent: ratio('continuousOverRatedCurrent'),
    lockedRotorOverRatedCurrent: ratio('lockedRotorOverRatedCurrent'),
    nameplatePowerFactor: rangeFrom(file, `${place}.nameplatePowerFactor`, envelope.nameplatePowerFactor, [0.1, 1]),
    equalisation: rangeFrom(file, 'starting.equalisation', starting.equalisation, [1, 7200]),
    heaterDifference: rangeFrom(file, 'starting.heaterDifference', starting.heaterDifference, [1, 50]),
    starts: startsFrom(file),
  };
}

const place = 'envelope';

function startsFrom(file: CompressorFile): ReadonlyMap<StartType, StartNumbers> {
  return new Map(
    startTypes.map((name) => {
      const index = file.startTypes.findIndex((entry) => entry.name === name);
      const entry = file.startTypes[index];
      const path = `startTypes.${index}`;
      if (entry === undefined) throw new DataError(fileName, 'startTypes', `has no entry for ${name}`);
      const lowTorque = (['yes', 'no', 'unknown'] as const).find((word) => word === entry.lowTorque);
      if (lowTorque === undefined) throw new DataError(fileName, `${path}.lowTorque`, 'is not yes, no or unknown');
      const minimumOffTime = rangeFrom(file, `${path}.minimumOffTime`, entry.minimumOffTime, [1, 7200]);
      return [name, { lowTorque, minimumOffTime }];
    }),
  );
}

function requireBetween(path: string, value: number, [low, high]: readonly [number, number]): void {
  if (value >= low && value <= high) return;
  throw new DataError(fileName, path, `needs a number from ${low} to ${high}`);
}

/** The file that ships with the project, checked once. */
export const envelopeData: EnvelopeData = readEnvelope(shipped);
