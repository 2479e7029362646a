// `kettlefin load`: what leaves the tank of a design file, by path. The machine is not computed and cannot fail it.

import { assessTankLoad } from '../../assess/index.ts';
import { InputError } from '../../numerics/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exitCodes } from '../exit-codes.ts';
import { type QuantityOption, quantitiesGiven } from '../quantity-options.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { loadReport } from '../report/load-report.ts';

export const loadCommand: Command = {
  name: 'load',
  summary: 'the heat that the tank of a design file needs, with watts by path, whatever its machine does',
  usage: `kettlefin load FILE [--fall DIFFERENCE] [--json] [--units metric|us]

FILE            a design file, or - for standard input; its machine must be described, but is not computed
--fall          how far the water falls without heat, "4 K" or "7 °F"; the time is told instead of that for 1, 2, 3 and 5 K
--json          the load as JSON, SI units: tankLoad, tank (paths, panels, months, falls, meter), heaterAccount, influences, assumptions, findings
--units VIEW    metric (default) or us, for people

Exit codes: 0 answered; 2 unusable input; 3 no solution.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, { json: 'flag', units: 'text', fall: 'text' });
    const asked = { file: oneFile(positionals), json: flags.json, view: unitView(texts.units) };
    const options = fallsAsked(texts.fall);
    return withDesignText(asked, streams, (text) => {
      const outcome = assessTankLoad(text, options);
      if (!outcome.ok) return refuse(asked, outcome, streams);
      streams.output.write(
        asked.json ? `${JSON.stringify(outcome.answer, null, 2)}\n` : `${loadReport(outcome.answer, asked.view)}\n`,
      );
      return exitCodes.answered;
    });
  },
};

/** How far the water is to fall, where it was asked [K]. */
const fallOption: QuantityOption = { option: 'fall', key: 'fall', quantity: 'temperatureDifference' };

function fallsAsked(text: string | undefined): { readonly falls?: readonly number[] } {
  const { fall } = quantitiesGiven([fallOption], { fall: text }, undefined);
  if (fall === undefined) return {};
  if (!(fall > 0)) throw new InputError('--fall', `"${text}"`, 'a difference above 0', 'outOfRange');
  return { falls: [fall] };
}
