// A design that cannot be used or has no solution, told to people on the error stream and, with --json, to programs on the
// output: { "caution", "error": { "kind": "unusable", "problems": […] } or { "kind": "noSolution", "code", "message", "facts" } }.

import { type EngineError, messageInView, type Refusal, readMachine, sayProblemInView } from '../assess/index.ts';
import { caution } from '../cautions/index.ts';
import { sayNotice } from '../design/index.ts';
import { InputError, type KettlefinError } from '../numerics/index.ts';
import type { UnitView } from '../quantities/index.ts';
import type { Streams } from './command.ts';
import { type ExitCode, exitCodes } from './exit-codes.ts';
import { fileTitle, readDesignText } from './input.ts';
import { printable } from './report/printable.ts';
import { errorSentence, withReason } from './say-error.ts';

/** How a command was asked to answer. */
export interface Asked {
  readonly file: string;
  readonly json: boolean;
  readonly view: UnitView;
}

/** Reads the design file and hands its text on; tells what is wrong with the file itself, and what to know of one that is accepted. */
export async function withDesignText(
  asked: Asked,
  streams: Streams,
  answer: (text: string) => ExitCode | Promise<ExitCode>,
): Promise<ExitCode> {
  let text: string;
  try {
    text = await readDesignText(asked.file, streams.input);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const message = errorSentence(error);
    writeJson(asked, streams, refused(error, message, ''));
    streams.errors.write(printable(`${message}\n`));
    return exitCodes.unusableInput;
  }
  const read = readMachine(text);
  if (read.ok) {
    for (const notice of read.notices) streams.errors.write(printable(`Note: ${sayNotice(notice)}\n`));
  }
  return answer(text);
}

export function refuse(asked: Asked, refusal: Refusal, streams: Streams): ExitCode {
  const title = fileTitle(asked.file);
  if (refusal.kind === 'unusable') {
    const problems = refusal.problems.map((problem) => {
      const { engine, ...told } = problem;
      return { ...told, code: engine?.code ?? told.code, message: sayProblemInView(problem, asked.view) };
    });
    writeJson(asked, streams, { kind: 'unusable', problems });
    const lines = problems.map(({ message }) => `  ${message}\n`).join('');
    streams.errors.write(printable(`${title} cannot be used:\n${lines}`));
    return exitCodes.unusableInput;
  }
  writeJson(asked, streams, { kind: 'noSolution', ...refusal.error });
  streams.errors.write(printable(`${title} has no solution: ${noSolution(refusal.error, asked.view)}\n`));
  return exitCodes.noSolution;
}

function noSolution({ message, code, facts }: EngineError, view: UnitView): string {
  const said = messageInView(withReason(message, code, facts), view);
  return code === 'condensingAboveCritical' ? `${said} ${whereCondensingIsFrom}` : said;
}

const whereCondensingIsFrom =
  'A lower level has an answer: with --at as asked, else the water temperature (tank.waterTemperature, --water) and the approach above it (exchangers.condenserApproach); or another machine.refrigerant.';

function writeJson({ json }: Asked, { output }: Streams, error: object): void {
  if (json) output.write(refusalJson(error));
}

/** A typed error as programs get it, with its sentence; `path` is what to blame where it is not the error's own. */
export function refused(error: KettlefinError, message: string, path?: string): object {
  const { code } = error;
  if (!(error instanceof InputError)) return { kind: 'noSolution', code, message, facts: error.facts() };
  const { received, expected } = error.facts();
  return { kind: 'unusable', problems: [{ path: path ?? error.path, code, received, expected, message }] };
}

export function refusalJson(error: object): string {
  return `${JSON.stringify({ caution, error }, null, 2)}\n`;
}
