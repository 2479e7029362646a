// `kettlefin cycle`: the textbook vapour-compression cycle, one from options for people or --json, beside it a second one
// out of a file, both as a picture; or a batch.

import { sayStudyOnly } from '../../assess/index.ts';
import { caution } from '../../cautions/index.ts';
import { statesCsv } from '../../charts/index.ts';
import { InputError } from '../../numerics/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { noPositionals, readArguments, requireBatchAlone, unitView } from '../arguments.ts';
import { answerLines } from '../batch.ts';
import type { Command } from '../command.ts';
import { answerCycleLine } from '../cycle/answer-line.ts';
import { cycleHandIn } from '../cycle/hand-in.ts';
import { type AskedCycle, cycleFromFile, cycleFromOptions, requestOptions } from '../cycle/options.ts';
import { cyclePicture, planeGiven } from '../cycle/picture.ts';
import { sayCycle, sayTwoCycles } from '../cycle/say.ts';
import { exitCodes } from '../exit-codes.ts';
import { fileTitle } from '../input.ts';
import { standardOutput, writeNewFile } from '../output-file.ts';
import { paragraph } from '../report/text-table.ts';

const options = {
  ...requestOptions,
  second: 'text',
  svg: 'text',
  diagram: 'text',
  force: 'flag',
  working: 'flag',
  csv: 'flag',
  units: 'text',
  json: 'flag',
  batch: 'flag',
} as const;

