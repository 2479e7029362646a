// The command line: finds the command, runs it, turns typed errors into one sentence and an exit code.

import { caution } from '../cautions/index.ts';
import { InputError, KettlefinError } from '../numerics/index.ts';
import { nearestWord } from '../quantities/index.ts';
import { type Command, SaidError, type Streams } from './command.ts';
import { briefCommand } from './commands/brief.ts';
import { checkCommand } from './commands/check.ts';
import { compareCommand } from './commands/compare.ts';
import { cycleCommand } from './commands/cycle.ts';
import { fitCommand } from './commands/fit.ts';
import { loadCommand } from './commands/load.ts';
import { machineCommand } from './commands/machine.ts';
import { settleCommand } from './commands/settle.ts';
import { stateCommand } from './commands/state.ts';
import { workingCommand } from './commands/working.ts';
import { type ExitCode, exitCodes } from './exit-codes.ts';
import { refusalJson, refused } from './refusal.ts';
import { printable } from './report/printable.ts';
import { paragraph } from './report/text-table.ts';
import { errorSentence } from './say-error.ts';

const commands: readonly Command[] = [
  checkCommand,
  loadCommand,
  machineCommand,
  settleCommand,
  fitCommand,
  workingCommand,
  compareCommand,
  cycleCommand,
  stateCommand,
  briefCommand,
];

export async function main(args: readonly string[], streams: Streams): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === undefined) {
    streams.errors.write(overview());
    return exitCodes.unusableInput;
  }
  if (name === '--help' || name === '-h' || name === 'help') {
    const command = commands.find((candidate) => candidate.name === rest[0]);
    streams.output.write(command === undefined ? overview() : `${command.usage}\n`);
    return exitCodes.answered;
  }
  const command = commands.find((candidate) => candidate.name === name);
  if (command === undefined) {
    streams.errors.write(unknownCommand(name));
    return exitCodes.unusableInput;
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    streams.output.write(`${command.usage}\n`);
    return exitCodes.answered;
  }
  try {
    return await command.run(rest, streams);
  } catch (error) {
    return report(error, { command, asksForJson: asksForJson(rest) }, streams);
  }
}

/** The reader of a pipe may stop early ("| head"): that is no fault. */
export function isReaderGone(error: unknown): boolean {
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  return code === 'EPIPE' || code === 'ERR_STREAM_DESTROYED';
}

function overview(): string {
  const width = Math.max(...commands.map((command) => command.name.length));
  const rows = commands.map((command) => `  ${command.name.padEnd(width)}  ${command.summary}`);
  return `Kettlefin: could this compressor keep this tank warm, within which limits, and would it be worth it?

${rows.join('\n')}

kettlefin COMMAND --help tells more about one.

${paragraph(caution)}
`;
}

function unknownCommand(name: string): string {
  const names = commands.map((each) => each.name);
  const nearest = nearestWord(name, names);
  const hint = nearest === undefined ? '' : ` Did you mean "${nearest}"?`;
  return printable(`There is no command "${name.slice(0, 60)}". Commands: ${names.join(', ')}.${hint}\n`);
}

function asksForJson(args: readonly string[]): boolean {
  const end = args.indexOf('--');
  return args.slice(0, end < 0 ? undefined : end).includes('--json');
}

interface Asked {
  readonly command: Command;
  readonly asksForJson: boolean;
}

function report(error: unknown, { command, asksForJson }: Asked, { output, errors }: Streams): ExitCode {
  if (isReaderGone(error)) return exitCodes.answered;
  const cause = error instanceof SaidError ? error.cause : error;
  // A broken data file is the program's fault, not the person's.
  if (!(cause instanceof KettlefinError) || cause.code === 'brokenData') throw error;
  const sentence = error instanceof SaidError ? error.message : errorSentence(cause);
  const path = error instanceof SaidError ? error.path : undefined;
  if (asksForJson) output.write(refusalJson(refused(cause, sentence, path)));
  errors.write(`${printable(sentence)}\n`);
  if (!(cause instanceof InputError)) return exitCodes.noSolution;
  errors.write(`kettlefin ${command.name} --help shows how it is called.\n`);
  return exitCodes.unusableInput;
}
