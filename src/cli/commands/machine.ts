// `kettlefin machine`: what a machine does between two temperatures, on a stated basis; or the study of the machine of a design.

import {
  assessMachine,
  assessMachinePoints,
  type MachinePoint,
  type MachineStudy,
  readMachine,
  type UnansweredPoint,
} from '../../assess/index.ts';
import { InputError } from '../../numerics/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import { type Command, SaidError, type Streams } from '../command.ts';
import { type ExitCode, exitCodes } from '../exit-codes.ts';
import { optionAt, type QuantityOption, quantitiesGiven, sayInOptionWords } from '../quantity-options.ts';
import { type Asked, refuse, withDesignText } from '../refusal.ts';
import { machineReport } from '../report/machine/machine-report.ts';
import { machinePointReport, type PointNotes, unansweredReport } from '../report/machine/point-report.ts';
import { type TypedPair, temperatureOption, temperaturePair } from '../temperature-options.ts';

const options = {
  at: 'list',
  'return-gas': 'text',
  superheat: 'text',
  liquid: 'text',
  subcooling: 'text',
  surroundings: 'text',
  frequency: 'text',
  voltage: 'text',
  refrigerant: 'text',
  units: 'text',
  working: 'flag',
  json: 'flag',
} as const;

/** Temperatures of the basis; a number without a unit is taken in °C or K, which the answer says. */
const temperatures = [
  { option: 'return-gas', key: 'returnGas', quantity: 'temperature' },
  { option: 'superheat', key: 'superheat', quantity: 'temperatureDifference' },
  { option: 'liquid', key: 'liquid', quantity: 'temperature' },
  { option: 'subcooling', key: 'subcooling', quantity: 'temperatureDifference' },
  { option: 'surroundings', key: 'surroundings', quantity: 'temperature' },
] as const satisfies readonly QuantityOption[];

const mains: readonly QuantityOption[] = [
  { option: 'frequency', key: 'frequency', quantity: 'mainsFrequency' },
  { option: 'voltage', key: 'voltage', quantity: 'voltage' },
];

type Texts = Readonly<Partial<Record<string, string>>>;

export const machineCommand: Command = {
  name: 'machine',
  summary: 'what a compressor does between two temperatures, its limits, remedies, how many, other fluids',
  usage: `kettlefin machine FILE --at "EVAPORATING, CONDENSING" [--at …] [--return-gas T | --superheat D]
                  [--liquid T | --subcooling D] [--surroundings T] [--frequency F] [--voltage U]
                  [--refrigerant NAME] [--working] [--json] [--units metric|us]
kettlefin machine FILE [--json] [--units metric|us]

FILE            a design file, or - for standard input; with --at also a file of a machine alone: { "formatVersion": 2, "machine": { … } }
--at "E, C"     dew temperatures, as often as wanted: "-23.3, 54.4", "-10 °F, 110 °F", "−10 °C; 45 °C"; bare numbers are °C
--return-gas T, --superheat D
                gas at the inlet of the shell, or how far it is above the evaporating dew temperature
--liquid T, --subcooling D
                liquid before the valve, or how far it is below the condensing bubble temperature
--surroundings T
                air around the shell
--frequency F, --voltage U
                mains, "60 Hz" and "115 V"
--refrigerant   another fluid in it, for study
--working       every number of a point step by step, each with its formula and the numbers put in: back to what was given
--json          SI units; with one --at one object, with several { "points": [ … ] }; without --at the study of the machine
--units VIEW    metric (default) or us, for people

What is not asked is taken from what is known of the machine itself (ratings, coefficients, tables); where nothing is, from
the rating point usual for its application. The answer says of each value where it is from.

Without --at: the machine of a design over all temperatures, its limits, what would help it, how many the tank needs,
other fluids in it, and what its start asks for.

Of several points those without an answer say why in their place.

Exit codes: 0 answered; 2 unusable input; 3 no solution, at none of the points.`,
  async run(args, streams) {
    const { texts, lists, flags, positionals } = readArguments(args, options);
    const asked = { file: oneFile(positionals), json: flags.json, view: unitView(texts.units), working: flags.working };
    const pairs = lists.at.map((text) => temperaturePair('--at', text));
    if (pairs.length === 0) refuseBasis(texts, flags.working);
    const basis = basisGiven(texts);
    return withDesignText(asked, streams, (text) =>
      pairs.length === 0 ? study(text, asked, streams) : points(text, pairs, basis, texts, asked, streams),
    );
  },
};

