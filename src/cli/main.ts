// The command line: finds the command, runs it, turns typed errors into one sentence and an exit code.

import { InputError, KettlefinError } from '../numerics/index.ts';
import { checkCommand } from './check.ts';
import type { Command, Streams } from './command.ts';
import { cycleCommand } from './cycle-command.ts';
import { type ExitCode, exitCodes } from './exit-codes.ts';
import { stateCommand } from './state-command.ts';

const commands: readonly Command[] = [checkCommand, cycleCommand, stateCommand];

export async function main(args: readonly string[], streams: Streams): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === 'help') {
    streams.output.write(overview());
    return name === undefined ? exitCodes.unusableInput : exitCodes.answered;
  }
  const command = commands.find((candidate) => candidate.name === name);
  if (command === undefined) {
    streams.errors.write(`There is no command "${name}". Commands: ${commands.map((each) => each.name).join(', ')}.\n`);
    return exitCodes.unusableInput;
  }
  if (rest.includes('--help')) {
    streams.output.write(`${command.usage}\n`);
    return exitCodes.answered;
  }
  try {
    return await command.run(rest, streams);
  } catch (error) {
    return report(error, command, streams);
  }
}

function overview(): string {
  const width = Math.max(...commands.map((command) => command.name.length));
  const rows = commands.map((command) => `  ${command.name.padEnd(width)}  ${command.summary}`);
  return `Kettlefin: could this compressor keep this tank warm, within which limits, and would it be worth it?\n\n${rows.join('\n')}\n\nkettlefin COMMAND --help tells more about one.\n`;
}

function report(error: unknown, command: Command, streams: Streams): ExitCode {
  if (isReaderGone(error)) return exitCodes.answered;
  if (error instanceof InputError || isArgumentError(error)) {
    streams.errors.write(`${(error as Error).message}\nkettlefin ${command.name} --help shows how it is called.\n`);
    return exitCodes.unusableInput;
  }
  if (error instanceof KettlefinError) {
    streams.errors.write(`${error.message}\n`);
    return error.code === 'brokenData' ? exitCodes.unusableInput : exitCodes.noSolution;
  }
  throw error;
}

/** The reader of a pipe may stop early ("| head"): that is no fault. */
function isReaderGone(error: unknown): boolean {
  return (error as NodeJS.ErrnoException | undefined)?.code === 'EPIPE';
}

/** Thrown by node:util's parseArgs for an unknown or misused option. */
function isArgumentError(error: unknown): boolean {
  return String((error as NodeJS.ErrnoException | undefined)?.code).startsWith('ERR_PARSE_ARGS');
}
