// The options of `kettlefin cycle` that say what is asked: quantities as people write them, the zero of enthalpy in words,
// and a second cycle out of a file; and the way back, what is wrong with a request in the words that were typed.

import type { Readable } from 'node:stream';
import { type TextbookCycle, type TextbookCycleRequest, textbookCycle } from '../../loop/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { refrigerantGiven } from '../arguments.ts';
import { SaidError } from '../command.ts';
import { fileTitle, readDesignText } from '../input.ts';
import { airPressure, optionAt, type QuantityOption, quantitiesGiven, sayInOptionWords } from '../quantity-options.ts';
import { parsedRequest } from '../request-line.ts';
import { errorSentence } from '../say-error.ts';
import { referenceStateGiven } from './reference-state.ts';

export const quantityOptions = [
  { option: 'evaporating', key: 'evaporating', quantity: 'temperature' },
  { option: 'evaporating-pressure', key: 'evaporatingPressure', quantity: 'pressure' },
  { option: 'condensing', key: 'condensing', quantity: 'temperature' },
  { option: 'condensing-pressure', key: 'condensingPressure', quantity: 'pressure' },
  { option: 'superheat', key: 'superheat', quantity: 'temperatureDifference' },
  { option: 'suction-temperature', key: 'suctionTemperature', quantity: 'temperature' },
  { option: 'suction-quality', key: 'suctionQuality', quantity: 'fraction' },
  { option: 'suction-pressure', key: 'suctionPressure', quantity: 'pressure' },
  { option: 'subcooling', key: 'subcooling', quantity: 'temperatureDifference' },
  { option: 'liquid-temperature', key: 'liquidTemperature', quantity: 'temperature' },
  { option: 'liquid-pressure', key: 'liquidPressure', quantity: 'pressure' },
  { option: 'efficiency', key: 'isentropicEfficiency', quantity: 'fraction' },
  { option: 'discharge-temperature', key: 'dischargeTemperature', quantity: 'temperature' },
  { option: 'exchanger-effectiveness', key: 'heatExchangerEffectiveness', quantity: 'fraction' },
  { option: 'suction-temperature-after-exchanger', key: 'suctionTemperatureAfterExchanger', quantity: 'temperature' },
  { option: 'evaporator-outlet-temperature', key: 'evaporatorOutletTemperature', quantity: 'temperature' },
  { option: 'mass-flow', key: 'massFlow', quantity: 'massFlow' },
  { option: 'cooling-capacity', key: 'coolingCapacity', quantity: 'power' },
  { option: 'heating-capacity', key: 'heatingCapacity', quantity: 'power' },
  { option: 'compressor-power', key: 'compressorPower', quantity: 'electricPower' },
  { option: 'displacement', key: 'displacement', quantity: 'volumeFlow' },
  { option: 'volumetric-efficiency', key: 'volumetricEfficiency', quantity: 'fraction' },
  { option: 'dead-state', key: 'deadState', quantity: 'temperature' },
  { option: 'sink-temperature', key: 'sinkTemperature', quantity: 'temperature' },
  { option: 'source-temperature', key: 'sourceTemperature', quantity: 'temperature' },
] as const satisfies readonly QuantityOption[];

type QuantityOptionName = (typeof quantityOptions)[number]['option'];

/** All options of a request; each has a value. */
export const requestOptions = {
  refrigerant: 'text',
  'reference-state': 'text',
  altitude: 'text',
  ...(Object.fromEntries(quantityOptions.map(({ option }) => [option, 'text'])) as Record<QuantityOptionName, 'text'>),
} as const;

export type RequestTexts = Readonly<Partial<Record<keyof typeof requestOptions, string>>>;

/** Points of the cycle as the engine names them, and in words; the longer name first. */
const pointWords = {
  compressorOutletIsentropic: 'compressor outlet without losses',
  compressorInlet: 'compressor inlet',
  compressorOutlet: 'compressor outlet',
  condenserOutlet: 'condenser outlet',
  evaporatorInlet: 'evaporator inlet',
  evaporatorOutlet: 'evaporator outlet',
  expansionInlet: 'expansion inlet',
};

/** A cycle and what it was asked with. */
export interface AskedCycle {
  readonly request: TextbookCycleRequest;
  readonly cycle: TextbookCycle;
}

/** The cycle that the options ask for. @throws SaidError or InputError in the words of the options */
export function cycleFromOptions(texts: RequestTexts, view: UnitView): AskedCycle {
  const request = {
    refrigerant: refrigerantGiven(texts),
    ...quantitiesGiven(quantityOptions, texts, airPressure(texts.altitude)),
    ...(texts['reference-state'] === undefined
      ? {}
      : { referenceState: referenceStateGiven(texts['reference-state']) }),
  } as TextbookCycleRequest;
  try {
    return { request, cycle: textbookCycle(request) };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    const sentence = sayInOptionWords(error, quantityOptions, view, pointWords);
    throw new SaidError(error, sentence, optionAt(error, quantityOptions));
  }
}

/**
 * A second cycle, from a file that holds one request as a line of a batch does. What is wrong with it is told in its own
 * words: the keys and the base SI of the file.
 * @param file   its path, or - for standard input
 * @param input  standard input
 * @throws SaidError naming the file and the key, InputError where the file cannot be read
 */
export async function cycleFromFile(file: string, input: Readable): Promise<AskedCycle> {
  const text = await readDesignText(file, input);
  try {
    const request = parsedRequest(text, 'its text') as TextbookCycleRequest;
    return { request, cycle: textbookCycle(request) };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    throw new SaidError(error, `In the second cycle, ${fileTitle(file)}: ${errorSentence(error)}`);
  }
}
