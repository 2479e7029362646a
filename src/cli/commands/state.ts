// `kettlefin state`: states of a refrigerant, one from options for people or --json, or a batch.

import { sayStudyOnly } from '../../assess/index.ts';
import { caution } from '../../cautions/index.ts';
import { type StateInput, supportedPairs } from '../../matter/refrigerants/index.ts';
import { InputError, KettlefinError } from '../../numerics/index.ts';
import { noPositionals, readArguments, refrigerantGiven, requireBatchAlone, unitView } from '../arguments.ts';
import { answerLines } from '../batch.ts';
import { type Command, SaidError } from '../command.ts';
import { exitCodes } from '../exit-codes.ts';
import { airPressure, optionAt, type QuantityOption, quantitiesGiven, sayInOptionWords } from '../quantity-options.ts';
import { paragraph } from '../report/text-table.ts';
import { answerStateLine, sayState, type ToldState, toldState } from '../state.ts';

const quantityOptions: readonly QuantityOption[] = [
  { option: 'temperature', key: 'temperature', quantity: 'temperature' },
  { option: 'pressure', key: 'pressure', quantity: 'pressure' },
  { option: 'density', key: 'density', quantity: 'density' },
  { option: 'enthalpy', key: 'enthalpy', quantity: 'enthalpy' },
  { option: 'entropy', key: 'entropy', quantity: 'entropy' },
  { option: 'quality', key: 'quality', quantity: 'fraction' },
];

const options = {
  refrigerant: 'text',
  temperature: 'text',
  pressure: 'text',
  density: 'text',
  enthalpy: 'text',
  entropy: 'text',
  quality: 'text',
  altitude: 'text',
  units: 'text',
  json: 'flag',
  batch: 'flag',
} as const;

export const stateCommand: Command = {
  name: 'state',
  summary: 'states of a refrigerant from any supported pair of properties',
  usage: `kettlefin state --refrigerant R134a --temperature "20 °C" --quality 1 [--json] [--units metric|us]
kettlefin state --batch < requests > answers

One state from one pair, quantities as people write them:
  --temperature and --pressure    --pressure and --enthalpy    --pressure and --entropy
  --temperature and --quality     --pressure and --quality     --density and --temperature
  --enthalpy and --entropy        --temperature and --entropy
Optional:
  --altitude z    lets a pressure be a gauge pressure ("13 psig"), and shows the state's own
  --units VIEW    metric (default) or us, for people
  --json          SI units, full precision, keys as in a batch answer, with the caution; and "derived": Joule–Thomson
                  coefficient, isentropic exponent, expansion, compressibility and partial derivatives of a single phase;
                  and "methods": where viscosity, conductivity and surface tension come from, and what is an estimate

--batch: one JSON request a line in, one JSON answer a line out, SI units, mass basis:
  {"refrigerant":"R134a","given":{"temperature":300,"pressure":100000}}
"given" holds one of the pairs above. A request that cannot be met answers {"error":{"code":…,"message":…}}; the batch
goes on. Enthalpy is 200 kJ/kg and entropy 1 kJ/(kg K) in saturated liquid at 0 °C.

Exit codes: 0 answered; 2 unusable input; 3 no solution. A batch that was read to its end exits with 0.`,
  async run(args, { input, output }) {
    const { texts, flags, positionals } = readArguments(args, options);
    noPositionals(positionals);
    if (flags.batch) {
      requireBatchAlone(texts, flags);
      await answerLines(input, output, answerStateLine);
      return exitCodes.answered;
    }
    const view = unitView(texts.units);
    const named = refrigerantGiven(texts);
    const atmosphere = airPressure(texts.altitude);
    const given = quantitiesGiven(quantityOptions, texts, atmosphere);
    if (Object.keys(given).length === 0) {
      throw new InputError('A pair of properties', 'nothing', supportedPairs.join('; '), 'missing');
    }
    const told = answered(named, given as unknown as StateInput, view);
    const studyOnly = sayStudyOnly(told.name);
    const study = studyOnly === undefined ? '' : `${paragraph(studyOnly)}\n`;
    output.write(
      flags.json
        ? `${JSON.stringify(jsonOf(told, studyOnly), null, 2)}\n`
        : `${sayState(told, view, atmosphere)}\n\n${study}${paragraph(caution)}\n`,
    );
    return exitCodes.answered;
  },
};

function jsonOf({ name, answer, ...more }: ToldState, studyOnly: string | undefined) {
  return { caution, refrigerant: name, ...(studyOnly === undefined ? {} : { studyOnly }), ...answer, ...more };
}

function answered(named: string, given: StateInput, view: ReturnType<typeof unitView>): ToldState {
  try {
    return toldState(named, given);
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    throw new SaidError(error, sayInOptionWords(error, quantityOptions, view), optionAt(error, quantityOptions));
  }
}
