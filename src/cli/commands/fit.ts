// `kettlefin fit`: how well a machine is known by what was printed and measured of it.

import { assessFit } from '../../assess/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exitCodes } from '../exit-codes.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { fitReport } from '../report/machine/fit-report.ts';

export const fitCommand: Command = {
  name: 'fit',
  summary: 'what is left at each value given of a machine, which of them do not fit, ten coefficients of its tables',
  usage: `kettlefin fit FILE [--json] [--units metric|us]

FILE            a design file, a file of a machine alone { "formatVersion": 2, "machine": { … } }, or - for standard input
--json          SI units: numbers (before and after), residuals, scatter, coefficients, findings
--units VIEW    metric (default) or us, for people

A table of ten points and more, at four evaporating and four condensing temperatures, gets ten coefficients too.

Exit codes: 0 answered; 2 unusable input; 3 no solution.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, { units: 'text', json: 'flag' });
    const asked = { file: oneFile(positionals), json: flags.json, view: unitView(texts.units) };
    return withDesignText(asked, streams, (text) => {
      const outcome = assessFit(text);
      if (!outcome.ok) return refuse(asked, outcome, streams);
      const { answer } = outcome;
      streams.output.write(asked.json ? `${JSON.stringify(answer, null, 2)}\n` : `${fitReport(answer, asked.view)}\n`);
      return exitCodes.answered;
    });
  },
};
