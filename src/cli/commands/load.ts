// `kettlefin load`: what leaves the tank of a design file, by path. The machine is not computed and cannot fail it.

import { assessTankLoad, type TankLoadAnswer } from '../../assess/index.ts';
import { sayBand, type UnitView } from '../../quantities/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exitCodes } from '../exit-codes.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { printableLine } from '../report/printable.ts';
import {
  assumptionCount,
  assumptionsSection,
  findingsSection,
  influenceSection,
  tankSection,
} from '../report/report-sections.ts';
import { paragraph } from '../report/text-table.ts';

export const loadCommand: Command = {
  name: 'load',
  summary: 'the heat that the tank of a design file needs, with watts by path, whatever its machine does',
  usage: `kettlefin load FILE [--json] [--units metric|us]

FILE            a design file, or - for standard input; its machine must be described, but is not computed
--json          the load as JSON, SI units: tankLoad, tank (paths, gains, evaporation), influences, assumptions, findings
--units VIEW    metric (default) or us, for people

Exit codes: 0 answered; 2 unusable input; 3 no solution.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, { json: 'flag', units: 'text' });
    const asked = { file: oneFile(positionals), json: flags.json, view: unitView(texts.units) };
    return withDesignText(asked, streams, (text) => {
      const outcome = assessTankLoad(text);
      if (!outcome.ok) return refuse(asked, outcome, streams);
      streams.output.write(
        asked.json ? `${JSON.stringify(outcome.answer, null, 2)}\n` : `${loadReport(outcome.answer, asked.view)}\n`,
      );
      return exitCodes.answered;
    });
  },
};

/** The tank's load as a person reads it. */
export function loadReport(answer: TankLoadAnswer, view: UnitView): string {
  const { designName, tankLoad, tank, atmosphericPressure, assumptions } = answer;
  const sentence =
    tank.load.high < 0
      ? 'In the coldest spell the tank needs no heat: its pumps and lights give more than it loses.'
      : `In the coldest spell the tank needs ${sayBand(tankLoad, 'power', view)}, at an air pressure of ${sayBand(atmosphericPressure, 'pressure', view)}.`;
  return [
    printableLine(designName),
    paragraph(sentence),
    '',
    assumptionCount(assumptions.length),
    '',
    tankSection(tank, view),
    influenceSection(
      'What matters most for the heat needed',
      'the heat needed',
      answer.influences.map(({ loadAtLow, loadAtHigh, ...rest }) => ({ ...rest, ends: [loadAtLow, loadAtHigh] })),
      view,
    ),
    findingsSection('What the model of the tank leaves out', answer.findings, view),
    assumptionsSection(assumptions, undefined, view),
    paragraph(answer.caution),
  ].join('\n');
}
