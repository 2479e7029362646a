// `kettlefin cycle`: the textbook vapour-compression cycle, one from options for people or --json, or a batch.

import { caution } from '../../cautions/index.ts';
import { type TextbookCycleRequest, textbookCycle } from '../../loop/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import { noPositionals, readArguments, refrigerantGiven, requireBatchAlone, unitView } from '../arguments.ts';
import { answerLines } from '../batch.ts';
import { type Command, SaidError } from '../command.ts';
import { answerCycleLine, sayCycle } from '../cycle.ts';
import { exitCodes } from '../exit-codes.ts';
import { airPressure, type QuantityOption, quantitiesGiven, sayInOptionWords } from '../quantity-options.ts';
import { paragraph } from '../report/text-table.ts';

const quantityOptions: readonly QuantityOption[] = [
  { option: 'evaporating', key: 'evaporating', quantity: 'temperature' },
  { option: 'evaporating-pressure', key: 'evaporatingPressure', quantity: 'pressure' },
  { option: 'condensing', key: 'condensing', quantity: 'temperature' },
  { option: 'condensing-pressure', key: 'condensingPressure', quantity: 'pressure' },
  { option: 'superheat', key: 'superheat', quantity: 'temperatureDifference' },
  { option: 'suction-temperature', key: 'suctionTemperature', quantity: 'temperature' },
  { option: 'subcooling', key: 'subcooling', quantity: 'temperatureDifference' },
  { option: 'liquid-temperature', key: 'liquidTemperature', quantity: 'temperature' },
  { option: 'efficiency', key: 'isentropicEfficiency', quantity: 'fraction' },
  { option: 'discharge-temperature', key: 'dischargeTemperature', quantity: 'temperature' },
  { option: 'dead-state', key: 'deadState', quantity: 'temperature' },
  { option: 'sink-temperature', key: 'sinkTemperature', quantity: 'temperature' },
  { option: 'source-temperature', key: 'sourceTemperature', quantity: 'temperature' },
];

const options = {
  refrigerant: 'text',
  evaporating: 'text',
  'evaporating-pressure': 'text',
  condensing: 'text',
  'condensing-pressure': 'text',
  superheat: 'text',
  'suction-temperature': 'text',
  subcooling: 'text',
  'liquid-temperature': 'text',
  efficiency: 'text',
  'discharge-temperature': 'text',
  'dead-state': 'text',
  'sink-temperature': 'text',
  'source-temperature': 'text',
  'reference-state': 'text',
  altitude: 'text',
  units: 'text',
  json: 'flag',
  batch: 'flag',
} as const;

/** Points of the cycle as the engine names them, and in words; the longer name first. */
const pointWords = {
  compressorOutletIsentropic: 'compressor outlet without losses',
  compressorInlet: 'compressor inlet',
  compressorOutlet: 'compressor outlet',
  condenserOutlet: 'condenser outlet',
  evaporatorInlet: 'evaporator inlet',
};

export const cycleCommand: Command = {
  name: 'cycle',
  summary: 'the textbook vapour-compression cycle with every state, COP and exergy loss',
  usage: `kettlefin cycle --refrigerant R134a --evaporating "-10 °C" --condensing "45 °C"
                --superheat "5 K" --subcooling "5 K" --efficiency 0.6 [--json] [--units metric|us]
kettlefin cycle --batch < requests > answers

One cycle, quantities as people write them. Of each line exactly one:
  --evaporating T   --evaporating-pressure p      dew temperature, or pressure
  --condensing T    --condensing-pressure p       dew temperature, or pressure
  --superheat ΔT    --suction-temperature T       from dew, at the compressor
  --subcooling ΔT   --liquid-temperature T        from bubble, at the condenser's outlet
  --efficiency η    --discharge-temperature T     isentropic efficiency
Optional:
  --dead-state T, --sink-temperature T, --source-temperature T    for the exergy account
  --reference-state NAME    iir (default), ashrae or normalBoilingPoint: the zero of enthalpy and entropy
  --altitude z      lets pressures be gauge pressures ("13 psig")
  --units VIEW      metric (default) or us, for people
  --json            SI units, full precision, keys as in a batch answer, with the caution

--batch: one JSON request a line in, one JSON answer a line out, SI units:
  {"refrigerant":"R134a","evaporating":263.15,"condensing":318.15,"superheat":5,"subcooling":5,"isentropicEfficiency":0.6}
evaporating and condensing are dew temperatures [K]; evaporatingPressure and condensingPressure [Pa], suctionTemperature,
liquidTemperature and dischargeTemperature [K] may replace their partner; deadState, sinkTemperature, sourceTemperature
[K] and referenceState are optional. A request that cannot be met answers {"error":{"code":…,"message":…}}; the batch
goes on.

Exit codes: 0 answered; 2 unusable input; 3 no solution. A batch that was read to its end exits with 0.`,
  async run(args, { input, output }) {
    const { texts, flags, positionals } = readArguments(args, options);
    noPositionals(positionals);
    if (flags.batch) {
      requireBatchAlone(texts, flags);
      await answerLines(input, output, answerCycleLine);
      return exitCodes.answered;
    }
    const view = unitView(texts.units);
    const named = refrigerantGiven(texts);
    const given = {
      refrigerant: named,
      ...quantitiesGiven(quantityOptions, texts, airPressure(texts.altitude)),
      ...(texts['reference-state'] === undefined ? {} : { referenceState: texts['reference-state'] }),
    };
    const cycle = answered(given as TextbookCycleRequest, view);
    output.write(
      flags.json
        ? `${JSON.stringify({ caution, ...cycle }, null, 2)}\n`
        : `${sayCycle(cycle, view)}\n\n${paragraph(caution)}\n`,
    );
    return exitCodes.answered;
  },
};

function answered(request: TextbookCycleRequest, view: ReturnType<typeof unitView>) {
  try {
    return textbookCycle(request);
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    throw new SaidError(error, sayInOptionWords(error, quantityOptions, view, pointWords));
  }
}
