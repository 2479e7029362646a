// `kettlefin load`: what leaves the tank of a design file, by path. The machine is not computed and cannot fail it.

import { assessLoadMap, assessTankLoad, assessWrapping } from '../../assess/index.ts';
import { loadMapCsv } from '../../charts/index.ts';
import { InputError } from '../../numerics/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import type { Command, Streams } from '../command.ts';
import { type ExitCode, exitCodes } from '../exit-codes.ts';
import { type QuantityOption, quantitiesGiven } from '../quantity-options.ts';
import { type Asked, refuse, withDesignText } from '../refusal.ts';
import { loadReport } from '../report/load-report.ts';
import { wrapReport } from '../report/wrap-report.ts';

export const loadCommand: Command = {
  name: 'load',
  summary: 'the heat that the tank of a design file needs, with watts by path, whatever its machine does',
  usage: `kettlefin load FILE [--fall DIFFERENCE | --wrap | --map] [--json] [--units metric|us]

FILE            a design file, or - for standard input; its machine must be described, but is not computed
--fall          how far the water falls without heat, "4 K" or "7 °F"; the time is told instead of that for 1, 2, 3 and 5 K
--wrap          what to wrap instead: each measure of the design, or the usual ones, alone and the next best in turn
--map           the heat needed as a table over room temperature, humidity and water temperature instead, as CSV
--json          the load as JSON, SI units: tankLoad, tank (paths, panels, months, falls, meter), heaterAccount, influences, assumptions, findings;
                with --wrap: asItIs, measures, inTurn, waterfall, withHeatPump, prices, lastInch; with --map: axes, columns, largestError
--units VIEW    metric (default) or us, for people

Exit codes: 0 answered; 2 unusable input; 3 no solution.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, {
      json: 'flag',
      wrap: 'flag',
      map: 'flag',
      units: 'text',
      fall: 'text',
    });
    const asked = { file: oneFile(positionals), json: flags.json, view: unitView(texts.units) };
    const options = fallsAsked(texts.fall);
    oneOfThese({ '--fall': texts.fall !== undefined, '--wrap': flags.wrap, '--map': flags.map });
    return withDesignText(asked, streams, (text) => {
      if (flags.wrap) return wrap(text, asked, streams);
      if (flags.map) return map(text, asked, streams);
      const outcome = assessTankLoad(text, options);
      if (!outcome.ok) return refuse(asked, outcome, streams);
      streams.output.write(
        asked.json ? `${JSON.stringify(outcome.answer, null, 2)}\n` : `${loadReport(outcome.answer, asked.view)}\n`,
      );
      return exitCodes.answered;
    });
  },
};

function wrap(text: string, asked: Asked, streams: Streams): ExitCode {
  const outcome = assessWrapping(text);
  if (!outcome.ok) return refuse(asked, outcome, streams);
  const { answer } = outcome;
  streams.output.write(asked.json ? `${JSON.stringify(answer, null, 2)}\n` : `${wrapReport(answer, asked.view)}\n`);
  return exitCodes.answered;
}

function map(text: string, asked: Asked, streams: Streams): ExitCode {
  const outcome = assessLoadMap(text);
  if (!outcome.ok) return refuse(asked, outcome, streams);
  const { answer } = outcome;
  streams.output.write(asked.json ? `${JSON.stringify(answer, null, 2)}\n` : loadMapCsv(answer, asked.view));
  return exitCodes.answered;
}

/** These options ask for different answers. */
function oneOfThese(given: Readonly<Record<string, boolean>>): void {
  const names = Object.keys(given).filter((name) => given[name]);
  if (names.length > 1) throw new InputError(names[1]!, `given with ${names[0]}`, 'one of the two', 'bothGiven');
}

/** How far the water is to fall, where it was asked [K]. */
const fallOption: QuantityOption = { option: 'fall', key: 'fall', quantity: 'temperatureDifference' };

function fallsAsked(text: string | undefined): { readonly falls?: readonly number[] } {
  const { fall } = quantitiesGiven([fallOption], { fall: text }, undefined);
  if (fall === undefined) return {};
  if (!(fall > 0)) throw new InputError('--fall', `"${text}"`, 'a difference above 0', 'outOfRange');
  return { falls: [fall] };
}
