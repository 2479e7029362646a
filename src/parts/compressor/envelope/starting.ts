// Starting a hermetic machine: whether its motor can start against a pressure difference, how long the pressures take to
// become alike, how long it must rest, and what keeps liquid refrigerant out of its oil. Typical guides, from memory.

import type { Band, Formula } from '../../../quantities/index.ts';
import type { StartType } from '../classes/machine-data.ts';
import { productOf } from '../classes/ranges.ts';
import type { SourcedEstimate } from '../data.ts';
import { envelopeData } from './envelope-data.ts';

/**
 * What meters the refrigerant, as far as starting is concerned: a capillary tube lets the pressures become alike at rest, a
 * thermostatic valve closes and keeps them apart.
 */
export type RestingMeter = 'equalises' | 'closes' | 'unknown';

export interface StartingRequest {
  readonly startType: StartType;
  readonly meter: RestingMeter;
  /** UA of the shell [W/K]. */
  readonly shellConductance: Band;
}

export interface StartingNumbers {
  /** Whether the motor starts only against equalised pressures. */
  readonly lowTorque: 'yes' | 'no' | 'unknown';
  /** A low-torque start where the pressures stay apart: it would hum, draw its locked-rotor current and trip. */
  readonly startsAgainstPressure: 'no' | 'mayHaveTo' | 'hasTo';
  /** Time until the pressures are alike [s]; null where the valve keeps them apart or nothing is known of it. */
  readonly equalisation: SourcedEstimate | null;
  /** Rest between two runs [s]: for the pressures, for the protector and for a PTC to cool. */
  readonly minimumOffTime: SourcedEstimate;
  /** Electricity of a heater that keeps the resting dome warmer than what is around it [W]. */
  readonly crankcaseHeater: SourcedEstimate;
}

/** What starting asks of a machine. Source: typical application guides, from memory; each range carries its own words. */
export function startingNumbers({ startType, meter, shellConductance }: StartingRequest): StartingNumbers {
  const { equalisation, heaterDifference, starts } = envelopeData;
  const { lowTorque, minimumOffTime } = starts.get(startType)!;
  const heater = productOf([shellConductance, heaterDifference]);
  return {
    lowTorque,
    startsAgainstPressure: lowTorque === 'no' ? 'no' : againstPressure(lowTorque, meter),
    equalisation: meter === 'equalises' ? equalisation : null,
    minimumOffTime: meter === 'equalises' && lowTorque !== 'no' ? later(minimumOffTime, equalisation) : minimumOffTime,
    crankcaseHeater: { ...heater, origin: 'assumed', source: heaterDifference.source },
  };
}

function againstPressure(lowTorque: 'yes' | 'unknown', meter: RestingMeter): StartingNumbers['startsAgainstPressure'] {
  if (meter === 'equalises') return 'no';
  return lowTorque === 'yes' && meter === 'closes' ? 'hasTo' : 'mayHaveTo';
}

/** The longer of two rests, end by end. */
function later(one: SourcedEstimate, other: SourcedEstimate): SourcedEstimate {
  return {
    ...one,
    low: Math.max(one.low, other.low),
    likely: Math.max(one.likely, other.likely),
    high: Math.max(one.high, other.high),
  };
}

/**
 * Electricity that keeps a resting dome warmer than the air around it [W].
 *     P = UA ΔT
 * @param shellConductance  UA, from the shell to the air around it [W/K]
 * @param difference        ΔT, by how much it is to be warmer [K]
 * Source: steady heat loss of the shell; some 10 K is common practice, no source. Worked value: 1.2, 10 → 12 W.
 */
export function crankcaseHeaterPower(shellConductance: number, difference: number): number {
  return shellConductance * difference;
}

/** Formula records of this file. */
export const startingFormulas: readonly Formula[] = [
  {
    id: 'compressor.crankcaseHeaterPower',
    title: 'Heater that keeps a resting dome warm',
    result: { symbol: 'P', meaning: 'electricity of the heater', unit: 'W', quantity: 'electricPower' },
    expression: 'UA * dT',
    symbols: {
      UA: { meaning: 'conductance from the shell to the air around it', unit: 'W/K', quantity: 'thermalConductance' },
      dT: {
        meaning: 'by how much it is kept above its surroundings',
        unit: 'K',
        quantity: 'temperatureDifference',
      },
    },
    source: 'steady heat loss of the shell',
    validity: 'a dome at rest',
    file: 'src/parts/compressor/envelope/starting.ts',
    compute: (v) => crankcaseHeaterPower(v.UA!, v.dT!),
    examples: [
      { UA: 1.2, dT: 10 },
      { UA: 3.1, dT: 14 },
    ],
  },
];