/** `working`: with the steps behind each number. */
interface AskedPoint extends Asked {
  readonly working: boolean;
}

interface GivenBasis {
  readonly values: Readonly<Record<string, number>>;
  /** Options whose number had no unit. */
  readonly bare: readonly string[];
}

function basisGiven(texts: Texts): GivenBasis {
  const values: Record<string, number> = { ...quantitiesGiven(mains, texts, undefined) };
  const bare: string[] = [];
  for (const { option, key, quantity } of temperatures) {
    const text = texts[option];
    if (text === undefined) continue;
    const { value, isBare } = temperatureOption(`--${option}`, text, quantity);
    values[key] = value;
    if (isBare) bare.push(`--${option}`);
  }
  for (const { option, key } of mains) {
    if (values[key] !== undefined && !(values[key] > 0)) {
      throw new InputError(`--${option}`, `"${texts[option]}"`, 'a number above 0', 'outOfRange');
    }
  }
  return { values, bare };
}

/** Without --at there is no point that any of them could hold for. */
function refuseBasis(texts: Texts, isWorking: boolean): void {
  const others = [...temperatures, ...mains].map(({ option }) => option);
  const given = [...others, 'refrigerant'].find((option) => texts[option] !== undefined);
  const expected = '--at beside it: the study of the machine takes everything from the design';
  if (given !== undefined) throw new InputError(`--${given}`, `"${texts[given]}"`, expected, 'bothGiven');
  if (isWorking)
    throw new InputError('--working', 'no point', '--at beside it, a point whose numbers are worked', 'bothGiven');
}

function points(
  text: string,
  pairs: readonly TypedPair[],
  { values, bare }: GivenBasis,
  { refrigerant }: Texts,
  asked: AskedPoint,
  streams: Streams,
): ExitCode {
  const { working: workings } = asked;
  const more = refrigerant === undefined ? { workings } : { workings, refrigerant };
  const outcome = saying(asked.view, () => assessMachinePoints(text, { at: pairs, basis: values, ...more }));
  if (!outcome.ok) return refuse(asked, outcome, streams);
  const notes: PointNotes = { bare: [...(pairs.some(({ isBare }) => isBare) ? ['--at'] : []), ...bare] };
  streams.output.write(
    asked.json ? pointsJson(outcome.points, notes) : `${pointsReport(outcome.points, notes, asked.view)}\n`,
  );
  return exitCodes.answered;
}

/** `bareNumbers`: options whose number had no unit and was taken in °C or K. */
function pointsJson(answers: readonly AnsweredOrNot[], { bare: bareNumbers }: PointNotes): string {
  const [only, ...more] = answers;
  return `${JSON.stringify({ ...(more.length === 0 ? only : { points: answers }), bareNumbers }, null, 2)}\n`;
}

function pointsReport(answers: readonly AnsweredOrNot[], notes: PointNotes, view: UnitView): string {
  return answers
    .map((point) => ('error' in point ? unansweredReport(point, view) : machinePointReport(point, notes, view)))
    .join('\n');
}

/** Of several points some may have no answer, which is told in their place. */
type AnsweredOrNot = MachinePoint | UnansweredPoint;

function study(text: string, asked: Asked, streams: Streams): ExitCode {
  const read = readMachine(text);
  if (!read.ok) return refuse(asked, read, streams);
  if (read.isAlone) {
    const expected =
      'a design with a tank, or --at "EVAPORATING, CONDENSING": without a tank nothing says where this machine would run';
    throw new InputError('--at', 'nothing', expected, 'missing');
  }
  const outcome = assessMachine(read.document);
  if (!outcome.ok) return refuse(asked, outcome, streams);
  const answer: MachineStudy = outcome.study;
  streams.output.write(asked.json ? `${JSON.stringify(answer, null, 2)}\n` : `${machineReport(answer, asked.view)}\n`);
  return exitCodes.answered;
}

/** Runs, and tells an input that cannot be used in words of the options. @throws SaidError */
function saying<Result>(view: UnitView, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const all = [...temperatures, ...mains];
    throw new SaidError(error, sayInOptionWords(error, all, view), optionAt(error, all));
  }
}