export const cycleCommand: Command = {
  name: 'cycle',
  summary: 'the textbook vapour-compression cycle with every state, COP and exergy loss',
  usage: `kettlefin cycle --refrigerant R134a --evaporating "-10 °C" --condensing "45 °C"
                --superheat "5 K" --subcooling "5 K" --efficiency 0.6 [--json] [--units metric|us]
kettlefin cycle --batch < requests > answers

One cycle, quantities as people write them. Of each line exactly one:
  --evaporating T   --evaporating-pressure p      dew temperature, or pressure, at the evaporator inlet
  --condensing T    --condensing-pressure p       dew temperature, or pressure, at the compressor outlet
  --superheat ΔT    --suction-temperature T       from dew, at the compressor; --suction-quality x for wet gas
  --subcooling ΔT   --liquid-temperature T        from bubble, at the condenser's outlet
  --efficiency η    --discharge-temperature T     isentropic efficiency
Pressure lost on the way (absent: none):
  --suction-pressure p    at the compressor inlet
  --liquid-pressure p     at the condenser outlet
Heat exchanger between liquid and suction gas (absent: none), one of:
  --exchanger-effectiveness ε              on enthalpy: q = ε (h(p_e, T_liquid) - h(evaporator outlet))
  --suction-temperature-after-exchanger T  of the gas it sends to the compressor
  With it --superheat, or --evaporator-outlet-temperature T, is that of the gas out of the evaporator.
Flow, for capacities and losses per second, one of:
  --mass-flow m   --cooling-capacity Q   --heating-capacity Q   --compressor-power W (of the shaft into the gas)
  --displacement V (swept per time), with --volumetric-efficiency η (absent: 1, and the answer says so)
Optional:
  --dead-state T, --sink-temperature T, --source-temperature T    for the exergy account
  --reference-state WORDS   "200 kJ/kg at 0 °C" (default), "zero at -40 °C" or "normal boiling point":
                            the zero of enthalpy and entropy; iir, ashrae, normalBoilingPoint for short
  --altitude z      lets pressures be gauge pressures ("13 psig")
  --second FILE     a second cycle beside it: FILE holds one request as a line of a batch does; - for standard input
  --svg FILE        draws the diagram as an SVG picture, of two cycles over one another; - for standard output
  --diagram NAME    pressure-enthalpy (default) or temperature-entropy
  --force           lets --svg replace a file
  --working         every state and every result step by step, each with its formula and the numbers put in
  --csv             the states as comma-separated values, in the units of the view
  --units VIEW      metric (default) or us, for people
  --json            SI units, full precision, keys as in a batch answer, with the caution

--batch: one JSON request a line in, one JSON answer a line out, SI units:
  {"refrigerant":"R134a","evaporating":263.15,"condensing":318.15,"superheat":5,"subcooling":5,"isentropicEfficiency":0.6}
evaporating and condensing are dew temperatures [K]; evaporatingPressure and condensingPressure [Pa], suctionTemperature,
liquidTemperature and dischargeTemperature [K] or suctionQuality may replace their partner. Optional: suctionPressure,
liquidPressure [Pa]; heatExchangerEffectiveness or suctionTemperatureAfterExchanger [K], and evaporatorOutletTemperature
[K]; one of massFlow [kg/s], coolingCapacity, heatingCapacity, compressorPower [W], displacement [m³/s] with
volumetricEfficiency; deadState, sinkTemperature, sourceTemperature [K] and referenceState. A request that cannot be met
answers {"error":{"code":…,"message":…}}; the batch goes on.

Exit codes: 0 answered; 2 unusable input; 3 no solution. A batch that was read to its end exits with 0.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, options);
    noPositionals(positionals);
    if (flags.batch) {
      requireBatchAlone(texts, flags);
      await answerLines(streams.input, streams.output, answerCycleLine);
      return exitCodes.answered;
    }
    const view = unitView(texts.units);
    const shape = shapeAsked(texts, flags);
    const picture = pictureAsked(texts, flags);
    const first = cycleFromOptions(texts, view);
    const second = texts.second === undefined ? undefined : await cycleFromFile(texts.second, streams.input);
    if (picture !== undefined) {
      const text = cyclePicture(first, second, picture.plane, view);
      if (picture.file === standardOutput) {
        streams.output.write(text);
        return exitCodes.answered;
      }
      await writeNewFile(picture.file, text, flags.force);
    }
    if (shape === 'csv') {
      streams.output.write(statesCsv(first.cycle.points, view, first.request.referenceState ?? 'iir'));
      return exitCodes.answered;
    }
    if (shape === 'working') {
      streams.output.write(`${cycleHandIn(first, texts, view)}\n${paragraph(caution)}\n`);
      return exitCodes.answered;
    }
    const drawn = picture === undefined ? '' : `The diagram is drawn in ${fileTitle(picture.file)}.\n\n`;
    streams.output.write(
      flags.json ? asJson(first, second) : `${asText(first, second, view)}\n\n${drawn}${paragraph(caution)}\n`,
    );
    return exitCodes.answered;
  },
};

/** The working or the states alone, of one cycle. */
function shapeAsked(
  { second, svg }: { readonly second?: string; readonly svg?: string },
  { working, csv, json }: { readonly working: boolean; readonly csv: boolean; readonly json: boolean },
): 'working' | 'csv' | undefined {
  const shape = working ? 'working' : csv ? 'csv' : undefined;
  if (shape === undefined) return undefined;
  const others = {
    '--csv': csv && working,
    '--json': json,
    '--second': second !== undefined,
    '--svg': svg !== undefined,
  };
  const other = Object.entries(others).find(([, isGiven]) => isGiven)?.[0];
  if (other === undefined) return shape;
  throw new InputError(other, 'this option', `--${shape} alone: it writes the answer of one cycle`, 'bothGiven');
}

/** What shall be drawn, and where; undefined where nothing shall. */
function pictureAsked(
  { svg, diagram }: { readonly svg?: string; readonly diagram?: string },
  { force, json }: { readonly force: boolean; readonly json: boolean },
) {
  if (svg === undefined) {
    const lone = diagram !== undefined ? '--diagram' : force ? '--force' : undefined;
    if (lone !== undefined) throw new InputError(lone, 'this option', '--svg FILE beside it', 'bothGiven');
    return undefined;
  }
  if (svg === '') throw new InputError('--svg', 'nothing', 'the path of a file, or - for standard output', 'missing');
  if (svg === standardOutput && json) {
    throw new InputError('--json', 'this option', '--svg - alone: both would write to the output', 'bothGiven');
  }
  return { file: svg, plane: planeGiven(diagram) };
}

function asJson({ cycle }: AskedCycle, second: AskedCycle | undefined): string {
  const studyOnly = sayStudyOnly(cycle.refrigerant);
  const study = studyOnly === undefined ? {} : { studyOnly };
  const answer = { caution, ...study, ...cycle, ...(second === undefined ? {} : { second: second.cycle }) };
  return `${JSON.stringify(answer, null, 2)}\n`;
}

function asText({ cycle }: AskedCycle, second: AskedCycle | undefined, view: UnitView): string {
  return second === undefined ? sayCycle(cycle, view) : sayTwoCycles(cycle, second.cycle, view);
}
