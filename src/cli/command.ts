// What a command of the command line is.

import type { Readable, Writable } from 'node:stream';
import type { ExitCode } from './exit-codes.ts';

export interface Streams {
  readonly input: Readable;
  readonly output: Writable;
  readonly errors: Writable;
}

export interface Command {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  /** How it is called, and its options, for `kettlefin NAME --help`. */
  readonly usage: string;
  readonly run: (args: readonly string[], streams: Streams) => Promise<ExitCode>;
}
