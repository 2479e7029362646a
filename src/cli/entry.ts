// Where Node.js enters the command line: real streams in, exit code out.

import '../matter/every-refrigerant/index.ts';
import '../assess/every-tank/index.ts';
import '../assess/every-machine/index.ts';
import { isReaderGone, main } from './main.ts';
import { printable } from './report/printable.ts';

/** Not one of the command line's own exit codes: a fault of the program or of its surroundings, never a verdict. */
const unfinished = 70;

// The reader of a pipe may stop early ("| head"): that is no fault, and the exit code stays that of the answer.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (!isReaderGone(error)) fail(error);
});
// Where nobody can be told, the exit code has to do; telling it here again would fail again, for ever.
process.stderr.on('error', () => undefined);

try {
  const code = await main(process.argv.slice(2), {
    input: process.stdin,
    output: process.stdout,
    errors: process.stderr,
  });
  if (process.exitCode === undefined) process.exitCode = code;
} catch (error) {
  fail(error);
}

function fail(error: unknown): void {
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  process.exitCode = unfinished;
  process.stderr.write(`Kettlefin could not finish, and gives no answer: ${printable(what)}\n`);
}
