// What a command of the command line is, and how it tells a fault in its own words.

import type { Readable, Writable } from 'node:stream';
import type { KettlefinError } from '../numerics/index.ts';
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

/** An error of the engine whose sentence has been made; the exit code follows from the error behind it. */
export class SaidError extends Error {
  override readonly cause: KettlefinError;
  /** What was typed that is to blame; undefined where the error's own path says it. */
  readonly path: string | undefined;

  constructor(cause: KettlefinError, sentence: string, path?: string) {
    super(sentence);
    this.cause = cause;
    this.path = path;
  }
}
