// `kettlefin check`: a design file to a verdict, for people or as JSON.

import { readFile, stat } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { Assessor } from '../assess/index.ts';
import { sayProblem } from '../design/index.ts';
import { InputError } from '../numerics/index.ts';
import type { UnitView } from '../quantities/index.ts';
import { checkReport } from './check-report.ts';
import type { Command, Streams } from './command.ts';
import { type ExitCode, exitCodes } from './exit-codes.ts';

/** A design is a few kilobytes; a file larger than this is something else and is not even read. */
const largestFile = 5_000_000;

export const checkCommand: Command = {
  name: 'check',
  summary: 'the verdict on a design file, with watts, limits, two bills, cautions and what is assumed',
  usage: `kettlefin check FILE [--json] [--units metric|us]

--json          the whole assessment as JSON, SI units, keys as in docs/guide/assessment.schema.json
--units VIEW    metric (default) or us, for people

Exit codes: 0 carries the load; 1 the answer is no; 2 the file cannot be used; 3 no solution; 4 uncertain.`,
  async run(args, streams) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { json: { type: 'boolean', default: false }, units: { type: 'string', default: 'metric' } },
    });
    const [file, ...more] = positionals;
    if (file === undefined) throw new InputError('FILE', 'nothing', 'the path of a design file');
    if (more.length > 0) throw new InputError('FILE', positionals.join(' '), 'one design file');
    const view = unitView(values.units);
    const text = await designText(file);
    const outcome = new Assessor().assess(text, view);
    if (outcome.ok) return answer(outcome.assessment, values.json, view, streams);
    return refuse(file, outcome, values.json, streams);
  },
};

type Outcome = ReturnType<Assessor['assess']>;
type Refusal = Exclude<Outcome, { ok: true }>;
type Answered = Extract<Outcome, { ok: true }>['assessment'];

function answer(assessment: Answered, json: boolean, view: UnitView, { output }: Streams): ExitCode {
  output.write(json ? `${JSON.stringify(assessment, null, 2)}\n` : `${checkReport(assessment, view)}\n`);
  if (assessment.standing === 'carriesLoad') return exitCodes.answered;
  return assessment.standing === 'uncertain' ? exitCodes.uncertain : exitCodes.no;
}

function refuse(file: string, refusal: Refusal, json: boolean, { output, errors }: Streams): ExitCode {
  if (json) output.write(`${JSON.stringify({ error: refusal }, null, 2)}\n`);
  if (refusal.kind === 'unusable') {
    errors.write(`${file} cannot be used:\n${refusal.problems.map((each) => `  ${sayProblem(each)}\n`).join('')}`);
    return exitCodes.unusableInput;
  }
  errors.write(`${file}: ${refusal.error.message}\n`);
  return exitCodes.noSolution;
}

async function designText(file: string): Promise<string> {
  try {
    const { size } = await stat(file);
    if (size > largestFile) {
      throw new InputError(file, `${size} bytes`, `a design file of at most ${largestFile} bytes`, 'tooLarge');
    }
    return await readFile(file, 'utf8');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT') throw new InputError('FILE', file, 'a file that exists', 'noSuchFile');
    if (code === 'EISDIR' || code === 'EACCES') throw new InputError('FILE', file, 'a file that can be read', code);
    throw error;
  }
}

function unitView(word: string): UnitView {
  if (word === 'metric' || word === 'us') return word;
  throw new InputError('--units', word, 'metric or us');
}
