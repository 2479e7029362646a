// Stages: the compressor as eight numbers, and the loop's operating point at a source temperature.

import type { PlainDesign } from '../../design/index.ts';
import { type OperatingPoint, operatingPoint } from '../../loop/index.ts';
import { NoSolutionError, OutOfModelError } from '../../numerics/index.ts';
import { type CompressorModel, modelFromRating, type RatedMachine } from '../../parts/compressor/index.ts';
import type { StagedDesign } from './engine-assumptions.ts';
import type { StatesFrom } from './states.ts';

type PlainCompressor = PlainDesign['machine']['compressor'];

export interface CompressorResult {
  readonly model: CompressorModel;
  /** How a rating was turned into the model; undefined where displacement was given or assumed. */
  readonly rated: RatedMachine | undefined;
}

/** The compressor, whichever way it was described. A rating is identified on the fluid the machine was made for. */
export function compressorOf(compressor: PlainCompressor, states: StatesFrom): CompressorResult {
  const { speed, clearanceRatio, reexpansionExponent, fillingFactor, frictionPressure, shellHeatShare } = compressor;
  const assumed = { speed, clearanceRatio, reexpansionExponent, fillingFactor, frictionPressure, shellHeatShare };
  switch (compressor.kind) {
    case 'rating': {
      const rated = modelFromRating({
        fluid: states.fluid(compressor.madeFor),
        capacity: compressor.capacity,
        power: compressor.power,
        ratingPoint: compressor.ratingPoint,
        assumed,
      });
      return { model: rated.model, rated };
    }
    case 'salvaged':
    case 'displacement': {
      const { displacement, compressionEfficiency } = compressor;
      return { model: { ...assumed, displacement, compressionEfficiency }, rated: undefined };
    }
  }
}

/** What the loop needs of the design beside its compressor. */
export interface LoopSlice {
  readonly refrigerant: StagedDesign['machine']['refrigerant'];
  readonly states: StatesFrom;
  readonly waterTemperature: number;
  readonly exchangers: Pick<
    StagedDesign['exchangers'],
    'evaporatorApproach' | 'condenserApproach' | 'superheat' | 'subcooling'
  >;
}

/** The loop at one source temperature. @throws what loop/ throws where it has no operating point. */
export function operatingAt(
  { refrigerant, states, waterTemperature, exchangers }: LoopSlice,
  compressor: CompressorModel,
  sourceTemperature: number,
): OperatingPoint {
  return operatingPoint({
    fluid: states.fluid(refrigerant),
    compressor,
    sourceTemperature,
    waterTemperature,
    evaporatorApproach: exchangers.evaporatorApproach,
    condenserApproach: exchangers.condenserApproach,
    superheat: exchangers.superheat,
    subcooling: exchangers.subcooling,
  });
}

/** The loop at one source temperature, or null where physics or the model allow none. */
export function operatingOrNull(
  design: LoopSlice,
  compressor: CompressorModel,
  sourceTemperature: number,
): OperatingPoint | null {
  try {
    return operatingAt(design, compressor, sourceTemperature);
  } catch (error) {
    if (error instanceof NoSolutionError || error instanceof OutOfModelError) return null;
    throw error;
  }
}
