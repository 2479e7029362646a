// `kettlefin state`: states of a refrigerant, one or a batch.

import { parseArgs } from 'node:util';
import { answerLines } from './batch.ts';
import type { Command } from './command.ts';
import { exitCodes } from './exit-codes.ts';
import { answerStateLine } from './state.ts';

export const stateCommand: Command = {
  name: 'state',
  summary: 'thermodynamic states of a refrigerant from any supported pair of properties',
  usage: `kettlefin state --batch < requests > answers

One JSON request a line in, one JSON answer a line out, SI units, mass basis:
  {"refrigerant":"R134a","given":{"temperature":300,"pressure":100000}}
"given" is one of: temperature and pressure; pressure and enthalpy; pressure and entropy; temperature and quality;
pressure and quality; density and temperature. Enthalpy is 200 kJ/kg and entropy 1 kJ/(kg K) in saturated liquid at 0 °C.
A request that cannot be met answers {"error":{"code":…,"message":…}}; the batch goes on.`,
  async run(args, { input, output, errors }) {
    const { values } = parseArgs({ args: [...args], options: { batch: { type: 'boolean', default: false } } });
    if (!values.batch) {
      errors.write('kettlefin state reads requests line by line with --batch; kettlefin state --help shows one.\n');
      return exitCodes.unusableInput;
    }
    await answerLines(input, output, answerStateLine);
    return exitCodes.answered;
  },
};
