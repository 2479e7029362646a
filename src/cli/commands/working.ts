// `kettlefin working`: the results of a design that can be asked for, and the chain of steps behind one of them.

import {
  type Assessment,
  Assessor,
  designPathsOf,
  type NamedResult,
  namedResults,
  withheldWord,
  withholdsCharge,
} from '../../assess/index.ts';
import { caution } from '../../cautions/index.ts';
import { type DesignDocument, fieldRecord, getField, parseDesign } from '../../design/index.ts';
import { InputError } from '../../numerics/index.ts';
import {
  chainOf,
  isQuantityName,
  type PrintedStep,
  type ResultChain,
  sayBand,
  type UnitView,
  unknownResult,
} from '../../quantities/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exitCodes } from '../exit-codes.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { printableLine } from '../report/printable.ts';
import { paragraph } from '../report/text-table.ts';
import {
  type Beginning,
  beginningsReport,
  printedSteps,
  resultsReport,
  sayResult,
  stepsReport,
} from '../report/working-report.ts';

export const workingCommand: Command = {
  name: 'working',
  summary: 'how a number of a design was computed: every formula with its numbers, back to what was given',
  usage: `kettlefin working FILE [RESULT] [--json] [--units metric|us]

FILE            a design file, or - for standard input
RESULT          name of a result, as tank.load or plant.systemCop; without it, the results that can be asked for
--json          the results, or the steps of one with every number as printed, as JSON
--units VIEW    metric (default) or us: the units beside those of SI

Formulas hold in SI, so the numbers put in stand in SI. A result is printed with five significant digits, each number put
in with as many as it takes: who evaluates the printed line finds the printed result. Likely values; ranges stand in check.

Exit codes: 0 answered; 2 unusable input, also a RESULT that nobody computed; 3 no solution.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, { json: 'flag', units: 'text' });
    const [file, result, ...more] = positionals;
    if (more.length > 0) throw new InputError('RESULT', `"${more.join(' ')}"`, 'the name of one result', 'tooMany');
    const asked = { file: oneFile(file === undefined ? [] : [file]), json: flags.json, view: unitView(texts.units) };
    return withDesignText(asked, streams, (text) => {
      const parsed = parseDesign(text);
      if (!parsed.ok) return refuse(asked, { ...parsed, kind: 'unusable' }, streams);
      const outcome = new Assessor().assess(parsed.document, asked.view);
      if (!outcome.ok) return refuse(asked, outcome, streams);
      const told =
        result === undefined
          ? allResults(outcome.assessment, asked)
          : oneResult(parsed.document, outcome.assessment, result, asked);
      streams.output.write(`${told}\n`);
      return exitCodes.answered;
    });
  },
};

interface Asked {
  readonly json: boolean;
  readonly view: UnitView;
}

/** The months of the accounts are left out here, and all months of the year but the first: they go by like names. */
function allResults(assessment: Assessment, { json, view }: Asked): string {
  const steps = new Set(assessment.workings.map((step) => step.result));
  const computed = namedResults(assessment).filter(({ name }) => steps.has(name));
  const results = computed.filter(({ name }, index) => computed.findIndex((other) => other.name === name) === index);
  if (json) return asJson({ results: results.map(({ place: _, ...result }) => result) });
  const [first] = assessment.year;
  const shown = results.filter(({ group, place }) => {
    if (group === 'year') return !place.startsWith('year.') || place.startsWith(`year.${first?.month}.`);
    return !place.includes('.months.');
  });
  return [
    printableLine(assessment.designName),
    'Each of these can be asked for by its name.',
    '',
    resultsReport(shown, view, assessment.currency),
    paragraph('Each month of the year goes by the same names, as year.july.energies.electricity.'),
    '',
    paragraph(caution),
  ].join('\n');
}

/** The chain behind one result, in the order of computing, and what it goes back to. */
function oneResult(document: DesignDocument, assessment: Assessment, asked: string, { json, view }: Asked): string {
  const results = namedResults(assessment);
  const known = results.find(({ name, place }) => name === asked || place === asked);
  const name = known?.name ?? asked;
  const chain = chainNamed(assessment, results, name);
  const steps = printedSteps(chain.steps, view);
  const beginnings = beginningsOf(document, assessment, chain, view);
  if (json) return asJson({ result: name, steps, beginnings });
  return [
    printableLine(assessment.designName),
    paragraph(headline(steps.at(-1)!, known, assessment, view)),
    '',
    stepsReport(steps),
    beginningsReport(beginnings),
    paragraph(caution),
  ].join('\n');
}

function headline(last: PrintedStep, known: NamedResult | undefined, { currency }: Assessment, view: UnitView): string {
  const words = known === undefined ? last.meaning : `${known.label}: ${sayResult(known, view, currency)}`;
  return `${last.result}, ${words}. In the order of computing; the last step is the result itself.`;
}

/** @throws InputError 'unknownResult' with the nearest name, or saying that a field is given and not computed */
function chainNamed(assessment: Assessment, results: readonly NamedResult[], name: string): ResultChain {
  const { workings } = assessment;
  if (workings.some((step) => step.result === name)) return chainOf(workings, name);
  if (fieldRecord(name) !== undefined) {
    const expected = 'the name of a result; this is a field of the design, given or assumed and not computed';
    throw new InputError('RESULT', `"${name}"`, expected, 'unknownResult');
  }
  throw unknownResult(name, [...results.map((result) => result.name), ...workings.map((step) => step.result)]);
}

/** What the file says, or what is assumed in its place; not what the models assume of a part that the design does not have. */
function beginningsOf(
  document: DesignDocument,
  assessment: Assessment,
  chain: ResultChain,
  view: UnitView,
): readonly Beginning[] {
  const fields = new Set(designPathsOf(chain));
  return chain.origins.flatMap((path) => {
    const assumption = assessment.assumptions.find((each) => each.path === path);
    const label = fieldRecord(path, document)?.label ?? assumption?.label;
    if (label === undefined) return [];
    const text = fields.has(path) ? getField(document, path) : undefined;
    if (withholdsCharge(assessment.standing, path)) return { path, label, words: withheldWord, isGiven: false };
    if (text !== undefined) return { path, label, words: `"${text}"`, isGiven: true };
    return {
      path,
      label,
      words: assumedWords(assumption?.value, assumption?.quantity, assessment, view),
      isGiven: false,
    };
  });
}

function assumedWords(
  value: Assessment['assumptions'][number]['value'] | undefined,
  quantity: string | undefined,
  { currency }: Assessment,
  view: UnitView,
): string {
  if (value === undefined) return 'not said in the design';
  if (typeof value === 'string') return value;
  return quantity !== undefined && isQuantityName(quantity)
    ? sayBand(value, quantity, view, { currency })
    : String(value.likely);
}

function asJson(answer: object): string {
  return JSON.stringify({ caution, ...answer }, null, 2);
}
