// `kettlefin check`: a design file to a verdict, for people or as JSON.

import {
  Assessor,
  exactStates,
  type Standing,
  type StatesFrom,
  tableStates,
  withoutCharge,
} from '../../assess/index.ts';
import { InputError } from '../../numerics/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import type { Command } from '../command.ts';
import { type ExitCode, exitCodes } from '../exit-codes.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { checkReport } from '../report/check-report.ts';

export const checkCommand: Command = {
  name: 'check',
  summary: 'the verdict on a design file, with watts, limits, accounts, cautions and what is assumed',
  usage: `kettlefin check FILE [--json] [--units metric|us] [--states exact|tables]

FILE            a design file, or - for standard input
--json          the whole assessment as JSON, SI units, keys as in docs/guide/assessment.schema.json
--units VIEW    metric (default) or us, for people; with --json for the sentence alone
--states FROM   states of the refrigerant from its equation, exact (default), or from tables made of it, for comparing

Exit codes: 0 carries the load; 1 the answer is no; 2 unusable input; 3 no solution; 4 uncertain.
A design that cannot be used is answered with every problem and its place in the file; with --json too.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, { json: 'flag', states: 'text', units: 'text' });
    const asked = {
      file: oneFile(positionals),
      json: flags.json,
      view: unitView(texts.units),
      states: statesFrom(texts.states),
    };
    return withDesignText(asked, streams, (text) => {
      const outcome = new Assessor({ states: asked.states }).assess(text, asked.view);
      if (!outcome.ok) return refuse(asked, outcome, streams);
      const { assessment } = outcome;
      streams.output.write(
        asked.json
          ? `${JSON.stringify(withoutCharge(assessment), null, 2)}\n`
          : `${checkReport(assessment, asked.view)}\n`,
      );
      return exitCodeOf(assessment.standing);
    });
  },
};

function statesFrom(word: string | undefined): StatesFrom {
  if (word === undefined || word === 'exact') return exactStates;
  if (word === 'tables') return tableStates;
  throw new InputError('--states', word, 'exact or tables', 'unknownChoice');
}

function exitCodeOf(standing: Standing): ExitCode {
  switch (standing) {
    case 'carriesLoad':
      return exitCodes.answered;
    case 'uncertain':
      return exitCodes.uncertain;
    case 'doNotBuild':
    case 'fallsShort':
    case 'notWorthIt':
      return exitCodes.no;
  }
}
