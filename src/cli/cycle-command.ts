// `kettlefin cycle`: the textbook vapour-compression cycle, one or a batch.

import { parseArgs } from 'node:util';
import { answerLines } from './batch.ts';
import type { Command } from './command.ts';
import { answerCycleLine } from './cycle.ts';
import { exitCodes } from './exit-codes.ts';

export const cycleCommand: Command = {
  name: 'cycle',
  summary: 'the textbook vapour-compression cycle with every state, COP and exergy loss',
  usage: `kettlefin cycle --batch < requests > answers

One JSON request a line in, one JSON answer a line out, SI units:
  {"refrigerant":"R134a","evaporating":263.15,"condensing":318.15,"superheat":5,"subcooling":5,"isentropicEfficiency":0.6}
evaporating and condensing are dew temperatures [K]; evaporatingPressure and condensingPressure [Pa], suctionTemperature,
liquidTemperature and dischargeTemperature [K] may replace their partner; deadState [K] is optional.
A request that cannot be met answers {"error":{"code":…,"message":…}}; the batch goes on.`,
  async run(args, { input, output, errors }) {
    const { values } = parseArgs({ args: [...args], options: { batch: { type: 'boolean', default: false } } });
    if (!values.batch) {
      errors.write('kettlefin cycle reads requests line by line with --batch; kettlefin cycle --help shows one.\n');
      return exitCodes.unusableInput;
    }
    await answerLines(input, output, answerCycleLine);
    return exitCodes.answered;
  },
};
