// `kettlefin settle`: where the loop of a machine settles between a source and the water, without the tank's needs.

import { type AskedPlace, assessSettle } from '../../assess/index.ts';
import { InputError } from '../../numerics/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import { type Command, SaidError } from '../command.ts';
import { exitCodes } from '../exit-codes.ts';
import { optionAt, type QuantityOption, sayInOptionWords } from '../quantity-options.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { settleReport } from '../report/machine/settle-report.ts';
import { temperatureOption } from '../temperature-options.ts';

const temperatures = [
  { option: 'source', key: 'source', quantity: 'temperature' },
  { option: 'water', key: 'water', quantity: 'temperature' },
  { option: 'surroundings', key: 'surroundings', quantity: 'temperature' },
] as const satisfies readonly QuantityOption[];

export const settleCommand: Command = {
  name: 'settle',
  summary: 'where the loop settles: temperatures, pressures, heat, electricity, current, with ranges and limits',
  usage: `kettlefin settle FILE [--source T] [--water T] [--surroundings T] [--json] [--units metric|us]

FILE             a design file, or - for standard input; with --source and --water also a file of a machine alone:
                 { "formatVersion": 2, "machine": { … } }
--source T       what the evaporator takes heat from, in place of the coldest spell's; bare numbers are °C
--water T        water that is kept warm, in place of the design's
--surroundings T air around the shell, in place of what follows from where it stands
--json           SI units: heat, power, compressorCop, current, temperatures, pressures, points, limits, findings
--units VIEW     metric (default) or us, for people

Approaches, superheat and subcooling are those of the design. One machine, whatever their number.

Exit codes: 0 answered; 2 unusable input; 3 no solution.`,
  async run(args, streams) {
    const kinds = { source: 'text', water: 'text', surroundings: 'text', units: 'text', json: 'flag' } as const;
    const { texts, flags, positionals } = readArguments(args, kinds);
    const asked = { file: oneFile(positionals), json: flags.json, view: unitView(texts.units) };
    const bare: string[] = [];
    const place: AskedPlace = Object.fromEntries(
      temperatures.flatMap(({ option, key }) => {
        const text = texts[option];
        if (text === undefined) return [];
        const { value, isBare } = temperatureOption(`--${option}`, text);
        if (isBare) bare.push(`--${option}`);
        return [[key, value]];
      }),
    );
    return withDesignText(asked, streams, (text) => {
      const outcome = saying(() => assessSettle(text, place));
      if (!outcome.ok) return refuse(asked, outcome, streams);
      const { answer } = outcome;
      streams.output.write(
        asked.json ? `${JSON.stringify(answer, null, 2)}\n` : `${settleReport(answer, bare, asked.view)}\n`,
      );
      return exitCodes.answered;
    });

    function saying<Result>(run: () => Result): Result {
      try {
        return run();
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        throw new SaidError(error, sayInOptionWords(error, temperatures, asked.view), optionAt(error, temperatures));
      }
    }
  },
};
